"""Screening with the practitioner and on the phone, and clearances."""

from datetime import timedelta
from itertools import product

import pytest

from steadfoot.operations import rebuild
from steadfoot.rules import screening as rules
from steadfoot.rules.screening_questions import QUESTIONS
from tests.builders import API
from tests.features.intake.answers import RECOMMENDED, REQUIRED, WELL, answers, screened, state


@pytest.fixture
def client_id(house):
    return house.new_client()


@pytest.fixture
def phone(house, client_id):
    return house.pair(client_id)


def listed(house, client_id):
    return house.get(f"/clients/{client_id}/screenings")["items"]


def cleared(house, client_id, status=201, **more):
    return house.post(f"/clients/{client_id}/clearances", {"given_by": "Dr Ilse Varn", **more}, status)


def test_the_questions_are_the_rules_own_for_practitioner_and_phone(house, phone):
    found = house.get("/screening/questions")
    assert [(one["code"], one["question"], one["maps_to"]) for one in found["items"]] == [
        (one.code, one.text, one.feeds) for one in QUESTIONS
    ]
    assert (found["source"]["key"], found["source"]["year"]) == ("riebe-2015", "2015")
    headers = {"Authorization": f"Bearer {phone.token}"}
    assert phone.http.get(f"{API}/screening/questions", headers=headers).json() == found


def test_nobody_is_screened_at_first(house, client_id):
    assert house.get(f"/clients/{client_id}/screenings") == {"items": [], "state": "not_screened"}


@pytest.mark.parametrize("flags", list(product((True, False), repeat=3)))
@pytest.mark.parametrize("intensity", rules.Intensity)
def test_each_row_of_the_table_is_answered_with_outcome_reasons_and_state(house, client_id, flags, intensity):
    said = answers(*flags, intensity)
    found = screened(house, client_id, said)
    outcome = rules.screen(rules.Answers(*flags, intensity))
    assert (found["answers"], found["outcome"]) == (said, outcome.clearance)
    assert [one["text"] for one in found["reasons"]] == list(outcome.reasons)
    states = {"not_needed": "clear", "recommended": "clearance_recommended", "required": "clearance_required"}
    assert state(house, client_id) == states[outcome.clearance]


def test_a_screening_says_who_took_it_when_and_after_which_work(house, client_id):
    found = screened(house, client_id, WELL)
    assert (found["source"], found["answered_by"]) == ("practitioner", "Maren Brandvold")
    assert (found["answered_at"], found["local_day"]) == ("2026-06-10T08:00:00Z", "2026-06-10")
    assert (found["source_work"]["key"], found["cleared"]) == ("riebe-2015", None)
    assert listed(house, client_id) == [found]


def test_the_newest_screening_counts_and_the_earlier_ones_stay(house, client_id, clock):
    first = screened(house, client_id, REQUIRED)
    clock.forward(minutes=1)
    second = screened(house, client_id, WELL)
    assert state(house, client_id) == "clear"
    assert [one["id"] for one in listed(house, client_id)] == [second["id"], first["id"]]


def test_a_yes_that_its_group_denies_is_refused_and_nothing_is_stored(house, client_id):
    for code in ("chest", "not-asked"):
        problem = house.post(f"/clients/{client_id}/screenings", {"answers": WELL, "details": [code]}, 422)
        assert [one["pointer"] for one in problem["errors"]] == ["/body/details"]
    assert listed(house, client_id) == []
    body = {"answers": REQUIRED, "details": ["kidneys", "diabetes", "kidneys"]}
    assert house.post(f"/clients/{client_id}/screenings", body)["details"] == ["diabetes", "kidneys"]


def test_silence_is_not_a_no(house, client_id):
    for name in WELL:
        said = {key: value for key, value in WELL.items() if key != name}
        problem = house.post(f"/clients/{client_id}/screenings", {"answers": said}, 422)
        assert problem["errors"][0]["pointer"] == f"/body/answers/{name}"


def test_a_clearance_answers_the_newest_screening_and_no_later_one(house, client_id, clock):
    screening = screened(house, client_id, REQUIRED)
    found = cleared(house, client_id, note="By letter.")
    assert (found["screening_id"], found["given_by"], found["note"]) == (screening["id"], "Dr Ilse Varn", "By letter.")
    assert (found["given_on"], found["recorded_by"]) == ("2026-06-10", "Maren Brandvold")
    assert state(house, client_id) == "cleared"
    assert listed(house, client_id)[0]["cleared"] == found
    clock.forward(minutes=1)
    screened(house, client_id, REQUIRED)
    assert state(house, client_id) == "clearance_required"
    assert cleared(house, client_id, screening_id=screening["id"])["screening_id"] == screening["id"]
    assert state(house, client_id) == "clearance_required"


def test_a_recommended_clearance_can_be_given_too_and_one_that_nothing_asks_for_changes_nothing(house, client_id):
    screened(house, client_id, RECOMMENDED)
    cleared(house, client_id)
    assert state(house, client_id) == "cleared"
    other = house.new_client()
    screened(house, other, WELL)
    cleared(house, other)
    assert state(house, other) == "clear"


def test_a_clearance_needs_a_screening_a_name_and_a_day_that_has_come(house, client_id):
    assert cleared(house, client_id, 409)["code"] == "not-screened"
    screened(house, client_id, REQUIRED)
    assert cleared(house, client_id, 422, given_by=" ")["errors"][0]["pointer"] == "/body/given_by"
    assert cleared(house, client_id, 422, given_on="2026-06-11")["code"] == "in-the-future"
    assert cleared(house, client_id, 422, given_on=20260610)["errors"][0]["pointer"] == "/body/given_on"
    assert cleared(house, client_id, 404, screening_id="of-nobody")["code"] == "not-found"
    elsewhere = screened(house, house.new_client(), REQUIRED)
    cleared(house, client_id, 404, screening_id=elsewhere["id"])
    assert state(house, client_id) == "clearance_required"
    assert cleared(house, client_id, given_on="2026-05-02")["given_on"] == "2026-05-02"


def test_answers_from_the_phone_are_a_screening_under_their_events_id(house, client_id, phone):
    entry = phone.log("screening_answered", {**REQUIRED, "details": ["kidneys"], "day": "2026-06-09"})
    phone.sync()
    (found,) = listed(house, client_id)
    assert (found["id"], found["source"], found["answered_by"]) == (entry["id"], "client", None)
    assert (found["answers"], found["details"], found["local_day"]) == (REQUIRED, ["kidneys"], "2026-06-09")
    assert found["outcome"] == "required"
    assert state(house, client_id) == "clearance_required"


def test_the_same_answers_sent_again_by_another_phone_are_one_screening(house, client_id, phone):
    entry = phone.log("screening_answered", WELL)
    phone.sync()
    assert house.pair(client_id).send([entry]).json()["refused"] == []
    assert len(listed(house, client_id)) == 1


@pytest.mark.parametrize("withdrawal_first", [True, False])
def test_withdrawn_answers_are_no_screening_in_whatever_order_they_come(house, client_id, phone, withdrawal_first):
    screened(house, client_id, WELL)
    house.clock.forward(minutes=1)
    entry = phone.log("screening_answered", REQUIRED)
    undo = phone.log("entry_withdrawn", {"event_id": entry["id"]})
    for event in (undo, entry) if withdrawal_first else (entry, undo):
        assert phone.send([event]).json()["refused"] == []
    assert [one["source"] for one in listed(house, client_id)] == ["practitioner"]
    assert state(house, client_id) == "clear"


def test_answers_given_offline_stand_at_the_time_they_were_given(house, client_id, phone):
    early = (house.clock() - timedelta(days=3)).isoformat()
    screened(house, client_id, REQUIRED)
    phone.log("screening_answered", WELL, early)
    phone.sync()
    assert state(house, client_id) == "clearance_required"
    assert [one["source"] for one in listed(house, client_id)] == ["practitioner", "client"]


def test_a_clearance_of_the_phones_answers_outlives_a_rebuild(house, client_id, phone, database):
    phone.log("screening_answered", REQUIRED)
    gone = phone.log("screening_answered", RECOMMENDED)
    phone.log("entry_withdrawn", {"event_id": gone["id"]})
    phone.sync()
    screened(house, house.new_client("Runa Velk"), WELL)
    cleared(house, client_id)
    before = house.get(f"/clients/{client_id}/screenings")
    assert before["state"] == "cleared"
    rebuild(database)
    assert house.get(f"/clients/{client_id}/screenings") == before
