"""HTTP for the caseload, one client's weeks, flags and messages."""

from typing import Annotated

from fastapi import APIRouter, Query, Request, Response
from sqlmodel import Session

from steadfoot.core.database import ReadSession, WriteSession, after_commit
from steadfoot.core.problems import Invalid
from steadfoot.identity.access import ByPractitioner, Now
from steadfoot.monitoring import decisions, flags, messages, overview, progression_routes
from steadfoot.monitoring.caseload import caseload_json
from steadfoot.monitoring.flags import FlagStatus
from steadfoot.monitoring.person_schemas import AdherenceOut, Caseload, Overview
from steadfoot.monitoring.schemas import Decided, DecisionBody, FlagList, MessageBody, MessageList, MessageOut
from steadfoot.programs.parts import Day

router = APIRouter(prefix="/api/v1")
router.include_router(progression_routes.router)


def _beat(request: Request, session: Session, practice_id: str, client_id: str) -> None:
    pulse = request.app.state.pulse
    after_commit(session, lambda: pulse.beat(practice_id, client_id))


@router.get("/caseload", operation_id="readCaseload", tags=["monitoring"], response_model=Caseload)
def get_caseload(access: ByPractitioner, session: ReadSession, at: Now) -> Response:
    """Every client, in the order in which they need someone, with the reason for each place."""
    return Response(caseload_json(session, access, at), media_type="application/json")


@router.get("/clients/{client_id}/adherence", operation_id="readAdherence", tags=["monitoring"])
def get_adherence(
    client_id: str,
    access: ByPractitioner,
    session: ReadSession,
    at: Now,
    from_: Annotated[Day | None, Query(alias="from")] = None,
    to: Day | None = None,
) -> AdherenceOut:
    """Planned sessions with their status, and adherence as a range; by default over the last 28 days."""
    if from_ is not None and to is not None and from_ > to:
        errors = [{"pointer": "/query/from", "code": "order", "detail": "Must not be after the last day."}]
        raise Invalid("span", "The first day is after the last.", errors=errors)
    return overview.client_adherence(session, access.practice_id, client_id, from_, to, at)


@router.get("/clients/{client_id}/overview", operation_id="readOverview", tags=["monitoring"])
def get_overview(client_id: str, access: ByPractitioner, session: ReadSession, at: Now) -> Overview:
    """One client whole."""
    return overview.overview(session, access.practice_id, client_id, at)


@router.get("/flags", operation_id="listFlags", tags=["flags"])
def get_flags(
    access: ByPractitioner,
    session: ReadSession,
    at: Now,
    status: FlagStatus | None = None,
    client_id: str | None = None,
) -> FlagList:
    """Findings on check-ins, the most urgent first, each with its rule, evidence and source."""
    return FlagList(items=flags.flags(session, access.practice_id, at, status, client_id))


@router.post("/flags/{flag_id}/decisions", operation_id="decideFlag", tags=["flags"], status_code=201)
def post_decision(
    flag_id: str, body: DecisionBody, access: ByPractitioner, session: WriteSession, at: Now, request: Request
) -> Decided:
    """Answer a flag. Easing off publishes a new program version; a message goes to the phone."""
    decided = decisions.decide(session, access, flag_id, body, at)
    _beat(request, session, access.practice_id, decided.flag.client_id)
    return decided


@router.get("/clients/{client_id}/messages", operation_id="listMessages", tags=["messages"])
def get_messages(client_id: str, access: ByPractitioner, session: ReadSession) -> MessageList:
    """Messages to a client, oldest first, with when each was read."""
    return MessageList(items=messages.listed(session, access.practice_id, client_id))


@router.post("/clients/{client_id}/messages", operation_id="sendMessage", tags=["messages"], status_code=201)
def post_message(
    client_id: str, body: MessageBody, access: ByPractitioner, session: WriteSession, at: Now, request: Request
) -> MessageOut:
    """Send words to a client's phone."""
    message = messages.send(session, access, client_id, body.text, None, at)
    _beat(request, session, access.practice_id, client_id)
    return message
