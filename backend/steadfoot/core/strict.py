"""JSON bodies in which a name stands twice are refused: the last one would win, and an answer would be lost unseen."""

import json
from collections.abc import Awaitable, Callable
from contextlib import suppress
from typing import Any

from fastapi import Request, Response
from fastapi.routing import APIRoute

from steadfoot.core.problems import Problem


class _Repeated(Exception):
    """A name stands twice in one object."""


def _object(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    found = dict(pairs)
    if len(found) != len(pairs):
        raise _Repeated
    return found


class _Strict(Request):
    async def json(self) -> Any:
        if not hasattr(self, "_json"):
            self._json = json.loads(await self.body(), object_pairs_hook=_object)
        return self._json


class StrictRoute(APIRoute):
    """A route whose JSON body has each name once in each object; else the whole call is refused, nothing stored."""

    def get_route_handler(self) -> Callable[[Request], Awaitable[Response]]:  # type: ignore[override]
        """Answer what serves a request."""
        serve = super().get_route_handler()

        async def strictly(request: Request) -> Response:
            strict = _Strict(request.scope, request.receive)
            try:
                with suppress(ValueError, RecursionError):  # no JSON at all: the route itself says so
                    await strict.json()
            except _Repeated:
                raise Problem(
                    "repeated-name", "The body names one field twice, so that one of two values would be lost."
                ) from None
            return await serve(strict)

        return strictly
