"""Problems of the dates: outside the program, too many on a day, too close together, weeks with nothing."""

from collections import Counter
from collections.abc import Iterator
from datetime import date, timedelta
from itertools import pairwise

from steadfoot.programs.content import Circuit, PlannedDay, ProgramContent, normalise
from steadfoot.programs.findings import Finding, Fix, Mend, error, warning
from steadfoot.programs.plan import monday_of
from steadfoot.programs.words import count_words, day_words, full_day_words
from steadfoot.rules.dose import DAY_SESSIONS_MAX, HEAVY_EFFORT, SPACING_DAYS

_WEEK = timedelta(days=7)


def day_findings(content: ProgramContent) -> Iterator[Finding]:
    """Answer the problems of the planned days."""
    yield from _unknown(content)
    yield from _outside(content)
    yield from _crowded(content)
    yield from _too_close(content)
    yield from _empty_weeks(content)


def _places(content: ProgramContent, unfit: set[int]) -> tuple[int, list[dict[str, object]]]:
    """Answer the first unfit place in the list of days, and the days without the unfit ones as JSON."""
    kept = [day.model_dump(mode="json") for place, day in enumerate(content.days) if place not in unfit]
    return min(unfit), kept


def _unknown(content: ProgramContent) -> Iterator[Finding]:
    keys = {session.key for session in content.sessions}
    unfit = {place for place, day in enumerate(content.days) if day.session not in keys}
    if unfit:
        first, kept = _places(content, unfit)
        count = count_words(len(unfit), "planned day names", "planned days name")
        text = f"{count} a session that is not in the program, first on {day_words(content.days[first].date)}."
        fix = Fix("Take them out", (Mend("/days", kept),))
        yield error(f"/days/{first}/session", "unknown_session", text, fix)


def _outside(content: ProgramContent) -> Iterator[Finding]:
    start, end = content.starts_on, normalise(content).ends_on
    unfit = {place for place, day in enumerate(content.days) if not start <= day.date <= (end or day.date)}
    if unfit:
        first, kept = _places(content, unfit)
        count = count_words(len(unfit), "planned session lies", "planned sessions lie")
        until = f" to {full_day_words(end)}" if end else ""
        day = full_day_words(content.days[first].date)
        text = f"{count} outside the program ({full_day_words(start)}{until}), first on {day}."
        fix = Fix("Take them out", (Mend("/days", kept),))
        yield error(f"/days/{first}/date", "outside_program", text, fix)


def _crowded(content: ProgramContent) -> Iterator[Finding]:
    counts = Counter(day.date for day in content.days)
    for day, count in sorted(counts.items()):
        if count > DAY_SESSIONS_MAX:
            place = max(place for place, planned in enumerate(content.days) if planned.date == day)
            text = f"{day_words(day)} has {count} sessions; a day holds at most {DAY_SESSIONS_MAX}."
            yield error(f"/days/{place}/date", "crowded_day", text)


def _too_close(content: ProgramContent) -> Iterator[Finding]:
    for session in content.sessions:
        if isinstance(session, Circuit) and session.expected_effort >= HEAVY_EFFORT:
            dated = sorted((day.date, place) for place, day in enumerate(content.days) if day.session == session.key)
            close = [later for earlier, later in pairwise(dated) if (later[0] - earlier[0]).days < SPACING_DAYS]
            if close:
                yield _spacing(session.name, *close[0], len(close))


def _spacing(name: str, day: date, place: int, count: int) -> Finding:
    often = f" This happens {count} times." if count > 1 else ""
    text = (
        f"{name or 'A hard circuit'} on {day_words(day)} comes less than 48 hours after the time before."
        f"{often} Common practice leaves a day between for the same muscles."
    )
    return warning(f"/days/{place}/date", "too_close", text)


def _empty_weeks(content: ProgramContent) -> Iterator[Finding]:
    """Only whole weeks count: a program that starts on a Sunday has not left a week empty."""
    end = normalise(content).ends_on
    if end is None:
        return
    busy = {monday_of(day.date) for day in _work(content)}
    monday = monday_of(content.starts_on + timedelta(days=6))
    empty = []
    while monday + _WEEK <= end + timedelta(days=1):
        if monday not in busy:
            empty.append(monday)
        monday += _WEEK
    if empty:
        yield warning("/days", "empty_week", _empty_words(empty))


def _empty_words(mondays: list[date]) -> str:
    if len(mondays) == 1:
        return f"Nothing is planned in the week of {day_words(mondays[0])}."
    return f"Nothing is planned in {len(mondays)} weeks, the first from {day_words(mondays[0])}."


def _work(content: ProgramContent) -> list[PlannedDay]:
    rest = {session.key for session in content.sessions if session.kind == "rest"}
    return [day for day in content.days if day.session not in rest]
