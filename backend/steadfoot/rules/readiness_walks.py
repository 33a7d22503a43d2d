"""What walks have shown beside what a trip asks: the longest day, climbs, pack, all at once, and days in a row."""

import math
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import timedelta
from typing import Annotated, Final

from steadfoot.rules.attention import SILENT_DAYS
from steadfoot.rules.readiness_facts import Known, Trip, TripDay, Walk, by_day
from steadfoot.rules.readiness_items import (
    WALK_OLD_DAYS,
    Closing,
    Doubt,
    Evidence,
    EvidenceKind,
    Item,
    Mark,
    Part,
    Subject,
    mark_of,
)
from steadfoot.rules.season import LIGHTER_EVERY_WEEKS
from steadfoot.rules.season_request import THINGS_A_WEEK
from steadfoot.rules.season_walks import step_from
from steadfoot.rules.sources import Cited, Kind

DISTANCE_ERROR_PERCENT: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "Typed from memory or from a phone's trace: a twentieth either way")]
] = 5
CLIMB_ERROR_PERCENT: Final[
    Annotated[
        int,
        Cited(Kind.HOUSE, "house", "One real walk has 672 to 901 m of ascent by the method of counting: 15 percent"),
    ]
] = 15
PACK_ERROR_KG: Final[Annotated[float, Cited(Kind.HOUSE, "house", "A pack is seldom weighed: half a kilogram")]] = 0.5
PACK_WALK_MIN_KM: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "A pack counts as carried from a walk of 3 km on")]
] = 3
ROW_PART_PERCENT: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "A day counts in a row from half the hours of an average day on")]
] = 50
ROW_NEAR_DAYS: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "Two long days running are the practice before a trip of several days")]
] = 2
_PERCENT: Final = 100
_LINE: Final = Cited(Kind.HOUSE, "house", "At least what the hardest day asks; near from four fifths on")
_WHOLE: Final = Cited(Kind.HOUSE, "house", "All that the hardest day asks on one day; near from four fifths of each on")
_ROW: Final = Cited(Kind.HOUSE, "house", "As many days running as the trip has; near from two on")


@dataclass(frozen=True, slots=True)
class _Quantity:
    """One length or weight of a day, with its error and the season's step by which it grows."""

    subject: Subject
    unit: str
    error: Callable[[float], float]
    step: str


_QUANTITIES: Final = (
    _Quantity(Subject.LONGEST_DAY, "km", lambda km: km * DISTANCE_ERROR_PERCENT / _PERCENT, "distance_km"),
    _Quantity(Subject.ASCENT, "m", lambda m: m * CLIMB_ERROR_PERCENT / _PERCENT, "ascent_m"),
    _Quantity(Subject.DESCENT, "m", lambda m: m * CLIMB_ERROR_PERCENT / _PERCENT, "ascent_m"),
    _Quantity(Subject.PACK, "kg", lambda _: PACK_ERROR_KG, "pack_kg"),
)


def walk_items(trip: Trip, known: Known) -> Iterator[Item]:
    """Answer the items that walks show; what a trip does not ask for is left out."""
    walks = known.recent_walks()
    days = by_day(walks)
    carried = [walk for walk in walks if walk.distance_km >= PACK_WALK_MIN_KM]
    for quantity in _QUANTITIES:
        yield from _asked(quantity, trip, carried if quantity.subject is Subject.PACK else days, known)
    yield _whole_day(trip.hardest, [*days, *walks], known)
    if trip.in_a_row > 1:
        yield _in_a_row(trip, days, known)


def _of(day: TripDay | Walk, subject: Subject) -> float | None:
    return {
        Subject.LONGEST_DAY: day.distance_km,
        Subject.ASCENT: day.ascent_m,
        Subject.DESCENT: day.descent_m,
        Subject.PACK: day.pack_kg,
    }[subject]


def _by(day: Walk, subject: Subject) -> float:
    return _of(day, subject) or 0


def _asked(quantity: _Quantity, trip: Trip, days: Sequence[Walk], known: Known) -> Iterator[Item]:
    """Answer the item of one thing, compared with the day that asks most of it."""
    each = [_of(day, quantity.subject) for day in trip.days if day.distance_km > 0]
    said = [one for one in each if one is not None]
    doubts = (Doubt.TRIP_NOT_SAID,) if len(said) < len(each) else ()
    asked = max(said, default=0)
    if asked > 0:
        item = _quantity(quantity, asked, days, known)
        yield replace(item, doubts=(*doubts, *item.doubts))
    elif doubts:
        yield Item(quantity.subject, Mark.UNKNOWN, quantity.unit, _LINE, None, doubts=doubts, closing=Closing.SAY_TRIP)


def silence(known: Known) -> tuple[Doubt, ...]:
    """Answer the doubt that a phone raises which has not been heard lately."""
    silent = known.heard_on is None or (known.today - known.heard_on).days >= SILENT_DAYS
    return (Doubt.SILENT,) if silent else ()


def evidence_of(walk: Walk, value: float) -> Evidence:
    """Answer a walk as evidence."""
    return Evidence(EvidenceKind.WALK, walk.event_id, walk.day, value)


def _quantity(quantity: _Quantity, asked: float, days: Sequence[Walk], known: Known) -> Item:
    best = max(days, key=lambda day: (_by(day, quantity.subject), day.day), default=None)
    if best is None:
        return _no_walk(quantity.subject, quantity.unit, asked, _LINE, known)
    shown = _by(best, quantity.subject)
    low, high = shown - quantity.error(shown), shown + quantity.error(shown)
    mark = mark_of(shown, asked)
    alike = sum(mark_of(_by(day, quantity.subject), asked) is mark for day in days)
    return Item(
        quantity.subject,
        mark,
        quantity.unit,
        _LINE,
        asked,
        shown,
        max(low, 0),
        high,
        evidence=(evidence_of(best, shown),),
        doubts=(
            *((Doubt.MEASURE,) if mark_of(low, asked) is not mark_of(high, asked) else ()),
            *_standing(mark, alike, best, known),
        ),
        closing=Closing.NOTHING if mark is Mark.SHOWN else Closing.GROW,
        weeks=_with_lighter(steps_between(quantity.step, shown, asked)),
    )


def _standing(mark: Mark, alike: int, best: Walk, known: Known) -> Iterator[Doubt]:
    if mark is not Mark.NOT_SHOWN and alike == 1:
        yield Doubt.ONCE
    if (known.today - best.day).days > WALK_OLD_DAYS:
        yield Doubt.OLD
    yield from silence(known)


def _no_walk(subject: Subject, unit: str, asked: float | None, cited: Cited, known: Known) -> Item:
    closing = Closing.LOG_A_WALK
    return Item(subject, Mark.UNKNOWN, unit, cited, asked, doubts=silence(known), closing=closing)


def steps_between(name: str, shown: float, asked: float) -> int:
    """Answer how many of a season's weekly steps lead from what was shown to what is asked.

    >>> steps_between("pack_kg", 4, 9), steps_between("distance_km", 12, 12)
    (3, 0)
    """
    count = 0
    while shown < asked:
        shown += step_from(name, shown)
        count += 1
    return count


def _with_lighter(steps: int) -> int:
    """Answer the weeks that steps take: every fourth is lighter and takes none."""
    return math.ceil(steps * LIGHTER_EVERY_WEEKS / (LIGHTER_EVERY_WEEKS - 1))


def _whole_day(hardest: TripDay, days: Sequence[Walk], known: Known) -> Item:
    """Answer the hardest day at once: the day that comes nearest to it in the thing in which it is furthest off."""
    said = {one: _of(hardest, one.subject) for one in _QUANTITIES}
    unsaid = (Doubt.TRIP_NOT_SAID,) if None in said.values() else ()
    asked = {one: value for one, value in said.items() if value}
    best = max(days, key=lambda day: (_least_part(day, asked), day.day), default=None)
    if best is None:
        none = _no_walk(Subject.WHOLE_DAY, "", None, _WHOLE, known)
        return replace(none, doubts=(*unsaid, *none.doubts))
    parts = tuple(Part(one.subject, value, _by(best, one.subject)) for one, value in asked.items())
    mark = max((mark_of(part.shown, part.asked) for part in parts), key=list(Mark).index)
    return Item(
        Subject.WHOLE_DAY,
        mark,
        "",
        _WHOLE,
        None,
        parts=parts,
        evidence=(evidence_of(best, best.distance_km),),
        doubts=(*unsaid, *_standing(mark, 0, best, known)),
        closing=Closing.NOTHING if mark is Mark.SHOWN else Closing.GROW,
        weeks=_weeks_together(_steps_together(best, asked)),
    )


def _least_part(day: Walk, asked: dict[_Quantity, float]) -> float:
    return min(_by(day, one.subject) / value for one, value in asked.items())


def _steps_together(best: Walk, asked: dict[_Quantity, float]) -> dict[str, int]:
    """Answer the steps by what grows; of ascent and descent, that grow as one, the one that is further off."""
    steps: dict[str, int] = {}
    for one, value in asked.items():
        more = steps_between(one.step, _by(best, one.subject), value)
        steps[one.step] = max(more, steps.get(one.step, 0))
    return steps


def _weeks_together(steps: dict[str, int]) -> int:
    """Answer the weeks when only ``THINGS_A_WEEK`` of the things grow in one week; descent grows with ascent."""
    return _with_lighter(max(*steps.values(), math.ceil(sum(steps.values()) / THINGS_A_WEEK)))


def _in_a_row(trip: Trip, days: Sequence[Walk], known: Known) -> Item:
    asked = trip.in_a_row
    if not days:
        return _no_walk(Subject.DAYS_IN_A_ROW, "days", asked, _ROW, known)
    run = _longest_run([day for day in days if day.hours * _PERCENT >= trip.mean_hours * ROW_PART_PERCENT])
    mark = Mark.SHOWN if len(run) >= asked else Mark.NEAR if len(run) >= ROW_NEAR_DAYS else Mark.NOT_SHOWN
    closing = {Mark.SHOWN: Closing.NOTHING, Mark.NEAR: Closing.EASY_MIDDLE, Mark.NOT_SHOWN: Closing.TWO_IN_A_ROW}[mark]
    return Item(
        Subject.DAYS_IN_A_ROW,
        mark,
        "days",
        _ROW,
        asked,
        len(run),
        evidence=tuple(evidence_of(day, day.distance_km) for day in run),
        doubts=tuple(_standing(mark, 0, run[-1], known)) if run else silence(known),
        closing=closing,
        weeks={Mark.SHOWN: 0, Mark.NEAR: None, Mark.NOT_SHOWN: 1}[mark],
    )


def _longest_run(days: Sequence[Walk]) -> list[Walk]:
    """Answer the longest run of days that follow each other, the newest of those alike; ``days`` oldest first."""
    best: list[Walk] = []
    run: list[Walk] = []
    for day in days:
        run = [*run, day] if run and day.day - run[-1].day == timedelta(days=1) else [day]
        best = run if len(run) >= len(best) else best
    return best
