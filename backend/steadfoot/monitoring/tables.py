"""What is derived from check-ins for the practitioner, and the facts of what the practitioner answered."""

from datetime import date, datetime

from sqlalchemy import Column, Index, Text
from sqlmodel import Field

from steadfoot.core.base import Table


class Finding(Table, table=True):
    """Derived: a rule's finding through one episode. ``evidence`` and ``suggestion`` are canonical JSON."""

    __table_args__ = (Index("ix_finding_client", "practice_id", "client_id"),)

    id: str = Field(primary_key=True, max_length=36)
    practice_id: str = Field(foreign_key="practice.id", max_length=36)
    client_id: str = Field(foreign_key="client.id", max_length=36)
    rule: str = Field(max_length=30)
    subject: str = Field(max_length=40)
    since: date
    evidence: str = Field(sa_column=Column(Text, nullable=False))
    suggestion: str = Field(sa_column=Column(Text, nullable=False))


class ClientSheet(Table, table=True):
    """Derived: a client's planned sessions with what is reported of them, so that the caseload is few
    queries."""

    __tablename__ = "client_sheet"

    client_id: str = Field(primary_key=True, foreign_key="client.id", max_length=36)
    practice_id: str = Field(foreign_key="practice.id", index=True, max_length=36)
    content: str = Field(sa_column=Column(Text, nullable=False))


class FlagDecision(Table, table=True):
    """A practitioner's answer to a finding, and the check-ins that it answers. Rows are only ever added."""

    __tablename__ = "flag_decision"
    __table_args__ = (Index("ix_flag_decision_client", "practice_id", "client_id"),)

    id: str = Field(primary_key=True, max_length=36)
    practice_id: str = Field(foreign_key="practice.id", max_length=36)
    client_id: str = Field(foreign_key="client.id", max_length=36)
    flag_id: str = Field(max_length=36)
    rule: str = Field(max_length=30)
    subject: str = Field(max_length=40)
    action: str = Field(max_length=20)
    note: str = Field(max_length=4000)
    message: str = Field(max_length=4000)
    covers: str = Field(sa_column=Column(Text, nullable=False))
    program_number: int | None
    practitioner_id: str = Field(foreign_key="practitioner.id", max_length=36)
    decided_at: datetime


class ProgressionDecision(Table, table=True):
    """A practitioner's answer to a suggestion on progress, with what it rested on. Rows are only ever added.

    ``suggestion_id`` names the rule and its evidence; ``evidence`` holds the reasons as canonical JSON.
    """

    __tablename__ = "progression_decision"
    __table_args__ = (Index("ix_progression_decision_client", "practice_id", "client_id"),)

    id: str = Field(primary_key=True, max_length=36)
    practice_id: str = Field(foreign_key="practice.id", max_length=36)
    client_id: str = Field(foreign_key="client.id", max_length=36)
    suggestion_id: str = Field(max_length=32)
    prescription: str = Field(max_length=60)
    rule: str = Field(max_length=30)
    suggestion: str = Field(max_length=20)
    action: str = Field(max_length=20)
    reason: str = Field(max_length=4000)
    evidence: str = Field(sa_column=Column(Text, nullable=False))
    program_number: int | None
    practitioner_id: str = Field(foreign_key="practitioner.id", max_length=36)
    decided_at: datetime


class Message(Table, table=True):
    """Words from a practitioner to a client. Rows are only ever added."""

    __table_args__ = (Index("ix_message_client", "practice_id", "client_id"),)

    id: str = Field(primary_key=True, max_length=36)
    practice_id: str = Field(foreign_key="practice.id", max_length=36)
    client_id: str = Field(foreign_key="client.id", max_length=36)
    practitioner_id: str = Field(foreign_key="practitioner.id", max_length=36)
    flag_id: str | None = Field(max_length=36)
    text: str = Field(max_length=4000)
    sent_at: datetime
