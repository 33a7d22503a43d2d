"""A trip in plain form, as the rules and other steps take it."""

from dataclasses import dataclass
from datetime import date
from enum import StrEnum
from typing import Final

from steadfoot.rules import demand
from steadfoot.rules.metabolic import TERRAINS
from steadfoot.rules.route import Stretch

_M_PER_KM: Final = 1000


class Ground(StrEnum):
    """What the way is made of, as far as factors are published for it."""

    ROAD = "road"
    DIRT_ROAD = "dirt_road"
    LIGHT_BRUSH = "light_brush"
    HEAVY_BRUSH = "heavy_brush"
    BOG = "bog"
    SAND = "sand"
    SNOW = "snow"


_TERRAIN: Final = {
    Ground.ROAD: "treadmill or blacktop road",
    Ground.DIRT_ROAD: "dirt road",
    Ground.LIGHT_BRUSH: "light brush",
    Ground.HEAVY_BRUSH: "heavy brush",
    Ground.BOG: "swampy bog",
    Ground.SAND: "loose sand",
    Ground.SNOW: "soft snow, 15 cm deep",
}


def terrain_factor(ground: Ground) -> float:
    """Answer the factor of the ground by [soule-1972].

    >>> terrain_factor(Ground.DIRT_ROAD)
    1.1
    """
    return TERRAINS[_TERRAIN[ground]]


@dataclass(frozen=True, slots=True)
class Leg:
    """One leg: its number in the trip and its day, both from 1; km, metres up and down (None: not known), kg carried.

    ``stretches`` are empty for a leg that was typed.
    """

    number: int
    day: int
    name: str
    distance_km: float
    ascent_m: float | None
    descent_m: float | None
    pack_kg: float
    stretches: tuple[Stretch, ...]

    def walked(self) -> tuple[Stretch, ...]:
        """Answer the stretches to reckon with: the file's, or an ascent and a descent of the typed heights."""
        if self.stretches:
            return self.stretches
        distance_m = self.distance_km * _M_PER_KM
        if self.ascent_m is None and self.descent_m is None:
            return (Stretch(0, distance_m, None),)
        return demand.leg(distance_m, self.ascent_m or 0, self.descent_m or 0)


@dataclass(frozen=True, slots=True)
class Trip:
    """The legs in their order. ``name`` and ``starts_on`` are the current program's goal; None where there is none."""

    name: str | None
    starts_on: date | None
    ground: Ground
    legs: tuple[Leg, ...]
