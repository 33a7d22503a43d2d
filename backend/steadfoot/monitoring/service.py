"""The way by which the wiring and later steps reach monitoring."""

from dataclasses import dataclass

from sqlmodel import Session

from steadfoot.monitoring import upkeep
from steadfoot.monitoring.flags import FlagStatus, standings_of


@dataclass(frozen=True, slots=True)
class FindingsStanding:
    """How many findings wait for an answer, and whether a symptom that nobody cleared stops training."""

    open: int
    stops_training: bool


def findings_standing(session: Session, practice_id: str, client_id: str) -> FindingsStanding:
    """Answer where a client's findings stand."""
    found = standings_of(session, practice_id, client_id)
    waiting = sum(one.status is FlagStatus.OPEN for one in found)
    return FindingsStanding(waiting, any(one.stops_training for one in found))


def refresh_findings(session: Session, practice_id: str, client_id: str) -> None:
    """Build a client's findings again; called inside the transaction that changed what they come from.

    That is: after check-ins were folded, a program was published, or thresholds or kit were set. A rebuild is the same
    call for every client.
    """
    session.flush()
    upkeep.refresh(session, practice_id, client_id)
