"""Which phones a batch has to be held against more than their gapless numbers for: most of them never."""

from collections.abc import Sequence

from sqlalchemy import Connection, Dialect, exists, or_, select
from sqlmodel import col

from steadfoot.checkins.tables import Receipt, RefusedEvent
from steadfoot.core.bulk import Asking
from steadfoot.identity.phones import KNOWN

_AHEAD = exists().where(col(Receipt.device_id) == KNOWN.c.id, col(Receipt.seq) > KNOWN.c.acknowledged_through)
_ASIDE = exists().where(col(RefusedEvent.client_id) == KNOWN.c.client_id)
_MORE = select(KNOWN.c.id).where(or_(_AHEAD, _ASIDE))


class MoreToLookAt:
    """Knows of which phones something is held beyond their gapless numbers, or kept aside for their client."""

    def __init__(self, dialect: Dialect) -> None:
        self._more = Asking(_MORE, KNOWN.c.id, dialect)

    def among(self, connection: Connection, device_ids: Sequence[str]) -> set[str]:
        """Answer them."""
        return {row[0] for row in self._more.rows(connection, device_ids)} if device_ids else set()
