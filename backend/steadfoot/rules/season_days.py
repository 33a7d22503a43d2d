"""On which days of a season strength, walks and cardio lie: the cheapest choice week by week that breaks no rule.

A week's choice touches the next only by whether strength is on its last day. So the best season is found exactly, by
keeping the best way to each of these two states from week to week.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, timedelta
from itertools import combinations, pairwise
from typing import Final

from steadfoot.rules.adherence import WEEK_DAYS
from steadfoot.rules.dose import SPACING_DAYS
from steadfoot.rules.season_request import REST_DAYS_A_WEEK, Activity, Request, blocks

_MISSING: Final = 1000
_NO_DAY_TO_WALK: Final = 50
_WEEKEND_TAKEN: Final = 3
_SATURDAY: Final = 5


@dataclass(frozen=True, slots=True)
class Days:
    """A week: first and last day, strength days, walk days (the long walk first), cardio days."""

    starts_on: date
    ends_on: date
    strength: tuple[date, ...]
    walks: tuple[date, ...]
    cardio: tuple[date, ...]

    @property
    def full(self) -> bool:
        """Whether it has all its seven days."""
        return (self.ends_on - self.starts_on).days == WEEK_DAYS - 1


def place(asked: Request) -> list[Days]:
    """Answer the days of each week of a season."""
    weeks = blocks(asked.start, asked.trip)
    return [_week(asked, week, strength) for week, strength in zip(weeks, _strength(asked, weeks), strict=True)]


def _strength(asked: Request, weeks: list[tuple[date, date]]) -> list[tuple[date, ...]]:
    """Keep, for each state at the end of a week, the cheapest choices that lead there."""
    best: dict[date | None, tuple[float, list[tuple[date, ...]]]] = {None: (0.0, [])}
    for week in weeks:
        after: dict[date | None, tuple[float, list[tuple[date, ...]]]] = {}
        for cost, chosen in _choices(asked, week):
            ways = [way for last, way in best.items() if _apart(last, chosen)]
            if ways:
                so_far, path = min(ways, key=lambda way: way[0])
                end = chosen[-1] if chosen and chosen[-1] == week[1] else None
                if end not in after or so_far + cost < after[end][0]:
                    after[end] = so_far + cost, [*path, chosen]
        best = after
    return min(best.values(), key=lambda way: way[0])[1]


def _apart(last: date | None, chosen: tuple[date, ...]) -> bool:
    return last is None or not chosen or (chosen[0] - last).days >= SPACING_DAYS


def _choices(asked: Request, week: tuple[date, date]) -> Iterator[tuple[float, tuple[date, ...]]]:
    """Answer every set of strength days of a week that holds its pins and is spaced, with its cost."""
    pinned = asked.pinned()
    days = [day for day in _days(week) if asked.strength_on(day)]
    fixed = {day for day in days if pinned.get(day) is Activity.STRENGTH}
    free = [day for day in days if asked.open_on(day)]
    for more in range(max(asked.strength_a_week - len(fixed), 0) + 1):
        for added in combinations(free, more):
            chosen = tuple(sorted(fixed | set(added)))
            rests = len({*chosen, *(day for day in pinned if week[0] <= day <= week[1])}) <= _room(week)
            if rests and all((b - a).days >= SPACING_DAYS for a, b in pairwise(chosen)):
                yield _cost(asked, week, chosen), chosen


def _cost(asked: Request, week: tuple[date, date], chosen: tuple[date, ...]) -> float:
    missing = max(asked.strength_a_week - len(chosen), 0)
    left = sum(asked.open_on(day) and day not in chosen for day in _days(week))
    left += sum(activity is Activity.WALK for day, activity in asked.pinned().items() if week[0] <= day <= week[1])
    no_walk = max(asked.walks_a_week - left, 0)
    weekend = sum(day.weekday() >= _SATURDAY for day in chosen)
    even = WEEK_DAYS / max(len(chosen), 1)
    uneven = sum(abs((b - a).days - even) for a, b in pairwise(chosen))
    return missing * _MISSING + no_walk * _NO_DAY_TO_WALK + weekend * _WEEKEND_TAKEN + uneven


def _room(week: tuple[date, date]) -> int:
    """A full week keeps its day of rest; a first week that is shorter rested before it began."""
    days = len(_days(week))
    return days - REST_DAYS_A_WEEK if days == WEEK_DAYS else days


def _days(week: tuple[date, date]) -> list[date]:
    return [week[0] + timedelta(days=n) for n in range((week[1] - week[0]).days + 1)]


def _week(asked: Request, week: tuple[date, date], strength: tuple[date, ...]) -> Days:
    pinned = {day: activity for day, activity in asked.pinned().items() if week[0] <= day <= week[1]}
    free = [day for day in _days(week) if asked.open_on(day) and day not in strength]
    room = _room(week) - len(set(strength) | set(pinned))
    walks = _walks(asked, strength, free[:], pinned, room)
    fresh = [day for day in walks if day not in strength and day not in pinned]
    free = [day for day in free if day not in fresh]
    held = [day for day, activity in pinned.items() if activity is Activity.CARDIO]
    wanted = WEEK_DAYS if asked.cardio_a_week is None else max(asked.cardio_a_week - len(held), 0)
    cardio = free[: max(min(wanted, room - len(fresh)), 0)]
    return Days(week[0], week[1], strength, walks, tuple(sorted(held + cardio)))


def _walks(
    asked: Request, strength: tuple[date, ...], free: list[date], pinned: dict[date, Activity], room: int
) -> tuple[date, ...]:
    """Weekends first, then late days. A walk shares a strength day only where no day is free for any walk."""
    held = [day for day, activity in pinned.items() if activity is Activity.WALK]
    wanted = max(asked.walks_a_week - len(held), 0)
    added = sorted(free, key=_for_walking)[: min(wanted, max(room, 0))]
    if wanted and not added and not held:
        added = sorted(strength, key=_for_walking)[:1]
    return tuple(sorted(held + added, key=_for_walking))


def _for_walking(day: date) -> tuple[bool, int]:
    return day.weekday() < _SATURDAY, -day.toordinal()
