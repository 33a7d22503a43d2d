"""A close view, and the sole of a foot turned inward and outward."""

import re

import numpy as np
import pytest

from steadfoot.exercises.figures.draw import still
from steadfoot.exercises.figures.motion import move
from steadfoot.exercises.figures.parts import BAREFOOT
from steadfoot.exercises.figures.patch import PoseFileBroken
from steadfoot.exercises.figures.points import point
from steadfoot.exercises.figures.props import standing
from steadfoot.exercises.figures.read import figure
from steadfoot.exercises.figures.scene import CLOSE, scene
from steadfoot.exercises.figures.schema import Prop
from steadfoot.exercises.figures.skeleton import Switches, pose
from steadfoot.exercises.figures.strip import strip
from tests.figures.conftest import squat_document

NEAR_FOOT = ["ankle.R", "toe.R"]


@pytest.fixture
def close():
    found = figure("squat", "free", squat_document() | {"frame": {"side": NEAR_FOOT}})
    return scene(found, samples=move(found.task, 11))


def test_a_close_view_holds_its_points_at_all_times_with_a_rim(close):
    left, top, width, height = close.frame
    for sample in close.samples:
        for name in NEAR_FOOT:
            x, y = close.camera.paper @ point(sample.skeleton, name)
            assert left + CLOSE <= x + 1 <= left + width - CLOSE + 2
            assert top + CLOSE <= y + 1 <= top + height - CLOSE + 2


def test_a_close_view_leaves_out_what_is_beyond_its_edges(close, squat):
    names = {item.shape.name for item in close.items}
    assert {"foot.R", "toe.R", "shank.R"} <= names
    assert not names & {"face", "thorax", "sleeve.R"}
    whole, samples = squat
    assert len(still(close)) < len(still(scene(whole, samples=samples)))


def test_the_poses_of_a_close_strip_are_cut_at_the_edges(close):
    boxes = re.findall(r'viewBox="([^"]+)"', strip(close))
    assert boxes[1:] == [" ".join(map(str, close.frame))] * len(close.figure.movement.strip)


def test_a_close_view_of_no_known_point_is_refused():
    with pytest.raises(PoseFileBroken, match="frame: 'toes' is not one of"):
        figure("squat", "free", squat_document() | {"frame": {"side": ["toes"]}})


@pytest.mark.parametrize("told", ["leg", "foot"])
@pytest.mark.parametrize(("side", "outward"), [("L", 1), ("R", -1)])
def test_a_sole_turned_outward_faces_outward_and_leaves_the_knee_alone(told, side, outward):
    way = "angles" if told == "leg" else "place"
    switches = Switches({"leg.L": way, "leg.R": way, "arm.L": "angles", "arm.R": "angles"})
    standing_still = {"pelvis.z": 0.51, f"foot.{side}.at.1": outward * 0.05}
    level = pose(standing_still, switches)
    turned = pose(standing_still | {f"{told}.{side}.inversion": -20}, switches)
    sole = turned.turn[f"foot.{side}"] @ (0, 0, -1)
    assert outward * sole[1] == pytest.approx(np.sin(np.radians(20)))
    assert turned.turn[f"thigh.{side}"] == pytest.approx(level.turn[f"thigh.{side}"], abs=0.02)


def test_a_ball_lies_on_the_floor():
    (ball,) = standing("ball", Prop(kind="ball", at=(0.1, 0, 0), size=(0.2, 0.2, 0.2)))
    assert ball.spheres == ((0.1, 0, 0.1, 0.1),)


@pytest.mark.parametrize("side", ["L", "R"])
def test_an_arch_rises_between_heel_and_ball_which_stay_on_the_floor(side):
    switches = Switches({"leg.L": "place", "leg.R": "place", "arm.L": "angles", "arm.R": "angles"})
    flat, drawn = (pose({"pelvis.z": 0.51, f"foot.{side}.arch": angle}, switches) for angle in (0, 15))
    low = {}
    for name, skeleton in (("flat", flat), ("drawn", drawn)):
        for shape in BAREFOOT[f"foot.{side}"]:
            rows = np.array(shape.spheres)
            places = skeleton.at[shape.bone] + rows[:, :3] @ skeleton.turn[shape.bone].T
            bottoms = places[:, 2] - rows[:, 3]
            assert bottoms.min() == pytest.approx(0, abs=0.0015)
            instep = 2 if shape.name.startswith("hindfoot") else 0
            low[name, shape.bone] = bottoms[instep]
    for bone in (f"hindfoot.{side}", f"forefoot.{side}"):
        assert low["drawn", bone] > low["flat", bone] + 0.008


def test_a_bare_foot_is_skin_and_a_shod_one_is_not():
    fills = {}
    for barefoot in (True, False):
        found = figure("squat", "free", squat_document() | {"barefoot": barefoot})
        items = scene(found, samples=move(found.task, 3)).items
        fills[barefoot] = {item.shape.fill for item in items if item.shape.bone.startswith(("toe", "foot", "hind"))}
    assert fills == {True: {"skin"}, False: {"shoe"}}
