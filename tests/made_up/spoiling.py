"""Values that have felled servers, and ways to put them into a request that is otherwise in order."""

import copy
import json
import re
from base64 import urlsafe_b64decode, urlsafe_b64encode
from collections.abc import Iterator
from typing import Any

from hypothesis import strategies as st

DEEP = 100_000
_WORDS: list[Any] = [
    *(
        "",
        " ",
        "x" * 5000,
        "\x00",
        "a\x00b",
        "\ud800",
        "\udfff\ud800",
        "💥" * 200,
        "\u202eabc",
        "\ufeff",
        "é",
        "e\u0301",
    ),
    *(
        "../../etc/passwd",
        "' OR 1=1 --",
        "%s%n{0}",
        "${jndi:ldap://x}",
        "<script>alert(1)</script>",
        "\r\nX: y",
        "=1+1",
    ),
    *("null", "true", "NaN", "-1", "1e999", "0x10", "١٢", "9" * 400),
]
_NUMBERS: list[Any] = [
    *(0, -1, -0.0, 2**31, 2**53 + 1, 2**63 - 1, 2**63, -(2**63) - 1, 2**64, 10**400, 10**4999, 1e308, 5e-324, 0.1),
    *(float("inf"), float("-inf"), float("nan")),
]
_TIMES = [
    *("0001-01-01", "9999-12-31", "2026-02-30", "2026-06-31", "0000-00-00", "10000-01-01", "2026-W24-3", "2026-06-10"),
    *("0001-01-01T00:00:00+14:00", "9999-12-31T23:59:59.999999-14:00", "2026-06-10T08:00:00", "2026-06-10T25:61:61Z"),
    *("2026-06-10T08:00:00+99:99", "2026-03-29T02:30:00+01:00", "1e12", "253402300800"),
]
_SHAPES: list[Any] = [
    None,
    True,
    False,
    [],
    {},
    [[]],
    {"": ""},
    {"__proto__": {"x": 1}},
    [None] * 1000,
    {"a": {"b": []}},
]
VALUES = [*_WORDS, *_NUMBERS, *_TIMES, *_SHAPES]
KILLERS = st.sampled_from(VALUES) | st.text(max_size=30) | st.integers() | st.floats()
RAW_BODIES = [
    *(b"", b" ", b"{", b"null", b"[]", b'"text"', b"\xff\xfe\x00", b"\xef\xbb\xbf{}", b"{'a': 1}", b"1e999", b"NaN"),
    *(b"[" * DEEP, b'{"a":' * DEEP, b'{"a":1,"a":2}', b'{"a":' + b"9" * 5000 + b"}", b'"\\ud800"', b"\x1f\x8b\x08\x00"),
    *(b"a=1&b=2", b"<x/>", b'<!DOCTYPE x [<!ENTITY a "b">]><gpx>&a;</gpx>'),
]
_BYTES = [
    *(b"", b"\x00", b"\xff" * 9, b"[" * 5900, b'{"a":' * 900, b"null", b"[]", b'{"challenge":null}'),
    *(
        b"\x80",
        b"\xa0",
        b"\xf6",
        b"\x81" * 5900,
        b"\xbf" * 5900,
        b"\x5b\x7f" + b"\xff" * 7,
        b"\xd8\x23\x61(",
        b"\xd8\x1d\x00",
    ),
]
"""What readers of JSON and of CBOR fall over: without an end, too deep, too long, of another kind."""
_BASE_64 = re.compile(r"[\w-]{16,}", re.ASCII)


def _leaves(value: Any, way: tuple[Any, ...] = ()) -> list[tuple[Any, ...]]:
    """Answer the way to everything inside a JSON value, containers too."""
    inside = value.items() if isinstance(value, dict) else enumerate(value) if isinstance(value, list) else ()
    return [way] + [found for key, part in inside for found in _leaves(part, (*way, key))]


def _at(value: Any, way: tuple[Any, ...]) -> Any:
    return _at(value[way[0]], way[1:]) if way else value


def _put(value: Any, way: tuple[Any, ...], new: Any) -> Any:
    if not way:
        return new
    value[way[0]] = _put(value[way[0]], way[1:], new)
    return value


@st.composite
def _inside(draw: st.DrawFn, text: str) -> str:
    """Other bytes in base 64, or the same with some of them cut out and others put in."""
    whole = urlsafe_b64decode(text + "=" * (-len(text) % 4))
    at = draw(st.integers(0, len(whole)))
    cut = whole[:at] + draw(st.binary(max_size=4)) + whole[at + draw(st.integers(0, 4)) :]
    made = draw(st.sampled_from(_BYTES)) if draw(st.booleans()) else cut
    return _base_64(made)


def _base_64(value: bytes) -> str:
    return urlsafe_b64encode(value).decode().rstrip("=")


def _is_bytes(value: Any) -> bool:
    return isinstance(value, str) and len(value) % 4 != 1 and _BASE_64.fullmatch(value) is not None


@st.composite
def _worse(draw: st.DrawFn, old: Any) -> Any:
    """A killer; in place of bytes mostly other bytes, since no reader of theirs sees anything else."""
    return draw(_inside(old) if _is_bytes(old) and draw(st.integers(0, 4)) else KILLERS)


@st.composite
def spoiled(draw: st.DrawFn, body: Any) -> Any:
    """A JSON value with none, one or two places of it changed for the worse, or an unknown field more."""
    made = copy.deepcopy(body)
    for _ in range(draw(st.sampled_from([0, 0, 1, 1, 1, 2]))):
        ways = [way for way in _leaves(made) if way]
        if ways:
            way = draw(st.sampled_from(ways))
            worse = draw(_worse(_at(made, way)))
            made = _put(made, way, copy.deepcopy(worse))  # a second change may go into it, not into what is drawn
    if isinstance(made, dict) and draw(st.integers(0, 9)) == 0:
        made[draw(st.text(max_size=8))] = draw(KILLERS)
    return made


def each_spoiled(body: Any, within: tuple[Any, ...] = ()) -> Iterator[Any]:
    """Answer a JSON value with each place ``within`` changed for the worse in each way; of a list only in its first."""
    for way in _leaves(body):
        if way[: len(within)] == within and not any(isinstance(step, int) and step > 0 for step in way):
            others = map(_base_64, _BYTES) if _is_bytes(_at(body, way)) else ()
            yield from (_put(copy.deepcopy(body), way, new) for new in (*VALUES, *others))


def encoded(value: Any) -> bytes:
    """JSON as Python writes it: half pairs as escapes, and numbers that are none by their names."""
    try:
        return json.dumps(value).encode()
    except ValueError:  # more digits than Python writes
        return b'{"a":' + b"9" * 5000 + b"}"


def as_text(value: Any) -> str:
    """A value as it stands in an address."""
    text = value if isinstance(value, str) else encoded(value).decode()
    return text.encode("utf-8", "replace").decode()[:6000]
