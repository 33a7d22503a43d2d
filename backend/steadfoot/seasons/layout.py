"""A season laid into a program's content: circuits in turn, walks with their measures, endurance, rest before the trip.

A lighter week does the same circuits with fewer rounds: volume down, effort kept.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from itertools import count, cycle

from steadfoot.programs.content import (
    AnySession,
    Cardio,
    Circuit,
    Goal,
    PlannedDay,
    ProgramContent,
    Rest,
    Walk,
    normalise,
)
from steadfoot.programs.lighter import with_rounds, with_suffix
from steadfoot.programs.season import SeasonPlan, request_of, walk_of
from steadfoot.rules.dose import MINUTES_MAX
from steadfoot.rules.season import STRENGTH_MINUTES, Session, Week, plan
from steadfoot.rules.season_request import REST_BEFORE_DAYS, Activity
from steadfoot.seasons.schemas import SeasonNames

_Dated = tuple[PlannedDay, AnySession]


@dataclass(frozen=True, slots=True)
class Frame:
    """What the whole program is called and leads up to, and what the season's own sessions are called."""

    title: str
    trip_name: str
    names: SeasonNames


def lay_out(
    season: SeasonPlan, base: ProgramContent | None, circuits: Sequence[Circuit], frame: Frame, today: date
) -> ProgramContent:
    """Answer a content whose days are the season's from its start on, or from today where it began before.

    Earlier days stay as they were in ``base``; without one the season's own are taken from its start.

    Raises:
        OutOfRange, NotPossible: as the rules say of the season.
    """
    first = season.starts_on if base is None else max(season.starts_on, today)
    kept = _lived_through(first, base)
    own = with_own_keys(circuits, [session for _, session in kept])
    coming = (one for one in _dated(season, own, frame.names) if one[0].date >= first)
    dated = [*kept, *coming]
    started = base.starts_on if base and kept else season.starts_on
    content = ProgramContent(
        title=frame.title,
        goal=Goal(name=frame.trip_name, date=season.trip_on),
        starts_on=min(started, season.starts_on),
        ends_on=season.trip_on - timedelta(days=1),
        sessions=list({session.key: session for _, session in dated}.values()),
        days=[day for day, _ in dated],
        season=season.model_copy(update={"circuits": [one.key for one in own]}),
    )
    return normalise(content)


def _lived_through(first: date, base: ProgramContent | None) -> list[_Dated]:
    if base is None:
        return []
    sessions = {session.key: session for session in base.sessions}
    return [(day, sessions[day.session]) for day in base.days if day.date < first and day.session in sessions]


def with_own_keys(circuits: Sequence[Circuit], kept: Sequence[AnySession]) -> list[Circuit]:
    """Answer the circuits, with new keys where theirs already mean something else among the sessions kept."""
    taken = {key for session in kept for key in _keys(session)}
    found: list[Circuit] = []
    for circuit in circuits:
        own = circuit if circuit in kept else _renamed(circuit, taken)
        taken |= _keys(own)
        found.append(own)
    return found


def _renamed(circuit: Circuit, taken: set[tuple[str, str]]) -> Circuit:
    tries = (with_suffix(circuit, f"-{number}") for number in count(2))
    if not _keys(circuit) & taken:
        return circuit
    return next(one for one in tries if not _keys(one) & taken)


def _keys(session: AnySession) -> set[tuple[str, str]]:
    prescriptions = session.prescriptions if isinstance(session, Circuit) else []
    return {("session", session.key), *(("prescription", one.key) for one in prescriptions)}


def _dated(season: SeasonPlan, circuits: Sequence[Circuit], names: SeasonNames) -> Iterator[_Dated]:
    locked = {(pin.date, pin.activity) for pin in season.pins if pin.locked}
    weeks = plan(request_of(season)).weeks
    turn = cycle(circuits)
    for number, week in enumerate(weeks):
        for one in week.sessions:
            if one.activity is Activity.STRENGTH:
                session: AnySession = _fewer_rounds(next(turn), one)
            else:
                session = _season_session(one, week, len(weeks) - number, names)
            fixed = (one.day, one.activity) in locked
            yield PlannedDay(date=one.day, session=session.key, fixed_day=fixed), session
    yield from _rest_before(season, weeks[-1], names)


def _fewer_rounds(circuit: Circuit, planned: Session) -> Circuit:
    """Answer the circuit with the share of its rounds that the week has of a whole session's minutes."""
    rounds = max(round(circuit.rounds * planned.minutes / STRENGTH_MINUTES), 1)
    if rounds >= circuit.rounds:
        return circuit
    return with_rounds(circuit, rounds)


def _season_session(one: Session, week: Week, weeks_to_go: int, names: SeasonNames) -> AnySession:
    """Answer a walk, named by the weeks to go so that the same walk keeps its key, or endurance of its minutes."""
    if one.walk is None:
        return Cardio(
            key=f"season-cardio-{one.minutes}",
            kind="cardio",
            name=names.cardio,
            activity=names.cardio_activity,
            expected_effort=one.effort,
            expected_minutes=one.minutes,
        )
    walk = walk_of(one.walk)
    is_long = one.walk.distance_km == max(other.walk.distance_km for other in week.sessions if other.walk)
    return Walk(
        key=f"season-{'long' if is_long else 'walk'}-{weeks_to_go}",
        kind="walk",
        name=names.long_walk if is_long else names.short_walk,
        distance_km=walk.distance_km,
        ascent_m=walk.ascent_m,
        descent_m=walk.ascent_m,
        pack_kg=walk.pack_kg,
        expected_effort=one.effort,
        expected_minutes=min(one.minutes, MINUTES_MAX),
    )


def _rest_before(season: SeasonPlan, last: Week, names: SeasonNames) -> Iterator[_Dated]:
    day = season.trip_on - timedelta(days=REST_BEFORE_DAYS)
    if day >= season.starts_on and all(one.day != day for one in last.sessions):
        rest = Rest(key="season-rest", kind="rest", name=names.rest)
        yield PlannedDay(date=day, session=rest.key), rest
