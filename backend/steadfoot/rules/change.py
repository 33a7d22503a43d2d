"""Whether a change is real: beyond what two tests of the same person differ by anyway."""

import math
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from enum import StrEnum
from typing import Annotated, Final

from steadfoot.rules.pain import PAIN_MAX
from steadfoot.rules.ranges import within
from steadfoot.rules.sources import Cited, Kind
from steadfoot.rules.symmetry import PERCENT

Z_95: Final[Annotated[float, Cited(Kind.PUBLISHED, "weir-2005", "Standard normal quantile for 95 percent")]] = 1.96
Z_90: Final[Annotated[float, Cited(Kind.PUBLISHED, "weir-2005", "Standard normal quantile for 90 percent")]] = 1.645
PAIN_LESS_POINTS: Final[
    Annotated[int, Cited(Kind.PUBLISHED, "farrar-2001", "About 2 points less is much improved")]
] = 2
PAIN_LESS_PERCENT: Final[
    Annotated[int, Cited(Kind.PUBLISHED, "farrar-2001", "About 30 percent less, whatever the pain at the start")]
] = 30


class Reality(StrEnum):
    """What a change can be called."""

    REAL = "real"
    WITHIN_ERROR = "within_error"
    UNKNOWN = "unknown"
    """The smallest real change is not known for this test."""


@dataclass(frozen=True, slots=True)
class Change:
    """A difference, after minus before, and what it can be called; ``better`` is None unless it is real."""

    difference: float
    reality: Reality
    better: bool | None

    def words(self, unit: str) -> str:
        """Tell it in words: "7 repetitions more, a real gain"."""
        if self.difference == 0:
            return "no change"
        amount = f"{abs(self.difference):g} {unit} {'more' if self.difference > 0 else 'less'}"
        if self.reality is Reality.UNKNOWN:
            return f"{amount}; how much is certain is not known for this test"
        if self.reality is Reality.WITHIN_ERROR:
            return f"{amount}, no certain change"
        return f"{amount}, a real {'gain' if self.better else 'loss'}"


def standard_error(deviation: float, icc: float) -> float:
    """Answer the standard error of measurement: SD x sqrt(1 - ICC) [weir-2005].

    Raises:
        OutOfRange: the intraclass correlation is outside 0 to 1, or the deviation negative.
    """
    within("icc", icc, 0, 1)
    within("deviation", deviation, 0, math.inf)
    return deviation * math.sqrt(1 - icc)


def minimal_detectable_change(standard_error: float, z: float = Z_95) -> float:
    """Answer the smallest change that two tests do not differ by anyway: z x sqrt(2) x SEM [weir-2005]."""
    return z * math.sqrt(2) * standard_error


def change(before: float, after: float, mdc: float | None, *, lower_is_better: bool = False) -> Change:
    """Judge a change. It is real from ``mdc`` on, the smallest real change in the test's unit.

    >>> change(18, 25, 7).reality.value
    'real'
    """
    difference = after - before
    if mdc is None:
        return Change(difference, Reality.UNKNOWN, None)
    if difference == 0 or abs(difference) < mdc:
        return Change(difference, Reality.WITHIN_ERROR, None)
    return Change(difference, Reality.REAL, (difference < 0) is lower_is_better)


@dataclass(frozen=True, slots=True)
class Retest:
    """One result of a test on its day, under one protocol."""

    day: date
    value: float


@dataclass(frozen=True, slots=True)
class Trend:
    """The course of a test: from the first result to the last, and from the one before the last."""

    since_first: Change
    since_last: Change


def trend(results: Sequence[Retest], mdc: float | None, *, lower_is_better: bool = False) -> Trend | None:
    """Answer the course over re-tests, in any order given; None for fewer than two.

    Only whole steps are judged, no line is drawn through few points.
    """
    in_order = sorted(results, key=lambda result: result.day)
    if len(in_order) < 2:  # noqa: PLR2004  a change needs two results
        return None
    first, before, last = in_order[0].value, in_order[-2].value, in_order[-1].value
    return Trend(
        change(first, last, mdc, lower_is_better=lower_is_better),
        change(before, last, mdc, lower_is_better=lower_is_better),
    )


@dataclass(frozen=True, slots=True)
class PainChange:
    """Less pain by both rules. The percentage is preferred; None where there was no pain to lessen."""

    points: int
    percent: float | None
    enough_points: bool
    enough_percent: bool


def pain_change(base: int, now: int) -> PainChange:
    """Judge whether pain became less in a way that matters [farrar-2001], ratings 0 to 10.

    Two points and 30 percent disagree at low and high pain (3 to 2, 9 to 7): show both.

    Raises:
        OutOfRange: a rating is outside 0 to 10.
    """
    within("base", base, 0, PAIN_MAX)
    within("now", now, 0, PAIN_MAX)
    points = base - now
    percent = PERCENT * points / base if base else None
    return PainChange(points, percent, points >= PAIN_LESS_POINTS, percent is not None and percent >= PAIN_LESS_PERCENT)
