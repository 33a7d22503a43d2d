"""The audit log and the head of each practice's chain. Triggers refuse to change or delete a row (migration 0009)."""

from datetime import datetime

from sqlalchemy import Index
from sqlmodel import Field

from steadfoot.core.base import Table


class AuditEntry(Table, table=True):
    """One act. No foreign keys: a row outlives the person it is about and the one who did it."""

    __tablename__ = "audit_entry"
    __table_args__ = (Index("ix_audit_entry_subject", "practice_id", "subject_id", "number"),)

    practice_id: str = Field(primary_key=True, max_length=36)
    number: int = Field(primary_key=True)
    at: datetime
    actor_kind: str = Field(max_length=20)
    actor_id: str | None = Field(max_length=36)
    subject_id: str | None = Field(max_length=36)
    action: str = Field(max_length=60)
    outcome: str = Field(max_length=20)
    request_id: str = Field(max_length=36)
    times: int
    previous: str = Field(max_length=64)
    digest: str = Field(max_length=64)


class AuditHead(Table, table=True):
    """The newest row of a practice's chain. Whoever adds holds this row until the transaction ends: no fork."""

    __tablename__ = "audit_head"

    practice_id: str = Field(primary_key=True, max_length=36)
    number: int
    digest: str = Field(max_length=64)
