"""What happens to every request and reply: body limit, gzip bodies, headers, refusal of cross-site writes.

Plain ASGI, since middleware built on response objects hides errors raised after the reply has begun.
"""

import json
import zlib
from collections.abc import Awaitable, Callable, MutableMapping
from typing import Any
from urllib.parse import quote

from starlette.datastructures import Headers, MutableHeaders

from steadfoot.core.hosts import Hosts, for_probes
from steadfoot.core.problems import MEDIA_TYPE

Scope = MutableMapping[str, Any]
Message = MutableMapping[str, Any]
Receive = Callable[[], Awaitable[Message]]
Send = Callable[[Message], Awaitable[None]]
Of = Callable[[str, str], bool]
App = Callable[[Scope, Receive, Send], Awaitable[None]]

BODY_LIMIT_BYTES = 2_000_000
_GZIP = 16 + zlib.MAX_WBITS
_SAFE_METHODS = frozenset({"GET", "HEAD", "OPTIONS"})
_CONTENT_POLICY = (
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; font-src 'self'; "
    "connect-src 'self'; worker-src 'self'; manifest-src 'self'; form-action 'self'; frame-ancestors 'none'; "
    "base-uri 'none'; object-src 'none'; require-trusted-types-for 'script'; trusted-types app"
)
_HEADERS = {
    "Content-Security-Policy": _CONTENT_POLICY,
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "no-referrer",
    "Cross-Origin-Opener-Policy": "same-origin",
    "Cross-Origin-Resource-Policy": "same-origin",
    "Permissions-Policy": "camera=(), display-capture=(), geolocation=(), microphone=(), midi=(), payment=(), usb=()",
    "Strict-Transport-Security": "max-age=31536000; includeSubDomains",
}


async def _refuse(send: Send, status: int, code: str, detail: str) -> None:
    """Answer a problem from here, where the app's own handlers are not reached."""
    body = {"type": f"/problems/{code}", "title": detail, "status": status, "code": code, "detail": detail}
    headers = [(b"content-type", MEDIA_TYPE.encode()), (b"cache-control", b"no-store")]
    await send({"type": "http.response.start", "status": status, "headers": headers})
    await send({"type": "http.response.body", "body": json.dumps(body).encode()})


async def _lead(send: Send, address: str) -> None:
    headers = [(b"location", quote(address, safe=":/").encode()), (b"content-length", b"0")]
    await send({"type": "http.response.start", "status": 307, "headers": headers})
    await send({"type": "http.response.body", "body": b""})


class TooLarge(Exception):
    """The body is over the limit, packed or unpacked."""


class Unreadable(Exception):
    """The body says gzip and is not."""


async def _read_body(receive: Receive, *, gzip: bool) -> bytes:
    """Answer the whole body, unpacked. Counts what arrives and what comes out: a header may lie, gzip may swell."""
    unpack = zlib.decompressobj(_GZIP) if gzip else None
    parts, size, more = [], 0, True
    while more:
        message = await receive()
        part = message.get("body", b"")
        if unpack is not None:
            try:
                part = unpack.decompress(part, BODY_LIMIT_BYTES + 1)
            except zlib.error as error:
                raise Unreadable from error
        size += len(part)
        if size > BODY_LIMIT_BYTES:
            raise TooLarge
        parts.append(part)
        more = message.get("more_body", False)
    return b"".join(parts)


def _never(_method: str, _path: str) -> bool:
    return False


class Edge:
    """Outermost layer of the app. It answers for errors that nobody foresaw, too: only so do they get the headers."""

    def __init__(
        self, app: App, takes_stream: Of = _never, keeps_nothing: Of = _never, hosts: Hosts | None = None
    ) -> None:
        """The first two say something of a method and path; ``hosts``: whose host answers what, where there are two.

        ``takes_stream``: its route reads the body piece by piece, with a limit.
        ``keeps_nothing``: so it does, and throws it away, so that it does not matter which site sends it.
        """
        self._app = app
        self._takes_stream = takes_stream
        self._keeps_nothing = keeps_nothing
        self._hosts = hosts

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Serve one request."""
        if scope["type"] != "http":
            await self._app(scope, receive, send)
            return
        reply = _Reply(scope, send)
        try:
            await self._at_its_host(scope, receive, reply)
        except Exception:
            if not reply.begun:
                await _refuse(reply, 500, "internal", "Something went wrong here. Please try again later.")
            raise  # the server writes it to its log

    async def _at_its_host(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Go on only where this host answers such a request; what proves something at the other host is left out."""
        hosts = self._hosts
        if hosts is None or for_probes(scope["path"]):
            await self._serve(scope, receive, send)
            return
        here = hosts.side(Headers(scope=scope).get("host", ""))
        if here is None:
            await _refuse(send, 421, "unknown-host", "This server is not known by that name.")
        elif scope["path"] == "/":
            await _lead(send, here.pages + "/")
        elif not hosts.belongs_to_other(here, scope["method"], scope["path"]):
            headers = hosts.without_others_credential(here, scope["headers"])
            await self._serve({**scope, "headers": headers}, receive, send)
        elif scope["method"] in _SAFE_METHODS and scope["path"].startswith(hosts.other_of(here).pages):
            await _lead(send, hosts.other_of(here).address + scope["path"])
        else:
            await _refuse(send, 404, "not-found", "There is no such thing at this address.")

    async def _serve(self, scope: Scope, receive: Receive, send: Send) -> None:
        headers = Headers(scope=scope)
        if "\x00" in scope["path"] or b"%00" in scope["query_string"]:
            await _refuse(send, 400, "unreadable", "The address has a character that cannot be stored.")
        elif scope["method"] in _SAFE_METHODS or self._keeps_nothing(scope["method"], scope["path"]):
            await self._app(scope, receive, send)
        elif _is_cross_site(headers):
            await _refuse(send, 403, "cross-site", "This request came from another site.")
        elif self._takes_stream(scope["method"], scope["path"]):
            await self._app(scope, receive, send)
        else:
            await self._serve_body(scope, receive, send, headers)

    async def _serve_body(self, scope: Scope, receive: Receive, send: Send, headers: Headers) -> None:
        gzip = headers.get("content-encoding", "") == "gzip"
        try:
            body = await _read_body(receive, gzip=gzip)
        except TooLarge:
            await _refuse(send, 413, "too-large", f"The body is over {BODY_LIMIT_BYTES} bytes.")
            return
        except Unreadable:
            await _refuse(send, 400, "unreadable", "The body is not valid gzip.")
            return
        await self._app(scope, _replay(body, receive), send)


def _replay(body: bytes, receive: Receive) -> Receive:
    given = False

    async def again() -> Message:
        nonlocal given
        if given:
            return await receive()
        given = True
        return {"type": "http.request", "body": body, "more_body": False}

    return again


def _is_cross_site(headers: Headers) -> bool:
    """A browser says where a write comes from; programs send neither header and carry no ambient cookie."""
    site = headers.get("sec-fetch-site")
    if site is not None and site not in ("same-origin", "none"):
        return True
    origin, host = headers.get("origin"), headers.get("host", "")
    return origin is not None and origin.partition("://")[2] != host


class _Reply:
    """Sends a reply with the headers that every reply has, and remembers whether it has begun."""

    def __init__(self, scope: Scope, send: Send) -> None:
        self.begun = False
        self._is_api = str(scope["path"]).startswith("/api/")
        self._send = send

    async def __call__(self, message: Message) -> None:
        if message["type"] == "http.response.start":
            self.begun = True
            headers = MutableHeaders(scope=message)
            for name, value in _HEADERS.items():
                headers.setdefault(name, value)
            if self._is_api:
                headers.setdefault("Cache-Control", "no-store")
        await self._send(message)
