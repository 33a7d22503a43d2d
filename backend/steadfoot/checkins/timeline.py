"""A client's entries as pages, oldest first."""

import base64
import binascii
import re
from datetime import UTC, datetime

from sqlmodel import Session

from steadfoot.checkins import store
from steadfoot.checkins.bodies import UUID_PATTERN
from steadfoot.checkins.fold import parsed
from steadfoot.checkins.schemas import Timeline, TimelineItem
from steadfoot.checkins.tables import Event
from steadfoot.core.problems import Problem


def _cursor_of(event: Event) -> str:
    place = f"{event.instant.isoformat()}|{event.id}"
    return base64.urlsafe_b64encode(place.encode()).decode().rstrip("=")


def _place_of(cursor: str) -> tuple[datetime, str]:
    try:
        text = base64.urlsafe_b64decode(cursor + "=" * (-len(cursor) % 4)).decode()
        at, _, last = text.partition("|")
        found = datetime.fromisoformat(at)
        if found.tzinfo is None or not re.fullmatch(UUID_PATTERN, last):
            raise ValueError
        return found.astimezone(UTC), last
    except (ValueError, OverflowError, binascii.Error):
        raise Problem("cursor", "This cursor was not made here.") from None


def _item(event: Event) -> TimelineItem:
    return TimelineItem(
        at=datetime.fromisoformat(event.recorded_at),
        local_date=event.local_day,
        kind=event.kind,
        source="client",
        event_id=event.id,
        body=dict(parsed(event.body)),
    )


def page(
    session: Session, practice_id: str, client_id: str, cursor: str | None, limit: int, *, newest_first: bool
) -> Timeline:
    """Answer the entries after a cursor, in the order asked for; a cursor belongs to its order.

    Raises:
        Problem: the cursor was not made here.
    """
    after = _place_of(cursor) if cursor else None
    found = store.events_page(session, practice_id, client_id, after, limit + 1, newest_first=newest_first)
    shown = found[:limit]
    return Timeline(
        items=[_item(event) for event in shown],
        next_cursor=_cursor_of(shown[-1]) if len(found) > limit else None,
    )
