"""HTTP for readiness and the notes on it."""

from typing import Any

from fastapi import APIRouter, Request

from steadfoot.core.database import ReadSession, WriteSession, after_commit
from steadfoot.identity.access import ByPractitioner, Now
from steadfoot.readiness import service
from steadfoot.readiness.schemas import ReadinessNoteBody, ReadinessOut, SignedNote

router = APIRouter(prefix="/api/v1", tags=["readiness"])
_REFUSED: dict[int | str, dict[str, Any]] = {
    409: {"description": "There is no trip, or go is not possible in this state."},
    412: {"description": "Something has changed since what the signer was shown."},
}


@router.get("/clients/{client_id}/readiness", operation_id="readReadiness")
def get_readiness(client_id: str, access: ByPractitioner, session: ReadSession, at: Now) -> ReadinessOut:
    """What the trip asks beside what the client has shown, item by item, and the notes that were signed."""
    return service.of_client(session, access.practice_id, client_id, at)


@router.post("/clients/{client_id}/readiness-notes", operation_id="signReadiness", status_code=201, responses=_REFUSED)
def post_note(
    client_id: str, body: ReadinessNoteBody, access: ByPractitioner, session: WriteSession, at: Now, request: Request
) -> SignedNote:
    """Sign go, adapt or defer with the reasons; kept as signed, with everything that it rested on."""
    note = service.sign(session, access, client_id, body, at)
    pulse = request.app.state.pulse
    after_commit(session, lambda: pulse.beat(access.practice_id, client_id))
    return note
