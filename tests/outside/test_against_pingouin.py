"""Standard error and minimal detectable change from pingouin's intraclass correlation, on data of others.

For two tests of each person, SD x sqrt(1 - ICC), with the consistency form and the pooled deviation, is the
deviation of the differences over the root of 2. So the minimal detectable change must come out as half the width of
the limits of agreement, which know of no correlation: two roads to the same number.
"""

import numpy as np
import pandas as pd
import pingouin
import pytest

from steadfoot.rules.change import minimal_detectable_change, standard_error

# pingouin still calls pandas in a way that pandas 3.1 warns of.
pytestmark = pytest.mark.filterwarnings("ignore:The inplace keyword")

SHROUT_FLEISS = np.array([[9, 2, 5, 8], [6, 1, 3, 2], [8, 4, 6, 8], [7, 1, 2, 6], [10, 5, 6, 9], [6, 2, 4, 7]])
"""Shrout and Fleiss 1979: six targets by four judges."""


def consistency(scores):
    """Answer the single-rater consistency, ICC(3,1), of targets by judges."""
    targets, judges = scores.shape
    long = pd.DataFrame(
        {
            "target": np.repeat(np.arange(targets), judges),
            "judge": np.tile(np.arange(judges), targets),
            "score": scores.ravel(),
        }
    )
    table = pingouin.intraclass_corr(long, targets="target", raters="judge", ratings="score")
    return float(table.set_index("Type").loc["ICC(C,1)", "ICC"])


def test_the_correlation_is_the_one_that_was_published():
    assert consistency(SHROUT_FLEISS) == pytest.approx(0.71, abs=5e-3)


def test_standard_error_is_the_residual_of_an_analysis_of_variance():
    """Shrout and Fleiss's data by hand: rows and columns taken out, 15 degrees of freedom are left."""
    left = SHROUT_FLEISS - SHROUT_FLEISS.mean(axis=1, keepdims=True) - SHROUT_FLEISS.mean(axis=0)
    left = left + SHROUT_FLEISS.mean()
    residual = float(np.sqrt((left**2).sum() / 15))
    pooled = float(np.sqrt(SHROUT_FLEISS.var(axis=0, ddof=1).mean()))
    assert standard_error(pooled, consistency(SHROUT_FLEISS)) == pytest.approx(residual, rel=1e-6)


def test_minimal_detectable_change_is_half_the_width_of_the_limits_of_agreement():
    data = pingouin.read_dataset("blandaltman")[["A", "B"]].to_numpy(dtype=float)
    pooled = float(np.sqrt(data.var(axis=0, ddof=1).mean()))
    half_width = 1.96 * float((data[:, 0] - data[:, 1]).std(ddof=1))
    found = minimal_detectable_change(standard_error(pooled, consistency(data)))
    assert found == pytest.approx(half_width, rel=1e-6)
