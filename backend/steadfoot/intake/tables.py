"""Screenings and clearances (decision 0004). Rows are never edited."""

from datetime import date, datetime

from sqlalchemy import Column, Index, Text
from sqlmodel import Field

from steadfoot.core.base import Table


class Screening(Table, table=True):
    """One set of answers with what it asked for. ``answers``, ``details`` and ``reasons`` are canonical JSON.

    What a practitioner entered is a fact. What the phone sent is derived from its event, whose id it bears, and is
    made again by a rebuild.
    """

    __table_args__ = (Index("ix_screening_client", "practice_id", "client_id"),)

    id: str = Field(primary_key=True, max_length=36)
    practice_id: str = Field(foreign_key="practice.id", max_length=36)
    client_id: str = Field(foreign_key="client.id", max_length=36)
    answered_at: datetime
    local_day: date
    source: str = Field(max_length=20)
    event_id: str | None = Field(max_length=36)
    answers: str = Field(sa_column=Column(Text, nullable=False))
    details: str = Field(sa_column=Column(Text, nullable=False))
    outcome: str = Field(max_length=20)
    reasons: str = Field(sa_column=Column(Text, nullable=False))
    answered_by: str | None = Field(foreign_key="practitioner.id", max_length=36)


class Clearance(Table, table=True):
    """Someone licensed has said that one screened person may train. Rows are only ever added.

    ``screening_id`` is no foreign key: a rebuild makes the phone's screenings again, under the same ids.
    """

    __table_args__ = (Index("ix_clearance_client", "practice_id", "client_id"),)

    id: str = Field(primary_key=True, max_length=36)
    practice_id: str = Field(foreign_key="practice.id", max_length=36)
    client_id: str = Field(foreign_key="client.id", max_length=36)
    screening_id: str = Field(max_length=36)
    given_on: date
    given_by: str = Field(max_length=120)
    note: str = Field(max_length=4000)
    recorded_by: str = Field(foreign_key="practitioner.id", max_length=36)
    recorded_at: datetime
