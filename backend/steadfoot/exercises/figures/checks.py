"""What must hold for every sample of every figure, so that no drawing shows what a body cannot do.

Each check answers findings in plain words with the amount and where; no findings means that it holds.
"""

from collections.abc import Callable, Iterator, Sequence

import numpy as np

from steadfoot.exercises.figures import body, points, support
from steadfoot.exercises.figures.body import mm
from steadfoot.exercises.figures.motion import SAMPLES, Sample
from steadfoot.exercises.figures.parts import SOLID
from steadfoot.exercises.figures.points import point
from steadfoot.exercises.figures.props import extents
from steadfoot.exercises.figures.read import Figure
from steadfoot.exercises.figures.rotations import Vector, length

LENGTH_MM, REACH_MM, SOLVED_MM, SLIDE_MM = 0.01, 1.0, 0.1, 0.1
SUNK_MM = 3.0
SOFT_MM = 60.0
"""House: how far a foot may sink into a pillow."""
STEP_MM = 70.0
"""House: farthest that a point may move in a fiftieth of the way."""
SLACK_DEG = 1.0
AT_KEY = 1e-6
"""A sample this near in time is the key's."""
RANGES: dict[str, tuple[float, float]] = {
    "hip flexion": (-25, 130),
    "hip abduction": (-35, 60),
    "knee": (0, 145),
    "ankle": (-85, 42),
    "elbow": (0, 150),
}
"""House, degrees: what joints allow in training under load; ankles point fully when kneeling on the instep."""
BONES = {
    "thigh": ("hip", "knee", body.THIGH),
    "shank": ("knee", "ankle", body.SHANK),
    "upper arm": ("shoulder", "elbow", body.UPPER_ARM),
    "forearm": ("elbow", "wrist", body.FOREARM),
}
Check = Callable[[Figure, Sequence[Sample]], Iterator[str]]


def _when(sample: Sample) -> str:
    return f"at t {sample.time:.2f}"


def lengths(_figure: Figure, samples: Sequence[Sample]) -> Iterator[str]:
    """Segments keep their published lengths."""
    for sample in samples:
        for name, (start, end, told) in BONES.items():
            for side in body.SIDES:
                way = point(sample.skeleton, f"{end}.{side}") - point(sample.skeleton, f"{start}.{side}")
                off = mm(length(way) - told)
                if abs(off) > LENGTH_MM:
                    yield f"bone stretched: {name}.{side} is {off:+.2f} mm off its length {_when(sample)}"


def reached(_figure: Figure, samples: Sequence[Sample]) -> Iterator[str]:
    """Hands and feet reach where the pose says."""
    for sample in samples:
        for limb, missed in sample.skeleton.missed.items():
            if mm(missed) > REACH_MM:
                yield f"out of reach: {limb} misses its place by {mm(missed):.0f} mm {_when(sample)}"


def solved(_figure: Figure, samples: Sequence[Sample]) -> Iterator[str]:
    """The solver met every condition."""
    for sample in samples:
        if mm(sample.solved.residual) > SOLVED_MM:
            yield f"not solved: a condition is off by {mm(sample.solved.residual):.1f} mm {_when(sample)}"


def planted(figure: Figure, samples: Sequence[Sample]) -> Iterator[str]:
    """What bears weight all the time does not slide."""
    for contact in figure.movement.contacts:
        where = _still_point(contact)
        if where is None:
            continue
        start = point(samples[0].skeleton, where)
        for sample in samples[1:]:
            slid = mm(length(point(sample.skeleton, where) - start))
            if slid > SLIDE_MM:
                yield f"slides: contact {contact} is {slid:.1f} mm from where it began {_when(sample)}"
                break


def _still_point(contact: str) -> str | None:
    kind, _, side = contact.partition(".")
    named = {"foot": "ball", "toes": "ball", "hand": "wrist", "knee": "knee", "elbow": "elbow", "forearm": "elbow"}
    return f"{named[kind]}.{side}" if kind in named else None


def sunk(figure: Figure, samples: Sequence[Sample]) -> Iterator[str]:
    """Nothing sinks into the floor, a box, a seat or a wall."""
    solids = [
        (name, low, high, SOFT_MM if prop.kind == "pillow" else SUNK_MM)
        for name, prop in figure.movement.props.items()
        if prop.kind in ("box", "chair", "table", "wall", "pillow")
        for low, high in extents(prop)
    ]
    worst: dict[tuple[str, str], tuple[float, Sample]] = {}
    for sample in samples:
        for shape in SOLID:
            rows = support.spheres(sample.skeleton, shape)
            _note(worst, ("floor", shape), mm(float((rows[:, 3] - rows[:, 2]).max())), sample, SUNK_MM)
            for name, low, high, allowed in solids:
                _note(worst, (name, shape), mm(_depth(rows, np.array(low), np.array(high))), sample, allowed)
    for (name, shape), (depth, sample) in worst.items():
        yield f"sinks in: {shape} is {depth:.0f} mm inside {name} {_when(sample)}"


def _note(worst: dict, key: tuple[str, str], depth: float, sample: Sample, allowed: float) -> None:  # type: ignore[type-arg]
    if depth > allowed and depth > worst.get(key, (0.0, sample))[0]:
        worst[key] = (depth, sample)


def _depth(rows: Vector, low: Vector, high: Vector) -> float:
    """Answer how deep spheres are inside a block, by the shortest way out."""
    nearest = np.clip(rows[:, :3], low, high)
    outside = np.sqrt(((rows[:, :3] - nearest) ** 2).sum(axis=1))
    way_out = np.minimum(rows[:, :3] - low, high - rows[:, :3]).min(axis=1)
    return float((rows[:, 3] - np.where(way_out >= 0, -way_out, outside)).max())


def ranges(_figure: Figure, samples: Sequence[Sample]) -> Iterator[str]:
    """Joints stay within what joints allow."""
    for sample in samples:
        for joint, angle in points.joint_angles(sample.skeleton).items():
            least, most = RANGES[joint.partition(".")[0]]
            if not least - SLACK_DEG <= angle <= most + SLACK_DEG:
                yield f"joint range: {joint} is {angle:.0f} degrees, beyond {least:g} to {most:g}, {_when(sample)}"


def balanced(figure: Figure, samples: Sequence[Sample]) -> Iterator[str]:
    """The center of mass, loads included, is over what bears weight."""
    keys = {key.t for key in figure.movement.keys.values()}
    for sample in samples:
        held = figure.movement.balance == "always" or min(abs(sample.time - t) for t in keys) < AT_KEY
        if figure.movement.balance == "moving" or not held:
            continue
        centre = points.centre_of_mass(sample.skeleton, figure.task.loads)
        inside = mm(support.margin(support.area(sample.skeleton, figure.movement.contacts), centre))
        if inside < 0:
            yield f"falls over: the center of mass is {-inside:.0f} mm outside the contacts {_when(sample)}"


def smooth(_figure: Figure, samples: Sequence[Sample]) -> Iterator[str]:
    """No point jumps."""
    watched = [name for name in points.POINTS if name.startswith(("knee", "wrist", "elbow", "toe", "head"))]
    for name in watched:
        places = np.array([point(sample.skeleton, name) for sample in samples])
        spans = np.diff([sample.time for sample in samples]) * (SAMPLES - 1)
        steps = mm(1) * np.sqrt((np.diff(places, axis=0) ** 2).sum(axis=1)) / spans
        if len(steps) and steps.max() > STEP_MM:
            yield f"jumps: {name} moves {steps.max():.0f} mm {_when(samples[int(steps.argmax())])}; give it more time"


CHECKS: tuple[Check, ...] = (lengths, reached, solved, planted, sunk, ranges, balanced, smooth)


def findings(figure: Figure, samples: Sequence[Sample]) -> list[str]:
    """Answer all that is wrong with a figure, worst kinds first; the same fault is told once."""
    return [told for check in CHECKS for told in _once(check(figure, samples))]


def _once(found: Iterator[str]) -> list[str]:
    """Keep the first of each fault: they differ only in amount and time."""
    kept: dict[str, str] = {}
    for told in found:
        kept.setdefault(" ".join(told.split()[:4]), told)
    return list(kept.values())
