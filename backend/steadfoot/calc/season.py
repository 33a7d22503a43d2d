"""``steadfoot calc season``."""

from datetime import date
from typing import Annotated, Any

import typer

from steadfoot.calc.answer import AsJson, tell, work_of
from steadfoot.calc.refusals import NotReadable
from steadfoot.rules.season import Season, Session, Week, plan
from steadfoot.rules.season_request import Activity, Level, Pin, Request
from steadfoot.rules.season_walks import GOAL_ASSUMED, WALKING_ASSUMED

_WEEKDAYS = ("mon", "tue", "wed", "thu", "fri", "sat", "sun")
_WALK_FORM = "km, metres of ascent and kg on the back, such as 8,300,4"
_PIN_FORM = "a date and strength, walk or cardio, such as 2027-05-01=walk"


def season(
    start: Annotated[str, typer.Option(help="First day, such as 2027-04-17.")],
    trip: Annotated[str, typer.Option(help="First day of the trip.")],
    days: Annotated[str, typer.Option(help="Days open for sessions, such as mon,wed,sat.")],
    strength: Annotated[int, typer.Option(help="Strength sessions a week.")],
    walks: Annotated[int, typer.Option(help="Walks a week, the first of them long.")] = 1,
    cardio: Annotated[int | None, typer.Option(help="Cardio sessions a week; else the open days left.")] = None,
    walking: Annotated[str | None, typer.Option(help=f"Longest walk of late: {_WALK_FORM}.")] = None,
    goal: Annotated[str | None, typer.Option(help=f"What walks should grow to: {_WALK_FORM}.")] = None,
    pin: Annotated[list[str] | None, typer.Option(help=f"A session that stays: {_PIN_FORM}.")] = None,
    away: Annotated[list[str] | None, typer.Option(help="A day without any session.")] = None,
    as_json: AsJson = False,
) -> None:
    """Plan the weeks back from a trip."""
    asked = Request(
        start=_date("start", start),
        trip=_date("trip", trip),
        weekdays=frozenset(_weekday(day.strip().lower(), days) for day in days.split(",")),
        strength_a_week=strength,
        walking=WALKING_ASSUMED if walking is None else _level("walking", walking),
        goal=GOAL_ASSUMED if goal is None else _level("goal", goal),
        walks_a_week=walks,
        cardio_a_week=cardio,
        pins=tuple(_pin(text) for text in pin or ()),
        away=frozenset(_date("away", text) for text in away or ()),
    )
    found = plan(asked)
    tell("Season", _answer(found, _assumed(walking, goal)), as_json=as_json)


def _answer(found: Season, assumed: list[str]) -> dict[str, Any]:
    return {
        "value": len(found.weeks),
        "unit": "weeks",
        "weeks": [_week(week) for week in found.weeks],
        "shortfalls": [
            {"name": one.name, "reached": one.reached, "wanted": one.wanted, "short_by": one.short_by, "unit": one.unit}
            for one in found.shortfalls
        ],
        "warnings": [*assumed, *found.warnings],
        "rule": "season",
        "source": "; ".join(work_of(key) for key in ("bosquet-2007", "house")),
    }


def _week(week: Week) -> dict[str, Any]:
    return {
        "starts_on": week.starts_on.isoformat(),
        "ends_on": week.ends_on.isoformat(),
        "phase": week.phase.value,
        "planned_load": week.planned_load,
        "sessions": [_session(one) for one in week.sessions],
    }


def _session(one: Session) -> dict[str, Any]:
    told = {"date": one.day.isoformat(), "kind": one.activity.value, "effort": one.effort, "minutes": one.minutes}
    walk = one.walk
    if walk is None:
        return told
    return told | {
        "distance_km": round(walk.distance_km, 1),
        "ascent_m": round(walk.ascent_m),
        "pack_kg": round(walk.pack_kg, 1),
    }


def _assumed(walking: str | None, goal: str | None) -> list[str]:
    said = (
        (walking, f"The longest walk of late is not given: {_words(WALKING_ASSUMED)} is assumed."),
        (goal, f"The trip's longest day is not given: walks grow towards {_words(GOAL_ASSUMED)}."),
    )
    return [words for given, words in said if given is None]


def _words(level: Level) -> str:
    return f"{level.distance_km:g} km, {level.ascent_m:g} m of ascent, {level.pack_kg:g} kg"


def _date(name: str, text: str) -> date:
    try:
        return date.fromisoformat(text.strip())
    except ValueError as error:
        raise NotReadable(name, text, "a date such as 2027-04-17") from error


def _weekday(day: str, text: str) -> int:
    if day not in _WEEKDAYS:
        raise NotReadable("days", text, f"days of the week, apart by commas: {', '.join(_WEEKDAYS)}")
    return _WEEKDAYS.index(day)


def _level(name: str, text: str) -> Level:
    try:
        distance_km, ascent_m, pack_kg = (float(part) for part in text.split(","))
    except ValueError as error:
        raise NotReadable(name, text, _WALK_FORM) from error
    return Level(distance_km, ascent_m, pack_kg)


def _pin(text: str) -> Pin:
    day, _, activity = text.partition("=")
    if activity.strip() not in tuple(Activity):
        raise NotReadable("pin", text, _PIN_FORM)
    return Pin(_date("pin", day), Activity(activity.strip()))
