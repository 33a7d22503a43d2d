"""A season taken up again after a pause: from which walk, and how many things may grow in a week from there.

A step back, then the same planner. Whether someone is fit to begin again is not for these numbers to say.
"""

from dataclasses import dataclass, replace
from datetime import date
from enum import StrEnum
from typing import Annotated, Final

from steadfoot.rules.ranges import within
from steadfoot.rules.season import Phase, plan
from steadfoot.rules.season_request import SEASON_MAX_DAYS, WALK_MIN_KM, Level, Request
from steadfoot.rules.sources import Cited, Kind

ILLNESS_KEEPS_PERCENT: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "After an illness walks begin at 70 percent of the last one")]
] = 70
HOLIDAY_KEEPS_PERCENT: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "After days away in good health walks begin at 90 percent")]
] = 90
MISSED_KEEPS_PERCENT: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "After a fortnight without sessions walks begin at 80 percent")]
] = 80
PAIN_KEEPS_PERCENT: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "After a pause for pain walks begin at 60 percent")]
] = 60
LONG_PAUSE_DAYS: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "From four weeks on a pause is long, whatever it was for")]
] = 28
LONG_PAUSE_KEEPS_PERCENT: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "After a long pause walks begin at half of the last one at most")]
] = 50
PAIN_THINGS_A_WEEK: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "After pain one of distance, ascent and pack grows in a week")]
] = 1
_PERCENT: Final = 100


class Pause(StrEnum):
    """Why training paused."""

    ILLNESS = "illness"
    HOLIDAY = "holiday"
    MISSED_FORTNIGHT = "missed_fortnight"
    PAIN = "pain"


_KEEPS: Final = {
    Pause.ILLNESS: ILLNESS_KEEPS_PERCENT,
    Pause.HOLIDAY: HOLIDAY_KEEPS_PERCENT,
    Pause.MISSED_FORTNIGHT: MISSED_KEEPS_PERCENT,
    Pause.PAIN: PAIN_KEEPS_PERCENT,
}


@dataclass(frozen=True, slots=True)
class Resumed:
    """The season from the day it is taken up again, and how that came about.

    ``before`` is the longest walk that was planned before the pause, ``keeps_percent`` how much of it is kept.
    """

    asked: Request
    before: Level
    keeps_percent: int


def resume(asked: Request, pause: Pause, since: date, resume_on: date) -> Resumed:
    """Answer the rest of a season after a pause from ``since``, the first day missed, to the day before ``resume_on``.

    Raises:
        OutOfRange: it is taken up before it paused, or not before the trip.
        NotPossible: what is left cannot hold its pins.
    """
    paused_days = (resume_on - since).days
    within("days_of_the_pause", paused_days, 0, SEASON_MAX_DAYS, "days")
    within("days_left_to_the_trip", (asked.trip - resume_on).days, 1, SEASON_MAX_DAYS, "days")
    before, keeps = _built_by(asked, since), _keeps(pause, paused_days)
    rest = replace(
        asked,
        start=resume_on,
        walking=_stepped_back(before, keeps),
        things_a_week=PAIN_THINGS_A_WEEK if pause is Pause.PAIN else asked.things_a_week,
        pins=tuple(pin for pin in asked.pins if pin.day >= resume_on),
    )
    return Resumed(rest, before, keeps)


def _keeps(pause: Pause, days: int) -> int:
    return min(_KEEPS[pause], LONG_PAUSE_KEEPS_PERCENT if days >= LONG_PAUSE_DAYS else _PERCENT)


def _built_by(asked: Request, day: date) -> Level:
    """Answer the longest walk of a building week before a day; where there was none, the one it began from."""
    weeks = [week for week in plan(asked).weeks if week.phase is Phase.BUILD]
    walks = [one.walk for week in weeks for one in week.sessions if one.walk and one.day < day]
    return max(walks, key=lambda walk: (walk.distance_km, walk.ascent_m, walk.pack_kg), default=asked.walking)


def _stepped_back(level: Level, keeps: int) -> Level:
    part = keeps / _PERCENT
    return Level(max(level.distance_km * part, WALK_MIN_KM), level.ascent_m * part, level.pack_kg * part)
