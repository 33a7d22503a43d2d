"""A program waits for the clearance that screening asks for; easing a running one off never does."""

from datetime import date

import pytest

from tests.builders import API, circuit, content
from tests.features.intake.answers import RECOMMENDED, REQUIRED, WELL, screened
from tests.features.monitoring.scenes import harder

TODAY = date(2026, 6, 10)


@pytest.fixture
def client_id(house):
    return house.new_client()


def codes(house, client_id):
    answer = house.post(f"/clients/{client_id}/programs/checks", {"content": content(TODAY)}, 200)
    return [(one["code"], one["severity"], one["pointer"]) for one in answer["problems"]]


@pytest.mark.parametrize(
    ("said", "expected"),
    [
        (None, [("not_screened", "warning", "")]),
        (WELL, []),
        (RECOMMENDED, [("clearance_recommended", "warning", "")]),
        (REQUIRED, [("clearance_needed", "error", "")]),
    ],
)
def test_checks_say_what_the_screening_says(house, client_id, said, expected):
    if said is not None:
        screened(house, client_id, said)
    assert codes(house, client_id) == expected


@pytest.mark.parametrize("said", [None, WELL, RECOMMENDED])
def test_what_only_warns_stops_nobody(house, client_id, said):
    if said is not None:
        screened(house, client_id, said)
    assert house.publish(client_id, content(TODAY))["number"] == 1


def test_a_missing_clearance_stops_publishing_with_its_reasons_and_the_draft_stays(house, client_id):
    screening = screened(house, client_id, REQUIRED)
    draft = f"{API}/clients/{client_id}/programs/draft"
    house.http.put(draft, json={"content": content(TODAY)})
    kept = house.http.get(draft).json()
    problem = house.post(f"/clients/{client_id}/programs", {"content": content(TODAY)}, 409)
    assert (problem["code"], problem["screening_id"]) == ("clearance-needed", screening["id"])
    assert problem["reasons"] == [one["text"] for one in screening["reasons"]]
    assert house.get(f"/clients/{client_id}/programs")["items"] == []
    assert house.http.get(draft).json() == kept
    assert "program" not in [change["kind"] for change in house.pair(client_id).sync()["changes"]]


def test_once_the_clearance_is_recorded_the_program_goes_out(house, client_id):
    screened(house, client_id, REQUIRED)
    house.post(f"/clients/{client_id}/clearances", {"given_by": "Dr Ilse Varn"})
    assert codes(house, client_id) == []
    assert house.publish(client_id, content(TODAY))["number"] == 1


def test_answers_on_the_phone_stop_the_next_version_but_not_an_easier_one_after_pain(house, client_id):
    house.publish(client_id, content(TODAY, sessions=[circuit(prescriptions=[harder()])]))
    phone = house.pair(client_id)
    phone.log("screening_answered", REQUIRED)
    pain = {"rating": 8, "region": "knee", "side": "right", "when": "during", "prescription": "p1"}
    phone.log("pain_reported", pain)
    phone.sync()
    house.post(f"/clients/{client_id}/programs", {"content": content(TODAY)}, 409)
    (flag,) = house.get("/flags", client_id=client_id)["items"]
    assert house.post(f"/flags/{flag['id']}/decisions", {"action": "ease_off"})["program_number"] == 2


def test_another_practices_client_is_not_found_before_anything_is_said_of_them(house, other_house, client_id):
    screened(house, client_id, REQUIRED)
    assert other_house.post(f"/clients/{client_id}/programs", {"content": content(TODAY)}, 404)["code"] == "not-found"
