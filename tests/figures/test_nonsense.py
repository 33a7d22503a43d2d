"""Wrong data, planted: each is caught, and the message says what is wrong, where and when."""

import re

import numpy as np
import pytest

from steadfoot.exercises.figures import checks
from steadfoot.exercises.figures.motion import move
from steadfoot.exercises.figures.read import figure
from steadfoot.exercises.figures.rotations import ry
from tests.figures.conftest import squat_document


def spoilt(change):
    document = squat_document()
    change(document)
    found = figure("squat", "free", document)
    return checks.findings(found, move(found.task, 11))


def test_the_unspoilt_squat_holds(squat):
    assert checks.findings(*squat) == []


def test_a_stretched_bone(squat):
    found, samples = squat
    samples[5].skeleton.at["shank.R"] = samples[5].skeleton.at["shank.R"] + np.array((0, 0, 0.01))
    told = list(checks.lengths(found, samples))
    assert any("bone stretched: thigh.R" in one and "t 0.50" in one for one in told)


def test_a_sliding_foot():
    told = spoilt(lambda d: d["keys"]["down"].update({"foot.R": {"at": [0.05, -0.075, 0]}}))
    assert any("slides: contact foot.R" in one for one in told)


def test_a_knee_bent_backward(squat):
    found, samples = squat
    thigh = samples[3].skeleton.turn["thigh.R"]
    samples[3].skeleton.turn["shank.R"] = thigh @ ry(-20)
    told = list(checks.ranges(found, samples))
    assert told == ["joint range: knee.R is -20 degrees, beyond 0 to 145, at t 0.30"]


def test_falling_over():
    told = spoilt(lambda d: d["keys"]["down"].update({"aim": {"knee.R": 100, "mass.x": -0.1}}))
    assert any("falls over: the center of mass is" in one and "outside the contacts" in one for one in told)


def test_a_foot_in_the_floor():
    def sink(document):
        document["base"]["foot"]["at"] = [0, 0.075, -0.01]

    assert any(re.match(r"sinks in: foot\.R is 1[78] mm inside floor", one) for one in spoilt(sink))


def test_a_foot_in_a_box():
    def block(document):
        document["props"] = {"step": {"kind": "box", "at": [0, 0, 0], "size": [0.3, 0.4, 0.05]}}

    assert any("inside step" in one for one in spoilt(block))


def test_a_hand_that_cannot_reach():
    def far(document):
        del document["base"]["arm"]
        document["base"]["hand"] = {"at": [0.9, 0.1, 0.8]}
        for key in document["keys"].values():
            key.pop("arm", None)

    assert any("out of reach: hand.L misses its place by" in one for one in spoilt(far))


def test_a_condition_that_cannot_be_met():
    told = spoilt(lambda d: d["solve"].update({"pelvis.turn": "head.y"}) or d["base"]["aim"].update({"head.y": 0.8}))
    assert any("not solved: a condition is off by" in one for one in told)


def test_a_jump(squat):
    found, samples = squat
    samples[4].skeleton.at["hand.R"] = samples[4].skeleton.at["hand.R"] + np.array((0.3, 0, 0))
    assert any("jumps: wrist.R moves" in one for one in checks.smooth(found, samples))


@pytest.mark.parametrize("check", checks.CHECKS)
def test_every_check_says_what_it_holds(check):
    assert check.__doc__
