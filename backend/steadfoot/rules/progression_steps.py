"""From a verdict to the next dose: more load, more repetitions, the next variant or more rounds, as kit allows."""

import math
from collections.abc import Collection, Sequence
from dataclasses import dataclass, replace
from typing import Annotated, Final

from steadfoot.rules.dose import LOAD_MAX_KG, Prescription, Rung, Step, dose_words, ease_off, progress
from steadfoot.rules.progression import HOLD_OVER_GOAL_S, REPS_OVER_GOAL, Facts, decide
from steadfoot.rules.progression_words import PROGRESSION_CARDS, ProgressionRule, Reason, Suggested, Verdict
from steadfoot.rules.ranges import within
from steadfoot.rules.sources import Cited, Kind
from steadfoot.rules.vocabulary import Kit

LOAD_STEP_MIN_PERCENT: Final[
    Annotated[int, Cited(Kind.PUBLISHED, "ratamess-2009", "Load goes up by 2 to 10 percent")]
] = 2
LOAD_STEP_MAX_PERCENT: Final[
    Annotated[int, Cited(Kind.PUBLISHED, "ratamess-2009", "Load goes up by 2 to 10 percent")]
] = 10
LOAD_MIN_KG: Final[Annotated[float, Cited(Kind.HOUSE, "house", "Plausible range, to catch slips: 100 g")]] = 0.1
ROUNDS_USUAL_MAX: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "Two to four rounds of a circuit are common practice")]
] = 4
DELOAD_PART: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "In an easier week one of two rounds, rounded up, is done")]
] = 2
PACK_STEP_KG: Final[
    Annotated[float, Cited(Kind.HOUSE, "house", "Half a litre of water more is a step that every house has")]
] = 0.5
_PERCENT: Final = 100
_EXACT_TO: Final = 9
"""Decimal places beyond which a difference is an artefact of binary fractions."""


@dataclass(frozen=True, slots=True)
class Around:
    """What the suggestion can make use of: the prescription, its rounds, the ladder, the kit in the house.

    ``step_kg`` is the smallest step of load at hand; None where there is none or it is not known.
    """

    prescription: Prescription
    rounds: int
    ladder: Sequence[Rung]
    at_hand: Collection[Kit]
    step_kg: float | None = None


@dataclass(frozen=True, slots=True)
class Suggestion:
    """What to do with one prescription, for a practitioner to accept, edit or decline.

    ``step`` is the new prescription with its words, ``rounds`` the new number of rounds; each None where it
    stays as it is.
    """

    suggested: Suggested
    rule: ProgressionRule
    sentence: str
    reasons: tuple[Reason, ...]
    cited: Cited
    would_change: str
    step: Step | None = None
    rounds: int | None = None


def next_load(load_kg: float, step_kg: float) -> float | None:
    """Answer the smallest next load in kg that adds 2 to 10 percent in whole steps; None where there is none.

    Follows [ratamess-2009]. Where the smallest step is more than 10 percent, progress by repetitions or variant.

    Raises:
        OutOfRange: load or step is below 0.1 kg or above ``LOAD_MAX_KG``.

    >>> next_load(20, 1), next_load(8, 2.5)
    (21, None)
    """
    within("load_kg", load_kg, LOAD_MIN_KG, LOAD_MAX_KG, "kg")
    within("step_kg", step_kg, LOAD_MIN_KG, LOAD_MAX_KG, "kg")
    least = round(LOAD_STEP_MIN_PERCENT * load_kg / _PERCENT / step_kg, _EXACT_TO)
    added = max(1, math.ceil(least)) * step_kg
    if round(_PERCENT * added / load_kg, _EXACT_TO) > LOAD_STEP_MAX_PERCENT or load_kg + added > LOAD_MAX_KG:
        return None
    return round(load_kg + added, _EXACT_TO)


def load_step_kg(rung: Rung | None) -> float | None:
    """Answer the smallest step of load in kg that is at hand for a variant; None where it is not known.

    A pack takes water by the half litre (house); what other weights there are in the house is not known.
    """
    return PACK_STEP_KG if rung is not None and rung.carries_load and Kit.PACK in rung.kit else None


def suggest(facts: Facts, around: Around) -> Suggestion:
    """Answer the suggestion for one prescription from its last sessions, with the dose that would follow."""
    verdict = decide(facts)
    if verdict.suggested is Suggested.PROGRESS:
        return _up(verdict, around)
    if verdict.suggested is Suggested.REGRESS:
        return _down(verdict, around)
    if verdict.suggested is Suggested.DELOAD:
        return _said(verdict, Suggested.DELOAD, rounds=math.ceil(around.rounds / DELOAD_PART))
    return _said(verdict, verdict.suggested)


def _said(
    verdict: Verdict,
    suggested: Suggested,
    *more: Reason,
    step: Step | None = None,
    rounds: int | None = None,
) -> Suggestion:
    card = PROGRESSION_CARDS[verdict.rule]
    reasons = (*verdict.reasons, *more)
    return Suggestion(suggested, verdict.rule, card.sentence, reasons, card.cited, card.would_change, step, rounds)


def _up(verdict: Verdict, around: Around) -> Suggestion:
    """Load first, then repetitions within the variant's own range, then the next variant, then rounds."""
    ways = (
        (Suggested.PROGRESS_LOAD, more_load(around)),
        (Suggested.PROGRESS_REPS, more_reps(around)),
        (Suggested.PROGRESS_VARIANT, progress(around.prescription, around.ladder, around.at_hand)),
    )
    for suggested, step in ways:
        if step is not None:
            return _said(verdict, suggested, step=step)
    if around.rounds < ROUNDS_USUAL_MAX:
        return _said(verdict, Suggested.PROGRESS_ROUNDS, rounds=around.rounds + 1)
    return _said(verdict, Suggested.HOLD, Reason("Nothing harder is possible with the kit in the house."))


def _down(verdict: Verdict, around: Around) -> Suggestion:
    step = ease_off(around.prescription, around.ladder, around.at_hand)
    if step is None:
        none_left = Reason("Nothing easier is possible with the kit in the house: take the exercise out or swap it.")
        return _said(verdict, Suggested.REGRESS, none_left)
    return _said(verdict, Suggested.REGRESS, step=step)


def more_load(around: Around) -> Step | None:
    """Answer the prescription with the next load; None without load or step, or where the step is too large."""
    load_kg = around.prescription.load_kg
    if load_kg is None or around.step_kg is None:
        return None
    heavier = next_load(load_kg, around.step_kg)
    if heavier is None:
        return None
    return Step(replace(around.prescription, load_kg=heavier), f"{heavier:g} kg instead of {load_kg:g} kg")


def more_reps(around: Around) -> Step | None:
    """Answer the prescription with more repetitions or a longer hold, within its rung's own range (house)."""
    old = around.prescription
    rung = next((rung for rung in around.ladder if rung.variant == old.variant), None)
    if rung is None:
        return None
    new = _longer(old, rung) if old.hold_s is not None else _more(old, rung)
    return None if new == old else Step(new, f"{dose_words(new)} instead of {dose_words(old)}")


def _longer(old: Prescription, rung: Rung) -> Prescription:
    if rung.hold_s is None or old.hold_s is None:
        return old
    return replace(old, hold_s=max(old.hold_s, min(old.hold_s + HOLD_OVER_GOAL_S, rung.hold_s[1])))


def _more(old: Prescription, rung: Rung) -> Prescription:
    if rung.reps is None or old.reps_low is None or old.reps_high is None:
        return old
    added = max(0, min(REPS_OVER_GOAL, rung.reps[1] - old.reps_high))
    return replace(old, reps_low=old.reps_low + added, reps_high=old.reps_high + added)


def without_ladder(verdict: Verdict, load_kg: float | None, step_kg: float | None) -> tuple[Suggestion, float | None]:
    """Answer the suggestion and the next load in kg where neither exercise nor kit is known, only load and step.

    Without a load to add to, the way up is the next variant; where no step of 2 to 10 percent is at hand, it is
    repetitions. The way down is one step lighter (house); nothing is left of a load lighter than its step.

    Raises:
        OutOfRange: load or step cannot be.
    """
    heavier = None if load_kg is None or step_kg is None else next_load(load_kg, step_kg)
    if verdict.suggested is Suggested.REGRESS and load_kg is not None and step_kg is not None:
        return _said(verdict, Suggested.REGRESS), max(0, round(load_kg - step_kg, _EXACT_TO))
    if verdict.suggested is not Suggested.PROGRESS:
        return _said(verdict, verdict.suggested), load_kg
    if load_kg is None:
        return _said(verdict, Suggested.PROGRESS_VARIANT, Reason("There is no load to add to: next variant.")), None
    if heavier is None:
        return _said(verdict, Suggested.PROGRESS_REPS, Reason("No step of 2 to 10 percent is at hand.")), load_kg
    return _said(verdict, Suggested.PROGRESS_LOAD), heavier
