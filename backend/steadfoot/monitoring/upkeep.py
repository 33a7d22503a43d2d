"""Keeps a client's findings and sheet true: the same pure building for upkeep and rebuild (decision 0003)."""

import json
from collections.abc import Iterable, Sequence
from dataclasses import asdict
from datetime import date
from typing import Any

from sqlmodel import Session

from steadfoot.checkins import service as checkins
from steadfoot.core.ids import derived_uuid7
from steadfoot.core.texts import canonical
from steadfoot.identity import service as identity
from steadfoot.monitoring import movements, sheet, store
from steadfoot.monitoring.held import Held, held_sessions
from steadfoot.monitoring.movements import Movement
from steadfoot.monitoring.suggestions import suggestion_for
from steadfoot.programs import service as programs
from steadfoot.programs.content import Circuit
from steadfoot.programs.plan import Version
from steadfoot.rules.effort import Rated, effort_findings
from steadfoot.rules.findings import Finding
from steadfoot.rules.pain import Thresholds
from steadfoot.rules.pain_course import course_findings
from steadfoot.rules.pain_findings import Report, SymptomReport, pain_findings, symptom_findings
from steadfoot.rules.vocabulary import Kit, Region, Side, Symptom, When

BEGINNING = date.min
_SYMPTOM, _RATED = "symptom_reported", ("session_finished", "walk_logged")


def refresh(session: Session, practice_id: str, client_id: str) -> None:
    """Build a client's findings and sheet again from check-ins, thresholds, kit and program versions.

    The client is held until the transaction ends: of two looks at once, each would lack what the other sees.
    """
    identity.lock_client(session, practice_id, client_id)
    client = identity.client_of(session, practice_id, client_id)
    versions = programs.versions_of(session, practice_id, client_id)
    rollups = checkins.rollups(session, practice_id, BEGINNING, client_id)
    sessions, extras = held_sessions(versions, rollups)
    pain = checkins.pain(session, practice_id, BEGINNING, client_id)
    thresholds = Thresholds.of(client.thresholds, client.usual_pain)
    kit = frozenset(Kit(code) for code in client.kit)
    moves = _movements(session, client, versions, rollups, pain, thresholds, kit)
    store.put_sheet(session, practice_id, client_id, sheet.written(versions, sessions, extras, moves))
    reports = [report_of(entry, versions) for entry in pain]
    found = [*pain_findings(reports, thresholds), *course_findings(reports, thresholds)]
    events = checkins.events_of_kinds(session, practice_id, client_id, (_SYMPTOM, *_RATED))
    found += symptom_findings(_symptom(event) for event in events if event.kind == _SYMPTOM)
    found += effort_findings(_rated((event for event in events if event.kind in _RATED), sessions))
    hurt = {entry.event_id: entry.prescription for entry in pain}
    newest = versions[-1] if versions else None
    rows = [_row(practice_id, client_id, one, _suggestion(one, hurt, newest, kit)) for one in found]
    store.replace_findings(session, practice_id, client_id, rows)


def _movements(
    session: Session,
    client: Any,
    versions: Sequence[Version],
    rollups: Sequence[Any],
    pain: Sequence[Any],
    thresholds: Thresholds,
    kit: frozenset[Kit],
) -> list[Movement]:
    """Read what each set came to for the few sessions that still count, not for all there ever were."""
    if not versions:
        return []
    wanted = movements.recent(versions[-1], rollups, {one.planned_id: _prescriptions(one) for one in rollups})
    sets = checkins.sets_of(session, client.practice_id, client.id, sorted(wanted))
    efforts = {one.planned_id: one.effort for one in rollups}
    return movements.movements(movements.Known(versions, sets, efforts, pain, thresholds, kit))


def _prescriptions(rollup: Any) -> set[str]:
    return {key for key, *_ in (*json.loads(rollup.sets), *json.loads(rollup.left_out))}


def _suggestion(
    finding: Finding,
    hurt: dict[str, str | None],
    version: Version | None,
    kit: frozenset[Kit],
) -> str:
    keys = {key for evidence in finding.evidence if (key := hurt.get(evidence.event_id))}
    return canonical(asdict(suggestion_for(finding, keys, version, kit)))


def _row(practice_id: str, client_id: str, finding: Finding, suggestion: str) -> dict[str, Any]:
    evidence = [{**asdict(one), "day": one.day.isoformat()} for one in finding.evidence]
    return {
        "id": derived_uuid7(finding.evidence[0].event_id, client_id, finding.rule, finding.subject),
        "practice_id": practice_id,
        "client_id": client_id,
        "rule": finding.rule.value,
        "subject": finding.subject,
        "since": finding.since,
        "evidence": canonical(evidence),
        "suggestion": suggestion,
    }


def report_of(entry: Any, versions: Sequence[Version] = ()) -> Report:
    """Answer a pain entry as the rules take it, with the movement's name where a version has it."""
    return Report(
        event_id=entry.event_id,
        day=entry.day,
        moment=entry.instant.isoformat(),
        rating=entry.rating,
        region=Region(entry.region),
        side=Side(entry.side),
        when=When(entry.felt),
        exercise=_exercise_name(entry.prescription, entry.day, versions),
    )


def _exercise_name(key: str | None, day: date, versions: Sequence[Version]) -> str | None:
    """Name the movement behind a prescription's key, by the newest version of that day that has it."""
    if key is None:
        return None
    for version in sorted(versions, key=lambda v: (v.effective_on <= day, v.number), reverse=True):
        for session in version.content.sessions:
            for one in session.prescriptions if isinstance(session, Circuit) else ():
                if one.key == key and one.exercise in version.library:
                    return version.library[one.exercise].name
    return None


def _symptom(event: Any) -> SymptomReport:
    symptom = Symptom(json.loads(event.body)["symptom"])
    return SymptomReport(event.id, event.local_day, event.instant.isoformat(), symptom)


def _rated(events: Iterable[Any], sessions: Iterable[Held]) -> Iterable[Rated]:
    """Answer the rated sessions as they were done; a session rated twice counts with its last rating."""
    by_id = {one.planned_id: one for one in sessions}
    last: dict[str, Rated] = {}
    for event in events:
        planned, effort = by_id.get(event.planned_id or ""), json.loads(event.body).get("effort")
        if planned is not None and effort is not None:
            last.pop(planned.planned_id, None)
            rated = Rated(event.id, event.local_day, planned.name, planned.expected_effort, effort)
            last[planned.planned_id] = rated
    return last.values()
