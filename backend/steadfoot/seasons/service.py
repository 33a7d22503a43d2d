"""Planning a season, taking it up again after a pause, laying it into a program, and what its page begins with."""

import json
from collections.abc import Callable
from datetime import date, datetime, timedelta
from typing import TypeVar

from sqlmodel import Session

from steadfoot.checkins.service import events_of_kinds
from steadfoot.core.clock import local_date
from steadfoot.core.problems import Invalid, NotFound
from steadfoot.identity import service as identity
from steadfoot.identity.access import PractitionerAccess
from steadfoot.programs import service as programs
from steadfoot.programs.content import Circuit, ProgramContent
from steadfoot.programs.drafts import draft_of
from steadfoot.programs.season import PausedFor, SeasonPlan, WalkLevel, request_of, walk_of
from steadfoot.programs.templates import template_of
from steadfoot.rules.dose import CLIMB_MAX_M, DISTANCE_MAX_KM, PACK_MAX_KG
from steadfoot.rules.ranges import NotWhole, OutOfRange
from steadfoot.rules.season import Season, plan
from steadfoot.rules.season_replan import resume
from steadfoot.rules.season_request import WALK_MIN_KM, Level, NotPossible
from steadfoot.rules.season_walks import GOAL_ASSUMED, WALKING_ASSUMED, WALKING_RECENT_DAYS
from steadfoot.rules.walking_time import naismith_h
from steadfoot.seasons.layout import Frame, lay_out
from steadfoot.seasons.schemas import LayOutBody, ResumeBody, Resumption, SeasonStart
from steadfoot.trips.service import Trip, trip_of

_Answer = TypeVar("_Answer")


def start_of(session: Session, access: PractitionerAccess, client_id: str, now: datetime) -> SeasonStart:
    """Answer what a client's season page begins with.

    Raises:
        NotFound: unknown, or another practice's.
    """
    client = identity.client_of(session, access.practice_id, client_id)
    today = local_date(now, client.time_zone)
    content = _content_of(session, access, client_id)
    goal = content.goal if content else None
    walk, walked_on = _walked(session, access.practice_id, client_id, today)
    trip = trip_of(session, access.practice_id, client_id)
    return SeasonStart(
        today=today,
        season=content.season if content else None,
        starts_on=today + timedelta(days=1),
        trip_name=goal.name if goal else "",
        trip_on=goal.date if goal else None,
        walking=walk,
        walked_on=walked_on,
        longest_day=walk_of(longest_day(trip) if trip else GOAL_ASSUMED),
        longest_day_known=trip is not None,
    )


def longest_day(trip: Trip) -> Level:
    """Answer the day of a trip that takes longest to walk, its legs put together, with its heaviest pack.

    Metres that are not known count as none.
    """
    days = [[leg for leg in trip.legs if leg.day == day] for day in sorted({leg.day for leg in trip.legs})]
    levels = [
        plannable(
            sum(leg.distance_km for leg in legs),
            sum(leg.ascent_m or 0.0 for leg in legs),
            max(leg.pack_kg for leg in legs),
        )
        for legs in days
    ]
    return max(levels, key=lambda day: naismith_h(day.distance_km, day.ascent_m))


def plannable(distance_km: float, ascent_m: float, pack_kg: float) -> Level:
    """Answer a walk as a level, cut to what the rules plan for: 1 to 100 km, 5000 m up, 60 kg."""
    return Level(
        min(max(distance_km, WALK_MIN_KM), DISTANCE_MAX_KM), min(ascent_m, CLIMB_MAX_M), min(pack_kg, PACK_MAX_KG)
    )


def _content_of(session: Session, access: PractitionerAccess, client_id: str) -> ProgramContent | None:
    try:
        return draft_of(session, access, client_id).content
    except NotFound:
        version = programs.current(session, access.practice_id, client_id)
        return version.content if version else None


def _walked(session: Session, practice_id: str, client_id: str, today: date) -> tuple[WalkLevel, date | None]:
    """Answer the longest walk of the last weeks and its day; without one, what is assumed, and None."""
    since = today - timedelta(days=WALKING_RECENT_DAYS)
    logged = events_of_kinds(session, practice_id, client_id, ("walk_logged",))
    walks = [(json.loads(event.body), event.local_day) for event in logged if since <= event.local_day <= today]
    long_enough = [(body, day) for body, day in walks if body["distance_km"] >= WALK_MIN_KM]
    if not long_enough:
        return walk_of(WALKING_ASSUMED), None
    body, day = max(long_enough, key=lambda one: (one[0]["distance_km"], one[1]))
    return walk_of(plannable(body["distance_km"], body["ascent_m"], body["pack_kg"])), day


def planned(season: SeasonPlan) -> Season:
    """Answer the season that the rules propose.

    Raises:
        Invalid: a number cannot be, or the request contradicts itself; by how much, and what would help.
    """
    return _or_invalid(lambda: plan(request_of(season)))


def resumption(body: ResumeBody) -> Resumption:
    """Answer the rest of a season after a pause.

    Raises:
        Invalid: as for ``planned``, or the dates of the pause do not fit.
    """
    found = _or_invalid(lambda: resume(request_of(body.season), body.reason, body.since, body.resume_on))
    rest = {
        "starts_on": body.resume_on,
        "walking": walk_of(found.asked.walking),
        "things_a_week": found.asked.things_a_week,
        "pins": [pin for pin in body.season.pins if pin.date >= body.resume_on],
        "accepted": [],
        "paused": PausedFor(reason=body.reason, since=body.since, resume_on=body.resume_on),
    }
    return Resumption(
        season=body.season.model_copy(update=rest), before=walk_of(found.before), keeps_percent=found.keeps_percent
    )


def content_of(session: Session, practice_id: str, client_id: str, body: LayOutBody, now: datetime) -> ProgramContent:
    """Answer the program that a season makes of another, or of a template's circuits; nothing is saved.

    Raises:
        NotFound: unknown client, or another practice's; no such template.
        Invalid: a circuit is not there or none was chosen, or as for ``planned``.
    """
    today = local_date(now, identity.client_of(session, practice_id, client_id).time_zone)
    template = template_of(session, practice_id, body.template) if body.template else None
    sessions = template.sessions if template else body.content.sessions if body.content else []
    there = {one.key: one for one in sessions if isinstance(one, Circuit)}
    circuits = [there[key] for key in body.circuits if key in there]
    if len(circuits) < len(body.circuits):
        raise _refused("circuits", "unknown_session", "A circuit that was chosen is not there any more.")
    if body.season.strength_a_week and not circuits:
        raise _refused("circuits", "no_circuit", "Choose at least one circuit for the strength sessions.")
    title = body.content.title if body.content else template.name if template else body.trip_name
    frame = Frame(title or body.trip_name, body.trip_name, body.names)
    return _or_invalid(lambda: lay_out(body.season, body.content, circuits, frame, today))


def _refused(field: str, code: str, text: str) -> Invalid:
    return Invalid("validation", text, errors=[{"pointer": f"/body/{field}", "code": code, "detail": text}])


def _or_invalid(ask: Callable[[], _Answer]) -> _Answer:
    try:
        return ask()
    except NotPossible as why:
        raise Invalid(
            "season-not-possible",
            str(why),
            name=why.name,
            short_by=why.short_by,
            unit=why.unit,
            choices=why.choices.split("; "),
        ) from why
    except (OutOfRange, NotWhole) as why:
        raise Invalid("season-out-of-range", _in_words(why)) from why


def _in_words(why: OutOfRange | NotWhole) -> str:
    if isinstance(why, OutOfRange) and why.name == "days_to_trip":
        return f"The trip has to begin after the season does, and within {why.high:g} days of it."
    return str(why)
