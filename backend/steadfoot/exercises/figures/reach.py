"""Two bones that reach for a place: closed form, so nothing creeps and nothing stretches."""

from dataclasses import dataclass

import numpy as np

from steadfoot.exercises.figures.rotations import TINY, Matrix, Vector, X, Y, Z, cross, length, unit


@dataclass(frozen=True, slots=True)
class Reach:
    """Where the middle joint came to lie, the frames of both bones, and by how much the target was missed."""

    middle: Vector
    end: Vector
    upper: Matrix
    lower: Matrix
    missed: float


def two_bone(root: Vector, target: Vector, lengths: tuple[float, float], hint: Vector, bends: int) -> Reach:
    """Reach from a root joint to a target with two bones.

    Args:
        root: Upper joint, fractions of stature.
        target: Where the lower joint should be.
        lengths: Lengths of the upper and the lower bone.
        hint: Direction that the middle joint should point to.
        bends: +1 when the middle joint points forward in the bone's frame (knee), -1 when backward (elbow).
    """
    first, second = lengths
    way = target - root
    far = length(way)
    span = min(max(far, abs(first - second) + TINY), first + second)
    along = way / far if far > TINY else -Z
    across = _across(along, hint)
    foot = (first**2 - second**2 + span**2) / (2 * span)
    middle = root + foot * along + float(np.sqrt(max(first**2 - foot**2, 0.0))) * across
    end = root + span * along
    axis = cross(-along, bends * across)
    upper, lower = _frame(root, middle, axis), _frame(middle, end, axis)
    return Reach(middle, end, upper, lower, abs(far - span))


def _across(along: Vector, hint: Vector) -> Vector:
    """Answer the direction across the way that is nearest to the hint; any, when the hint lies along the way."""
    for wish in (hint, X, Y):
        rest = wish - (wish @ along) * along
        if length(rest) > TINY:
            return unit(rest)
    return Z


def _frame(start: Vector, end: Vector, axis: Vector) -> Matrix:
    up = unit(start - end)
    return np.column_stack((cross(axis, up), axis, up))


def span_at(lengths: tuple[float, float], bend: float) -> float:
    """Answer the distance from root to end when the middle joint is bent by an angle in degrees."""
    first, second = lengths
    return float(np.sqrt(first**2 + second**2 + 2 * first * second * np.cos(np.radians(bend))))
