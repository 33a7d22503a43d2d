"""Single-leg stance, Springer et al. 2007, best of three with a cap of 45 s.

Eyes closed by sex: by a research note that quotes the table. Eyes open, and both sexes together, are typed in from
memory; that the middle of the two sexes meets the latter within 0.1 s speaks for both.
"""

import pytest

from steadfoot.rules.baseline import read
from steadfoot.rules.baseline_catalogue import TESTS, TestCode
from steadfoot.rules.norms import Person, Sex
from steadfoot.rules.sources import Kind

CLOSED = [
    ((18, 39), 13.1, 16.9, 15.0),
    ((40, 49), 13.5, 12.0, 12.7),
    ((50, 59), 7.9, 8.6, 8.3),
    ((60, 69), 3.6, 5.1, 4.4),
    ((70, 79), 3.7, 2.6, 3.1),
    ((80, 99), 2.1, 1.8, 1.9),
]
OPEN_FROM_MEMORY = [
    ((18, 39), 44.7),
    ((40, 49), 41.9),
    ((50, 59), 41.2),
    ((60, 69), 32.1),
    ((70, 79), 21.5),
    ((80, 99), 9.4),
]


def closed(age, sex):
    return read(TestCode.STANCE_CLOSED, 5, Person(age, sex)).reference


@pytest.mark.parametrize(("ages", "women", "men", "together"), CLOSED)
def test_eyes_closed(ages, women, men, together):
    for age in ages:
        assert closed(age, Sex.FEMALE).middle == women
        assert closed(age, Sex.MALE).middle == men
        assert closed(age, None).middle == pytest.approx(together, abs=0.1)


@pytest.mark.parametrize(("ages", "seconds"), OPEN_FROM_MEMORY)
def test_eyes_open_is_labelled_as_remembered(ages, seconds):
    for age in ages:
        found = read(TestCode.STANCE_OPEN, 20, Person(age)).reference
        assert found.middle == seconds
        assert found.cited.kind is Kind.HOUSE
        assert "from memory" in found.cited.note


def test_the_cap_is_part_of_the_norm():
    assert {TESTS[code].high for code in (TestCode.STANCE_OPEN, TestCode.STANCE_CLOSED)} == {45}


def test_the_means_of_a_stricter_older_protocol_are_not_mixed_in():
    """Bohannon 1984, cap of 30 s, eyes closed: 28.8 in the twenties. Twice as long: another way of judging."""
    assert closed(25, None).middle < 28.8 / 1.5
