"""An entry that was kept aside comes in after a mend, once, and then needs nobody any more."""

from typing import Any

import pytest
from pydantic import TypeAdapter

from steadfoot.checkins import reading
from steadfoot.checkins.bodies import Body
from steadfoot.core.ids import uuid7
from tests.builders import House, Phone


class Dreamt(Body):
    """A kind that a later version knows."""

    colour: str


def _retry(house: House, client_id: str, event_id: str) -> dict[str, Any]:
    answer: dict[str, Any] = house.post(f"/clients/{client_id}/refused-events/{event_id}/retries", status=200)
    return answer


def _kept(house: House, client_id: str) -> list[dict[str, Any]]:
    found: list[dict[str, Any]] = house.get(f"/clients/{client_id}/refused-events")["items"]
    return found


def test_a_retry_before_the_mend_changes_nothing_and_after_it_takes_the_entry(
    house: House, client_id: str, phone: Phone, monkeypatch: pytest.MonkeyPatch
) -> None:
    event = phone.log("dreamt", {"colour": "green", "day": "2026-06-08"})
    phone.sync()
    before = _retry(house, client_id, event["id"])
    assert (before["accepted"], before["problem"]["code"]) == (False, "unknown-kind")
    assert len(_kept(house, client_id)) == 1
    monkeypatch.setitem(reading.ADAPTERS, "dreamt", TypeAdapter(Dreamt))
    assert _retry(house, client_id, event["id"]) == {"accepted": True, "problem": None}
    assert _kept(house, client_id) == []
    items = house.get(f"/clients/{client_id}/timeline")["items"]
    assert [(item["event_id"], item["body"], item["local_date"]) for item in items] == [
        (event["id"], event["body"], "2026-06-08")
    ]
    house.post(f"/clients/{client_id}/refused-events/{event['id']}/retries", status=404)
    phone.acknowledged = 0
    assert phone.sync()["refused"] == []
    assert len(house.get(f"/clients/{client_id}/timeline")["items"]) == 1


def test_a_phone_that_sends_again_after_the_mend_brings_the_entry_in_too(
    house: House, client_id: str, phone: Phone, monkeypatch: pytest.MonkeyPatch
) -> None:
    event = phone.log("dreamt", {"colour": "green"})
    phone.sync()
    monkeypatch.setitem(reading.ADAPTERS, "dreamt", TypeAdapter(Dreamt))
    assert phone.send(phone.events).json()["refused"] == []
    assert [item["event_id"] for item in house.get(f"/clients/{client_id}/timeline")["items"]] == [event["id"]]
    assert _kept(house, client_id) == []


def test_an_entry_with_a_taken_number_comes_in_when_a_person_says_so(
    house: House, client_id: str, phone: Phone
) -> None:
    first = phone.log("pain_reported", {"rating": 2, "region": "knee", "side": "left", "when": "after"})
    phone.sync()
    copy = {**first, "id": uuid7(phone.clock()), "body": {**first["body"], "rating": 5}}
    phone.send([copy])
    assert _retry(house, client_id, copy["id"])["accepted"] is True
    ratings = [item["body"]["rating"] for item in house.get(f"/clients/{client_id}/timeline")["items"]]
    assert sorted(ratings) == [2, 5]
    assert _kept(house, client_id) == []


def test_an_id_that_was_used_for_something_else_stays_aside(house: House, client_id: str, phone: Phone) -> None:
    first = phone.log("note_written", {"text": "one"})
    phone.sync()
    phone.send([{**first, "seq": 2, "body": {"text": "two"}}])
    answer = _retry(house, client_id, first["id"])
    assert (answer["accepted"], answer["problem"]["code"]) == (False, "id-reused")
    assert len(_kept(house, client_id)) == 1


def test_a_retry_of_what_is_not_kept_aside_is_not_found(house: House, client_id: str, phone: Phone) -> None:
    event = phone.log("note_written", {"text": "one"})
    phone.sync()
    for event_id in (event["id"], "nothing", uuid7(phone.clock())):
        house.post(f"/clients/{client_id}/refused-events/{event_id}/retries", status=404)
