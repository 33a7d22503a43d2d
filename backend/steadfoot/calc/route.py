"""``steadfoot calc route``."""

from pathlib import Path
from typing import Annotated, Any

import typer

from steadfoot.calc.answer import AsJson, tell, work_of
from steadfoot.calc.refusals import NotReadable
from steadfoot.rules.route import ASCENT_THRESHOLD_M, STRETCH_M, Route, Stretch
from steadfoot.rules.route_slopes import grade_histogram, steepest_descents
from steadfoot.rules.walking_time import naismith_langmuir_h, tobler_h
from steadfoot.trips import gpx

ASCENT_RULE = (
    f"hysteresis {ASCENT_THRESHOLD_M} m: a height counts once it lies that far from the last one counted, "
    "within each segment"
)
_M_PER_KM = 1000
_PERCENT = 100
_SOURCES = ("moritz-2000", "naismith-1892", "langmuir-1984", "tobler-1993")


def read(file: Path) -> gpx.Way:
    """Read a GPX file.

    Raises:
        ValueError: it cannot be read, by name and with a sentence.
    """
    try:
        with file.open("rb") as opened:
            return gpx.read(opened)
    except OSError as error:
        raise NotReadable("file", str(file), "a GPX file that can be read") from error


def route(
    file: Annotated[Path, typer.Argument(help="GPX 1.0 or 1.1, as it is or gzipped.")],
    as_json: AsJson = False,
) -> None:
    """Say how long and how steep a recorded way is, and about how long it takes."""
    way = read(file)
    found = way.route
    answer = {
        "value": found.distance_m / _M_PER_KM,
        "unit": "km",
        "distance_km": found.distance_m / _M_PER_KM,
        "ascent_m": found.ascent_m,
        "descent_m": found.descent_m,
        "highest_m": found.highest_m,
        "lowest_m": found.lowest_m,
        "points": found.points,
        "segments": found.segments,
        "ascent_rule": ASCENT_RULE,
        "ascent_threshold_m": ASCENT_THRESHOLD_M,
        "ascent_by_threshold": [
            {"threshold_m": threshold, "ascent_m": up, "descent_m": down} for threshold, up, down in found.ascents
        ],
        "moving_h_estimate": hours(found),
        "grades": _grades(found),
        "steepest_descents": [_stretch(one) for one in steepest_descents(found.stretches)],
        "stretch_rule": f"slopes over stretches of {STRETCH_M} m or more",
        "warnings": list(way.warnings),
        "rule": "route",
        "source": "; ".join(work_of(key) for key in _SOURCES),
    }
    tell("Route", answer, as_json=as_json)


def hours(found: Route) -> dict[str, float]:
    """Answer moving hours by two rules, without rests. Without heights both count the way as level."""
    return {
        "naismith_langmuir": naismith_langmuir_h(found.distance_m / _M_PER_KM, found.ascent_m or 0.0, found.stretches),
        "tobler": tobler_h(found.stretches),
    }


def _grades(found: Route) -> list[dict[str, Any]]:
    return [
        {"from_percent": one.low_percent, "to_percent": one.high_percent, "distance_km": one.length_m / _M_PER_KM}
        for one in grade_histogram(found.stretches)
    ]


def _stretch(one: Stretch) -> dict[str, float]:
    return {
        "from_km": one.start_m / _M_PER_KM,
        "length_m": one.length_m,
        "descent_m": -(one.rise_m or 0),
        "grade_percent": one.grade * _PERCENT,
    }
