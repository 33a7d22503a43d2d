"""Named points of the body, its center of mass, and the angles of its joints, read from a skeleton."""

from collections.abc import Iterable

import numpy as np

from steadfoot.exercises.figures import body
from steadfoot.exercises.figures.rotations import Vector, limb_angles
from steadfoot.exercises.figures.skeleton import BALL, HEEL, PALM, Skeleton

_DOWN = np.array((0.0, 0.0, -1.0))
_SIDED = {
    "hip": ("thigh", 0 * _DOWN),
    "thigh": ("thigh", 0.7 * body.THIGH * _DOWN),
    "knee": ("shank", 0 * _DOWN),
    "ankle": ("foot", 0 * _DOWN),
    "heel": ("foot", HEEL),
    "ball": ("foot", BALL),
    "arch": ("foot", np.array((0.018, 0.0, -0.6 * body.ANKLE_HEIGHT))),
    "toe": ("toe", np.array((body.TOE_AHEAD - body.BALL_AHEAD, 0.0, 0.0))),
    "shoulder": ("upper_arm", 0 * _DOWN),
    "elbow": ("forearm", 0 * _DOWN),
    "wrist": ("hand", 0 * _DOWN),
    "palm": ("hand", PALM * _DOWN),
    "fingertip": ("hand", body.HAND * _DOWN),
}
_MIDDLE = {
    "pelvis": ("pelvis", 0 * _DOWN),
    "waist": ("abdomen", 0 * _DOWN),
    "chest": ("thorax", 0 * _DOWN),
    "neck": ("neck", 0 * _DOWN),
    "head": ("head", np.array((0.0, 0.0, body.HEAD_CENTRE))),
}
POINTS: dict[str, tuple[str, Vector]] = _MIDDLE | {
    f"{name}.{side}": (f"{bone}.{side}", offset) for name, (bone, offset) in _SIDED.items() for side in body.SIDES
}
"""Bone and offset in its frame of every named point."""

Load = tuple[str, Vector, float]
"""A weight that is carried: bone, place in its frame, mass as a fraction of body mass."""


def point(skeleton: Skeleton, name: str) -> Vector:
    """Answer where a named point is, in fractions of stature."""
    return skeleton.point(*POINTS[name])


def _segments() -> list[tuple[str, Vector, float]]:
    """Answer bone, center of mass in its frame and mass of every segment of the limbs."""
    lengths = {"hand": body.HAND, "forearm": body.FOREARM, "upper_arm": body.UPPER_ARM}
    lengths |= {"shank": body.SHANK, "thigh": body.THIGH}
    places = {name: body.CENTRE[name] * told * _DOWN for name, told in lengths.items()}
    places["foot"] = body.CENTRE["foot"] * BALL
    return [(f"{name}.{side}", place, body.MASS[name]) for name, place in places.items() for side in body.SIDES]


_SEGMENTS = _segments()


def centre_of_mass(skeleton: Skeleton, loads: Iterable[Load] = ()) -> Vector:
    """Answer the center of mass of the body and what it carries, in fractions of stature (Winter 2009, Table 4.1)."""
    start, end = skeleton.at["pelvis"], skeleton.at["neck"]
    trunk, head = body.MASS["trunk"], body.MASS["head_neck"]
    moment = trunk * (start + body.CENTRE["trunk"] * (end - start)) + head * point(skeleton, "head")
    total = trunk + head
    for bone, offset, mass in (*_SEGMENTS, *loads):
        moment = moment + mass * (skeleton.at[bone] + skeleton.turn[bone] @ offset)
        total += mass
    return np.asarray(moment / total)


def joint_angles(skeleton: Skeleton) -> dict[str, float]:
    """Answer the angles of hips, knees, ankles and elbows in degrees, signed as the clinic counts them."""
    angles: dict[str, float] = {}
    for side in body.SIDES:
        turn = skeleton.turn
        thigh, shank, foot = turn[f"thigh.{side}"], turn[f"shank.{side}"], turn[f"foot.{side}"]
        flexion, abduction, _ = limb_angles(turn["pelvis"].T @ thigh, body.outward(side))
        angles[f"hip flexion.{side}"], angles[f"hip abduction.{side}"] = flexion, abduction
        angles[f"knee.{side}"] = _signed(thigh.T @ shank, 1)
        angles[f"ankle.{side}"] = _signed(shank.T @ foot, -1)
        angles[f"elbow.{side}"] = _signed(turn[f"upper_arm.{side}"].T @ turn[f"forearm.{side}"], -1)
    return angles


def _signed(relative: Vector, sign: int) -> float:
    return float(sign * np.degrees(np.arctan2(relative[0, 2], relative[2, 2])))
