"""Hands screening answers from the phone over to intake, and takes withdrawn ones back from it."""

from collections.abc import Iterable, Sequence

from sqlmodel import Session

from steadfoot.checkins.fold import Fact, withdrawn_ids
from steadfoot.intake import service as intake
from steadfoot.intake.schemas import ScreeningAnswered

_KIND = "screening_answered"
_FIELDS = frozenset(ScreeningAnswered.model_fields)


def refresh(
    session: Session, practice_id: str, client_id: str, fresh: Sequence[Fact], taken_back: frozenset[str]
) -> None:
    """Bring intake up to date with events that were just stored."""
    gone = withdrawn_ids(fresh)
    if gone:
        intake.forget_answers(session, practice_id, client_id, gone)
    _hand_over(session, practice_id, client_id, fresh, taken_back)


def rebuild(
    session: Session, practice_id: str, client_id: str, facts: Iterable[Fact], taken_back: frozenset[str]
) -> None:
    """Make every answer of the client's phones again from the events."""
    intake.forget_answers(session, practice_id, client_id)
    _hand_over(session, practice_id, client_id, facts, taken_back)


def _hand_over(
    session: Session, practice_id: str, client_id: str, facts: Iterable[Fact], taken_back: frozenset[str]
) -> None:
    for fact in facts:
        if fact.kind == _KIND and fact.id not in taken_back:
            said = {name: value for name, value in fact.body.items() if name in _FIELDS}
            answer = intake.PhoneAnswer(fact.id, fact.instant, fact.local_day, said)
            intake.record_answer(session, practice_id, client_id, answer)
