"""Things in the picture: where they are and how they stand."""

import numpy as np
import pytest

from steadfoot.exercises.figures.points import point
from steadfoot.exercises.figures.props import loads, worn
from steadfoot.exercises.figures.schema import Prop
from steadfoot.exercises.figures.skeleton import Switches, pose

FREE = Switches({"leg.L": "angles", "leg.R": "angles", "arm.L": "angles", "arm.R": "angles"})


def test_a_carried_pack_is_between_the_hands_and_weighs_there():
    told = Prop(kind="pack", hands=["L", "R"])
    shapes = list(worn("pack", told))
    assert {shape.bone for shape in shapes} == {"hands"}
    bag = np.array(shapes[0].spheres)
    hung = list(worn("pack", told.model_copy(update={"at": (0.0, 0.0, -0.1)})))
    assert np.array(hung[0].spheres)[:, 2] == pytest.approx(bag[:, 2] - 0.1)
    assert bag[:, :3].mean(axis=0) == pytest.approx((-0.002, 0, 0), abs=0.001)
    assert [bone for bone, _, _ in loads({"pack": told})] == ["hands"]


def test_what_two_hands_carry_stays_upright_in_a_bow():
    bent = pose({"pelvis.z": 0.5, "pelvis.tilt": 60, "pelvis.turn": 90}, FREE)
    assert bent.turn["hands"] @ (0, 0, 1) == pytest.approx((0, 0, 1))
    assert bent.turn["hands"] @ (1, 0, 0) == pytest.approx((0, 1, 0), abs=1e-9)
    middle = (point(bent, "palm.L") + point(bent, "palm.R")) / 2
    assert bent.at["hands"] == pytest.approx(middle)
