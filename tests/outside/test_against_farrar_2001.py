"""Change of pain that matters, Farrar et al. 2001: about 2 points, or about 30 percent. Exact arithmetic."""

import pytest

from steadfoot.rules.change import pain_change


@pytest.mark.parametrize(
    ("base", "now", "points", "percent", "by_points", "by_percent"),
    [
        (6, 4, 2, 33.33, True, True),
        (3, 2, 1, 33.33, False, True),
        (9, 7, 2, 22.22, True, False),
        (10, 7, 3, 30.0, True, True),
        (2, 1, 1, 50.0, False, True),
        (0, 0, 0, None, False, False),
    ],
)
def test_two_rules_that_disagree_at_the_ends(base, now, points, percent, by_points, by_percent):
    found = pain_change(base, now)
    assert found.points == points
    assert found.percent == (None if percent is None else pytest.approx(percent, abs=5e-3))
    assert (found.enough_points, found.enough_percent) == (by_points, by_percent)
