"""The six-minute walk, Enright and Sherrill 1998: expected distance and lower limit of normal, in metres.

The equations as about ten public programs agree on them. Tolerance: the two digits given.
"""

import pytest

from steadfoot.rules.baseline import read
from steadfoot.rules.baseline_catalogue import TestCode
from steadfoot.rules.norms import NoReference, Person, Sex


@pytest.mark.parametrize(
    ("sex", "height", "mass", "age", "expected", "limit"),
    [
        (Sex.MALE, 170, 70, 60, 553.5, 400.5),
        (Sex.MALE, 180, 85, 45, 678.1, 525.1),
        (Sex.FEMALE, 160, 60, 60, 520.4, 381.4),
        (Sex.FEMALE, 165, 72, 75, 416.77, 277.77),
        (Sex.MALE, 175, 78, 80, 476.87, 323.87),
    ],
)
def test_worked_people(sex, height, mass, age, expected, limit):
    found = read(TestCode.SIX_MINUTE_WALK, 500, Person(age, sex, height, mass)).reference
    assert found.middle == pytest.approx(expected, abs=0.01)
    assert found.low == pytest.approx(limit, abs=0.01)


@pytest.mark.parametrize(("age", "known"), [(39, False), (40, True), (80, True), (81, False)])
def test_the_equation_is_of_people_from_40_to_80(age, known):
    found = read(TestCode.SIX_MINUTE_WALK, 500, Person(age, Sex.MALE, 175, 78)).reference
    assert isinstance(found, NoReference) is not known
