"""What a progression rule can suggest, and the words it is told in: title, source, what would change it."""

from dataclasses import dataclass
from enum import StrEnum
from typing import Final

from steadfoot.rules.sources import Cited, Kind, house


class Suggested(StrEnum):
    """What to do with one prescription."""

    PROGRESS = "progress"
    """Progress, by whichever way the exercise allows; never handed out as it is."""
    PROGRESS_REPS = "progress_reps"
    PROGRESS_LOAD = "progress_load"
    PROGRESS_VARIANT = "progress_variant"
    PROGRESS_ROUNDS = "progress_rounds"
    HOLD = "hold"
    REGRESS = "regress"
    DELOAD = "deload"
    REST = "rest"


class ProgressionRule(StrEnum):
    """The rules on progress, in the order in which they are asked."""

    PAIN_HIGH = "pain_high"
    FLAG_OPEN = "flag_open"
    NOT_ENOUGH = "not_enough"
    SPACING = "spacing_48h"
    SHORT_OF_GOAL = "short_of_goal"
    DELOAD_DUE = "deload_due"
    ADHERENCE_LOW = "adherence_low"
    EFFORT_ABOVE_TARGET = "effort_above_target"
    PAIN_ACCEPTABLE = "pain_acceptable"
    TWO_FOR_TWO = "two_for_two"
    NOT_YET = "not_yet_two_for_two"


@dataclass(frozen=True, slots=True)
class Reason:
    """One reason in words, with the check-ins that show it."""

    words: str
    event_ids: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Verdict:
    """What a rule suggests and why."""

    rule: ProgressionRule
    suggested: Suggested
    reasons: tuple[Reason, ...]


@dataclass(frozen=True, slots=True)
class ProgressionCard:
    """What a page says of a rule on progress."""

    sentence: str
    cited: Cited
    would_change: str


PROGRESSION_CARDS: Final = {
    ProgressionRule.PAIN_HIGH: ProgressionCard(
        "Go one step easier and ask how it is.",
        Cited(Kind.PUBLISHED, "silbernagel-2007", "Above 5 of 10, or not settled by morning, is too much"),
        "Pain of 5 or less while training that is back to usual the next morning.",
    ),
    ProgressionRule.FLAG_OPEN: ProgressionCard(
        "Keep the dose: a flag about this place waits for an answer.",
        house("No more while a person has not looked at the pain"),
        "An answer to the open flag.",
    ),
    ProgressionRule.NOT_ENOUGH: ProgressionCard(
        "Keep the dose: there is nothing to judge by yet.",
        house("No suggestion without check-ins"),
        "Two sessions with their sets reported.",
    ),
    ProgressionRule.SPACING: ProgressionCard(
        "Leave a day between hard sessions.",
        house("48 hours for the same muscles, by calendar days; common practice"),
        "Two or more calendar days after the last hard session.",
    ),
    ProgressionRule.SHORT_OF_GOAL: ProgressionCard(
        "Go one step easier: the goal was out of reach twice.",
        house("Not one set at the low end of the goal in two sessions"),
        "One set that reaches the low end of the goal.",
    ),
    ProgressionRule.DELOAD_DUE: ProgressionCard(
        "Take one easier week: half the rounds, the same load.",
        house("A lighter week after a number of hard ones that the practice sets"),
        "A week with fewer than two hard sessions.",
    ),
    ProgressionRule.ADHERENCE_LOW: ProgressionCard(
        "Keep the dose and ask what got in the way.",
        house("Below half of what was due"),
        "Half or more of what is due done, or heard of.",
    ),
    ProgressionRule.EFFORT_ABOVE_TARGET: ProgressionCard(
        "Keep the dose: it felt harder than planned.",
        house("2 or more above the planned effort, 0 to 10"),
        "A session at most 1 above the planned effort.",
    ),
    ProgressionRule.PAIN_ACCEPTABLE: ProgressionCard(
        "Keep the dose while pain is in the acceptable band.",
        Cited(Kind.PUBLISHED, "silbernagel-2007", "3 to 5 of 10 is acceptable, not a reason for more"),
        "Pain of 2 or less while training, back to usual the next morning.",
    ),
    ProgressionRule.TWO_FOR_TWO: ProgressionCard(
        "Time for more: well above the goal twice running.",
        Cited(Kind.PUBLISHED, "baechle-2008", "Two-for-two; for holds 5 seconds, which is ours"),
        "A last set less than two repetitions (5 seconds) above the goal, or pain.",
    ),
    ProgressionRule.NOT_YET: ProgressionCard(
        "Keep the dose for now.",
        Cited(Kind.PUBLISHED, "baechle-2008", "Two-for-two is not met"),
        "Last sets two repetitions (5 seconds) above the goal in two sessions running, at the same load.",
    ),
}
