"""HTTP for screening and clearance."""

from typing import Any

from fastapi import APIRouter, Request

from steadfoot.core.database import ReadSession, WriteSession
from steadfoot.identity import service as identity
from steadfoot.identity.access import ByEither, ByPractitioner, Now
from steadfoot.intake import replies, service
from steadfoot.intake.schemas import (
    ClearanceBody,
    ClearanceOut,
    QuestionList,
    ScreeningBody,
    ScreeningList,
    ScreeningOut,
)

router = APIRouter(prefix="/api/v1", tags=["intake"])
_NOT_SCREENED: dict[int | str, dict[str, Any]] = {409: {"description": "There is no screening to clear yet."}}


@router.get("/screening/questions", operation_id="listScreeningQuestions")
def get_questions(_practice: ByEither) -> QuestionList:
    """What is asked before a program, for practitioner and phone."""
    return replies.questions()


@router.get("/clients/{client_id}/screenings", operation_id="listScreenings")
def get_screenings(client_id: str, access: ByPractitioner, session: ReadSession) -> ScreeningList:
    """Screenings, newest first, with outcome, reasons and clearance; and where the client stands."""
    return replies.screenings(session, access.practice_id, client_id)


@router.post("/clients/{client_id}/screenings", operation_id="screenClient", status_code=201)
def post_screening(
    client_id: str, body: ScreeningBody, access: ByPractitioner, session: WriteSession, at: Now, request: Request
) -> ScreeningOut:
    """Keep answers taken with the practitioner; the newest screening counts."""
    row = service.screen(session, access, client_id, body, at)
    request.app.state.client_changed(session, access.practice_id, client_id)
    return replies.screening_of(row, None, identity.practitioner_names(session, access.practice_id))


@router.post(
    "/clients/{client_id}/clearances", operation_id="recordClearance", status_code=201, responses=_NOT_SCREENED
)
def post_clearance(
    client_id: str, body: ClearanceBody, access: ByPractitioner, session: WriteSession, at: Now, request: Request
) -> ClearanceOut:
    """Record that someone licensed has cleared the client; it answers one screening."""
    row = service.clear(session, access, client_id, body, at)
    request.app.state.client_changed(session, access.practice_id, client_id)
    return replies.clearance_of(row, identity.practitioner_names(session, access.practice_id))
