"""The practice's log as its people read it: filtered, with the names that its ids have today."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import UTC, date, datetime, time, timedelta
from typing import Any
from zoneinfo import ZoneInfo

from sqlmodel import Session

from steadfoot.audit import service as audit
from steadfoot.audit.service import ActorKind
from steadfoot.custody.schemas import AuditPage, AuditRow, ChainState, Named
from steadfoot.identity import service as identity
from steadfoot.identity.access import PractitionerAccess

PAGE_ROWS = 100
_NO_TIME = (datetime.fromtimestamp(0, UTC),) * 2


@dataclass(frozen=True, slots=True)
class Wanted:
    """What to show: by whom, about whom, on which of the practice's days."""

    actor_id: str | None
    subject_id: str | None
    day: date | None


def span_of(day: date | None, zone: str) -> tuple[datetime, datetime] | None:
    """Answer the instants at which a day of a time zone begins and ends; no time for the calendar's first or last."""
    if day is None:
        return None
    try:
        begins = [datetime.combine(one, time(), ZoneInfo(zone)) for one in (day, day + timedelta(days=1))]
        return begins[0].astimezone(UTC), begins[1].astimezone(UTC)
    except OverflowError:
        return _NO_TIME


def rows_of(
    session: Session, access: PractitionerAccess, wanted: Wanted, below: int | None, limit: int
) -> Sequence[Any]:
    """Answer the rows below a number that are wanted, newest first."""
    return audit.page(
        session,
        access.practice_id,
        below=below,
        limit=limit,
        actor_id=wanted.actor_id,
        subject_id=wanted.subject_id,
        between=span_of(wanted.day, access.time_zone),
    )


def page_of(session: Session, access: PractitionerAccess, wanted: Wanted, below: int | None) -> AuditPage:
    """Answer a page of the log, and whom one may choose by."""
    found = rows_of(session, access, wanted, below, PAGE_ROWS + 1)
    people = identity.practitioner_names(session, access.practice_id)
    clients = {client.id: client.display_name for client in identity.clients_of(session, access.practice_id)}
    shown = found[:PAGE_ROWS]
    return AuditPage(
        items=[_row(row, people, clients) for row in shown],
        next=shown[-1].number if len(found) > PAGE_ROWS else None,
        practitioners=[Named(id=key, name=name) for key, name in people.items()],
        clients=[Named(id=key, name=name) for key, name in clients.items()],
    )


def _row(row: Any, people: Mapping[str, str], clients: Mapping[str, str]) -> AuditRow:
    by_person = row.actor_kind in (ActorKind.PRACTITIONER, ActorKind.NOBODY)
    return AuditRow(
        number=row.number,
        at=row.at,
        actor_kind=ActorKind(row.actor_kind),
        actor_id=row.actor_id,
        actor_name=people.get(row.actor_id or "") if by_person else None,
        subject_id=row.subject_id,
        subject_name=clients.get(row.subject_id or ""),
        action=row.action,
        outcome=row.outcome,
        times=row.times,
    )


def state_of(session: Session, practice_id: str) -> ChainState:
    """Answer whether the practice's chain is whole."""
    found = audit.verify(session, practice_id)
    return ChainState(
        whole=found.broken_at is None,
        rows=found.rows,
        head=found.head,
        broken_at=found.broken_at,
        why=found.why,
    )
