"""Flags: findings with where they stand, told for the practitioner."""

import json
from collections import defaultdict
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date, datetime
from enum import StrEnum
from typing import Any, Generic, TypeVar

from sqlmodel import Session

from steadfoot.core.clock import local_date
from steadfoot.core.problems import not_found
from steadfoot.identity import service as identity
from steadfoot.monitoring import store
from steadfoot.monitoring.schemas import Answer, DecisionOut, EvidenceOut, Flag, FlagShort, FlagSource, FlagSuggestion
from steadfoot.monitoring.store import DecisionRow, FindingRow
from steadfoot.monitoring.tables import Finding, FlagDecision
from steadfoot.rules.attention import OpenFlag
from steadfoot.rules.findings import CARDS, Action, Evidence, Rule
from steadfoot.rules.sources import BIBLIOGRAPHY

_NEEDS_MESSAGE = frozenset({Action.HOLD, Action.MESSAGE})


class FlagStatus(StrEnum):
    """Where a flag stands."""

    OPEN = "open"
    ACKNOWLEDGED = "acknowledged"
    CLOSED = "closed"


F = TypeVar("F", Finding, FindingRow)
D = TypeVar("D", FlagDecision, DecisionRow)


@dataclass(frozen=True, slots=True)
class Standing(Generic[F, D]):
    """A finding with its status, its evidence in order, and the decisions that answer any of it."""

    finding: F
    status: FlagStatus
    evidence: tuple[Evidence, ...]
    decisions: tuple[D, ...]

    @property
    def rule(self) -> Rule:
        """The rule that found it."""
        return Rule(self.finding.rule)

    @property
    def stops_training(self) -> bool:
        """Whether the phone is still stopped: by a red-flag symptom that nobody has cleared, whatever else was
        answered to it."""
        if self.rule is not Rule.RED_FLAG_SYMPTOM:
            return False
        clearing = (json.loads(one.covers) for one in self.decisions if one.action == Action.CLEAR)
        return not {one.event_id for one in self.evidence} <= set().union(*clearing)

    def short(self) -> FlagShort:
        """Answer it in one line."""
        found = self.finding
        return FlagShort(id=found.id, rule=found.rule, title=CARDS[self.rule].title, since=found.since)

    def for_order(self, today: date) -> OpenFlag:
        """Answer it as the order of the caseload takes it, told by its newest check-in."""
        return OpenFlag(
            rule=self.rule,
            since=self.finding.since,
            sentence=self.evidence[-1].sentence(today),
            suggestion=CARDS[self.rule].suggestion,
            flag_id=self.finding.id,
            action=Action(json.loads(self.finding.suggestion)["action"]),
        )


Stored = Standing[Finding, FlagDecision]
"""As the store has it, with the decisions whole."""


def standings(findings: Sequence[F], decisions: Sequence[D]) -> list[Standing[F, D]]:
    """Answer where each finding stands.

    A decision answers check-ins, not a row: a finding that is built again, or grows at its beginning by a late entry,
    keeps its answers. It is open while any of its check-ins is unanswered.
    """
    by_subject: dict[tuple[str, str, str], list[D]] = defaultdict(list)
    for decision in decisions:
        by_subject[decision.client_id, decision.rule, decision.subject].append(decision)
    return [_standing(found, by_subject[found.client_id, found.rule, found.subject]) for found in findings]


def _standing(finding: F, decisions: Sequence[D]) -> Standing[F, D]:
    rows = json.loads(finding.evidence)
    evidence = tuple(Evidence(**{**row, "day": date.fromisoformat(row["day"])}) for row in rows)
    ids = {one.event_id for one in evidence}
    answering = tuple(decision for decision in decisions if ids & set(json.loads(decision.covers)))
    return Standing(finding, _status(ids, answering), evidence, answering)


def _status(ids: set[str], decisions: Sequence[D]) -> FlagStatus:
    """Having been acted on outweighs having been seen, in whatever order the two are stored."""
    seen, settled = set[str](), set[str]()
    for decision in decisions:
        covers = set(json.loads(decision.covers))
        seen |= covers
        if decision.action != Action.ACKNOWLEDGE:
            settled |= covers
    if ids <= settled:
        return FlagStatus.CLOSED
    return FlagStatus.ACKNOWLEDGED if ids <= seen else FlagStatus.OPEN


def standings_of(session: Session, practice_id: str, client_id: str | None = None) -> list[Stored]:
    """Answer where the findings of the practice, or of one client, stand."""
    return standings(store.findings(session, practice_id, client_id), store.decisions(session, practice_id, client_id))


def standing_of(session: Session, practice_id: str, flag_id: str) -> Stored:
    """Answer where one finding stands, and hold its client until the transaction ends: two answers come one after the
    other, and no look in between.

    Raises:
        NotFound: unknown, or another practice's.
    """
    identity.lock_client(session, practice_id, store.client_of_finding(session, practice_id, flag_id) or "")
    found = store.finding(session, practice_id, flag_id)
    if found is None:
        raise not_found("flag")
    return standings([found], store.decisions(session, practice_id, found.client_id))[0]


def flags(
    session: Session, practice_id: str, now: datetime, status: FlagStatus | None = None, client_id: str | None = None
) -> list[Flag]:
    """Answer flags, the most urgent rule first, then the longest waiting.

    Raises:
        NotFound: the client is unknown, or another practice's.
    """
    if client_id is not None:
        identity.client_of(session, practice_id, client_id)
    clients = {client.id: client for client in identity.clients_of(session, practice_id)}
    names = identity.practitioner_names(session, practice_id)
    found = [one for one in standings_of(session, practice_id, client_id) if status in (None, one.status)]
    found.sort(key=lambda one: (list(Rule).index(one.rule), one.finding.since, one.finding.id))
    return [flag(one, clients[one.finding.client_id], names, now) for one in found]


def flag(standing: Stored, client: Any, names: Mapping[str, str], now: datetime) -> Flag:
    """Answer a flag whole: what the rule saw, where the rule comes from, what is suggested, what was answered."""
    found, card, today = standing.finding, CARDS[standing.rule], local_date(now, client.time_zone)
    work = BIBLIOGRAPHY[card.cited.source]
    return Flag(
        id=found.id,
        client_id=client.id,
        client_name=client.display_name,
        rule=found.rule,
        kind=card.cited.kind,
        source=FlagSource(key=work.key, title=work.title, authors=work.authors, year=work.year),
        title=card.title,
        since=found.since,
        status=standing.status,
        evidence=[EvidenceOut(event_id=e.event_id, day=e.day, sentence=e.sentence(today)) for e in standing.evidence],
        suggestion=_suggestion(standing),
        answers=_answers(standing),
        decisions=[decision_out(one, names) for one in standing.decisions],
    )


def _suggestion(standing: Stored) -> FlagSuggestion | None:
    if standing.status is FlagStatus.CLOSED:
        return None
    stored = json.loads(standing.finding.suggestion)
    return FlagSuggestion(action=stored["action"], sentence=CARDS[standing.rule].suggestion, effect=stored["effect"])


def _answers(standing: Stored) -> list[Answer]:
    """Answer what may be done: nothing about a closed flag but to clear what still stops training; easing off
    only where something can be eased."""
    out = set(Action) if standing.status is FlagStatus.CLOSED else {Action.CLEAR}
    if standing.stops_training:
        out.remove(Action.CLEAR)
    if not json.loads(standing.finding.suggestion)["keys"]:
        out.add(Action.EASE_OFF)
    if standing.status is FlagStatus.ACKNOWLEDGED:
        out.add(Action.ACKNOWLEDGE)
    return [
        Answer(action=action, label_key=f"flag.answer.{action}", needs_message=action in _NEEDS_MESSAGE)
        for action in Action
        if action not in out
    ]


def decision_out(decision: FlagDecision, names: Mapping[str, str]) -> DecisionOut:
    """Answer a decision with its maker by name."""
    return DecisionOut(
        action=Action(decision.action),
        note=decision.note,
        message=decision.message,
        decided_at=decision.decided_at,
        by=names.get(decision.practitioner_id, ""),
        program_number=decision.program_number,
    )
