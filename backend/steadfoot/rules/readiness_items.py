"""The items of readiness: asked and shown side by side, a mark in words, how sure it is, and what would close the gap.

There is no sum of them: a strong calf does not make up for a knee that hurts.
"""

from dataclasses import dataclass
from datetime import date
from enum import StrEnum
from typing import Annotated, Final

from steadfoot.rules.norms import TestSide
from steadfoot.rules.sources import Cited, Kind

READY_NEAR_PERCENT: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "From four fifths of what is asked it is near; common practice")]
] = 80
WALK_OLD_DAYS: Final[Annotated[int, Cited(Kind.HOUSE, "house", "Three weeks ago, and it may be less by now")]] = 21
TEST_OLD_DAYS: Final[Annotated[int, Cited(Kind.HOUSE, "house", "A test is taken again after twelve weeks")]] = 84


class Subject(StrEnum):
    """What is compared. Tests have the codes of their catalogue."""

    LONGEST_DAY = "longest_day"
    ASCENT = "ascent"
    DESCENT = "descent"
    PACK = "pack"
    WHOLE_DAY = "whole_day"
    DAYS_IN_A_ROW = "days_in_a_row"
    EFFORT = "effort"
    PAIN_AT_REST = "pain_at_rest"
    CHAIR_STAND = "chair-stand-30s"
    HEEL_RISE = "heel-rise"
    STEP_DOWN = "step-down"
    STANCE_OPEN = "single-leg-stance-open"
    SIDE_BRIDGE = "side-bridge"


class Mark(StrEnum):
    """How what was shown stands to what is asked, best first."""

    SHOWN = "shown"
    NEAR = "near"
    NOT_SHOWN = "not_shown"
    UNKNOWN = "unknown"


class Doubt(StrEnum):
    """Why an item is less sure than it looks."""

    MEASURE = "measure"
    """Within the error of measurement the mark could be another."""
    ONCE = "once"
    """One day shows it, and no second one."""
    OLD = "old"
    SILENT = "silent"
    """The phone has not been heard lately and may hold more."""
    TRIP_NOT_SAID = "trip_not_said"
    """The trip does not say it of every day."""
    LIGHTER = "lighter"
    """The walks that it rests on asked less than the hardest day."""
    SELF_RATED = "self_rated"
    NORM_NO_LIMIT = "norm_no_limit"
    """The norm tells what is usual; nobody has shown that less is too little for a trip."""
    NO_NORM = "no_norm"
    ONE_SIDE = "one_side"
    SIDES_DIFFER = "sides_differ"


class Closing(StrEnum):
    """What would close the gap."""

    NOTHING = "nothing"
    GROW = "grow"
    """Walks grow by the steps of a season."""
    SAY_TRIP = "say_trip"
    """The trip does not say what it asks for."""
    LOG_A_WALK = "log_a_walk"
    TWO_IN_A_ROW = "two_in_a_row"
    EASY_MIDDLE = "easy_middle"
    """More days in a row are hardly practised at home: easier days in between, or a long weekend."""
    SAME_WALK_EASIER = "same_walk_easier"
    RATE_A_WALK = "rate_a_walk"
    SETTLE_PAIN = "settle_pain"
    ASK_PAIN = "ask_pain"
    TAKE_TEST = "take_test"
    TRAIN_AND_TEST = "train_and_test"
    FOLLOW = "follow"
    """No norm for this person: look at it, and follow the change."""


class EvidenceKind(StrEnum):
    """What a piece of evidence is."""

    WALK = "walk"
    PAIN = "pain"
    TEST = "test"


@dataclass(frozen=True, slots=True)
class Evidence:
    """A check-in or a test result by its id, with the value that it shows."""

    kind: EvidenceKind
    id: str
    day: date
    value: float
    side: TestSide | None = None


@dataclass(frozen=True, slots=True)
class Part:
    """One thing of several that one day asks for at once."""

    subject: Subject
    asked: float
    shown: float


@dataclass(frozen=True, slots=True)
class Item:
    """One line of readiness.

    ``asked`` and ``shown`` are in ``unit``; with ``at_most`` less is better. ``low`` to ``high`` is what the value
    shown may really be, None where nothing is known of its error. ``weeks`` is what closing the gap takes at the
    stated steps, None where no number can be given; ``in_time`` whether the weeks before the taper suffice for it.
    ``cited`` says where the line between the marks comes from.
    """

    subject: Subject
    mark: Mark
    unit: str
    cited: Cited
    asked: float | None
    shown: float | None = None
    low: float | None = None
    high: float | None = None
    at_most: bool = False
    parts: tuple[Part, ...] = ()
    evidence: tuple[Evidence, ...] = ()
    doubts: tuple[Doubt, ...] = ()
    closing: Closing = Closing.NOTHING
    weeks: int | None = None
    in_time: bool | None = None


def mark_of(shown: float, asked: float) -> Mark:
    """Answer the mark of something of which more is better.

    >>> mark_of(10, 10).value, mark_of(8, 10).value, mark_of(7.9, 10).value
    ('shown', 'near', 'not_shown')
    """
    if shown >= asked:
        return Mark.SHOWN
    return Mark.NEAR if shown * 100 >= asked * READY_NEAR_PERCENT else Mark.NOT_SHOWN
