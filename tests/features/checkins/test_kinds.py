"""Every kind of entry comes in with the least and with the fullest body, and with nothing else."""

import pytest

from steadfoot.checkins.bodies import BODIES
from tests.builders import House, Phone
from tests.features.checkins.bodies import FAULTY, FULLEST, LEAST


def test_the_cases_below_cover_every_kind_there_is() -> None:
    assert set(LEAST) == set(FULLEST) == set(BODIES)


@pytest.mark.parametrize("kind", LEAST)
def test_every_kind_is_taken_with_its_least_and_its_fullest_body(
    house: House, client_id: str, phone: Phone, kind: str
) -> None:
    sent = [phone.log(kind, LEAST[kind]), phone.log(kind, FULLEST[kind])]
    answer = phone.sync()
    assert answer["refused"] == []
    assert answer["acknowledged_through"] == 2
    items = house.get(f"/clients/{client_id}/timeline")["items"]
    assert {item["event_id"]: item["body"] for item in items} == {event["id"]: event["body"] for event in sent}
    assert {item["kind"] for item in items} == {kind}


def test_a_field_out_of_its_range_is_refused_by_its_name_and_its_good_neighbours_are_taken(
    house: House, client_id: str, phone: Phone
) -> None:
    for kind, fault, _ in FAULTY:
        phone.log(kind, {**LEAST[kind], **fault})
        phone.log("note_written", {"text": "a good line"})
    answer = phone.sync()
    assert answer["acknowledged_through"] == 2 * len(FAULTY)
    named = {found["seq"]: found["problem"]["errors"][0]["pointer"] for found in answer["refused"]}
    assert named == {2 * place + 1: pointer for place, (_, _, pointer) in enumerate(FAULTY)}
    assert len(house.get(f"/clients/{client_id}/timeline", limit=200)["items"]) == len(FAULTY)
    assert len(house.get(f"/clients/{client_id}/refused-events")["items"]) == len(FAULTY)


@pytest.mark.parametrize("kind", [kind for kind in LEAST if LEAST[kind]])
def test_each_field_of_the_least_body_is_needed(phone: Phone, kind: str) -> None:
    for name in LEAST[kind]:
        phone.log(kind, {key: value for key, value in LEAST[kind].items() if key != name})
    refused = phone.sync()["refused"]
    assert [found["problem"]["errors"][0]["pointer"] for found in refused] == [f"/{name}" for name in LEAST[kind]]


def test_a_refusal_never_repeats_what_was_written(phone: Phone) -> None:
    phone.log("symptom_reported", {"symptom": "marker-in-a-value"})
    phone.log("pain_reported", {"rating": "marker-in-a-value", "region": "marker-in-a-value"})
    response = phone.send(phone.events)
    assert len(response.json()["refused"]) == 2
    assert "marker-in-a-value" not in response.text
