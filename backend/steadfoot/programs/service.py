"""Publishing programs, reading them back, and looking one over.

Other steps of the workflow ask here: which versions a client had, which was in force on a day, and to publish
a new one after a person has decided.
"""

import json
from collections import defaultdict
from collections.abc import Sequence
from datetime import datetime
from functools import lru_cache

from sqlalchemy.exc import IntegrityError
from sqlmodel import Session

from steadfoot.core.clock import local_date
from steadfoot.core.ids import uuid7
from steadfoot.core.problems import Invalid, Stale, not_found
from steadfoot.core.texts import canonical
from steadfoot.exercises.service import entries_for
from steadfoot.exercises.shelf import Shelf, library_of, shelf_of
from steadfoot.identity import service as identity
from steadfoot.identity.access import PractitionerAccess
from steadfoot.programs import store
from steadfoot.programs.adjust import (
    Adjusted,
    ease_off_client,
    ease_off_region,
    prescriptions_loading,
    progress_client,
)
from steadfoot.programs.changed import changed_prescriptions
from steadfoot.programs.changes import changes
from steadfoot.programs.checks import validate
from steadfoot.programs.content import ProgramContent, normalise, to_json
from steadfoot.programs.findings import Finding, Severity
from steadfoot.programs.plan import Planned, Version, in_force, planned_between, planned_of
from steadfoot.programs.tables import ProgramVersion
from steadfoot.rules.vocabulary import Kit

__all__ = [
    "Adjusted",
    "Planned",
    "ProgramContent",
    "Version",
    "changes_since",
    "current",
    "ease_off_client",
    "ease_off_region",
    "etag",
    "findings_for",
    "in_force",
    "kit_of",
    "planned_between",
    "planned_of",
    "prescriptions_loading",
    "progress_client",
    "publish",
    "version_numbered",
    "versions_of",
    "versions_of_practice",
]

_CONTENTS_KEPT = 512


@lru_cache(maxsize=_CONTENTS_KEPT)
def _content(text: str) -> ProgramContent:
    """Read a stored content; published ones never change, so each is read once."""
    return ProgramContent.model_validate_json(text)


def _version(row: ProgramVersion, shelf: Shelf) -> Version:
    return Version(
        id=row.id,
        number=row.number,
        published_at=row.published_at,
        effective_on=row.effective_on,
        published_by=row.published_by,
        note=row.note,
        changes=tuple(json.loads(row.changes)),
        content=_content(row.content),
        library=shelf.library(row.published_at),
    )


def etag(number: int | None) -> str:
    """Answer the entity tag of a client's current program; "0" where there is none yet."""
    return f'"{number or 0}"'


def versions_of(session: Session, practice_id: str, client_id: str) -> list[Version]:
    """Answer all published versions of a client, oldest first."""
    shelf = shelf_of(session, practice_id)
    return [_version(row, shelf) for row in store.versions(session, practice_id, client_id)]


def versions_of_practice(session: Session, practice_id: str) -> dict[str, list[Version]]:
    """Answer the versions of every client by client id, oldest first: one query for a caseload."""
    found: dict[str, list[Version]] = defaultdict(list)
    shelf = shelf_of(session, practice_id)
    for row in store.practice_versions(session, practice_id):
        found[row.client_id].append(_version(row, shelf))
    return dict(found)


def current(session: Session, practice_id: str, client_id: str) -> Version | None:
    """Answer a client's newest version, or None before the first one."""
    row = store.newest(session, practice_id, client_id)
    return _version(row, shelf_of(session, practice_id)) if row else None


def version_numbered(session: Session, practice_id: str, client_id: str, number: int) -> Version:
    """Answer one version by its number.

    Raises:
        NotFound: the client has no such version, or is another practice's.
    """
    row = store.version(session, practice_id, client_id, number)
    if row is None:
        raise not_found("program version")
    return _version(row, shelf_of(session, practice_id))


def kit_of(session: Session, practice_id: str, client_id: str) -> frozenset[Kit]:
    """Answer what a client has in the house.

    Raises:
        NotFound: unknown, or another practice's.
    """
    client = identity.client_of(session, practice_id, client_id)
    return frozenset(Kit(code) for code in client.kit)


def findings_for(
    session: Session, practice_id: str, client_id: str, content: ProgramContent, now: datetime
) -> list[Finding]:
    """Answer what does not fit in a program for a client, errors first.

    Raises:
        NotFound: unknown, or another practice's.
    """
    client = identity.client_of(session, practice_id, client_id)
    kit = kit_of(session, practice_id, client_id)
    return validate(content, kit, library_of(session, practice_id), local_date(now, client.time_zone))


def changes_since(session: Session, practice_id: str, before: Version | None, content: ProgramContent) -> list[str]:
    """Answer what would change for the client, a sentence each."""
    return changes(before.content if before else None, content, library_of(session, practice_id))


def publish(
    session: Session,
    access: PractitionerAccess,
    client_id: str,
    content: ProgramContent,
    base: int | None,
    note: str,
    now: datetime,
) -> Version:
    """Publish a new version: stored for good, announced to the phone, in force from the client's day on.

    Args:
        session: the open transaction of a writer.
        access: who publishes; the client must be of the same practice.
        client_id: whose program it is.
        content: what to publish; it is normalised here.
        base: number of the version that the content was made from, 0 for none; None skips the guard.
        note: why, for the record.
        now: the present instant.

    Raises:
        NotFound: unknown client, or another practice's.
        Stale: a newer version than ``base`` is there; carries ``current_number``.
        Invalid: the content has errors; names each place.
    """
    client = identity.client_of(session, access.practice_id, client_id)
    before = current(session, access.practice_id, client_id)
    _guard_base(base, before)
    _refuse_errors(findings_for(session, access.practice_id, client_id, content, now))
    content = normalise(content)
    said = changes_since(session, access.practice_id, before, content)
    row = ProgramVersion(
        id=uuid7(now),
        practice_id=access.practice_id,
        client_id=client_id,
        number=(before.number if before else 0) + 1,
        published_at=now,
        published_by=access.practitioner_id,
        effective_on=local_date(now, client.time_zone),
        note=note,
        changes=canonical(said),
        content=canonical(to_json(content)),
    )
    _add(session, row)
    version = _version(row, shelf_of(session, access.practice_id))
    identity.announce(session, client, "program", _for_phone(version, before), now)
    return version


def _guard_base(base: int | None, before: Version | None) -> None:
    number = before.number if before else 0
    if base is not None and base != number:
        raise _stale(number)


def _stale(number: int) -> Stale:
    text = f"Version {number} was published meanwhile." if number else "Nothing is published for this client yet."
    return Stale("stale", text, headers={"ETag": etag(number)}, current_number=number or None)


def _refuse_errors(findings: Sequence[Finding]) -> None:
    found = [one for one in findings if one.severity is Severity.ERROR]
    if found:
        errors = [{"pointer": f"/body/content{one.pointer}", "code": one.code, "detail": one.message} for one in found]
        word = "1 error" if len(found) == 1 else f"{len(found)} errors"
        raise Invalid("program-has-errors", f"The program has {word}. Nothing was published.", errors=errors)


def _add(session: Session, row: ProgramVersion) -> None:
    """Add a version; on databases with several writers the unique number decides between two at once."""
    try:
        with session.begin_nested():
            session.add(row)
    except IntegrityError as error:
        raise _stale(row.number) from error


def _for_phone(version: Version, before: Version | None) -> dict[str, object]:
    content = to_json(version.content)
    content.pop("season", None)  # why the days lie where they lie is the practice's own
    return {
        "id": version.id,
        "number": version.number,
        "published_at": version.published_at.isoformat(timespec="milliseconds").replace("+00:00", "Z"),
        "effective_on": version.effective_on.isoformat(),
        "changes": list(version.changes),
        "changed": changed_prescriptions(before.content if before else None, version.content, version.library),
        "content": content,
        "exercises": entries_for(content, version.library),
    }
