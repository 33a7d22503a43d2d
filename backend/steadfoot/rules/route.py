"""A walk as recorded: distance, ascent and descent, and its slope stretch by stretch.

Points come one at a time and are folded at once, so that a long recording takes no more memory than a short one.
A new segment means a pause or lost reception: nothing is measured across the gap.
"""

import math
from dataclasses import dataclass
from typing import Annotated, Final

from steadfoot.rules.ranges import within
from steadfoot.rules.sources import Cited, Kind

EARTH_RADIUS_M: Final[
    Annotated[float, Cited(Kind.PUBLISHED, "moritz-2000", "Mean radius (2a + b) / 3, 6371.0088 km")]
] = 6_371_008.8
ASCENT_THRESHOLD_M: Final[
    Annotated[
        int,
        Cited(
            Kind.HOUSE,
            "house",
            "A height counts once it lies 5 m from the last one counted: less is mostly the receiver's scatter",
        ),
    ]
] = 5
STRETCH_M: Final[
    Annotated[
        int,
        Cited(Kind.HOUSE, "house", "Slope over 100 m or more: some metres of scatter are then some percent of grade"),
    ]
] = 100
ROUTE_MAX_KM: Final[Annotated[int, Cited(Kind.HOUSE, "house", "Plausible range, to catch slips: 1000 km on foot")]] = (
    1000
)
HEIGHT_MIN_M: Final[Annotated[int, Cited(Kind.HOUSE, "house", "Plausible range: below every shore on Earth")]] = -500
HEIGHT_MAX_M: Final[Annotated[int, Cited(Kind.HOUSE, "house", "Plausible range: above every summit on Earth")]] = 9000
_OTHER_THRESHOLDS: Final = (0, 3, 10)
"""Also counted, to show in metres what the choice of threshold does."""
_POLE: Final = 90
_DATE_LINE: Final = 180
_M_PER_KM: Final = 1000
_POINTS_NEEDED: Final = 2


class TooFewPoints(ValueError):
    """A way needs two points."""

    def __init__(self, points: int) -> None:
        self.points = points
        super().__init__(f"There are {points} points in it; a way needs {_POINTS_NEEDED} or more.")


@dataclass(frozen=True, slots=True)
class Stretch:
    """A piece of the way: metres on the map, metres gained (negative for lost), None where no height is known.

    ``height_m`` is the height at its start; None where it is not known, or where only the rise was told.
    """

    start_m: float
    length_m: float
    rise_m: float | None
    height_m: float | None = None

    @property
    def grade(self) -> float:
        """Rise over length as a fraction, negative downhill; 0 where no height is known."""
        return (self.rise_m or 0) / self.length_m


@dataclass(frozen=True, slots=True)
class Route:
    """What is known of a way, all in metres. Ascent, descent, highest and lowest are None without any height.

    ``ascents`` holds (threshold, ascent, descent) for the rule's threshold and some others.
    """

    distance_m: float
    points: int
    points_with_height: int
    segments: int
    empty_segments: int
    ascent_m: float | None
    descent_m: float | None
    highest_m: float | None
    lowest_m: float | None
    ascents: tuple[tuple[int, float, float], ...]
    stretches: tuple[Stretch, ...]


def distance_m(lat_a: float, lon_a: float, lat_b: float, lon_b: float) -> float:
    """Answer the great-circle distance of two places in degrees, by the haversine formula.

    On a sphere of the mean radius [moritz-2000]; the ellipsoid differs by up to about 0.5 percent.

    >>> round(distance_m(0, 179.9, 0, -179.9), 2)
    22239.02
    """
    phi_a, phi_b = math.radians(lat_a), math.radians(lat_b)
    across = math.sin(math.radians(lon_b - lon_a) / 2)
    along = math.sin((phi_b - phi_a) / 2)
    chord = along * along + math.cos(phi_a) * math.cos(phi_b) * across * across
    return 2 * EARTH_RADIUS_M * math.asin(min(1.0, math.sqrt(chord)))


class Climb:
    """Ascent and descent by hysteresis: a height counts once it lies a threshold away from the last one counted.

    Ascent minus descent is the net height within one threshold a segment; with threshold 0 exactly.
    """

    def __init__(self, threshold_m: float) -> None:
        self.threshold_m, self.up_m, self.down_m = threshold_m, 0.0, 0.0
        self._counted: float | None = None

    def begin(self) -> None:
        """Start a segment: what lies in the gap is not climbed."""
        self._counted = None

    def take(self, height_m: float) -> None:
        """Take the next height."""
        if self._counted is None:
            self._counted = height_m
        step = height_m - self._counted
        if abs(step) >= self.threshold_m:
            self._counted = height_m
            self.up_m += max(step, 0.0)
            self.down_m += max(-step, 0.0)


class Stretches:
    """Cuts the way into stretches whose ends have heights, of at least ``STRETCH_M`` where heights reach that far."""

    def __init__(self) -> None:
        self.done: list[Stretch] = []
        self._first, self._start_m, self._end_m = 0, 0.0, 0.0
        self._height: float | None = None

    def take(self, way_m: float, height_m: float | None) -> None:
        """Take a point by its way from the start of all."""
        self._end_m = way_m
        if height_m is None:
            return
        if self._height is None:
            self._close(None)
            self._height = height_m
        elif way_m - self._start_m >= STRETCH_M:
            self._close(height_m - self._height)
            self._height = height_m
        self._last = height_m, way_m

    def end(self) -> None:
        """End the segment: what is left over joins the stretch before it."""
        if self._height is not None:
            height, way_m = self._last
            tail, self._end_m = self._end_m, way_m
            self._leftover(height - self._height)
            self._end_m = tail
        self._close(None)
        self._first, self._height = len(self.done), None

    def _leftover(self, rise_m: float) -> None:
        if len(self.done) > self._first and self.done[-1].rise_m is not None:
            before = self.done.pop()
            self._start_m, self._height = before.start_m, before.height_m
            rise_m += before.rise_m or 0
        self._close(rise_m)

    def _close(self, rise_m: float | None) -> None:
        if self._end_m > self._start_m:
            height_m = None if rise_m is None else self._height
            self.done.append(Stretch(self._start_m, self._end_m - self._start_m, rise_m, height_m))
        self._start_m = self._end_m


class Recording:
    """Folds points, as they come, into a route."""

    def __init__(self) -> None:
        self.points, self._with_height, self._way_m = 0, 0, 0.0
        self._segments, self._filled = 0, 0
        self._climbs = [Climb(threshold) for threshold in sorted({ASCENT_THRESHOLD_M, *_OTHER_THRESHOLDS})]
        self._stretches = Stretches()
        self._here: tuple[float, float] | None = None
        self._highest, self._lowest = -math.inf, math.inf

    @property
    def way_m(self) -> float:
        """Metres walked so far."""
        return self._way_m

    def begin(self) -> None:
        """Start a segment; the first point of all starts one by itself."""
        self._segments += 1
        self._stretches.end()
        self._here = None
        for climb in self._climbs:
            climb.begin()

    def take(self, lat: float, lon: float, height_m: float | None) -> None:
        """Take the next point, in degrees, with its height in metres or None.

        Raises:
            OutOfRange: the place is not on Earth, the height is not believable, or the way grew past
                ``ROUTE_MAX_KM``.
        """
        within("latitude", lat, -_POLE, _POLE, "degrees")
        within("longitude", lon, -_DATE_LINE, _DATE_LINE, "degrees")
        self._walk(lat, lon)
        if height_m is not None:
            self._rise(height_m)
        self._stretches.take(self._way_m, height_m)

    def _walk(self, lat: float, lon: float) -> None:
        self.points += 1
        if self._here is None:
            self._filled += 1
        else:
            self._way_m += distance_m(*self._here, lat, lon)
            within("distance_km", self._way_m / _M_PER_KM, 0, ROUTE_MAX_KM, "km")
        self._here = lat, lon

    def _rise(self, height_m: float) -> None:
        within("height_m", height_m, HEIGHT_MIN_M, HEIGHT_MAX_M, "m")
        self._with_height += 1
        self._highest, self._lowest = max(self._highest, height_m), min(self._lowest, height_m)
        for climb in self._climbs:
            climb.take(height_m)

    def route(self) -> Route:
        """Answer the route of all points taken.

        Raises:
            TooFewPoints: there are fewer than two.
        """
        if self.points < _POINTS_NEEDED:
            raise TooFewPoints(self.points)
        self._stretches.end()
        known = self._with_height > 0
        ascents = tuple((int(c.threshold_m), c.up_m, c.down_m) for c in self._climbs) if known else ()
        ruled = {threshold: (up, down) for threshold, up, down in ascents}.get(ASCENT_THRESHOLD_M, (None, None))
        return Route(
            distance_m=self._way_m,
            points=self.points,
            points_with_height=self._with_height,
            segments=max(self._segments, self._filled),
            empty_segments=max(self._segments - self._filled, 0),
            ascent_m=ruled[0],
            descent_m=ruled[1],
            highest_m=self._highest if known else None,
            lowest_m=self._lowest if known else None,
            ascents=ascents,
            stretches=tuple(self._stretches.done),
        )
