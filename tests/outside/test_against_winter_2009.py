"""The figures' body, Winter 2009: Figure 4.1 (Drillis and Contini 1966), Table 4.1 (Dempster 1955). Exact."""

import numpy as np
import pytest

from steadfoot.exercises.figures import body
from steadfoot.exercises.figures.points import centre_of_mass, point
from steadfoot.exercises.figures.skeleton import Switches, pose

LENGTHS = {
    "ANKLE_HEIGHT": 0.039,
    "SHANK": 0.246,
    "THIGH": 0.245,
    "UPPER_ARM": 0.186,
    "FOREARM": 0.146,
    "HAND": 0.108,
    "HIP_TO_SHOULDER": 0.288,
    "FOOT": 0.152,
}
MASSES = {
    "hand": (0.006, 0.506),
    "forearm": (0.016, 0.430),
    "upper_arm": (0.028, 0.436),
    "foot": (0.0145, 0.500),
    "shank": (0.0465, 0.433),
    "thigh": (0.100, 0.433),
    "head_neck": (0.081, 1.000),
    "trunk": (0.497, 0.500),
}
LANDMARKS = {"hip.R": 0.530, "knee.R": 0.285, "ankle.R": 0.039, "shoulder.R": 0.818, "head": 0.935}
STANDING = Switches({"leg.L": "angles", "leg.R": "angles", "arm.L": "angles", "arm.R": "angles"})


@pytest.mark.parametrize(("name", "told"), LENGTHS.items())
def test_length(name, told):
    assert getattr(body, name) == told


@pytest.mark.parametrize(("segment", "told"), MASSES.items())
def test_mass_and_centre(segment, told):
    assert (body.MASS[segment], body.CENTRE[segment]) == told


def test_masses_make_a_whole_body():
    middle = body.MASS["trunk"] + body.MASS["head_neck"]
    limbs = sum(mass for name, mass in body.MASS.items() if name not in ("trunk", "head_neck"))
    assert middle + 2 * limbs == pytest.approx(1.0, abs=1e-12)


@pytest.mark.parametrize(("name", "height"), LANDMARKS.items())
def test_landmarks_of_a_standing_figure(name, height):
    standing = pose({"pelvis.z": 0.53}, STANDING)
    assert point(standing, name)[2] == pytest.approx(height, abs=1e-9)


def test_center_of_mass_of_a_standing_figure():
    """From the table by hand, arms hanging: the sum of mass times height. Literature: .55 to .57 of stature."""
    heights = {
        "trunk": 0.53 + 0.5 * 0.288,
        "head_neck": 0.935,
        "thigh": 0.53 - 0.433 * 0.245,
        "shank": 0.285 - 0.433 * 0.246,
        "foot": 0.039 + 0.5 * (0.0125 - 0.039),
        "upper_arm": 0.818 - 0.436 * 0.186,
        "forearm": 0.632 - 0.430 * 0.146,
        "hand": 0.486 - 0.506 * 0.108,
    }
    count = {name: 1 if name in ("trunk", "head_neck") else 2 for name in heights}
    expected = sum(count[name] * MASSES[name][0] * height for name, height in heights.items())
    found = centre_of_mass(pose({"pelvis.z": 0.53}, STANDING))
    assert found[2] == pytest.approx(expected, abs=1e-9)
    assert 0.55 < found[2] < 0.58


def test_a_pack_moves_the_center_of_mass_back():
    """Two masses on a lever: x = (m_b x_b + m_p x_p) / (m_b + m_p)."""
    standing = pose({"pelvis.z": 0.53}, STANDING)
    alone = centre_of_mass(standing)
    place = np.array((-0.1, 0.0, 0.0))
    loaded = centre_of_mass(standing, (("thorax", place, 0.15),))
    assert loaded[0] == pytest.approx((alone[0] + 0.15 * -0.1) / 1.15, abs=1e-12)
