"""Brings a joint to a spot on paper by the few numbers that move it: damped least squares within their ranges.

Levenberg 1944 (Q Appl Math 2:164-168), with a fixed damping: far spots and straight limbs must not make a joint jump.
"""

from collections.abc import Mapping

import numpy as np

from steadfoot.exercises.figures.camera import CAMERAS, SCALE, Camera
from steadfoot.exercises.figures.controls import Control, controls, moved_by
from steadfoot.exercises.figures.motion import Sample
from steadfoot.exercises.figures.points import point
from steadfoot.exercises.figures.read import Figure
from steadfoot.exercises.figures.rotations import Vector, length
from steadfoot.exercises.figures.solve import solve

ROUNDS = 8
CLOSE = 1.0
"""House: drawing units; nobody can hold a pointer stiller."""
DAMPING = 20.0
"""House: drawing units."""
PROBE = 1e-3
DEGREES_A_UNIT = 60.0
"""House: so many degrees weigh as much as one stature."""
IN_PLANE = 0.5
"""House: a number that moves a joint mostly toward or away from the viewer is left alone: nobody sees what it does."""
Spot = tuple[float, float]


def solved_at(figure: Figure, numbers: Mapping[str, float], time: float) -> Sample:
    """Solve one key pose by itself, from what its numbers say."""
    aims = {name.removeprefix("aim."): value for name, value in numbers.items() if name.startswith("aim.")}
    task = figure.task
    return Sample(time, solve(numbers, task.switches, task.unknowns, aims, task.loads))


def on_paper(camera: Camera, sample: Sample, name: str) -> Vector:
    """Answer where a named point is on paper, in drawing units."""
    return np.asarray(camera.paper @ point(sample.skeleton, name))


def dragged(figure: Figure, numbers: Mapping[str, float], name: str, spot: Spot, view: str) -> dict[str, float]:
    """Answer the numbers of a key pose with a joint brought as near to a spot as its ranges allow.

    Args:
        figure: The movement.
        numbers: All numbers of the key.
        name: A point of ``controls.HANDLES``.
        spot: x and y on paper, in drawing units.
        view: From where it is looked at.
    """
    camera, held = CAMERAS[view], dict(numbers)
    free = [one for one in _free(figure, numbers, name) if _in_plane(figure, numbers, one, camera, name)]
    if not free:
        return held
    for _ in range(ROUNDS):
        here = on_paper(camera, solved_at(figure, held, 0), name)
        off = np.array(spot) - here
        if np.abs(off).max() < CLOSE:
            break
        held |= _step(figure, held, free, camera, name, here, off)
    return held


def _free(figure: Figure, numbers: Mapping[str, float], name: str) -> list[Control]:
    """Answer the numbers that may be changed; for one that the solver finds, what decides it."""
    known = controls(figure, numbers)
    unknowns = figure.task.unknowns
    paths = [f"aim.{unknowns[path]}" if path in unknowns else path for path in moved_by(name)]
    return [known[path] for path in dict.fromkeys(paths) if path in known]


def _scale(one: Control) -> float:
    return 1.0 if one.length else DEGREES_A_UNIT


def _probed(figure: Figure, numbers: Mapping[str, float], one: Control) -> Sample:
    return solved_at(figure, dict(numbers) | {one.path: numbers.get(one.path, 0.0) + PROBE * _scale(one)}, 0)


def _in_plane(figure: Figure, numbers: Mapping[str, float], one: Control, camera: Camera, name: str) -> bool:
    before, after = solved_at(figure, numbers, 0), _probed(figure, numbers, one)
    way = SCALE * length(point(after.skeleton, name) - point(before.skeleton, name))
    seen = float(np.hypot(*(on_paper(camera, after, name) - on_paper(camera, before, name))))
    return way > 0 and seen >= IN_PLANE * way


def _step(
    figure: Figure,
    held: Mapping[str, float],
    free: list[Control],
    camera: Camera,
    name: str,
    here: Vector,
    off: Vector,
) -> dict[str, float]:
    probes = [on_paper(camera, _probed(figure, held, one), name) for one in free]
    slope = np.column_stack([(probe - here) / PROBE for probe in probes])
    damped = slope.T @ slope + DAMPING**2 * np.eye(len(free))
    move = np.linalg.solve(damped, slope.T @ off) * np.array([_scale(one) for one in free])
    longest = np.where([one.length for one in free], 200 / SCALE, 30.0)
    move = np.clip(move, -longest, longest)
    return {
        one.path: float(np.clip(held.get(one.path, 0.0) + change, one.low, one.high))
        for one, change in zip(free, move, strict=True)
    }
