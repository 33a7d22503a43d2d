"""Running averages against pandas' ``ewm`` with ``adjust=False``, on invented loads."""

import numpy as np
import pandas as pd
import pytest

from steadfoot.rules.load import ewma


@pytest.mark.parametrize("span", [7, 28])
@pytest.mark.parametrize("seed", range(20))
def test_running_average(seed, span):
    loads = np.random.default_rng(seed).integers(0, 900, size=60) * np.random.default_rng(seed + 99).integers(0, 2, 60)
    theirs = pd.Series(loads).ewm(span=span, adjust=False).mean()
    for day in (1, 2, 7, 8, 28, 60):
        assert ewma([float(one) for one in loads[:day]], span) == pytest.approx(theirs.iloc[day - 1], rel=1e-12)


def test_the_default_of_pandas_is_not_ours():
    """``adjust=True`` gives the early days other weights: a silent mistake if taken for the same."""
    loads = [300.0, 0.0, 450.0, 0.0, 360.0, 600.0, 0.0]
    assert ewma(loads, 7) != pytest.approx(pd.Series(loads).ewm(span=7).mean().iloc[-1], rel=1e-3)
