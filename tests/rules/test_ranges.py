"""What cannot be is refused by name."""

import math

import pytest

from steadfoot.rules.ranges import NotWhole, OutOfRange, whole, within


@pytest.mark.parametrize("value", [0, 0.0, 5, 10])
def test_both_ends_belong_to_a_range(value):
    within("effort", value, 0, 10)


@pytest.mark.parametrize("value", [-0.1, 10.1, -1, 11, math.nan, math.inf, -math.inf])
def test_what_lies_outside_is_named_with_the_range(value):
    with pytest.raises(OutOfRange) as refused:
        within("body_mass_kg", value, 0, 10, "kg")
    error = refused.value
    assert (error.name, error.low, error.high, error.unit) == ("body_mass_kg", 0, 10, "kg")
    assert error.value == value or math.isnan(value)
    assert str(error) == f"body mass kg is {value:g}; it must be 0 to 10 kg."


def test_a_scale_without_a_unit_is_told_without_one():
    with pytest.raises(OutOfRange, match=r"^effort is 11; it must be 0 to 10\.$"):
        within("effort", 11, 0, 10)


def test_a_count_is_whole():
    whole("value", 12.0, "repetitions")
    with pytest.raises(NotWhole, match=r"^best value is 12\.5; repetitions are counted whole\.$") as refused:
        whole("best_value", 12.5, "repetitions")
    assert (refused.value.name, refused.value.value, refused.value.unit) == ("best_value", 12.5, "repetitions")
