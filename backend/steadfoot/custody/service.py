"""Erasing at once or later, taking that back, and which records are past their time."""

import unicodedata
from datetime import datetime, timedelta
from pathlib import Path
from typing import Final

from sqlmodel import Session

from steadfoot.audit import service as audit
from steadfoot.audit.service import Act, Actor, ActorKind
from steadfoot.core.database import Database, after_commit
from steadfoot.core.ids import uuid7
from steadfoot.core.problems import Conflict, Invalid, not_found
from steadfoot.custody import store
from steadfoot.custody.erase import apply_again, erase, wipe
from steadfoot.custody.schemas import (
    Due,
    ErasureBody,
    ErasureDone,
    ErasureOut,
    ErasureState,
    RetentionBody,
    RetentionOut,
    When,
)
from steadfoot.custody.tables import Erasure, RetentionChoice
from steadfoot.identity import service as identity
from steadfoot.identity.access import PractitionerAccess

__all__ = [
    "apply_again",
    "carry_out_due",
    "due_everywhere",
    "due_records",
    "erase_client",
    "retention_of",
    "set_retention",
    "take_back",
]

UNDO_DAYS: Final = 14
"""Days between asking for an erasure and doing it, unless it is asked for at once. House value."""
_KEPT_JOB = "eraseClient"


def _same_name(typed: str, name: str) -> bool:
    def plain(text: str) -> str:
        return " ".join(unicodedata.normalize("NFC", text).casefold().split())

    return plain(typed) == plain(name)


def state_of(session: Session, practice_id: str, client_id: str) -> ErasureState:
    """Answer what would go, and whether it is asked for already.

    Raises:
        NotFound: the client is unknown, or another practice's.
    """
    identity.client_of(session, practice_id, client_id)
    asked = store.erasure(session, practice_id, client_id)
    found = store.counts(session, practice_id, client_id)
    return ErasureState(
        asked=_out(asked) if asked else None,
        entries=found["event"] + found["refused_event"],
        programs=found["program_version"],
        tests=found["test_result"] + found["functional_scale"],
        screenings=found["screening"] + found["clearance"],
        messages=found["message"],
        notes=found["readiness_note"] + found["flag_decision"] + found["progression_decision"],
        phones=found["device"],
        log_rows_kept=found["audit_entry"],
        undo_days=UNDO_DAYS,
    )


def _out(row: Erasure) -> ErasureOut:
    return ErasureOut(client_id=row.client_id, asked_at=row.asked_at, due_at=row.due_at)


def erase_client(
    session: Session,
    database: Database,
    ledger: Path,
    access: PractitionerAccess,
    client_id: str,
    body: ErasureBody,
    now: datetime,
) -> ErasureDone:
    """Erase a client's record at once, or archive it now and erase it later.

    Raises:
        NotFound: the client is unknown, or another practice's.
        Invalid: the name that was typed is not the client's.
        Conflict: it is asked for already.
    """
    client = identity.client_of(session, access.practice_id, client_id)
    if not _same_name(body.name, client.display_name):
        detail = "This is not the person's name as it stands on their page."
        raise Invalid("name-differs", detail, errors=[{"pointer": "/body/name", "code": "differs", "detail": detail}])
    if body.when is When.NOW:
        erase(session, ledger, access.practice_id, client_id, now)
        after_commit(session, wipe(database))
        return ErasureDone(erased=True, asked=None)
    if store.erasure(session, access.practice_id, client_id):
        raise Conflict("asked-already", "This record is to be erased already.")
    row = Erasure(
        client_id=client_id,
        practice_id=access.practice_id,
        asked_at=now,
        asked_by=access.practitioner_id,
        due_at=now + timedelta(days=UNDO_DAYS),
        archived_before=client.archived_at is not None,
    )
    session.add(row)
    identity.set_archived(session, client, now)
    return ErasureDone(erased=False, asked=_out(row))


def take_back(session: Session, practice_id: str, client_id: str) -> None:
    """Keep a record that was to be erased; who was not archived before comes back into the caseload.

    Raises:
        NotFound: nothing is asked for, or the client is unknown or another practice's.
    """
    client = identity.client_of(session, practice_id, client_id)
    row = store.erasure(session, practice_id, client_id)
    if row is None:
        raise not_found("erasure")
    if not row.archived_before:
        identity.set_archived(session, client, None)
    session.delete(row)


def carry_out_due(database: Database, ledger: Path, now: datetime) -> int:
    """Erase every record whose time to take it back is over; answer how many."""
    with database.read() as session:
        due = [(row.practice_id, row.client_id) for row in store.due_erasures(session, now)]
    for practice_id, client_id in due:
        with database.write() as session:
            row = store.erasure(session, practice_id, client_id)
            if row is None or row.due_at > now:
                continue  # taken back a moment ago
            erase(session, ledger, practice_id, client_id, now)
            actor = Actor(ActorKind.SERVER, practice_id)
            audit.record(session, Act(actor, _KEPT_JOB, now, uuid7(now), client_id))
    if due:
        wipe(database)()
    return len(due)


def _years_on(since: datetime, years: int) -> datetime:
    try:
        return since.replace(year=since.year + years)
    except ValueError:
        return since.replace(year=since.year + years, month=3, day=1)  # of a 29 February


def due_records(session: Session, practice_id: str, years: int | None, now: datetime) -> list[Due]:
    """Answer the archived clients who are past the practice's time, longest first. None is ever erased by itself."""
    if years is None:
        return []
    asked = {row.client_id for row in store.erasures(session, practice_id)}
    archived = [(one.archived_at, one) for one in identity.clients_of(session, practice_id) if one.archived_at]
    found = [
        Due(client_id=one.id, display_name=one.display_name, archived_at=at, due_since=_years_on(at, years))
        for at, one in archived
        if _years_on(at, years) <= now and one.id not in asked
    ]
    return sorted(found, key=lambda due: (due.due_since, due.client_id))


def due_everywhere(session: Session, now: datetime) -> dict[str, list[Due]]:
    """Answer who is due in each practice that has chosen, for whoever runs the server."""
    return {one.practice_id: due_records(session, one.practice_id, one.years, now) for one in store.choices(session)}


def retention_of(session: Session, practice_id: str, now: datetime) -> RetentionOut:
    """Answer what the practice has chosen, who is due, and what is to be erased."""
    choice = store.choice(session, practice_id)
    years = choice.years if choice else None
    return RetentionOut(
        chosen_at=choice.chosen_at if choice else None,
        years=years,
        due=due_records(session, practice_id, years, now),
        erasures=[_out(row) for row in store.erasures(session, practice_id)],
        names={one.id: one.display_name for one in identity.clients_of(session, practice_id) if one.archived_at},
    )


def set_retention(session: Session, access: PractitionerAccess, body: RetentionBody, now: datetime) -> None:
    """Keep the practice's choice."""
    row = store.choice(session, access.practice_id)
    if row is None:
        row = RetentionChoice(
            practice_id=access.practice_id, years=body.years, chosen_at=now, chosen_by=access.practitioner_id
        )
    row.years, row.chosen_at, row.chosen_by = body.years, now, access.practitioner_id
    session.add(row)
    session.flush()
