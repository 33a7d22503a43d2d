"""The timeline shows each entry once, in the order of its own time, in pages."""

import base64
from datetime import timedelta
from typing import Any

import pytest

from tests.builders import House, Phone
from tests.conftest import START

ID = "01977777-7777-7777-8777-777777777777"


def _pages(house: House, client_id: str, limit: int) -> list[list[dict[str, Any]]]:
    pages, cursor = [], None
    while True:
        given = {"limit": limit} | ({"cursor": cursor} if cursor else {})
        page = house.get(f"/clients/{client_id}/timeline", **given)
        pages.append(page["items"])
        cursor = page["next_cursor"]
        if cursor is None:
            return pages


def _fill(phone: Phone, count: int) -> None:
    for number in range(count):
        at = START + timedelta(minutes=(number * 7) % count // 2)  # pairs share a minute, and come out of order
        phone.log("note_written", {"text": str(number)}, at=at.isoformat())
    phone.sync()


@pytest.mark.parametrize("limit", [1, 3, 7, 20, 21, 200])
def test_pages_of_any_length_show_each_entry_once_in_the_same_order(
    house: House, client_id: str, phone: Phone, limit: int
) -> None:
    _fill(phone, 20)
    whole = house.get(f"/clients/{client_id}/timeline", limit=200)["items"]
    pages = _pages(house, client_id, limit)
    assert [item for page in pages for item in page] == whole
    assert {item["event_id"] for item in whole} == {event["id"] for event in phone.events}
    assert len(whole) == 20
    assert [item["at"] for item in whole] == sorted(item["at"] for item in whole)
    assert all(pages)


def test_a_cursor_means_the_same_place_after_more_has_come_in(house: House, client_id: str, phone: Phone) -> None:
    _fill(phone, 10)
    first = house.get(f"/clients/{client_id}/timeline", limit=5)
    rest = house.get(f"/clients/{client_id}/timeline", limit=200, cursor=first["next_cursor"])["items"]
    phone.log("note_written", {"text": "late"}, at=(START - timedelta(days=3)).isoformat())
    phone.log("note_written", {"text": "new"}, at=(START + timedelta(days=3)).isoformat())
    phone.sync()
    again = house.get(f"/clients/{client_id}/timeline", limit=200, cursor=first["next_cursor"])["items"]
    assert again[:-1] == rest
    assert again[-1]["body"] == {"text": "new"}


def test_an_entry_keeps_the_time_that_the_phone_wrote(house: House, client_id: str, phone: Phone) -> None:
    event = phone.log("note_written", {"text": "x"}, at="2026-06-10T07:12:09.250+02:00")
    phone.sync()
    assert house.get(f"/clients/{client_id}/timeline")["items"] == [
        {
            "at": "2026-06-10T07:12:09.250000+02:00",
            "local_date": "2026-06-10",
            "kind": "note_written",
            "source": "client",
            "event_id": event["id"],
            "body": {"text": "x"},
        }
    ]


def test_a_withdrawn_entry_stays_in_the_record_with_its_withdrawal(house: House, client_id: str, phone: Phone) -> None:
    pain = phone.log("pain_reported", {"rating": 5, "region": "knee", "side": "left", "when": "during"})
    phone.log("entry_withdrawn", {"event_id": pain["id"]})
    phone.sync()
    items = house.get(f"/clients/{client_id}/timeline")["items"]
    assert {item["kind"] for item in items} == {"pain_reported", "entry_withdrawn"}


def test_an_empty_record_has_an_empty_page(house: House, client_id: str) -> None:
    assert house.get(f"/clients/{client_id}/timeline") == {"items": [], "next_cursor": None}


@pytest.mark.parametrize(
    "place",
    ["nonsense", "2026-06-10T08:00:00|x", "|", "2026-06-10T08:00:00+00:00|", "2026-06-10T08:00:00+00:00|a\x00b"]
    + [f"0001-01-01T00:00:00+14:00|{ID}", f"9999-12-31T23:59:59-14:00|{ID}"],
)
def test_a_cursor_that_was_not_made_here_is_refused(house: House, client_id: str, place: str) -> None:
    cursor = base64.urlsafe_b64encode(place.encode()).decode().rstrip("=")
    problem = house.get(f"/clients/{client_id}/timeline", status=400, cursor=cursor)
    assert problem["code"] == "cursor"


@pytest.mark.parametrize(
    ("name", "value"), [("limit", 0), ("limit", 201), ("limit", "x"), ("cursor", "!"), ("cursor", "")]
)
def test_a_page_that_cannot_be_asked_for_is_refused_by_name(
    house: House, client_id: str, name: str, value: Any
) -> None:
    problem = house.get(f"/clients/{client_id}/timeline", status=422, **{name: value})
    assert problem["errors"][0]["pointer"] == f"/query/{name}"
