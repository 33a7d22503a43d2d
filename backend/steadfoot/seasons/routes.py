"""HTTP for seasons. Nothing is stored here: a season is kept as the draft of a program."""

from typing import Any

from fastapi import APIRouter

from steadfoot.core.database import ReadSession
from steadfoot.identity import service as identity
from steadfoot.identity.access import ByPractitioner, Now
from steadfoot.programs.content import ProgramContent
from steadfoot.seasons import replies, service
from steadfoot.seasons.schemas import LayOutBody, ResumeBody, Resumption, SeasonBody, SeasonOut, SeasonStart

router = APIRouter(prefix="/api/v1", tags=["seasons"])
_NOT_POSSIBLE: dict[int | str, dict[str, Any]] = {
    422: {"description": "It contradicts itself: carries short_by, unit and choices that would help."}
}


@router.get("/clients/{client_id}/season-plan", operation_id="readSeasonStart")
def get_start(client_id: str, access: ByPractitioner, session: ReadSession, at: Now) -> SeasonStart:
    """What a season was planned from, else what is known to plan one: the trip, the longest walk of late."""
    return service.start_of(session, access, client_id, at)


@router.post("/clients/{client_id}/season-plans", operation_id="planSeason", responses=_NOT_POSSIBLE)
def post_plan(client_id: str, body: SeasonBody, access: ByPractitioner, session: ReadSession) -> SeasonOut:
    """The weeks up to the trip as the rules propose them, and what falls short; nothing is saved."""
    identity.client_of(session, access.practice_id, client_id)
    return replies.season_of(service.planned(body.season), body.season)


@router.post("/clients/{client_id}/season-plans/resumptions", operation_id="resumeSeason", responses=_NOT_POSSIBLE)
def post_resumption(client_id: str, body: ResumeBody, access: ByPractitioner, session: ReadSession) -> Resumption:
    """The rest of a season after a pause, a step back from where it stood; nothing is saved."""
    identity.client_of(session, access.practice_id, client_id)
    return service.resumption(body)


@router.post("/clients/{client_id}/season-plans/contents", operation_id="layOutSeason", responses=_NOT_POSSIBLE)
def post_content(
    client_id: str, body: LayOutBody, access: ByPractitioner, session: ReadSession, at: Now
) -> ProgramContent:
    """A season laid into a program, to look over and keep as a draft; nothing is saved."""
    return service.content_of(session, access.practice_id, client_id, body, at)
