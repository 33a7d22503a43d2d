"""The norms behind the baseline tests: where each is from, its bands, and the results that carry it."""

from itertools import pairwise

import pytest

from steadfoot.rules import norms_tables
from steadfoot.rules.baseline import read
from steadfoot.rules.baseline_catalogue import TESTS, TestCode
from steadfoot.rules.norms import Person, Sex, Shape, TestSide
from steadfoot.rules.ranges import NotWhole, OutOfRange
from steadfoot.rules.sources import BIBLIOGRAPHY, Cited, Kind, citation
from steadfoot.rules.step_down import StepDown

WOMAN = Person(67, Sex.FEMALE, 165, 62)
TABLES = [name for name in vars(norms_tables) if name.isupper() and "GRADES" not in name]

SHAPES = {
    TestCode.CHAIR_STAND: (Shape.RANGE, Kind.PUBLISHED),
    TestCode.STANCE_OPEN: (Shape.MEAN, Kind.HOUSE),
    TestCode.STANCE_CLOSED: (Shape.MEAN, Kind.PUBLISHED),
    TestCode.SIDE_BRIDGE: (Shape.MEAN, Kind.HOUSE),
    TestCode.HEEL_RISE: (Shape.MEDIAN, Kind.PUBLISHED),
    TestCode.SIX_MINUTE_WALK: (Shape.PREDICTED, Kind.PUBLISHED),
    TestCode.STEP_TEST: (Shape.GRADES, Kind.HOUSE),
    TestCode.STEP_DOWN: (Shape.GRADES, Kind.PUBLISHED),
}


@pytest.mark.parametrize("code", list(SHAPES))
def test_a_reference_names_its_work_and_how_far_it_can_be_trusted(code):
    person = Person(30, Sex.MALE) if code is TestCode.SIDE_BRIDGE else WOMAN
    found = read(code, 42 if code is not TestCode.STEP_DOWN else 3, person).reference
    assert (found.shape, found.cited.kind) == SHAPES[code]
    assert found.work == TESTS[code].work
    assert (found.cited.source == found.work) is (found.cited.kind is not Kind.HOUSE)


def test_the_middle_of_both_sexes_is_derived_and_says_so():
    found = read(TestCode.STANCE_CLOSED, 5, Person(67)).reference
    assert found.cited == Cited(Kind.DERIVED, "springer-2007", "Middle of the means of women and men")
    assert found.group == "people 60 to 69"


@pytest.mark.parametrize("name", TABLES)
def test_every_table_says_where_it_is_from(name):
    found = citation(norms_tables, name)
    assert found.source in BIBLIOGRAPHY
    assert (found.kind is Kind.HOUSE) == (found.source == "house")
    assert found.note


@pytest.mark.parametrize(
    "table",
    [norms_tables.STANCE_OPEN_S, norms_tables.STANCE_CLOSED_S]
    + [table[sex] for table in (norms_tables.CHAIR_STAND, norms_tables.STEP_TEST_BPM) for sex in Sex],
)
def test_bands_of_age_follow_each_other_without_a_gap(table):
    bands = list(table)
    assert all(last + 1 == first for (_, last), (first, _) in pairwise(bands))


@pytest.mark.parametrize(("item", "most"), [("arms", 1), ("trunk", 1), ("pelvis", 1), ("knee", 2), ("steadiness", 1)])
def test_an_item_of_the_step_down_has_its_most(item, most):
    nothing = dict.fromkeys(("arms", "trunk", "pelvis", "knee", "steadiness"), 0)
    assert StepDown(**nothing | {item: most}).points == most
    for points in (-1, most + 1):
        with pytest.raises(OutOfRange) as refused:
            StepDown(**nothing | {item: points})
        assert (refused.value.name, refused.value.high) == (item, most)
    with pytest.raises(NotWhole):
        StepDown(**nothing | {item: 0.5})


@pytest.mark.parametrize("other", [None, 20])
def test_a_result_carries_its_test_and_its_value(other):
    found = read(TestCode.HEEL_RISE, 18, WOMAN, TestSide.LEFT, other)
    assert (found.test, found.value) == (TESTS[TestCode.HEEL_RISE], 18)


def test_a_norm_by_sex_names_the_sex():
    stance = read(TestCode.STANCE_CLOSED, 5, Person(67, Sex.FEMALE)).reference
    assert stance.group == "women 60 to 69"
    steps = read(TestCode.STEP_TEST, 100, Person(40, Sex.MALE)).reference
    assert steps.group == "men 36 to 45, table from memory"
