"""Identity is the id, the number only finds gaps (decision 0001, point 3)."""

from typing import Any

from steadfoot.core.ids import uuid7
from tests.builders import House, Phone


def _codes(answer: dict[str, Any]) -> list[str]:
    return [found["problem"]["code"] for found in answer["refused"]]


def _texts(house: House, client_id: str) -> list[str]:
    return [item["body"]["text"] for item in house.get(f"/clients/{client_id}/timeline")["items"]]


def _kept(house: House, client_id: str) -> int:
    return len(house.get(f"/clients/{client_id}/refused-events")["items"])


def test_an_event_sent_many_times_in_one_batch_and_in_many_counts_once(
    house: House, client_id: str, phone: Phone
) -> None:
    phone.log("note_written", {"text": "once"})
    for events in (phone.events * 3, phone.events, phone.events * 5):
        answer = phone.send(events).json()
        assert (answer["acknowledged_through"], answer["refused"]) == (1, [])
    assert _texts(house, client_id) == ["once"]


def test_an_id_that_comes_again_with_other_content_is_refused_however_often_it_comes(
    house: House, client_id: str, phone: Phone
) -> None:
    first = phone.log("note_written", {"text": "first"})
    phone.sync()
    other = {**first, "seq": 2, "body": {"text": "second"}}
    for _ in range(3):
        answer = phone.send([other]).json()
        assert _codes(answer) == ["id-reused"]
        assert answer["acknowledged_through"] == 2
    assert _texts(house, client_id) == ["first"]
    assert _kept(house, client_id) == 1
    assert phone.send([first]).json()["refused"] == []


def test_an_id_of_an_item_kept_aside_cannot_come_in_with_other_content_however_often_it_comes(
    house: House, client_id: str, phone: Phone
) -> None:
    bad = phone.log("note_written", {"text": 5})
    phone.sync()
    mended = {**bad, "seq": 2, "body": {"text": "five"}}
    assert [_codes(phone.send([mended]).json()) for _ in range(3)] == [["id-reused"]] * 3
    assert _codes(phone.send([bad, mended]).json()) == ["body", "id-reused"]
    assert _texts(house, client_id) == []
    assert _kept(house, client_id) == 2


def test_a_number_that_comes_again_under_another_id_is_refused_and_kept(
    house: House, client_id: str, phone: Phone
) -> None:
    first = phone.log("note_written", {"text": "the phone"})
    copy = {**first, "id": uuid7(phone.clock()), "body": {"text": "its copy"}}
    phone.sync()
    assert _codes(phone.send([copy]).json()) == ["number-taken"]
    assert _codes(phone.send([copy]).json()) == ["number-taken"]
    assert _texts(house, client_id) == ["the phone"]
    assert _kept(house, client_id) == 1


def test_the_copy_of_a_phone_gets_numbers_of_its_own_and_its_entry_then_needs_nobody(
    house: House, client_id: str, phone: Phone
) -> None:
    first = phone.log("note_written", {"text": "the phone"})
    copy = {**first, "id": uuid7(phone.clock()), "body": {"text": "its copy"}}
    phone.sync()
    phone.send([copy])
    headers = {"Authorization": f"Bearer {phone.token}"}
    fresh = phone.http.post("/api/v1/devices/current/successors", headers=headers).json()
    successor = Phone(phone.http, fresh["token"], fresh["device_id"], phone.clock)
    answer = successor.send([{**copy, "seq": 1}]).json()
    assert (answer["acknowledged_through"], answer["refused"]) == (1, [])
    assert sorted(_texts(house, client_id)) == ["its copy", "the phone"]
    assert _kept(house, client_id) == 0


def test_a_held_entry_that_comes_late_under_a_taken_number_is_a_repeat_and_needs_nobody(
    house: House, client_id: str, phone: Phone
) -> None:
    """A copy's request that was held up on its way arrives after the copy has sent the entry under its own number."""
    first = phone.log("note_written", {"text": "the phone"})
    copy = {**first, "id": uuid7(phone.clock()), "body": {"text": "its copy"}}
    phone.sync()
    house.pair(client_id).send([copy])
    assert phone.send([copy]).json()["refused"] == []
    assert _kept(house, client_id) == 0
    assert sorted(_texts(house, client_id)) == ["its copy", "the phone"]


def test_a_phone_paired_anew_that_numbers_its_entries_anew_doubles_nothing(
    house: House, client_id: str, phone: Phone
) -> None:
    for text in ("one", "two", "three"):
        phone.log("note_written", {"text": text})
    phone.sync()
    again = house.pair(client_id)
    again.events = [{**event, "seq": place + 1} for place, event in enumerate(phone.events[1:])]
    answer = again.sync()
    assert (answer["acknowledged_through"], answer["refused"]) == (2, [])
    assert sorted(_texts(house, client_id)) == ["one", "three", "two"]


def test_an_id_of_another_client_is_refused_and_tells_nothing_of_them(house: House, phone: Phone) -> None:
    other = house.new_client("Runa Velk")
    theirs = house.pair(other).log("note_written", {"text": "a secret line"})
    phone.send([theirs])
    answer = house.pair(other).send([theirs])
    assert _codes(answer.json()) == ["id-reused"]
    assert "secret" not in answer.text


def test_two_phones_of_one_client_may_use_the_same_numbers(house: House, client_id: str, phone: Phone) -> None:
    tablet = house.pair(client_id)
    phone.log("note_written", {"text": "on the phone"})
    tablet.log("note_written", {"text": "on the tablet"})
    assert phone.sync()["acknowledged_through"] == tablet.sync()["acknowledged_through"] == 1
    assert sorted(_texts(house, client_id)) == ["on the phone", "on the tablet"]
