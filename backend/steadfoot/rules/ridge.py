"""The weeks of a program as loads, planned and done: what the ridge is drawn from."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from itertools import groupby
from typing import Literal

from steadfoot.rules.adherence import WEEK_DAYS


@dataclass(frozen=True, slots=True)
class Load:
    """One planned or extra session: loads in arbitrary units (effort times minutes), and whether any of it is
    heard."""

    day: date
    planned: float
    done: float
    touched: bool


@dataclass(frozen=True, slots=True)
class Week:
    """One week, Monday to Sunday.

    ``heard`` says whether the phone has reported since its end ("all"), since its beginning ("part"), or not
    ("none"). ``due_share``, for the running week only, is how much of its planned load was due by the last
    day heard, more than 0 and at most 1; the week is drawn at done / due_share. None elsewhere and while
    nothing is due.
    """

    starts_on: date
    planned_load: float
    done_load: float
    heard: Literal["all", "part", "none"]
    due_share: float | None


def monday_of(day: date) -> date:
    """Answer the Monday of a day's ISO week."""
    return day - timedelta(days=day.weekday())


def weeks(loads: Iterable[Load], today: date, heard_until: date | None) -> list[Week]:
    """Sum loads by week, from the first to the last with any; a week without sessions in between is kept at
    0."""
    by_week = {
        monday: list(group)
        for monday, group in groupby(
            sorted(loads, key=lambda load: load.day), key=lambda load: monday_of(load.day)
        )
    }
    if not by_week:
        return []
    first, last = min(by_week), max(by_week)
    mondays = [first + timedelta(weeks=n) for n in range((last - first).days // WEEK_DAYS + 1)]
    return [_week(monday, by_week.get(monday, []), today, heard_until) for monday in mondays]


def _week(monday: date, loads: Sequence[Load], today: date, heard_until: date | None) -> Week:
    planned = sum(load.planned for load in loads)
    running = monday == monday_of(today)
    share = _due_share(loads, planned, today, heard_until) if running else None
    return Week(monday, planned, sum(load.done for load in loads), _heard(monday, heard_until), share)


def _heard(monday: date, heard_until: date | None) -> Literal["all", "part", "none"]:
    if heard_until is None or heard_until < monday:
        return "none"
    return "all" if heard_until >= monday + timedelta(days=WEEK_DAYS) else "part"


def _due_share(loads: Sequence[Load], planned: float, today: date, heard_until: date | None) -> float | None:
    """Sessions of days before today that the phone has told about, and any it has told about early."""
    told = min(today, heard_until) if heard_until else date.min
    due = sum(load.planned for load in loads if load.touched or load.day < told)
    return due / planned if due > 0 else None
