"""Writes a practice's own movements: new ones, new versions, archived and back."""

import json
from collections.abc import Mapping, Sequence
from datetime import datetime

from sqlalchemy.exc import IntegrityError
from sqlmodel import Session

from steadfoot.core.ids import new_code, uuid7
from steadfoot.core.problems import Conflict, Invalid, Stale, not_found
from steadfoot.core.texts import canonical
from steadfoot.exercises import own_store
from steadfoot.exercises.own_schemas import FindingOut, OwnBody, OwnOut
from steadfoot.exercises.schemas import ExerciseText
from steadfoot.exercises.service import offered
from steadfoot.exercises.shelf import OWN, library_of, out_of
from steadfoot.exercises.tables import OwnExercise, OwnExerciseVersion
from steadfoot.identity.access import PractitionerAccess

OWN_MAX = 200
"""House: how many movements of its own a practice may have, archived ones included."""
Findings = Mapping[str, Sequence[FindingOut]]


def etag(out: OwnOut) -> str:
    """Answer the entity tag of a movement of the practice's own."""
    return f'"{out.version}{"a" if out.archived else ""}"'


def own_exercise(session: Session, practice_id: str, code: str) -> OwnOut:
    """Answer one of the practice's own movements, to go on with.

    Raises:
        NotFound: unknown, or another practice's.
    """
    row = _row(session, practice_id, code)
    newest = own_store.newest(session, practice_id, code)
    assert newest is not None, "a movement is stored with its first version"
    return out_of(newest, archived=row.archived_at is not None)


def create(session: Session, access: PractitionerAccess, body: OwnBody, findings: Findings, now: datetime) -> OwnOut:
    """Keep a new movement of the practice's own.

    Raises:
        Conflict: its name is taken, or there are too many.
    """
    if len(own_store.exercises(session, access.practice_id)) >= OWN_MAX:
        raise Conflict("too-many-exercises", f"A practice can have {OWN_MAX} exercises of its own.")
    _refuse_taken_name(session, access.practice_id, body.text.name, None)
    code = f"{OWN}{uuid7(now).replace('-', '')}"
    session.add(OwnExercise(code=code, practice_id=access.practice_id, created_at=now, archived_at=None))
    session.flush()
    _add_version(session, access, code, 1, body, findings, now)
    return own_exercise(session, access.practice_id, code)


def change(
    session: Session,
    access: PractitionerAccess,
    code: str,
    body: OwnBody,
    findings: Findings,
    if_match: str | None,
    now: datetime,
) -> OwnOut:
    """Write the next version of a movement.

    Raises:
        NotFound: unknown, or another practice's.
        Stale: a newer version than the one changed is there.
        Conflict: its name is taken.
        Invalid: a variant that was there is gone.
    """
    before = own_exercise(session, access.practice_id, code)
    _guard(before, if_match)
    _refuse_lost_variants(before.text, body.text)
    _refuse_taken_name(session, access.practice_id, body.text.name, code)
    _add_version(session, access, code, before.version + 1, body, findings, now)
    return own_exercise(session, access.practice_id, code)


def archive(
    session: Session, practice_id: str, code: str, archived: bool, if_match: str | None, now: datetime
) -> OwnOut:
    """Offer a movement no more, or again.

    Raises:
        NotFound: unknown, or another practice's.
        Stale: someone else changed it first.
        Conflict: it would come back to a name that is taken meanwhile.
    """
    row, before = _row(session, practice_id, code), own_exercise(session, practice_id, code)
    _guard(before, if_match)
    if not archived:
        _refuse_taken_name(session, practice_id, before.text.name, code)
    row.archived_at = (row.archived_at or now) if archived else None
    session.add(row)
    session.flush()
    return own_exercise(session, practice_id, code)


def _row(session: Session, practice_id: str, code: str) -> OwnExercise:
    row = own_store.exercise(session, practice_id, code)
    if row is None:
        raise not_found("exercise")
    return row


def _guard(before: OwnOut, if_match: str | None) -> None:
    if if_match is not None and if_match.strip().removeprefix("W/") not in (etag(before), "*"):
        raise _stale(before)


def _stale(before: OwnOut) -> Stale:
    text = "A colleague changed this exercise meanwhile."
    return Stale("stale", text, headers={"ETag": etag(before)}, current_number=before.version)


def _refuse_taken_name(session: Session, practice_id: str, name: str, code: str | None) -> None:
    known = offered(library_of(session, practice_id))
    if any(one.name.casefold() == name.casefold() and one.code != code for one in known.values()):
        raise Conflict("exercise-name-taken", "There is already an exercise of that name. Choose another name.")


def _refuse_lost_variants(before: ExerciseText, after: ExerciseText) -> None:
    kept = {rung.variant for rung in after.ladder}
    lost = [rung.name for rung in before.ladder if rung.variant not in kept]
    if lost:
        detail = "A variant that was saved stays: records name it. Word it anew instead."
        errors = [{"pointer": "/body/text/ladder", "code": "variant-lost", "detail": detail}]
        raise Invalid("variant-lost", detail, errors=errors)


def _add_version(
    session: Session,
    access: PractitionerAccess,
    code: str,
    number: int,
    body: OwnBody,
    findings: Findings,
    now: datetime,
) -> None:
    """Add a version; on databases with several writers the unique number decides between two at once."""
    poses = {name: one.model_dump(mode="json", by_alias=True, exclude_none=True) for name, one in body.poses.items()}
    row = OwnExerciseVersion(
        drawing=f"{OWN}{new_code().lower()}",
        practice_id=access.practice_id,
        code=code,
        number=number,
        saved_at=now,
        saved_by=access.practitioner_id,
        text=canonical(body.text.model_dump(mode="json")),
        poses=json.dumps(poses, separators=(",", ":")),  # keys keep their order: props are drawn in it
        findings=canonical({name: [one.model_dump(mode="json") for one in found] for name, found in findings.items()}),
    )
    try:
        with session.begin_nested():
            session.add(row)
    except IntegrityError as error:
        raise _stale(own_exercise(session, access.practice_id, code)) from error
