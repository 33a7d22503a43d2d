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


class WalkDone(BaseModel):
    """A walk as it was entered: kilometres, metres up and down, minutes, kilograms carried."""

    distance_km: float
    ascent_m: float
    descent_m: float
    minutes: int
    pack_kg: float


class HistoryItem(BaseModel):
    """What the client's phones have said of one planned session.

    A planned id ``extra.YYYY-MM-DD`` stands for what was done outside the plan on that day.
    """

    planned_id: str
    day: Annotated[date, Field(description="Newest calendar day that an entry of it is about")]
    program_version: int | None
    sets: Annotated[list[tuple[str, int]], Field(description="Prescription key and round of each set done")]
    left_out: Annotated[list[tuple[str, int, str]], Field(description="Prescription key, round and reason")]
    swaps: Annotated[
        dict[str, str],
        Field(description="Prescription key to the variant done instead, or exercise/variant of another movement"),
    ]
    minutes: int | None
    effort: int | None
    finished: bool
    walk: WalkDone | None


class History(BaseModel):
    """What is known of a client's sessions from ``since`` on, by planned id."""

    since: date
    items: list[HistoryItem]
