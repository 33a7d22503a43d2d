"""Every query of assessment, each within a practice."""

from collections.abc import Sequence
from typing import TypeVar

from sqlmodel import Session, col

from steadfoot.assessment.tables import FunctionalScale, TestResult
from steadfoot.core.database import scoped

Row = TypeVar("Row", TestResult, FunctionalScale)


def kept(session: Session, table: type[Row], practice_id: str, client_id: str) -> Sequence[Row]:
    """Answer a client's rows that were not withdrawn, oldest first by the day they are about."""
    query = scoped(table, practice_id).where(col(table.client_id) == client_id, col(table.withdrawn_at).is_(None))
    return session.exec(query.order_by(col(table.taken_on), col(table.recorded_at), col(table.id))).all()


def row(session: Session, table: type[Row], practice_id: str, row_id: str) -> Row | None:
    """Answer one row of the practice, withdrawn or not, and hold it until the transaction ends."""
    return session.exec(scoped(table, practice_id).where(col(table.id) == row_id).with_for_update()).first()
