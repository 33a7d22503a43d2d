"""One row of the caseload, worked out from plain values."""

from collections.abc import Sequence
from datetime import date, datetime, timedelta
from typing import Any, NamedTuple

from steadfoot.core.clock import local_date
from steadfoot.monitoring import sheet
from steadfoot.monitoring.flags import FlagStatus, Standing, standings
from steadfoot.monitoring.person import (
    LONG_SPAN_DAYS,
    SHORT_SPAN_DAYS,
    Judged,
    Moment,
    adherence_pair,
    age_of,
    day_mark,
    goal_ahead,
    judged,
    moment_of,
    ridge,
)
from steadfoot.monitoring.person_schemas import AdherencePair, ReasonOut, Row, RowClient, RowSuggestion, WorstPain
from steadfoot.monitoring.progression_facts import Standpoint, ready_sentence
from steadfoot.monitoring.sheet import Sheet
from steadfoot.monitoring.store import DecisionRow, FindingRow
from steadfoot.rules.adherence import WEEK_DAYS
from steadfoot.rules.attention import Group, Person, Reason, WeekSoFar, happened, reason_of, sort_key
from steadfoot.rules.ridge import monday_of
from steadfoot.rules.vocabulary import Status

LAST_DAYS_SHOWN = 6


class Known(NamedTuple):
    """All that a row depends on. ``pain`` entries are rating, instant, event id, region, side and day."""

    client_id: str
    display_name: str
    birth_year: int | None
    time_zone: str
    today: date
    heard_at: datetime | None
    paired_at: datetime | None
    sheet: str | None
    findings: tuple[FindingRow, ...]
    decisions: tuple[DecisionRow, ...]
    pain: tuple[tuple[int, datetime, str, str, str, date], ...]
    refused: int
    answered: tuple[str, ...]


def row_of(known: Known) -> tuple[tuple[Any, ...], Row]:
    """Answer what the client is sorted by, and their row."""
    read, moment = sheet.read(known.sheet), moment_of(known.time_zone, known.heard_at, known.today)
    sessions = judged(read.sessions(_first_day(read, moment), moment.today), moment)
    spans, goal = adherence_pair(sessions, moment), goal_ahead(read, moment.today)
    flags = [one for one in standings(known.findings, known.decisions) if one.status is FlagStatus.OPEN]
    person = _person(known, read, moment, sessions, spans, flags)
    reason = reason_of(person)
    days_to = goal.days_to if goal else None
    here = Standpoint(known.client_id, read, moment.today, spans.days_28.by_session, flags, known.answered)
    ready = here.ready()
    row = Row(
        client=RowClient(
            id=known.client_id, display_name=known.display_name, age=age_of(known.birth_year, known.today)
        ),
        goal=goal,
        weeks_to_trip=days_to // WEEK_DAYS if days_to is not None and days_to >= 0 else None,
        place=0,
        group=reason.group,
        reason=_reason(reason),
        happened=happened(person),
        suggestion=_suggestion(reason, ready_sentence(ready)),
        ready=len(ready),
        adherence=spans,
        last_heard_at=known.heard_at,
        pain=_worst(known, moment),
        open_flags=[one.short() for one in flags],
        last_days=[day_mark(one) for one in sessions[-LAST_DAYS_SHOWN:]],
        ridge=ridge(read, moment),
    )
    return (*sort_key(reason, days_to, known.display_name), known.client_id), row


def _first_day(known: Sheet, moment: Moment) -> date:
    """As far back as adherence, the last days shown, and the windows reach that were open when last heard."""
    if moment.heard_on is None:
        return date.min
    shown = known.day_of_last(LAST_DAYS_SHOWN, moment.today)
    return min(moment.ago(LONG_SPAN_DAYS), shown or moment.today, monday_of(moment.heard_on))


def _person(
    known: Known,
    read: Sheet,
    moment: Moment,
    sessions: Sequence[Judged],
    spans: AdherencePair,
    open_flags: Sequence[Standing[FindingRow, DecisionRow]],
) -> Person:
    paired = known.paired_at
    week = spans.days_7.by_session
    first = moment.ago(SHORT_SPAN_DAYS)
    return Person(
        name=known.display_name,
        today=moment.today,
        has_program=read.number is not None,
        flags=[one.for_order(moment.today) for one in open_flags],
        refused=known.refused,
        missed_on=_days_with(sessions, Status.MISSED),
        not_heard_on=[held.day for held, stands in sessions if stands.due and not stands.settled],
        heard_on=moment.heard_on,
        paired_on=local_date(paired, known.time_zone) if paired else None,
        weeks=_weeks(read, moment.today),
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


def _reason(reason: Reason) -> ReasonOut:
    return ReasonOut(
        rule=reason.rule.value,
        sentence=reason.sentence,
        since=reason.since,
        kind=reason.cited.kind,
        source=reason.cited.source,
    )


def _suggestion(reason: Reason, ready: str | None) -> RowSuggestion | None:
    """Who is on their way and ready for more waits for a decision; all others for an answer to their reason."""
    found = reason.suggestion
    if reason.group is Group.ON_THE_WAY and ready:
        return RowSuggestion(sentence=ready, flag_id=None, action="decide")
    return RowSuggestion(sentence=found.sentence, flag_id=found.flag_id, action=found.action) if found else None


def _worst(known: Known, moment: Moment) -> WorstPain | None:
    recent = [entry for entry in known.pain if entry[-1] >= moment.ago(SHORT_SPAN_DAYS)]
    if not recent:
        return None
    rating, _, _, region, side, day = max(recent)
    return WorstPain(worst_7d=rating, region=region, side=side, on=day)
