"""A thousand check-ins of one person, of the eight weeks up to a day, as the phone writes them."""

from collections.abc import Iterator
from datetime import date, datetime, time, timedelta
from typing import Any
from zoneinfo import ZoneInfo

from steadfoot.core.ids import uuid7
from tests.builders import circuit, content
from tests.e2e.test_main_job import five_movements

ZONE = ZoneInfo("Europe/Vienna")
WEEKS = 9
ROUNDS, MOVEMENTS = 3, 5
_SECONDS_A_SET, _MS_APART = 47, 389
"""Not round, so that the times do not pack better than a person's would."""


def program(today: date) -> dict[str, Any]:
    """A session a day in the weeks before and the one that runs: five movements in three rounds."""
    session = circuit(rounds=ROUNDS, prescriptions=five_movements())
    return content(_first_day(today), weeks=WEEKS, sessions=[session], weekdays=tuple(range(7)))


def _first_day(today: date) -> date:
    return today - timedelta(days=today.weekday() + 7 * (WEEKS - 1))


def _session(day: date) -> Iterator[tuple[str, dict[str, Any]]]:
    planned = {"planned_id": f"{day}.1", "program_version": 1}
    yield "session_started", planned
    for made in range(ROUNDS * MOVEMENTS):
        body = {**planned, "prescription": f"p{made % MOVEMENTS + 1}", "round": made // MOVEMENTS + 1}
        yield "set_ticked", body
    yield "session_finished", {**planned, "minutes": 30 + day.day % 7, "effort": 4 + day.day % 3}
    if day.day % 3 == 0:
        yield "pain_reported", {**planned, "rating": 2, "region": "knee", "side": "left", "when": "after"}


def check_ins(today: date, count: int) -> list[dict[str, Any]]:
    """Answer the first ``count`` check-ins, each with an id of its own, without the numbers that a phone gives them."""
    found: list[dict[str, Any]] = []
    day = _first_day(today)
    while len(found) < count:
        begun = datetime.combine(day, time(7, day.day), ZONE)
        for done, (kind, body) in enumerate(_session(day)):
            at = begun + timedelta(seconds=_SECONDS_A_SET * done, milliseconds=_MS_APART * done)
            text = at.isoformat(timespec="milliseconds")
            found.append({"id": uuid7(at), "kind": kind, "recorded_at": text, "body": body})
        day += timedelta(days=1)
    return found[:count]
