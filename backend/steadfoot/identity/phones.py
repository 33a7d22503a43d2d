"""Many phones at once: who they are, and that they were heard. Plain values, since every check-in passes here."""

from collections.abc import Iterable
from datetime import datetime
from typing import NamedTuple

from sqlalchemy import Connection, Dialect, bindparam, select
from sqlmodel import col

from steadfoot.core.bulk import Bulk
from steadfoot.identity.access import DeviceAccess, admit
from steadfoot.identity.tables import Client, Device, Pairing, ServerEpoch


class Phone(NamedTuple):
    """A phone as a sync needs it."""

    token_digest: str
    device_id: str
    practice_id: str
    client_id: str
    time_zone: str
    revoked_at: datetime | None
    pairing_id: str | None
    confirmed_at: datetime | None
    acknowledged_through: int
    change_head: int
    epoch: str

    def access(self) -> DeviceAccess:
        """Answer it as who is asking.

        Raises:
            NotSignedIn, Forbidden: as ``identity.access.device_of``.
        """
        waits = self.pairing_id is not None and self.confirmed_at is None
        return admit(
            DeviceAccess(self.practice_id, self.client_id, self.device_id, self.time_zone),
            revoked=self.revoked_at is not None,
            waits=waits,
        )


# Made once: a statement that is put together at each call costs more than the database takes for it.
_MINE = col(Device.token_digest).in_(bindparam("digests", expanding=True))
_EPOCH = select(col(ServerEpoch.value)).scalar_subquery()
_PHONES = (
    select(
        col(Device.token_digest),
        col(Device.id),
        col(Device.practice_id),
        col(Device.client_id),
        col(Client.time_zone),
        col(Device.revoked_at),
        col(Pairing.id),
        col(Pairing.confirmed_at),
        col(Device.acknowledged_through),
        col(Client.change_head),
        _EPOCH,
    )
    .join(Client, col(Client.id) == Device.client_id)
    .outerjoin(Pairing, col(Pairing.device_id) == Device.id)
    .where(_MINE)
)
_LOCKED = select(col(Device.id)).where(_MINE).order_by(col(Device.id)).with_for_update(key_share=True)
KNOWN = select(col(Device.id), col(Device.client_id), col(Device.acknowledged_through)).subquery("phone")
"""Phones, for later steps to ask of what they hold: ``id``, ``client_id``, ``acknowledged_through``."""


def locked(connection: Connection, digests: Iterable[str]) -> dict[str, Phone]:
    """Answer the phones with these token digests, of any practice, and hold their rows until the transaction ends.

    They are locked one after the other by id, so that two servers never wait for each other in a ring, and read in a
    second statement: the first one's view is older than the locks that it waited for.
    """
    asked = {"digests": list(digests)}
    if connection.dialect.name != "sqlite":  # there the writer has locked the whole database
        connection.execute(_LOCKED, asked)
    return {row[0]: Phone(*row) for row in connection.execute(_PHONES, asked)}


class Heard:
    """Notes that phones were in contact."""

    def __init__(self, dialect: Dialect) -> None:
        self._bulk = Bulk(Device, ("last_heard_at", "acknowledged_through", "id"), dialect)
        self._time = self._bulk.converter("last_heard_at")

    def note(self, connection: Connection, contacts: Iterable[tuple[datetime, int, str]]) -> None:
        """Note when, the end of its gapless numbers, and its id, of each phone."""
        rows = [(self._time(at), through, device_id) for at, through, device_id in contacts]
        self._bulk.update(connection, rows)
