"""A trip and what it asks, as HTTP answers them."""

from dataclasses import asdict

from steadfoot.rules.demand import PACK_TRIP_PERCENT
from steadfoot.rules.metabolic import Model
from steadfoot.rules.metabolic_choice import DOWNHILL_SOURCE, SOURCES
from steadfoot.rules.route import Stretch
from steadfoot.rules.route_slopes import grade_histogram, steepest_descents
from steadfoot.rules.walking_time import PACE_WALKS
from steadfoot.trips.demand import TripDemand
from steadfoot.trips.schemas import (
    DayDemandOut,
    DemandOut,
    DescentOut,
    FromFile,
    GradeOut,
    LegDemandOut,
    LegOut,
    SlopesOut,
)
from steadfoot.trips.tables import TripLeg

_M_PER_KM = 1000
_PERCENT = 100
_ALWAYS = ("naismith-1892", "langmuir-1984", "tobler-1993", "soule-1972")


def leg_out(row: TripLeg) -> LegOut:
    """Answer a leg as it is kept."""
    return LegOut(
        name=row.name,
        day=row.day,
        distance_km=row.distance_km,
        ascent_m=row.ascent_m,
        descent_m=row.descent_m,
        pack_kg=row.pack_kg,
        from_file=FromFile.model_validate_json(row.from_file) if row.from_file else None,
    )


def slopes_of(stretches: tuple[Stretch, ...]) -> SlopesOut:
    """Answer how steep a leg is, as far as heights are known."""
    known = any(one.rise_m is not None for one in stretches)
    return SlopesOut(grades=_grades(stretches) if known else [], steepest_descents=_descents(stretches))


def _grades(stretches: tuple[Stretch, ...]) -> list[GradeOut]:
    return [
        GradeOut(from_percent=one.low_percent, to_percent=one.high_percent, distance_km=one.length_m / _M_PER_KM)
        for one in grade_histogram(stretches)
    ]


def _descents(stretches: tuple[Stretch, ...]) -> list[DescentOut]:
    return [
        DescentOut(
            from_km=one.start_m / _M_PER_KM,
            length_m=one.length_m,
            descent_m=-(one.rise_m or 0),
            grade_percent=one.grade * _PERCENT,
        )
        for one in steepest_descents(stretches)
    ]


def demand_of(found: TripDemand) -> DemandOut:
    """Answer what a trip asks, with the keys of the works that the numbers stand on."""
    return DemandOut(
        legs=[LegDemandOut.model_validate(asdict(one)) for one in found.legs],
        days=[DayDemandOut.model_validate(asdict(one)) for one in found.days],
        body_mass_kg=found.body_mass_kg,
        pace=found.pace,
        walks=found.walks,
        walks_needed=PACE_WALKS,
        six_minute_walk_m=found.six_minute_walk_m,
        pack_habit_percent=PACK_TRIP_PERCENT,
        sources=_sources(found),
    )


def _sources(found: TripDemand) -> list[str]:
    models = {name for leg in found.legs if leg.energy for name in leg.energy.metres_by_model}
    keys = [*_ALWAYS, *(key for model in Model if model.value in models for key in SOURCES[model])]
    if Model.PANDOLF.value in models:
        keys.append(DOWNHILL_SOURCE)
    return keys
