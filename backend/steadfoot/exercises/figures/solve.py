"""Finds the numbers that a pose leaves open, such as the pelvis height, from what decides them.

Newton's method on one to four unknowns with a numeric Jacobian. Conditions are lengths, also those of a bend: the
distance from hip to ankle that belongs to a knee angle. As an angle its slope is zero near straight, and it stalls.
"""

from collections.abc import Callable, Mapping
from dataclasses import dataclass

import numpy as np

from steadfoot.exercises.figures import points
from steadfoot.exercises.figures.body import SIDES
from steadfoot.exercises.figures.points import Load
from steadfoot.exercises.figures.reach import span_at
from steadfoot.exercises.figures.rotations import Vector
from steadfoot.exercises.figures.skeleton import ARM, LEG, Numbers, Skeleton, Switches, pose

CLOSE = 2e-6
"""Largest residual, fractions of stature, at which the solver stops."""
ROUNDS = 25
PROBE = {"length": 1e-5, "angle": 1e-3}
LONGEST_STEP = {"length": 0.08, "angle": 15.0}
AXES = {"x": 0, "y": 1, "z": 2}


@dataclass(frozen=True, slots=True)
class Solved:
    """A pose with its open numbers found, and the largest residual left, in fractions of stature."""

    numbers: dict[str, float]
    skeleton: Skeleton
    residual: float


def paths_of(path: str) -> list[str]:
    """Answer the numbers of an unknown: a limb without a side means both."""
    limb, _, rest = path.partition(".")
    both = limb in ("leg", "foot", "arm", "hand") and rest[:2] not in ("L.", "R.")
    return [f"{limb}.{side}.{rest}" for side in SIDES] if both else [path]


def kind(path: str) -> str:
    """Answer whether a number is a length or an angle."""
    return "length" if path.endswith((".x", ".y", ".z")) or ".at." in path else "angle"


def measure(skeleton: Skeleton, condition: str, aim: float, loads: tuple[Load, ...]) -> float:
    """Answer by how much a condition is not met, in fractions of stature."""
    name, _, last = condition.rpartition(".")
    if name == "mass":
        return float(points.centre_of_mass(skeleton, loads)[AXES[last]] - aim)
    if last in AXES:
        return float(points.point(skeleton, name)[AXES[last]] - aim)
    return skeleton.span[condition][0] - span_at(LEG if name == "knee" else ARM, aim)


def solve(
    numbers: Numbers,
    switches: Switches,
    unknowns: Mapping[str, str],
    aims: Mapping[str, float],
    loads: tuple[Load, ...] = (),
) -> Solved:
    """Find the open numbers of a pose.

    Args:
        numbers: The pose; what it says of an unknown is the first guess.
        switches: How the limbs are told.
        unknowns: Open number by its path, and the condition that decides it.
        aims: What each condition should come to: an angle, or a place along an axis.
        loads: Weights carried, for the center of mass.
    """
    held, paths = dict(numbers), list(unknowns)

    def off(values: Vector) -> Vector:
        for path, value in zip(paths, values, strict=True):
            held.update(dict.fromkeys(paths_of(path), float(value)))
        skeleton = pose(held, switches)
        return np.array([measure(skeleton, unknowns[path], aims[unknowns[path]], loads) for path in paths])

    if paths:
        off(
            _newton(
                off, np.array([held.get(paths_of(path)[-1], 0.0) for path in paths]), [kind(path) for path in paths]
            )
        )
    skeleton = pose(held, switches)
    left = [abs(measure(skeleton, unknowns[path], aims[unknowns[path]], loads)) for path in paths]
    return Solved(held, skeleton, max(left, default=0.0))


def _newton(off: Callable[[Vector], Vector], guess: Vector, kinds: list[str]) -> Vector:
    probe = np.array([PROBE[kind] for kind in kinds])
    longest = np.array([LONGEST_STEP[kind] for kind in kinds])
    best, least = guess, np.inf
    for _ in range(ROUNDS):
        residual = off(guess)
        worst = float(np.abs(residual).max())
        if worst < least:
            best, least = guess, worst
        if worst < CLOSE:
            break
        columns = [(off(guess + step) - residual) / step[i] for i, step in enumerate(np.diag(probe))]
        move = np.linalg.lstsq(np.column_stack(columns), -residual, rcond=1e-9)[0]
        guess = guess + move / max(1.0, float(np.abs(move / longest).max()))
    return best
