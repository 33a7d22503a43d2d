"""One client's load by day and week, with what each number can and cannot tell."""

from collections import defaultdict
from datetime import date, datetime, timedelta

from sqlmodel import Session

from steadfoot.core.clock import local_date
from steadfoot.identity import service as identity
from steadfoot.monitoring import sheet, store
from steadfoot.monitoring.person import Moment, moment_of
from steadfoot.monitoring.progression_schemas import DayLoad, LoadOut, LoadWords, WeekLoad
from steadfoot.monitoring.sheet import Sheet
from steadfoot.rules import load as rules
from steadfoot.rules.adherence import WEEK_DAYS
from steadfoot.rules.load import LoadNumber
from steadfoot.rules.ridge import monday_of

_ABOUT = {
    LoadNumber.WEEKLY_LOAD: "Weekly load",
    LoadNumber.MONOTONY: "Monotony",
    LoadNumber.STRAIN: "Strain",
    LoadNumber.EWMA_7: "Average over 7 days",
    LoadNumber.EWMA_28: "Average over 28 days",
}


def client_load(session: Session, practice_id: str, client_id: str, now: datetime) -> LoadOut:
    """Answer a client's load from the first day of the program through the last day that the phone has told about.

    Days after that may hold more than is known, so they are in no number. A day without an entry before it is rest.

    Raises:
        NotFound: the client is unknown, or another practice's.
    """
    client = identity.client_of(session, practice_id, client_id)
    heard = identity.last_heard_at(session, practice_id, client_id)
    moment = moment_of(client.time_zone, heard, local_date(now, client.time_zone))
    known = sheet.read(store.sheet(session, practice_id, client_id))
    days = _days(_by_day(known), known, moment)
    found = rules.load([one.load for one in days]) if len(days) >= WEEK_DAYS else None
    return LoadOut(
        through=days[-1].day if days else None,
        days=days,
        weekly=_weekly(days),
        weekly_load=found.weekly_load if found else None,
        monotony=found.monotony if found else None,
        strain=found.strain if found else None,
        ewma_7=found.ewma_7 if found else None,
        ewma_28=found.ewma_28 if found else None,
        words=[
            LoadWords(code=code, about=_ABOUT[code], can_tell=tells.can, cannot_tell=tells.cannot, source=tells.source)
            for code, tells in rules.LIMITS.items()
        ],
        caution=rules.CAUTION,
    )


def _by_day(known: Sheet) -> dict[date, float]:
    """Add up what was done on the day on which it was done, whatever day it was planned for."""
    found: dict[date, float] = defaultdict(float)
    for held in known.sessions(date.min, date.max):
        if held.done_on is not None:
            found[held.done_on] += held.load().done
    for extra in known.extras:
        found[extra.day] += extra.done
    return found


def _days(by_day: dict[date, float], known: Sheet, moment: Moment) -> list[DayLoad]:
    planned = known.day_of_first()
    begun = [*by_day, *([planned] if planned else [])]
    if not begun or moment.heard_on is None:
        return []
    first, last = min(begun), min(moment.heard_on, moment.today)
    span = range((last - first).days + 1)
    days = (first + timedelta(days=step) for step in span)
    return [DayLoad(day=day, load=min(by_day.get(day, 0), rules.DAY_LOAD_MAX)) for day in days]


def _weekly(days: list[DayLoad]) -> list[WeekLoad]:
    found: dict[date, float] = defaultdict(float)
    for one in days:
        found[monday_of(one.day)] += one.load
    return [WeekLoad(starts_on=monday, load=load) for monday, load in found.items()]
