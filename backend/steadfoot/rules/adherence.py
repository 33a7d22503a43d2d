"""What is known of a planned session, and how much of what was due has been done.

A phone may be offline for weeks. Silence is never read as "not done": it widens the answer to a range.
"""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from typing import Annotated, Final

from steadfoot.rules.sources import Cited, Kind
from steadfoot.rules.vocabulary import Status

WEEK_DAYS: Final[Annotated[int, Cited(Kind.PUBLISHED, "iso-8601", "A week is seven days and begins on Monday")]] = 7


@dataclass(frozen=True, slots=True)
class Window:
    """The days, both included, in which a planned session may be done."""

    first: date
    last: date


@dataclass(frozen=True, slots=True)
class Planned:
    """One planned session and what has been reported of it. ``sets_prescribed`` is at least 1."""

    day: date
    fixed_day: bool
    sets_prescribed: int
    sets_done: int
    finished: bool


@dataclass(frozen=True, slots=True)
class Standing:
    """What is known of a planned session.

    ``settled`` is False while the phone may hold more than it has told; ``due`` is False while nothing is
    owed yet.
    """

    status: Status
    settled: bool
    due: bool


@dataclass(frozen=True, slots=True)
class Ratio:
    """Done over prescribed, 0 to 1. ``low`` counts nothing that is not heard, ``high`` all of it.

    Both are None where nothing was prescribed, and equal where all that is due has been heard.
    """

    prescribed: int
    done: int
    low: float | None
    high: float | None


def window(planned_day: date, *, fixed_day: bool) -> Window:
    """Answer the days in which a planned session counts: its ISO week, Monday to Sunday, or its own day only.

    >>> window(date(2026, 10, 7), fixed_day=False)
    Window(first=datetime.date(2026, 10, 5), last=datetime.date(2026, 10, 11))
    """
    if fixed_day:
        return Window(planned_day, planned_day)
    monday = planned_day - timedelta(days=planned_day.weekday())
    return Window(monday, monday + timedelta(days=WEEK_DAYS - 1))


def standing(planned: Planned, today: date, heard_through: datetime | None) -> Standing:
    """Judge one planned session.

    Parameters:
        planned: the session with the sets that its check-ins name, on whatever day they were done.
        today: the client's calendar day.
        heard_through: the last moment a phone of the client reported, in the client's own time; None: never.

    Returns:
        Done when every prescribed set is reported; partly when some are, or the session was ended early.
        Otherwise missed (its window has closed and the phone has reported since), not heard (its day has
        passed, or its window has closed, and the phone has not reported since), open (its day has come and its
        window runs) or to come.
    """
    last = window(planned.day, fixed_day=planned.fixed_day).last
    heard = heard_through.date() if heard_through else date.min
    closed = today > last
    silent = heard <= last if closed else heard <= planned.day < today
    if planned.sets_done >= planned.sets_prescribed:
        return Standing(Status.DONE, settled=True, due=True)
    if planned.sets_done > 0 or planned.finished:
        return Standing(Status.PARTLY, settled=planned.finished or not silent, due=planned.finished or closed)
    if silent:
        return Standing(Status.NOT_HEARD, settled=False, due=True)
    return Standing(_waiting(planned.day, today, closed=closed), settled=True, due=closed)


def _waiting(day: date, today: date, *, closed: bool) -> Status:
    if closed:
        return Status.MISSED
    return Status.TO_COME if today < day else Status.OPEN


def ratio(prescribed: int, done: int, not_heard: int = 0) -> Ratio:
    """Answer done over prescribed, at most 1, as a range while ``not_heard`` of the prescribed may have been
    done.

    Follows the usual counting of the field [bailey-2020]; more than prescribed does not make up for other
    days.

    >>> ratio(12, 9)
    Ratio(prescribed=12, done=9, low=0.75, high=0.75)
    """
    if prescribed == 0:
        return Ratio(prescribed, done, None, None)
    return Ratio(prescribed, done, min(1.0, done / prescribed), min(1.0, (done + not_heard) / prescribed))


def by_session(sessions: Iterable[tuple[Planned, Standing]]) -> Ratio:
    """Count whole sessions among those due: only a session with all its sets is done."""
    due = [held for _, held in sessions if held.due]
    done = sum(held.status is Status.DONE for held in due)
    return ratio(len(due), done, sum(not held.settled for held in due))


def by_set(sessions: Iterable[tuple[Planned, Standing]]) -> Ratio:
    """Count sets among the sessions due; a session never counts for more sets than it prescribes."""
    due = [(planned, held) for planned, held in sessions if held.due]
    prescribed = sum(planned.sets_prescribed for planned, _ in due)
    done = sum(_capped(planned) for planned, _ in due)
    unknown = sum(planned.sets_prescribed - _capped(planned) for planned, held in due if not held.settled)
    return ratio(prescribed, done, unknown)


def _capped(planned: Planned) -> int:
    return min(planned.sets_done, planned.sets_prescribed)
