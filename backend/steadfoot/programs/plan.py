"""Planned sessions: which version's day counts, what its planned id is, and how long its window runs."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from datetime import date, datetime, timedelta

from steadfoot.exercises.service import Library, library
from steadfoot.programs.content import (
    AnySession,
    PlannedDay,
    ProgramContent,
    expected_minutes,
    planned_load,
)

_LAST_WEEKDAY = 6


@dataclass(frozen=True, slots=True)
class Version:
    """A published version, as other steps of the workflow read it; ``library`` as it was at its publishing."""

    id: str
    number: int
    published_at: datetime
    effective_on: date
    published_by: str
    note: str
    changes: tuple[str, ...]
    content: ProgramContent
    library: Library = field(default_factory=library, compare=False, repr=False)


@dataclass(frozen=True, slots=True)
class Planned:
    """One planned session with its window, first to last day on which it may be done."""

    planned_id: str
    day: date
    window_from: date
    window_to: date
    fixed_day: bool
    session: AnySession
    version: int


@dataclass(frozen=True, slots=True)
class PlannedWeek:
    """What one ISO week asks for. ``planned_load`` is None where a session's minutes are not known."""

    starts_on: date
    sessions: int
    minutes: int | None
    planned_load: float | None


def monday_of(day: date) -> date:
    """Answer the Monday of a day's week (ISO 8601)."""
    return day - timedelta(days=day.weekday())


def window(day: PlannedDay) -> tuple[date, date]:
    """Answer the first and last day on which a planned session may be done."""
    if day.fixed_day:
        return day.date, day.date
    monday = monday_of(day.date)
    return monday, monday + timedelta(days=_LAST_WEEKDAY)


def planned_of(content: ProgramContent, version: int = 0) -> list[Planned]:
    """Answer each planned session of a normalised content in order; rest is left out but keeps its place."""
    sessions = {session.key: session for session in content.sessions}
    planned, places = [], dict[date, int]()
    for day in content.days:
        places[day.date] = places.get(day.date, 0) + 1
        session = sessions.get(day.session)
        if session is not None and session.kind != "rest":
            first, last = window(day)
            planned_id = f"{day.date.isoformat()}.{places[day.date]}"
            planned.append(Planned(planned_id, day.date, first, last, day.fixed_day, session, version))
    return planned


def in_force(versions: Iterable[Version], day: date) -> Version | None:
    """Answer the version that applies on a day: the newest of those effective by then."""
    effective = [version for version in versions if version.effective_on <= day]
    return max(effective, key=lambda version: version.number, default=None)


def planned_between(versions: Sequence[Version], first: date, last: date) -> list[Planned]:
    """Answer what was planned from the first to the last day, each by the version then in force.

    Days before the first version took effect have nothing planned, whatever that version's dates say: nobody
    can have done what was not published.
    """
    found: list[Planned] = []
    for version in versions:
        for planned in planned_of(version.content, version.number):
            if first <= planned.day <= last and in_force(versions, planned.day) is version:
                found.append(planned)
    return sorted(found, key=_order)


def _order(planned: Planned) -> tuple[date, int]:
    return planned.day, int(planned.planned_id.rpartition(".")[2])


def weeks_of(content: ProgramContent) -> list[PlannedWeek]:
    """Answer each ISO week from the first to the last planned session, empty ones too."""
    planned = planned_of(content)
    if not planned:
        return []
    monday, last = monday_of(planned[0].day), monday_of(planned[-1].day)
    weeks = []
    while monday <= last:
        weeks.append(_week(monday, [one.session for one in planned if monday_of(one.day) == monday]))
        monday += timedelta(days=_LAST_WEEKDAY + 1)
    return weeks


def _week(monday: date, sessions: list[AnySession]) -> PlannedWeek:
    minutes = [expected_minutes(session) for session in sessions]
    loads = [planned_load(session) for session in sessions]
    return PlannedWeek(monday, len(sessions), _sum(minutes), _sum(loads))  # type: ignore[arg-type]


def _sum(values: Sequence[float | None]) -> float | None:
    known = [value for value in values if value is not None]
    return sum(known) if len(known) == len(values) else None
