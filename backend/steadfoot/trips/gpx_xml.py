"""GPX as a stream of points: no document type, no entities, no tree in memory.

Expat reads it piece by piece. A document type is refused outright, so that no entity can be declared, and a single
piece of markup or a depth beyond any GPX file is refused before it takes memory.
"""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from typing import Final
from xml.parsers import expat

DEPTH_MAX: Final = 32
"""GPX needs five; extensions nest a few more."""
MARKUP_MAX_BYTES: Final = 1_000_000
TEXT_MAX: Final = 64
"""Characters kept of a height or a time; both are shorter."""
_NAMESPACES: Final = ("", "http://www.topografix.com/GPX/1/0", "http://www.topografix.com/GPX/1/1")
_TRACK, _SEGMENT = "trk", "trkseg"
_STARTS: Final = {_SEGMENT: "track", "rte": "route"}
_POINTS: Final = {"trkpt": "track", "rtept": "route"}
_TEXTS: Final = ("ele", "time")


class NotGpx(ValueError):
    """Not a GPX file, or one that is broken."""

    def __init__(self, reason: str) -> None:
        self.reason = reason
        super().__init__(f"This is not a GPX file that can be read: {reason}.")


@dataclass(frozen=True, slots=True)
class Begin:
    """A segment of a track, or a route, starts here; it may stay empty. ``first``: it is the first of its track."""

    kind: str
    first: bool = True


@dataclass(frozen=True, slots=True)
class Point:
    """A point as written, its text untouched."""

    kind: str
    lat: str
    lon: str
    texts: dict[str, str] = field(default_factory=dict)


class _Handlers:
    def __init__(self) -> None:
        self.ready: list[Begin | Point] = []
        self._path: list[str] = []
        self._namespace = ""
        self._first = True
        self._point: Point | None = None
        self._text: str | None = None

    def start(self, qualified: str, attributes: dict[str, str]) -> None:
        namespace, _, name = qualified.rpartition(" ")
        if not self._path:
            self._root(namespace, name)
        self._path.append(name)
        if len(self._path) > DEPTH_MAX:
            raise NotGpx("its elements are nested too deeply")
        if namespace == self._namespace:
            self._known(name, attributes)

    def _root(self, namespace: str, name: str) -> None:
        if name != "gpx" or namespace not in _NAMESPACES:
            raise NotGpx(f"its outermost element is <{name[:TEXT_MAX]}>, not <gpx> of version 1.0 or 1.1")
        self._namespace = namespace

    def _known(self, name: str, attributes: dict[str, str]) -> None:
        if name == _TRACK:
            self._first = True
        elif name in _STARTS:
            self.ready.append(Begin(_STARTS[name], self._first or name != _SEGMENT))
            self._first = False
        elif name in _POINTS:
            self._point = Point(_POINTS[name], attributes.get("lat", ""), attributes.get("lon", ""))
        elif name in _TEXTS and self._point and self._path[-2] in _POINTS:
            self._text = ""

    def text(self, text: str) -> None:
        if self._text is not None:
            self._text = (self._text + text)[: TEXT_MAX + 1]

    def end(self, qualified: str) -> None:
        name = self._path.pop()
        if self._point and self._text is not None and name in _TEXTS:
            self._point.texts[name] = self._text.strip()
            self._text = None
        elif self._point and name in _POINTS and qualified.rpartition(" ")[0] == self._namespace:
            self.ready.append(self._point)
            self._point = None


def _no_document_type(*_: object) -> None:
    raise NotGpx("it declares a document type, which GPX does not have and which could do harm")


def points(pieces: Iterable[bytes]) -> Iterator[Begin | Point]:
    """Answer the segments and points of all tracks and routes in the order written; waypoints are passed over.

    Raises:
        NotGpx: it is something else, breaks off, or declares a document type.
    """
    handlers, parser, fed = _Handlers(), expat.ParserCreate(namespace_separator=" "), 0
    parser.StartDoctypeDeclHandler = _no_document_type
    parser.StartElementHandler, parser.EndElementHandler = handlers.start, handlers.end
    parser.CharacterDataHandler = handlers.text
    for piece in pieces:
        fed += len(piece)
        _parse(parser, piece, last=False)
        if fed - max(parser.CurrentByteIndex, 0) > MARKUP_MAX_BYTES:
            raise NotGpx("one piece of its markup is larger than 1 MB")
        yield from handlers.ready
        handlers.ready.clear()
    _parse(parser, b"", last=True)


def _parse(parser: expat.XMLParserType, piece: bytes, *, last: bool) -> None:
    try:
        parser.Parse(piece, last)
    except expat.ExpatError as error:
        line = f"line {error.lineno}, character {error.offset + 1}"
        raise NotGpx(f"{expat.ErrorString(error.code)} at {line}") from error
    except LookupError as error:
        raise NotGpx("it is written in an encoding that is not known here") from error
