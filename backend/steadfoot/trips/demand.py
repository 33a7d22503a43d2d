"""What a trip asks of one person, leg by leg: pure, from a trip, a body and what the person has shown."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Final

from steadfoot.rules import demand as rules
from steadfoot.rules.demand_relative import percent_of_shown
from steadfoot.rules.metabolic import met
from steadfoot.rules.ranges import OutOfRange
from steadfoot.rules.walking_time import PACE_WALK_MIN_KM, Walked, naismith_langmuir_h, pace_factor
from steadfoot.trips.plan import Leg, Trip, terrain_factor

OWN_PACE_UNKNOWN: Final = 1.0
_ANY_MASS_KG: Final = 70.0
_M_PER_KM: Final = 1000


@dataclass(frozen=True, slots=True)
class Energy:
    """Energy in kcal with the band of the models that hold, and rates in MET; ``peak`` is the hardest stretch's.

    ``metres_by_model`` says how far each model answered, ``zigzag_m`` what is steeper than any, ``unknown_m`` what has
    no heights and is counted as level. ``percent_shown`` are mean and peak in percent of the six-minute walk's rate.
    """

    kcal: float
    low_kcal: float
    high_kcal: float
    mean_met: float
    peak_met: float
    pack_percent: float
    metres_by_model: dict[str, float]
    zigzag_m: float
    unknown_m: float
    mean_percent_shown: float | None
    peak_percent_shown: float | None


@dataclass(frozen=True, slots=True)
class LegDemand:
    """One leg: hours are moving time by Tobler's rule at the own pace. None where heights or body mass are not known.

    ``hours_by_rule`` are Naismith's with Langmuir's correction, at the own pace; the two rules differ: show both.
    """

    number: int
    day: int
    name: str
    distance_km: float
    ascent_m: float | None
    descent_m: float | None
    pack_kg: float
    hours: float
    hours_by_rule: float
    steps: int
    descent_work_kj: float | None
    energy: Energy | None


@dataclass(frozen=True, slots=True)
class DayDemand:
    """The legs of one day, summed; None where one of them is not known."""

    day: int
    distance_km: float
    ascent_m: float | None
    descent_m: float | None
    hours: float
    low_kcal: float | None
    high_kcal: float | None
    descent_work_kj: float | None


@dataclass(frozen=True, slots=True)
class TripDemand:
    """All legs and days. ``pace`` is the own pace over the rule (None: not known), from ``walks`` logged walks."""

    trip: Trip
    legs: tuple[LegDemand, ...]
    days: tuple[DayDemand, ...]
    body_mass_kg: float | None
    pace: float | None
    walks: int
    six_minute_walk_m: float | None


@dataclass(frozen=True, slots=True)
class Person:
    """Who walks: body mass in kg, walks as logged, metres of the newest six-minute walk. None: not known."""

    body_mass_kg: float | None
    walks: tuple[Walked, ...]
    six_minute_walk_m: float | None


def demand(trip: Trip, person: Person) -> TripDemand:
    """Answer what a trip asks of a person, as far as it can be told."""
    pace = own_pace(person.walks)
    legs = tuple(_leg(one, trip, person, pace or OWN_PACE_UNKNOWN) for one in trip.legs)
    walks = len(_telling(person.walks))
    return TripDemand(trip, legs, _days(legs), person.body_mass_kg, pace, walks, person.six_minute_walk_m)


def own_pace(walks: Iterable[Walked]) -> float | None:
    """Answer a person's own pace over the rule; None before there are enough walks, or where they are past belief."""
    try:
        return pace_factor(_telling(walks))
    except OutOfRange:
        return None


def _telling(walks: Iterable[Walked]) -> list[Walked]:
    return [one for one in walks if one.distance_km >= PACE_WALK_MIN_KM]


def _leg(leg: Leg, trip: Trip, person: Person, pace: float) -> LegDemand:
    stretches = leg.walked()
    mass_kg = person.body_mass_kg
    # Hours do not depend on the body: any mass answers them.
    walker = rules.Walker(mass_kg or _ANY_MASS_KG, leg.pack_kg, terrain_factor(trip.ground), pace)
    found = rules.demand(stretches, walker)
    down_m = leg.descent_m
    work = None if down_m is None or mass_kg is None else rules.descent_work_kj(down_m, mass_kg, leg.pack_kg)
    return LegDemand(
        number=leg.number,
        day=leg.day,
        name=leg.name,
        distance_km=leg.distance_km,
        ascent_m=leg.ascent_m,
        descent_m=leg.descent_m,
        pack_kg=leg.pack_kg,
        hours=found.hours,
        hours_by_rule=pace * naismith_langmuir_h(leg.distance_km, leg.ascent_m or 0.0, stretches),
        steps=rules.steps(leg.distance_km * _M_PER_KM),
        descent_work_kj=work,
        energy=None if mass_kg is None else _energy(found, walker, person),
    )


def _energy(found: rules.Demand, walker: rules.Walker, person: Person) -> Energy:
    mass_kg = walker.body_mass_kg
    mean, peak = found.energy_kcal / found.hours / mass_kg, met(found.peak_w, mass_kg)
    return Energy(
        kcal=found.energy_kcal,
        low_kcal=found.low_kcal,
        high_kcal=found.high_kcal,
        mean_met=mean,
        peak_met=peak,
        pack_percent=rules.pack_percent(walker.pack_kg, mass_kg),
        metres_by_model={model.value: metres for model, metres in found.models.items()},
        zigzag_m=found.zigzag_m,
        unknown_m=found.unknown_m,
        mean_percent_shown=percent_of_shown(mean, person.six_minute_walk_m, mass_kg),
        peak_percent_shown=percent_of_shown(peak, person.six_minute_walk_m, mass_kg),
    )


def _days(legs: Sequence[LegDemand]) -> tuple[DayDemand, ...]:
    return tuple(_day(day, [one for one in legs if one.day == day]) for day in sorted({one.day for one in legs}))


def _day(day: int, legs: Sequence[LegDemand]) -> DayDemand:
    return DayDemand(
        day=day,
        distance_km=sum(one.distance_km for one in legs),
        ascent_m=_sum(one.ascent_m for one in legs),
        descent_m=_sum(one.descent_m for one in legs),
        hours=sum(one.hours for one in legs),
        low_kcal=_sum(one.energy.low_kcal if one.energy else None for one in legs),
        high_kcal=_sum(one.energy.high_kcal if one.energy else None for one in legs),
        descent_work_kj=_sum(one.descent_work_kj for one in legs),
    )


def _sum(values: Iterable[float | None]) -> float | None:
    known = list(values)
    return None if None in known else sum(one for one in known if one is not None)
