"""The invented traverse of the Harrowcomb: five days from hut to hut, as a GPX file such as a receiver writes."""

import io
import math
from collections.abc import Iterator
from functools import cache
from itertools import pairwise
from random import Random
from typing import Final

from steadfoot.trips.reading import legs_of
from steadfoot.trips.schemas import LegBody, TripBody

_DAYS: Final = (
    ("Thornwater to Fernlee hut", ((0, 640), (4.5, 960), (5.6, 880), (9.2, 1480), (11.8, 1720))),
    ("Over the Saddle", ((0, 1720), (3.1, 2210), (5.4, 1980), (9.6, 2340), (13.9, 1890))),
    ("The long descent", ((0, 1890), (2.6, 2280), (6.3, 1960), (9.9, 1230), (12.4, 1060))),
    ("Up to the ridge hut", ((0, 1060), (4.2, 1420), (5.4, 1310), (8.1, 1990), (10.7, 2370))),
    ("Harrowcomb and down to Eastmere", ((0, 2370), (3.4, 2610), (6.8, 2180), (12.1, 1350), (16.4, 780))),
)
"""Of each day its name, and heights in metres at kilometres from its start."""
PACK_KG: Final = 10.0
_STEP_M: Final = 40
_SCATTER_M: Final = 1.2
_WANDER: Final = 0.35
_M_PER_DEGREE: Final = 111_195
_SEED: Final = 41
# An ocean: the valley is nowhere.
_LAT, _LON = 45.0, -30.0


def gpx() -> bytes:
    """Answer the file: a track for each day, a point every 40 m, heights with a receiver's scatter."""
    chance, lat, lon = Random(_SEED), _LAT, _LON
    parts = ['<gpx version="1.1" creator="Steadfoot demo" xmlns="http://www.topografix.com/GPX/1/1">']
    for name, heights in _DAYS:
        parts.append(f"<trk><name>{name}</name><trkseg>")
        for height in _heights(heights):
            parts.append(
                f'<trkpt lat="{lat:.6f}" lon="{lon:.6f}"><ele>{height + chance.gauss(0, _SCATTER_M):.1f}</ele></trkpt>'
            )
            heading = chance.gauss(math.pi / 2, _WANDER)
            lat += math.cos(heading) * _STEP_M / _M_PER_DEGREE
            lon += math.sin(heading) * _STEP_M / _M_PER_DEGREE / math.cos(math.radians(lat))
        parts.append("</trkseg></trk>")
    return "".join([*parts, "</gpx>"]).encode()


def _heights(marks: tuple[tuple[float, float], ...]) -> Iterator[float]:
    """Answer a height every 40 m, eased between the marks so that no day has an edge."""
    steps = int(marks[-1][0] * 1000 / _STEP_M)
    for step in range(steps + 1):
        km = step * _STEP_M / 1000
        (from_km, low), (to_km, high) = next(pair for pair in pairwise(marks) if km <= pair[1][0])
        share = (km - from_km) / (to_km - from_km)
        yield low + (high - low) * (3 * share**2 - 2 * share**3)


@cache
def trip() -> TripBody:
    """Answer the traverse as the trip of anybody who wants to cross the ridge."""
    legs, _ = legs_of(io.BytesIO(gpx()), None, ())
    named = [
        LegBody.model_validate(leg.model_dump() | {"name": name}) for leg, (name, _) in zip(legs, _DAYS, strict=True)
    ]
    return TripBody(pack_kg=PACK_KG, legs=named)
