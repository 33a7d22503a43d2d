"""The real server in this process, on a real file, with fault points: before each statement, around each commit."""

import asyncio
import json
import shutil
import sqlite3
from collections.abc import Callable, Iterator
from contextlib import closing, contextmanager, suppress
from dataclasses import dataclass
from pathlib import Path
from random import Random
from typing import Any

import anyio.to_thread
import pytest
from fastapi import FastAPI
from sqlalchemy import Engine, event
from sqlalchemy.exc import OperationalError
from sqlalchemy.orm import Session

from steadfoot import operations
from steadfoot.app import create_app
from steadfoot.core import ids
from steadfoot.core.database import Database
from steadfoot.core.settings import Settings
from tests.conftest import StandingClock
from tests.quick import _LIMITERS

_FILE = "steadfoot.db"


class Died(BaseException):
    """The process is gone: no handler of its own runs."""


@dataclass(frozen=True)
class Heard:
    """A reply."""

    status: int
    headers: dict[str, str]
    text: str

    def json(self) -> Any:
        """What it says."""
        return json.loads(self.text)


class FaultPoint:
    """Counts statements and commits while armed; at the n-th it dies, or the disk fails."""

    def __init__(self) -> None:
        self.left: int | None = None
        self.dies = True
        self.on_death: Callable[[], None] = lambda: None
        self.met = 0
        """How often it struck since it was armed last."""
        self._struck: Any = None

    def arm(self, after: int, *, dies: bool) -> None:
        """Strike at the ``after``-th point from now."""
        self.left, self.dies, self.met = after, dies, 0

    def passed(self, *args: Any) -> None:
        """Count one point."""
        struck, self._struck = self._struck, None
        if struck is not None:
            with suppress(sqlite3.ProgrammingError):  # closed meanwhile
                struck.set_progress_handler(None, 0)
        if self.left is None:
            return
        self.left -= 1
        if self.left > 0:
            return
        self.left, self.met = None, 1
        if self.dies:
            self.on_death()
            raise Died
        self._fail(*args)

    def _fail(self, _connection: Any, cursor: Any = None, *_statement: Any) -> None:
        """Fail as a disk does: SQLite gives the statement up, and rolls back the whole transaction if it wrote."""
        if cursor is None:  # a commit
            raise OperationalError("COMMIT", None, sqlite3.OperationalError("disk I/O error (made up)"))
        once = iter((1,))
        self._struck = cursor.connection
        self._struck.set_progress_handler(lambda: next(once, 0), 1)

    @contextmanager
    def watching(self) -> Iterator[None]:
        """Count on every engine meanwhile."""
        places = [(Engine, "before_cursor_execute"), (Engine, "commit"), (Session, "after_commit")]
        for target, name in places:
            event.listen(target, name, self.passed)
        try:
            yield
        finally:
            for target, name in places:
                event.remove(target, name, self.passed)


class Chance:
    """Stands in for ``secrets``: the same history makes the same ids, and so can be run again."""

    def __init__(self) -> None:
        self.source = Random(0)

    def randbits(self, bits: int) -> int:
        """As ``secrets.randbits``."""
        return self.source.getrandbits(bits)

    def token_urlsafe(self, size: int) -> str:
        """As ``secrets.token_urlsafe``, in hex."""
        return self.source.randbytes(size).hex()


async def _here(work: Any, *args: Any, **_options: Any) -> Any:
    return work(*args)


@contextmanager
def without_threads() -> Iterator[None]:
    """Run a route's work in the loop's own thread: a history is then the same each time, and a third faster."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(anyio.to_thread, "run_sync", _here)
        yield


@contextmanager
def repeatable(chance: Chance) -> Iterator[None]:
    """Take the server's ids and tokens from ``chance`` meanwhile."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(ids, "secrets", chance)
        yield


class Service:
    """One server on one folder. It can be killed, started again, backed up and restored."""

    def __init__(self, folder: Path, clock: StandingClock) -> None:
        self.folder, self.clock, self.point = folder, clock, FaultPoint()
        self.chance = Chance()
        self.settings = Settings(data_dir=folder, public_url="https://steadfoot.test", draw_ahead="off")
        self._loop = asyncio.new_event_loop()
        self._loop.run_in_executor = self._at_once  # type: ignore[method-assign]
        self.point.on_death = self._die
        self._backups = 0
        self._death: asyncio.Future[None] | None = None
        self._engines: tuple[Engine, Engine] | None = None
        self.database: Database | None = None
        self.app: FastAPI | None = None

    @property
    def file(self) -> Path:
        """The database."""
        return self.folder / _FILE

    def begin_with(self, template: Path) -> None:
        """Start on a copy of a file."""
        self.stop()
        for leftover in self.folder.glob("*"):
            leftover.unlink()
        shutil.copyfile(template, self.file)
        self._backups = 0
        self.chance.source.seed(1)
        for limiter in _LIMITERS:
            limiter._seen.clear()
        self.start()

    def start(self) -> None:
        """Open the file with an app that knows nothing of the one before.

        What an app knows is its state; its routes, which take a tenth of a second to be made ready, are kept, and so
        are the engines, which have no connection any more and still know how each query is written.
        """
        self.database = Database(f"sqlite:///{self.file}", engines=self._engines)
        self._engines = self.database.writer, self.database.reader
        fresh = create_app(self.settings, self.database, self.clock)
        self.app = self.app or fresh
        self.app.state = fresh.state
        self._dead = False

    def stop(self) -> None:
        """Let go of the file."""
        self.point.left = None
        if self.database is not None:
            self.database.close()
        self.database = None

    def restart(self) -> None:
        """What was only in memory is gone."""
        self.stop()
        self.start()

    def backup(self) -> Path:
        """Write a backup beside the running server."""
        self._backups += 1
        target = self.folder / f"backup-{self._backups}.db"
        operations.backup(self.settings, target)
        return target

    def restore(self, backup: Path) -> None:
        """Put a backup in the place of the database, as an owner does."""
        self.stop()
        operations.restore(self.settings, backup, self.clock())
        self.start()

    def ask(self, method: str, path: str, headers: dict[str, str], body: bytes = b"") -> Heard | None:
        """Answer a request's reply; None when the server died of it, and stands again."""
        return self.ask_together([(method, path, headers, body)])[0]

    def ask_together(self, requests: list[tuple[str, str, dict[str, str], bytes]]) -> list[Heard | None]:
        """Ask several at once; whoever's request the server died under has no reply."""
        answers = self._loop.run_until_complete(self._gather(requests))
        self.point.left = None
        if self._dead:
            self.restart()
        return [answer if isinstance(answer, Heard) else None for answer in answers]

    async def _gather(self, requests: list[tuple[str, str, dict[str, str], bytes]]) -> list[Heard | BaseException]:
        """With the process everything ends that it was doing, also what no request waits for."""
        self._death = self._loop.create_future()
        asked = asyncio.gather(*(self._one(*one) for one in requests), return_exceptions=True)
        await asyncio.wait((asked, self._death), return_when=asyncio.FIRST_COMPLETED)
        if self._death.done():
            self._dead = True
            rest = asyncio.all_tasks() - {asyncio.current_task()}
            for task in rest:
                task.cancel()
            await asyncio.gather(*rest, return_exceptions=True)
        return await asked

    def _die(self) -> None:
        if self._death is not None and not self._death.done():
            self._death.set_result(None)

    def _at_once(self, _executor: Any, work: Callable[..., Any], *args: Any) -> "asyncio.Future[Any]":
        """As ``without_threads``, for what the loop's own threads would do."""
        found: asyncio.Future[Any] = self._loop.create_future()
        try:
            found.set_result(work(*args))
        except BaseException as error:  # a made-up death is one, too  # noqa: BLE001
            found.set_exception(error)
        return found

    async def _one(self, method: str, target: str, headers: dict[str, str], body: bytes) -> Heard:
        sent: list[Any] = []
        parts = [{"type": "http.request", "body": body, "more_body": False}]

        async def receive() -> Any:
            return parts.pop() if parts else await asyncio.Event().wait()

        async def send(message: Any) -> None:
            sent.append(message)

        assert self.app is not None
        path, _, query = target.partition("?")
        pairs = [(name.lower().encode(), value.encode()) for name, value in headers.items()]
        scope = {"type": "http", "asgi": {"version": "3.0"}, "http_version": "1.1", "method": method}
        scope |= {"scheme": "https", "path": path, "raw_path": path.encode(), "query_string": query.encode()}
        scope |= {"headers": pairs, "client": ("192.0.2.1", 1), "server": ("testserver", 443), "root_path": ""}
        try:
            await self.app(scope, receive, send)
        except (Exception, Died) as error:
            self._dead = self._dead or isinstance(error, Died)
            if not sent:  # a reply that left before the end is on its way all the same
                raise
        start = sent[0]
        found = {name.decode(): value.decode() for name, value in start["headers"]}
        return Heard(start["status"], found, b"".join(part.get("body", b"") for part in sent[1:]).decode())

    def rows(self, query: str, *values: Any) -> list[tuple[Any, ...]]:
        """Read the file with another connection: what is committed, and nothing else."""
        with closing(sqlite3.connect(f"file:{self.file}?mode=ro", uri=True)) as connection:
            return connection.execute(query, values).fetchall()

    def close(self) -> None:
        """End it for good."""
        self.stop()
        self._loop.close()
