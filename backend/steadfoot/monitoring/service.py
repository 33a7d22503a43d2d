"""The way by which the wiring reaches monitoring."""

from sqlmodel import Session

from steadfoot.monitoring import upkeep


def refresh_findings(session: Session, practice_id: str, client_id: str) -> None:
    """Build a client's findings again; called inside the transaction that changed what they come from.

    That is: after check-ins were folded, a program was published, or thresholds or kit were set. A rebuild is the same
    call for every client.
    """
    session.flush()
    upkeep.refresh(session, practice_id, client_id)
