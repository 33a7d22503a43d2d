"""A GPX file as a way: its points checked, folded and cut into legs, and what is odd about it said in words."""

import math
from dataclasses import dataclass, field
from datetime import UTC, datetime
from typing import BinaryIO, Final

from steadfoot.rules.ranges import OutOfRange
from steadfoot.rules.route import HEIGHT_MAX_M, HEIGHT_MIN_M, Recording, Route
from steadfoot.rules.route_split import DAYS_MAX
from steadfoot.trips.gpx_bytes import pieces
from steadfoot.trips.gpx_remarks import Odd, remarks
from steadfoot.trips.gpx_xml import Begin, Point, points

POINTS_MAX: Final = 1_000_000
"""Five days at a point a second are under half of it."""
SEGMENTS_MAX: Final = 500
"""Each pause or loss of reception begins one; a week of walking with a pause every ten minutes has some 300."""
LEGS_MAX: Final = DAYS_MAX
_POINTS_NEEDED: Final = 2


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


class TooManySegments(ValueError):
    """More segments than are taken."""

    def __init__(self) -> None:
        self.max_segments = SEGMENTS_MAX
        super().__init__(f"The way is broken into more than {SEGMENTS_MAX} segments. Join them, or split the file.")


class TooManyLegs(ValueError):
    """More tracks than a trip has days."""

    def __init__(self) -> None:
        self.max_legs = LEGS_MAX
        super().__init__(f"There are more than {LEGS_MAX} tracks in the file, more than a trip has days.")


class CutNowhere(ValueError):
    """A leg would have no length: a cut lies beyond the end, or there are too few points for it."""

    def __init__(self, leg: int) -> None:
        self.leg = leg
        super().__init__(
            f"Leg {leg} would have no length: the way ends before it, or has too few points for this split."
        )


@dataclass(frozen=True, slots=True)
class Split:
    """Where a way is cut: at each new track (or route), or at metres from its start. Neither is one leg."""

    by_track: bool = False
    at_m: tuple[float, ...] = ()


@dataclass(frozen=True, slots=True)
class Way:
    """The route of a file, and what a person should know before they trust it."""

    route: Route
    warnings: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Legs:
    """The legs of a file in their order, and what a person should know before they trust them."""

    routes: tuple[Route, ...]
    warnings: tuple[str, ...]


@dataclass
class _Folded:
    """The points of one kind, tracks or routes, folded as they come; a leg is closed where the way is cut."""

    split: Split
    recording: Recording = field(default_factory=Recording)
    closed: list[Recording] = field(default_factory=list)
    odd: Odd = field(default_factory=Odd)
    segments: int = 0
    _before_m: float = 0.0
    _last: datetime | None = None

    def begin(self, one: Begin) -> None:
        self.segments += 1
        if self.segments > SEGMENTS_MAX:
            raise TooManySegments
        if self.split.by_track and one.first and self.recording.points:
            self._close()
        self.recording.begin()
        self._last = None

    def take(self, point: Point, number: int) -> None:
        height_m = self._height(point)
        try:
            lat, lon = _number(point.lat), _number(point.lon)
            self.recording.take(lat, lon, height_m)
        except OutOfRange as error:
            if error.name == "distance_km":
                raise
            raise PlaceUnknown(number, point.lat, point.lon) from error
        if self._is_cut():
            self._close()
            self.recording.take(lat, lon, height_m)
        self._time(point)

    def _is_cut(self) -> bool:
        """Answer whether a leg ends at the point just taken; the next one begins at the same point."""
        cuts = self.split.at_m
        done = len(self.closed)
        return done < len(cuts) and self._before_m + self.recording.way_m >= cuts[done]

    def _close(self) -> None:
        if len(self.closed) + 1 >= LEGS_MAX:
            raise TooManyLegs
        self._before_m += self.recording.way_m
        self.closed.append(self.recording)
        self.recording = Recording()

    def routes(self) -> tuple[Route, ...]:
        """Answer the legs; a track of a single point is none, unless there is nothing else."""
        found = [*self.closed, self.recording]
        if len(self.closed) < len(self.split.at_m):
            raise CutNowhere(len(found) + 1)
        if self.split.by_track:
            found = [one for one in found if one.points >= _POINTS_NEEDED] or found[:1]
        for number, one in enumerate(found, start=1):
            if self.split.at_m and not one.way_m:
                raise CutNowhere(number)
        return tuple(one.route() for one in found)

    def _height(self, point: Point) -> float | None:
        text = point.texts.get("ele", "")
        if not text:
            return None
        height = _number(text)
        if not HEIGHT_MIN_M <= height <= HEIGHT_MAX_M:
            self.odd.heights += 1
            return None
        self.odd.zero_heights += height == 0
        return height

    def _time(self, point: Point) -> None:
        text = point.texts.get("time")
        time = _time(text) if text else None
        self.odd.times += bool(text) and time is None
        if time and self._last and time < self._last:
            self.odd.reversed_times += 1
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
    """Read a GPX file as one way, gzipped or not, in memory that does not grow with it.

    Tracks count; routes only where there is no track. Times are checked and then forgotten.

    Raises:
        FileTooLarge, PackedBadly, NotGpx: it is no GPX file that can be read.
        PlaceUnknown: a point has no place on Earth.
        TooManyPoints, TooManySegments, TooFewPoints: more than are taken, or fewer points than two.
        OutOfRange: the way is longer than anybody walks.
    """
    found = read_legs(file, Split())
    return Way(found.routes[0], found.warnings)


def read_legs(file: BinaryIO, split: Split) -> Legs:
    """Read a GPX file as legs; ascent is counted anew in each from the points themselves.

    Raises:
        TooManyLegs, CutNowhere: it cannot be cut so.
        ValueError: as ``read``.
    """
    folded = {"track": _Folded(split), "route": _Folded(split)}
    number = 0
    for one in points(pieces(file)):
        number += isinstance(one, Point)
        _fold(folded[one.kind], one, number)
    planned = not _points(folded["track"])
    found = folded["route" if planned else "track"]
    routes = found.routes()
    found.odd.planned = planned
    found.odd.both = not planned and _points(folded["route"]) > 0
    return Legs(routes, remarks(routes, found.odd))


def _points(folded: _Folded) -> int:
    return sum(one.points for one in (*folded.closed, folded.recording))


def _fold(folded: _Folded, one: Begin | Point, number: int) -> None:
    if number > POINTS_MAX:
        raise TooManyPoints
    if isinstance(one, Begin):
        folded.begin(one)
    else:
        folded.take(one, number)
