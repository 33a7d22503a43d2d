"""The engine's parts: rotations, reach, curve, solver, outline and key frames, against geometry."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.interpolate import PchipInterpolator

from steadfoot.exercises.figures import outline, tracks
from steadfoot.exercises.figures.animate import _number
from steadfoot.exercises.figures.motion import Keys, curve
from steadfoot.exercises.figures.points import point
from steadfoot.exercises.figures.reach import two_bone
from steadfoot.exercises.figures.rotations import limb, limb_angles
from steadfoot.exercises.figures.skeleton import Switches, pose
from steadfoot.exercises.figures.solve import solve

FREE = Switches({"leg.L": "angles", "leg.R": "angles", "arm.L": "angles", "arm.R": "angles"})
angle = st.floats(-80, 80)
unit = st.floats(-1, 1)


@given(angle, angle, angle, st.sampled_from((-1, 1)))
def test_angles_of_a_joint_are_read_back(flexion, abduction, external, outward):
    turn = limb(flexion, abduction, external, outward)
    assert limb_angles(turn, outward) == pytest.approx((flexion, abduction, external), abs=1e-6)


@given(st.tuples(unit, unit, unit), st.sampled_from((1, -1)))
def test_bones_never_stretch(target, bends):
    reach = two_bone(np.zeros(3), np.array(target), (0.245, 0.246), np.array((0.6, 0.3, 0.74)), bends)
    assert np.linalg.norm(reach.middle) == pytest.approx(0.245, abs=1e-9)
    assert np.linalg.norm(reach.end - reach.middle) == pytest.approx(0.246, abs=1e-9)
    assert reach.missed == pytest.approx(np.linalg.norm(reach.end - target), abs=1e-6)
    for frame in (reach.upper, reach.lower):
        assert frame.T @ frame == pytest.approx(np.eye(3), abs=1e-6)


def test_signs_are_the_clinics():
    bent = pose({"leg.R.hip.0": 90, "leg.L.hip.1": 40, "arm.R.shoulder.0": 90, "arm.L.elbow": 90, "pelvis.z": 1}, FREE)
    assert point(bent, "knee.R")[0] == pytest.approx(0.245)
    assert point(bent, "knee.L")[1] > 0.2
    assert point(bent, "wrist.R")[0] == pytest.approx(0.332)
    assert point(bent, "wrist.L")[0] == pytest.approx(0.146)
    kneeling = pose({"leg.R.knee": 90, "leg.L.hip.2": 30, "leg.L.ankle": 20, "pelvis.z": 1}, FREE)
    assert point(kneeling, "ankle.R")[0] == pytest.approx(-0.246)
    assert point(kneeling, "toe.L")[1] > point(kneeling, "ankle.L")[1]
    assert point(kneeling, "toe.L")[2] > point(kneeling, "heel.L")[2]


# Whole thousandths of a degree: scipy overflows on slopes that no pose has.
@given(st.lists(st.integers(-90_000, 90_000).map(lambda value: value / 1000), min_size=3, max_size=6))
def test_the_curve_is_the_monotone_cubic_with_flat_ends(values):
    count = len(values)
    times = np.linspace(0, 1, count)
    at = np.linspace(0, 1, 41)
    keys = Keys(tuple(times), tuple({"a": v} for v in values))
    around = [values[1], *values, values[-2]]
    step = times[1]
    outside = PchipInterpolator(np.array([-step, *times, 1 + step]), around)(at)
    found = curve(keys, values, at)
    assert found == pytest.approx(outside, abs=1e-6)
    assert found.min() >= min(values) - 1e-9
    assert found.max() <= max(values) + 1e-9


def test_what_does_not_change_does_not_move():
    keys = Keys((0.0, 0.3, 1.0), ({"a": 0.1}, {"a": 0.1}, {"a": 0.1}))
    assert np.ptp(curve(keys, [0.1, 0.1, 0.1], np.linspace(0, 1, 51))) == 0


@pytest.mark.parametrize("knee", [1, 4, 30, 90, 130])
def test_the_solver_finds_the_height_for_a_knee(knee):
    planted = Switches({"leg.L": "place", "leg.R": "place", "arm.L": "angles", "arm.R": "angles"})
    numbers = {"pelvis.z": 0.5, "foot.L.at.1": 0.05, "foot.R.at.1": -0.05}
    found = solve(numbers, planted, {"pelvis.z": "knee.R", "pelvis.x": "mass.x"}, {"knee.R": knee, "mass.x": 0.02})
    assert found.residual < 2e-6
    upper, lower = found.skeleton.turn["thigh.R"], found.skeleton.turn["shank.R"]
    assert np.degrees(np.arccos(upper[:, 2] @ lower[:, 2])) == pytest.approx(knee, abs=0.05)


@given(st.lists(st.tuples(st.floats(0, 300), st.floats(0, 300), st.floats(8, 60)), min_size=1, max_size=6))
def test_an_outline_is_a_closed_path_of_whole_numbers(circles):
    data = outline.path(np.array(circles))
    assert data[0] == "M"
    assert data[-1] == "z"
    assert not set(data) - set("Mlaz-0123456789 ")


@given(st.floats(-2000, 2000), st.integers(0, 3))
def test_a_written_number_is_the_number(value, places):
    text = _number(value, places)
    assert float(text) == pytest.approx(value, abs=0.51 * 10**-places)
    assert text not in ("", "-", "-0")


def test_key_frames_are_kept_only_where_a_line_is_not_enough():
    ramp = np.column_stack((np.linspace(0, 100, 51), np.zeros(51)))
    assert tracks.keep(ramp, 1.0, 2.0) == [0, 50]
    bow = np.column_stack((np.linspace(0, 100, 51), 40 * np.sin(np.linspace(0, np.pi, 51))))
    kept = tracks.keep(bow, 1.0, 2.0)
    shown = np.interp(range(51), kept, bow[kept, 1])
    assert 2 < len(kept) < 12
    assert np.abs(shown - bow[:, 1]).max() <= 2.0


@given(st.floats(-3, 3), st.floats(0.02, 1.2), st.floats(-1.2, 1.2))
def test_a_part_is_never_turned_over_nor_drawn_as_a_line(turn, length, width):
    rotation = np.array(((np.cos(turn), -np.sin(turn)), (np.sin(turn), np.cos(turn))))
    kept = tracks._kept_thick(rotation @ np.diag((length, width)))
    assert np.linalg.det(kept) > 0
    assert np.linalg.svd(kept)[1].min() >= tracks.THINNEST - 1e-9
