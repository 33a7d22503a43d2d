"""The weeks of a program as loads, planned and done: what the ridge is drawn from."""

from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
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
class Sum:
    """The loads of one week, Monday to Sunday."""

    starts_on: date
    planned_load: float
    done_load: float


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


def sums(loads: Iterable[Load]) -> list[Sum]:
    """Add up loads by week, from the first to the last with any; a week without sessions in between is 0."""
    planned: dict[date, float] = defaultdict(float)
    done: dict[date, float] = defaultdict(float)
    for load in loads:
        monday = monday_of(load.day)
        planned[monday] += load.planned
        done[monday] += load.done
    if not planned:
        return []
    first, last = min(planned), max(planned)
    mondays = [first + timedelta(weeks=n) for n in range((last - first).days // WEEK_DAYS + 1)]
    return [Sum(monday, planned.get(monday, 0), done.get(monday, 0)) for monday in mondays]


def weeks(by_week: Iterable[Sum], running: Iterable[Load], today: date, heard_until: date | None) -> list[Week]:
    """Answer what is drawn of each week.

    Parameters:
        by_week: the sums of every week.
        running: the sessions of the week that ``today`` lies in; others are passed over.
        today: the client's calendar day.
        heard_until: the last day on which a phone reported; None for never.
    """
    this_week = monday_of(today)
    now = [load for load in running if monday_of(load.day) == this_week]
    share = _due_share(now, today, heard_until)
    return [
        Week(
            week.starts_on,
            week.planned_load,
            week.done_load,
            _heard(week.starts_on, heard_until),
            share if week.starts_on == this_week else None,
        )
        for week in by_week
    ]


def _heard(monday: date, heard_until: date | None) -> Literal["all", "part", "none"]:
    if heard_until is None or heard_until < monday:
        return "none"
    return "all" if heard_until >= monday + timedelta(days=WEEK_DAYS) else "part"


def _due_share(loads: Sequence[Load], today: date, heard_until: date | None) -> float | None:
    """Count the days before today that the phone has told about, and sessions it has told about early."""
    told = min(today, heard_until) if heard_until else date.min
    due = sum(load.planned for load in loads if load.touched or load.day < told)
    return due / sum(load.planned for load in loads) if due > 0 else None
