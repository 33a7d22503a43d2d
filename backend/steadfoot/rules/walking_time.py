"""How long a way takes: two rules of hill walkers, and how a person's own pace compares with them.

Both are moving time without rests. They differ, often by a quarter: show both.
"""

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Annotated, Final

from steadfoot.rules.ranges import within
from steadfoot.rules.route import HEIGHT_MAX_M, ROUTE_MAX_KM, Stretch
from steadfoot.rules.sources import Cited, Kind

NAISMITH_KMH: Final[
    Annotated[int, Cited(Kind.PUBLISHED, "naismith-1892", "3 miles an hour, by metric habit 5 km/h")]
] = 5
NAISMITH_CLIMB_M_PER_H: Final[
    Annotated[int, Cited(Kind.PUBLISHED, "naismith-1892", "An hour for 2000 feet, by metric habit 600 m")]
] = 600
LANGMUIR_GENTLE_DEGREES: Final[
    Annotated[int, Cited(Kind.PUBLISHED, "langmuir-1984", "From 5 degrees on (included) a descent saves time")]
] = 5
LANGMUIR_STEEP_DEGREES: Final[
    Annotated[int, Cited(Kind.PUBLISHED, "langmuir-1984", "Beyond 12 degrees (12 excluded) a descent costs time")]
] = 12
LANGMUIR_M_PER_H: Final[
    Annotated[int, Cited(Kind.DERIVED, "langmuir-1984", "10 minutes for 300 m, less or more: an hour for 1800 m")]
] = 1800
TOBLER_MAX_KMH: Final[Annotated[int, Cited(Kind.PUBLISHED, "tobler-1993", "6 km/h at a slope of -0.05")]] = 6
TOBLER_DECAY: Final[Annotated[float, Cited(Kind.PUBLISHED, "tobler-1993", "exp(-3.5 |s + 0.05|), s as a fraction")]] = (
    3.5
)
TOBLER_BEST_SLOPE: Final[
    Annotated[float, Cited(Kind.PUBLISHED, "tobler-1993", "Fastest where the ground falls by 5 in 100")]
] = -0.05
TOBLER_OFF_PATH: Final[Annotated[float, Cited(Kind.PUBLISHED, "tobler-1993", "Off the path 0.6 of the speed")]] = 0.6
SLOPE_MAX: Final[
    Annotated[float, Cited(Kind.HOUSE, "house", "Beyond 100 in 100 it is climbing, and no rule for walkers holds")]
] = 1.0
PACE_MIN: Final[
    Annotated[float, Cited(Kind.HOUSE, "house", "Half the time of the rule is running: look at the log first")]
] = 0.5
PACE_MAX: Final[
    Annotated[float, Cited(Kind.HOUSE, "house", "Three times the time of the rule: rests were logged as walking")]
] = 3.0
PACE_WALKS: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "Three logged walks before a person's own pace is believed")]
] = 3
PACE_WALK_MIN_KM: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "A walk under a kilometre tells of the door, not of the pace")]
] = 1
_M_PER_KM: Final = 1000


@dataclass(frozen=True, slots=True)
class Walked:
    """A walk as logged: km, ascent in m, moving hours."""

    distance_km: float
    ascent_m: float
    hours: float


def naismith_h(distance_km: float, ascent_m: float) -> float:
    """Answer moving hours by [naismith-1892]: 0 to ``ROUTE_MAX_KM`` km and not negative metres of ascent.

    Raises:
        OutOfRange: a length cannot be.

    >>> naismith_h(20, 1200)
    6.0
    """
    within("distance_km", distance_km, 0, ROUTE_MAX_KM, "km")
    within("ascent_m", ascent_m, 0, HEIGHT_MAX_M * _M_PER_KM, "m")
    return distance_km / NAISMITH_KMH + ascent_m / NAISMITH_CLIMB_M_PER_H


def langmuir_h(slope: float, descent_m: float) -> float:
    """Answer what a descent adds to Naismith's hours (negative: saves), by [langmuir-1984].

    Parameters:
        slope: of the way down as a fraction; the sign does not matter.
        descent_m: metres lost on it.

    >>> round(langmuir_h(-0.15, 600) * 60, 6), round(langmuir_h(-0.3, 600) * 60, 6), langmuir_h(-0.05, 600)
    (-20.0, 20.0, 0.0)
    """
    degrees = math.degrees(math.atan(abs(slope)))
    if degrees < LANGMUIR_GENTLE_DEGREES:
        return 0.0
    hours = descent_m / LANGMUIR_M_PER_H
    return hours if degrees > LANGMUIR_STEEP_DEGREES else -hours


def naismith_langmuir_h(distance_km: float, ascent_m: float, stretches: Iterable[Stretch]) -> float:
    """Answer moving hours by Naismith, each descending stretch corrected by its own slope."""
    down = (one for one in stretches if one.grade < 0)
    return naismith_h(distance_km, ascent_m) + sum(langmuir_h(one.grade, -(one.rise_m or 0)) for one in down)


def tobler_kmh(slope: float, *, off_path: bool = False) -> float:
    """Answer the walking speed on a slope, by [tobler-1993].

    Parameters:
        slope: rise over run as a fraction, negative downhill, from ``-SLOPE_MAX`` to ``SLOPE_MAX``.
        off_path: slower by ``TOBLER_OFF_PATH``.

    Raises:
        OutOfRange: it is steeper.

    >>> round(tobler_kmh(0), 4), round(tobler_kmh(-0.25), 4)
    (5.0367, 2.9795)
    """
    within("slope", slope, -SLOPE_MAX, SLOPE_MAX)
    speed = TOBLER_MAX_KMH * math.exp(-TOBLER_DECAY * abs(slope - TOBLER_BEST_SLOPE))
    return speed * TOBLER_OFF_PATH if off_path else speed


def tobler_h(stretches: Iterable[Stretch]) -> float:
    """Answer moving hours over the stretches; where one is steeper than the rule goes, at its steepest speed."""
    return sum(one.length_m / _M_PER_KM / tobler_kmh(_believable(one.grade)) for one in stretches)


def _believable(slope: float) -> float:
    return max(-SLOPE_MAX, min(SLOPE_MAX, slope))


def pace_factor(walks: Sequence[Walked]) -> float | None:
    """Answer a person's own time over Naismith's: 1.2 is a fifth slower. None before ``PACE_WALKS`` walks.

    All hours over all hours by the rule, so that long walks weigh more than short ones.

    Raises:
        OutOfRange: a walk cannot be, or the factor lies outside ``PACE_MIN`` to ``PACE_MAX``.

    >>> pace_factor([Walked(10, 0, 2.4)] * 3)
    1.2
    """
    if len(walks) < PACE_WALKS:
        return None
    for one in walks:
        within("distance_km", one.distance_km, PACE_WALK_MIN_KM, ROUTE_MAX_KM, "km")
    ruled = sum(naismith_h(one.distance_km, one.ascent_m) for one in walks)
    factor = sum(one.hours for one in walks) / ruled
    within("pace_factor", factor, PACE_MIN, PACE_MAX)
    return factor
