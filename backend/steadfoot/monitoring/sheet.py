"""A client's sheet: the planned sessions and weeks in one text, written when something changes, read by the
caseload."""

import json
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, fields
from datetime import date
from operator import attrgetter
from typing import Any

from steadfoot.core.texts import canonical
from steadfoot.monitoring import movements
from steadfoot.monitoring.held import Held
from steadfoot.monitoring.movements import Movement
from steadfoot.programs.plan import Version
from steadfoot.rules.ridge import Load, Sum, sums

_NAMES = tuple(field.name for field in fields(Held))
_DAY, _DONE_ON = _NAMES.index("day"), _NAMES.index("done_on")
_values = attrgetter(*_NAMES)
_UPWARD = Movement.__slots__.index("upward")


@dataclass(frozen=True, slots=True)
class Goal:
    """What a client's program leads up to."""

    name: str
    date: date


@dataclass(frozen=True, slots=True)
class Sheet:
    """A client's program as it stands. ``rows`` are sessions by day, opened only as far as they are asked
    for."""

    number: int | None
    title: str
    goal: Goal | None
    rows: Sequence[Sequence[Any]]
    weeks: Sequence[Sum]
    extras: Sequence[Load]
    moves: Sequence[Sequence[Any]]
    circuits: Mapping[str, Sequence[str]]

    def movements(self, *, upward: bool = False) -> list[Movement]:
        """Answer the prescriptions of the running program with what their last sessions say; only those whose sets
        ask for more, if so named: the others are not opened."""
        return [movements.of_json(row) for row in self.moves if row[_UPWARD] or not upward]

    def sessions(self, first: date, last: date) -> list[Held]:
        """Answer the planned sessions from the first to the last day."""
        begin, end = first.isoformat(), last.isoformat()
        return [_open(row) for row in self.rows if begin <= row[_DAY] <= end]

    def day_of_first(self) -> date | None:
        """Answer the day of the first planned session."""
        return date.fromisoformat(self.rows[0][_DAY]) if self.rows else None

    def day_of_last(self, count: int, today: date) -> date | None:
        """Answer the day of the session so many places back from today; of the first, if there are fewer."""
        until = today.isoformat()
        days = [row[_DAY] for row in self.rows if row[_DAY] <= until][-count:]
        return date.fromisoformat(days[0]) if days else None


EMPTY = Sheet(None, "", None, (), (), (), (), {})


def written(
    versions: Sequence[Version], sessions: Sequence[Held], extras: Sequence[Load], moves: Sequence[Movement]
) -> str:
    """Answer the sheet as canonical text."""
    newest = versions[-1] if versions else None
    goal = newest.content.goal if newest else None
    weeks = sums([*(session.load() for session in sessions), *extras])
    return canonical(
        {
            "number": newest.number if newest else None,
            "title": newest.content.title if newest else "",
            "goal": [goal.name, goal.date.isoformat()] if goal else None,
            "sessions": [_row(session) for session in sessions],
            "weeks": [[week.starts_on.isoformat(), week.planned_load, week.done_load] for week in weeks],
            "extras": [[extra.day.isoformat(), extra.done] for extra in sorted(extras, key=lambda load: load.day)],
            "movements": [movements.to_json(move) for move in moves],
            "circuits": movements.planned_ids(newest) if newest else {},
        }
    )


def read(text: str | None) -> Sheet:
    """Answer a sheet from its text; an empty one where none was ever written."""
    if text is None:
        return EMPTY
    content = json.loads(text)
    goal = content["goal"]
    return Sheet(
        content["number"],
        content["title"],
        Goal(goal[0], date.fromisoformat(goal[1])) if goal else None,
        content["sessions"],
        [Sum(date.fromisoformat(monday), planned, done) for monday, planned, done in content["weeks"]],
        [Load(date.fromisoformat(day), 0, done, touched=True) for day, done in content["extras"]],
        # A sheet written before there were suggestions has none until the next check-in.
        content.get("movements", ()),
        content.get("circuits", {}),
    )


def _row(session: Held) -> list[Any]:
    return [value.isoformat() if isinstance(value, date) else value for value in _values(session)]


def _open(row: Sequence[Any]) -> Held:
    values = list(row)
    values[_DAY] = date.fromisoformat(values[_DAY])
    if values[_DONE_ON] is not None:
        values[_DONE_ON] = date.fromisoformat(values[_DONE_ON])
    return Held(*values)
