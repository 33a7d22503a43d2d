"""Side beside side: the percentage of one leg to the other, and reach in relation to the leg's length."""

from typing import Annotated, Final

from steadfoot.rules.ranges import within
from steadfoot.rules.sources import Cited, Kind

PERCENT: Final[Annotated[int, Cited(Kind.DERIVED, "weir-2005", "A percentage counts in hundredths")]] = 100
SYMMETRY_PASS_PERCENT: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "90 percent of the other side is common practice without a source")]
] = 90
LIMB_MIN_CM: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "Plausible range, to catch slips: leg length of 40 cm")]
] = 40
LIMB_MAX_CM: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "Plausible range, to catch slips: leg length of 140 cm")]
] = 140
REACHES: Final[Annotated[int, Cited(Kind.PUBLISHED, "plisky-2006", "Three directions are averaged")]] = 3


def symmetry_percent(value: float, other: float) -> float | None:
    """Answer a side's value in percent of the other's: 100 x value / other; None where the other is 0.

    More than 100 is possible and no mistake.

    >>> symmetry_percent(18, 20)
    90.0
    """
    return PERCENT * value / other if other else None


def even_enough(value: float, other: float, *, lower_is_better: bool = False) -> bool | None:
    """Answer whether the tested side comes to ``SYMMETRY_PASS_PERCENT`` of the other (house).

    Where less is better, such as points for faults, the ratio is turned round. None where it is undefined.
    """
    percent = symmetry_percent(other, value) if lower_is_better else symmetry_percent(value, other)
    return None if percent is None else percent >= SYMMETRY_PASS_PERCENT


def reach_composite(anterior_cm: float, inner_cm: float, outer_cm: float, limb_cm: float) -> float:
    """Answer the mean of three reaches on one leg in percent of its length [plisky-2006].

    Leg length is from the front of the pelvis to the inner ankle, in cm. For following a person over time only:
    the published cut-offs are of school basketball players.

    Raises:
        OutOfRange: the leg's length cannot be.
    """
    within("limb_cm", limb_cm, LIMB_MIN_CM, LIMB_MAX_CM, "cm")
    return PERCENT * (anterior_cm + inner_cm + outer_cm) / (REACHES * limb_cm)
