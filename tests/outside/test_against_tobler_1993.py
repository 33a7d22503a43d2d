"""Tobler's hiking function, 1993: km/h, tolerance 0.0005."""

import pytest

from steadfoot.rules.walking_time import tobler_kmh


@pytest.mark.parametrize(
    ("slope", "kmh"), [(0, 5.0367), (-0.05, 6.0), (0.1, 3.5493), (-0.1, 5.0367), (0.25, 2.0996), (-0.25, 2.9795)]
)
def test_worked_speeds(slope, kmh):
    assert tobler_kmh(slope) == pytest.approx(kmh, abs=5e-4)


def test_off_the_path():
    assert tobler_kmh(0.1, off_path=True) == pytest.approx(2.1296, abs=5e-4)


@pytest.mark.parametrize("slope", [0, 0.1, 0.3, 0.7, -0.3])
def test_it_is_even_about_a_fall_of_five_in_a_hundred(slope):
    assert tobler_kmh(slope) == pytest.approx(tobler_kmh(-0.1 - slope))


def test_a_slope_read_in_percent_is_a_known_wrong_reading():
    """Ten percent as 10 would be out of range, as it must be."""
    with pytest.raises(ValueError, match="slope is 10; it must be -1 to 1"):
        tobler_kmh(10)
