"""Planned sessions with what check-ins say of each: where the plan and the phone's entries meet. Pure."""

import json
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date
from typing import Protocol

from steadfoot.programs.content import AnySession, Circuit, Rest, planned_load, planned_sets
from steadfoot.programs.plan import Planned as PlannedSession
from steadfoot.programs.plan import Version, in_force, planned_of
from steadfoot.rules.adherence import Planned
from steadfoot.rules.effort import session_load
from steadfoot.rules.ridge import Load


class Rollup(Protocol):
    """What the events say of one planned session, as check-ins keep it."""

    planned_id: str
    planned_day: date
    last_day: date
    program_version: int | None
    sets: str
    minutes: int | None
    effort: int | None
    finished: bool


@dataclass(frozen=True, slots=True)
class Held:
    """One planned session, judged under the version that its check-ins name. Loads in arbitrary units."""

    planned_id: str
    day: date
    name: str
    kind: str
    fixed_day: bool
    sets_prescribed: int
    sets_done: int
    finished: bool
    program_version: int
    expected_effort: int
    done_on: date | None
    effort: int | None
    minutes: int | None
    planned_load: float | None
    done_load: float | None

    def planned(self) -> Planned:
        """Answer it as the rules of adherence take it."""
        return Planned(self.day, self.fixed_day, self.sets_prescribed, self.sets_done, self.finished)

    def load(self) -> Load:
        """Answer it as the ridge takes it; a session done but not rated counts with its share of the plan."""
        planned = self.planned_load or 0
        share = min(self.sets_done, self.sets_prescribed) / self.sets_prescribed
        done = planned * share if self.done_load is None else self.done_load
        return Load(self.day, planned, done, touched=self.done_on is not None)


def planned_sessions(versions: Sequence[Version]) -> dict[str, PlannedSession]:
    """Answer every planned session by its id, each by the version in force on its day.

    Days before the first version took effect follow that version: a program may be entered after it began.
    """
    found: dict[str, PlannedSession] = {}
    for version in versions:
        for planned in _asked(version).values():
            if (in_force(versions, planned.day) or versions[0]) is version:
                found[planned.planned_id] = planned
    return found


def held_sessions(versions: Sequence[Version], rollups: Iterable[Rollup]) -> tuple[list[Held], list[Load]]:
    """Answer the planned sessions in order with what was reported, and the loads of sessions outside any plan.

    A session begun under one version is judged under it, whatever was published since.
    """
    plan, by_version = planned_sessions(versions), {version.number: _asked(version) for version in versions}
    by_id = {rollup.planned_id: rollup for rollup in rollups}
    for rollup in by_id.values():
        begun = by_version.get(rollup.program_version or 0, {}).get(rollup.planned_id)
        if begun is not None:
            plan[rollup.planned_id] = begun
    held = [_held(planned, by_id.get(planned.planned_id)) for planned in plan.values()]
    extra = [_extra(rollup) for rollup in by_id.values() if rollup.planned_id not in plan]
    return sorted(held, key=lambda one: (one.day, one.planned_id)), [load for load in extra if load.done > 0]


def _asked(version: Version) -> dict[str, PlannedSession]:
    """Answer the sessions of a version that ask for any set, by their id."""
    planned = planned_of(version.content, version.number)
    return {one.planned_id: one for one in planned if planned_sets(one.session) > 0}


def _extra(rollup: Rollup) -> Load:
    return Load(rollup.planned_day, 0, _rated(rollup) or 0, touched=True)


def _rated(rollup: Rollup | None) -> float | None:
    if rollup is None or rollup.effort is None or rollup.minutes is None:
        return None
    return session_load(rollup.effort, rollup.minutes)


def _sets_done(session: AnySession, rollup: Rollup) -> int:
    """Count the ticks that the session asks for; a walk or other cardio is one set, done when it is ended."""
    ticked = json.loads(rollup.sets)
    if not isinstance(session, Circuit):
        return int(rollup.finished or bool(ticked))
    keys = {one.key for one in session.prescriptions}
    return sum(key in keys and 1 <= turn <= session.rounds for key, turn in ticked)


def _held(planned: PlannedSession, rollup: Rollup | None) -> Held:
    session = planned.session
    sets_done = _sets_done(session, rollup) if rollup else 0
    begun = rollup is not None and (sets_done > 0 or rollup.finished)
    return Held(
        planned_id=planned.planned_id,
        day=planned.day,
        name=session.name,
        kind=session.kind,
        fixed_day=planned.fixed_day,
        sets_prescribed=planned_sets(session),
        sets_done=sets_done,
        finished=rollup.finished if rollup else False,
        program_version=planned.version,
        expected_effort=0 if isinstance(session, Rest) else session.expected_effort,
        done_on=rollup.last_day if rollup and begun else None,
        effort=rollup.effort if rollup else None,
        minutes=rollup.minutes if rollup else None,
        planned_load=planned_load(session),
        done_load=_rated(rollup),
    )
