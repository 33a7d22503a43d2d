"""Named points of the body, its center of mass, and the angles of its joints, read from a skeleton."""

from collections.abc import Iterable

import numpy as np

from steadfoot.exercises.figures import body
from steadfoot.exercises.figures.rotations import Vector, limb_angles
from steadfoot.exercises.figures.skeleton import BALL, HEEL, Skeleton

_DOWN = np.array((0.0, 0.0, -1.0))
_SIDED = {
    "hip": ("thigh", 0 * _DOWN),
    "knee": ("shank", 0 * _DOWN),
    "ankle": ("foot", 0 * _DOWN),
    "heel": ("foot", HEEL),
    "ball": ("foot", BALL),
    "toe": ("toe", np.array((body.TOE_AHEAD - body.BALL_AHEAD, 0.0, 0.0))),
    "shoulder": ("upper_arm", 0 * _DOWN),
    "elbow": ("forearm", 0 * _DOWN),
    "wrist": ("hand", 0 * _DOWN),
    "palm": ("hand", 0.45 * body.HAND * _DOWN),
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


def _segments() -> list[tuple[str, str, str]]:
    chains = (
        ("hand", "wrist", "fingertip"),
        ("forearm", "elbow", "wrist"),
        ("upper_arm", "shoulder", "elbow"),
        ("foot", "ankle", "ball"),
        ("shank", "knee", "ankle"),
        ("thigh", "hip", "knee"),
    )
    return [(name, f"{a}.{side}", f"{b}.{side}") for name, a, b in chains for side in body.SIDES]


_SEGMENTS = [("head_neck", "neck", "head"), ("trunk", "pelvis", "neck"), *_segments()]


def centre_of_mass(skeleton: Skeleton, loads: Iterable[Load] = ()) -> Vector:
    """Answer the center of mass of the body and what it carries, in fractions of stature (Winter 2009, Table 4.1)."""
    total, moment = 0.0, np.zeros(3)
    for name, upper, lower in _SEGMENTS:
        start, end = point(skeleton, upper), point(skeleton, lower)
        moment += body.MASS[name] * (start + body.CENTRE[name] * (end - start))
        total += body.MASS[name]
    for bone, offset, mass in loads:
        moment += mass * skeleton.point(bone, offset)
        total += mass
    return moment / total


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
