"""What a season was planned from, kept in the program's content so that it can be planned again (decision 0009).

The dated sessions say what the client does; this says why they lie where they lie. A phone never needs it.
"""

from collections.abc import Iterator
from datetime import date, timedelta
from enum import StrEnum
from typing import Annotated

from pydantic import Field, model_validator

from steadfoot.core.texts import JSON_INT, Code, JsonBool
from steadfoot.programs.parts import ClimbM, Day, DistanceKm, PackKg, Part
from steadfoot.rules import season_request as rules
from steadfoot.rules.adherence import WEEK_DAYS
from steadfoot.rules.season_replan import Pause
from steadfoot.rules.season_walks import Thing

PINS_MAX, AWAY_MAX, STRENGTH_KINDS_MAX = 200, 20, 6
_KM_PARTS, _M_PARTS, _KG_PARTS = 10, 0.1, 2
_ROUNDING = 1e-6
_PerWeek = Annotated[int, Field(ge=0, le=rules.WALKS_MAX_SESSIONS_A_WEEK), JSON_INT]


class Weekday(StrEnum):
    """A day of the week."""

    MON = "mon"
    TUE = "tue"
    WED = "wed"
    THU = "thu"
    FRI = "fri"
    SAT = "sat"
    SUN = "sun"


WEEKDAYS = tuple(Weekday)


class WalkLevel(Part):
    """A walk as a level: how far, how high, with what on the back."""

    distance_km: Annotated[DistanceKm, Field(ge=1)] = Field(description="Kilometres, 1 to 100.")
    ascent_m: ClimbM = Field(description="Metres up, 0 to 5000.")
    pack_kg: PackKg = Field(description="Weight of the pack in kg, 0 to 60.")


class PinnedSession(Part):
    """A session that stays on its day whatever is planned around it."""

    date: Day
    activity: rules.Activity
    locked: JsonBool = Field(default=False, description="The client, too, does it on this day only.")


class Away(Part):
    """Days without any session, both ends included."""

    first: Day
    last: Day

    @model_validator(mode="after")
    def _in_order(self) -> "Away":
        if self.last < self.first:
            raise ValueError("the last day away must not lie before the first")
        return self


class PausedFor(Part):
    """Why and when training paused: the first day missed, and the day on which it is taken up again."""

    reason: Pause
    since: Day
    resume_on: Day


class SeasonPlan(Part):
    """What a season is planned from."""

    starts_on: Day
    trip_on: Day = Field(description="First day of the trip.")
    weekdays: Annotated[list[Weekday], Field(min_length=1, max_length=WEEK_DAYS)]
    strength_a_week: _PerWeek
    walks_a_week: _PerWeek = 1
    cardio_a_week: Annotated[int, Field(ge=0, le=WEEK_DAYS - rules.REST_DAYS_A_WEEK), JSON_INT] | None = Field(
        default=None, description="0 to 6; null fills the days that are left."
    )
    things_a_week: Annotated[int, Field(ge=1, le=rules.THINGS_MAX), JSON_INT] = Field(
        default=rules.THINGS_A_WEEK, description="How many of distance, ascent and pack grow in one week, 1 to 3."
    )
    walking: WalkLevel = Field(description="The longest walk of late.")
    longest_day: WalkLevel = Field(description="What walks should grow to: the trip's longest day.")
    pins: Annotated[list[PinnedSession], Field(max_length=PINS_MAX)] = []
    away: Annotated[list[Away], Field(max_length=AWAY_MAX)] = []
    accepted: Annotated[list[Thing], Field(max_length=len(Thing))] = Field(
        default=[], description="What the person goes with knowingly although walks do not grow to it in time."
    )
    circuits: Annotated[list[Code], Field(max_length=STRENGTH_KINDS_MAX)] = Field(
        default=[], description="Keys of the circuits that strength sessions take in turn."
    )
    paused: PausedFor | None = Field(default=None, description="The pause after which it was planned again.")


def request_of(plan: SeasonPlan) -> rules.Request:
    """Answer the season asked for in the form of the rules; pins before its start have been lived through.

    Raises:
        OutOfRange, NotPossible: as the rules say.
    """
    return rules.Request(
        start=plan.starts_on,
        trip=plan.trip_on,
        weekdays=frozenset(WEEKDAYS.index(day) for day in plan.weekdays),
        strength_a_week=plan.strength_a_week,
        walking=level_of(plan.walking),
        goal=level_of(plan.longest_day),
        walks_a_week=plan.walks_a_week,
        cardio_a_week=plan.cardio_a_week,
        things_a_week=plan.things_a_week,
        pins=tuple(rules.Pin(pin.date, pin.activity) for pin in plan.pins if pin.date >= plan.starts_on),
        away=frozenset(day for away in plan.away for day in _days(away)),
    )


def level_of(walk: WalkLevel) -> rules.Level:
    """Answer a walk in the form of the rules."""
    return rules.Level(walk.distance_km, walk.ascent_m, walk.pack_kg)


def walk_of(level: rules.Level) -> WalkLevel:
    """Answer a level as a walk to do: rounded down to 0.1 km, 10 m and 0.5 kg, so that no step becomes larger."""
    return WalkLevel(
        distance_km=_down(level.distance_km, _KM_PARTS),
        ascent_m=int(_down(level.ascent_m, _M_PARTS)),
        pack_kg=_down(level.pack_kg, _KG_PARTS),
    )


def _down(value: float, parts: float) -> float:
    return int(value * parts + _ROUNDING) / parts


def _days(away: Away) -> Iterator[date]:
    for days in range(min((away.last - away.first).days, rules.SEASON_MAX_DAYS) + 1):
        yield away.first + timedelta(days=days)
