"""Minetti et al. 2002: J/kg/m by the polynomial (tolerance 0.0005), and what the paper measured."""

import pytest

from steadfoot.rules.metabolic import OutsideModel, minetti_j_per_kg_m


@pytest.mark.parametrize(
    ("percent", "cost"),
    [
        (0, 2.5),
        (10, 4.8991),
        (20, 7.8774),
        (30, 11.1835),
        (45, 17.6003),
        (-10, 1.1271),
        (-20, 1.0867),
        (-30, 2.2075),
        (-45, 3.6051),
    ],
)
def test_the_polynomial(percent, cost):
    assert minetti_j_per_kg_m(percent) == pytest.approx(cost, abs=5e-4)


@pytest.mark.parametrize(
    ("percent", "mean", "sd", "inside"),
    [(45, 17.33, 1.11, True), (-10, 0.81, 0.37, True), (-45, 3.46, 0.95, True), (0, 1.64, 0.5, False)],
)
def test_what_was_measured(percent, mean, sd, inside):
    """On the level the polynomial lies above what was measured at the best speed."""
    assert (abs(minetti_j_per_kg_m(percent) - mean) <= sd) is inside


def test_a_percent_read_as_a_fraction_is_a_known_wrong_reading():
    assert minetti_j_per_kg_m(0.1) == pytest.approx(2.5, abs=0.03)
    assert minetti_j_per_kg_m(10) > 4.8


def test_the_cheapest_descent():
    grades = [-45 + n / 100 for n in range(4500)]
    assert min(grades, key=minetti_j_per_kg_m) == pytest.approx(-15.25, abs=0.05)


@pytest.mark.parametrize("percent", [-45.1, 45.1, float("nan")])
def test_beyond_45_percent_it_answers_with_its_range(percent):
    with pytest.raises(OutsideModel, match="-45 to 45 percent"):
        minetti_j_per_kg_m(percent)
