"""Taking answers, saying what they ask for, recording clearances; and where a client stands, for later steps."""

import json
from collections.abc import Iterable, Mapping
from dataclasses import asdict, dataclass
from datetime import date, datetime
from typing import Any

from sqlmodel import Session

from steadfoot.core.clock import local_date
from steadfoot.core.ids import uuid7
from steadfoot.core.problems import Conflict, Invalid, not_found
from steadfoot.core.texts import canonical
from steadfoot.identity import service as identity
from steadfoot.identity.access import PractitionerAccess
from steadfoot.intake import store
from steadfoot.intake.schemas import ClearanceBody, ScreeningAnswered, ScreeningBody, ScreeningState
from steadfoot.intake.tables import Clearance, Screening
from steadfoot.rules import screening as rules

__all__ = ["PhoneAnswer", "Standing", "forget_answers", "record_answer", "standing_of"]


@dataclass(frozen=True, slots=True)
class Standing:
    """Where a client stands by their newest screening, and the reasons of its outcome."""

    state: ScreeningState
    screening_id: str | None
    reasons: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class PhoneAnswer:
    """What a client answered on the phone, as ``ScreeningAnswered`` has it, with the id of its event."""

    event_id: str
    answered_at: datetime
    local_day: date
    said: Mapping[str, Any]


_UNCLEARED = {
    rules.Clearance.NOT_NEEDED: ScreeningState.CLEAR,
    rules.Clearance.RECOMMENDED: ScreeningState.CLEARANCE_RECOMMENDED,
    rules.Clearance.REQUIRED: ScreeningState.CLEARANCE_REQUIRED,
}


def standing_of(session: Session, practice_id: str, client_id: str) -> Standing:
    """Answer where a client stands. A clearance answers the one screening that it was recorded for.

    Raises:
        NotFound: the client is unknown, or another practice's.
    """
    identity.client_of(session, practice_id, client_id)
    newest = store.newest(session, practice_id, client_id)
    if newest is None:
        return Standing(ScreeningState.NOT_SCREENED, None, ())
    given = {one.screening_id for one in store.clearances(session, practice_id, client_id)}
    state = _UNCLEARED[rules.Clearance(newest.outcome)]
    if newest.id in given and state is not ScreeningState.CLEAR:
        state = ScreeningState.CLEARED
    return Standing(state, newest.id, tuple(json.loads(newest.reasons)))


def _judged(answers: rules.Answers, details: Iterable[str]) -> dict[str, Any]:
    outcome = rules.screen(answers)
    return {
        "answers": canonical(asdict(answers)),
        "details": canonical(sorted(set(details))),
        "outcome": outcome.clearance.value,
        "reasons": canonical(outcome.reasons),
    }


def record_answer(session: Session, practice_id: str, client_id: str, answer: PhoneAnswer) -> None:
    """Keep what a client answered on the phone; the same event a second time changes nothing."""
    if store.screening(session, practice_id, client_id, answer.event_id) is not None:
        return
    row = {
        "id": answer.event_id,
        "practice_id": practice_id,
        "client_id": client_id,
        "answered_at": answer.answered_at,
        "local_day": answer.local_day,
        "source": "client",
        "event_id": answer.event_id,
        "answered_by": None,
    }
    said = ScreeningAnswered.model_validate(answer.said)
    store.add_screening(session, row | _judged(said.for_rules(), said.details))


def forget_answers(session: Session, practice_id: str, client_id: str, event_ids: Iterable[str] | None = None) -> None:
    """Take back answers of the phone that the client withdrew; all of them where a rebuild makes them again."""
    store.remove_answers(session, practice_id, client_id, event_ids)


def screen(
    session: Session, access: PractitionerAccess, client_id: str, body: ScreeningBody, now: datetime
) -> Screening:
    """Keep answers that were taken with the practitioner.

    Raises:
        NotFound: the client is unknown, or another practice's.
    """
    client = identity.client_of(session, access.practice_id, client_id)
    screening_id = uuid7(now)
    row = {
        "id": screening_id,
        "practice_id": access.practice_id,
        "client_id": client_id,
        "answered_at": now,
        "local_day": local_date(now, client.time_zone),
        "source": "practitioner",
        "event_id": None,
        "answered_by": access.practitioner_id,
    }
    store.add_screening(session, row | _judged(body.answers.for_rules(), body.details))
    found = store.screening(session, access.practice_id, client_id, screening_id)
    assert found is not None, "it was stored a moment ago"
    return found


def clear(
    session: Session, access: PractitionerAccess, client_id: str, body: ClearanceBody, now: datetime
) -> Clearance:
    """Record that someone licensed has cleared a client.

    Raises:
        NotFound: the client or the screening is unknown, or another practice's.
        Conflict: there is no screening to clear yet.
        Invalid: the day is in the future.
    """
    client = identity.client_of(session, access.practice_id, client_id)
    today = local_date(now, client.time_zone)
    clearance = Clearance(
        id=uuid7(now),
        practice_id=access.practice_id,
        client_id=client_id,
        screening_id=_screening_meant(session, access.practice_id, client_id, body.screening_id),
        given_on=_not_after(body.given_on or today, today),
        given_by=body.given_by,
        note=body.note,
        recorded_by=access.practitioner_id,
        recorded_at=now,
    )
    session.add(clearance)
    session.flush()
    return clearance


def _screening_meant(session: Session, practice_id: str, client_id: str, screening_id: str | None) -> str:
    if screening_id is None:
        newest = store.newest(session, practice_id, client_id)
        if newest is None:
            raise Conflict("not-screened", "There is no screening yet. Screen first; a clearance answers a screening.")
        return newest.id
    if store.screening(session, practice_id, client_id, screening_id) is None:
        raise not_found("screening")
    return screening_id


def _not_after(day: date, today: date) -> date:
    if day > today:
        detail = "The day of the clearance has not come yet."
        errors = [{"pointer": "/body/given_on", "code": "in-the-future", "detail": detail}]
        raise Invalid("in-the-future", detail, errors=errors)
    return day
