"""Nobody gets a program whose screening asks for a clearance that no one has given (decision 0004).

Only a program that a practitioner assigns is held back. Easing a running one off after a flag never is: keeping
someone at the harder dose would protect nobody.
"""

from collections.abc import Sequence
from typing import Final

from sqlmodel import Session

from steadfoot.core.problems import Conflict
from steadfoot.intake import service as intake
from steadfoot.intake.schemas import ScreeningState
from steadfoot.programs.findings import Finding, Severity, error, warning

_NEEDED: Final = "The screening asks for a doctor's clearance before any program. Record the clearance first."
_SAID: Final = {
    ScreeningState.NOT_SCREENED: warning("", "not_screened", "Nobody has asked the screening questions yet."),
    ScreeningState.CLEARANCE_RECOMMENDED: warning(
        "", "clearance_recommended", "The screening recommends a doctor's clearance before vigorous exercise."
    ),
    ScreeningState.CLEARANCE_REQUIRED: error("", "clearance_needed", _NEEDED),
}


def with_clearance(session: Session, practice_id: str, client_id: str, found: Sequence[Finding]) -> list[Finding]:
    """Answer a program's findings with what the client's screening says of it, errors first.

    Raises:
        NotFound: the client is unknown, or another practice's.
    """
    said = _SAID.get(intake.standing_of(session, practice_id, client_id).state)
    both = [*found, *([] if said is None else [said])]
    return sorted(both, key=lambda finding: finding.severity is not Severity.ERROR)


def refuse_uncleared(session: Session, practice_id: str, client_id: str) -> None:
    """Let a client pass whose screening asks for nothing that is missing.

    Raises:
        NotFound: the client is unknown, or another practice's.
        Conflict: ``clearance-needed``; carries the screening and the reasons of its outcome.
    """
    standing = intake.standing_of(session, practice_id, client_id)
    if standing.state is ScreeningState.CLEARANCE_REQUIRED:
        raise Conflict(
            "clearance-needed",
            f"{_NEEDED} Nothing was published.",
            screening_id=standing.screening_id,
            reasons=list(standing.reasons),
        )
