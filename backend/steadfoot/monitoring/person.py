"""One client's weeks as of a moment: the sheet, judged with today and with when the phone was last heard."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from zoneinfo import ZoneInfo

from steadfoot.monitoring.held import Held
from steadfoot.monitoring.person_schemas import (
    AdherencePair,
    DayMark,
    GoalAhead,
    GoalOut,
    RatioOut,
    Ridge,
    RidgeWeek,
    SessionOut,
    SpanAdherence,
)
from steadfoot.monitoring.sheet import Sheet
from steadfoot.rules.adherence import WEEK_DAYS, Ratio, Standing, by_session, by_set, standing
from steadfoot.rules.ridge import monday_of, weeks

SHORT_SPAN_DAYS, LONG_SPAN_DAYS = WEEK_DAYS, 4 * WEEK_DAYS
Judged = tuple[Held, Standing]


@dataclass(frozen=True, slots=True)
class Moment:
    """Now, in a client's own time: the day, and when a phone of theirs was last heard."""

    today: date
    heard_at: datetime | None

    @property
    def heard_on(self) -> date | None:
        """The day on which a phone was last heard."""
        return self.heard_at.date() if self.heard_at else None

    def ago(self, days: int) -> date:
        """Answer the first day of a span of so many days that ends today."""
        return self.today - timedelta(days=days - 1)


def moment_of(time_zone: str, heard_at: datetime | None, today: date) -> Moment:
    """Answer the moment in a client's own time zone."""
    return Moment(today, heard_at.astimezone(ZoneInfo(time_zone)) if heard_at else None)


def age_of(birth_year: int | None, today: date) -> int | None:
    """Answer the age reached in this year; only the year of birth is kept."""
    return None if birth_year is None else today.year - birth_year


def judged(sessions: Sequence[Held], moment: Moment) -> list[Judged]:
    """Answer each planned session with where it stands."""
    return [(held, standing(held.planned(), moment.today, moment.heard_at)) for held in sessions]


def adherence(sessions: Sequence[Judged], first: date, last: date) -> SpanAdherence:
    """Answer adherence among the sessions planned from the first to the last day."""
    due = [(held.planned(), stands) for held, stands in sessions if first <= held.day <= last]
    return SpanAdherence(by_session=_ratio(by_session(due)), by_set=_ratio(by_set(due)))


def adherence_pair(sessions: Sequence[Judged], moment: Moment) -> AdherencePair:
    """Answer adherence over the last 7 and the last 28 days."""
    return AdherencePair(
        days_7=adherence(sessions, moment.ago(SHORT_SPAN_DAYS), moment.today),
        days_28=adherence(sessions, moment.ago(LONG_SPAN_DAYS), moment.today),
    )


def _ratio(ratio: Ratio) -> RatioOut:
    return RatioOut(prescribed=ratio.prescribed, done=ratio.done, low=ratio.low, high=ratio.high)


def day_mark(one: Judged) -> DayMark:
    """Answer a planned session in short."""
    held, stands = one
    return DayMark(
        planned_id=held.planned_id, date=held.day, name=held.name, status=stands.status, settled=stands.settled
    )


def session_out(one: Judged) -> SessionOut:
    """Answer a planned session with what was reported."""
    held, stands = one
    return SessionOut(
        planned_id=held.planned_id,
        date=held.day,
        name=held.name,
        status=stands.status,
        settled=stands.settled,
        kind=held.kind,
        sets_done=held.sets_done,
        sets_prescribed=held.sets_prescribed,
        program_version=held.program_version,
        done_on=held.done_on,
        effort=held.effort,
        minutes=held.minutes,
        planned_load=held.planned_load,
        done_load=held.done_load,
    )


def goal_ahead(sheet: Sheet, today: date) -> GoalAhead | None:
    """Answer the goal with the days left."""
    if sheet.goal is None:
        return None
    return GoalAhead(name=sheet.goal.name, date=sheet.goal.date, days_to=(sheet.goal.date - today).days)


def ridge(sheet: Sheet, moment: Moment) -> Ridge:
    """Answer the weeks of the program."""
    monday = monday_of(moment.today)
    this_week = sheet.sessions(monday, monday + timedelta(days=WEEK_DAYS - 1))
    running = [*(held.load() for held in this_week), *sheet.extras]
    found = weeks(sheet.weeks, running, moment.today, moment.heard_on)
    goal = GoalOut(name=sheet.goal.name, date=sheet.goal.date) if sheet.goal else None
    return Ridge(
        weeks=[
            RidgeWeek(
                starts_on=week.starts_on,
                planned_load=week.planned_load,
                done_load=week.done_load,
                heard=week.heard,
                due_share=week.due_share,
            )
            for week in found
        ],
        today=moment.today,
        heard_until=moment.heard_on,
        goal=goal,
    )
