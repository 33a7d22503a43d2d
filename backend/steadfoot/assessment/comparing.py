"""Results beside each other: both sides, the time before, the first time. Words and numbers, no queries."""

import json
from collections.abc import Iterable, Sequence
from dataclasses import replace
from datetime import date
from typing import Final

from steadfoot.assessment.schemas import ChangeOut, ChangePart, SymmetryOut, TrendOut
from steadfoot.assessment.tables import FunctionalScale, TestResult
from steadfoot.rules.baseline_catalogue import BaselineTest
from steadfoot.rules.change import Change, Reality, Retest, trend
from steadfoot.rules.functional_scale import MEAN_MDC, FunctionalChange, Scores, functional_change
from steadfoot.rules.norms import TestSide
from steadfoot.rules.symmetry import SYMMETRY_PASS_PERCENT, even_enough, symmetry_percent

_SIDES: Final = (None, TestSide.LEFT, TestSide.RIGHT)
_OTHER_PROTOCOL: Final = "not compared with the time before: it was done another way"
_TREND_FROM: Final = 3
"""Results from which a course says more than the last change: with two the first is the one before."""


def day_text(day: date) -> str:
    """Tell a day: "3 March 2026"."""
    return f"{day.day} {day:%B %Y}"


def of_side(rows: Iterable[TestResult], side: TestSide | None) -> list[TestResult]:
    """Answer the rows of one side in the order given."""
    return [row for row in rows if row.side == side]


def symmetry(test: BaselineTest, rows: Sequence[TestResult]) -> SymmetryOut | None:
    """Answer the newest results of both sides beside each other; None without both, or where both are 0."""
    left, right = of_side(rows, TestSide.LEFT), of_side(rows, TestSide.RIGHT)
    if not left or not right:
        return None
    low, high = sorted((left[-1].value, right[-1].value))
    percent = symmetry_percent(low, high)
    weaker, better = (high, low) if test.lower_is_better else (low, high)
    even = even_enough(weaker, better, lower_is_better=test.lower_is_better)
    if percent is None or even is None:
        return None
    words = (
        f"Left {left[-1].value:g}, right {right[-1].value:g} {test.unit}: the lower is {percent:.0f} percent of the "
        f"higher, {'even enough' if even else 'not even'}. That {SYMMETRY_PASS_PERCENT} percent are enough is common "
        "practice without a source."
    )
    return SymmetryOut(percent=percent, even_enough=even, words=words + _days_apart(left[-1], right[-1]))


def _days_apart(left: TestResult, right: TestResult) -> str:
    if left.taken_on == right.taken_on:
        return ""
    return f" Not of one day: left {day_text(left.taken_on)}, right {day_text(right.taken_on)}."


def _comparable(rows: Sequence[TestResult]) -> list[TestResult]:
    """Answer the results that were done as the newest one was."""
    return [row for row in rows if row.protocol == rows[-1].protocol]


def change(test: BaselineTest, rows: Sequence[TestResult]) -> ChangeOut | None:
    """Answer the change since the time before, each side by itself; None where there was no time before."""
    parts = [part for side in _SIDES if (part := _change_of(test, of_side(rows, side), side)) is not None]
    return _joined(parts, test.mdc) if parts else None


def _change_of(test: BaselineTest, rows: Sequence[TestResult], side: TestSide | None) -> ChangePart | None:
    if len(rows) < 2:  # noqa: PLR2004  a change needs two results
        return None
    same = _comparable(rows)
    course = trend(_retests(same), test.mdc, lower_is_better=test.lower_is_better)
    if course is None:
        return ChangePart(of=side, words=_OTHER_PROTOCOL, is_real=False, better=None)
    return _part(side, course.since_last, test.unit, f" since {day_text(same[-2].taken_on)}")


def _part(of: str | None, found: Change, unit: str, since: str = "") -> ChangePart:
    is_real = found.reality is Reality.REAL
    return ChangePart(of=of, words=found.words(unit) + since, is_real=is_real, better=found.better)


def _retests(rows: Iterable[TestResult]) -> list[Retest]:
    return [Retest(row.taken_on, row.value) for row in rows]


def _told(of: str | None, words: str) -> str:
    text = words if of is None else f"{of}: {words}"
    return f"{text[0].upper()}{text[1:]}."


def _joined(parts: Sequence[ChangePart], mdc: float | None) -> ChangeOut:
    words = " ".join(_told(part.of, part.words) for part in parts)
    return ChangeOut(words=words, is_real=any(part.is_real for part in parts), mdc=mdc, parts=list(parts))


def course(test: BaselineTest, rows: Sequence[TestResult]) -> TrendOut | None:
    """Answer the course since the first result that was done as the newest was, each side by itself."""
    told = [words for side in _SIDES if (words := _course_of(test, of_side(rows, side), side)) is not None]
    return TrendOut(words=" ".join(told)) if told else None


def _course_of(test: BaselineTest, rows: Sequence[TestResult], side: TestSide | None) -> str | None:
    same = _comparable(rows) if rows else []
    found = trend(_retests(same), test.mdc, lower_is_better=test.lower_is_better)
    if found is None or len(same) < _TREND_FROM:
        return None
    return _told(side, f"{found.since_first.words(test.unit)} since the first on {day_text(same[0].taken_on)}")


def scores_of(row: FunctionalScale) -> dict[str, int]:
    """Answer the activities of a rating with their scores."""
    return {one["name"]: one["rating"] for one in json.loads(row.activities)}


def functional(before: Scores, after: Scores, since: date) -> ChangeOut:
    """Answer the change between two ratings of the same activities.

    Raises:
        OtherActivities: they are not the same.
    """
    found: FunctionalChange = functional_change(before, after)
    tenths = replace(found.of_mean, difference=round(found.of_mean.difference, 1))
    whole = _part(None, tenths, "points", f" since {day_text(since)}")
    parts = [_part(name, one, "points") for name, one in found.of_each.items()]
    return ChangeOut(words=f"Mean: {whole.words}.", is_real=whole.is_real, mdc=MEAN_MDC, parts=parts)
