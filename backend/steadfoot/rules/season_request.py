"""What a season is planned from, and how a request that cannot be met is refused: by how much, and what would help."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, timedelta
from enum import StrEnum
from itertools import combinations, pairwise
from typing import Annotated, Final

from steadfoot.rules.adherence import WEEK_DAYS
from steadfoot.rules.dose import CLIMB_MAX_M, DISTANCE_MAX_KM, PACK_MAX_KG, SPACING_DAYS
from steadfoot.rules.ranges import OutOfRange, whole, within
from steadfoot.rules.sources import Cited, Kind, plausible

SEASON_MAX_DAYS: Final[Annotated[int, Cited(Kind.HOUSE, "house", "A year: plan the last one, not two at once")]] = 365
STRENGTH_MAX_SESSIONS_A_WEEK: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "Seven days hold three sessions two days apart, week after week")]
] = 3
WALKS_MAX_SESSIONS_A_WEEK: Final[
    Annotated[
        int,
        Cited(Kind.HOUSE, "house", "One long walk and two short ones: with three of strength a day of rest is left"),
    ]
] = 3
REST_DAYS_A_WEEK: Final[Annotated[int, Cited(Kind.HOUSE, "house", "One day in seven without any session")]] = 1
LAST_STRENGTH_DAYS: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "Last strength session five days before the trip; practice, no source")]
] = 5
REST_BEFORE_DAYS: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "The day before the trip is for rest and packing")]
] = 1

WALK_MIN_KM: Final[Annotated[int, plausible("a kilometre: less is no walk to plan")]] = 1

THINGS_A_WEEK: Final[
    Annotated[
        int,
        Cited(
            Kind.HOUSE,
            "house",
            "Of distance, ascent and pack two grow in a week. Practice says one at a time, but six to eight weeks then "
            "hardly reach a hut day. A practitioner may ask for 1, or for 3",
        ),
    ]
] = 2
THINGS_MAX: Final[Annotated[int, Cited(Kind.HOUSE, "house", "There are three: distance, ascent and pack")]] = 3


class Activity(StrEnum):
    """What a planned session is."""

    STRENGTH = "strength"
    WALK = "walk"
    CARDIO = "cardio"


@dataclass(frozen=True, slots=True)
class Pin:
    """A session that stays where it is, whatever is planned around it."""

    day: date
    activity: Activity


@dataclass(frozen=True, slots=True)
class Level:
    """A walk: km, metres of ascent, kg on the back."""

    distance_km: float
    ascent_m: float
    pack_kg: float

    def __post_init__(self) -> None:
        within("walk_km", self.distance_km, WALK_MIN_KM, DISTANCE_MAX_KM, "km")
        within("walk_ascent_m", self.ascent_m, 0, CLIMB_MAX_M, "m")
        within("walk_pack_kg", self.pack_kg, 0, PACK_MAX_KG, "kg")


@dataclass(frozen=True, slots=True)
class Request:
    """A season asked for.

    ``weekdays`` are 0 for Monday to 6; ``walking`` is the longest walk of late; ``goal`` what walks should grow to;
    ``cardio_a_week`` None fills the days left;
    ``things_a_week`` of distance, ascent and pack grow; ``away`` are days without any session.

    Raises:
        OutOfRange, NotWhole: a number cannot be.
        NotPossible: it contradicts itself; by how much, and what would help.
    """

    start: date
    trip: date
    weekdays: frozenset[int]
    strength_a_week: int
    walking: Level
    goal: Level
    walks_a_week: int = 1
    cardio_a_week: int | None = None
    things_a_week: int = THINGS_A_WEEK
    pins: tuple[Pin, ...] = ()
    away: frozenset[date] = frozenset()

    def __post_init__(self) -> None:
        within("days_to_trip", (self.trip - self.start).days, 1, SEASON_MAX_DAYS, "days")
        for name, value, most in (
            ("strength", self.strength_a_week, STRENGTH_MAX_SESSIONS_A_WEEK),
            ("walks", self.walks_a_week, WALKS_MAX_SESSIONS_A_WEEK),
            ("cardio", self.cardio_a_week or 0, WEEK_DAYS - REST_DAYS_A_WEEK),
        ):
            within(name, value, 0, most, "sessions a week")
            whole(name, value, "sessions")
        within("things_a_week", self.things_a_week, 1, THINGS_MAX)
        _weekdays_fit(self)
        _pins_fit(self)

    def pinned(self) -> dict[date, Activity]:
        """Answer what is pinned on each day."""
        return {pin.day: pin.activity for pin in self.pins}

    def open_on(self, day: date) -> bool:
        """Answer whether the planner may put a session on a day."""
        near = (self.trip - day).days <= REST_BEFORE_DAYS
        return day.weekday() in self.weekdays and day not in self.away and not near and day not in self.pinned()

    def strength_on(self, day: date) -> bool:
        """Answer whether a day is early enough before the trip for strength."""
        return (self.trip - day).days >= LAST_STRENGTH_DAYS


class NotPossible(ValueError):
    """A request that cannot be met. ``short_by`` counts what is missing in ``unit``; ``choices`` would help."""

    def __init__(self, name: str, sentence: str, short_by: float, unit: str, choices: tuple[str, ...]) -> None:
        self.name, self.short_by, self.unit = name, short_by, unit
        self.choices = "; ".join(choices)
        super().__init__(f"{sentence} Short by {short_by:g} {unit}. Choices: {self.choices}.")


def most_spaced(weekdays: frozenset[int]) -> int:
    """Answer how many sessions a week fit on weekdays with ``SPACING_DAYS`` between, week after week.

    >>> most_spaced(frozenset({0, 1})), most_spaced(frozenset({0, 6})), most_spaced(frozenset(range(7)))
    (1, 1, 3)
    """
    sizes = range(len(weekdays), 0, -1)
    return next((n for n in sizes if any(_spaced(some) for some in combinations(sorted(weekdays), n))), 0)


def _spaced(days: tuple[int, ...]) -> bool:
    after = (*days[1:], days[0] + WEEK_DAYS)
    return all(later - earlier >= SPACING_DAYS for earlier, later in zip(days, after, strict=True))


def _weekdays_fit(asked: Request) -> None:
    if not asked.weekdays <= set(range(WEEK_DAYS)):
        raise OutOfRange("weekday", max(asked.weekdays, key=abs), 0, WEEK_DAYS - 1, "")
    most = most_spaced(asked.weekdays)
    if asked.strength_a_week > most:
        raise NotPossible(
            "strength",
            f"{asked.strength_a_week} strength sessions a week, {SPACING_DAYS} days apart, do not fit: at most {most}.",
            asked.strength_a_week - most,
            "sessions a week",
            (f"{most} strength sessions a week", "other days, with a day between"),
        )


def _pins_fit(asked: Request) -> None:
    for name, sentence, short_by in _pin_clashes(asked):
        raise NotPossible(name, sentence, short_by, "days", ("move a pin", "take a pin away"))


def _pin_clashes(asked: Request) -> Iterator[tuple[str, str, int]]:
    days = sorted(pin.day for pin in asked.pins)
    for day in days:
        if not asked.start <= day < asked.trip:
            outside = max((asked.start - day).days, (day - asked.trip).days + 1)
            yield "pin", f"The pin of {day} lies outside the season.", outside
    for one, other in pairwise(days):
        if one == other:
            yield "pin", f"Two pins are on {one}.", 1
    yield from _strength_clashes(asked)
    yield from _crowded_weeks(asked, days)


def _strength_clashes(asked: Request) -> Iterator[tuple[str, str, int]]:
    strength = sorted(pin.day for pin in asked.pins if pin.activity is Activity.STRENGTH)
    for one, other in pairwise(strength):
        if (other - one).days < SPACING_DAYS:
            yield "pin", f"Strength is pinned on {one} and {other}.", SPACING_DAYS - (other - one).days
    for day in strength:
        if not asked.strength_on(day):
            yield (
                "pin",
                f"Strength is pinned on {day}, too near the trip.",
                LAST_STRENGTH_DAYS - (asked.trip - day).days,
            )


def _crowded_weeks(asked: Request, days: list[date]) -> Iterator[tuple[str, str, int]]:
    for starts, ends in blocks(asked.start, asked.trip):
        pinned = sum(starts <= day <= ends for day in days)
        if pinned > WEEK_DAYS - REST_DAYS_A_WEEK:
            yield "rest", f"Every day of the week of {starts} is pinned: there is no day of rest.", 1


def blocks(start: date, trip: date) -> list[tuple[date, date]]:
    """Answer the weeks of a season, first and last day, counted back from the trip; the first may be shorter.

    >>> [(str(first), str(last)) for first, last in blocks(date(2027, 6, 1), date(2027, 6, 12))]
    [('2027-06-01', '2027-06-04'), ('2027-06-05', '2027-06-11')]
    """
    count = -(-(trip - start).days // WEEK_DAYS)
    starts = [trip - timedelta(days=WEEK_DAYS * n) for n in range(count, 0, -1)]
    return [(max(start, first), first + timedelta(days=WEEK_DAYS - 1)) for first in starts]
