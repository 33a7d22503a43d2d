"""Published versions, drafts, and the practice's own templates."""

from datetime import date, datetime

from sqlalchemy import CheckConstraint, Column, Text, UniqueConstraint
from sqlmodel import Field

from steadfoot.core.base import Table


class ProgramVersion(Table, table=True):
    """What a client was assigned from a day on. Rows are only ever added."""

    __tablename__ = "program_version"
    __table_args__ = (
        UniqueConstraint("client_id", "number"),
        CheckConstraint("number >= 1", name="number_range"),
    )

    id: str = Field(primary_key=True, max_length=36)
    practice_id: str = Field(foreign_key="practice.id", index=True, max_length=36)
    client_id: str = Field(foreign_key="client.id", max_length=36)
    number: int
    published_at: datetime
    published_by: str = Field(foreign_key="practitioner.id", max_length=36)
    effective_on: date
    note: str = Field(max_length=4000)
    changes: str = Field(sa_column=Column(Text, nullable=False))
    content: str = Field(sa_column=Column(Text, nullable=False))


class ProgramDraft(Table, table=True):
    """The program a practitioner is writing for a client: at most one a client."""

    __tablename__ = "program_draft"

    client_id: str = Field(primary_key=True, foreign_key="client.id", max_length=36)
    practice_id: str = Field(foreign_key="practice.id", index=True, max_length=36)
    base_number: int | None
    version: int
    saved_at: datetime
    saved_by: str = Field(foreign_key="practitioner.id", max_length=36)
    content: str = Field(sa_column=Column(Text, nullable=False))


class Template(Table, table=True):
    """A program without dates that the practice has kept."""

    __tablename__ = "template"

    id: str = Field(primary_key=True, max_length=36)
    practice_id: str = Field(foreign_key="practice.id", index=True, max_length=36)
    name: str = Field(max_length=120)
    created_at: datetime
    body: str = Field(sa_column=Column(Text, nullable=False))
