"""Steps of load, ACSM position stand 2009: 2 to 10 percent more. Worked cases, exact."""

import pytest

from steadfoot.rules.progression_steps import next_load


@pytest.mark.parametrize(("load", "step", "more"), [(20, 1, 21), (10, 1, 11), (40, 0.8, 40.8)])
def test_five_ten_and_two_percent(load, step, more):
    assert next_load(load, step) == more


def test_where_the_smallest_step_is_31_percent_no_load_is_right():
    assert next_load(8, 2.5) is None
