"""What the owner's page is told."""

from datetime import datetime
from typing import Literal

from pydantic import BaseModel

from steadfoot.installation.standing import Code


class DatabaseOut(BaseModel):
    """Kind and size; ``log_bytes`` is SQLite's write-ahead log."""

    kind: Literal["sqlite", "postgresql"]
    size_bytes: int
    log_bytes: int | None
    schema_revision: str


class DiskOut(BaseModel):
    """The disk on which the data folder lies."""

    free_bytes: int
    total_bytes: int


class BackupOut(BaseModel):
    """The last good backup and the last attempt; ``problem`` is why that one failed, in English, or empty."""

    made_at: datetime | None
    verified_at: datetime | None
    size_bytes: int | None
    tried_at: datetime | None
    problem: str


class PhonesOut(BaseModel):
    """Clients with a phone, and how many of them were not heard for ``silent_days`` days."""

    clients: int
    silent: int
    silent_days: int


class WaitingOut(BaseModel):
    """A queue of this practice."""

    name: str
    number: int
    oldest_at: datetime | None


class AddressOut(BaseModel):
    """The address that phones are told; ``looked_at`` is None before the server has looked at it from outside."""

    url: str
    looked_at: datetime | None
    certificate_until: datetime | None


class NoticeOut(BaseModel):
    """Something to do."""

    code: Code
    urgent: bool


class InstallationOut(BaseModel):
    """How the installation stands. Without notices, all is well."""

    as_of: datetime
    version: str
    database: DatabaseOut
    disk: DiskOut
    backup: BackupOut
    phones: PhonesOut
    waiting: list[WaitingOut]
    address: AddressOut
    notices: list[NoticeOut]
