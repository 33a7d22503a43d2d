"""The day of an entry is the one the client wrote, else the date on their own clock.

A wrong clock is no reason to refuse.
"""

from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest

from tests.builders import House, Phone

VIENNA = ZoneInfo("Europe/Vienna")


def _local_dates(house: House, client_id: str) -> list[str]:
    return [item["local_date"] for item in house.get(f"/clients/{client_id}/timeline", limit=200)["items"]]


@pytest.mark.parametrize(
    ("at", "day"),
    [
        ("2026-06-10T23:59:59.999+02:00", "2026-06-10"),
        ("2026-06-11T00:00:00+02:00", "2026-06-11"),
        ("2026-06-10T22:00:00Z", "2026-06-10"),
        ("2026-06-10T00:30:00-11:00", "2026-06-10"),
        ("2026-06-10T23:30:00+14:00", "2026-06-10"),
        ("1970-01-01T00:00:00+00:00", "1970-01-01"),
        ("1970-01-01T00:00:00+14:00", "1970-01-01"),
        ("2036-06-10T08:00:00+02:00", "2036-06-10"),
        ("2200-12-31T23:59:59-12:00", "2200-12-31"),
        ("2028-02-29T12:00:00+01:00", "2028-02-29"),
        ("2026-06-10T07:12:09.123456789+02:00", "2026-06-10"),
    ],
)
def test_the_day_is_the_date_on_the_phones_own_clock(
    house: House, client_id: str, phone: Phone, at: str, day: str
) -> None:
    phone.log("note_written", {"text": "x"}, at=at)
    assert phone.sync()["refused"] == []
    assert _local_dates(house, client_id) == [day]


@pytest.mark.parametrize(
    "hours_utc", [22.5, 23.5, 0.5, 1.5, 2.5], ids=["23:30", "0:30", "2:30 first", "before three", "after three"]
)
@pytest.mark.parametrize("change", ["2026-03-28", "2026-10-24"])
def test_the_nights_when_clocks_change_keep_their_days(
    house: House, client_id: str, phone: Phone, change: str, hours_utc: float
) -> None:
    base = datetime.fromisoformat(change).replace(tzinfo=UTC)
    instant = base + timedelta(hours=hours_utc if hours_utc > 12 else 24 + hours_utc)
    local = instant.astimezone(VIENNA)
    phone.log("note_written", {"text": "x"}, at=local.isoformat())
    phone.sync()
    assert _local_dates(house, client_id) == [local.date().isoformat()]


def test_a_day_that_the_client_wrote_wins_over_the_clock(house: House, client_id: str, phone: Phone) -> None:
    phone.log("session_finished", {"minutes": 20, "effort": 4, "day": "2026-06-05"})
    phone.log("session_finished", {"minutes": 20, "effort": 4, "day": "2026-06-12"})
    phone.sync()
    assert sorted(_local_dates(house, client_id)) == ["2026-06-05", "2026-06-12"]


@pytest.mark.parametrize("day", ["0001-01-01", "1969-12-31", "2999-01-01", "9999-12-31"])
def test_a_day_far_away_breaks_no_page(house: House, client_id: str, phone: Phone, day: str) -> None:
    body = {"planned_id": f"{day}.1", "day": day}
    phone.log("set_ticked", {**body, "prescription": "p1", "round": 1})
    phone.log("pain_reported", {**body, "rating": 9, "region": "knee", "side": "left", "when": "during"})
    phone.log("walk_logged", {"day": day, "distance_km": 1, "ascent_m": 1, "descent_m": 1, "minutes": 9, "pack_kg": 0})
    phone.log("symptom_reported", {"day": day, "symptom": "chest_pain"})
    answer = phone.sync()
    assert answer["acknowledged_through"] == 4
    for page in ("timeline", "overview", "adherence", "refused-events"):
        house.get(f"/clients/{client_id}/{page}")
    for path in ("/caseload", "/flags"):
        house.get(path)


def test_a_phone_whose_clock_stands_ten_years_off_is_heard_now(house: House, client_id: str, phone: Phone) -> None:
    for at in ("1970-01-02T00:00:00Z", "2036-06-10T08:00:00Z"):
        phone.log("note_written", {"text": at}, at=at)
    assert phone.sync()["acknowledged_through"] == 2
    heard = house.get(f"/clients/{client_id}/devices")["items"][0]["last_heard_at"]
    assert heard == "2026-06-10T08:00:00Z"
