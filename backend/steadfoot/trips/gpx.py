"""A GPX file as a way: its points checked and folded, and what is odd about it said in words."""

import math
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, datetime
from typing import BinaryIO, Final

from steadfoot.rules.ranges import OutOfRange
from steadfoot.rules.route import HEIGHT_MAX_M, HEIGHT_MIN_M, Recording, Route
from steadfoot.trips.gpx_bytes import pieces
from steadfoot.trips.gpx_xml import Begin, Point, points

POINTS_MAX: Final = 1_000_000
"""Five days at a point a second are under half of it."""
_PERCENT: Final = 100


class PlaceUnknown(ValueError):
    """A point that lies nowhere: its number in the file, and what is written there."""

    def __init__(self, point: int, lat: str, lon: str) -> None:
        self.point, self.lat, self.lon = point, lat[:20], lon[:20]
        super().__init__(
            f"Point {point} lies nowhere: latitude {self.lat!r}, longitude {self.lon!r}. They must be numbers from -90 "
            "to 90 and from -180 to 180 degrees."
        )


class TooManyPoints(ValueError):
    """More points than are taken."""

    def __init__(self) -> None:
        self.max_points = POINTS_MAX
        super().__init__(f"There are more than {POINTS_MAX:,} points in the file. Split the way into its days.")


@dataclass(frozen=True, slots=True)
class Way:
    """The route of a file, and what a person should know before they trust it."""

    route: Route
    warnings: tuple[str, ...]


class _Folded:
    """The points of one kind, tracks or routes, folded as they come."""

    def __init__(self) -> None:
        self.recording = Recording()
        self.odd_heights = self.zero_heights = self.odd_times = self.reversed_times = 0
        self._last: datetime | None = None

    def begin(self) -> None:
        self.recording.begin()
        self._last = None

    def take(self, point: Point, number: int) -> None:
        try:
            self.recording.take(_number(point.lat), _number(point.lon), self._height(point))
        except OutOfRange as error:
            if error.name == "distance_km":
                raise
            raise PlaceUnknown(number, point.lat, point.lon) from error
        self._time(point)

    def _height(self, point: Point) -> float | None:
        text = point.texts.get("ele", "")
        if not text:
            return None
        height = _number(text)
        if not HEIGHT_MIN_M <= height <= HEIGHT_MAX_M:
            self.odd_heights += 1
            return None
        self.zero_heights += height == 0
        return height

    def _time(self, point: Point) -> None:
        text = point.texts.get("time")
        time = _time(text) if text else None
        self.odd_times += bool(text) and time is None
        if time and self._last and time < self._last:
            self.reversed_times += 1
        self._last = time or self._last


def _number(text: str) -> float:
    try:
        return float(text)
    except ValueError:
        return math.nan


def _time(text: str) -> datetime | None:
    try:
        time = datetime.fromisoformat(text)
    except ValueError:
        return None
    return time if time.tzinfo else time.replace(tzinfo=UTC)


def read(file: BinaryIO) -> Way:
    """Read a GPX file, gzipped or not, in memory that does not grow with it.

    Tracks count; routes only where there is no track. Times are checked and then forgotten.

    Raises:
        FileTooLarge, PackedBadly, NotGpx: it is no GPX file that can be read.
        PlaceUnknown: a point has no place on Earth.
        TooManyPoints, TooFewPoints: there are more than ``POINTS_MAX`` points, or fewer than two.
        OutOfRange: the way is longer than anybody walks.
    """
    folded = {"track": _Folded(), "route": _Folded()}
    number = 0
    for one in points(pieces(file)):
        number += isinstance(one, Point)
        _fold(folded[one.kind], one, number)
    kind = "track" if folded["track"].recording.points else "route"
    both = all(one.recording.points for one in folded.values())
    return _way(folded[kind], planned=kind == "route", both=both)


def _fold(folded: _Folded, one: Begin | Point, number: int) -> None:
    if number > POINTS_MAX:
        raise TooManyPoints
    if isinstance(one, Begin):
        folded.begin()
    else:
        folded.take(one, number)


def _way(found: _Folded, *, planned: bool, both: bool) -> Way:
    route = found.recording.route()
    said = (
        (planned, "Read from a planned route, not a recording: few points, so length and ascent are too low."),
        (both, "The file also holds a planned route; only its tracks are counted."),
        (route.empty_segments > 0, f"{route.empty_segments} of {route.segments} segments hold no point."),
        (not route.distance_m, "All points are one place: there is no distance."),
        *_about_heights(found, route),
        *_about_times(found),
    )
    return Way(route, tuple(words for so, words in said if so))


def _about_heights(found: _Folded, route: Route) -> Iterator[tuple[bool, str]]:
    missing = route.points - route.points_with_height
    share = missing / route.points * _PERCENT
    yield not route.points_with_height, "There are no heights in it: ascent and descent are unknown, not 0."
    some = bool(missing and route.points_with_height)
    yield some, f"{missing} of {route.points} points ({share:.0f} percent) have no height: ascent may be too low."
    yield (
        bool(found.odd_heights),
        (f"{found.odd_heights} heights are no numbers from {HEIGHT_MIN_M} to {HEIGHT_MAX_M} m and count as missing."),
    )
    level = found.zero_heights == route.points_with_height > 0
    yield level, "Every height is exactly 0: most likely none was measured."
    yield (
        bool(found.zero_heights and not level),
        (f"{found.zero_heights} heights are exactly 0. Where that stands for a missing one, ascent is too high."),
    )


def _about_times(found: _Folded) -> Iterator[tuple[bool, str]]:
    yield (
        bool(found.reversed_times),
        (f"Time runs backwards at {found.reversed_times} points. Times are not used; the order of the points is."),
    )
    yield bool(found.odd_times), f"{found.odd_times} times cannot be read. Times are not used."
