"""Monotony and strain against numpy's mean and sample deviation, on invented weeks."""

import numpy as np
import pytest

from steadfoot.rules.load import load


@pytest.mark.parametrize("seed", range(30))
def test_monotony_and_strain(seed):
    days = np.random.default_rng(seed).integers(0, 900, size=14).astype(float)
    week = days[-7:]
    found = load(days.tolist())
    assert found.monotony == pytest.approx(week.mean() / week.std(ddof=1), rel=1e-12)
    assert found.strain == pytest.approx(week.sum() * week.mean() / week.std(ddof=1), rel=1e-12)
    assert found.monotony != pytest.approx(week.mean() / week.std(ddof=0), rel=1e-3)
