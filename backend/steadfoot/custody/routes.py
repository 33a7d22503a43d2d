"""HTTP for the log."""

from typing import Annotated, Any

from fastapi import APIRouter, Query, Request, Response
from fastapi.responses import StreamingResponse

from steadfoot.core.database import ReadSession
from steadfoot.core.texts import Day
from steadfoot.custody import log, log_files
from steadfoot.custody.log import Wanted
from steadfoot.custody.schemas import AuditPage, ChainState
from steadfoot.identity.access import ByKeeper

router = APIRouter(prefix="/api/v1", tags=["records"])
Id = Annotated[str | None, Query(pattern=r"^[0-9a-f-]{36}$")]


def _file(media: str) -> dict[int | str, dict[str, Any]]:
    return {200: {"content": {media: {}}, "description": "The file."}}


def _named(name: str) -> dict[str, str]:
    return {"Content-Disposition": f'attachment; filename="{name}"', "Cache-Control": "no-store"}


@router.get("/audit", operation_id="readAudit")
def get_audit(
    access: ByKeeper,
    session: ReadSession,
    practitioner_id: Id = None,
    client_id: Id = None,
    day: Annotated[Day | None, Query(description="A day of the practice's time zone.")] = None,
    below: Annotated[int | None, Query(ge=1, description="Only rows with a lower number.")] = None,
) -> AuditPage:
    """Who saw and did what, newest first."""
    return log.page_of(session, access, Wanted(practitioner_id, client_id, day), below)


@router.get("/audit/chain", operation_id="verifyAudit")
def get_chain(access: ByKeeper, session: ReadSession) -> ChainState:
    """Whether every row follows from the one before, and the head to note elsewhere."""
    return log.state_of(session, access.practice_id)


@router.get(
    "/audit/rows.csv", operation_id="exportAuditTable", response_class=StreamingResponse, responses=_file("text/csv")
)
def get_table(
    access: ByKeeper,
    request: Request,
    practitioner_id: Id = None,
    client_id: Id = None,
    day: Day | None = None,
) -> Response:
    """The rows as a table; no cell can be taken for a formula."""
    lines = log_files.table(request.app.state.database, access, Wanted(practitioner_id, client_id, day))
    return StreamingResponse(lines, media_type="text/csv; charset=utf-8", headers=_named("access-log.csv"))


@router.get(
    "/audit/rows.jsonl",
    operation_id="exportAuditChain",
    response_class=StreamingResponse,
    responses=_file("application/x-ndjson"),
)
def get_lines(access: ByKeeper, request: Request) -> Response:
    """The whole chain, a row a line, as an outsider needs it to check it."""
    lines = log_files.chain(request.app.state.database, access.practice_id)
    return StreamingResponse(lines, media_type="application/x-ndjson", headers=_named("access-log.jsonl"))
