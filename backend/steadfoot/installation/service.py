"""Gathers how the installation stands, for one practice or for all."""

import shutil
from collections.abc import Mapping
from datetime import datetime

from sqlmodel import Session

from steadfoot.core import production
from steadfoot.core.clock import Clock
from steadfoot.core.database import Database
from steadfoot.core.settings import Settings
from steadfoot.core.waiting import Queue
from steadfoot.identity import service as identity
from steadfoot.installation import record, store
from steadfoot.installation.address import Lookout
from steadfoot.installation.standing import Standing


class Installation:
    """What is asked about the installation. ``queues`` names everything that waits for somebody or something."""

    def __init__(self, settings: Settings, database: Database, clock: Clock, queues: Mapping[str, Queue]) -> None:
        self.settings = settings
        self.database = database
        self.clock = clock
        self.queues = queues
        self.lookout = Lookout(settings.address(), clock)

    def standing(self, session: Session, practice_id: str | None, at: datetime) -> Standing:
        """Answer how it stands; people and queues are those of one practice, or of all for None."""
        url, folder = self.database.url, self.settings.backups()
        total, _used, free = shutil.disk_usage(self._disk())
        return Standing(
            at=at,
            revision=store.revision(session),
            kind="sqlite" if self.database.is_sqlite else "postgresql",
            size_bytes=store.size_bytes(session, url),
            log_bytes=store.log_bytes(url),
            disk_free_bytes=free,
            disk_total_bytes=total,
            last_backup=record.read(folder),
            good_backup=record.read(folder, record.LAST_GOOD),
            contacts=identity.newest_contacts(session, practice_id),
            waiting={name: ask(session, practice_id) for name, ask in self.queues.items()},
            look=self.lookout.last,
            address_here=production.address_here(self.settings),
            address_insecure=production.address_insecure(self.settings),
            database_unverified=production.database_unverified(self.settings),
        )

    def _disk(self) -> str:
        """The data folder, or "." before there is one: PostgreSQL needs none until something is drawn."""
        return str(self.settings.data_dir) if self.settings.data_dir.is_dir() else "."
