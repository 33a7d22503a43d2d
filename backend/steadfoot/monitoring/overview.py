"""One client whole, and adherence over any span."""

import json
from collections.abc import Sequence
from datetime import date, datetime, timedelta
from itertools import groupby
from typing import Any

from sqlmodel import Session

from steadfoot.checkins import service as checkins
from steadfoot.core.clock import local_date
from steadfoot.identity import service as identity
from steadfoot.monitoring import flags, messages, progressions, sheet, store
from steadfoot.monitoring.person import (
    LONG_SPAN_DAYS,
    SHORT_SPAN_DAYS,
    Judged,
    Moment,
    adherence,
    age_of,
    goal_ahead,
    judged,
    moment_of,
    ridge,
    session_out,
)
from steadfoot.monitoring.person_schemas import (
    AdherenceOut,
    NoteOut,
    Overview,
    OverviewClient,
    PainNote,
    PainOut,
    PainRegion,
    PossibleDouble,
    ProgramShort,
)
from steadfoot.monitoring.schemas import EvidenceOut
from steadfoot.monitoring.sheet import Sheet
from steadfoot.monitoring.upkeep import report_of
from steadfoot.programs import service as programs
from steadfoot.rules.adherence import WEEK_DAYS
from steadfoot.rules.pain import Thresholds
from steadfoot.rules.pain_course import improvements
from steadfoot.rules.ridge import monday_of

_WEEKS_BEHIND, _WEEKS_AHEAD, _PAIN_WEEKS = 4, 1, 8
_NOTES_SHOWN = 50


def client_adherence(
    session: Session, practice_id: str, client_id: str, first: date | None, last: date | None, now: datetime
) -> AdherenceOut:
    """Answer adherence from one day to another, by default over the last 28 days.

    Raises:
        NotFound: the client is unknown, or another practice's.
    """
    client = identity.client_of(session, practice_id, client_id)
    moment = _moment(session, client, now)
    last = last or moment.today
    first = first or last - timedelta(days=LONG_SPAN_DAYS - 1)
    known = sheet.read(store.sheet(session, practice_id, client_id))
    sessions = judged(known.sessions(first, last), moment)
    span = adherence(sessions, first, last)
    return AdherenceOut(
        client_id=client_id,
        **{"from": first},
        to=last,
        by_session=span.by_session,
        by_set=span.by_set,
        sessions=[session_out(one) for one in sessions],
    )


def overview(session: Session, practice_id: str, client_id: str, now: datetime) -> Overview:
    """Answer everything that the page of one client shows.

    Raises:
        NotFound: the client is unknown, or another practice's.
    """
    client = identity.client_of(session, practice_id, client_id)
    moment = _moment(session, client, now)
    known = sheet.read(store.sheet(session, practice_id, client_id))
    sessions = judged(known.sessions(date.min, date.max), moment)
    current = programs.current(session, practice_id, client_id)
    pain_since = monday_of(moment.today) - timedelta(weeks=_PAIN_WEEKS - 1)
    pain = checkins.pain(session, practice_id, pain_since, client_id)
    return Overview(
        client=_client(client, moment.today),
        program=_program(current),
        current_number=current.number if current else None,
        phone_number=checkins.newest_version_named(session, practice_id, client_id, date.min),
        goal=goal_ahead(known, moment.today),
        heard_until=moment.heard_at,
        adherence_7=adherence(sessions, moment.ago(SHORT_SPAN_DAYS), moment.today),
        adherence_28=adherence(sessions, moment.ago(LONG_SPAN_DAYS), moment.today),
        ridge=ridge(known, moment),
        days=[session_out(one) for one in _near(sessions, moment.today)],
        pain=[_pain(entry) for entry in pain],
        pain_regions=_regions(pain, client.usual_pain, moment),
        pain_notes=_pain_notes(session, client, moment),
        flags=flags.flags(session, practice_id, now, client_id=client_id),
        messages=messages.listed(session, practice_id, client_id),
        notes=_notes(session, practice_id, client_id),
        refused_count=len(checkins.refused_of(session, practice_id, client_id)),
        possible_doubles=_doubles(known, sessions),
        suggestions=progressions.short(session, client, now),
    )


def _moment(session: Session, client: Any, now: datetime) -> Moment:
    heard_at = identity.last_heard_at(session, client.practice_id, client.id)
    return moment_of(client.time_zone, heard_at, local_date(now, client.time_zone))


def _client(client: Any, today: date) -> OverviewClient:
    return OverviewClient(
        id=client.id,
        display_name=client.display_name,
        age=age_of(client.birth_year, today),
        birth_year=client.birth_year,
        time_zone=client.time_zone,
        kit=client.kit,
        usual_pain=client.usual_pain,
        thresholds=client.thresholds,
        note=client.note,
        archived_at=client.archived_at,
        version=client.version,
    )


def _program(current: programs.Version | None) -> ProgramShort | None:
    if current is None:
        return None
    return ProgramShort(number=current.number, published_at=current.published_at, title=current.content.title)


def _near(sessions: Sequence[Judged], today: date) -> list[Judged]:
    """Answer the sessions of the running week, the four before it and the next."""
    monday = monday_of(today)
    first = monday - timedelta(weeks=_WEEKS_BEHIND)
    last = monday + timedelta(days=WEEK_DAYS * (_WEEKS_AHEAD + 1) - 1)
    return [one for one in sessions if first <= one[0].day <= last]


def _pain(entry: Any) -> PainOut:
    return PainOut(
        event_id=entry.event_id,
        day=entry.day,
        at=entry.instant,
        rating=entry.rating,
        region=entry.region,
        side=entry.side,
        aspect=entry.aspect,
        when=entry.felt,
        planned_id=entry.planned_id,
    )


def _regions(pain: Sequence[Any], usual_pain: int, moment: Moment) -> list[PainRegion]:
    def place(entry: Any) -> tuple[str, str]:
        return entry.region, entry.side

    return [
        _region(region, side, list(entries), usual_pain, moment)
        for (region, side), entries in groupby(sorted(pain, key=place), key=place)
    ]


def _region(region: str, side: str, entries: Sequence[Any], usual_pain: int, moment: Moment) -> PainRegion:
    first = monday_of(moment.today) - timedelta(weeks=_PAIN_WEEKS - 1)
    mondays = [first + timedelta(weeks=week) for week in range(_PAIN_WEEKS)]
    above = [entry.day for entry in entries if entry.rating > usual_pain]
    return PainRegion(
        region=region,
        side=side,
        quiet_days=(moment.today - max(above)).days if above else None,
        worst_by_week=[
            max((entry.rating for entry in entries if monday_of(entry.day) == monday), default=None)
            for monday in mondays
        ],
    )


def _pain_notes(session: Session, client: Any, moment: Moment) -> list[PainNote]:
    """Look at all there ever was: a course is told from its first report on."""
    thresholds = Thresholds.of(client.thresholds, client.usual_pain)
    reports = [report_of(entry) for entry in checkins.pain(session, client.practice_id, date.min, client.id)]
    return [
        PainNote(
            region=note.last.region,
            side=note.last.side,
            sentence=note.sentence,
            evidence=[
                EvidenceOut(event_id=one.event_id, day=one.day, sentence=one.sentence(moment.today))
                for one in note.evidence(thresholds)
            ],
            kind=note.cited.kind,
            source=note.cited.source,
        )
        for note in improvements(reports)
    ]


def _notes(session: Session, practice_id: str, client_id: str) -> list[NoteOut]:
    """Answer the newest notes, the newest first."""
    events = checkins.events_of_kinds(session, practice_id, client_id, ("note_written",))
    newest = list(reversed(events))[:_NOTES_SHOWN]
    return [NoteOut(event_id=one.id, day=one.local_day, text=json.loads(one.body)["text"]) for one in newest]


def _doubles(known: Sheet, sessions: Sequence[Judged]) -> list[PossibleDouble]:
    extra_days = {extra.day for extra in known.extras}
    return [
        PossibleDouble(day=held.done_on, planned_id=held.planned_id, name=held.name)
        for held, _ in sessions
        if held.done_on is not None and held.done_on in extra_days
    ]
