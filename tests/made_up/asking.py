"""Makes requests for one operation: by its schema, against its schema, and from a body that is in order, spoiled."""

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Any
from urllib.parse import quote, urlencode

import httpx
from hypothesis import strategies as st
from schemathesis import GenerationMode
from schemathesis.core import NotSet
from schemathesis.schemas import APIOperation

from tests.features.trips.files import gpx, track
from tests.made_up.ready import KINDS, batch
from tests.made_up.spoiling import KILLERS, RAW_BODIES, as_text, encoded, spoiled
from tests.made_up.world import World

HOST = "https://testserver"
_ROUTE = gpx(track(length_m=2000), track(length_m=1000, heights=False))
_QUERY = {
    "variant": ["rail"],
    "key": ["up"],
    "form": ["still", "moving"],
    "view": ["side"],
    "status": ["open"],
    "from": ["2026-06-01"],
    "to": ["2026-06-30"],
    "limit": ["5"],
    "order": ["newest"],
    "cursor": ["1"],
    "session": ["s1"],
    "paper": ["a4", "letter"],
    "large": ["true"],
    "language": ["de"],
    "days": ["2"],
    "cut_km": ["4"],
    "day": ["2026-06-10"],
    "below": ["5"],
    "kit": ["step,rail"],
    "spare": ["knee"],
    "trains": ["hip_control"],
    "here": ["true"],
}


@dataclass(frozen=True)
class Made:
    """A request before it is known who asks it."""

    method: str
    url: str
    headers: dict[str, str]
    content: bytes
    moved: bool
    """The path no longer has the pattern of its operation."""

    def by(self, proof: dict[str, str]) -> httpx.Request:
        """Answer the request of somebody."""
        said = {name: value for name, value in self.headers.items() if name.lower() not in ("cookie", "authorization")}
        headers = [(name.encode(), value.encode("latin-1")) for name, value in {**said, **proof}.items()]
        return httpx.Request(self.method, self.url, headers=headers, content=self.content)

    def __str__(self) -> str:
        return f"{self.method} {self.url[:200]} {self.headers} {self.content[:400]!r}"


def _moves(text: str) -> bool:
    return not text or "/" in text or text in (".", "..")


@st.composite
def _path(draw: st.DrawFn, ask: "Ask", made_up: dict[str, Any], calm: bool) -> tuple[str, bool]:
    path, moved = ask.operation.path, False
    for one in ask.operation.path_parameters:
        real = ask.real(one.name)
        keep = real and (calm or draw(st.integers(0, 9)) < 8)
        text = as_text(draw(st.sampled_from(real)) if keep else made_up.get(one.name, draw(KILLERS)))
        moved = moved or _moves(text)
        path = path.replace(f"{{{one.name}}}", quote(text, safe=""))
    return path, moved


@st.composite
def _query(draw: st.DrawFn, ask: "Ask", calm: bool) -> list[tuple[str, str]]:
    pairs = []
    for one in ask.operation.query:
        for _ in range(1 if calm else draw(st.sampled_from([0, 1, 1, 2]))):
            ready = st.sampled_from(ask.real(one.name) or _QUERY[one.name])
            pairs.append((one.name, as_text(draw(ready if calm or draw(st.booleans()) else KILLERS))))
    if draw(st.integers(0, 4)) == 0:
        pairs.append((as_text(draw(st.text(max_size=5))), as_text(draw(KILLERS))))
    return pairs


@st.composite
def _headers(draw: st.DrawFn, operation: APIOperation, calm: bool) -> dict[str, str]:
    names = ["accept-language", "x-forwarded-for", "accept", *([] if calm else [one.name for one in operation.headers])]
    usual = st.sampled_from(["*", '"v1"', '"1"', '"0"', "0", "", '"', "W/", "é" * 20, "a" * 50, "1" * 41])
    found = draw(st.lists(st.sampled_from(names), max_size=2, unique=True))
    return {name: _latin(draw(usual | KILLERS)) for name in found}


@st.composite
def _route(draw: st.DrawFn, calm: bool) -> bytes:
    at = draw(st.integers(0, len(_ROUTE)))
    return _ROUTE if calm else draw(st.sampled_from([_ROUTE[:at], _ROUTE[:at] + b"&#0;" + _ROUTE[at:]]))


@st.composite
def _body(draw: st.DrawFn, ask: "Ask", calm: bool) -> bytes:
    kinds = st.lists(st.sampled_from(KINDS), min_size=1, max_size=3)
    ready = draw(kinds.map(batch) if ask.name == "sync" else st.sampled_from(ask.ready))
    return encoded(ready if calm else draw(spoiled(ready)))


@st.composite
def _content(draw: st.DrawFn, ask: "Ask", calm: bool) -> tuple[bytes, str]:
    types = [one.media_type for one in ask.operation.body]
    if not types:
        return (b"", "") if calm else (draw(st.sampled_from(RAW_BODIES)), "application/json")
    if not calm and draw(st.integers(0, 7)) == 0:
        return draw(st.sampled_from(RAW_BODIES)), draw(st.sampled_from([*types, "text/plain", "", "x", "a/b;c=d"]))
    return draw(_route(calm) if ask.name == "readRoute" else _body(ask, calm)), types[0]


@st.composite
def _spoiled(draw: st.DrawFn, ask: "Ask") -> Made:
    """A request in order (one of three), or with a few of its parts spoiled."""
    calm = draw(st.integers(0, 2)) == 0
    path, moved = draw(_path(ask, {}, calm))
    content, media_type = draw(_content(ask, calm))
    headers = {**draw(_headers(ask.operation, calm)), **({"content-type": media_type} if media_type else {})}
    return Made(ask.method, url_of(HOST + path, draw(_query(ask, calm))), headers, content, moved)


@st.composite
def _by_schema(draw: st.DrawFn, ask: "Ask", mode: GenerationMode) -> Made:
    case = draw(ask.operation.as_strategy(generation_mode=mode))
    path, moved = draw(_path(ask, dict(case.path_parameters or {}), False))
    pairs = [(k, as_text(v)) for k, found in (case.query or {}).items() for v in _each(found)]
    headers = {name: _latin(value) for name, value in (case.headers or {}).items()}
    body = b"" if isinstance(case.body, NotSet) else case.body
    content = body if isinstance(body, bytes) else encoded(body)
    if case.media_type:
        headers["content-type"] = case.media_type
    return Made(ask.method, url_of(HOST + path, pairs), headers, content, moved)


def url_of(address: str, pairs: list[tuple[str, str]]) -> str:
    """Answer an address with a query."""
    return f"{address}?{urlencode(pairs)}" if pairs else address


def _each(value: Any) -> list[Any]:
    return value if isinstance(value, list) else [value]


def _latin(value: Any) -> str:
    return "".join(letter for letter in as_text(value) if " " <= letter <= "ÿ" and letter != "\x7f")[:2000]


@dataclass(frozen=True)
class Ask:
    """What requests are made for."""

    world: World
    operation: APIOperation
    name: str

    @property
    def method(self) -> str:
        """The method, as it is sent."""
        return str(self.operation.method).upper()

    def real(self, name: str) -> list[str]:
        """Answer ids that are there, for one parameter of the path."""
        fits = self.world.clients.get(self.name) if name == "client_id" else None
        return [fits] if fits else self.world.ids.get(name, [])

    @property
    def ready(self) -> list[Any]:
        """Bodies that are in order."""
        return self.world.bodies.get(self.name, [{}])

    def in_order(self, but: Mapping[str, str] = MappingProxyType({})) -> Made:
        """Answer the plainest request that is to be done, ``but`` with some parts of its path replaced."""
        path = self.operation.path
        for one in self.operation.path_parameters:
            text = but.get(one.name, self.real(one.name)[0])
            path = path.replace(f"{{{one.name}}}", quote(text, safe=""))
        address = url_of(
            HOST + path, [(one.name, _QUERY[one.name][0]) for one in self.operation.query if one.is_required]
        )
        moved = any(map(_moves, but.values()))
        types = [one.media_type for one in self.operation.body]
        if not types:
            return Made(self.method, address, {}, b"", moved)
        body = _ROUTE if self.name == "readRoute" else encoded(self.ready[0])
        return Made(self.method, address, {"content-type": types[0]}, body, moved)

    def requests(self) -> st.SearchStrategy[Made]:
        """Answer requests of every sort: half begin with one in order, since those reach deepest."""
        ways = [_spoiled(self)] * 2 + [_by_schema(self, GenerationMode.POSITIVE)]
        operation = self.operation
        if operation.body or operation.query or operation.path_parameters or operation.headers:
            ways.append(_by_schema(self, GenerationMode.NEGATIVE))
        return st.one_of(ways)
