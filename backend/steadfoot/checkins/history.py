"""What a client's phones have said together, for a new phone of the same client that has none of it."""

import json
from datetime import datetime, timedelta

from sqlmodel import Session

from steadfoot.checkins import store
from steadfoot.checkins.schemas import History, HistoryItem
from steadfoot.checkins.tables import SessionRollup
from steadfoot.core.clock import local_date
from steadfoot.identity.access import DeviceAccess

HISTORY_DAYS = 180
"""How far back a new phone is told, days: as long as a phone itself keeps its entries (decision 0001). House value."""


def _item(row: SessionRollup) -> HistoryItem:
    return HistoryItem(
        planned_id=row.planned_id,
        day=row.last_day,
        program_version=row.program_version,
        sets=json.loads(row.sets),
        left_out=json.loads(row.left_out),
        swaps=json.loads(row.swaps),
        minutes=row.minutes,
        effort=row.effort,
        finished=row.finished,
        walk=None if row.walk is None else json.loads(row.walk),
    )


def of_client(session: Session, access: DeviceAccess, now: datetime) -> History:
    """Answer the sessions planned in the last 180 days, and later ones, of which something was said."""
    since = local_date(now, access.client_time_zone) - timedelta(days=HISTORY_DAYS)
    return History(
        since=since,
        items=[_item(row) for row in store.rollups(session, access.practice_id, since, access.client_id)],
    )
