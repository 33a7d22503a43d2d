"""Dose: what one session asks for, how long it takes, what it costs, and one rung easier or harder.

A set is one pass of one prescription in one round, both sides together. The ladder of an exercise is a list
of rungs, easiest first. Everything is plain values in and plain values out.
"""

import math
from collections.abc import Collection, Sequence
from dataclasses import dataclass, replace
from typing import Annotated, Final

from steadfoot.rules.sources import Cited, Kind, plausible
from steadfoot.rules.vocabulary import Kit, Sides

_HOUSE: Final = "house"


REPS_MIN: Final[Annotated[int, plausible("at least one repetition")]] = 1
REPS_MAX: Final[Annotated[int, plausible("more than 50 in one set is a different exercise")]] = 50
HOLD_MIN_S: Final[Annotated[int, plausible("at least one second")]] = 1
HOLD_MAX_S: Final[Annotated[int, plausible("five minutes")]] = 300
ROUNDS_MIN: Final[Annotated[int, plausible("at least one round")]] = 1
ROUNDS_MAX: Final[Annotated[int, plausible("ten rounds")]] = 10
REST_MAX_S: Final[Annotated[int, plausible("ten minutes between sets")]] = 600
LOAD_MAX_KG: Final[Annotated[int, plausible("200 kg")]] = 200
TEMPO_MAX_S: Final[Annotated[int, plausible("ten seconds on the way down")]] = 10
EFFORT_MAX: Final[Annotated[int, Cited(Kind.PUBLISHED, "foster-2001", "Session effort runs from 0 to 10")]] = 10
MINUTES_MAX: Final[Annotated[int, plausible("a day has 1440 minutes")]] = 1440
DISTANCE_MAX_KM: Final[Annotated[int, plausible("100 km in one walk")]] = 100
CLIMB_MAX_M: Final[Annotated[int, plausible("5000 m up or down in one walk")]] = 5000
PACK_MAX_KG: Final[Annotated[int, plausible("60 kg on the back")]] = 60

LOWERING_S: Final[
    Annotated[int, Cited(Kind.HOUSE, _HOUSE, "Lowering half of a repetition where no tempo is prescribed")]
] = 2
LIFTING_S: Final[Annotated[int, Cited(Kind.HOUSE, _HOUSE, "Lifting half of a repetition with its turn")]] = 2
SET_UP_S: Final[Annotated[int, Cited(Kind.HOUSE, _HOUSE, "Getting into place for one side of one set")]] = 10
WALK_KMH: Final[Annotated[int, Cited(Kind.HOUSE, _HOUSE, "Walking with a pack on paths; common practice")]] = 4
CLIMB_M_PER_H: Final[
    Annotated[int, Cited(Kind.HOUSE, _HOUSE, "One hour more for each 600 m of ascent; a walkers' rule of thumb")]
] = 600
EASE_OFF_PART: Final[
    Annotated[int, Cited(Kind.HOUSE, _HOUSE, "On the lowest rung one part in three of the dose is taken away")]
] = 3
HEAVY_EFFORT: Final[
    Annotated[int, Cited(Kind.HOUSE, _HOUSE, "A circuit expected at this effort or above (0 to 10) needs spacing")]
] = 5
SPACING_DAYS: Final[
    Annotated[
        int,
        Cited(Kind.HOUSE, _HOUSE, "48 hours between heavy sessions for the same muscles, in calendar days"),
    ]
] = 2
DAY_SESSIONS_MAX: Final[Annotated[int, plausible("four planned sessions a day")]] = 4

SIDES_WORDS: Final = {Sides.EACH: "each side in turn", Sides.BOTH: "both sides together"}
_STANDS_IN: Final = {Kit.STEP: Kit.STAIRS, Kit.PILLOW: Kit.TOWEL, Kit.MAT: Kit.TOWEL}
_EVERYWHERE: Final = frozenset({Kit.WALL})
_MINUTE_S: Final = 60


@dataclass(frozen=True, slots=True)
class Rung:
    """One variant on the ladder of an exercise; either ``reps`` or ``hold_s`` (low, high) is given."""

    variant: str
    name: str
    sides: Sides
    kit: frozenset[Kit]
    reps: tuple[int, int] | None
    hold_s: tuple[int, int] | None
    carries_load: bool


@dataclass(frozen=True, slots=True)
class Prescription:
    """One exercise variant with its dose: repetitions or a hold, load in kg, times in seconds."""

    key: str
    exercise: str
    variant: str
    sides: Sides
    reps_low: int | None
    reps_high: int | None
    hold_s: int | None
    load_kg: float | None
    tempo_down_s: int | None
    rest_s: int
    note: str


@dataclass(frozen=True, slots=True)
class Step:
    """A prescription moved by one rung or one dose, and the words that say what changed."""

    prescription: Prescription
    change: str


def missing_kit(needed: Collection[Kit], at_hand: Collection[Kit]) -> frozenset[Kit]:
    """Answer what of the needed kit is not in the house.

    A wall is everywhere, stairs stand in for a step, a folded towel for a pillow or a mat (house).

    >>> sorted(missing_kit({Kit.STEP, Kit.PACK, Kit.WALL}, {Kit.STAIRS}))
    [<Kit.PACK: 'pack'>]
    """
    have = _EVERYWHERE | set(at_hand)
    return frozenset(kit for kit in needed if kit not in have and _STANDS_IN.get(kit) not in have)


def planned_sets(rounds: int, prescriptions: int) -> int:
    """Answer the number of sets of a circuit: rounds times prescriptions."""
    return rounds * prescriptions


def set_seconds(prescription: Prescription) -> float:
    """Answer the expected seconds of one set with getting into place, without its rest.

    The middle of the repetition range counts. Prescriptions for each side are done twice. House constants.
    """
    sides = 2 if prescription.sides is Sides.EACH else 1
    return sides * (SET_UP_S + _work_seconds(prescription))


def _work_seconds(prescription: Prescription) -> float:
    if prescription.hold_s is not None:
        return prescription.hold_s
    low, high = prescription.reps_low or 0, prescription.reps_high or 0
    return (low + high) / 2 * (LIFTING_S + (prescription.tempo_down_s or LOWERING_S))


def circuit_minutes(rounds: int, prescriptions: Sequence[Prescription]) -> int:
    """Answer the expected whole minutes of a circuit, rounded up, without the rest after the last set."""
    if not prescriptions:
        return 0
    one_round = sum(set_seconds(one) + one.rest_s for one in prescriptions)
    return math.ceil((rounds * one_round - prescriptions[-1].rest_s) / _MINUTE_S)


def walk_minutes(distance_km: float, ascent_m: float) -> int:
    """Answer the expected whole minutes of a walk, rounded up: distance at walking speed plus the climb.

    >>> walk_minutes(8, 300)
    150
    """
    return math.ceil(_MINUTE_S * (distance_km / WALK_KMH + ascent_m / CLIMB_M_PER_H))


def planned_load(expected_effort: float, minutes: float) -> float:
    """Answer the planned session load in arbitrary units: effort (0 to 10) times minutes [foster-2001].

    >>> planned_load(5, 60)
    300
    """
    return expected_effort * minutes


def ease_off(prescription: Prescription, ladder: Sequence[Rung], at_hand: Collection[Kit]) -> Step | None:
    """Answer the prescription one step easier: the next easier rung that the kit in the house allows.

    On the lowest such rung a third of the repetitions or seconds is taken away instead (house). None where
    the variant is not on this ladder or nothing is left to take away.
    """
    place = _place(prescription, ladder)
    if place is None:
        return None
    here = ladder[place]
    for rung in reversed(ladder[:place]):
        if not missing_kit(rung.kit, at_hand):
            return _on_rung(prescription, here, rung, keep_load=rung.carries_load and Kit.PACK in rung.kit)
    return None if missing_kit(here.kit, at_hand) else _smaller_dose(prescription)


def progress(prescription: Prescription, ladder: Sequence[Rung], at_hand: Collection[Kit]) -> Step | None:
    """Answer the prescription on the next harder rung that the kit in the house allows; None at the top."""
    place = _place(prescription, ladder)
    if place is None:
        return None
    for rung in ladder[place + 1 :]:
        if not missing_kit(rung.kit, at_hand):
            return _on_rung(prescription, ladder[place], rung, keep_load=rung.carries_load)
    return None


def _place(prescription: Prescription, ladder: Sequence[Rung]) -> int | None:
    places = (place for place, rung in enumerate(ladder) if rung.variant == prescription.variant)
    return next(places, None)


def _on_rung(prescription: Prescription, here: Rung, rung: Rung, *, keep_load: bool) -> Step:
    dosed = _with_dose_of(replace(prescription, variant=rung.variant, sides=rung.sides), rung)
    moved = dosed if keep_load else replace(dosed, load_kg=None)
    words = f"{rung.name} instead of {here.name}"
    if dose_words(moved) != dose_words(prescription):
        words += f", {dose_words(moved)}"
    if moved.sides is not prescription.sides:
        words += f", {SIDES_WORDS[moved.sides]}"
    return Step(moved, words)


def _with_dose_of(prescription: Prescription, rung: Rung) -> Prescription:
    """Keep a dose that lies within the rung's own range; otherwise start at the rung's."""
    if rung.hold_s is not None:
        low, high = rung.hold_s
        held = prescription.hold_s
        hold = low if held is None else min(max(held, low), high)
        return replace(prescription, reps_low=None, reps_high=None, hold_s=hold, tempo_down_s=None)
    low, high = rung.reps or (REPS_MIN, REPS_MIN)
    if low <= (prescription.reps_low or 0) <= (prescription.reps_high or 0) <= high:
        return prescription
    return replace(prescription, reps_low=low, reps_high=high, hold_s=None)


def _smaller_dose(prescription: Prescription) -> Step | None:
    smaller = replace(
        prescription,
        reps_low=_less(prescription.reps_low),
        reps_high=_less(prescription.reps_high),
        hold_s=_less(prescription.hold_s),
    )
    if smaller == prescription:
        return None
    return Step(smaller, f"{dose_words(smaller)} instead of {dose_words(prescription)}")


def _less(amount: int | None) -> int | None:
    return None if amount is None else max(1, amount - math.ceil(amount / EASE_OFF_PART))


def dose_words(prescription: Prescription) -> str:
    """Answer repetitions or hold in words, without sides: "8 to 10 repetitions", "hold 30 seconds"."""
    if prescription.hold_s is not None:
        return f"hold {prescription.hold_s} {'second' if prescription.hold_s == 1 else 'seconds'}"
    low, high = prescription.reps_low, prescription.reps_high
    amount = str(high) if low == high else f"{low} to {high}"
    return f"{amount} {'repetition' if low == high == 1 else 'repetitions'}"
