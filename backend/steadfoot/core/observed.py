"""Sees every request from outside: gives it an id, measures it, writes its line. Outermost of all layers."""

import logging
import secrets
from typing import Any

from steadfoot.core.clock import monotonic_s
from steadfoot.core.ids import digest_of
from steadfoot.core.logs import request_id
from steadfoot.core.metrics import Metrics
from steadfoot.core.web import App, Message, Receive, Scope, Send

_log = logging.getLogger("steadfoot.request")
_ASKED_BY_MACHINES = frozenset({"isAlive", "isReady", "readMetrics"})
_PSEUDONYM_SIGNS = 12
_ID_BYTES = 8
_FAILED = 500
HEADER = b"x-request-id"


def operation_of(scope: Scope) -> str:
    """Answer the operation's id, "page" for a file or page, "none" where no route fitted. Never a path: it has ids."""
    route = scope.get("route")
    if route is None:
        return "page" if "endpoint" in scope else "none"
    return getattr(route, "operation_id", None) or "page"


def pseudonym(practice_id: str | None) -> str | None:
    """Answer what stands for a practice in a log: the same for the same one, and no key to anything."""
    return None if practice_id is None else digest_of(practice_id)[:_PSEUDONYM_SIGNS]


class Observed:
    """Wraps the whole app."""

    def __init__(self, app: App, metrics: Metrics) -> None:
        self._app = app
        self._metrics = metrics

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Serve one request and tell of it, however it ended."""
        if scope["type"] != "http":
            await self._app(scope, receive, send)
            return
        state = scope.setdefault("state", {})
        given = secrets.token_hex(_ID_BYTES)
        state["request_id"] = given
        request_id.set(given)
        reply = _Status(send, given)
        begun = monotonic_s()
        try:
            await self._app(scope, receive, reply)
        finally:
            self._tell(scope, reply.status, monotonic_s() - begun)

    def _tell(self, scope: Scope, status: int, seconds: float) -> None:
        operation = operation_of(scope)
        self._metrics.count_request(operation, status, seconds)
        fields: dict[str, Any] = {
            "operation": operation,
            "method": _method(scope["method"]),
            "status": status,
            "ms": round(seconds * 1000, 1),
            "practice": pseudonym(scope["state"].get("practice_id")),
        }
        level = logging.DEBUG if operation in _ASKED_BY_MACHINES and status < _FAILED else logging.INFO
        _log.log(level, "request", extra={"fields": fields})


def _method(given: str) -> str:
    """A visitor may write any word in the place of a method."""
    return given if given in {"GET", "HEAD", "POST", "PUT", "PATCH", "DELETE", "OPTIONS"} else "other"


class _Status:
    """Notes how a reply begins, and names the request in it so that a person can quote it."""

    def __init__(self, send: Send, given: str) -> None:
        self.status = _FAILED
        self._send = send
        self._given = given

    async def __call__(self, message: Message) -> None:
        if message["type"] == "http.response.start":
            self.status = message["status"]
            message["headers"] = [*message.get("headers", []), (HEADER, self._given.encode())]
        await self._send(message)
