"""A season planned back from the trip: weeks that build, lighter weeks, a taper; each session with its day and load.

It proposes; a practitioner decides. Strength lies two days apart, walks grow by stated steps, the weeks before the
trip keep their effort and lose volume.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import date
from enum import StrEnum
from typing import Annotated, Final

from steadfoot.rules.season_days import Days, place
from steadfoot.rules.season_request import Activity, Level, Request
from steadfoot.rules.season_walks import Shortfall, growth, shortfalls
from steadfoot.rules.sources import Cited, Kind
from steadfoot.rules.walking_time import naismith_h

LIGHTER_EVERY_WEEKS: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "Three weeks that build, then one that is lighter; common practice")]
] = 4
LIGHTER_PERCENT: Final[Annotated[int, Cited(Kind.HOUSE, "house", "A lighter week has 60 percent of the minutes")]] = 60
TAPER_WEEKS: Final[Annotated[int, Cited(Kind.PUBLISHED, "bosquet-2007", "Two weeks worked best")]] = 2
TAPER_CUTS_PERCENT: Final[
    Annotated[
        tuple[int, ...],
        Cited(Kind.DERIVED, "bosquet-2007", "Volume down by 41 to 60 percent, effort and days kept: 45, then 55"),
    ]
] = (45, 55)
SEASON_USUAL_WEEKS: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "Six to eight weeks are the practice; no firm source")]
] = 6
STRENGTH_EFFORT: Final[Annotated[int, Cited(Kind.HOUSE, "house", "Expected effort of a circuit, 0 to 10")]] = 5
WALK_EFFORT: Final[Annotated[int, Cited(Kind.HOUSE, "house", "Expected effort of a walk, 0 to 10")]] = 4
CARDIO_EFFORT: Final[Annotated[int, Cited(Kind.HOUSE, "house", "Expected effort of easy cardio, 0 to 10")]] = 3
STRENGTH_MINUTES: Final[Annotated[int, Cited(Kind.HOUSE, "house", "A circuit of three rounds with its breaks")]] = 45
CARDIO_MINUTES: Final[Annotated[int, Cited(Kind.HOUSE, "house", "Half an hour, easy to keep")]] = 30
SHORT_WALK_PERCENT: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "Other walks of a week are half as long as its long one")]
] = 50
_PERCENT: Final = 100
_MINUTES_A_H: Final = 60
_SHORT_SEASON_WEEKS: Final = 2 * TAPER_WEEKS
"""Below that a taper of two weeks would leave less than half of the season to build."""


class Phase(StrEnum):
    """What a week is for."""

    BUILD = "build"
    LIGHTER = "lighter"
    TAPER = "taper"


@dataclass(frozen=True, slots=True)
class Session:
    """A planned session: day, what, expected effort 0 to 10, minutes; for a walk also km, m of ascent, kg."""

    day: date
    activity: Activity
    effort: int
    minutes: int
    walk: Level | None = None

    @property
    def load(self) -> int:
        """Effort times minutes."""
        return self.effort * self.minutes


@dataclass(frozen=True, slots=True)
class Week:
    """A week counted back from the trip, its sessions by day."""

    starts_on: date
    ends_on: date
    phase: Phase
    sessions: tuple[Session, ...]

    @property
    def planned_load(self) -> int:
        """Effort times minutes of all its sessions."""
        return sum(one.load for one in self.sessions)


@dataclass(frozen=True, slots=True)
class Season:
    """The weeks, what walks do not grow to in time, and what else to know."""

    weeks: tuple[Week, ...]
    shortfalls: tuple[Shortfall, ...]
    warnings: tuple[str, ...]


def phases(weeks: int) -> list[Phase]:
    """Answer what each of a number of weeks is for. The week before the taper is never lighter: the taper is.

    >>> [phase.value for phase in phases(7)]
    ['build', 'build', 'build', 'lighter', 'build', 'taper', 'taper']
    """
    taper = TAPER_WEEKS if weeks >= _SHORT_SEASON_WEEKS else min(weeks, 1)
    before = weeks - taper
    built = [_phase(number, before) for number in range(1, before + 1)]
    return [*built, *[Phase.TAPER] * taper]


def _phase(number: int, before: int) -> Phase:
    return Phase.LIGHTER if number % LIGHTER_EVERY_WEEKS == 0 and number < before else Phase.BUILD


def plan(asked: Request) -> Season:
    """Answer the season for a request.

    What cannot be met at all is refused by the request itself; what falls short in single weeks or in how far walks
    grow is told in the answer.
    """
    days = place(asked)
    kinds = phases(len(days))
    levels = _levels(asked, kinds)
    full = [_sessions(week, level) for week, level in zip(days, levels, strict=True)]
    weeks = _weighed(days, kinds, full)
    reached = levels[-1]
    short = tuple(shortfalls(asked.walking, asked.goal, asked.things_a_week, reached)) if asked.walks_a_week else ()
    return Season(weeks, short, (*(one.sentence for one in short), *_warnings(asked, days)))


def _levels(asked: Request, kinds: Sequence[Phase]) -> list[Level]:
    """Only a building week moves on; a lighter week and the taper stand on the walk last built."""
    growing = growth(asked.walking, asked.goal, asked.things_a_week)
    level, levels = asked.walking, []
    for kind in kinds:
        level = next(growing) if kind is Phase.BUILD else level
        levels.append(level)
    return levels


def _sessions(week: Days, level: Level) -> list[Session]:
    """Answer a week's sessions before it is made lighter."""
    short = scaled(level, SHORT_WALK_PERCENT / _PERCENT)
    walks = [_walk(day, short if number else level) for number, day in enumerate(week.walks)]
    strength = [Session(day, Activity.STRENGTH, STRENGTH_EFFORT, STRENGTH_MINUTES) for day in week.strength]
    cardio = [Session(day, Activity.CARDIO, CARDIO_EFFORT, CARDIO_MINUTES) for day in week.cardio]
    return sorted([*strength, *walks, *cardio], key=lambda one: (one.day, one.activity))


def _walk(day: date, level: Level) -> Session:
    minutes = round(naismith_h(level.distance_km, level.ascent_m) * _MINUTES_A_H)
    return Session(day, Activity.WALK, WALK_EFFORT, minutes, level)


def scaled(level: Level, part: float) -> Level:
    """Answer a shorter walk with the same pack: volume down, effort kept; never under a kilometre."""
    return Level(max(level.distance_km * part, 1.0), level.ascent_m * part, level.pack_kg)


def _weighed(days: Sequence[Days], kinds: Sequence[Phase], full: Sequence[list[Session]]) -> tuple[Week, ...]:
    normal = max(
        (sum(one.load for one in week) for week, kind in zip(full, kinds, strict=True) if kind is Phase.BUILD),
        default=0,
    )
    cuts = dict(zip(range(len(days) - 1, -1, -1), reversed(TAPER_CUTS_PERCENT), strict=False))
    return tuple(
        Week(week.starts_on, week.ends_on, kind, _lightened(sessions, kind, cuts.get(number, 0), normal))
        for number, (week, kind, sessions) in enumerate(zip(days, kinds, full, strict=True))
    )


def _lightened(sessions: list[Session], kind: Phase, cut: int, normal: int) -> tuple[Session, ...]:
    if kind is Phase.BUILD:
        return tuple(sessions)
    if kind is Phase.LIGHTER:
        return tuple(_shortened(one, LIGHTER_PERCENT / _PERCENT) for one in sessions)
    load = sum(one.load for one in sessions)
    kept = (_PERCENT - cut) / _PERCENT
    part = min(1.0, kept * normal / load) if normal and load else kept
    return tuple(_shortened(one, part) for one in sessions)


def _shortened(session: Session, part: float) -> Session:
    if session.walk:
        return _walk(session.day, scaled(session.walk, part))
    return replace(session, minutes=max(round(session.minutes * part), 1))


def _warnings(asked: Request, days: Sequence[Days]) -> Iterator[str]:
    if len(days) < SEASON_USUAL_WEEKS:
        missing = SEASON_USUAL_WEEKS - len(days)
        yield f"{len(days)} weeks are {missing} fewer than the usual {SEASON_USUAL_WEEKS}: later, or go with less."
    for week in days[:-1]:
        missing = asked.strength_a_week - len(week.strength)
        if week.full and missing > 0:
            yield f"The week of {week.starts_on} holds {len(week.strength)} strength sessions, {missing} fewer."
    for week in days:
        if asked.walks_a_week and not week.walks and week.full:
            yield f"The week of {week.starts_on} has no day for a walk."
    if any(day in week.strength for week in days for day in week.walks):
        yield "Some walks share a day with strength, because no other day is open: one more day would part them."
