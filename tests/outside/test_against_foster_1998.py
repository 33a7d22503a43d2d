"""Monotony and strain, Foster 1998: mean daily load over its deviation in a week; weekly load times monotony.

The source does not say which deviation; the worked weeks hold for the sample's. Tolerance: four digits given.
"""

import pytest

from steadfoot.rules.load import load, monotony

MIXED = (300, 0, 450, 0, 360, 600, 0)
SIX_ALIKE = (400, 400, 400, 400, 400, 400, 0)
TOLERANCE = 1e-4


@pytest.mark.parametrize(
    ("week", "total", "flat", "strain"), [(MIXED, 1710, 0.9913, 1695.11), (SIX_ALIKE, 2400, 2.2678, 5442.69)]
)
def test_worked_weeks(week, total, flat, strain):
    found = load(week)
    assert found.weekly_load == total
    assert found.monotony == pytest.approx(flat, rel=TOLERANCE)
    assert found.strain == pytest.approx(strain, rel=TOLERANCE)


@pytest.mark.parametrize("every_day", [0, 240])
def test_seven_days_alike_have_no_monotony_and_no_strain(every_day):
    found = load([every_day] * 7)
    assert (found.weekly_load, found.monotony, found.strain) == (7 * every_day, None, None)


def test_the_deviation_of_the_whole_population_is_a_known_wrong_reading():
    """Dividing by n instead of n - 1 gives 1.0707: a factor of the root of 7/6."""
    assert monotony(MIXED) != pytest.approx(1.0707, rel=1e-2)
    assert monotony(MIXED) * (7 / 6) ** 0.5 == pytest.approx(1.0707, rel=TOLERANCE)


def test_leaving_rest_days_out_is_a_known_wrong_reading():
    """Without its zeros the mixed week would have a monotony of 427.5 / 129.2 = 3.3."""
    assert monotony(MIXED) < 1
