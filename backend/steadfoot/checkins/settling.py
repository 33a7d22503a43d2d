"""Sees to it that what is due is settled: before anyone reads, and soon after a burst (decision 0011)."""

import asyncio
import logging
from collections.abc import Callable, Sequence

from starlette.concurrency import run_in_threadpool

from steadfoot.checkins import service, store
from steadfoot.checkins.service import Listener
from steadfoot.core.clock import monotonic_s
from steadfoot.core.database import Database

QUIET_S = 0.5
"""How long a person has to be quiet before the worker looks, seconds: a phone's calls follow each other faster.
House value."""
AT_MOST_S = 5.0
"""How long a burst may put the look off, seconds. House value."""
OTHERS_EVERY_S = 30.0
"""How often the worker takes what another process has left, seconds. House value."""
_log = logging.getLogger(__name__)
Person = tuple[str, str]
"""Practice id and client id."""


class Settling:
    """Settles what is due, a person at a time: check-ins come in between."""

    def __init__(
        self,
        database: Database,
        listeners: Sequence[Listener],
        beat: Callable[[str, str], None],
        quiet_s: float = QUIET_S,
    ) -> None:
        self._database = database
        self._listeners = listeners
        self._beat = beat
        self._quiet_s = quiet_s
        self._noted: dict[Person, tuple[float, float]] = {}
        self._works = False

    async def up_to_date(self, practice_id: str, client_id: str | None = None) -> None:
        """Settle what is due of a client, or of a whole practice, before somebody reads."""
        for one in await run_in_threadpool(self._due, practice_id, client_id):
            await self._settle((practice_id, one), pass_over=False)

    def noted(self, practice_id: str, client_id: str) -> None:
        """Take note that something of a client has become due, on the event loop: pages hear of it after the look.

        Without a worker they hear of it at once, and what they ask then settles it.
        """
        if not self._works:
            self._beat(practice_id, client_id)
            return
        now = monotonic_s()
        first, _ = self._noted.get((practice_id, client_id), (now, now))
        self._noted[practice_id, client_id] = (first, now)

    async def run(self) -> None:
        """Settle what others have left, then whoever has been quiet for long enough; until cancelled."""
        self._works = True
        try:
            others_at = monotonic_s()
            while True:
                now = monotonic_s()
                if now >= others_at:
                    others_at = now + OTHERS_EVERY_S
                    await self._each(await self._left())
                await self._each(self._quiet(now))
                await asyncio.sleep(self._quiet_s / 2)
        finally:
            self._works = False

    def _quiet(self, now: float) -> list[Person]:
        return [
            person
            for person, (first, last) in self._noted.items()
            if now - last >= self._quiet_s or now - first >= AT_MOST_S
        ]

    async def _left(self) -> list[Person]:
        try:
            return [one for one in await run_in_threadpool(self._everywhere) if one not in self._noted]
        except Exception:  # the database may be away for a while; the worker is not  # noqa: BLE001
            _log.exception("What is due could not be asked for")
            return []

    async def _each(self, people: Sequence[Person]) -> None:
        for person in people:
            self._noted.pop(person, None)
            try:
                await self._settle(person, pass_over=True)
            except Exception:  # one person's look must not end all others'; readers meet the error  # noqa: BLE001
                _log.exception("What is due could not be settled")
            self._beat(*person)

    async def _settle(self, person: Person, *, pass_over: bool) -> None:
        async with self._database.write_turns.here():
            await run_in_threadpool(self._settle_now, person, pass_over=pass_over)

    def _settle_now(self, person: Person, *, pass_over: bool) -> None:
        with self._database.write() as session:
            service.settle(session, *person, self._listeners, pass_over=pass_over)

    def _due(self, practice_id: str, client_id: str | None) -> Sequence[str]:
        with self._database.read() as session:
            return store.clients_due(session, practice_id, client_id)

    def _everywhere(self) -> list[Person]:
        with self._database.read() as session:
            return [(practice_id, client_id) for practice_id, client_id in store.every_due(session)]
