"""Notes on readiness. Rows are only ever added: a newer note stands in the place of an older one, and both are kept."""

from datetime import datetime

from sqlalchemy import Column, Index, Text
from sqlmodel import Field

from steadfoot.core.base import Table


class ReadinessNote(Table, table=True):
    """A practitioner's word on readiness, signed by name and time.

    ``shown`` holds the items as they were shown when it was signed, as canonical JSON: nothing that comes in later
    changes what the note rested on. ``signed_by`` is the name as it was then.
    """

    __tablename__ = "readiness_note"
    __table_args__ = (Index("ix_readiness_note_client", "practice_id", "client_id"),)

    id: str = Field(primary_key=True, max_length=36)
    practice_id: str = Field(foreign_key="practice.id", max_length=36)
    client_id: str = Field(foreign_key="client.id", max_length=36)
    verdict: str = Field(max_length=10)
    words: str = Field(max_length=4000)
    shown: str = Field(sa_column=Column(Text, nullable=False))
    practitioner_id: str = Field(foreign_key="practitioner.id", max_length=36)
    signed_by: str = Field(max_length=120)
    signed_at: datetime
