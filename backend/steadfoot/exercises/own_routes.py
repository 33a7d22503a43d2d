"""HTTP for a practice's own movements and for the pose editor."""

from typing import Annotated, Any

from fastapi import APIRouter, Depends, Header, Query, Request, Response

from steadfoot.core.database import ReadSession, WriteSession
from steadfoot.core.texts import Code
from steadfoot.exercises import own
from steadfoot.exercises.figures.schema import Name
from steadfoot.exercises.judge import judge
from steadfoot.exercises.own_schemas import FindingOut, OwnBody, OwnOut, OwnPatch, PreviewBody, PreviewOut, StartOut
from steadfoot.exercises.preview import preview, start_from
from steadfoot.identity.access import ByPractitioner, Now

router = APIRouter(tags=["exercises"])
IfMatch = Annotated[str | None, Header(max_length=40, description="ETag that the change was made from.")]
_TAKEN: dict[int | str, dict[str, Any]] = {409: {"description": "The name is taken, or there are too many."}}
_STALE = _TAKEN | {412: {"description": "Someone else changed it first."}}
_BUSY: dict[int | str, dict[str, Any]] = {429: {"description": "Too many previews; with Retry-After."}}


async def _judged(request: Request, access: ByPractitioner, body: OwnBody) -> dict[str, list[FindingOut]]:
    """Look the drawings over before this writer's turn begins: it takes seconds, and phones wait behind a writer."""
    found: dict[str, list[FindingOut]] = await request.app.state.studio.work(
        access.practitioner_id, lambda: judge(body)
    )
    return found


Judged = Annotated[dict[str, list[FindingOut]], Depends(_judged)]


def _tagged(out: OwnOut, response: Response) -> OwnOut:
    response.headers["ETag"] = own.etag(out)
    return out


@router.post("/exercises/own", operation_id="createOwnExercise", status_code=201, responses=_TAKEN)
def post_own(
    body: OwnBody, access: ByPractitioner, found: Judged, session: WriteSession, at: Now, response: Response
) -> OwnOut:
    """Keep a movement of the practice's own. A drawing with findings is kept too, and not used."""
    return _tagged(own.create(session, access, body, found, at), response)


@router.get("/exercises/own/{own_code}", operation_id="readOwnExercise")
def get_own(own_code: str, access: ByPractitioner, session: ReadSession, response: Response) -> OwnOut:
    """The newest version of one of the practice's own movements, with an ETag."""
    return _tagged(own.own_exercise(session, access.practice_id, own_code), response)


@router.put("/exercises/own/{own_code}", operation_id="changeOwnExercise", responses=_STALE)
def put_own(
    own_code: str,
    body: OwnBody,
    access: ByPractitioner,
    found: Judged,
    session: WriteSession,
    at: Now,
    response: Response,
    if_match: IfMatch = None,
) -> OwnOut:
    """Write the next version; programs that are published keep theirs."""
    return _tagged(own.change(session, access, own_code, body, found, if_match, at), response)


@router.patch("/exercises/own/{own_code}", operation_id="archiveOwnExercise", responses=_STALE)
def patch_own(
    own_code: str,
    body: OwnPatch,
    access: ByPractitioner,
    session: WriteSession,
    at: Now,
    response: Response,
    if_match: IfMatch = None,
) -> OwnOut:
    """Offer it no more, or again; programs that have it keep it."""
    return _tagged(own.archive(session, access.practice_id, own_code, body.archived, if_match, at), response)


@router.post("/exercises/preview", operation_id="previewExercise", responses=_BUSY)
async def post_preview(body: PreviewBody, access: ByPractitioner, request: Request) -> PreviewOut:
    """A movement with one change, drawn and looked over; nothing is kept."""
    out: PreviewOut = await request.app.state.studio.work(access.practitioner_id, lambda: preview(body))
    return out


@router.get("/exercises/{code}/poses", operation_id="readPoses")
def get_poses(
    code: str,
    _access: ByPractitioner,
    variant: Annotated[Code, Query(description="A drawn variant of the library.")],
    key: Annotated[Name | None, Query(description="One key pose alone.")] = None,
) -> StartOut:
    """A drawn variant of the library to begin from."""
    return StartOut(movement=start_from(code, variant, key))
