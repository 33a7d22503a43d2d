"""Taking in batches, keeping refused items, and the readers that later steps use."""

from collections.abc import Callable, Sequence
from datetime import date, datetime
from typing import Any

from sqlmodel import Session

from steadfoot.checkins import rollup, store
from steadfoot.checkins.fold import Fact, parsed, withdrawn_ids
from steadfoot.checkins.ingest import Held, Outcome, decide
from steadfoot.checkins.reading import NOT_SENT, Item, Reading, raw_digest, raw_text, read
from steadfoot.checkins.schemas import ChangeOut, Refused, SyncOut, WalkDone
from steadfoot.checkins.sets import SetDone, fold_sets
from steadfoot.checkins.store import (
    EventRow,
    kept_aside,
    not_looked_at,
    pain,
    pain_rows,
    refused_counts,
    refused_of,
    rollups,
)
from steadfoot.checkins.tables import Due, Event, Receipt, RefusedEvent
from steadfoot.core.problems import not_found
from steadfoot.identity import service as identity
from steadfoot.identity.access import DeviceAccess

__all__ = [
    "Listener",
    "SetDone",
    "events_of_kinds",
    "events_page",
    "kept_aside",
    "not_looked_at",
    "pain",
    "pain_rows",
    "read",
    "rebuild",
    "refused_counts",
    "refused_of",
    "retry",
    "rollups",
    "sets_of",
    "settle",
    "sync",
    "walks_of",
]

Listener = Callable[[Session, str, str], None]
"""Called with session, practice id and client id, inside the transaction, when a client's events changed."""
events_page = store.events_page
rebuild = rollup.rebuild


_NOT_WHOLE = frozenset({NOT_SENT, "id-reused", "number-taken"})
"""Refused for other reasons than what the entry says."""


def _event_row(access: DeviceAccess, event: Reading, now: datetime) -> dict[str, Any]:
    return {
        "id": event.id,
        "practice_id": access.practice_id,
        "client_id": access.client_id,
        "device_id": access.device_id,
        "seq": event.seq,
        "kind": event.kind,
        "recorded_at": event.recorded_at,
        "instant": event.instant,
        "received_at": now,
        "local_day": event.local_day,
        "planned_id": event.planned_id,
        "body": event.body_text,
        "content_digest": event.digest,
    }


def _refused_row(access: DeviceAccess, item: Item, problem: dict[str, Any], now: datetime) -> dict[str, Any]:
    return {
        "digest": raw_digest(access.device_id, item.raw),
        "practice_id": access.practice_id,
        "client_id": access.client_id,
        "device_id": access.device_id,
        "event_id": item.event_id or f"nameless-{item.digest[:16]}",
        "content_digest": item.digest,
        "seq": item.seq,
        "raw": raw_text(item.raw),
        "problem": problem,
        "received_at": now,
        "accepted_at": None,
    }


def _held(session: Session, access: DeviceAccess, items: Sequence[Item]) -> Held:
    numbers = store.numbers_taken(
        session, access.practice_id, access.device_id, [item.seq for item in items if item.seq is not None]
    )
    ids = {item.event_id for item in items}
    refused = store.refused_contents(session, access.practice_id, access.client_id, ids)
    return Held(access.client_id, store.digests_of(session, ids), numbers, refused)


def _store_refused(session: Session, access: DeviceAccess, outcome: Outcome, now: datetime) -> None:
    rows = {
        row["digest"]: row for row in (_refused_row(access, item, problem, now) for item, problem in outcome.refused)
    }
    known = store.refused_digests(session, access.practice_id, rows)
    store.insert_all(session, RefusedEvent, [row for digest, row in rows.items() if digest not in known])


def _facts(accepted: Sequence[Reading]) -> list[Fact]:
    return [
        Fact(
            id=event.id,
            seq=event.seq,
            kind=event.kind,
            instant=event.instant,
            local_day=event.local_day,
            planned_id=event.planned_id,
            body=parsed(event.body_text),
        )
        for event in accepted
    ]


def _store(session: Session, access: DeviceAccess, outcome: Outcome, now: datetime) -> None:
    store.insert_all(session, Event, [_event_row(access, event, now) for event in outcome.accepted])
    store.insert_all(
        session,
        Receipt,
        [
            {
                "device_id": access.device_id,
                "seq": seq,
                "practice_id": access.practice_id,
                "event_id": event_id,
            }
            for seq, event_id in outcome.receipts.items()
        ],
    )
    _store_refused(session, access, outcome, now)
    if outcome.accepted:
        store.insert_all(session, Due, [_due_row(access, outcome.accepted)])


def _due_row(access: DeviceAccess, accepted: Sequence[Reading]) -> dict[str, Any]:
    numbers = [event.seq for event in accepted]
    return {
        "device_id": access.device_id,
        "first_seq": min(numbers),
        "last_seq": max(numbers),
        "practice_id": access.practice_id,
        "client_id": access.client_id,
    }


def _acknowledged(session: Session, access: DeviceAccess, through: int) -> int:
    """Answer the end of the gapless run of held numbers, beginning at one that is known to be in it."""
    for seq in store.numbers_after(session, access.practice_id, access.device_id, through):
        if seq != through + 1:
            break
        through = seq
    return through


def _settle_refused(session: Session, access: DeviceAccess, outcome: Outcome, now: datetime) -> None:
    """What was kept aside and has now come in needs nobody any more: under another number, or after a mend.

    Nor does a stand-in once the entry itself is here, though it be kept aside in its turn.
    """
    taken = {event.id: event.digest for event in outcome.accepted}
    whole = taken.keys() | {item.event_id for item, found in outcome.refused if found["code"] not in _NOT_WHOLE}
    for row in store.refused_of(session, access.practice_id, access.client_id):
        stood_in = row.event_id in whole and row.problem["code"] == NOT_SENT
        if stood_in or taken.get(row.event_id) == row.content_digest:
            row.accepted_at = now
            session.add(row)


def sync(session: Session, access: DeviceAccess, cursor: int, items: Sequence[Item], now: datetime) -> SyncOut:
    """Take in a batch and answer what is new for the phone since its cursor. The caller commits before it leaves.

    What was accepted is due afterwards: ``settle`` folds it (decision 0011).
    """
    through = identity.lock_device(session, access.practice_id, access.device_id)
    outcome = decide(items, _held(session, access, items)) if items else Outcome()
    _store(session, access, outcome, now)
    if outcome.accepted or outcome.refused:
        _settle_refused(session, access, outcome, now)
    if outcome.receipts:
        through = _acknowledged(session, access, through)
    identity.mark_heard(session, access.practice_id, access.device_id, through, now)
    return _answer(session, access, cursor, outcome, through, now)


def _answer(
    session: Session, access: DeviceAccess, cursor: int, outcome: Outcome, through: int, now: datetime
) -> SyncOut:
    changes, cursor = identity.changes_since(session, access.practice_id, access.client_id, cursor)
    return SyncOut(
        server_epoch=identity.epoch_of(session),
        server_time=now,
        acknowledged_through=through,
        refused=[Refused(seq=item.seq, id=item.event_id, problem=found) for item, found in outcome.refused],
        changes=[ChangeOut(number=c.number, kind=c.kind, at=c.at, body=c.body) for c in changes],
        cursor=cursor,
    )


def settle(
    session: Session, practice_id: str, client_id: str, listeners: Sequence[Listener], *, pass_over: bool = False
) -> None:
    """Fold what is due of a client, and let the listeners look. With ``pass_over`` not where another is at it."""
    if not identity.lock_client(session, practice_id, client_id, pass_over=pass_over):
        return
    due = store.due_of(session, practice_id, client_id)
    if not due:
        return
    found = {event.id: event for one in due for event in store.events_due(session, practice_id, client_id, one)}
    rollup.refresh(session, practice_id, client_id, [store.fact_of(event) for event in found.values()])
    for one in due:
        session.delete(one)
    session.flush()
    for listener in listeners:
        listener(session, practice_id, client_id)


def retry(
    session: Session,
    practice_id: str,
    client_id: str,
    event_id: str,
    listeners: Sequence[Listener],
    now: datetime,
) -> dict[str, Any] | None:
    """Try a kept item again, after the server was mended or a person has looked; answer why it still cannot be taken.

    A taken number no longer stands against it: a person has decided that it is a real entry.

    Raises:
        NotFound: nothing is kept aside under this id.
    """
    rows = store.refused_with_id(session, practice_id, client_id, event_id)
    if not rows:
        raise not_found("entry kept aside")
    left: dict[str, Any] | None = None
    for row in rows:
        found = _retry_row(session, row, now)
        left = left or found
    session.flush()
    for listener in listeners:
        listener(session, practice_id, client_id)
    return left


def _retry_row(session: Session, row: RefusedEvent, now: datetime) -> dict[str, Any] | None:
    access = DeviceAccess(row.practice_id, row.client_id, row.device_id, "UTC")
    item = read(parsed(row.raw))
    outcome = decide([item], Held(row.client_id, store.digests_of(session, [item.event_id]), {}, {}))
    if outcome.refused:
        row.problem = outcome.refused[0][1]
        session.add(row)
        return row.problem
    store.insert_all(session, Event, [_event_row(access, event, now) for event in outcome.accepted])
    rollup.refresh(session, row.practice_id, row.client_id, _facts(outcome.accepted))
    row.accepted_at = now
    session.add(row)
    return None


def events_of_kinds(session: Session, practice_id: str, client_id: str, kinds: Sequence[str]) -> list[EventRow]:
    """Answer a client's events of some kinds that were not withdrawn, in the order of their times."""
    found = store.events(session, practice_id, client_id, kinds=(*kinds, "entry_withdrawn"))
    gone = withdrawn_ids(store.fact_of(event) for event in found)
    return [event for event in found if event.kind in kinds and event.id not in gone]


def sets_of(session: Session, practice_id: str, client_id: str, planned_ids: Sequence[str]) -> dict[str, list[SetDone]]:
    """Answer the sets of some planned sessions with what each came to, by planned id."""
    found = store.events_of_sessions(session, practice_id, client_id, planned_ids) if planned_ids else []
    gone = store.events(session, practice_id, client_id, kinds=("entry_withdrawn",)) if found else []
    return fold_sets(map(store.fact_of, found), withdrawn_ids(map(store.fact_of, gone)))


def walks_of(session: Session, practice_id: str, client_id: str, since: date) -> list[WalkDone]:
    """Answer the walks that a client logged for days from ``since``, in the order of their planned ids."""
    found = [row.walk for row in rollups(session, practice_id, since, client_id)]
    return [WalkDone.model_validate_json(walk) for walk in found if walk is not None]


def newest_version_named(session: Session, practice_id: str, client_id: str, since: date) -> int | None:
    """Answer the highest program version that the phone's entries have named: what the phone has."""
    found = [row.program_version for row in rollups(session, practice_id, since, client_id)]
    return max((number for number in found if number is not None), default=None)
