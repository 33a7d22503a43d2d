"""The load of days and weeks: how much, how alike the days are, and two running averages.

Load tells what was done. It does not tell who will be hurt: ratios of short to long averages did no better than
a model without any load [impellizzeri-2021], so none is made here.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum
from statistics import mean, stdev
from typing import Annotated, Final

from steadfoot.rules.adherence import WEEK_DAYS
from steadfoot.rules.dose import MINUTES_MAX
from steadfoot.rules.effort import EFFORT_MAX
from steadfoot.rules.ranges import OutOfRange, within
from steadfoot.rules.sources import Cited, Kind

SHORT_SPAN_DAYS: Final[
    Annotated[int, Cited(Kind.PUBLISHED, "williams-2017", "N = 7 for the short average, in days")]
] = 7
LONG_SPAN_DAYS: Final[
    Annotated[int, Cited(Kind.PUBLISHED, "williams-2017", "N = 28 for the long average, in days")]
] = 28
DAY_LOAD_MAX: Final[
    Annotated[int, Cited(Kind.DERIVED, "foster-2001", "10 of effort for the 1440 minutes of a day")]
] = EFFORT_MAX * MINUTES_MAX


class LoadNumber(StrEnum):
    """The numbers of ``Load`` by their codes, which stay the same in every language."""

    WEEKLY_LOAD = "weekly_load"
    MONOTONY = "monotony"
    STRAIN = "strain"
    EWMA_7 = "ewma_7"
    EWMA_28 = "ewma_28"


@dataclass(frozen=True, slots=True)
class Tells:
    """What a number can and cannot tell, in plain words, and the work that it follows."""

    can: str
    cannot: str
    source: str


LIMITS: Final = {
    LoadNumber.WEEKLY_LOAD: Tells(
        "How much was done in the last seven days.",
        "It cannot tell how much is right for a person.",
        "foster-2001",
    ),
    LoadNumber.MONOTONY: Tells(
        "How alike the seven days were: higher means fewer easy days.",
        "It cannot be worked out when all days are the same, and it hangs on rest days being logged as rest.",
        "foster-1998",
    ),
    LoadNumber.STRAIN: Tells(
        "Weekly load times monotony: much and always the same is high.",
        "It has no known safe limit.",
        "foster-1998",
    ),
    LoadNumber.EWMA_7: Tells(
        "Running average that leans on the last week: it shows a change soon.",
        "It shows noise just as soon.",
        "williams-2017",
    ),
    LoadNumber.EWMA_28: Tells(
        "Running average that leans on the last four weeks.",
        "It needs about four weeks to settle, and until then says little.",
        "williams-2017",
    ),
}
TELLS: Final = {number.value: f"{tells.can} {tells.cannot}" for number, tells in LIMITS.items()}
"""The same, one sentence after the other."""
CAUTION: Final = "None of these numbers says who will be hurt. Read them beside pain, effort and the person."


@dataclass(frozen=True, slots=True)
class Load:
    """Loads in arbitrary units (effort times minutes). Monotony and strain are None where all days are alike."""

    weekly_load: float
    monotony: float | None
    strain: float | None
    ewma_7: float
    ewma_28: float


class TooFewDays(ValueError):
    """Fewer days than a week."""

    def __init__(self, days: int) -> None:
        self.days = days
        super().__init__(f"{days} days are given; {WEEK_DAYS} or more are needed, with a 0 for a day of rest.")


def load(daily: Sequence[float]) -> Load:
    """Answer the load of the last seven days and the running averages through the last day.

    Parameters:
        daily: load of each day in order, effort (0 to 10) times minutes, 0 for rest; at least seven.

    Follows [foster-1998] and [williams-2017].

    Raises:
        TooFewDays: there are fewer than seven.
        OutOfRange: a day's load is below 0 or above ``DAY_LOAD_MAX``.
    """
    if len(daily) < WEEK_DAYS:
        raise TooFewDays(len(daily))
    for one in daily:
        within("day_load", one, 0, DAY_LOAD_MAX, "effort x minutes")
    week = daily[-WEEK_DAYS:]
    flat = monotony(week)
    total = sum(week)
    strain = None if flat is None else total * flat
    return Load(total, flat, strain, ewma(daily, SHORT_SPAN_DAYS), ewma(daily, LONG_SPAN_DAYS))


def monotony(week: Sequence[float]) -> float | None:
    """Answer the mean daily load over its standard deviation, rest days counted as 0.

    Follows [foster-1998]; of the two deviations in use we take the sample's (n - 1). None where all days are
    alike: the deviation is 0 and the ratio undefined.

    Raises:
        OutOfRange: it is not seven days.

    >>> monotony([240] * 7) is None
    True
    """
    if len(week) != WEEK_DAYS:
        raise OutOfRange("days", len(week), WEEK_DAYS, WEEK_DAYS, "days")
    spread = stdev(week)
    return mean(week) / spread if spread else None


def ewma(daily: Sequence[float], span_days: int) -> float:
    """Answer the exponentially weighted moving average of daily loads on the last day.

    Each day counts ``2 / (span + 1)``, the average before it the rest; the first day is the first average.
    Follows [williams-2017].

    Raises:
        TooFewDays: there is no day at all.

    >>> ewma([300, 0], 7)
    225.0
    """
    if not daily:
        raise TooFewDays(0)
    weight = 2 / (span_days + 1)
    average = float(daily[0])
    for one in daily[1:]:
        average = weight * one + (1 - weight) * average
    return average
