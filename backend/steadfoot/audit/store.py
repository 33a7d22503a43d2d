"""Every query of the audit log."""

from collections.abc import Iterator, Sequence
from datetime import datetime
from typing import Any

from sqlalchemy import insert, update
from sqlmodel import Session, col, select

from steadfoot.audit.entries import BEGINNING
from steadfoot.audit.tables import AuditEntry, AuditHead
from steadfoot.core.database import scoped

_CHUNK = 2_000


def take_numbers(session: Session, practice_id: str, count: int) -> tuple[int, str]:
    """Take the next numbers of a practice's chain; answer the last one before them and its digest.

    The row stays locked until the transaction ends: of two writers at once the second waits for the first.
    """
    claim = (
        update(AuditHead)
        .where(col(AuditHead.practice_id) == practice_id)
        .values(number=col(AuditHead.number) + count)
        .returning(col(AuditHead.number), col(AuditHead.digest))
    )
    found = session.execute(claim).first()
    if found is None:
        _begin(session, practice_id)
        found = session.execute(claim).one()
    return found[0] - count, found[1]


def _begin(session: Session, practice_id: str) -> None:
    """Write the head of an empty chain; whoever comes second waits here and finds it written."""
    table: Any = AuditHead.__table__  # type: ignore[attr-defined]
    if session.get_bind().dialect.name == "postgresql":
        from sqlalchemy.dialects.postgresql import insert as insert_or_leave
    else:
        from sqlalchemy.dialects.sqlite import insert as insert_or_leave  # type: ignore[assignment]
    values = {"practice_id": practice_id, "number": 0, "digest": BEGINNING}
    session.execute(insert_or_leave(table).values(values).on_conflict_do_nothing())


def put(session: Session, practice_id: str, rows: Sequence[dict[str, Any]]) -> None:
    """Insert rows whose numbers were taken, and move the head to the last of them."""
    session.execute(insert(AuditEntry.__table__), list(rows))  # type: ignore[attr-defined]
    move = update(AuditHead).where(col(AuditHead.practice_id) == practice_id).values(digest=rows[-1]["digest"])
    session.execute(move)


def heads(session: Session) -> Sequence[AuditHead]:
    """Answer the head of every chain: whoever runs the server verifies all of them."""
    return session.exec(select(AuditHead).order_by(col(AuditHead.practice_id))).all()


def head(session: Session, practice_id: str) -> AuditHead | None:
    """Answer the head of one practice's chain."""
    return session.exec(scoped(AuditHead, practice_id)).first()


def practices(session: Session) -> list[str]:
    """Answer every practice that has a row or a head."""
    found = set(session.exec(select(AuditHead.practice_id)).all())
    return sorted(found | set(session.exec(select(AuditEntry.practice_id).distinct()).all()))


def chain(session: Session, practice_id: str) -> Iterator[AuditEntry]:
    """Yield a practice's rows in the order of their numbers, a few thousand in memory at a time."""
    after = 0
    while True:
        query = scoped(AuditEntry, practice_id).where(AuditEntry.number > after).order_by(col(AuditEntry.number))
        found = session.exec(query.limit(_CHUNK)).all()
        yield from found
        if len(found) < _CHUNK:
            return
        after = found[-1].number
        session.expunge_all()


def page(
    session: Session,
    practice_id: str,
    *,
    below: int | None,
    limit: int,
    actor_id: str | None,
    subject_id: str | None,
    between: tuple[datetime, datetime] | None,
) -> Sequence[AuditEntry]:
    """Answer rows below a number, newest first, of one person, about one person, of a span."""
    query = scoped(AuditEntry, practice_id)
    if below is not None:
        query = query.where(AuditEntry.number < below)
    if actor_id is not None:
        query = query.where(AuditEntry.actor_id == actor_id)
    if subject_id is not None:
        query = query.where(AuditEntry.subject_id == subject_id)
    if between is not None:
        query = query.where(AuditEntry.at >= between[0], AuditEntry.at < between[1])
    return session.exec(query.order_by(col(AuditEntry.number).desc()).limit(limit)).all()
