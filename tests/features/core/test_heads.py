"""What stands beside a request's body has a limit, too: headers, trailers, the sizes of chunks."""

import socket
from collections.abc import Iterator
from contextlib import suppress
from urllib.parse import urlsplit

import pytest
from fastapi import FastAPI

from steadfoot.core.heads import BESIDE_BODY_BYTES
from tests.builders import API
from tests.sync.live import listening

_LINE = "X-Filler: " + "a" * 1000 + "\r\n"
_POST = f"POST {API}/sync HTTP/1.1\r\nHost: here\r\n"
_CHUNKED = _POST + "Transfer-Encoding: chunked\r\n\r\n"
_HEADS = {
    "headers without an end": _POST + 100 * _LINE,
    "one header without an end": _POST + "X-Filler: " + 100_000 * "a",
    "a request line without an end": "POST /" + 100_000 * "a",
    "trailers without an end": _CHUNKED + "0\r\n" + 100 * _LINE,
    "sizes of chunks without an end": _CHUNKED + "1;" + 100_000 * "a",
}


@pytest.fixture
def address(app: FastAPI) -> Iterator[str]:
    with listening(app) as found:
        yield found


def _answer(address: str, request: str) -> bytes:
    """Send something and answer all that comes back until the server hangs up."""
    where = urlsplit(address)
    with socket.create_connection((where.hostname or "", where.port or 0), timeout=10) as wire:
        found = b""
        with suppress(ConnectionError):  # whoever still speaks when the other hangs up may not hear why
            wire.sendall(request.encode())
            while part := wire.recv(65_536):
                found += part
    return found


@pytest.mark.parametrize("what", _HEADS)
def test_the_server_hangs_up_on(address: str, what: str) -> None:
    assert _answer(address, _HEADS[what]).partition(b"\r\n")[0] in (b"HTTP/1.1 400 Bad Request", b"")


def test_a_large_body_and_many_requests_are_not_counted_as_headers(address: str) -> None:
    body = "[" + " " * 2 * BESIDE_BODY_BYTES + "]"
    one = f"{_POST}Content-Length: {len(body)}\r\n{_LINE}\r\n{body}"
    last = one.replace("Host: here", "Host: here\r\nConnection: close")
    assert _answer(address, 9 * one + last).count(b"HTTP/1.1 401 ") == 10
