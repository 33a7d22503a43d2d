"""Drafts: at most one a client, kept until it is published or thrown away."""

from datetime import datetime

from sqlalchemy.exc import IntegrityError
from sqlmodel import Session

from steadfoot.core.problems import Stale, not_found
from steadfoot.core.texts import canonical
from steadfoot.identity import service as identity
from steadfoot.identity.access import PractitionerAccess
from steadfoot.programs import store
from steadfoot.programs.content import ProgramContent, to_json
from steadfoot.programs.schemas import DraftBody, DraftOut, PersonOut
from steadfoot.programs.tables import ProgramDraft

NONE_YET = "none"
"""Guard of a first draft: there must be none. No entity tag looks like it."""


def draft_etag(version: int, saved_at: datetime) -> str:
    """Answer the entity tag of a draft; the time tells it from an earlier draft that was thrown away."""
    return f'"d{version}-{saved_at.timestamp() * 1000:.0f}"'


def draft_of(session: Session, access: PractitionerAccess, client_id: str) -> DraftOut:
    """Answer a client's draft as it was sent, not normalised.

    Raises:
        NotFound: there is none, or the client is another practice's.
    """
    identity.client_of(session, access.practice_id, client_id)
    row = store.draft(session, access.practice_id, client_id)
    if row is None:
        raise not_found("draft")
    return _out(session, row)


def save_draft(
    session: Session,
    access: PractitionerAccess,
    client_id: str,
    body: DraftBody,
    guard: str | None,
    now: datetime,
) -> DraftOut:
    """Keep a draft in place of the one before.

    Raises:
        NotFound: unknown client, or another practice's.
        Stale: ``guard``, a tag or NONE_YET, names another state of the draft than the one that is kept.
    """
    identity.client_of(session, access.practice_id, client_id)
    row = store.draft(session, access.practice_id, client_id)
    _refuse_stale(row, guard)
    draft = ProgramDraft(
        client_id=client_id,
        practice_id=access.practice_id,
        base_number=body.base_number,
        version=(row.version if row else 0) + 1,
        saved_at=now,
        saved_by=access.practitioner_id,
        content=canonical(to_json(body.content)),
    )
    return _out(session, _stored(session, draft))


def _stored(session: Session, draft: ProgramDraft) -> ProgramDraft:
    """Store a draft; on databases with several writers two first ones at once must not end in a fault."""
    try:
        with session.begin_nested():
            return session.merge(draft)
    except IntegrityError as error:
        raise _stale(None) from error


def drop_draft(session: Session, access: PractitionerAccess, client_id: str) -> None:
    """Throw a client's draft away, if there is one.

    Raises:
        NotFound: unknown client, or another practice's.
    """
    identity.client_of(session, access.practice_id, client_id)
    row = store.draft(session, access.practice_id, client_id)
    if row is not None:
        session.delete(row)


def _refuse_stale(row: ProgramDraft | None, guard: str | None) -> None:
    kept = draft_etag(row.version, row.saved_at) if row else None
    if guard is not None and guard.strip().removeprefix("W/") != (kept or NONE_YET):
        raise _stale(kept)


def _stale(kept: str | None) -> Stale:
    return Stale("stale", "Someone saved this draft meanwhile.", headers={"ETag": kept} if kept else {})


def _out(session: Session, row: ProgramDraft) -> DraftOut:
    names = identity.practitioner_names(session, row.practice_id)
    return DraftOut(
        content=ProgramContent.model_validate_json(row.content),
        base_number=row.base_number,
        saved_at=row.saved_at,
        saved_by=PersonOut(id=row.saved_by, display_name=names[row.saved_by]),
        version=row.version,
    )
