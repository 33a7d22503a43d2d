"""Turns what intake keeps into reply bodies."""

import json
from collections.abc import Mapping

from sqlmodel import Session

from steadfoot.identity import service as identity
from steadfoot.intake import service, store
from steadfoot.intake.schemas import (
    ClearanceOut,
    QuestionList,
    QuestionOut,
    ScreeningAnswers,
    ScreeningList,
    ScreeningOut,
    ScreeningReason,
    source_work,
)
from steadfoot.intake.tables import Clearance, Screening
from steadfoot.rules import screening as rules
from steadfoot.rules.screening_questions import QUESTIONS
from steadfoot.rules.sources import citation

_WORK = citation(rules, "TABLE").source


def questions() -> QuestionList:
    """Answer the questions in the order in which they are asked."""
    items = [QuestionOut(code=one.code, question=one.text, help=one.help, maps_to=one.feeds) for one in QUESTIONS]
    return QuestionList(items=items, source=source_work(_WORK))


def screenings(session: Session, practice_id: str, client_id: str) -> ScreeningList:
    """Answer a client's screenings, newest first, each with its newest clearance.

    Raises:
        NotFound: the client is unknown, or another practice's.
    """
    standing = service.standing_of(session, practice_id, client_id)
    names = identity.practitioner_names(session, practice_id)
    given = {one.screening_id: one for one in store.clearances(session, practice_id, client_id)}
    found = store.screenings(session, practice_id, client_id)
    return ScreeningList(items=[screening_of(one, given.get(one.id), names) for one in found], state=standing.state)


def screening_of(row: Screening, cleared: Clearance | None, names: Mapping[str, str]) -> ScreeningOut:
    """Answer a screening; ``names`` are the practitioners' by id."""
    return ScreeningOut(
        id=row.id,
        answered_at=row.answered_at,
        local_day=row.local_day,
        source=row.source,  # type: ignore[arg-type]  # checked by the model
        answered_by=names.get(row.answered_by) if row.answered_by else None,
        answers=ScreeningAnswers.model_validate_json(row.answers),
        details=json.loads(row.details),
        outcome=row.outcome,  # type: ignore[arg-type]  # checked by the model
        reasons=[ScreeningReason(text=text) for text in json.loads(row.reasons)],
        source_work=source_work(_WORK),
        cleared=clearance_of(cleared, names) if cleared else None,
    )


def clearance_of(row: Clearance, names: Mapping[str, str]) -> ClearanceOut:
    """Answer a clearance; ``names`` are the practitioners' by id."""
    return ClearanceOut(
        id=row.id,
        screening_id=row.screening_id,
        given_on=row.given_on,
        given_by=row.given_by,
        note=row.note,
        recorded_by=names.get(row.recorded_by, ""),
        recorded_at=row.recorded_at,
    )
