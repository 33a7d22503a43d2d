"""Request and reply bodies of check-ins."""

from datetime import date, datetime
from typing import Annotated, Any

from pydantic import BaseModel, Field

from steadfoot.core.texts import JSON_INT, Inward

BATCH_LIMIT = 500


class SyncBody(Inward):
    """What a phone sends. Each event is judged by itself; see decision 0001 for kinds and bodies."""

    cursor: Annotated[int, Field(ge=0, le=2**53 - 1), JSON_INT] = 0
    events: Annotated[list[Any], Field(max_length=BATCH_LIMIT)] = []


class Refused(BaseModel):
    """An item that was kept aside; it is held, and a person will look at it."""

    seq: int | None
    id: str
    problem: dict[str, Any]


class ChangeOut(BaseModel):
    """Something new for the phone."""

    number: int
    kind: str
    at: datetime
    body: dict[str, Any]


class SyncOut(BaseModel):
    """What the practice now holds of this phone, and what is new for it."""

    server_epoch: str
    server_time: datetime
    acknowledged_through: int
    refused: list[Refused]
    changes: list[ChangeOut]
    cursor: int


class RefusedEventOut(BaseModel):
    """An item kept aside, whole."""

    event_id: str
    device_id: str
    seq: int | None
    received_at: datetime
    raw: str
    problem: dict[str, Any]


class RefusedEventList(BaseModel):
    """Items kept aside, oldest first."""

    items: list[RefusedEventOut]


class RetryOut(BaseModel):
    """Whether an item could be taken now, else why not."""

    accepted: bool
    problem: dict[str, Any] | None


class TimelineItem(BaseModel):
    """One thing that happened."""

    at: datetime
    local_date: date
    kind: str
    source: str
    event_id: str | None
    body: dict[str, Any]


class Timeline(BaseModel):
    """A page of what happened, oldest first."""

    items: list[TimelineItem]
    next_cursor: str | None
