"""``steadfoot calc demand``."""

from pathlib import Path
from typing import Annotated, Any

import typer

from steadfoot.calc.answer import AsJson, tell, work_of
from steadfoot.calc.refusals import NotReadable
from steadfoot.calc.route import hours as hours_by_rule
from steadfoot.calc.route import read
from steadfoot.rules import demand as rules
from steadfoot.rules.metabolic import Effort, Model, kcal_per_h, met
from steadfoot.rules.metabolic_choice import DOWNHILL_SOURCE, SOURCES, cost
from steadfoot.trips.gpx import Way

_FEW_M = 0.5


def demand(
    body_mass_kg: Annotated[float, typer.Option(help="Body mass without the pack, in kg.")],
    pack_kg: Annotated[float, typer.Option(help="Pack with all in it, in kg.")] = 0.0,
    speed_kmh: Annotated[float | None, typer.Option(help="Speed along the ground, in km/h.")] = None,
    grade_percent: Annotated[float | None, typer.Option(help="Grade in percent, negative downhill.")] = None,
    terrain_factor: Annotated[float, typer.Option(help="1.0 hard ground, 1.1 dirt road, 1.2 light brush ...")] = 1.0,
    model: Annotated[Model | None, typer.Option(help="Ask one model only; else it is chosen and explained.")] = None,
    gpx: Annotated[Path | None, typer.Option(help="A way instead of speed and grade.")] = None,
    pace_factor: Annotated[float, typer.Option(help="With --gpx: 1.2 is a fifth slower than Tobler's rule.")] = 1.0,
    as_json: AsJson = False,
) -> None:
    """Say what walking costs the body: at a speed and grade, or along a way."""
    if gpx is not None:
        if speed_kmh is not None or grade_percent is not None:
            raise NotReadable("gpx", str(gpx), "given without speed and grade, which follow from the way")
        walker = rules.Walker(body_mass_kg, pack_kg, terrain_factor, pace_factor)
        tell("Demand", _along(read(gpx), walker, model), as_json=as_json)
        return
    if speed_kmh is None:
        raise NotReadable("speed kmh", "", "given, in km/h, or a way with --gpx")
    if grade_percent is None:
        raise NotReadable("grade percent", "", "given, 0 on the level, or a way with --gpx")
    effort = Effort(body_mass_kg, pack_kg, speed_kmh, grade_percent, terrain_factor)
    tell("Demand", _at(effort, model), as_json=as_json)


def _at(effort: Effort, model: Model | None) -> dict[str, Any]:
    found = cost(effort, model)
    downhill = found.model is Model.PANDOLF and effort.grade_percent < 0
    return {
        "value": found.watts,
        "unit": "W",
        "metabolic_w": found.watts,
        "band_w": [found.low_w, found.high_w],
        "met": met(found.watts, effort.body_mass_kg),
        "kcal_per_h": kcal_per_h(found.watts),
        "model": found.model.value,
        "valid": True,
        "pack_percent": rules.pack_percent(effort.pack_kg, effort.body_mass_kg),
        "warnings": [*found.warnings, *_pack(effort.pack_kg, effort.body_mass_kg)],
        "rule": f"demand.{found.model.value}",
        "source": _works({found.model}, downhill=downhill),
    }


def _works(models: set[Model], *, downhill: bool) -> str:
    keys = [key for model in sorted(models) for key in SOURCES[model]]
    return "; ".join(work_of(key) for key in [*keys, *([DOWNHILL_SOURCE] if downhill else [])])


def _along(way: Way, walker: rules.Walker, model: Model | None) -> dict[str, Any]:
    found, route = rules.demand(way.route.stretches, walker, model), way.route
    down_m = route.descent_m
    work = None if down_m is None else rules.descent_work_kj(down_m, walker.body_mass_kg, walker.pack_kg)
    downhill = any(one.grade < 0 for one in route.stretches)
    return {
        "value": found.energy_kcal,
        "unit": "kcal",
        "energy_kcal": found.energy_kcal,
        "band_kcal": [found.low_kcal, found.high_kcal],
        "hours": found.hours,
        "hours_by_rule": hours_by_rule(route),
        "peak_metabolic_w": found.peak_w,
        "peak_met": met(found.peak_w, walker.body_mass_kg),
        "ascent_m": route.ascent_m,
        "descent_m": down_m,
        "descent_work_kj": work,
        "steps": rules.steps(route.distance_m),
        "pack_percent": rules.pack_percent(walker.pack_kg, walker.body_mass_kg),
        "metres_by_model": {name.value: metres for name, metres in found.models.items()},
        "valid": found.zigzag_m < _FEW_M and found.unknown_m < _FEW_M,
        "warnings": [*way.warnings, *_way(found), *_pack(walker.pack_kg, walker.body_mass_kg)],
        "rule": "demand.route",
        "source": _works(set(found.models), downhill=downhill and Model.PANDOLF in found.models)
        + f"; {work_of('tobler-1993')}",
    }


def _way(found: rules.Demand) -> list[str]:
    told = ["Moving time by Tobler's rule, without rests; each stretch by the first model that holds there."]
    if found.zigzag_m >= _FEW_M:
        told.append(
            f"{found.zigzag_m:.0f} m are steeper than {rules.ZIGZAG_PERCENT} percent, where no model holds both up and "
            "down: counted as zigzags of that grade."
        )
    if found.unknown_m >= _FEW_M:
        told.append(f"{found.unknown_m:.0f} m have no heights and are counted as level: the energy is too low.")
    return told


def _pack(pack_kg: float, body_mass_kg: float) -> list[str]:
    percent = rules.pack_percent(pack_kg, body_mass_kg)
    if percent <= rules.PACK_TRIP_PERCENT:
        return []
    return [f"The pack is {percent:.0f} percent of body mass; the habit is {rules.PACK_TRIP_PERCENT} or less."]
