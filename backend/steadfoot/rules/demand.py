"""What a way asks of a body: energy along the profile, the highest rate, steps, and work done in descending."""

import math
from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Annotated, Final

from steadfoot.rules.dose import PACK_MAX_KG
from steadfoot.rules.metabolic import WALK_SPEED_MAX_M_S, Effort, Model, kcal_per_h
from steadfoot.rules.metabolic_choice import Cost, cost
from steadfoot.rules.norms import BODY_MASS_MAX_KG, BODY_MASS_MIN_KG
from steadfoot.rules.ranges import within
from steadfoot.rules.route import HEIGHT_MAX_M, ROUTE_MAX_KM, Stretch
from steadfoot.rules.sources import Cited, Kind
from steadfoot.rules.walking_time import PACE_MAX, PACE_MIN, tobler_kmh

ZIGZAG_PERCENT: Final[
    Annotated[
        int,
        Cited(
            Kind.HOUSE,
            "house",
            "The steepest that lcda was studied both up and down. What is steeper counts as zigzags of this grade: as "
            "much climb, a longer way",
        ),
    ]
] = 40
STEP_LENGTH_M: Final[
    Annotated[float, Cited(Kind.HOUSE, "house", "About 0.7 m on a path; a person's own count is better")]
] = 0.7
GRAVITY_M_S2: Final[
    Annotated[float, Cited(Kind.PUBLISHED, "moritz-2000", "Normal gravity at 45 degrees of latitude; from memory")]
] = 9.806
PACK_TRIP_PERCENT: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "Habit: a pack for several days of up to a fifth of body mass")]
] = 20
_PERCENT: Final = 100
_M_PER_KM: Final = 1000
_J_PER_KJ: Final = 1000
_KMH_PER_M_S: Final = 3.6


@dataclass(frozen=True, slots=True)
class Walker:
    """Body mass and pack in kg, terrain factor, own pace (1.2 is a fifth slower than the rule)."""

    body_mass_kg: float
    pack_kg: float
    terrain_factor: float = 1.0
    pace_factor: float = 1.0

    def __post_init__(self) -> None:
        within("pace_factor", self.pace_factor, PACE_MIN, PACE_MAX)
        Effort(self.body_mass_kg, self.pack_kg, 0, 0, self.terrain_factor)


@dataclass(frozen=True, slots=True)
class Demand:
    """Energy in kcal with its band, moving hours, the highest rate of any stretch in W.

    ``zigzag_m`` are metres steeper than any model holds, ``unknown_m`` metres without heights (counted level);
    ``models`` says how many metres each model answered for.
    """

    energy_kcal: float
    low_kcal: float
    high_kcal: float
    hours: float
    peak_w: float
    zigzag_m: float
    unknown_m: float
    models: dict[Model, float]


class NothingToWalk(ValueError):
    """A way without length."""

    def __init__(self) -> None:
        super().__init__("The way has no length: all its points are one place.")


def leg(distance_m: float, ascent_m: float, descent_m: float) -> tuple[Stretch, ...]:
    """Answer a typed day as an ascent and a descent, the distance shared by their heights; level without any.

    Raises:
        OutOfRange: a length cannot be, or it would be steeper than 100 percent.

    >>> [round(one.grade, 3) for one in leg(10_000, 600, 400)]
    [0.1, -0.1]
    """
    within("distance_km", distance_m / _M_PER_KM, 0, ROUTE_MAX_KM, "km")
    for name, height in (("ascent_m", ascent_m), ("descent_m", descent_m)):
        within(name, height, 0, min(distance_m, HEIGHT_MAX_M * _M_PER_KM), "m")
    height = ascent_m + descent_m
    within("ascent_and_descent_m", height, 0, distance_m, "m")
    if not height:
        return (Stretch(0, distance_m, 0),) if distance_m else ()
    up_m = distance_m * ascent_m / height
    both = (Stretch(0, up_m, ascent_m), Stretch(up_m, distance_m - up_m, -descent_m))
    return tuple(one for one in both if one.rise_m)


def demand(stretches: Iterable[Stretch], walker: Walker, model: Model | None = None) -> Demand:
    """Answer what a way asks, stretch by stretch at the speed of Tobler's rule times the walker's own pace.

    Raises:
        NothingToWalk: it has no length.
        OutsideModel: the model asked for does not hold on one of the stretches.
    """
    parts = [_Part(one, walker, model) for one in stretches]
    if not parts:
        raise NothingToWalk
    models: defaultdict[Model, float] = defaultdict(float)
    for part in parts:
        models[part.cost.model] += part.length_m
    return Demand(
        energy_kcal=sum(kcal_per_h(part.cost.watts) * part.hours for part in parts),
        low_kcal=sum(kcal_per_h(part.cost.low_w) * part.hours for part in parts),
        high_kcal=sum(kcal_per_h(part.cost.high_w) * part.hours for part in parts),
        hours=sum(part.hours for part in parts),
        peak_w=max(part.cost.watts for part in parts),
        zigzag_m=sum(part.length_m for part in parts if part.zigzag),
        unknown_m=sum(part.length_m for part in parts if part.unknown),
        models=dict(models),
    )


class _Part:
    """A stretch walked: its cost and hours."""

    def __init__(self, stretch: Stretch, walker: Walker, model: Model | None) -> None:
        steepest = ZIGZAG_PERCENT / _PERCENT
        self.length_m, self.unknown = stretch.length_m, stretch.rise_m is None
        self.zigzag = abs(stretch.grade) > steepest
        grade = max(-steepest, min(steepest, stretch.grade))
        run_m = abs(stretch.rise_m or 0) / steepest if self.zigzag else stretch.length_m
        along_m = run_m * math.hypot(1, grade)
        kmh = min(tobler_kmh(grade) / walker.pace_factor, WALK_SPEED_MAX_M_S * _KMH_PER_M_S)
        self.hours = run_m / _M_PER_KM / kmh
        along_kmh = min(along_m / _M_PER_KM / self.hours, WALK_SPEED_MAX_M_S * _KMH_PER_M_S)
        effort = Effort(walker.body_mass_kg, walker.pack_kg, along_kmh, grade * _PERCENT, walker.terrain_factor)
        self.cost: Cost = cost(effort, model)


def steps(distance_m: float) -> int:
    """Answer about how many steps a way takes; 0 to ``ROUTE_MAX_KM`` km.

    >>> steps(7000)
    10000
    """
    within("distance_km", distance_m / _M_PER_KM, 0, ROUTE_MAX_KM, "km")
    return round(distance_m / STEP_LENGTH_M)


def descent_work_kj(descent_m: float, body_mass_kg: float, pack_kg: float) -> float:
    """Answer the potential energy in kJ that the legs take up going down, most of it in lengthening muscles.

    >>> round(descent_work_kj(1000, 70, 10), 1)
    784.5
    """
    within("descent_m", descent_m, 0, HEIGHT_MAX_M * _M_PER_KM, "m")
    within("body_mass_kg", body_mass_kg, BODY_MASS_MIN_KG, BODY_MASS_MAX_KG, "kg")
    within("pack_kg", pack_kg, 0, PACK_MAX_KG, "kg")
    return descent_m * (body_mass_kg + pack_kg) * GRAVITY_M_S2 / _J_PER_KJ


def pack_percent(pack_kg: float, body_mass_kg: float) -> float:
    """Answer the pack as percent of body mass."""
    return pack_kg / body_mass_kg * _PERCENT
