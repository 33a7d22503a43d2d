"""How the installation stands at one moment, and what of it needs somebody."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Literal

from steadfoot.core.waiting import Waiting
from steadfoot.installation.address import Look
from steadfoot.installation.record import BackupRecord

Code = Literal[
    "backup_none",
    "backup_failed",
    "backup_old",
    "disk_low",
    "kept_aside",
    "work_waits",
    "address_here",
    "address_insecure",
    "certificate_unreachable",
    "certificate_untrusted",
    "certificate_ends",
    "database_unverified",
]
BACKUP_OLD = timedelta(hours=50)
"""One night may fail before somebody must look: two days and the time that a backup takes. House value."""
DISK_LOW_BYTES = 1_000_000_000
"""House value. A disk is low, too, when it could not hold the database twice more."""
CERTIFICATE_ENDS = timedelta(days=14)
"""A proxy renews 30 days before the end; at 14 it has failed to for two weeks. House value."""
WORK_WAITS = timedelta(minutes=15)
"""What the server does by itself is a matter of seconds. House value."""
FOR_A_PERSON = "kept_aside"
"""The queue that people empty."""


@dataclass(frozen=True)
class Notice:
    """Something to do; ``urgent`` if people's data are at risk meanwhile."""

    code: Code
    urgent: bool


@dataclass(frozen=True)
class Standing:
    """The facts."""

    at: datetime
    revision: str
    kind: Literal["sqlite", "postgresql"]
    size_bytes: int
    log_bytes: int | None
    disk_free_bytes: int
    disk_total_bytes: int
    last_backup: BackupRecord | None
    good_backup: BackupRecord | None
    contacts: Sequence[tuple[datetime, datetime | None]]
    waiting: Mapping[str, Waiting]
    look: Look | None
    address_here: bool
    address_insecure: bool
    database_unverified: bool

    def silent(self, days: int) -> int:
        """Answer how many clients with a phone have not been heard for so many days, or never since pairing."""
        before = self.at - timedelta(days=days)
        return sum((heard or paired) <= before for paired, heard in self.contacts)


def _of_backup(now: Standing) -> Iterator[Notice]:
    if now.last_backup is not None and not now.last_backup.ok:
        yield Notice("backup_failed", urgent=True)
    if now.good_backup is None:
        yield Notice("backup_none", urgent=False)
    elif now.at - now.good_backup.at > BACKUP_OLD:
        yield Notice("backup_old", urgent=True)


def _of_address(now: Standing) -> Iterator[Notice]:
    if now.address_here:
        yield Notice("address_here", urgent=False)
    if now.address_insecure:
        yield Notice("address_insecure", urgent=True)
    if now.look is None or now.look.problem == "not_https":
        return
    if now.look.problem == "unreachable":
        yield Notice("certificate_unreachable", urgent=False)
    elif now.look.problem == "untrusted":
        yield Notice("certificate_untrusted", urgent=True)
    elif now.look.expires_at is not None and now.look.expires_at - now.at < CERTIFICATE_ENDS:
        yield Notice("certificate_ends", urgent=True)


def _of_waiting(now: Standing) -> Iterator[Notice]:
    for name, (number, oldest) in now.waiting.items():
        if name == FOR_A_PERSON and number:
            yield Notice("kept_aside", urgent=False)
        elif name != FOR_A_PERSON and oldest is not None and now.at - oldest > WORK_WAITS:
            yield Notice("work_waits", urgent=True)


def notices(now: Standing) -> list[Notice]:
    """Answer what needs somebody, what is urgent first. None: all is well."""
    found = [*_of_backup(now)]
    if now.disk_free_bytes < max(DISK_LOW_BYTES, 2 * now.size_bytes):
        found.append(Notice("disk_low", urgent=True))
    if now.database_unverified:
        found.append(Notice("database_unverified", urgent=True))
    found += [*_of_address(now), *_of_waiting(now)]
    return sorted(found, key=lambda notice: not notice.urgent)
