"""The outline of a few circles: exact arcs joined by exact tangents, as a short SVG path in whole drawing units."""

import numpy as np
from numpy.typing import NDArray

from steadfoot.exercises.figures.rotations import TINY

Circles = NDArray[np.float64]
"""Rows of x, y, radius; y down, so growing angles run clockwise on paper."""
DIRECTIONS = 240
ROUND = 2 * np.pi


def _runs(circles: Circles) -> list[tuple[int, float]]:
    """Answer which circle lies outermost, direction by direction: each with the angle where its turn begins."""
    angles = np.arange(DIRECTIONS) * ROUND / DIRECTIONS
    reach = circles[:, :2] @ np.vstack((np.cos(angles), np.sin(angles))) + circles[:, 2:]
    outermost = reach.argmax(axis=0)
    starts = np.flatnonzero(outermost != np.roll(outermost, 1))
    return [(int(outermost[i]), float(angles[i])) for i in starts]


def _tangent(before: NDArray[np.float64], after: NDArray[np.float64], near: float) -> float:
    """Answer the direction in which two circles reach equally far, nearest to a guess."""
    way = after[:2] - before[:2]
    ratio = (before[2] - after[2]) / max(float(np.hypot(*way)), TINY)
    half, middle = float(np.arccos(np.clip(ratio, -1, 1))), float(np.arctan2(way[1], way[0]))
    both = (middle + half, middle - half)
    off = [abs((angle - near + np.pi) % ROUND - np.pi) for angle in both]
    return both[int(off[1] < off[0])]


def _at(circle: NDArray[np.float64], angle: float) -> tuple[int, int]:
    x, y, radius = circle
    return round(x + radius * np.cos(angle)), round(y + radius * np.sin(angle))


def joined(numbers: list[int]) -> str:
    """Answer whole numbers with as few separators as SVG allows."""
    return "".join(str(n) if i == 0 or n < 0 else f" {n}" for i, n in enumerate(numbers))


def path(circles: Circles) -> str:
    """Answer the outline of circles as path data."""
    circles = np.unique(np.round(circles, 3), axis=0)
    runs = _runs(circles)
    if not runs:
        return _circle(circles[int(circles[:, 2].argmax())])
    turns = [_tangent(circles[runs[i - 1][0]], circles[which], angle) for i, (which, angle) in enumerate(runs)]
    here = _at(circles[runs[0][0]], turns[0])
    pieces = [f"M{joined(list(here))}"]
    for i, (which, _) in enumerate(runs):
        start, end = turns[i], turns[(i + 1) % len(turns)]
        here = _line(pieces, here, _at(circles[which], start))
        here = _arc(pieces, here, _at(circles[which], end), circles[which][2], (end - start) % ROUND > np.pi)
    return "".join(pieces) + "z"


def _line(pieces: list[str], here: tuple[int, int], there: tuple[int, int]) -> tuple[int, int]:
    step = [there[0] - here[0], there[1] - here[1]]
    if any(step):
        pieces.append(f"l{joined(step)}")
    return there


def _arc(
    pieces: list[str], here: tuple[int, int], there: tuple[int, int], radius: float, large: bool
) -> tuple[int, int]:
    step = [there[0] - here[0], there[1] - here[1]]
    size = round(radius)
    if any(step) and size > 0:
        pieces.append(f"a{size} {size} 0 {int(large)} 1{'' if step[0] < 0 else ' '}{joined(step)}")
        return there
    return _line(pieces, here, there)


def _circle(circle: NDArray[np.float64]) -> str:
    x, y, radius = (round(float(n)) for n in circle)
    return f"M{joined([x - radius, y])}a{radius} {radius} 0 1 1 0 1z" if radius else f"M{joined([x, y])}z"
