"""Turns what assessment keeps into reply bodies: each result read beside the norm for this person."""

import json
from collections.abc import Mapping, Sequence
from datetime import date
from typing import Any, Final

from steadfoot.assessment import comparing
from steadfoot.assessment.conduct import COUNTERS_S, cautions_of, measure_of
from steadfoot.assessment.schemas import (
    FunctionalScaleOut,
    RangeOut,
    RatingOut,
    ReferenceOut,
    ResultOut,
    TestItem,
    TestList,
    TestOut,
)
from steadfoot.assessment.tables import FunctionalScale, TestResult
from steadfoot.intake.schemas import source_work
from steadfoot.rules import functional_scale as scale_rules
from steadfoot.rules.baseline import read
from steadfoot.rules.baseline_catalogue import TESTS, BaselineTest, TestCode
from steadfoot.rules.functional_scale import OtherActivities, functional_score
from steadfoot.rules.norms import AGE_MAX, AGE_MIN, NoReference, Person, Reference, Sex, TestSide
from steadfoot.rules.sources import citation

_SCALE_WORK: Final = citation(scale_rules, "MEAN_MDC").source
Names = Mapping[str, str]


def catalogue() -> TestList:
    """Answer the baseline tests."""
    return TestList(items=[_test(test) for test in TESTS.values()])


def _test(test: BaselineTest) -> TestOut:
    return TestOut(
        code=test.code,
        name=test.name,
        unit=test.unit,
        better="lower" if test.lower_is_better else "higher",
        sides=test.sided,
        kind=measure_of(test),
        protocol=list(test.protocol),
        cautions=list(cautions_of(test.code)),
        range=RangeOut(low=test.low, high=test.high),
        counter_seconds=COUNTERS_S.get(test.code),
        mdc=test.mdc,
        source_work=source_work(test.work),
    )


def person_on(client: Any, day: date) -> Person:
    """Answer a client as norms take them. Only the year of birth is kept: the age is the one reached in that year.

    An age that cannot be is one that is not known.
    """
    age = None if client.birth_year is None else day.year - client.birth_year
    return Person(
        age=age if age is not None and AGE_MIN <= age <= AGE_MAX else None,
        sex=None if client.sex is None else Sex(client.sex),
        height_cm=client.height_cm,
        body_mass_kg=client.body_mass_kg,
    )


def result_of(row: TestResult, client: Any, names: Names) -> ResultOut:
    """Answer one result; ``names`` are the practitioners' by id."""
    side = None if row.side is None else TestSide(row.side)
    found = read(TestCode(row.code), row.value, person_on(client, row.taken_on), side)
    known = found.reference
    return ResultOut(
        id=row.id,
        code=TestCode(row.code),
        taken_on=row.taken_on,
        side=side,
        value=row.value,
        unit=row.unit,
        reading=found.reading,
        reference=None if isinstance(known, NoReference) else _reference(known),
        why_no_norm=known.why if isinstance(known, NoReference) else None,
        protocol=json.loads(row.protocol),
        note=row.note,
        taken_by=names.get(row.taken_by, ""),
        recorded_at=row.recorded_at,
    )


def _reference(found: Reference) -> ReferenceOut:
    return ReferenceOut(
        shape=found.shape,
        group=found.group,
        low=found.low,
        middle=found.middle,
        high=found.high,
        grade=found.grade,
        kind=found.cited.kind,
        note=found.cited.note,
        source_work=source_work(found.work),
    )


def items_of(rows: Sequence[TestResult], client: Any, names: Names) -> list[TestItem]:
    """Answer a client's results test by test; ``rows`` come oldest first."""
    by_test = {code: [row for row in rows if row.code == code] for code in TESTS}
    return [_item(TESTS[code], found, client, names) for code, found in by_test.items() if found]


def _item(test: BaselineTest, rows: Sequence[TestResult], client: Any, names: Names) -> TestItem:
    return TestItem(
        code=test.code,
        name=test.name,
        unit=test.unit,
        results=[result_of(row, client, names) for row in reversed(rows)],
        symmetry=comparing.symmetry(test, rows),
        change=comparing.change(test, rows),
        trend=comparing.course(test, rows),
    )


def rating_of(row: FunctionalScale, names: Names) -> RatingOut:
    """Answer one rating of what is hard."""
    return RatingOut(
        id=row.id,
        taken_on=row.taken_on,
        activities=json.loads(row.activities),
        mean=functional_score(comparing.scores_of(row)),
        taken_by=names.get(row.taken_by, ""),
        recorded_at=row.recorded_at,
    )


def scale_of(rows: Sequence[FunctionalScale], names: Names) -> FunctionalScaleOut:
    """Answer the ratings, newest first; ``rows`` come oldest first."""
    change = why = None
    if len(rows) > 1:
        before, after = rows[-2], rows[-1]
        try:
            change = comparing.functional(comparing.scores_of(before), comparing.scores_of(after), before.taken_on)
        except OtherActivities as error:
            why = str(error)
    return FunctionalScaleOut(
        items=[rating_of(row, names) for row in reversed(rows)],
        change=change,
        why_not_compared=why,
        source_work=source_work(_SCALE_WORK),
    )
