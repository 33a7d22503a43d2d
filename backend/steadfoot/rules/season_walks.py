"""How walks grow through a season: distance, ascent and pack each by a stated step; and what stays out of reach."""

import math
from collections.abc import Iterator
from dataclasses import dataclass, replace
from itertools import dropwhile, takewhile
from typing import Annotated, Final

from steadfoot.rules.season_request import Level
from steadfoot.rules.sources import Cited, Kind

DISTANCE_STEP_PERCENT: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "A walk grows by 15 percent of its length in a week at most")]
] = 15
DISTANCE_STEP_KM: Final[Annotated[int, Cited(Kind.HOUSE, "house", "Or by 1 km, where that is more")]] = 1
ASCENT_STEP_PERCENT: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "Ascent grows by 20 percent in a week at most")]
] = 20
ASCENT_STEP_M: Final[Annotated[int, Cited(Kind.HOUSE, "house", "Or by 100 m, where that is more")]] = 100
PACK_STEP_MAX_KG: Final[Annotated[int, Cited(Kind.HOUSE, "house", "The pack grows by 2 kg in a week at most")]] = 2
WALKING_ASSUMED: Final[
    Annotated[Level, Cited(Kind.HOUSE, "house", "Where the longest walk of late is not known: 6 km, 200 m, no pack")]
] = Level(6, 200, 0)
GOAL_ASSUMED: Final[
    Annotated[
        Level,
        Cited(Kind.HOUSE, "house", "Where the trip's days are not known: an ordinary hut day, 16 km, 900 m, 8 kg"),
    ]
] = Level(16, 900, 8)
_PERCENT: Final = 100
_NAMES: Final = ("distance_km", "ascent_m", "pack_kg")
_UNITS: Final = {"distance_km": "km", "ascent_m": "m", "pack_kg": "kg"}
_WEEKS_FOR_THREE: Final = 4 / 3
"""Every fourth week is lighter: three steps take four weeks."""


@dataclass(frozen=True, slots=True)
class Shortfall:
    """What walks do not grow to in time: reached, wanted and short by, in ``unit``; weeks that it would take more."""

    name: str
    reached: float
    wanted: float
    short_by: float
    unit: str
    weeks_more: int

    @property
    def sentence(self) -> str:
        """By how much, and the choices there are."""
        what = self.name.rpartition("_")[0]
        lighter = "a lighter pack" if what == "pack" else "shorter days on the trip"
        return (
            f"The time is too short for the {what}: walks grow to {self.reached:g} {self.unit}, "
            f"{self.short_by:g} {self.unit} less than the {self.wanted:g} wanted. Choices: "
            f"a date about {self.weeks_more} weeks later; {lighter}; or go knowingly with less than was practised."
        )


def growth(now: Level, goal: Level, things: int) -> Iterator[Level]:
    """Answer the walk of each building week without end: the first as now, then some things a step nearer the goal.

    What lies furthest from its goal goes first, in parts of the goal. What is beyond its goal already stays.

    Parameters:
        now: the longest walk of late.
        goal: what walks should grow to.
        things: how many of distance, ascent and pack grow in one week.
    """
    level = now
    while True:
        yield level
        behind = {name: _behind(level, goal, name) for name in _NAMES}
        furthest = sorted(behind, key=lambda name: -behind[name])[:things]
        level = _raised(level, goal, [name for name in furthest if behind[name] > 0])


def _behind(level: Level, goal: Level, name: str) -> float:
    wanted: float = getattr(goal, name)
    have: float = getattr(level, name)
    return (wanted - have) / wanted if wanted else 0.0


def _raised(level: Level, goal: Level, names: list[str]) -> Level:
    raised = {name: min(getattr(level, name) + step(level, name), getattr(goal, name)) for name in names}
    return replace(level, **raised)


def step(level: Level, name: str) -> float:
    """Answer the largest step of a week from a walk: of ``distance_km``, ``ascent_m`` or ``pack_kg``.

    >>> step(Level(20, 100, 0), "distance_km"), step(Level(20, 100, 0), "ascent_m")
    (3.0, 100)
    """
    return step_from(name, getattr(level, name))


def step_from(name: str, value: float) -> float:
    """Answer the largest step of a week from so many km (``distance_km``), m (``ascent_m``) or kg (``pack_kg``).

    >>> step_from("distance_km", 4), step_from("pack_kg", 6)
    (1, 2)
    """
    steps = {
        "distance_km": max(DISTANCE_STEP_KM, value * DISTANCE_STEP_PERCENT / _PERCENT),
        "ascent_m": max(ASCENT_STEP_M, value * ASCENT_STEP_PERCENT / _PERCENT),
        "pack_kg": PACK_STEP_MAX_KG,
    }
    return steps[name]


def shortfalls(now: Level, goal: Level, things: int, reached: Level) -> list[Shortfall]:
    """Answer what is not reached, and how many weeks more the whole goal would take, lighter weeks counted in."""
    names = [name for name in _NAMES if _behind(reached, goal, name) > 0]
    if not names:
        return []
    steps = _steps_between(growth(now, goal, things), goal, reached)
    weeks = math.ceil(steps * _WEEKS_FOR_THREE)
    return [_shortfall(name, getattr(reached, name), getattr(goal, name), weeks) for name in names]


def _steps_between(growing: Iterator[Level], goal: Level, reached: Level) -> int:
    onward = dropwhile(lambda level: level != reached, growing)
    missing = takewhile(lambda level: any(_behind(level, goal, name) > 0 for name in _NAMES), onward)
    return sum(1 for _ in missing)


def _shortfall(name: str, reached: float, wanted: float, weeks: int) -> Shortfall:
    return Shortfall(name, round(reached, 1), wanted, round(wanted - reached, 1), _UNITS[name], weeks)
