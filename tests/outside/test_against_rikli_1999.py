"""The 30-second chair stand, Rikli and Jones 1999 with the lower bounds as in the CDC's STEADI.

All lower bounds and the ranges of 60 to 69 stand in pages that restate the table; the other upper bounds are typed
in from memory and not a proof of themselves.
"""

import pytest

from steadfoot.rules.baseline import read
from steadfoot.rules.baseline_catalogue import TestCode
from steadfoot.rules.norms import NoReference, Person, Sex

TABLE = [
    ((60, 64), (14, 19), (12, 17)),
    ((65, 69), (12, 18), (11, 16)),
    ((70, 74), (12, 17), (10, 15)),
    ((75, 79), (11, 17), (10, 15)),
    ((80, 84), (10, 15), (9, 14)),
    ((85, 89), (8, 14), (8, 13)),
    ((90, 94), (7, 12), (4, 11)),
]


def stand(value, age, sex):
    return read(TestCode.CHAIR_STAND, value, Person(age, sex))


@pytest.mark.parametrize(("ages", "men", "women"), TABLE)
def test_ranges_by_age_and_sex(ages, men, women):
    for age in ages:
        for sex, bounds in ((Sex.MALE, men), (Sex.FEMALE, women)):
            found = stand(10, age, sex).reference
            assert (found.low, found.high) == bounds


@pytest.mark.parametrize(
    ("sex", "age", "reps", "below"),
    [(Sex.MALE, 64, 14, False), (Sex.MALE, 64, 13, True), (Sex.FEMALE, 92, 4, False)],
)
def test_below_average_is_below_the_lower_bound(sex, age, reps, below):
    assert stand(reps, age, sex).reading.startswith("below") is below


@pytest.mark.parametrize("age", [59, 95])
def test_there_is_no_norm_outside_60_to_94(age):
    """Norms for younger people that circulate are extrapolated: none is returned, none is clamped."""
    assert isinstance(stand(10, age, Sex.FEMALE).reference, NoReference)


def test_a_lower_bound_taken_for_an_average_is_a_known_wrong_reading():
    """A woman of 65 with 11 stands is at the edge of the middle half, not average, and not below."""
    found = stand(11, 65, Sex.FEMALE)
    assert found.reading == "within the usual range for women 65 to 69 (11 to 16 repetitions)"
    assert found.reference.middle is None
