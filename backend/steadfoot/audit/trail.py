"""Sees every call of the API and has its row written before its answer leaves.

A change that was made in a request's transaction has its row in that transaction (``before_commit``): both are kept, or
neither. A read, and whatever was refused, has no such transaction: its row is committed by the writer first, and where
that fails the answer is 503 and no data.
"""

import logging
from collections.abc import Mapping, MutableMapping
from typing import Any, Final
from urllib.parse import parse_qs
from uuid import UUID

from fastapi import Request
from sqlalchemy.exc import SQLAlchemyError
from sqlmodel import Session
from starlette.responses import JSONResponse

from steadfoot.audit.entries import NOBODY, Act, Actor, ActorKind, Outcome
from steadfoot.audit.flood import Flood
from steadfoot.audit.service import ACTOR, SUBJECT, record
from steadfoot.core.ids import uuid7
from steadfoot.core.problems import MEDIA_TYPE, Away
from steadfoot.core.web import App, Message, Receive, Scope, Send

_log = logging.getLogger(__name__)
_API = "/api/"
_WROTE, _DONE_BELOW = "audit_written", 400
_REFUSED: Final[Mapping[int, Outcome]] = {
    401: Outcome.NOT_SIGNED_IN,
    403: Outcome.NOT_ALLOWED,
    404: Outcome.NOT_FOUND,
    429: Outcome.TOO_MANY,
}
ABOUT_NOBODY: Final = frozenset(
    (
        "readMe",
        "readAccount",
        "listSessions",
        "listPeople",
        "readInstallation",
        "listen",
        "listScreeningQuestions",
        "listTests",
        "listExercises",
        "readExercise",
        "drawExercise",
        "listDrawings",
        "readOwnExercise",
        "previewExercise",
        "readPoses",
        "listTemplates",
        "printClassSheet",
        "listAlternatives",
        "listSources",
    )
)
"""Reads that show no person: they are not recorded. Whatever is not named here is."""
OF_PHONES: Final = frozenset({"pairPhone", "succeedDevice", "exportOwnRecord"})
"""What is recorded of a phone. Not each sync: it is the person's own word, kept with its phone and time."""


def set_actor(request: Request, actor: Actor, subject_id: str | None = None) -> None:
    """Say who asks, as soon as it is known; and for whom, where that comes with it."""
    request.state.audit_actor = actor
    request.state.audit_subject = subject_id


def _state(scope: Scope) -> MutableMapping[str, Any]:
    found: MutableMapping[str, Any] = scope.setdefault("state", {})
    return found


def _operation(scope: Scope) -> str:
    return getattr(scope.get("route"), "operation_id", None) or ""


def _subject(scope: Scope) -> str | None:
    """Answer the client that the address names. What is no id is a stranger's free text, and is not kept."""
    named = scope.get("path_params", {}).get("client_id") or _asked_for(scope) or _state(scope).get("audit_subject")
    try:
        return str(UUID(str(named))) if named else None
    except ValueError:
        return None


def _asked_for(scope: Scope) -> str:
    return parse_qs(bytes(scope.get("query_string", b"")).decode("latin-1")).get("client_id", [""])[0]


def _act(scope: Scope, outcome: Outcome, actor: Actor, subject_id: str | None) -> Act:
    at = scope["app"].state.clock()
    request_id = _state(scope).setdefault("request_id", uuid7(at))
    return Act(actor, _operation(scope), at, request_id, subject_id, outcome)


def _is_recorded(operation: str, actor: Actor) -> bool:
    if actor.kind is ActorKind.PRACTITIONER:
        return operation not in ABOUT_NOBODY
    return operation in OF_PHONES


def before_commit(request: Request, session: Session) -> None:
    """Add the row of a change to the transaction that makes it."""
    scope, state = request.scope, _state(request.scope)
    actor = session.info.get(ACTOR) or state.get("audit_actor", NOBODY)
    if _is_recorded(_operation(scope), actor):
        record(session, _act(scope, Outcome.DONE, actor, session.info.get(SUBJECT) or _subject(scope)))
        state[_WROTE] = True


class Trail:
    """The part of the app that sees every answer begin."""

    def __init__(self, app: App) -> None:
        self._app = app
        self._flood = Flood()

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Serve one request."""
        if scope["type"] != "http" or not str(scope["path"]).startswith(_API):
            await self._app(scope, receive, send)
            return
        reply = _Reply(self, scope, receive, send)
        await self._app(scope, receive, reply)

    async def keep(self, scope: Scope, status: int) -> bool:
        """Write the row that an answer asks for, if any; answer whether the answer may leave."""
        act = self._asked(scope, status)
        try:
            if act is not None:
                await scope["app"].state.audit_writer.write(act)
        except SQLAlchemyError as error:
            _log.error("The audit log could not be written: %s", type(error).__name__)
            return False
        return True

    def _asked(self, scope: Scope, status: int) -> Act | None:
        state = _state(scope)
        actor = state.get("audit_actor", NOBODY)
        if status in _REFUSED and _operation(scope):
            return self._flood.let_through(_act(scope, _REFUSED[status], actor, _subject(scope)))
        if status >= _DONE_BELOW or _WROTE in state or not _is_recorded(_operation(scope), actor):
            return None
        return _act(scope, Outcome.DONE, actor, _subject(scope))


class _Reply:
    """Holds an answer back until its row is kept; where it cannot be kept, answers that instead."""

    def __init__(self, trail: Trail, scope: Scope, receive: Receive, send: Send) -> None:
        self._trail, self._scope, self._receive, self._send = trail, scope, receive, send
        self._is_withheld = False

    async def __call__(self, message: Message) -> None:
        if message["type"] == "http.response.start" and not await self._trail.keep(self._scope, message["status"]):
            self._is_withheld = True
            await _away()(self._scope, self._receive, self._send)
        if not self._is_withheld:
            await self._send(message)


def _away() -> JSONResponse:
    detail = (
        "The practice's log of who saw what cannot be written for the moment, so nothing is shown. Please try again."
    )
    problem = Away("log-away", detail)
    return JSONResponse(problem.body(), problem.status, headers={"Retry-After": "5"}, media_type=MEDIA_TYPE)
