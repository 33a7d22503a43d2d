"""Every query of monitoring, each within a practice."""

from collections.abc import Mapping, Sequence
from datetime import date
from typing import Any, NamedTuple

from sqlalchemy import delete, insert
from sqlmodel import Session, col, select

from steadfoot.core.database import plain_rows, scoped
from steadfoot.monitoring.tables import ClientSheet, Finding, FlagDecision, Message, ProgressionDecision


def findings(session: Session, practice_id: str, client_id: str | None = None) -> Sequence[Finding]:
    """Answer findings of the practice or of one client, longest there first."""
    query = scoped(Finding, practice_id)
    if client_id is not None:
        query = query.where(Finding.client_id == client_id)
    return session.exec(query.order_by(col(Finding.since), col(Finding.id))).all()


class FindingRow(NamedTuple):
    """A finding as a plain value."""

    id: str
    client_id: str
    rule: str
    subject: str
    since: date
    evidence: str
    suggestion: str


class DecisionRow(NamedTuple):
    """What of a decision tells where a finding stands."""

    client_id: str
    rule: str
    subject: str
    action: str
    covers: str


def finding_rows(session: Session, practice_id: str) -> list[FindingRow]:
    """Answer the findings of the practice as plain values, longest there first."""
    order = (col(Finding.since), col(Finding.id))
    return plain_rows(session, Finding, FindingRow, practice_id, order_by=order)


def decision_rows(session: Session, practice_id: str) -> list[DecisionRow]:
    """Answer the decisions of the practice as plain values, oldest first."""
    order = (col(FlagDecision.decided_at), col(FlagDecision.id))
    return plain_rows(session, FlagDecision, DecisionRow, practice_id, order_by=order)


def client_of_finding(session: Session, practice_id: str, flag_id: str) -> str | None:
    """Answer whose finding it is."""
    query = select(Finding.client_id).where(Finding.practice_id == practice_id, Finding.id == flag_id)
    return session.exec(query).first()


def finding(session: Session, practice_id: str, flag_id: str) -> Finding | None:
    """Answer a finding as it is now: a look puts new rows in the place of those that were read before."""
    query = scoped(Finding, practice_id).where(Finding.id == flag_id)
    return session.exec(query.execution_options(populate_existing=True)).first()


def replace_findings(session: Session, practice_id: str, client_id: str, rows: Sequence[Mapping[str, Any]]) -> None:
    """Put a client's findings in the place of the earlier ones."""
    earlier = delete(Finding).where(col(Finding.practice_id) == practice_id, col(Finding.client_id) == client_id)
    session.execute(earlier)
    if rows:
        session.execute(insert(Finding), list(rows))


def decisions(session: Session, practice_id: str, client_id: str | None = None) -> Sequence[FlagDecision]:
    """Answer decisions of the practice or about one client, oldest first."""
    query = scoped(FlagDecision, practice_id)
    if client_id is not None:
        query = query.where(FlagDecision.client_id == client_id)
    return session.exec(query.order_by(col(FlagDecision.decided_at), col(FlagDecision.id))).all()


def progression_decisions(session: Session, practice_id: str, client_id: str) -> Sequence[ProgressionDecision]:
    """Answer what was decided about a client's suggestions, oldest first."""
    query = scoped(ProgressionDecision, practice_id).where(ProgressionDecision.client_id == client_id)
    return session.exec(query.order_by(col(ProgressionDecision.decided_at), col(ProgressionDecision.id))).all()


def answered_suggestions(session: Session, practice_id: str) -> dict[str, list[str]]:
    """Answer the ids of all suggestions that were decided about, by client: one query for a caseload."""
    query = select(ProgressionDecision.client_id, ProgressionDecision.suggestion_id)
    found: dict[str, list[str]] = {}
    for client_id, suggestion_id in session.exec(query.where(ProgressionDecision.practice_id == practice_id)):
        found.setdefault(client_id, []).append(suggestion_id)
    return found


def messages(session: Session, practice_id: str, client_id: str) -> Sequence[Message]:
    """Answer the messages to a client, oldest first."""
    query = scoped(Message, practice_id).where(Message.client_id == client_id)
    return session.exec(query.order_by(col(Message.sent_at), col(Message.id))).all()


def sheets(session: Session, practice_id: str) -> dict[str, str]:
    """Answer the content of every client's sheet by client."""
    query = select(ClientSheet.client_id, ClientSheet.content).where(ClientSheet.practice_id == practice_id)
    return dict(session.exec(query).all())


def put_sheet(session: Session, practice_id: str, client_id: str, content: str) -> None:
    """Put a client's sheet in the place of the earlier one."""
    row = {"client_id": client_id, "practice_id": practice_id, "content": content}
    here = col(ClientSheet.practice_id) == practice_id
    session.execute(delete(ClientSheet).where(here, col(ClientSheet.client_id) == client_id))
    session.execute(insert(ClientSheet), [row])


def sheet(session: Session, practice_id: str, client_id: str) -> str | None:
    """Answer the content of one client's sheet."""
    found = session.exec(scoped(ClientSheet, practice_id).where(ClientSheet.client_id == client_id)).first()
    return found.content if found else None
