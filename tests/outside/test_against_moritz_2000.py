"""Great-circle distances on the mean radius of the Geodetic Reference System 1980 (Moritz 2000)."""

import pytest

from steadfoot.rules.route import EARTH_RADIUS_M, distance_m


@pytest.mark.parametrize(
    ("places", "metres", "tolerance"),
    [
        ((0, 0, 0, 1), 111195.08, 0.05),
        ((0, 0, 90, 0), 10007557.2, 0.5),
        ((46.4, 13.7, 46.41, 13.71), 1350.683, 0.01),
        ((0, 179.9, 0, -179.9), 22239.02, 0.05),
    ],
)
def test_worked_distances(places, metres, tolerance):
    assert distance_m(*places) == pytest.approx(metres, abs=tolerance)


def test_the_radius_follows_from_the_axes():
    equatorial, polar = 12756274.0 / 2, 6356752.314245
    assert (2 * equatorial + polar) / 3 == pytest.approx(EARTH_RADIUS_M, abs=0.05)


def test_the_other_side_of_the_earth_is_half_way_round():
    assert distance_m(0, 0, 0, 180) == pytest.approx(3.141592653589793 * EARTH_RADIUS_M)
