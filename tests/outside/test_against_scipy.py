"""The quantiles behind the minimal detectable change, and the coefficient of variation, against scipy."""

import pytest
from scipy import stats

from steadfoot.rules.change import Z_90, Z_95
from steadfoot.rules.load import monotony


def test_the_quantiles_are_those_of_the_normal_distribution():
    """Rounded as the papers print them: 1.96 and 1.645."""
    assert pytest.approx(stats.norm.ppf(0.975), abs=5e-3) == Z_95
    assert pytest.approx(stats.norm.ppf(0.95), abs=5e-4) == Z_90


@pytest.mark.parametrize("week", [(300, 0, 450, 0, 360, 600, 0), (10, 20, 30, 40, 50, 60, 70), (1, 0, 0, 0, 0, 0, 0)])
def test_monotony_is_one_over_the_coefficient_of_variation(week):
    assert monotony(week) == pytest.approx(1 / stats.variation(week, ddof=1), rel=1e-12)
