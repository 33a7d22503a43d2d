"""Writes rows of acts that have no transaction of their own: those that wait together share one commit.

A row is on the disk before its act is answered. It takes a writer's turn like any request, so that it never makes a
phone wait for a lock that the database polls for.
"""

from collections.abc import Sequence
from typing import Final

from steadfoot.audit.entries import Act
from steadfoot.audit.service import record_all
from steadfoot.core.database import Database
from steadfoot.core.gathering import Gathering

ACTS_AT_ONCE: Final = 256
"""How many rows one commit takes: more never wait at once. House value."""


class Writer:
    """One for an app."""

    def __init__(self, database: Database) -> None:
        self._database = database
        self._gathering: Gathering[Act, None] = Gathering(self._keep, database.write_turns, ACTS_AT_ONCE)

    async def write(self, act: Act) -> None:
        """Return once the row is durable.

        Raises:
            Exception: whatever kept the database from it; nothing may then be answered.
        """
        await self._gathering.do(act)

    def _keep(self, acts: Sequence[Act]) -> Sequence[None]:
        with self._database.write() as session:
            record_all(session, acts)
        return [None] * len(acts)
