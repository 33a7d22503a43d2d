"""The caseload: every client, in the order in which they need someone, from a fixed number of queries."""

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import date, datetime, timedelta
from typing import Any

from sqlmodel import Session

from steadfoot.checkins import service as checkins
from steadfoot.core.clock import local_date
from steadfoot.identity import service as identity
from steadfoot.identity.access import PractitionerAccess
from steadfoot.monitoring import sheet, store
from steadfoot.monitoring.flags import FlagStatus, Standing, standings_of
from steadfoot.monitoring.person import (
    LONG_SPAN_DAYS,
    SHORT_SPAN_DAYS,
    Judged,
    Moment,
    adherence_pair,
    day_mark,
    goal_ahead,
    judged,
    moment_of,
    ridge,
)
from steadfoot.monitoring.person_schemas import (
    AdherencePair,
    Caseload,
    Headline,
    ReasonOut,
    Row,
    RowClient,
    RowSuggestion,
    WorstPain,
)
from steadfoot.monitoring.sheet import Sheet
from steadfoot.rules.adherence import WEEK_DAYS
from steadfoot.rules.attention import Group, Person, Reason, WeekSoFar, happened, reason_of, sort_key
from steadfoot.rules.ridge import monday_of
from steadfoot.rules.vocabulary import Status

LAST_DAYS_SHOWN = 6


@dataclass(slots=True)
class _Known:
    """What the queries tell of one client."""

    sheet: Sheet
    devices: list[Any] = field(default_factory=list)
    flags: list[Standing] = field(default_factory=list)
    pain: list[Any] = field(default_factory=list)
    refused: int = 0

    def heard_at(self) -> datetime | None:
        times = [device.last_heard_at for device in self.devices if device.last_heard_at]
        return max(times, default=None)

    def paired_at(self) -> datetime | None:
        return min((device.paired_at for device in self.devices if device.revoked_at is None), default=None)


def caseload(session: Session, access: PractitionerAccess, now: datetime) -> Caseload:
    """Answer everyone who is not archived, the most urgent first."""
    clients = [one for one in identity.clients_of(session, access.practice_id) if one.archived_at is None]
    known = _known(session, access.practice_id, now)
    rows = [_row(client, known.get(client.id) or _Known(sheet.EMPTY), now) for client in clients]
    rows.sort(key=lambda pair: pair[0])
    for place, (_, row) in enumerate(rows, start=1):
        row.place = place
    items = [row for _, row in rows]
    groups = [row.group for row in items]
    return Caseload(
        as_of=now,
        today=local_date(now, access.time_zone),
        headline=Headline(people=len(items), need_you=groups.count(Group.NEEDS_YOU), silent=groups.count(Group.SILENT)),
        items=items,
    )


def _known(session: Session, practice_id: str, now: datetime) -> dict[str, _Known]:
    known: dict[str, _Known] = defaultdict(lambda: _Known(sheet.EMPTY))
    for client_id, text in store.sheets(session, practice_id).items():
        known[client_id].sheet = sheet.read(text)
    for device in identity.devices_of_practice(session, practice_id):
        known[device.client_id].devices.append(device)
    for standing in standings_of(session, practice_id):
        known[standing.finding.client_id].flags.append(standing)
    # One day more than the span: a client's own day may be behind the clock's.
    for entry in checkins.pain(session, practice_id, now.date() - timedelta(days=SHORT_SPAN_DAYS)):
        known[entry.client_id].pain.append(entry)
    for client_id, count in checkins.refused_counts(session, practice_id).items():
        known[client_id].refused = count
    return known


def _row(client: Any, known: _Known, now: datetime) -> tuple[tuple[Any, ...], Row]:
    moment = moment_of(client, known.heard_at(), now)
    sessions = judged(known.sheet.sessions(_first_day(known.sheet, moment), moment.today), moment)
    spans, goal = adherence_pair(sessions, moment), goal_ahead(known.sheet, moment.today)
    open_flags = [one for one in known.flags if one.status is FlagStatus.OPEN]
    person = _person(client, known, moment, sessions, spans, open_flags)
    reason = reason_of(person)
    days_to = goal.days_to if goal else None
    row = Row(
        client=RowClient(id=client.id, display_name=client.display_name, age=age(client, moment.today)),
        goal=goal,
        weeks_to_trip=days_to // WEEK_DAYS if days_to is not None and days_to >= 0 else None,
        place=0,
        group=reason.group,
        reason=_reason(reason),
        happened=happened(person),
        suggestion=_suggestion(reason),
        adherence=spans,
        last_heard_at=known.heard_at(),
        pain=_worst(known.pain, moment),
        open_flags=[one.short() for one in open_flags],
        last_days=[day_mark(one) for one in sessions[-LAST_DAYS_SHOWN:]],
        ridge=ridge(known.sheet, moment),
    )
    return (*sort_key(reason, days_to, client.display_name), client.id), row


def _first_day(known: Sheet, moment: Moment) -> date:
    """As far back as adherence, the last days shown, and the windows reach that were open when last heard."""
    if moment.heard_on is None:
        return date.min
    shown = known.day_of_last(LAST_DAYS_SHOWN, moment.today)
    return min(moment.ago(LONG_SPAN_DAYS), shown or moment.today, monday_of(moment.heard_on))


def _person(
    client: Any,
    known: _Known,
    moment: Moment,
    sessions: Sequence[Judged],
    spans: AdherencePair,
    open_flags: Sequence[Standing],
) -> Person:
    paired = known.paired_at()
    week = spans.days_7.by_session
    first = moment.ago(SHORT_SPAN_DAYS)
    return Person(
        name=client.display_name,
        today=moment.today,
        has_program=known.sheet.number is not None,
        flags=[one.for_order(moment.today) for one in open_flags],
        refused=known.refused,
        missed_on=_days_with(sessions, Status.MISSED),
        not_heard_on=[held.day for held, stands in sessions if stands.due and not stands.settled],
        heard_on=moment.heard_on,
        paired_on=local_date(paired, client.time_zone) if paired else None,
        weeks=_weeks(known.sheet, moment.today),
        done_7_days=week.done,
        prescribed_7_days=week.prescribed,
        not_heard_7_days=sum(held.day >= first and stands.due and not stands.settled for held, stands in sessions),
    )


def _days_with(sessions: Sequence[Judged], status: Status) -> list[date]:
    return [held.day for held, stands in sessions if stands.status is status]


def _weeks(known: Sheet, today: date) -> list[WeekSoFar]:
    """Answer the running week and the one before."""
    running = monday_of(today)
    mondays = (running, running - timedelta(days=WEEK_DAYS))
    extras = [monday_of(extra.day) for extra in known.extras]
    return [
        WeekSoFar(week.planned_load, week.done_load, extras.count(week.starts_on))
        for week in known.weeks
        if week.starts_on in mondays
    ]


def age(client: Any, today: date) -> int | None:
    """Answer the age reached in this year; only the year of birth is kept."""
    return None if client.birth_year is None else today.year - client.birth_year


def _reason(reason: Reason) -> ReasonOut:
    return ReasonOut(
        rule=reason.rule.value,
        sentence=reason.sentence,
        since=reason.since,
        kind=reason.cited.kind,
        source=reason.cited.source,
    )


def _suggestion(reason: Reason) -> RowSuggestion | None:
    found = reason.suggestion
    return RowSuggestion(sentence=found.sentence, flag_id=found.flag_id, action=found.action) if found else None


def _worst(pain: Sequence[Any], moment: Moment) -> WorstPain | None:
    recent = [entry for entry in pain if entry.day >= moment.ago(SHORT_SPAN_DAYS)]
    if not recent:
        return None
    worst = max(recent, key=lambda entry: (entry.rating, entry.instant, entry.event_id))
    return WorstPain(worst_7d=worst.rating, region=worst.region, side=worst.side, on=worst.day)
