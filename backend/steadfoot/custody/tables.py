"""Erasures asked for, what was erased, and how long the practice keeps records."""

from datetime import datetime

from sqlmodel import Field

from steadfoot.core.base import Table


class Erasure(Table, table=True):
    """A record that is to be erased on a day; until then it can be taken back. The row goes with the record."""

    client_id: str = Field(primary_key=True, foreign_key="client.id", max_length=36)
    practice_id: str = Field(foreign_key="practice.id", index=True, max_length=36)
    asked_at: datetime
    asked_by: str = Field(foreign_key="practitioner.id", max_length=36)
    due_at: datetime
    archived_before: bool


class ErasedPerson(Table, table=True):
    """An id whose record is gone: it must not come back from a backup."""

    __tablename__ = "erased_person"

    subject_id: str = Field(primary_key=True, max_length=36)
    practice_id: str = Field(foreign_key="practice.id", index=True, max_length=36)
    erased_at: datetime


class RetentionChoice(Table, table=True):
    """How long the practice keeps the records of archived clients. No row: nobody has chosen, and nothing is due.

    ``years`` is null where they are kept until someone decides.
    """

    __tablename__ = "retention_choice"

    practice_id: str = Field(primary_key=True, foreign_key="practice.id", max_length=36)
    years: int | None
    chosen_at: datetime
    chosen_by: str = Field(foreign_key="practitioner.id", max_length=36)
