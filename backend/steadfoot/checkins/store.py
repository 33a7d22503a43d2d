"""Every query of check-ins, each within a practice."""

from collections.abc import Iterable, Mapping, Sequence
from datetime import date, datetime
from typing import Any, NamedTuple

from sqlalchemy import delete, func, insert, tuple_
from sqlmodel import Session, SQLModel, col, select

from steadfoot.checkins.fold import Fact, parsed
from steadfoot.checkins.reading import NOT_SENT
from steadfoot.checkins.tables import Due, Event, PainEntry, Receipt, RefusedEvent, SessionRollup
from steadfoot.core.database import plain_rows, scoped
from steadfoot.core.waiting import Waiting


def insert_all(session: Session, table: type[SQLModel], rows: Sequence[Mapping[str, Any]]) -> None:
    """Insert rows in one statement, without an object for each: this is the hot path of a sync."""
    if rows:
        session.execute(insert(table.__table__), list(rows))  # type: ignore[attr-defined]


def digests_of(session: Session, ids: Iterable[str]) -> dict[str, tuple[str, str]]:
    """Answer client id and content digest of the events with these ids, of any practice.

    Ids are unique across practices; the caller learns only whether the content is the same.
    """
    query = select(Event.id, Event.client_id, Event.content_digest).where(col(Event.id).in_(list(ids)))
    return {found: (client_id, digest) for found, client_id, digest in session.exec(query)}


def numbers_taken(session: Session, practice_id: str, device_id: str, seqs: Iterable[int]) -> dict[int, str]:
    """Answer which of a phone's numbers are held, and by which event id."""
    query = (
        select(Receipt.seq, Receipt.event_id)
        .where(Receipt.practice_id == practice_id, Receipt.device_id == device_id)
        .where(col(Receipt.seq).in_(list(seqs)))
    )
    return dict(session.exec(query).all())


def numbers_after(session: Session, practice_id: str, device_id: str, seq: int) -> Sequence[int]:
    """Answer a phone's held numbers above one, in order."""
    query = select(Receipt.seq).where(
        Receipt.practice_id == practice_id, Receipt.device_id == device_id, Receipt.seq > seq
    )
    return session.exec(query.order_by(col(Receipt.seq))).all()


def refused_digests(session: Session, practice_id: str, digests: Iterable[str]) -> set[str]:
    """Answer which refused items are kept already."""
    query = select(RefusedEvent.digest).where(RefusedEvent.practice_id == practice_id)
    return set(session.exec(query.where(col(RefusedEvent.digest).in_(list(digests)))))


def refused_contents(session: Session, practice_id: str, client_id: str, ids: Iterable[str]) -> dict[str, set[str]]:
    """Answer the content digests by which items kept aside lay claim to these event ids, by id.

    One that was refused for its id lays no claim: else it would be taken when it comes a second time. Nor does one
    that only stands in for an entry: the entry itself may still come.
    """
    query = select(RefusedEvent.event_id, RefusedEvent.content_digest, RefusedEvent.problem).where(
        RefusedEvent.practice_id == practice_id, RefusedEvent.client_id == client_id
    )
    found: dict[str, set[str]] = {}
    for event_id, digest, problem in session.exec(query.where(col(RefusedEvent.event_id).in_(list(ids)))):
        if problem["code"] not in ("id-reused", NOT_SENT):
            found.setdefault(event_id, set()).add(digest)
    return found


def refused_of(session: Session, practice_id: str, client_id: str) -> Sequence[RefusedEvent]:
    """Answer a client's items that are kept aside, oldest first."""
    query = scoped(RefusedEvent, practice_id).where(
        RefusedEvent.client_id == client_id, col(RefusedEvent.accepted_at).is_(None)
    )
    return session.exec(query.order_by(col(RefusedEvent.received_at), col(RefusedEvent.digest))).all()


def refused_with_id(session: Session, practice_id: str, client_id: str, event_id: str) -> Sequence[RefusedEvent]:
    """Answer the items kept aside under one event id."""
    return [row for row in refused_of(session, practice_id, client_id) if row.event_id == event_id]


def refused_counts(session: Session, practice_id: str) -> dict[str, int]:
    """Answer how many items are kept aside, by client."""
    query = (
        select(RefusedEvent.client_id, func.count())
        .where(RefusedEvent.practice_id == practice_id, col(RefusedEvent.accepted_at).is_(None))
        .group_by(RefusedEvent.client_id)
    )
    return dict(session.exec(query).all())


def kept_aside(session: Session, practice_id: str | None) -> Waiting:
    """Answer how many items wait for a person to look at them, and since when; of all practices for None."""
    query = select(func.count(), func.min(RefusedEvent.received_at)).where(col(RefusedEvent.accepted_at).is_(None))
    if practice_id is not None:
        query = query.where(RefusedEvent.practice_id == practice_id)
    return Waiting(*session.exec(query).one())


def not_looked_at(session: Session, practice_id: str | None) -> Waiting:
    """Answer how many batches are accepted and not yet folded, and since when; of all practices for None."""
    last = (col(Event.device_id) == col(Due.device_id)) & (col(Event.seq) == col(Due.last_seq))
    query = select(func.count(), func.min(Event.received_at)).select_from(Due).outerjoin(Event, last)
    if practice_id is not None:
        query = query.where(Due.practice_id == practice_id)
    return Waiting(*session.exec(query).one())


class EventRow(NamedTuple):
    """What of an event is read again, as plain values: objects cost three times as much."""

    id: str
    seq: int
    kind: str
    instant: datetime
    local_day: date
    planned_id: str | None
    body: str


def fact_of(event: EventRow) -> Fact:
    """Answer an event as the fold needs it."""
    return Fact(
        id=event.id,
        seq=event.seq,
        kind=event.kind,
        instant=event.instant,
        local_day=event.local_day,
        planned_id=event.planned_id,
        body=parsed(event.body),
    )


def _event_rows(session: Session, practice_id: str, client_id: str, *where: Any) -> list[EventRow]:
    order = (col(Event.instant), col(Event.id))
    mine = col(Event.client_id) == client_id
    return plain_rows(session, Event, EventRow, practice_id, mine, *where, order_by=order)


def events(session: Session, practice_id: str, client_id: str, *, kinds: Iterable[str] = ()) -> list[EventRow]:
    """Answer a client's events in the order of their times; of some kinds only, if named."""
    where = [col(Event.kind).in_(list(kinds))] if kinds else []
    return _event_rows(session, practice_id, client_id, *where)


def events_of_sessions(
    session: Session, practice_id: str, client_id: str, planned_ids: Iterable[str]
) -> list[EventRow]:
    """Answer the events of some planned sessions."""
    return _event_rows(session, practice_id, client_id, col(Event.planned_id).in_(list(planned_ids)))


def events_outside_plan(session: Session, practice_id: str, client_id: str, days: Iterable[date]) -> list[EventRow]:
    """Answer the events of some days that name no planned session."""
    outside = (col(Event.planned_id).is_(None), col(Event.local_day).in_(list(days)))
    return _event_rows(session, practice_id, client_id, *outside)


def events_with_ids(session: Session, practice_id: str, client_id: str, ids: Iterable[str]) -> list[EventRow]:
    """Answer the client's events with these ids."""
    return _event_rows(session, practice_id, client_id, col(Event.id).in_(list(ids)))


def events_due(session: Session, practice_id: str, client_id: str, due: Due) -> list[EventRow]:
    """Answer the client's events that a mark is about; and a few that a phone said again in between."""
    numbers = select(Receipt.event_id).where(
        Receipt.practice_id == practice_id,
        Receipt.device_id == due.device_id,
        col(Receipt.seq).between(due.first_seq, due.last_seq),
    )
    return _event_rows(session, practice_id, client_id, col(Event.id).in_(numbers))


def due_of(session: Session, practice_id: str, client_id: str) -> Sequence[Due]:
    """Answer the marks of a client's check-ins that are not yet folded."""
    return session.exec(scoped(Due, practice_id).where(Due.client_id == client_id)).all()


def clients_due(session: Session, practice_id: str, client_id: str | None) -> Sequence[str]:
    """Answer the clients of a practice, or the one that is named, of whom something is due."""
    query = select(Due.client_id).where(Due.practice_id == practice_id).distinct()
    return session.exec(query if client_id is None else query.where(Due.client_id == client_id)).all()


def every_due(session: Session) -> Sequence[tuple[str, str]]:
    """Answer practice and client wherever something is due: looking after it belongs to no practice."""
    return session.exec(select(Due.practice_id, Due.client_id).distinct()).all()


def remove_due(session: Session, practice_id: str, client_id: str) -> None:
    """Delete a client's marks, which a rebuild makes good."""
    session.execute(delete(Due).where(col(Due.practice_id) == practice_id, col(Due.client_id) == client_id))


def events_page(
    session: Session,
    practice_id: str,
    client_id: str,
    after: tuple[datetime, str] | None,
    limit: int,
    *,
    newest_first: bool,
) -> Sequence[Event]:
    """Answer the next events of a client after a place in the order of time and id, or in its reverse."""
    query = scoped(Event, practice_id).where(Event.client_id == client_id)
    place = tuple_(col(Event.instant), col(Event.id))
    if after is not None:
        query = query.where(place < after if newest_first else place > after)
    keys = (col(Event.instant), col(Event.id))
    order = [key.desc() for key in keys] if newest_first else keys
    return session.exec(query.order_by(*order).limit(limit)).all()


def replace_rollups(
    session: Session, practice_id: str, client_id: str, keys: Iterable[str], rows: Sequence[Mapping[str, Any]]
) -> None:
    """Put new rollup rows in the place of those with these keys."""
    session.execute(
        delete(SessionRollup).where(
            col(SessionRollup.practice_id) == practice_id,
            col(SessionRollup.client_id) == client_id,
            col(SessionRollup.planned_id).in_(list(keys)),
        )
    )
    insert_all(session, SessionRollup, [{"practice_id": practice_id, "client_id": client_id, **row} for row in rows])


def add_pain(session: Session, practice_id: str, client_id: str, rows: Sequence[Mapping[str, Any]]) -> None:
    """Insert pain entries."""
    insert_all(session, PainEntry, [{"practice_id": practice_id, "client_id": client_id, **row} for row in rows])


def remove_pain(session: Session, practice_id: str, client_id: str, event_ids: Iterable[str] | None = None) -> None:
    """Delete a client's pain entries, all or those of some events."""
    statement = delete(PainEntry).where(
        col(PainEntry.practice_id) == practice_id, col(PainEntry.client_id) == client_id
    )
    if event_ids is not None:
        statement = statement.where(col(PainEntry.event_id).in_(list(event_ids)))
    session.execute(statement)


def remove_rollups(session: Session, practice_id: str, client_id: str) -> None:
    """Delete a client's rollup rows."""
    session.execute(
        delete(SessionRollup).where(
            col(SessionRollup.practice_id) == practice_id, col(SessionRollup.client_id) == client_id
        )
    )


def rollups(session: Session, practice_id: str, since: date, client_id: str | None = None) -> Sequence[SessionRollup]:
    """Answer rollup rows with a planned day from ``since``, of one client or of the practice."""
    query = scoped(SessionRollup, practice_id).where(SessionRollup.planned_day >= since)
    if client_id is not None:
        query = query.where(SessionRollup.client_id == client_id)
    return session.exec(query.order_by(col(SessionRollup.client_id), col(SessionRollup.planned_id))).all()


class PainRow(NamedTuple):
    """What of a pain entry the caseload tells."""

    client_id: str
    rating: int
    instant: datetime
    event_id: str
    region: str
    side: str
    day: date


def pain_rows(session: Session, practice_id: str, since: date) -> list[PainRow]:
    """Answer pain entries of the practice of days from ``since``, in order, as plain values."""
    order = (col(PainEntry.instant), col(PainEntry.event_id))
    return plain_rows(session, PainEntry, PainRow, practice_id, col(PainEntry.day) >= since, order_by=order)


def pain(session: Session, practice_id: str, since: date, client_id: str | None = None) -> Sequence[PainEntry]:
    """Answer pain entries of days from ``since``, in order, of one client or of the practice."""
    query = scoped(PainEntry, practice_id).where(PainEntry.day >= since)
    if client_id is not None:
        query = query.where(PainEntry.client_id == client_id)
    return session.exec(query.order_by(col(PainEntry.instant), col(PainEntry.event_id))).all()
