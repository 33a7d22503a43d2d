"""From key poses to a movement: smooth numbers between the keys, and every sample solved.

The curve between keys is the monotone cubic of Fritsch and Carlson 1980 (SIAM J Numer Anal 17:238-246): flat at turning
points, no overshoot, so a planted foot, whose numbers do not change, cannot slide.
"""

from collections.abc import Sequence
from dataclasses import dataclass, field

import numpy as np

from steadfoot.exercises.figures.points import Load
from steadfoot.exercises.figures.rotations import Vector
from steadfoot.exercises.figures.skeleton import Skeleton, Switches
from steadfoot.exercises.figures.solve import Solved, paths_of, solve

SAMPLES = 51
"""Samples of a movement: every second percent, so that key times are whole percents."""


@dataclass(frozen=True, slots=True)
class Keys:
    """Times of the key poses and the numbers at each; a number that a key leaves out is the key's before it."""

    times: tuple[float, ...]
    numbers: tuple[dict[str, float], ...]
    cycle: bool = False
    """True when the movement starts over at its end; else it runs to and fro."""


@dataclass(frozen=True, slots=True)
class Task:
    """All that is needed to move one variant: keys, switches, what to solve, what is carried."""

    keys: Keys
    switches: Switches
    unknowns: dict[str, str] = field(default_factory=dict)
    loads: tuple[Load, ...] = ()


@dataclass(frozen=True, slots=True)
class Sample:
    """One instant of a movement."""

    time: float
    solved: Solved

    @property
    def skeleton(self) -> Skeleton:
        """The bones at this instant."""
        return self.solved.skeleton


def slopes(times: Vector, values: Vector) -> Vector:
    """Answer the slope of the monotone cubic at each inner time; times and values one longer on both ends."""
    width = np.diff(times)
    rise = np.diff(values) / width
    before, after = rise[:-1], rise[1:]
    weight_1, weight_2 = 2 * width[1:] + width[:-1], width[1:] + 2 * width[:-1]
    turns = before * after <= 0
    safe_before, safe_after = np.where(turns, 1.0, before), np.where(turns, 1.0, after)
    mean = (weight_1 + weight_2) / (weight_1 / safe_before + weight_2 / safe_after)
    return np.where(turns, 0.0, mean)


def curve(keys: Keys, values: Sequence[float], at: Vector) -> Vector:
    """Answer a number at some times: cubic between keys; the ends turn around, or join when the movement is a cycle."""
    times, known = np.array(keys.times), np.array(values)
    if len(times) == 1:
        return np.full(len(at), known[0])
    first, last = (known[-2], known[1]) if keys.cycle else (known[1], known[-2])
    early = times[0] - ((times[-1] - times[-2]) if keys.cycle else (times[1] - times[0]))
    late = times[-1] + ((times[1] - times[0]) if keys.cycle else (times[-1] - times[-2]))
    slope = slopes(np.array([early, *times, late]), np.array([first, *known, last]))
    place = np.clip(np.searchsorted(times, at, side="right") - 1, 0, len(times) - 2)
    width = times[place + 1] - times[place]
    s = (at - times[place]) / width
    start, end = known[place], known[place + 1]
    blend = start + (end - start) * s * s * (3 - 2 * s)
    return np.asarray(blend + width * s * (1 - s) * (slope[place] * (1 - s) - slope[place + 1] * s))


def numbers_at(keys: Keys, at: Sequence[float]) -> list[dict[str, float]]:
    """Answer all numbers of a movement at some times."""
    times = np.array(at, dtype=float)
    curves = {path: curve(keys, [key[path] for key in keys.numbers], times) for path in keys.numbers[0]}
    return [{path: float(values[i]) for path, values in curves.items()} for i in range(len(times))]


def move(task: Task, count: int = SAMPLES) -> list[Sample]:
    """Solve a movement at evenly spaced times; one sample when there is one key only."""
    count = 1 if len(task.keys.times) == 1 else count
    return moments(task, [i / max(count - 1, 1) for i in range(count)])


def moments(task: Task, at: Sequence[float]) -> list[Sample]:
    """Solve a movement at given times, in order and close together: each starts from the one before."""
    samples: list[Sample] = []
    for time, numbers in zip(at, numbers_at(task.keys, at), strict=True):
        found = samples[-1].solved.numbers if samples else {}
        guess = numbers | {path: found[path] for unknown in task.unknowns for path in paths_of(unknown) if samples}
        aims = {name.removeprefix("aim."): value for name, value in guess.items() if name.startswith("aim.")}
        samples.append(Sample(time, solve(guess, task.switches, task.unknowns, aims, task.loads)))
    return samples
