"""Walks a chain from its first row and names the first that does not fit."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from sqlmodel import Session

from steadfoot.audit import store
from steadfoot.audit.entries import BEGINNING, digest_of, said
from steadfoot.audit.tables import AuditEntry


@dataclass(frozen=True, slots=True)
class Verdict:
    """What a chain is worth. ``broken_at`` is the number of the first row that does not fit; None: all do."""

    practice_id: str
    rows: int
    head: str
    broken_at: int | None
    why: str


def verify(session: Session, practice_id: str, noted: Mapping[int, str] | None = None) -> Verdict:
    """Answer whether a practice's chain is whole, and holds the heads that were noted elsewhere, by number."""
    walked = _walk(practice_id, store.chain(session, practice_id), noted or {})
    if walked.broken_at is not None:
        return walked
    head = store.head(session, practice_id)
    if head is None or (head.number, head.digest) != (walked.rows, walked.head):
        return Verdict(practice_id, walked.rows, walked.head, walked.rows + 1, "the newest rows are missing")
    beyond = min((number for number in noted or {} if number > walked.rows), default=None)
    if beyond is not None:
        return Verdict(practice_id, walked.rows, walked.head, walked.rows + 1, "a noted head is beyond the last row")
    return walked


def verify_all(session: Session, noted: Mapping[str, Mapping[int, str]] | None = None) -> list[Verdict]:
    """Answer a verdict for every chain that there is, or that a note speaks of."""
    known = sorted({*store.practices(session), *(noted or {})})
    return [verify(session, practice_id, (noted or {}).get(practice_id)) for practice_id in known]


def _walk(practice_id: str, rows: Iterable[AuditEntry], noted: Mapping[int, str]) -> Verdict:
    number, previous = 0, BEGINNING
    for row in rows:
        why = _fault(row, number + 1, previous, noted.get(number + 1))
        if why:
            return Verdict(practice_id, number, previous, number + 1, why)
        number, previous = row.number, row.digest
    return Verdict(practice_id, number, previous, None, "")


def _fault(row: AuditEntry, number: int, previous: str, noted: str | None) -> str:
    if row.number != number:
        return "a row is missing"
    if row.previous != previous:
        return "it does not follow from the row before"
    if digest_of(said(row.model_dump())) != row.digest:
        return "its content was changed"
    return "" if noted in (None, row.digest) else "it is another than the one that was noted"
