"""The rows of the log as tests read them."""

from typing import Any

from sqlmodel import Session, select

from steadfoot.audit.tables import AuditEntry
from steadfoot.core.database import Database


def rows(database: Database, practice_id: str) -> list[dict[str, Any]]:
    """Answer a practice's rows in order."""
    with Session(database.reader) as session:
        query = select(AuditEntry).where(AuditEntry.practice_id == practice_id).order_by(AuditEntry.number)  # type: ignore[arg-type]
        return [row.model_dump() for row in session.exec(query)]


def said(database: Database, practice_id: str, after: int = 0) -> list[tuple[str, str]]:
    """Answer what was done and how it went, from a row on."""
    return [(row["action"], row["outcome"]) for row in rows(database, practice_id)[after:]]
