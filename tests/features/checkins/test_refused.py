"""What cannot be taken is kept aside whole, listed and acknowledged past; it never stops what comes behind it."""

import json
from typing import Any

import pytest

from tests.builders import API, House, Phone

GOOD = {"text": "good"}
ID = "0197777{}-7777-7777-8777-777777777777"


def _items(house: House, client_id: str) -> list[dict[str, Any]]:
    found: list[dict[str, Any]] = house.get(f"/clients/{client_id}/refused-events")["items"]
    return found


def _broken(phone: Phone, **fault: Any) -> dict[str, Any]:
    event = phone.log("note_written", GOOD)
    event.update(fault)
    return event


@pytest.mark.parametrize(
    ("fault", "code"),
    [
        ({"kind": "dreamt"}, "unknown-kind"),
        ({"kind": []}, "unknown-kind"),
        ({"kind": {}}, "unknown-kind"),
        ({"kind": None}, "unknown-kind"),
        ({"id": "41"}, "id"),
        ({"id": 41}, "id"),
        ({"id": "é" * 36}, "id"),
        ({"id": ID.format(1).upper().replace("7777", "AAAA")}, "id"),
        ({"recorded_at": "2026-06-10T08:00:00"}, "time"),
        ({"recorded_at": "2026-06-10"}, "time"),
        ({"recorded_at": 1781078400}, "time"),
        ({"recorded_at": "9999-12-31T23:59:59Z"}, "time"),
        ({"recorded_at": "2026-02-30T08:00:00Z"}, "time"),
        ({"recorded_at": "2026-06-10T08:00:00+99:99"}, "time"),
        ({"recorded_at": "٢٠٢٦-06-10T08:00:00Z"}, "time"),
        ({"body": []}, "body"),
        ({"body": None}, "body"),
        ({"body": "text"}, "body"),
        ({"body": {"text": "a\x00b"}}, "body"),
        ({"body": {"text": "a", "\x00": "b"}}, "body"),
        ({"extra": 1}, "envelope"),
    ],
)
def test_a_bad_item_between_good_ones_is_kept_whole_and_acknowledged_past(
    house: House, client_id: str, phone: Phone, fault: dict[str, Any], code: str
) -> None:
    phone.log("note_written", GOOD)
    bad = _broken(phone, **fault)
    phone.log("note_written", GOOD)
    answer = phone.sync()
    assert answer["acknowledged_through"] == 3
    assert [(found["seq"], found["problem"]["code"]) for found in answer["refused"]] == [(2, code)]
    kept = _items(house, client_id)
    assert len(kept) == 1
    assert json.loads(kept[0]["raw"]) == json.loads(json.dumps(bad))
    assert kept[0]["problem"]["code"] == code
    assert kept[0]["seq"] == 2
    assert len(house.get(f"/clients/{client_id}/timeline")["items"]) == 2


@pytest.mark.parametrize("raw", [None, [], "an entry", 7, True, {}, {"seq": 1}, [[[]]]])
def test_an_item_that_is_no_event_at_all_is_kept_too(house: House, client_id: str, phone: Phone, raw: Any) -> None:
    response = phone.send([raw])
    assert response.status_code == 200
    assert [found["problem"]["code"] for found in response.json()["refused"]] == ["envelope"]
    assert [json.loads(kept["raw"]) for kept in _items(house, client_id)] == [raw]


@pytest.mark.parametrize("seq", [0, -1, 1.5, "1", True, None, 2**31, 2**53, 2**63, 2**200])
def test_a_number_that_counts_nothing_is_refused_and_holds_no_place(
    house: House, client_id: str, phone: Phone, seq: Any
) -> None:
    phone.log("note_written", GOOD)
    _broken(phone, seq=seq)
    answer = phone.sync()
    assert answer["acknowledged_through"] == 1
    assert [(found["seq"], found["problem"]["code"]) for found in answer["refused"]] == [(None, "number")]
    assert json.loads(_items(house, client_id)[0]["raw"])["seq"] == seq


def test_items_without_a_name_each_keep_their_own_problem(phone: Phone) -> None:
    answer = phone.send([None, [], {**phone.log("note_written", GOOD), "id": ""}]).json()
    assert [found["problem"]["code"] for found in answer["refused"]] == ["envelope", "envelope", "id"]


def test_an_item_that_is_sent_again_is_kept_once(house: House, client_id: str, phone: Phone) -> None:
    _broken(phone, kind="dreamt")
    first, again = phone.send(phone.events).json(), phone.send(phone.events * 3).json()
    assert first["acknowledged_through"] == again["acknowledged_through"] == 1
    assert {found["problem"]["code"] for found in again["refused"]} == {"unknown-kind"}
    assert len(_items(house, client_id)) == 1


def test_what_is_kept_aside_is_text_that_reads_back_to_the_same(house: House, client_id: str, phone: Phone) -> None:
    text = "a NUL \x00, a backslash before u0000: \\u0000, a lone surrogate \ud800"
    bad = _broken(phone, kind="dreamt", body={"text": text})
    body = json.dumps({"cursor": 0, "events": [bad]})
    headers = {"Authorization": f"Bearer {phone.token}", "Content-Type": "application/json"}
    assert phone.http.post("/api/v1/sync", content=body, headers=headers).json()["acknowledged_through"] == 1
    assert json.loads(_items(house, client_id)[0]["raw"]) == bad


def test_a_client_without_anything_kept_aside_has_an_empty_list(house: House, client_id: str, phone: Phone) -> None:
    phone.log("note_written", GOOD)
    phone.sync()
    assert _items(house, client_id) == []


def test_a_stand_in_for_an_entry_that_cannot_be_sent_holds_its_number_until_the_entry_comes(
    house: House, client_id: str, phone: Phone
) -> None:
    whole = phone.log("note_written", GOOD)
    stand_in = {**whole, "body": {"not_sent": "too-large", "bytes": 300_000}}
    phone.log("note_written", GOOD)
    answer = phone.send([stand_in, phone.events[1]]).json()
    assert answer["acknowledged_through"] == 2
    assert [(one["id"], one["problem"]["code"]) for one in answer["refused"]] == [(whole["id"], "not-sent")]
    assert [one["event_id"] for one in _items(house, client_id)] == [whole["id"]]
    retried = house.http.post(f"{API}/clients/{client_id}/refused-events/{whole['id']}/retries").json()
    assert (retried["accepted"], retried["problem"]["code"]) == (False, "not-sent")

    assert phone.send([whole]).json()["refused"] == []
    assert _items(house, client_id) == []
    assert len(house.get(f"/clients/{client_id}/timeline")["items"]) == 2
    again = phone.send([stand_in]).json()
    assert [one["problem"]["code"] for one in again["refused"]] == ["id-reused"]


def test_a_stand_in_is_one_even_for_an_entry_that_would_not_be_understood(
    house: House, client_id: str, phone: Phone
) -> None:
    whole = phone.log("balance_held", {"seconds": 3})
    stand_in = {**whole, "body": {"not_sent": "too-large", "bytes": 300_000}}
    assert [one["problem"]["code"] for one in phone.send([stand_in]).json()["refused"]] == ["not-sent"]

    assert [one["problem"]["code"] for one in phone.send([whole]).json()["refused"]] == ["unknown-kind"]
    [kept] = _items(house, client_id)  # whole now: the stand-in needs nobody any more
    assert kept["problem"]["code"] == "unknown-kind"
    assert json.loads(kept["raw"])["body"] == {"seconds": 3}
