"""Rotations about the axes of the room; each answers a 3 x 3 matrix for an angle in degrees."""

from math import asin, atan2, cos, degrees, radians, sin
from typing import TypeAlias

import numpy as np
from numpy.typing import NDArray

Vector: TypeAlias = NDArray[np.float64]
Matrix: TypeAlias = NDArray[np.float64]
X, Y, Z = np.eye(3)
TINY = 1e-12


def rx(angle: float) -> Matrix:
    """Turn about x: what points up goes to the right."""
    c, s = cos(radians(angle)), sin(radians(angle))
    return np.array(((1.0, 0.0, 0.0), (0.0, c, -s), (0.0, s, c)))


def ry(angle: float) -> Matrix:
    """Turn about y: what points up goes forward."""
    c, s = cos(radians(angle)), sin(radians(angle))
    return np.array(((c, 0.0, s), (0.0, 1.0, 0.0), (-s, 0.0, c)))


def rz(angle: float) -> Matrix:
    """Turn about z: what points forward goes to the left."""
    c, s = cos(radians(angle)), sin(radians(angle))
    return np.array(((c, -s, 0.0), (s, c, 0.0), (0.0, 0.0, 1.0)))


def limb(flexion: float, abduction: float, external: float, outward: int) -> Matrix:
    """Turn of a hip or shoulder: flexion, then abduction, then external rotation, all as the clinic counts them."""
    return ry(-flexion) @ rx(outward * abduction) @ rz(outward * external)


def limb_angles(turn: Matrix, outward: int) -> tuple[float, float, float]:
    """Answer flexion, abduction and external rotation of a turn, the inverse of ``limb``."""
    abduction = asin(max(-1.0, min(1.0, -turn[1, 2])))
    flexion = -atan2(turn[0, 2], turn[2, 2])
    external = atan2(turn[1, 0], turn[1, 1])
    return degrees(flexion), outward * degrees(abduction), outward * degrees(external)


def cross(a: Vector, b: Vector) -> Vector:
    """Answer the cross product of two vectors; many times faster than numpy's for one pair."""
    return np.array((a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]))


def length(a: Vector) -> float:
    """Answer the length of a vector."""
    return float(np.sqrt(a @ a))


def unit(a: Vector) -> Vector:
    """Answer a vector of length 1 in the same direction."""
    return a / max(length(a), TINY)


def least_turn(start: Vector, end: Vector) -> Matrix:
    """Answer the smallest turn that takes one unit vector to another."""
    axis, c = cross(start, end), float(start @ end)
    if c < TINY - 1:  # opposite: any axis across will do
        axis = unit(cross(start, X if abs(start[0]) < abs(start[2]) else Z))
        return np.asarray(2 * np.outer(axis, axis) - np.eye(3))
    skew = np.array(((0.0, -axis[2], axis[1]), (axis[2], 0.0, -axis[0]), (-axis[1], axis[0], 0.0)))
    return np.asarray(np.eye(3) + skew + skew @ skew / (1 + c))
