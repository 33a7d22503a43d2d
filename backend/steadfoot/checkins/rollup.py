"""Keeps the derived tables true: the same fold for upkeep and for rebuild (decision 0003)."""

from collections import defaultdict
from collections.abc import Iterable, Sequence
from datetime import date
from typing import Any

from sqlmodel import Session

from steadfoot.checkins import screenings, store
from steadfoot.checkins.fold import Fact, fold_session, pain_row, planned_day, session_key, withdrawn_ids
from steadfoot.identity import service as identity

_WITHDRAWALS = ("entry_withdrawn",)


def _grouped(facts: Iterable[Fact]) -> dict[str, list[Fact]]:
    groups: dict[str, list[Fact]] = defaultdict(list)
    for fact in facts:
        key = session_key(fact.kind, fact.planned_id, fact.local_day)
        if key is not None:
            groups[key].append(fact)
    return groups


def _rows(groups: dict[str, list[Fact]], withdrawn: frozenset[str]) -> list[dict[str, Any]]:
    folds = (fold_session(key, groups[key], withdrawn) for key in sorted(groups))
    return [fold.row() for fold in folds if fold is not None]


def _touched(session: Session, practice_id: str, client_id: str, fresh: Sequence[Fact]) -> set[str]:
    keys = set(_grouped(fresh))
    targets = withdrawn_ids(fresh)
    if targets:
        found = store.events_with_ids(session, practice_id, client_id, targets)
        keys |= set(_grouped(store.fact_of(event) for event in found))
    return keys


def _facts_of(session: Session, practice_id: str, client_id: str, keys: set[str]) -> list[Fact]:
    planned = sorted(key for key in keys if not key.startswith("extra."))
    days: list[date] = sorted(planned_day(key) for key in keys if key.startswith("extra."))
    found = store.events_of_sessions(session, practice_id, client_id, planned) if planned else []
    if days:
        found += store.events_outside_plan(session, practice_id, client_id, days)
    return [store.fact_of(event) for event in found]


def refresh(session: Session, practice_id: str, client_id: str, fresh: Sequence[Fact]) -> None:
    """Bring the derived rows up to date with events that are new to them; a second time changes nothing."""
    taken_back = withdrawn_ids(
        store.fact_of(event) for event in store.events(session, practice_id, client_id, kinds=_WITHDRAWALS)
    )
    keys = _touched(session, practice_id, client_id, fresh)
    if keys:
        groups = _grouped(_facts_of(session, practice_id, client_id, keys))
        kept = {key: groups[key] for key in keys if key in groups}
        store.replace_rollups(session, practice_id, client_id, keys, _rows(kept, taken_back))
    _refresh_pain(session, practice_id, client_id, fresh, taken_back)
    screenings.refresh(session, practice_id, client_id, fresh, taken_back)


def _refresh_pain(
    session: Session, practice_id: str, client_id: str, fresh: Sequence[Fact], taken_back: frozenset[str]
) -> None:
    told = [fact for fact in fresh if fact.kind == "pain_reported"]
    gone = withdrawn_ids(fresh) | {fact.id for fact in told}
    if gone:
        store.remove_pain(session, practice_id, client_id, gone)
    kept = [pain_row(fact) for fact in told if fact.id not in taken_back]
    store.add_pain(session, practice_id, client_id, kept)


def rebuild(session: Session, practice_id: str, client_id: str) -> None:
    """Drop a client's derived rows and make them again from the events; nothing is due afterwards."""
    identity.lock_client(session, practice_id, client_id)
    store.remove_due(session, practice_id, client_id)
    facts = [store.fact_of(event) for event in store.events(session, practice_id, client_id)]
    taken_back = withdrawn_ids(facts)
    store.remove_rollups(session, practice_id, client_id)
    store.remove_pain(session, practice_id, client_id)
    groups = _grouped(facts)
    store.replace_rollups(session, practice_id, client_id, groups, _rows(groups, taken_back))
    pains = [pain_row(fact) for fact in facts if fact.kind == "pain_reported" and fact.id not in taken_back]
    store.add_pain(session, practice_id, client_id, pains)
    screenings.rebuild(session, practice_id, client_id, facts, taken_back)
