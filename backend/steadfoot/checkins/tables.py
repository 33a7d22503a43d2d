"""Events (facts, never edited) and the tables derived from them (decision 0003)."""

from datetime import date, datetime
from typing import Any

from sqlalchemy import JSON, CheckConstraint, Column, Index
from sqlmodel import Field

from steadfoot.core.base import Table


class Event(Table, table=True):
    """An accepted check-in, as the phone sent it."""

    __table_args__ = (
        Index("ix_event_planned", "client_id", "planned_id"),
        Index("ix_event_time", "client_id", "instant", "id"),
    )

    id: str = Field(primary_key=True, max_length=36)
    practice_id: str = Field(foreign_key="practice.id", max_length=36)
    client_id: str = Field(foreign_key="client.id", max_length=36)
    device_id: str = Field(foreign_key="device.id", max_length=36)
    seq: int
    kind: str = Field(max_length=30)
    recorded_at: str = Field(max_length=40)
    instant: datetime
    received_at: datetime
    local_day: date
    planned_id: str | None = Field(max_length=20)
    body: str
    content_digest: str = Field(max_length=64)


class Receipt(Table, table=True):
    """One number of one phone that the practice holds, accepted or refused: this is what "received" means."""

    device_id: str = Field(primary_key=True, foreign_key="device.id", max_length=36)
    seq: int = Field(primary_key=True)
    practice_id: str = Field(foreign_key="practice.id", max_length=36)
    event_id: str = Field(max_length=100)


class RefusedEvent(Table, table=True):
    """An item that could not be taken, whole, until a person has dealt with it."""

    __tablename__ = "refused_event"
    __table_args__ = (
        Index("ix_refused_event_client", "client_id", "received_at"),
        Index("ix_refused_event_practice", "practice_id", "accepted_at", "client_id"),
    )

    digest: str = Field(primary_key=True, max_length=64)
    practice_id: str = Field(foreign_key="practice.id", max_length=36)
    client_id: str = Field(foreign_key="client.id", max_length=36)
    device_id: str = Field(foreign_key="device.id", max_length=36)
    event_id: str = Field(max_length=100)
    content_digest: str = Field(max_length=64)
    seq: int | None
    raw: str
    problem: dict[str, Any] = Field(sa_column=Column(JSON, nullable=False))
    received_at: datetime
    accepted_at: datetime | None


class Due(Table, table=True):
    """Accepted check-ins that are not yet folded: numbers of one phone, from and to. Gone once they are (decision
    0011)."""

    __table_args__ = (Index("ix_due_client", "practice_id", "client_id"),)

    device_id: str = Field(primary_key=True, foreign_key="device.id", max_length=36)
    first_seq: int = Field(primary_key=True)
    last_seq: int
    practice_id: str = Field(foreign_key="practice.id", max_length=36)
    client_id: str = Field(foreign_key="client.id", max_length=36)


class SessionRollup(Table, table=True):
    """Derived: what the events say of one planned session. JSON columns hold canonical text."""

    __tablename__ = "session_rollup"
    __table_args__ = (Index("ix_session_rollup_day", "practice_id", "client_id", "planned_day"),)

    client_id: str = Field(primary_key=True, foreign_key="client.id", max_length=36)
    planned_id: str = Field(primary_key=True, max_length=20)
    practice_id: str = Field(foreign_key="practice.id", max_length=36)
    planned_day: date
    last_day: date
    program_version: int | None
    sets_done: int
    sets: str
    left_out: str
    swaps: str
    minutes: int | None
    effort: int | None
    finished: bool
    walk: str | None


class PainEntry(Table, table=True):
    """Derived: one pain report that has not been withdrawn."""

    __tablename__ = "pain_entry"
    __table_args__ = (
        CheckConstraint("rating BETWEEN 0 AND 10", name="rating_range"),
        Index("ix_pain_entry_day", "practice_id", "client_id", "day"),
        Index("ix_pain_entry_practice_day", "practice_id", "day"),
    )

    event_id: str = Field(primary_key=True, max_length=36)
    client_id: str = Field(foreign_key="client.id", max_length=36)
    practice_id: str = Field(foreign_key="practice.id", max_length=36)
    day: date
    instant: datetime
    rating: int
    region: str = Field(max_length=20)
    side: str = Field(max_length=10)
    aspect: str | None = Field(max_length=10)
    felt: str = Field(max_length=20)
    feels: str
    planned_id: str | None = Field(max_length=20)
    prescription: str | None = Field(max_length=60)
