"""The heel-rise test, Hebert-Losier et al. 2017, by its abstract: median 24 and 21; agreement between days."""

import pytest

from steadfoot.rules.baseline import read
from steadfoot.rules.baseline_catalogue import TESTS, TestCode
from steadfoot.rules.change import Reality, change
from steadfoot.rules.norms import Person, Sex

MDC = TESTS[TestCode.HEEL_RISE].mdc
LIMITS_OF_AGREEMENT = (-6.2, 6.5, -6.1, 6.2)  # right, then left


@pytest.mark.parametrize(("sex", "median"), [(Sex.MALE, 24), (Sex.FEMALE, 21)])
@pytest.mark.parametrize("age", [20, 45, 81])
def test_one_median_for_all_ages(sex, median, age):
    """The equations by age, sex, body mass index and activity were not found and are not made up."""
    assert read(TestCode.HEEL_RISE, 20, Person(age, sex)).reference.middle == median


def test_a_real_change_is_the_first_whole_number_beyond_the_limits_of_agreement():
    assert MDC - 1 < max(map(abs, LIMITS_OF_AGREEMENT)) < MDC
    assert change(18, 24, MDC).reality is Reality.WITHIN_ERROR
    assert change(18, 25, MDC).reality is Reality.REAL


def test_the_old_norm_of_25_for_everyone_is_not_used():
    """Lunsford and Perry 1995."""
    for sex in Sex:
        assert read(TestCode.HEEL_RISE, 20, Person(40, sex)).reference.middle != 25
