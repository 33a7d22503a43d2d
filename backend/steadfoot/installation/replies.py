"""Puts how the installation stands into the shape that the owner's page reads."""

from steadfoot import __version__
from steadfoot.installation.schemas import (
    AddressOut,
    BackupOut,
    DatabaseOut,
    DiskOut,
    InstallationOut,
    NoticeOut,
    PhonesOut,
    WaitingOut,
)
from steadfoot.installation.standing import Standing, notices
from steadfoot.rules.attention import SILENT_DAYS


def _backup(now: Standing) -> BackupOut:
    good, last = now.good_backup, now.last_backup
    return BackupOut(
        made_at=good.at if good else None,
        verified_at=good.verified_at if good else None,
        size_bytes=good.size_bytes if good else None,
        tried_at=last.at if last else None,
        problem=last.problem if last else "",
    )


def reply(now: Standing, address: str) -> InstallationOut:
    """Answer it."""
    days = int(SILENT_DAYS)
    look = now.look
    return InstallationOut(
        as_of=now.at,
        version=__version__,
        database=DatabaseOut(
            kind=now.kind, size_bytes=now.size_bytes, log_bytes=now.log_bytes, schema_revision=now.revision
        ),
        disk=DiskOut(free_bytes=now.disk_free_bytes, total_bytes=now.disk_total_bytes),
        backup=_backup(now),
        phones=PhonesOut(clients=len(now.contacts), silent=now.silent(days), silent_days=days),
        waiting=[WaitingOut(name=name, number=number, oldest_at=at) for name, (number, at) in now.waiting.items()],
        address=AddressOut(
            url=address,
            looked_at=look.at if look else None,
            certificate_until=look.expires_at if look else None,
        ),
        notices=[NoticeOut(code=notice.code, urgent=notice.urgent) for notice in notices(now)],
    )
