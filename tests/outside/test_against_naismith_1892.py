"""Naismith 1892 in metric habit, with Langmuir 1984 for descents: worked values, 0.001 h."""

import math

import pytest

from steadfoot.rules.route import Stretch
from steadfoot.rules.walking_time import langmuir_h, naismith_h, naismith_langmuir_h


@pytest.mark.parametrize(
    ("km", "ascent", "hours"),
    [(10, 0, 2), (10, 600, 3), (15, 900, 4.5), (20, 1200, 6), (12 * 1.609344, 4000 * 0.3048, 5.8944)],
)
def test_worked_ways(km, ascent, hours):
    assert naismith_h(km, ascent) == pytest.approx(hours, abs=1e-3)


@pytest.mark.parametrize(("slope", "hours"), [(-0.15, 2.6667), (-0.3, 3.3333), (-0.05, 3.0)])
def test_a_descent_of_600_m_by_its_slope(slope, hours):
    down = Stretch(0, 600 / -slope, -600)
    assert naismith_langmuir_h(10, 600, [down]) == pytest.approx(hours, abs=1e-3)


@pytest.mark.parametrize(("degrees", "seconds"), [(-8, 0.4389), (-15, 1.2559), (-3, 0.72)])
def test_seconds_for_a_metre_on_the_map(degrees, seconds):
    slope = math.tan(math.radians(degrees))
    stretch = Stretch(0, 1, slope)
    assert naismith_langmuir_h(0.001, 0, [stretch]) * 3600 == pytest.approx(seconds, abs=5e-4)


@pytest.mark.parametrize(("degrees", "sign"), [(4.99, 0), (5.001, -1), (11.99, -1), (12.01, 1)])
def test_the_edges_of_the_correction(degrees, sign):
    assert langmuir_h(-math.tan(math.radians(degrees)), 1800) == sign


def test_a_rounded_speed_on_gentle_descents_is_a_known_wrong_transcription():
    """1.40 m/s instead of 5 km/h gives 0.7143 s a metre."""
    assert naismith_langmuir_h(0.001, 0, [Stretch(0, 1, -0.05)]) * 3600 != pytest.approx(0.7143, abs=1e-3)
