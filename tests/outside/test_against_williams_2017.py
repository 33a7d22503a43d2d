"""Exponentially weighted averages, Williams et al. 2017: weight 2/(N + 1), first day as first average.

Worked values for one week repeated five times; tolerance: four places given.
"""

import pytest

from steadfoot.rules.load import LONG_SPAN_DAYS, SHORT_SPAN_DAYS, ewma

WEEKS = [300, 0, 450, 0, 360, 600, 0] * 5
TOLERANCE = 1e-4


@pytest.mark.parametrize(
    ("day", "short", "long"),
    [
        (1, 300.0, 300.0),
        (7, 252.1143, 278.7617),
        (14, 245.7223, 265.8828),
        (21, 244.8691, 258.0729),
        (28, 244.7552, 253.3371),
        (35, 244.74, 250.4652),
    ],
)
def test_worked_days(day, short, long):
    assert ewma(WEEKS[:day], SHORT_SPAN_DAYS) == pytest.approx(short, rel=TOLERANCE)
    assert ewma(WEEKS[:day], LONG_SPAN_DAYS) == pytest.approx(long, rel=TOLERANCE)


@pytest.mark.parametrize(("span", "weight"), [(7, 0.25), (28, 0.068966)])
def test_weight_of_the_last_day(span, weight):
    """A load of 1 after a day of rest is the weight itself."""
    assert ewma([0, 1], span) == pytest.approx(weight, abs=1e-6)


def test_the_form_that_adjusts_the_early_days_is_a_known_wrong_one():
    assert ewma(WEEKS[:28], SHORT_SPAN_DAYS) != pytest.approx(244.7376, rel=1e-5)
