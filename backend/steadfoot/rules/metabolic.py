"""What walking costs the body, in watts: three published models, each only where it holds.

Grades come in percent and are turned into fractions inside: [pandolf-1977] and [looney-2022] count in percent,
[minetti-2002] in fractions. Outside its range a model answers with its range and never with a number.
"""

from collections.abc import Callable
from dataclasses import dataclass
from enum import StrEnum
from typing import Annotated, Final

from steadfoot.rules.dose import PACK_MAX_KG
from steadfoot.rules.norms import BODY_MASS_MAX_KG, BODY_MASS_MIN_KG
from steadfoot.rules.ranges import within
from steadfoot.rules.sources import Cited, Kind

KCAL_A_MET: Final[
    Annotated[float, Cited(Kind.PUBLISHED, "ainsworth-2011", "1 MET is 1 kcal per kg of body mass and hour")]
] = 1.0
J_A_KCAL: Final[
    Annotated[int, Cited(Kind.PUBLISHED, "ainsworth-2011", "The thermochemical kilocalorie, 4184 J; from memory")]
] = 4184
PANDOLF: Final[
    Annotated[
        tuple[float, ...],
        Cited(Kind.PUBLISHED, "pandolf-1977", "1.5 W + 2.0 (W + L)(L/W)^2 + eta (W + L)(1.5 V^2 + 0.35 V G)"),
    ]
] = (1.5, 2.0, 1.5, 0.35)
SANTEE: Final[
    Annotated[
        tuple[float, ...],
        Cited(
            Kind.PUBLISHED,
            "santee-2003",
            "Downhill less eta (G (W + L) V / 3.5 - (W + L)(G + 6)^2 / W + 25 - V^2); from memory. It jumps by some "
            "20 W at 0 percent",
        ),
    ]
] = (3.5, 6.0, 25.0)
LCDA_WALK: Final[
    Annotated[tuple[float, ...], Cited(Kind.PUBLISHED, "looney-2019", "1.44 + 1.94 S^0.43 + 0.24 S^4, W/kg")]
] = (1.44, 1.94, 0.43, 0.24, 4.0)
LCDA_GRADE: Final[
    Annotated[
        tuple[float, ...],
        Cited(Kind.PUBLISHED, "looney-2019", "0.34 S G (1 - 1.05^(1 - 1.1^(G + 32))), W/kg, G in percent"),
    ]
] = (0.34, 1.05, 1.1, 32.0)
LCDA_PACK: Final[
    Annotated[
        tuple[float, ...],
        Cited(
            Kind.PUBLISHED,
            "looney-2022",
            "1.05 + (0.19 + eta (1.78 S^0.58 + 0.27 S^4) + grade term)(1 + 1.96 (L/W)^1.36), W/kg",
        ),
    ]
] = (1.05, 0.19, 1.78, 0.58, 0.27, 4.0, 1.96, 1.36)
MINETTI: Final[
    Annotated[
        tuple[float, ...],
        Cited(Kind.PUBLISHED, "minetti-2002", "280.5 i^5 - 58.7 i^4 - 76.8 i^3 + 51.9 i^2 + 19.6 i + 2.5, J/kg/m, net"),
    ]
] = (280.5, -58.7, -76.8, 51.9, 19.6, 2.5)
PANDOLF_SPEED_MAX_M_S: Final[
    Annotated[float, Cited(Kind.PUBLISHED, "pandolf-1977", "Usual stated range, to about 1.8 m/s")]
] = 1.8
PANDOLF_GRADE_MAX_PERCENT: Final[
    Annotated[int, Cited(Kind.PUBLISHED, "pandolf-1977", "Usual stated range, to 25 percent uphill")]
] = 25
SANTEE_GRADE_MIN_PERCENT: Final[
    Annotated[int, Cited(Kind.PUBLISHED, "santee-2001", "Steepest descent studied, 12 percent")]
] = -12
LCDA_SPEED_MIN_M_S: Final[Annotated[float, Cited(Kind.PUBLISHED, "looney-2022", "Slowest walk studied")]] = 0.45
LCDA_SPEED_MAX_M_S: Final[Annotated[float, Cited(Kind.PUBLISHED, "looney-2022", "Fastest walk studied")]] = 1.97
LCDA_WALK_SPEED_MAX_M_S: Final[Annotated[float, Cited(Kind.PUBLISHED, "looney-2019", "Fastest walk studied")]] = 1.96
LCDA_GRADE_MIN_PERCENT: Final[Annotated[int, Cited(Kind.PUBLISHED, "looney-2019", "Steepest descent studied")]] = -40
LCDA_GRADE_MAX_PERCENT: Final[Annotated[int, Cited(Kind.PUBLISHED, "looney-2019", "Steepest ascent studied")]] = 45
LCDA_LOAD_SHARE_MAX: Final[
    Annotated[float, Cited(Kind.PUBLISHED, "looney-2022", "Heaviest load studied, 0.66 of body mass")]
] = 0.66
LCDA_ERROR_W_PER_KG: Final[
    Annotated[float, Cited(Kind.PUBLISHED, "looney-2019", "Standard error of the estimate on slopes, W/kg")]
] = 0.42
MINETTI_GRADE_MAX_PERCENT: Final[
    Annotated[int, Cited(Kind.PUBLISHED, "minetti-2002", "Slopes studied, 45 percent up and down")]
] = 45
WALK_SPEED_MAX_M_S: Final[
    Annotated[float, Cited(Kind.HOUSE, "house", "Faster than 2.0 m/s (7.2 km/h) is not walking for most people")]
] = 2.0
TERRAIN_MIN: Final[Annotated[float, Cited(Kind.PUBLISHED, "soule-1972", "Treadmill and blacktop road are 1.0")]] = 1.0
TERRAIN_MAX: Final[
    Annotated[float, Cited(Kind.PUBLISHED, "soule-1972", "Soft snow 35 cm deep is 4.1, the highest listed")]
] = 4.1
TERRAINS: Final[
    Annotated[dict[str, float], Cited(Kind.PUBLISHED, "soule-1972", "Factors by ground; snow after Pandolf 1976")]
] = {
    "treadmill or blacktop road": 1.0,
    "dirt road": 1.1,
    "light brush": 1.2,
    "heavy brush": 1.5,
    "swampy bog": 1.8,
    "loose sand": 2.1,
    "soft snow, 15 cm deep": 2.5,
    "soft snow, 25 cm deep": 3.3,
    "soft snow, 35 cm deep": 4.1,
}
_S_PER_H: Final = 3600
_KMH_PER_M_S: Final = 3.6
_PERCENT: Final = 100


class Model(StrEnum):
    """A way to reckon the cost of walking."""

    LCDA = "lcda"
    PANDOLF = "pandolf"
    MINETTI = "minetti"


@dataclass(frozen=True, slots=True)
class Effort:
    """A walker at a pace: kg, kg, km/h along the ground, percent (negative downhill), terrain factor.

    Raises:
        OutOfRange: a number cannot be. Whether a model holds for it is the model's own matter.
    """

    body_mass_kg: float
    pack_kg: float
    speed_kmh: float
    grade_percent: float
    terrain_factor: float = TERRAIN_MIN

    def __post_init__(self) -> None:
        within("body_mass_kg", self.body_mass_kg, BODY_MASS_MIN_KG, BODY_MASS_MAX_KG, "kg")
        within("pack_kg", self.pack_kg, 0, PACK_MAX_KG, "kg")
        within("speed_kmh", self.speed_kmh, 0, WALK_SPEED_MAX_M_S * _KMH_PER_M_S, "km/h")
        within("grade_percent", self.grade_percent, -_PERCENT, _PERCENT, "percent")
        within("terrain_factor", self.terrain_factor, TERRAIN_MIN, TERRAIN_MAX)

    @property
    def speed_m_s(self) -> float:
        """Speed along the ground in m/s."""
        return self.speed_kmh / _KMH_PER_M_S

    @property
    def load_share(self) -> float:
        """Pack over body mass."""
        return self.pack_kg / self.body_mass_kg


class OutsideModel(ValueError):
    """A model does not hold here. ``name`` is what lies outside, ``low`` and ``high`` are the model's ends."""

    def __init__(self, model: Model, name: str, value: float, low: float, high: float, unit: str) -> None:
        self.model, self.name, self.value, self.low, self.high, self.unit = model.value, name, value, low, high, unit
        self.valid = False
        tail = f" {unit}" if unit else ""
        super().__init__(
            f"{name.replace('_', ' ')} is {value:g}; the {model.value} model holds from {low:g} to {high:g}{tail}."
        )


_EDGE: Final = 1e-9
"""Rounding of a conversion from km/h does not put a number at the edge outside."""


def _holds(model: Model, name: str, value: float, low: float, high: float, unit: str = "") -> None:
    if not low - _EDGE <= value <= high + _EDGE:
        raise OutsideModel(model, name, value, low, high, unit)


def pandolf_w(effort: Effort) -> float:
    """Answer watts by [pandolf-1977], downhill with the correction of [santee-2003].

    Holds from -12 to 25 percent and to 1.8 m/s. Never without the correction downhill: the plain equation falls
    below standing from about -6 percent on, and below zero at -10.

    Raises:
        OutsideModel: it does not hold here.
    """
    _holds(Model.PANDOLF, "speed_m_s", effort.speed_m_s, 0, PANDOLF_SPEED_MAX_M_S, "m/s")
    grade = effort.grade_percent
    _holds(Model.PANDOLF, "grade_percent", grade, SANTEE_GRADE_MIN_PERCENT, PANDOLF_GRADE_MAX_PERCENT, "percent")
    standing, carrying, level, slope = PANDOLF
    total, speed = effort.body_mass_kg + effort.pack_kg, effort.speed_m_s
    still = standing * effort.body_mass_kg + carrying * total * effort.load_share**2
    moving = effort.terrain_factor * total * (level * speed**2 + slope * speed * grade)
    # House: the downhill correction is made for walking pace; at a crawl it must not take more than moving costs.
    return still + (max(0.0, moving - _santee_w(effort)) if grade < 0 and speed > 0 else moving)


def _santee_w(effort: Effort) -> float:
    divisor, vertex, constant = SANTEE
    total, speed, grade = effort.body_mass_kg + effort.pack_kg, effort.speed_m_s, effort.grade_percent
    parabola = total * (grade + vertex) ** 2 / effort.body_mass_kg
    return effort.terrain_factor * (grade * total * speed / divisor - parabola + constant - speed**2)


def lcda_walk_w(effort: Effort) -> float:
    """Answer watts by [looney-2019]: hard ground, no pack. Holds to 1.96 m/s and from -40 to 45 percent.

    Raises:
        OutsideModel: it does not hold here.
    """
    _holds(Model.LCDA, "pack_kg", effort.pack_kg, 0, 0, "kg")
    _holds(Model.LCDA, "terrain_factor", effort.terrain_factor, TERRAIN_MIN, TERRAIN_MIN)
    _holds(Model.LCDA, "speed_m_s", effort.speed_m_s, 0, LCDA_WALK_SPEED_MAX_M_S, "m/s")
    standing, slow, slow_power, fast, fast_power = LCDA_WALK
    speed = effort.speed_m_s
    level = standing + slow * speed**slow_power + fast * speed**fast_power
    return float(effort.body_mass_kg * (level + _lcda_grade_w_per_kg(effort)))


def lcda_w(effort: Effort) -> float:
    """Answer watts by [looney-2022] with the slope of [looney-2019]: the load multiplies what is above rest.

    Holds from 0.45 to 1.97 m/s, from -40 to 45 percent and to a pack of 0.66 of body mass. That slope and ground
    stand inside the bracket is one public program's choice, not the paper's.

    Raises:
        OutsideModel: it does not hold here.
    """
    _holds(Model.LCDA, "speed_m_s", effort.speed_m_s, LCDA_SPEED_MIN_M_S, LCDA_SPEED_MAX_M_S, "m/s")
    _holds(Model.LCDA, "load_share", effort.load_share, 0, LCDA_LOAD_SHARE_MAX, "of body mass")
    rest, standing, slow, slow_power, fast, fast_power, load, load_power = LCDA_PACK
    speed = effort.speed_m_s
    walking = effort.terrain_factor * (slow * speed**slow_power + fast * speed**fast_power)
    net = standing + walking + _lcda_grade_w_per_kg(effort)
    return float(effort.body_mass_kg * (rest + net * (1 + load * effort.load_share**load_power)))


def _lcda_grade_w_per_kg(effort: Effort) -> float:
    grade = effort.grade_percent
    _holds(Model.LCDA, "grade_percent", grade, LCDA_GRADE_MIN_PERCENT, LCDA_GRADE_MAX_PERCENT, "percent")
    factor, outer, inner, shift = LCDA_GRADE
    return float(factor * effort.speed_m_s * grade * (1 - outer ** (1 - inner ** (grade + shift))))


def minetti_j_per_kg_m(grade_percent: float) -> float:
    """Answer the net cost of walking a metre of slope by [minetti-2002], J/kg/m, from -45 to 45 percent.

    On the level its polynomial says 2.5; the same paper measured 1.64 +- 0.50 at the best speed.

    Raises:
        OutsideModel: it is steeper.

    >>> round(minetti_j_per_kg_m(10), 4), round(minetti_j_per_kg_m(-10), 4)
    (4.8991, 1.1271)
    """
    steepest = MINETTI_GRADE_MAX_PERCENT
    _holds(Model.MINETTI, "grade_percent", grade_percent, -steepest, steepest, "percent")
    cost = 0.0
    for coefficient in MINETTI:
        cost = cost * grade_percent / _PERCENT + coefficient
    return cost


def minetti_w(effort: Effort) -> float:
    """Answer watts by [minetti-2002]: the net cost times all the mass moved, above 1 MET of rest.

    It was measured without a pack on a treadmill: counting the pack as body mass, and the terrain factor on the
    net cost, are ours.

    Raises:
        OutsideModel: it is steeper than 45 percent.
    """
    total = effort.body_mass_kg + effort.pack_kg
    net = minetti_j_per_kg_m(effort.grade_percent) * total * effort.speed_m_s * effort.terrain_factor
    return effort.body_mass_kg * w_per_kg_of_met(1) + net


def w_per_kg_of_met(met: float) -> float:
    """Answer the watts per kg of body mass of a number of METs."""
    return met * KCAL_A_MET * J_A_KCAL / _S_PER_H


def kcal_per_h(watts: float) -> float:
    """Answer kcal an hour."""
    return watts * _S_PER_H / J_A_KCAL


def met(watts: float, body_mass_kg: float) -> float:
    """Answer METs: 1 kcal per kg of body mass, the pack not counted, and hour.

    >>> met(kcal_per_h(0) + 4184 / 3600 * 70, 70)
    1.0
    """
    return kcal_per_h(watts) / (KCAL_A_MET * body_mass_kg)


WATTS: Final[dict[Model, Callable[[Effort], float]]] = {
    Model.LCDA: lcda_w,
    Model.PANDOLF: pandolf_w,
    Model.MINETTI: minetti_w,
}
"""The models, the first to be chosen first."""
