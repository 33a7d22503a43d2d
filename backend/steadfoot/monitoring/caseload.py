"""The caseload: every client, in the order in which they need someone, from a fixed number of queries.

A row depends on nothing but what the queries answer and on the client's day, so rows are kept in memory under exactly
that: a row that is asked for again is not worked out again, and one that changed cannot be taken from memory.
"""

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from functools import lru_cache
from typing import Any

from sqlmodel import Session

from steadfoot.checkins import service as checkins
from steadfoot.core.clock import local_date
from steadfoot.identity import service as identity
from steadfoot.identity.access import PractitionerAccess
from steadfoot.monitoring import store
from steadfoot.monitoring.caseload_row import Known, row_of
from steadfoot.monitoring.person_schemas import CaseloadHead, Headline
from steadfoot.rules.adherence import WEEK_DAYS
from steadfoot.rules.attention import Group

_ROWS_KEPT = 4000


@dataclass(slots=True)
class _Gathered:
    """What the queries answer about one client."""

    sheet: str | None = None
    heard: list[datetime] = field(default_factory=list)
    paired: list[datetime] = field(default_factory=list)
    findings: list[Any] = field(default_factory=list)
    decisions: list[Any] = field(default_factory=list)
    pain: list[Any] = field(default_factory=list)
    refused: int = 0
    answered: tuple[str, ...] = ()


@lru_cache(maxsize=_ROWS_KEPT)
def _row(known: Known) -> tuple[tuple[Any, ...], Group, str]:
    """Answer a row's place in the order, its group and its JSON, as yet without the number of its place."""
    order, row = row_of(known)
    return order, row.group, row.model_dump_json(exclude={"place"})


def caseload_json(session: Session, access: PractitionerAccess, now: datetime) -> str:
    """Answer everyone who is not archived, the most urgent first, as the JSON of a ``Caseload``."""
    rows = sorted(_row(known) for known in _everyone(session, access.practice_id, now))
    groups = [group for _, group, _ in rows]
    head = CaseloadHead(
        as_of=now,
        today=local_date(now, access.time_zone),
        headline=Headline(people=len(rows), need_you=groups.count(Group.NEEDS_YOU), silent=groups.count(Group.SILENT)),
    )
    items = ",".join(f'{{"place":{place},{text[1:]}' for place, (_, _, text) in enumerate(rows, start=1))
    return f'{head.model_dump_json()[:-1]},"items":[{items}]}}'


def _everyone(session: Session, practice_id: str, now: datetime) -> Sequence[Known]:
    gathered = _gathered(session, practice_id, now)
    clients = identity.active_client_rows(session, practice_id)
    return [_known(client, gathered[client.id], now) for client in clients]


def _gathered(session: Session, practice_id: str, now: datetime) -> dict[str, _Gathered]:
    found: dict[str, _Gathered] = defaultdict(_Gathered)
    for client_id, text in store.sheets(session, practice_id).items():
        found[client_id].sheet = text
    _gather_phones(session, practice_id, found)
    for finding in store.finding_rows(session, practice_id):
        found[finding.client_id].findings.append(finding)
    for decision in store.decision_rows(session, practice_id):
        found[decision.client_id].decisions.append(decision)
    # One day more than the span: a client's own day may be behind the clock's.
    for entry in checkins.pain_rows(session, practice_id, now.date() - timedelta(days=WEEK_DAYS)):
        worst = (entry.rating, entry.instant, entry.event_id, entry.region, entry.side, entry.day)
        found[entry.client_id].pain.append(worst)
    for client_id, suggestion_ids in store.answered_suggestions(session, practice_id).items():
        found[client_id].answered = tuple(suggestion_ids)
    for client_id, count in checkins.refused_counts(session, practice_id).items():
        found[client_id].refused = count
    return found


def _gather_phones(session: Session, practice_id: str, found: dict[str, _Gathered]) -> None:
    for device in identity.device_rows(session, practice_id):
        if device.last_heard_at:
            found[device.client_id].heard.append(device.last_heard_at)
        if device.revoked_at is None:
            found[device.client_id].paired.append(device.paired_at)


def _known(client: Any, gathered: _Gathered, now: datetime) -> Known:
    return Known(
        client_id=client.id,
        display_name=client.display_name,
        birth_year=client.birth_year,
        time_zone=client.time_zone,
        today=local_date(now, client.time_zone),
        heard_at=max(gathered.heard, default=None),
        paired_at=min(gathered.paired, default=None),
        sheet=gathered.sheet,
        findings=tuple(gathered.findings),
        decisions=tuple(gathered.decisions),
        pain=tuple(gathered.pain),
        refused=gathered.refused,
        answered=gathered.answered,
    )
