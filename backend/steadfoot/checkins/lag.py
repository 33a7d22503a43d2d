"""How long a batch's oldest event had waited on its phone."""

from collections.abc import Iterable, Iterator
from datetime import datetime, timedelta
from typing import Any


def _times(events: Iterable[Any]) -> Iterator[datetime]:
    for event in events:
        try:
            found = datetime.fromisoformat(event["recorded_at"])
        except (KeyError, TypeError, ValueError):
            continue  # the batch's reader says what is wrong with it
        if found.tzinfo is not None:
            yield found


def lag_of(events: Iterable[Any], at: datetime) -> timedelta | None:
    """Answer the age of the oldest event at an instant; None if none says when it was."""
    oldest = min(_times(events), default=None)
    return None if oldest is None else at - oldest
