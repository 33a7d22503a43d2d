"""Writes rows of acts that have no transaction of their own: those that wait together share one commit.

A row is on the disk before its act is answered. It takes a writer's turn like any request, so that it never makes a
phone wait for a lock that the database polls for.
"""

import asyncio
from collections.abc import Sequence
from weakref import WeakKeyDictionary

from starlette.concurrency import run_in_threadpool

from steadfoot.audit.entries import Act
from steadfoot.audit.service import record_all
from steadfoot.core.database import Database


class _Line:
    """What waits on one event loop."""

    def __init__(self) -> None:
        self.acts: list[tuple[Act, asyncio.Future[None]]] = []
        self.task: asyncio.Task[None] | None = None

    def take(self) -> list[tuple[Act, asyncio.Future[None]]]:
        taken, self.acts = self.acts, []
        return taken


class Writer:
    """One for an app."""

    def __init__(self, database: Database) -> None:
        self._database = database
        self._lines: WeakKeyDictionary[asyncio.AbstractEventLoop, _Line] = WeakKeyDictionary()

    async def write(self, act: Act) -> None:
        """Return once the row is durable.

        Raises:
            Exception: whatever kept the database from it; nothing may then be answered.
        """
        loop = asyncio.get_running_loop()
        line = self._lines.setdefault(loop, _Line())
        done = loop.create_future()
        line.acts.append((act, done))
        if line.task is None or line.task.done():
            line.task = loop.create_task(self._drain(line))
        await done

    async def _drain(self, line: _Line) -> None:
        while line.acts:
            async with self._database.write_turns.here():
                taken = line.take()
                failed = await self._commit([act for act, _ in taken])
            for _, done in taken:
                if not done.done():  # whoever asked may have gone meanwhile
                    done.set_exception(failed) if failed else done.set_result(None)

    async def _commit(self, acts: Sequence[Act]) -> Exception | None:
        try:
            await run_in_threadpool(self._keep, acts)
        except Exception as error:  # noqa: BLE001  handed on to everyone who waits for it
            return error
        return None

    def _keep(self, acts: Sequence[Act]) -> None:
        with self._database.write() as session:
            record_all(session, acts)
