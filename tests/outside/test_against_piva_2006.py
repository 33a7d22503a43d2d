"""The lateral step-down, Piva et al. 2006: points by what is seen, and their bands. Exact."""

import pytest

from steadfoot.rules.baseline import read
from steadfoot.rules.baseline_catalogue import TestCode
from steadfoot.rules.norms import Person
from steadfoot.rules.step_down import StepDown


@pytest.mark.parametrize(
    ("arms", "trunk", "pelvis", "knee", "steadiness", "points", "quality"),
    [
        (0, 0, 0, 0, 0, 0, "good"),
        (0, 1, 0, 0, 0, 1, "good"),
        (1, 1, 0, 1, 0, 3, "medium"),
        (0, 1, 1, 2, 0, 4, "poor"),
        (1, 1, 1, 2, 1, 6, "poor"),
    ],
)
def test_worked_movements(arms, trunk, pelvis, knee, steadiness, points, quality):
    found = StepDown(arms, trunk, pelvis, knee, steadiness)
    assert found.points == points
    assert read(TestCode.STEP_DOWN, found.points, Person()).reference.grade == quality
