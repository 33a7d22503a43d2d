"""Pandolf et al. 1977, and downhill Santee et al. 2003: watts, tolerance 0.01 W."""

import pytest

from steadfoot.rules.metabolic import Effort, OutsideModel, pandolf_w


def watts(body, pack, terrain, m_s, grade):
    return pandolf_w(Effort(body, pack, m_s * 3.6, grade, terrain))


@pytest.mark.parametrize(
    ("walker", "expected"),
    [
        ((70, 0, 1.0, 1.34, 0), 293.538),
        ((70, 20, 1.0, 1.34, 0), 362.1),
        ((70, 20, 1.2, 1.2, 5), 579.774),
        ((80, 20, 1.0, 1.34112, 10), 871.682),
        ((70, 20, 1.0, 0, 0), 119.694),
        ((65, 15, 1.1, 1.0, 12), 607.621),
    ],
)
def test_level_and_uphill(walker, expected):
    assert watts(*walker) == pytest.approx(expected, abs=0.01)


@pytest.mark.parametrize(
    ("walker", "expected"),
    [
        ((70, 20, 1, 1.34, -4), 313.027),
        ((70, 20, 1, 1.34, -8), 282.015),
        ((70, 20, 1, 1.34, -12), 292.147),
        ((80, 0, 1, 1.34, -8), 261.136),
        ((70, 20, 1.2, 1.1, -10), 235.48),
    ],
)
def test_downhill_with_the_correction(walker, expected):
    assert watts(*walker) == pytest.approx(expected, abs=0.01)


@pytest.mark.parametrize(("grade", "plain"), [(-4, 193.26), (-6, 108.84), (-8, 24.42), (-10, -60.0), (-12, -144.42)])
def test_the_plain_equation_downhill_is_a_known_wrong_reading(grade, plain):
    found = watts(70, 20, 1, 1.34, grade)
    assert found > plain + 100
    assert found > 119.694  # never below standing


def test_a_grade_as_a_fraction_is_a_known_wrong_reading():
    """0.10 instead of 10 leaves the climb out: 362 instead of 784 W."""
    assert watts(70, 20, 1, 1.34, 10) - watts(70, 20, 1, 1.34, 0.1) == pytest.approx(0.35 * 90 * 1.34 * 9.9)


def test_the_cheapest_descent_lies_at_nine_percent():
    grades = [-12 + n / 100 for n in range(1200)]
    assert min(grades, key=lambda grade: watts(70, 20, 1, 1.34, grade)) == pytest.approx(-9.02, abs=0.05)


@pytest.mark.parametrize(
    ("m_s", "grade", "words"), [(1.81, 0, "0 to 1.8 m/s"), (1, -12.1, "-12 to 25"), (1, 25.1, "-12 to 25")]
)
def test_outside_it_answers_with_its_range(m_s, grade, words):
    with pytest.raises(OutsideModel, match=words):
        watts(70, 20, 1, m_s, grade)
