"""The patient-specific functional scale, Stratford et al. 1995: 2 points of the mean and 3 of one activity are real.

That exactly 2.0 counts is our reading. Tolerance: three digits given.
"""

import pytest

from steadfoot.rules.change import Reality
from steadfoot.rules.functional_scale import functional_change


def named(scores):
    return dict(zip(("stairs", "kneeling", "walking down"), scores, strict=False))


@pytest.mark.parametrize(
    ("before", "after", "mean_before", "mean_after", "change", "real"),
    [
        ((3, 4, 2), (6, 6, 5), 3.0, 5.667, 2.667, True),
        ((5, 5, 5), (6, 7, 6), 5.0, 6.333, 1.333, False),
        ((2, 3), (5, 4), 2.5, 4.5, 2.0, True),
    ],
)
def test_worked_people(before, after, mean_before, mean_after, change, real):
    found = functional_change(named(before), named(after))
    assert found.before == pytest.approx(mean_before, abs=1e-3)
    assert found.after == pytest.approx(mean_after, abs=1e-3)
    assert found.of_mean.difference == pytest.approx(change, abs=1e-3)
    assert (found.of_mean.reality is Reality.REAL) is real


def test_a_single_activity_needs_three_points():
    found = functional_change({"stairs": 3, "kneeling": 3}, {"stairs": 6, "kneeling": 5})
    assert found.of_each["stairs"].reality is Reality.REAL
    assert found.of_each["kneeling"].reality is Reality.WITHIN_ERROR
