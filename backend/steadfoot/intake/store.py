"""Every query of intake, each within a practice."""

from collections.abc import Iterable, Mapping, Sequence
from typing import Any

from sqlalchemy import delete, insert
from sqlmodel import Session, col

from steadfoot.core.database import scoped
from steadfoot.intake.tables import Clearance, Screening


def screenings(session: Session, practice_id: str, client_id: str) -> Sequence[Screening]:
    """Answer a client's screenings, newest first."""
    query = scoped(Screening, practice_id).where(Screening.client_id == client_id)
    return session.exec(query.order_by(col(Screening.answered_at).desc(), col(Screening.id).desc())).all()


def newest(session: Session, practice_id: str, client_id: str) -> Screening | None:
    """Answer a client's newest screening."""
    query = scoped(Screening, practice_id).where(Screening.client_id == client_id)
    order = (col(Screening.answered_at).desc(), col(Screening.id).desc())
    return session.exec(query.order_by(*order).limit(1)).first()


def screening(session: Session, practice_id: str, client_id: str, screening_id: str) -> Screening | None:
    """Answer one screening of a client."""
    query = scoped(Screening, practice_id).where(Screening.client_id == client_id, Screening.id == screening_id)
    return session.exec(query).first()


def add_screening(session: Session, row: Mapping[str, Any]) -> None:
    """Insert a screening."""
    session.execute(insert(Screening), [dict(row)])


def remove_answers(session: Session, practice_id: str, client_id: str, event_ids: Iterable[str] | None) -> None:
    """Delete screenings that a client's phone sent, all or those of some events."""
    statement = delete(Screening).where(
        col(Screening.practice_id) == practice_id,
        col(Screening.client_id) == client_id,
        col(Screening.event_id).is_not(None),
    )
    if event_ids is not None:
        statement = statement.where(col(Screening.event_id).in_(list(event_ids)))
    session.execute(statement)


def clearances(session: Session, practice_id: str, client_id: str) -> Sequence[Clearance]:
    """Answer a client's clearances, oldest first."""
    query = scoped(Clearance, practice_id).where(Clearance.client_id == client_id)
    return session.exec(query.order_by(col(Clearance.recorded_at), col(Clearance.id))).all()
