"""What the last sessions say of each prescription of the running program: what suggestions are made of. Pure.

Written into the client's sheet when something changes. What depends on today is left for the reader.
"""

from collections.abc import Collection, Iterable, Mapping, Sequence
from dataclasses import asdict, dataclass
from datetime import date
from typing import Any

from steadfoot.checkins.service import SetDone
from steadfoot.exercises.service import Library, ladder_of, variant_of
from steadfoot.monitoring.held import Rollup
from steadfoot.monitoring.progression_changes import is_easier_week
from steadfoot.programs.content import Circuit, Prescription, rule_prescription
from steadfoot.programs.plan import Version, planned_of
from steadfoot.rules.pain import Thresholds, Zone, zone
from steadfoot.rules.progression import SESSIONS_OVER_GOAL, Facts, Goal, SessionDone, decide
from steadfoot.rules.progression_steps import Around, load_step_kg, suggest
from steadfoot.rules.progression_words import Suggested
from steadfoot.rules.vocabulary import Kit, When


@dataclass(frozen=True, slots=True)
class Movement:
    """One prescription: its goal, its last sessions under this very dose, the pain since, whether more is possible.

    ``sessions`` are the oldest first; ``upward`` says that two-for-two is met and the kit allows something harder.
    """

    key: str
    session: str
    name: str
    loads: Sequence[str]
    low: int
    high: int
    hold: bool
    target_effort: int
    sessions: Sequence[SessionDone]
    pain_zone: str | None
    settled: bool
    pain: Sequence[tuple[str, date]]
    upward: bool

    def facts(self, **of_the_day: Any) -> Facts:
        """Answer it as the rules of progression take it, with what depends on the day."""
        return Facts(
            goal=Goal(self.low, self.high, self.hold),
            sessions=self.sessions,
            target_effort=self.target_effort,
            pain_zone=Zone(self.pain_zone) if self.pain_zone else None,
            settled=self.settled,
            pain_event_ids=tuple(event_id for event_id, _ in self.pain),
            **of_the_day,
        )

    def days(self) -> dict[str, date]:
        """Answer the day of each check-in that it names."""
        done = {event_id: one.day for one in self.sessions if one.day for event_id in one.event_ids}
        return done | dict(self.pain)


def around_of(prescription: Prescription, rounds: int, kit: Collection[Kit], library: Library) -> Around | None:
    """Answer what a suggestion can make use of; None where the library does not have the exercise."""
    entry = library.get(prescription.exercise)
    if entry is None:
        return None
    ladder = ladder_of(entry)
    rung = next((one for one in ladder if one.variant == prescription.variant), None)
    return Around(rule_prescription(prescription), rounds, ladder, kit, load_step_kg(rung))


def name_of(prescription: Prescription, library: Library) -> str:
    """Name the movement with its variant: "Heel raise, one leg"."""
    entry = library[prescription.exercise]
    rung = variant_of(entry, prescription.variant)
    return f"{entry.name}, {rung.name}" if rung else entry.name


def circuits(version: Version) -> list[Circuit]:
    """Answer the circuits of a version."""
    return [session for session in version.content.sessions if isinstance(session, Circuit)]


def planned_ids(version: Version) -> dict[str, list[str]]:
    """Answer the planned sessions of each circuit of a version by the circuit's key."""
    found: dict[str, list[str]] = {circuit.key: [] for circuit in circuits(version)}
    for planned in planned_of(version.content, version.number):
        if planned.session.key in found:
            found[planned.session.key].append(planned.planned_id)
    return found


def recent(version: Version, rollups: Iterable[Rollup], ticked: Mapping[str, Collection[str]]) -> set[str]:
    """Answer the planned sessions whose sets are worth reading: for each prescription, the newest few with any.

    ``ticked`` names the prescriptions that a planned session has a set of.
    """
    keys = {one.key for circuit in circuits(version) for one in circuit.prescriptions}
    newest = sorted(rollups, key=lambda rollup: (rollup.last_day, rollup.planned_id), reverse=True)
    left = dict.fromkeys(keys, SESSIONS_OVER_GOAL + 1)
    found = set()
    for rollup in newest:
        wanted = {key for key in ticked[rollup.planned_id] if left.get(key)}
        for key in wanted:
            left[key] -= 1
        if wanted:
            found.add(rollup.planned_id)
    return found


@dataclass(frozen=True, slots=True)
class Known:
    """All that movements are made of: versions, what each set came to, efforts by planned id, pain, limits, kit."""

    versions: Sequence[Version]
    sets: Mapping[str, Sequence[SetDone]]
    efforts: Mapping[str, int | None]
    pain: Sequence[Any]
    thresholds: Thresholds
    kit: Collection[Kit]


def movements(known: Known) -> list[Movement]:
    """Answer every prescription of the newest version whose exercise the library has."""
    if not known.versions:
        return []
    newest = known.versions[-1]
    return [
        _movement(known, circuit, one)
        for circuit in circuits(newest)
        if not is_easier_week(circuit)
        for one in circuit.prescriptions
        if one.exercise in newest.library
    ]


def _movement(known: Known, circuit: Circuit, one: Prescription) -> Movement:
    goal, since = Goal.of(rule_prescription(one)), _since(known.versions, circuit, one)
    sessions, library = _sessions(known, one, goal, since), known.versions[-1].library
    pain = _pain_since(known.pain, one, library[one.exercise].loads, sessions, since)
    working = [zone(entry.rating, known.thresholds) for entry in pain if entry.felt != When.NEXT_MORNING]
    mornings = [entry.rating for entry in pain if entry.felt == When.NEXT_MORNING]
    worst = max(working, key=list(Zone).index, default=None)
    return Movement(
        key=one.key,
        session=circuit.key,
        name=name_of(one, library),
        loads=tuple(region.value for region in library[one.exercise].loads),
        low=goal.low,
        high=goal.high,
        hold=goal.hold,
        target_effort=circuit.expected_effort,
        sessions=sessions,
        pain_zone=worst.value if worst else None,
        settled=not mornings or mornings[-1] <= known.thresholds.usual_pain,
        pain=tuple((entry.event_id, entry.day) for entry in pain),
        upward=_upward(goal, sessions, around_of(one, circuit.rounds, known.kit, library)),
    )


def _upward(goal: Goal, sessions: Sequence[SessionDone], around: Around | None) -> bool:
    """Look at nothing but the sets: what else may hold the dose depends on the day."""
    facts = Facts(goal, sessions)
    if around is None or decide(facts).suggested is not Suggested.PROGRESS:
        return False
    return suggest(facts, around).suggested is not Suggested.HOLD


def _since(versions: Sequence[Version], circuit: Circuit, one: Prescription) -> Version:
    """Answer the version from which on the prescription has been what it is: what came before shows another dose."""
    first = versions[-1]
    for version in reversed(versions):
        if (circuit.rounds, _dose(one)) not in [
            (earlier.rounds, _dose(same)) for earlier in circuits(version) for same in earlier.prescriptions
        ]:
            break
        first = version
    return first


def _dose(one: Prescription) -> tuple[object, ...]:
    return one.key, one.exercise, one.variant, one.sides, one.reps_low, one.reps_high, one.hold_s, one.load_kg


def _sessions(known: Known, one: Prescription, goal: Goal, since: Version) -> tuple[SessionDone, ...]:
    found = []
    for planned_id, sets in known.sets.items():
        own = [each for each in sets if each.prescription == one.key and _shows(each, one, since, known.versions[0])]
        if own:
            found.append((own[-1].instant, _session(own, one, goal, known.efforts.get(planned_id))))
    return tuple(session for _, session in sorted(found, key=lambda pair: pair[0])[-SESSIONS_OVER_GOAL:])


def _shows(each: SetDone, one: Prescription, since: Version, first: Version) -> bool:
    """Whether a set was done at the prescribed dose: under such a version, the same movement, no less weight."""
    later = since is first or (
        each.instant >= since.published_at if each.version is None else each.version >= since.number
    )
    lighter = each.load_kg is not None and one.load_kg is not None and each.load_kg < one.load_kg
    same = each.exercise in (None, one.exercise) and each.variant in (None, one.variant)
    return later and not lighter and same


def _session(own: Sequence[SetDone], one: Prescription, goal: Goal, effort: int | None) -> SessionDone:
    loads = [each.load_kg for each in own if each.load_kg is not None]
    return SessionDone(
        amounts=tuple(_amount(each, goal) for each in own),
        event_ids=(own[-1].event_id,),
        day=own[-1].day,
        variant=one.variant,
        load_kg=min(loads, default=one.load_kg),
        effort=effort,
    )


def _amount(each: SetDone, goal: Goal) -> int:
    """A set that is ticked without a number was done as prescribed: neither above the goal nor short of it."""
    if not each.managed:
        return 0
    told = each.hold_s if goal.hold else each.reps
    return goal.high if told is None else told


def _pain_since(
    pain: Sequence[Any],
    one: Prescription,
    loads: Collection[str],
    sessions: Sequence[SessionDone],
    since: Version,
) -> list[Any]:
    """Answer reports since the first of the last sessions on the movement, or on a place it loads if none is named."""
    first = sessions[0].day if sessions else None
    return [
        entry
        for entry in pain
        if (entry.prescription == one.key or (entry.prescription is None and entry.region in loads))
        and first is not None
        and entry.day >= first
        and (since.number == 1 or entry.instant >= since.published_at)
    ]


def to_json(movement: Movement) -> list[Any]:
    """Answer a movement as plain JSON values, without the names of its fields."""
    values = asdict(movement)
    values["sessions"] = [[*one.amounts] + [_rest(one)] for one in movement.sessions]
    values["pain"] = [[event_id, day.isoformat()] for event_id, day in movement.pain]
    return list(values.values())


def _rest(one: SessionDone) -> list[Any]:
    assert one.day is not None, "a check-in has its day"
    return [list(one.event_ids), one.day.isoformat(), one.variant, one.load_kg, one.effort]


def of_json(row: Sequence[Any]) -> Movement:
    """Answer a movement from its JSON values."""
    values = dict(zip(Movement.__slots__, row, strict=True))
    values["sessions"] = tuple(_session_of(one) for one in values["sessions"])
    values["pain"] = tuple((event_id, date.fromisoformat(day)) for event_id, day in values["pain"])
    return Movement(**values)


def _session_of(row: Sequence[Any]) -> SessionDone:
    *amounts, (event_ids, day, variant, load_kg, effort) = row
    return SessionDone(tuple(amounts), tuple(event_ids), date.fromisoformat(day), variant, load_kg, effort)
