"""What readiness is judged from: what a trip asks of each day, and what a person has shown."""

from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, timedelta
from itertools import groupby
from statistics import mean
from typing import Annotated, Final

from steadfoot.rules.baseline_catalogue import TestCode
from steadfoot.rules.norms import Person, TestSide
from steadfoot.rules.pain import Thresholds
from steadfoot.rules.ranges import within
from steadfoot.rules.route import ROUTE_MAX_KM
from steadfoot.rules.sources import Cited, Kind
from steadfoot.rules.walking_time import naismith_h

RECENT_DAYS: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "What was shown in the last six weeks counts; what is older may be lost")]
] = 42

TRIP_MAX_DAYS: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "Plausible range, to catch slips: two months on foot")]
] = 60


@dataclass(frozen=True, slots=True)
class TripDay:
    """One day of a trip: km (0 on a day of rest), metres up and down, kg on the back; None where it is not said."""

    distance_km: float
    ascent_m: float | None
    descent_m: float | None
    pack_kg: float | None

    @property
    def hours(self) -> float:
        """Moving hours by Naismith's rule, by which days are compared with each other."""
        return _hours(self.distance_km, self.ascent_m or 0)


@dataclass(frozen=True, slots=True)
class Trip:
    """What is asked, day by day; ``starts_on`` None where no date is set.

    Raises:
        OutOfRange: no day has any length, or there are too many.
    """

    starts_on: date | None
    days: tuple[TripDay, ...]

    def __post_init__(self) -> None:
        within("days_with_a_length", sum(day.distance_km > 0 for day in self.days), 1, TRIP_MAX_DAYS, "days")

    @property
    def hardest(self) -> TripDay:
        """The day that takes longest."""
        return max(self.days, key=lambda day: day.hours)

    @property
    def mean_hours(self) -> float:
        """Moving hours of an average day, days of rest left out."""
        return mean(day.hours for day in self.days if day.distance_km > 0)

    @property
    def in_a_row(self) -> int:
        """How many days at most follow each other without a day of rest."""
        runs = (len(list(run)) for walked, run in groupby(self.days, lambda day: day.distance_km > 0) if walked)
        return max(runs)


@dataclass(frozen=True, slots=True)
class Walk:
    """A walk as logged: km, metres, kg; effort 0 to 10 where it was rated."""

    event_id: str
    day: date
    distance_km: float
    ascent_m: float
    descent_m: float
    pack_kg: float
    effort: int | None

    @property
    def hours(self) -> float:
        """Moving hours by Naismith's rule."""
        return _hours(self.distance_km, self.ascent_m)


@dataclass(frozen=True, slots=True)
class Taken:
    """A test result, with the person as they were in the year of it."""

    result_id: str
    code: TestCode
    day: date
    side: TestSide | None
    value: float
    person: Person


@dataclass(frozen=True, slots=True)
class RestPain:
    """A pain before a session or on waking, 0 to 10."""

    event_id: str
    day: date
    rating: int


@dataclass(frozen=True, slots=True)
class Known:
    """All that is known of a person. ``active_days`` are those on which a session was reported; ``heard_on`` the last
    day on which a phone reported; each of the lists oldest first."""

    today: date
    heard_on: date | None
    person: Person
    thresholds: Thresholds
    walks: tuple[Walk, ...] = ()
    tests: tuple[Taken, ...] = ()
    rest_pains: tuple[RestPain, ...] = ()
    active_days: tuple[date, ...] = ()

    def recent_walks(self) -> list[Walk]:
        """Answer the walks that count."""
        return [walk for walk in self.walks if walk.day > self.today - timedelta(days=RECENT_DAYS)]


def by_day(walks: Iterable[Walk]) -> list[Walk]:
    """Answer a day's walks as one: lengths added up, the lightest pack, since only that was carried all the way."""
    days: dict[date, list[Walk]] = defaultdict(list)
    for walk in walks:
        days[walk.day].append(walk)
    return [_joined(found) for _, found in sorted(days.items())]


def _joined(walks: list[Walk]) -> Walk:
    longest = max(walks, key=lambda walk: walk.hours)
    return Walk(
        longest.event_id,
        longest.day,
        sum(walk.distance_km for walk in walks),
        sum(walk.ascent_m for walk in walks),
        sum(walk.descent_m for walk in walks),
        min(walk.pack_kg for walk in walks),
        longest.effort,
    )


def _hours(distance_km: float, ascent_m: float) -> float:
    """What is logged for one day may add up to more than any route, and still has hours."""
    return naismith_h(min(distance_km, ROUTE_MAX_KM), ascent_m)
