"""HTTP for programs, drafts and templates."""

import re
from typing import Annotated, Any, Literal

from fastapi import APIRouter, Header, Path, Request, Response

from steadfoot.core.database import ReadSession, WriteSession
from steadfoot.core.problems import not_found
from steadfoot.identity import service as identity
from steadfoot.identity.access import ByPractitioner, Now
from steadfoot.programs import clearance, drafts, replies, service, templates
from steadfoot.programs.content import ProgramContent
from steadfoot.programs.schemas import (
    CheckBody,
    ChecksOut,
    DraftBody,
    DraftOut,
    FromTemplateBody,
    ProgramList,
    ProgramOut,
    PublishBody,
    TemplateBody,
    TemplateList,
    TemplateOut,
    TemplatePatch,
)

router = APIRouter(prefix="/api/v1", tags=["programs"])
IfMatch = Annotated[str | None, Header(max_length=40, description="ETag that the change was made from.")]
IfNoneMatch = Annotated[
    Literal["*"] | None, Header(description="The asterisk: only where there is no draft yet; otherwise 412.")
]
Number = Annotated[int, Path(ge=1, le=1_000_000, description="Number of the version, 1 for the first.")]
_STALE: dict[int | str, dict[str, Any]] = {412: {"description": "Someone else changed it first."}}
_NOT_NOW = _STALE | {409: {"description": "The screening asks for a clearance that is not recorded."}}
_TAKEN: dict[int | str, dict[str, Any]] = {409: {"description": "Another template has that name."}}
_SHIPPED: dict[int | str, dict[str, Any]] = {409: {"description": "It comes with the program."}}
_NO_VERSION = -1


def _base(if_match: str | None) -> int | None:
    """Answer the version number in If-Match; a tag that is none of ours matches no version."""
    if if_match is None:
        return None
    found = re.fullmatch(r'(?:W/)?"?([0-9]{1,7})"?', if_match.strip())
    return int(found.group(1)) if found else _NO_VERSION


@router.get("/templates", operation_id="listTemplates")
def get_templates(access: ByPractitioner, session: ReadSession) -> TemplateList:
    """Programs without dates: the practice's own, then those that come with the program."""
    return TemplateList(items=templates.all_templates(session, access.practice_id))


@router.post("/templates", operation_id="createTemplate", status_code=201, responses=_TAKEN)
def post_template(body: TemplateBody, access: ByPractitioner, session: WriteSession, at: Now) -> TemplateOut:
    """Keep a program without dates for the practice."""
    return templates.save_template(session, access.practice_id, body, at)


@router.patch("/templates/{template_id}", operation_id="updateTemplate", responses=_TAKEN)
def patch_template(template_id: str, body: TemplatePatch, access: ByPractitioner, session: WriteSession) -> TemplateOut:
    """Rename a template of the practice or describe it anew."""
    return templates.change_template(session, access.practice_id, template_id, body)


@router.delete("/templates/{template_id}", operation_id="deleteTemplate", status_code=204, responses=_SHIPPED)
def delete_template(template_id: str, access: ByPractitioner, session: WriteSession) -> None:
    """Take a template of the practice away; programs that were laid out from it stay."""
    templates.delete_template(session, access.practice_id, template_id)


@router.post("/clients/{client_id}/programs/drafts/from-template", operation_id="layOutTemplate")
def post_from_template(
    client_id: str, body: FromTemplateBody, access: ByPractitioner, session: ReadSession
) -> ProgramContent:
    """A template laid onto the calendar, to look over and change; nothing is saved."""
    identity.client_of(session, access.practice_id, client_id)
    return templates.lay_out(templates.template_of(session, access.practice_id, body.template), body)


@router.get("/clients/{client_id}/programs/draft", operation_id="readDraft")
def get_draft(client_id: str, access: ByPractitioner, session: ReadSession, response: Response) -> DraftOut:
    """The program in the making, as it was last saved, with an ETag."""
    draft = drafts.draft_of(session, access, client_id)
    response.headers["ETag"] = drafts.draft_etag(draft.version, draft.saved_at)
    return draft


@router.put("/clients/{client_id}/programs/draft", operation_id="saveDraft", responses=_STALE)
def put_draft(
    client_id: str,
    body: DraftBody,
    access: ByPractitioner,
    session: WriteSession,
    at: Now,
    response: Response,
    if_match: IfMatch = None,
    if_none_match: IfNoneMatch = None,
) -> DraftOut:
    """Keep the program in the making; it may still have problems. Both headers guard a colleague's draft."""
    guard = drafts.NONE_YET if if_none_match else if_match
    draft = drafts.save_draft(session, access, client_id, body, guard, at)
    response.headers["ETag"] = drafts.draft_etag(draft.version, draft.saved_at)
    return draft


@router.delete("/clients/{client_id}/programs/draft", operation_id="dropDraft", status_code=204)
def delete_draft(client_id: str, access: ByPractitioner, session: WriteSession) -> None:
    """Throw the program in the making away; what is published stays."""
    drafts.drop_draft(session, access, client_id)


@router.post("/clients/{client_id}/programs/checks", operation_id="checkProgram")
def post_check(client_id: str, body: CheckBody, access: ByPractitioner, session: ReadSession, at: Now) -> ChecksOut:
    """What does not fit, what would change for the client, and the minutes and load it asks for."""
    found = service.findings_for(session, access.practice_id, client_id, body.content, at)
    found = clearance.with_clearance(session, access.practice_id, client_id, found)
    before = service.current(session, access.practice_id, client_id)
    changed = service.changes_since(session, access.practice_id, before, body.content)
    return replies.checks_of(body.content, found, changed)


@router.post("/clients/{client_id}/programs", operation_id="publishProgram", status_code=201, responses=_NOT_NOW)
def post_program(
    client_id: str,
    body: PublishBody,
    access: ByPractitioner,
    session: WriteSession,
    at: Now,
    request: Request,
    response: Response,
    if_match: IfMatch = None,
) -> ProgramOut:
    """Publish a version; it never changes again, and the phone has it at its next contact."""
    clearance.refuse_uncleared(session, access.practice_id, client_id)
    version = service.publish(session, access, client_id, body.content, _base(if_match), body.note, at)
    drafts.drop_draft(session, access, client_id)
    request.app.state.client_changed(session, access.practice_id, client_id)
    response.headers["ETag"] = service.etag(version.number)
    response.headers["Location"] = f"{request.url.path}/{version.number}"
    return replies.program_of(version, identity.practitioner_names(session, access.practice_id))


@router.get("/clients/{client_id}/programs/current", operation_id="readCurrentProgram")
def get_current(client_id: str, access: ByPractitioner, session: ReadSession, response: Response) -> ProgramOut:
    """The newest version, with an ETag."""
    identity.client_of(session, access.practice_id, client_id)
    version = service.current(session, access.practice_id, client_id)
    if version is None:
        raise not_found("program")
    response.headers["ETag"] = service.etag(version.number)
    return replies.program_of(version, identity.practitioner_names(session, access.practice_id))


@router.get("/clients/{client_id}/programs", operation_id="listPrograms")
def get_programs(client_id: str, access: ByPractitioner, session: ReadSession) -> ProgramList:
    """All versions, newest first, without their contents."""
    identity.client_of(session, access.practice_id, client_id)
    names = identity.practitioner_names(session, access.practice_id)
    found = service.versions_of(session, access.practice_id, client_id)
    return ProgramList(items=[replies.summary_of(version, names) for version in reversed(found)])


@router.get("/clients/{client_id}/programs/{number}", operation_id="readProgram")
def get_program(client_id: str, number: Number, access: ByPractitioner, session: ReadSession) -> ProgramOut:
    """One version by its number."""
    version = service.version_numbered(session, access.practice_id, client_id, number)
    return replies.program_of(version, identity.practitioner_names(session, access.practice_id))
