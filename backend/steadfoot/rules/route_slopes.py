"""How steep a way is: metres by grade, and its steepest descents."""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Annotated, Final

from steadfoot.rules.route import Stretch
from steadfoot.rules.sources import Cited, Kind

GRADE_EDGES_PERCENT: Final[
    Annotated[tuple[int, ...], Cited(Kind.HOUSE, "house", "Classes of grade for reading: level within 5 percent")]
] = (-30, -20, -10, -5, 5, 10, 20, 30)
STEEPEST_SHOWN: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "The three steepest descents say where to save the knees")]
] = 3
STEEP_FROM_PERCENT: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "What falls less is level by the classes of grade, not a steep descent")]
] = 5
_PERCENT: Final = 100


@dataclass(frozen=True, slots=True)
class GradeClass:
    """Metres walked at a grade from ``low_percent`` up to below ``high_percent``; None is open to that side."""

    low_percent: int | None
    high_percent: int | None
    length_m: float


def grade_histogram(stretches: Sequence[Stretch]) -> list[GradeClass]:
    """Answer the metres in each class of grade, downhill first. Stretches without heights are in none.

    >>> [one.length_m for one in grade_histogram([Stretch(0, 100, -35), Stretch(100, 200, 0)]) if one.length_m]
    [100, 200]
    """
    known = [one for one in stretches if one.rise_m is not None]
    lows = (None, *GRADE_EDGES_PERCENT)
    highs = (*GRADE_EDGES_PERCENT, None)
    return [
        GradeClass(low, high, sum(one.length_m for one in known if _between(one.grade * _PERCENT, low, high)))
        for low, high in zip(lows, highs, strict=True)
    ]


def _between(percent: float, low: int | None, high: int | None) -> bool:
    return (low is None or percent >= low) and (high is None or percent < high)


def steepest_descents(stretches: Sequence[Stretch]) -> list[Stretch]:
    """Answer at most ``STEEPEST_SHOWN`` stretches that fall ``STEEP_FROM_PERCENT`` or more, the steepest first."""
    down = [one for one in stretches if one.grade * _PERCENT <= -STEEP_FROM_PERCENT]
    return sorted(down, key=lambda one: one.grade)[:STEEPEST_SHOWN]
