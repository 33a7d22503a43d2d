"""What a body has told: effort of walks, pain at rest, and tests of strength and balance beside their norms."""

import math
from collections.abc import Iterator, Sequence
from datetime import timedelta
from statistics import median_low
from typing import Annotated, Final

from steadfoot.rules.adherence import WEEK_DAYS
from steadfoot.rules.baseline import read
from steadfoot.rules.baseline_catalogue import TESTS, BaselineTest, TestCode
from steadfoot.rules.norms import NoReference, Person, Reference, Shape, TestSide
from steadfoot.rules.norms_tables import STEP_DOWN_CUTS
from steadfoot.rules.pain import Thresholds, Zone, zone
from steadfoot.rules.readiness_facts import Known, Taken, Trip, Walk
from steadfoot.rules.readiness_items import (
    TEST_OLD_DAYS,
    Closing,
    Doubt,
    Evidence,
    EvidenceKind,
    Item,
    Mark,
    Subject,
    mark_of,
)
from steadfoot.rules.readiness_walks import evidence_of, silence
from steadfoot.rules.season import SEASON_USUAL_WEEKS
from steadfoot.rules.sources import Cited, Kind
from steadfoot.rules.symmetry import even_enough

EFFORT_DAY_AFTER_DAY: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "Somewhat hard, 4 of 10, can be kept up day after day; habit, no trial")]
] = 4
EFFORT_NEAR: Final[Annotated[int, Cited(Kind.HOUSE, "house", "5 to 6 of 10: hard, for one day but not for five")]] = 6
EFFORT_PART_PERCENT: Final[
    Annotated[int, Cited(Kind.HOUSE, "house", "A walk tells of the hardest day from half its hours on")]
] = 50
EFFORT_WALKS: Final[Annotated[int, Cited(Kind.HOUSE, "house", "Middle of the last three walks; one may be luck")]] = 3
REST_PAIN_WEEKS: Final[Annotated[int, Cited(Kind.HOUSE, "house", "Pain at rest of the last two weeks")]] = 2
EVIDENCE_MAX: Final[Annotated[int, Cited(Kind.HOUSE, "house", "Three check-ins show it; more would not be read")]] = 3
READINESS_TESTS: Final = (
    TestCode.CHAIR_STAND,
    TestCode.HEEL_RISE,
    TestCode.STEP_DOWN,
    TestCode.STANCE_OPEN,
    TestCode.SIDE_BRIDGE,
)
"""Strength of legs, calves and trunk, control downhill, balance."""
_PERCENT: Final = 100
_EFFORT: Final = Cited(Kind.HOUSE, "house", "At most 4 of 10 on walks of half the hardest day or more; near to 6")
_PAIN: Final = Cited(Kind.PUBLISHED, "silbernagel-2007", "0 to 2 safe, 3 to 5 acceptable, 6 and more too much")
_NOT_TAKEN: Final = Cited(Kind.HOUSE, "house", "What was not tested is not known")
_MARKS: Final = {Zone.SAFE: Mark.SHOWN, Zone.ACCEPTABLE: Mark.NEAR, Zone.HIGH: Mark.NOT_SHOWN}


def effort_item(trip: Trip, known: Known) -> Item:
    """Answer how hard walks were that come to a good part of the hardest day."""
    least = trip.hardest.hours * EFFORT_PART_PERCENT / _PERCENT
    rated = [(walk, walk.effort) for walk in known.recent_walks() if walk.effort is not None and walk.hours >= least]
    newest = rated[-EFFORT_WALKS:]
    if not newest:
        doubts, closing = silence(known), Closing.RATE_A_WALK
        return _effort(Mark.UNKNOWN, (), doubts, closing)
    value = median_low([effort for _, effort in newest])
    mark = _effort_mark(value)
    lighter = all(not _as_hard(walk, trip) for walk, _ in newest)
    doubts = (
        *((Doubt.LIGHTER,) if lighter else ()),
        *((Doubt.ONCE,) if len(newest) == 1 else ()),
        Doubt.SELF_RATED,
        *silence(known),
    )
    closing = Closing.NOTHING if mark is Mark.SHOWN else Closing.SAME_WALK_EASIER
    return _effort(mark, newest, doubts, closing, value)


def _effort(
    mark: Mark,
    rated: Sequence[tuple[Walk, int]],
    doubts: tuple[Doubt, ...],
    closing: Closing,
    value: int | None = None,
) -> Item:
    efforts = [effort for _, effort in rated]
    return Item(
        Subject.EFFORT,
        mark,
        "of_ten",
        _EFFORT,
        EFFORT_DAY_AFTER_DAY,
        value,
        min(efforts, default=None),
        max(efforts, default=None),
        at_most=True,
        evidence=tuple(evidence_of(walk, effort) for walk, effort in rated),
        doubts=doubts,
        closing=closing,
    )


def _effort_mark(value: int) -> Mark:
    if value <= EFFORT_DAY_AFTER_DAY:
        return Mark.SHOWN
    return Mark.NEAR if value <= EFFORT_NEAR else Mark.NOT_SHOWN


def _as_hard(walk: Walk, trip: Trip) -> bool:
    hardest = trip.hardest
    return walk.hours >= hardest.hours and walk.pack_kg >= (hardest.pack_kg or 0)


def pain_item(known: Known) -> Item:
    """Answer pain before sessions and on waking in the last weeks, or the usual level where that is higher."""
    since = known.today - timedelta(days=REST_PAIN_WEEKS * WEEK_DAYS)
    reports = [one for one in known.rest_pains if one.day > since]
    thresholds = known.thresholds
    if not reports and not any(day > since for day in known.active_days):
        return _pain(Mark.UNKNOWN, None, thresholds, (), silence(known), Closing.ASK_PAIN)
    worst = max([one.rating for one in reports], default=0)
    value = max(worst, thresholds.usual_pain)
    mark = _MARKS[zone(value, thresholds)]
    newest_first = sorted(reports, key=lambda one: (-one.rating, -one.day.toordinal()))
    told = [Evidence(EvidenceKind.PAIN, one.event_id, one.day, one.rating) for one in newest_first]
    closing = Closing.NOTHING if mark is Mark.SHOWN else Closing.SETTLE_PAIN
    doubts = (Doubt.SELF_RATED, *silence(known))
    return _pain(mark, value, thresholds, tuple(told[:EVIDENCE_MAX]), doubts, closing)


def _pain(
    mark: Mark,
    value: int | None,
    thresholds: Thresholds,
    evidence: tuple[Evidence, ...],
    doubts: tuple[Doubt, ...],
    closing: Closing,
) -> Item:
    asked = thresholds.acceptable_from - 1
    return Item(
        Subject.PAIN_AT_REST,
        mark,
        "of_ten",
        _PAIN,
        asked,
        value,
        at_most=True,
        evidence=evidence,
        doubts=doubts,
        closing=closing,
    )


def strength_items(known: Known) -> Iterator[Item]:
    """Answer the tests of strength and balance: those that were taken, and those that have a norm for this person."""
    for code in READINESS_TESTS:
        newest = _newest(known.tests, code)
        if newest:
            yield _taken(TESTS[code], newest, known)
        elif _could_be_read(code, known.person):
            yield _not_taken(TESTS[code])


def _newest(tests: Sequence[Taken], code: TestCode) -> list[Taken]:
    newest = {one.side: one for one in tests if one.code is code}
    return [newest[side] for side in (None, TestSide.LEFT, TestSide.RIGHT) if side in newest]


def _could_be_read(code: TestCode, person: Person) -> bool:
    """Answer whether the person has a norm, or might have one if more were known of them."""
    is_known = person.sex is not None and person.age is not None
    return not is_known or isinstance(read(code, TESTS[code].low, person).reference, Reference)


def _not_taken(test: BaselineTest) -> Item:
    subject, at_most = Subject(test.code.value), test.lower_is_better
    return Item(subject, Mark.UNKNOWN, test.unit, _NOT_TAKEN, None, at_most=at_most, closing=Closing.TAKE_TEST)


def _taken(test: BaselineTest, newest: Sequence[Taken], known: Known) -> Item:
    """Answer a test by its weaker side: a trip is walked on both legs."""
    weaker = (max if test.lower_is_better else min)(newest, key=lambda one: one.value)
    found = read(test.code, weaker.value, weaker.person, weaker.side).reference
    asked = None if isinstance(found, NoReference) else _asked(found)
    mark = Mark.UNKNOWN if asked is None else _test_mark(test, weaker.value, asked)
    error = None if test.mdc is None else test.mdc / math.sqrt(2)
    return Item(
        Subject(test.code.value),
        mark,
        test.unit,
        _NOT_TAKEN if isinstance(found, NoReference) else found.cited,
        asked,
        weaker.value,
        None if error is None else max(weaker.value - error, test.low),
        None if error is None else weaker.value + error,
        at_most=test.lower_is_better,
        evidence=tuple(Evidence(EvidenceKind.TEST, one.result_id, one.day, one.value, one.side) for one in newest),
        doubts=tuple(_test_doubts(test, newest, found, known)),
        closing=_CLOSINGS[mark],
        weeks={Mark.SHOWN: 0, Mark.UNKNOWN: None}.get(mark, SEASON_USUAL_WEEKS),
    )


_CLOSINGS: Final = {
    Mark.SHOWN: Closing.NOTHING,
    Mark.NEAR: Closing.TRAIN_AND_TEST,
    Mark.NOT_SHOWN: Closing.TRAIN_AND_TEST,
    Mark.UNKNOWN: Closing.FOLLOW,
}


def _asked(found: Reference) -> float:
    """Answer what a norm asks: the lower end of a usual range, else the middle; of grades the end of the best one."""
    if found.shape is Shape.GRADES:
        return STEP_DOWN_CUTS[0] - 1
    asked = found.middle if found.low is None else found.low
    assert asked is not None
    return asked


def _test_mark(test: BaselineTest, value: float, asked: float) -> Mark:
    """Answer the mark; near is what the error of measurement might hide, where that is known, else four fifths."""
    if test.lower_is_better:
        return _graded(value)
    if test.mdc is None:
        return mark_of(value, asked)
    return Mark.SHOWN if value >= asked else Mark.NEAR if asked - value < test.mdc else Mark.NOT_SHOWN


def _test_doubts(
    test: BaselineTest, newest: Sequence[Taken], found: Reference | NoReference, known: Known
) -> Iterator[Doubt]:
    if isinstance(found, NoReference):
        yield Doubt.NO_NORM
    elif found.shape in (Shape.MEAN, Shape.MEDIAN):
        yield Doubt.NORM_NO_LIMIT
    if test.sided and len(newest) == 1:
        yield Doubt.ONE_SIDE
    if len(newest) > 1 and not _even(test, newest):
        yield Doubt.SIDES_DIFFER
    if (known.today - min(one.day for one in newest)).days > TEST_OLD_DAYS:
        yield Doubt.OLD


def _even(test: BaselineTest, newest: Sequence[Taken]) -> bool:
    """Answer whether both sides are alike: of points for faults the grade, else ``even_enough``."""
    values = sorted(one.value for one in newest)
    if test.lower_is_better:
        return len({_graded(value) for value in values}) == 1
    return even_enough(values[0], values[1]) is not False


def _graded(points: float) -> Mark:
    if points < STEP_DOWN_CUTS[0]:
        return Mark.SHOWN
    return Mark.NEAR if points < STEP_DOWN_CUTS[1] else Mark.NOT_SHOWN
