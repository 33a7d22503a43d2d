"""The ways by which the wiring reaches monitoring."""

from sqlmodel import Session

from steadfoot.identity import service as identity
from steadfoot.monitoring import upkeep

__all__ = ["rebuild", "refresh_findings"]


def refresh_findings(session: Session, practice_id: str, client_id: str) -> None:
    """Build a client's findings again; called inside the transaction that changed what they come from.

    That is: after check-ins were folded, a program was published, or thresholds or kit were set.
    """
    session.flush()
    upkeep.refresh(session, practice_id, client_id)


def rebuild(session: Session, practice_id: str) -> None:
    """Build the findings of every client of a practice again, to the same bytes."""
    for client in identity.clients_of(session, practice_id):
        refresh_findings(session, practice_id, client.id)
