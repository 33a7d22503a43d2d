"""Many phones at once: who they are, and that they were heard. Plain values, since every check-in passes here."""

from collections.abc import Iterable, Sequence
from datetime import datetime
from typing import NamedTuple

from sqlalchemy import Connection, Dialect, and_, select
from sqlmodel import col

from steadfoot.core.bulk import Asking, Bulk
from steadfoot.identity.access import DeviceAccess, admit
from steadfoot.identity.tables import Client, Device, Pairing, ServerEpoch


class Phone(NamedTuple):
    """A phone as a sync needs it."""

    token_digest: str
    device_id: str
    practice_id: str
    client_id: str
    time_zone: str
    revoked: bool
    waits: bool
    acknowledged_through: int
    change_head: int
    epoch: str

    def access(self) -> DeviceAccess:
        """Answer it as who is asking.

        Raises:
            NotSignedIn, Forbidden: as ``identity.access.device_of``.
        """
        access = DeviceAccess(self.practice_id, self.client_id, self.device_id, self.time_zone)
        return admit(access, revoked=self.revoked, waits=self.waits)


_EPOCH = select(col(ServerEpoch.value)).scalar_subquery()
_PHONES = (
    select(
        col(Device.token_digest),
        col(Device.id),
        col(Device.practice_id),
        col(Device.client_id),
        col(Client.time_zone),
        col(Device.revoked_at).is_not(None),
        and_(col(Pairing.id).is_not(None), col(Pairing.confirmed_at).is_(None)),
        col(Device.acknowledged_through),
        col(Client.change_head),
        _EPOCH,
    )
    .join(Client, col(Client.id) == Device.client_id)
    .outerjoin(Pairing, col(Pairing.device_id) == Device.id)
)
_LOCKED = select(col(Device.id)).order_by(col(Device.id)).with_for_update(key_share=True)
KNOWN = select(col(Device.id), col(Device.client_id), col(Device.acknowledged_through)).subquery("phone")
"""Phones, for later steps to ask of what they hold: ``id``, ``client_id``, ``acknowledged_through``."""


class Contacts:
    """Looks phones up, and notes that they were in contact."""

    def __init__(self, dialect: Dialect) -> None:
        token = col(Device.token_digest)
        self._phones, self._locked = Asking(_PHONES, token, dialect), Asking(_LOCKED, token, dialect)
        self._heard = Bulk(Device, ("last_heard_at", "acknowledged_through", "id"), dialect)
        self._time = self._heard.converter("last_heard_at")

    def locked(self, connection: Connection, digests: Sequence[str]) -> dict[str, Phone]:
        """Answer the phones with these token digests, of any practice, and hold their rows until the transaction ends.

        They are locked one after the other by id, so that two servers never wait for each other in a ring, and read in
        a second statement: the first one's view is older than the locks that it waited for.
        """
        if connection.dialect.name != "sqlite":  # there the writer has locked the whole database
            self._locked.rows(connection, digests)
        return {row[0]: Phone(*row) for row in self._phones.rows(connection, digests)}

    def note(self, connection: Connection, contacts: Iterable[tuple[datetime, int, str]]) -> None:
        """Note when each phone was heard, the end of its gapless numbers, and its id."""
        rows = [(self._time(at), through, device_id) for at, through, device_id in contacts]
        self._heard.update(connection, rows)
