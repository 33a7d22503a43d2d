"""The app on a furnished database that is put back after every write, and whoever may ask it."""

import asyncio
import shutil
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

import httpx
from fastapi import FastAPI
from sqlalchemy import make_url

from steadfoot.identity.access import COOKIE
from tests.features.access import BY_COOKIE, BY_EITHER, BY_PHONE, OPEN, POLICY, Practice
from tests.made_up.ready import ready
from tests.quick import forget_tries

PRACTITIONER, PHONE, NOBODY = "practitioner", "phone", "nobody"
_MAY = {PRACTITIONER: {OPEN, BY_COOKIE, BY_EITHER}, PHONE: {OPEN, BY_PHONE, BY_EITHER}, NOBODY: {OPEN}}


def may(who: str, operation: str) -> bool:
    """Answer whether the policy lets them ask."""
    return POLICY[operation][0] in _MAY[who]


@dataclass
class World:
    """One furnished practice, asked in this process."""

    app: FastAPI
    practice: Practice
    ids: Mapping[str, list[str]]
    """What a path may name: the furnished client's things first, then others of the practice."""
    bodies: Mapping[str, list[Any]]
    """Bodies that are in order."""
    clients: Mapping[str, str]
    """Whose things a body is about, where it fits one client only."""
    error: BaseException | None = None
    _loop: asyncio.AbstractEventLoop = field(default_factory=asyncio.new_event_loop)

    def __post_init__(self) -> None:
        self._file = Path(str(make_url(self.app.state.database.url).database))
        self._kept = self._file.with_suffix(".kept")
        self.app.state.database.close()
        shutil.copy(self._file, self._kept)
        self._http = httpx.AsyncClient(transport=httpx.ASGITransport(self._caught, raise_app_exceptions=False))

    async def _caught(self, scope: Any, receive: Any, send: Any) -> None:
        try:
            await self.app(scope, receive, send)
        except BaseException as error:
            self.error = error
            raise

    def headers(self, who: str) -> dict[str, str]:
        """Answer what proves who asks."""
        cookie, token = self.practice.house.http.cookies[COOKIE], self.practice.phone.token
        return {PRACTITIONER: {"Cookie": f"{COOKIE}={cookie}"}, PHONE: {"Authorization": f"Bearer {token}"}}.get(
            who, {}
        )

    def ask(self, request: httpx.Request) -> httpx.Response:
        """Ask once; what was written is then taken back, so that the next one finds everything in its place."""
        forget_tries()
        self.app.state.studio._limiter._seen.clear()
        self.error = None
        response = self._loop.run_until_complete(self._http.send(request))
        if response.is_success and request.method != "GET":
            self._restore()
        return response

    def _restore(self) -> None:
        self.app.state.database.close()
        for ending in ("-wal", "-shm"):
            Path(f"{self._file}{ending}").unlink(missing_ok=True)
        shutil.copy(self._kept, self._file)
        self.app.state.settings.erasures().unlink(missing_ok=True)

    def close(self) -> None:
        """Let go of the loop."""
        self._loop.run_until_complete(self._http.aclose())
        self._loop.run_until_complete(self._loop.shutdown_default_executor())
        self._loop.close()


def world_of(practice: Practice, others: Sequence[str] = ()) -> World:
    """Answer a world around a furnished practice; ``others`` are ids of further clients."""
    found = ready(practice, others)
    ids = {name: [found.ids.get(name, value)] for name, value in practice.ids.items()}
    ids["client_id"] += others
    return World(practice.house.app, practice, ids, found.bodies, found.clients)
