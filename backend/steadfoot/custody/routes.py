"""HTTP for the log, the copy of a record, its erasure, and how long records are kept."""

from typing import Annotated, Any

from fastapi import APIRouter, Query, Request, Response
from fastapi.responses import StreamingResponse

from steadfoot.core.database import ReadSession, WriteSession, after_commit
from steadfoot.core.limits import Limiter
from steadfoot.core.texts import Day
from steadfoot.custody import log, log_files, service
from steadfoot.custody.copy_words import Language
from steadfoot.custody.log import Wanted
from steadfoot.custody.record_copy import RecordCopy, copy_of, zipped
from steadfoot.custody.schemas import (
    AuditPage,
    ChainState,
    ErasureBody,
    ErasureDone,
    ErasureState,
    RetentionBody,
    RetentionOut,
)
from steadfoot.identity.access import ByConfirmed, ByDevice, ByPractitioner, Now

router = APIRouter(prefix="/api/v1", tags=["records"])
_NUMBER_MAX = 2**53 - 1
"""The last integer that every reader of JSON keeps exactly."""
Id = Annotated[str | None, Query(pattern=r"^[0-9a-f-]{36}$")]


def _file(media: str) -> dict[int | str, dict[str, Any]]:
    return {200: {"content": {media: {}}, "description": "The file."}}


def _named(name: str) -> dict[str, str]:
    return {"Content-Disposition": f'attachment; filename="{name}"', "Cache-Control": "no-store"}


@router.get("/audit", operation_id="readAudit")
def get_audit(
    access: ByPractitioner,
    session: ReadSession,
    practitioner_id: Id = None,
    client_id: Id = None,
    day: Annotated[Day | None, Query(description="A day of the practice's time zone.")] = None,
    below: Annotated[int | None, Query(ge=1, le=_NUMBER_MAX, description="Only rows with a lower number.")] = None,
) -> AuditPage:
    """Who saw and did what, newest first."""
    return log.page_of(session, access, Wanted(practitioner_id, client_id, day), below)


@router.get("/audit/chain", operation_id="verifyAudit")
def get_chain(access: ByPractitioner, session: ReadSession) -> ChainState:
    """Whether every row follows from the one before, and the head to note elsewhere."""
    return log.state_of(session, access.practice_id)


@router.get(
    "/audit/rows.csv", operation_id="exportAuditTable", response_class=StreamingResponse, responses=_file("text/csv")
)
def get_table(
    access: ByConfirmed,
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
def get_lines(access: ByConfirmed, request: Request) -> Response:
    """The whole chain, a row a line, as an outsider needs it to check it."""
    lines = log_files.chain(request.app.state.database, access.practice_id)
    return StreamingResponse(lines, media_type="application/x-ndjson", headers=_named("access-log.jsonl"))


_COPIES = Limiter(tries=20, window_s=3600)
_ZIP = "application/zip"


def _copy(copy: RecordCopy, language: Language) -> Response:
    name = f"record-{copy.at.date().isoformat()}.zip"
    return Response(zipped(copy, language), media_type=_ZIP, headers=_named(name))


@router.get(
    "/clients/{client_id}/record.zip", operation_id="exportRecord", response_class=Response, responses=_file(_ZIP)
)
def get_record(
    client_id: str, access: ByConfirmed, session: ReadSession, at: Now, language: Language = "en"
) -> Response:
    """Everything that is held of a client, for programs and for people."""
    _COPIES.check(access.practitioner_id)
    return _copy(copy_of(session, access.practice_id, client_id, at), language)


@router.get("/record.zip", operation_id="exportOwnRecord", response_class=Response, responses=_file(_ZIP))
def get_own_record(device: ByDevice, session: ReadSession, at: Now, language: Language = "en") -> Response:
    """Everything that the practice holds of this phone's client."""
    _COPIES.check(device.client_id)
    return _copy(copy_of(session, device.practice_id, device.client_id, at), language)


@router.get("/clients/{client_id}/erasure", operation_id="readErasure")
def get_erasure(client_id: str, access: ByPractitioner, session: ReadSession) -> ErasureState:
    """What would go with a client's record, and whether that is asked for."""
    return service.state_of(session, access.practice_id, client_id)


@router.post("/clients/{client_id}/erasure", operation_id="eraseClient", status_code=201)
def post_erasure(
    client_id: str, body: ErasureBody, access: ByConfirmed, session: WriteSession, at: Now, request: Request
) -> ErasureDone:
    """Erase a client's record at once, or archive it and erase it later. The person's name confirms it."""
    state = request.app.state
    ledger = state.settings.erasures()
    done = service.erase_client(session, state.database, ledger, access, client_id, body, at)
    after_commit(session, lambda: state.pulse.beat(access.practice_id, client_id))
    return done


@router.delete("/clients/{client_id}/erasure", operation_id="keepClient", status_code=204)
def delete_erasure(client_id: str, access: ByPractitioner, session: WriteSession, request: Request) -> None:
    """Take back an erasure whose day has not come."""
    service.take_back(session, access.practice_id, client_id)
    after_commit(session, lambda: request.app.state.pulse.beat(access.practice_id, client_id))


@router.get("/retention", operation_id="readRetention")
def get_retention(access: ByPractitioner, session: ReadSession, at: Now) -> RetentionOut:
    """How long records are kept, who is past that time, and what is to be erased."""
    return service.retention_of(session, access.practice_id, at)


@router.put("/retention", operation_id="setRetention")
def put_retention(body: RetentionBody, access: ByPractitioner, session: WriteSession, at: Now) -> RetentionOut:
    """Say how long records of archived clients are kept. Nothing is erased by it."""
    service.set_retention(session, access, body, at)
    return service.retention_of(session, access.practice_id, at)
