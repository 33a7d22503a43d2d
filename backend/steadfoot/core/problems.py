"""Errors as RFC 9457 problem details.

Problem            anything a caller may be told
├── NotFound       404  unknown, or another practice's: the two look the same
├── NotSignedIn    401  no session or token, or a dead one
├── Forbidden      403  known, but not allowed
├── Conflict       409  the thing is not in a state for this
├── Stale          412  someone else changed it first
├── TooLarge       413  more bytes than are taken
├── Invalid        422  understood, but not acceptable; names each field
├── TooMany        429  slow down, with Retry-After
└── Away           503  the database cannot be had for the moment, with Retry-After
"""

import logging
from collections.abc import Mapping, Sequence
from typing import Any, ClassVar

from fastapi import FastAPI, Request, Response
from fastapi.exceptions import RequestValidationError
from fastapi.responses import JSONResponse
from sqlalchemy.exc import OperationalError
from starlette.exceptions import HTTPException
from starlette.routing import Match

MEDIA_TYPE = "application/problem+json"
_AWAY_RETRY_S = 5
_log = logging.getLogger(__name__)
_METHODS = ("DELETE", "GET", "HEAD", "PATCH", "POST", "PUT")


class Problem(Exception):
    """An error that the caller is told about. ``code`` is for programs, ``detail`` for people."""

    status: ClassVar[int] = 400
    title: ClassVar[str] = "The request could not be used"

    def __init__(
        self,
        code: str,
        detail: str,
        *,
        errors: Sequence[Mapping[str, Any]] = (),
        headers: Mapping[str, str] | None = None,
        **more: Any,
    ) -> None:
        super().__init__(detail)
        self.code = code
        self.detail = detail
        self.errors = list(errors)
        self.headers = dict(headers or {})
        self.more = more

    def body(self, instance: str | None = None) -> dict[str, Any]:
        """Answer the problem as a JSON object."""
        answer: dict[str, Any] = {
            "type": f"/problems/{self.code}",
            "title": self.title,
            "status": self.status,
            "code": self.code,
            "detail": self.detail,
        }
        if instance:
            answer["instance"] = instance
        if self.errors:
            answer["errors"] = self.errors
        return answer | self.more


class NotFound(Problem):
    """Unknown, or another practice's: the two look the same."""

    status, title = 404, "Not found"


class NotSignedIn(Problem):
    """No session or token, or a dead one."""

    status, title = 401, "Not signed in"


class Forbidden(Problem):
    """Known, but not allowed."""

    status, title = 403, "Not allowed"


class Conflict(Problem):
    """The thing is not in a state for this."""

    status, title = 409, "Not possible in this state"


class Stale(Problem):
    """Someone else changed it first."""

    status, title = 412, "Someone changed this first"


class TooLarge(Problem):
    """More bytes than are taken."""

    status, title = 413, "Too large"


class Invalid(Problem):
    """Understood, but not acceptable; names each field."""

    status, title = 422, "Some answers need a change"


class TooMany(Problem):
    """Slow down; carries Retry-After."""

    status, title = 429, "Too many tries"


class Away(Problem):
    """The database cannot be had for the moment: it restarts, another takes its place, or its disk is full."""

    status, title = 503, "Not to be had for the moment"


def not_found(what: str) -> NotFound:
    """Answer the 404 for a thing of the practice, named in plain words."""
    return NotFound("not-found", f"There is no such {what} in this practice.")


def _pointer(location: Sequence[int | str]) -> str:
    return "".join("/" + str(step).replace("~", "~0").replace("/", "~1") for step in location)


def _said(error: Mapping[str, Any]) -> str:
    """Answer the reason; of the one that repeats what was sent, what was expected."""
    if error["type"] == "union_tag_invalid":
        return f"Must be one of {error['ctx']['expected_tags']}"
    return str(error["msg"])


def field_errors(errors: Sequence[Any]) -> list[dict[str, Any]]:
    """Answer pydantic's errors as pointers with a reason, without the value: it may be health data."""
    return [{"pointer": _pointer(e["loc"]), "code": e["type"], "detail": _said(e)} for e in errors]


def _answer(request: Request, problem: Problem) -> Response:
    return JSONResponse(problem.body(request.url.path), problem.status, headers=problem.headers, media_type=MEDIA_TYPE)


def _away(request: Request, error: Exception) -> Response:
    """Answer that it is worth trying again; the log has the database's own words, never the values of the statement."""
    assert isinstance(error, OperationalError)
    _log.error("The database could not be had: %s", str(error.orig).partition("\n")[0])
    detail = "The practice's database cannot be had for the moment. Nothing was changed; please try again."
    return _answer(request, Away("database-away", detail, headers={"Retry-After": str(_AWAY_RETRY_S)}))


def _invalid(request: Request, error: Exception) -> Response:
    assert isinstance(error, RequestValidationError)
    found = field_errors(error.errors())
    if any(e["code"] == "json_invalid" for e in found):
        return _answer(request, Problem("unreadable", "The body is not valid JSON."))
    word = "1 field is" if len(found) == 1 else f"{len(found)} fields are"
    return _answer(request, Invalid("validation", f"{word} not valid.", errors=found))


def _allowed(request: Request) -> str:
    """Answer every method that the path has, asked of the routes one by one: a router in a router names none."""
    found = (
        method
        for method in _METHODS
        if any(route.matches({**request.scope, "method": method})[0] is Match.FULL for route in request.app.routes)
    )
    return ", ".join(found)


def _http(request: Request, error: Exception) -> Response:
    assert isinstance(error, HTTPException)
    said = {"title": error.detail, "detail": f"{error.detail}."}
    body = {"type": "about:blank", "status": error.status_code, "code": "http", **said}
    headers = dict(error.headers or {})
    if error.status_code == 405:  # noqa: PLR2004
        headers["Allow"] = _allowed(request)  # the router itself names only the first matching route
    return JSONResponse(body, error.status_code, headers=headers, media_type=MEDIA_TYPE)


def install(app: FastAPI) -> None:
    """Make every error that the app knows of leave as a problem; ``web.Edge`` answers for the others."""
    app.add_exception_handler(Problem, lambda request, error: _answer(request, error))
    app.add_exception_handler(RequestValidationError, _invalid)
    app.add_exception_handler(OperationalError, _away)
    app.add_exception_handler(HTTPException, _http)
