"""Where to cut a way into days that take about as long as each other."""

from collections.abc import Sequence
from typing import Annotated, Final

from steadfoot.rules.ranges import within
from steadfoot.rules.route import Stretch
from steadfoot.rules.sources import Cited, Kind
from steadfoot.rules.walking_time import tobler_h

DAYS_MAX: Final[Annotated[int, Cited(Kind.HOUSE, "house", "Plausible range, to catch slips: a trip of two months")]] = (
    60
)


def even_cuts(stretches: Sequence[Stretch], days: int) -> tuple[float, ...]:
    """Answer the metres from the start at which each day but the last ends, by moving hours of [tobler-1993].

    Within a stretch the hours are shared by its length.

    Parameters:
        stretches: the way, in order.
        days: 1 to ``DAYS_MAX``.

    Raises:
        OutOfRange: too many days, or none.

    >>> even_cuts([Stretch(0, 1000, 0), Stretch(1000, 3000, 0)], 2)
    (2000.0,)
    """
    within("days", days, 1, DAYS_MAX)
    hours = [tobler_h([one]) for one in stretches]
    share = sum(hours) / days
    cuts: list[float] = []
    before = 0.0
    for one, took in zip(stretches, hours, strict=True):
        while len(cuts) < days - 1 and before + took >= share * (len(cuts) + 1):
            cuts.append(one.start_m + one.length_m * (share * (len(cuts) + 1) - before) / took)
        before += took
    return tuple(cuts)
