"""Every query of readiness, each within a practice."""

from collections.abc import Sequence

from sqlmodel import Session, col

from steadfoot.core.database import scoped
from steadfoot.readiness.tables import ReadinessNote


def notes(session: Session, practice_id: str, client_id: str) -> Sequence[ReadinessNote]:
    """Answer the notes on a client, newest first."""
    query = scoped(ReadinessNote, practice_id).where(ReadinessNote.client_id == client_id)
    return session.exec(query.order_by(col(ReadinessNote.signed_at).desc(), col(ReadinessNote.id).desc())).all()
