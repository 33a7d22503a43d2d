"""The strip for paper: two to four poses side by side on one ground line, with arrows for what moved."""

from dataclasses import dataclass
from itertools import pairwise

import numpy as np

from steadfoot.exercises.figures import points
from steadfoot.exercises.figures.camera import circles
from steadfoot.exercises.figures.draw import figure_at, used_classes
from steadfoot.exercises.figures.motion import Sample
from steadfoot.exercises.figures.rotations import Vector
from steadfoot.exercises.figures.scene import MARGIN, Scene, svg

GAP = 46
"""House: between two poses, in drawing units."""
LEAST_TRAIL = 100.0
"""House: a hand or foot that moves less than this gets no arrow, in drawing units."""
LEAST_LIFT = 45.0
"""House: a pelvis that rises or sinks less than this gets none."""
TRAIL_STEPS = 7
HEAD = 24.0
RUBS, TOES_UP = 0.022, 0.02
"""House: a heel that stays below the one and ends with toes above the other slides, in fractions of stature."""
Edges = tuple[float, float, float, float]
"""Left, right, top and bottom in drawing units."""
ENDS = ("toe.L", "toe.R", "fingertip.L", "fingertip.R")


@dataclass(frozen=True, slots=True)
class Trail:
    """The way of a point on paper, and whether it is dashed."""

    spots: Vector
    dashed: bool


def strip(scene: Scene) -> str:
    """Draw the key poses that the pose file names, from left to right."""
    times = [scene.figure.time_of(key) for key in scene.figure.movement.strip]
    samples = [_sample(scene, time) for time in times]
    trails = [[], *(_trails(scene, before, after) for before, after in pairwise(samples))]
    edges = [_wide(_edges(scene, sample), lines) for sample, lines in zip(samples, trails, strict=True)]
    shifts, width = _places(edges)
    drawn = zip(samples, trails, shifts, strict=True)
    poses = [_pose(scene, sample, lines, shift) for sample, lines, shift in drawn]
    top = min(round(edge[2]) for edge in edges) - MARGIN
    bottom = max(round(edge[3]) for edge in edges) + MARGIN
    ground = "" if scene.ground is None else f'<path d="M0 {scene.ground}h{width}"/>'
    return svg((0, top, width, bottom - top), ground + "".join(poses), used_classes(scene) | {"k", "a"}, scene.line_css)


def _sample(scene: Scene, time: float) -> Sample:
    """Answer the sample at a key's time: solved on the way, so that it is the pose of the moving figure."""
    return min(scene.samples, key=lambda sample: abs(sample.time - time))


def _edges(scene: Scene, sample: Sample) -> Edges:
    if scene.close:
        left, top, width, height = scene.frame
        return left, left + width, top, top + height
    seen = [circles(scene.camera, sample.skeleton, item.shape.bone, item.shape.spheres) for item in scene.items]
    rows = np.vstack(seen)
    low, high = (rows[:, :2] - rows[:, 2:]).min(axis=0), (rows[:, :2] + rows[:, 2:]).max(axis=0)
    return float(low[0]), float(high[0]), float(low[1]), float(high[1])


def _wide(edges: Edges, trails: list[Trail]) -> Edges:
    """Answer edges that hold the arrows too."""
    low, high, top, bottom = edges
    for trail in trails:
        (left, upper), (right, lower) = trail.spots.min(axis=0), trail.spots.max(axis=0)
        low, high = min(low, float(left) - HEAD / 2), max(high, float(right) + HEAD / 2)
        top, bottom = min(top, float(upper)), max(bottom, float(lower))
    return low, high, top, bottom


def _places(edges: list[Edges]) -> tuple[list[int], int]:
    shifts, right = [], float(MARGIN)
    for low, high, _, _ in edges:
        shifts.append(round(right - low))
        right += high - low + GAP
    return shifts, round(right - GAP + MARGIN)


def _pose(scene: Scene, sample: Sample, trails: list[Trail], shift: int) -> str:
    arrows = "".join(_arrow(trail) for trail in trails)
    drawn = figure_at(scene, sample.skeleton) + arrows
    if not scene.close:
        return f'<g transform="translate({shift})">{drawn}</g>'
    left, top, width, height = scene.frame
    box = f'viewBox="{left} {top} {width} {height}"'
    return f'<svg x="{left + shift}" y="{top}" width="{width}" height="{height}" {box}>{drawn}</svg>'


def _trails(scene: Scene, before: Sample, after: Sample) -> list[Trail]:
    """Answer the ways of hands and feet that moved far; the way of the pelvis, up or down, when none did."""
    between = [_sample(scene, float(time)) for time in np.linspace(before.time, after.time, TRAIL_STEPS)]
    ends = ENDS if scene.close else [_end(between, name) for name in ENDS]
    moved = [Trail(_trail(scene, between, name), dashed=True) for name in ends if _moves(scene, between, name)]
    pelvis = _trail(scene, between, "pelvis")
    if moved or abs(float(pelvis[-1][1] - pelvis[0][1])) < LEAST_LIFT:
        return moved
    return [Trail(_beside(scene, after, pelvis), dashed=False)]


def _end(samples: list[Sample], name: str) -> str:
    """Answer the heel instead of the toes where a foot slides on its heel: what rubs goes along the floor."""
    heel = name.replace("toe", "heel")
    heights = [(points.point(sample.skeleton, heel)[2], points.point(sample.skeleton, name)[2]) for sample in samples]
    slides = max(back for back, _ in heights) < RUBS and heights[-1][1] > TOES_UP
    return heel if slides else name


def _trail(scene: Scene, samples: list[Sample], name: str) -> Vector:
    return np.array([scene.camera.paper @ points.point(sample.skeleton, name) for sample in samples])


def _moves(scene: Scene, samples: list[Sample], name: str) -> bool:
    """Answer whether a foot or hand moves far on paper; a hand that only goes along with the trunk does not."""
    trail = _trail(scene, samples, name)
    carried = _trail(scene, samples, "chest") if name.startswith("fingertip") else np.zeros_like(trail)
    return min(_reach(trail), _reach(trail - carried)) >= _least_trail(scene)


def _least_trail(scene: Scene) -> float:
    """Answer how far is far on paper: in a close view a part of its height."""
    return scene.frame[3] / 16 if scene.close else LEAST_TRAIL


def _reach(trail: Vector) -> float:
    return float(np.sqrt(((trail - trail[0]) ** 2).sum(axis=1)).max())


def _beside(scene: Scene, after: Sample, trail: Vector) -> Vector:
    left = _edges(scene, after)[0]
    x = left - 14.0
    return np.array(((x, trail[0][1]), (x, trail[-1][1])))


def _arrow(way_of: Trail) -> str:
    trail = way_of.spots
    tip = trail[-1]
    back = next((spot for spot in trail[::-1] if np.hypot(*(tip - spot)) >= HEAD), trail[0])
    way = (tip - back) / max(float(np.hypot(*(tip - back))), 1.0)
    neck = tip - HEAD * way
    kept = [spot for spot in trail if float((spot - neck) @ way) < 0 or np.hypot(*(spot - tip)) > HEAD]
    across = 0.45 * HEAD * np.array((-way[1], way[0]))
    line = "L".join(f"{x:.0f} {y:.0f}" for x, y in [*kept, neck])
    head = "L".join(f"{x:.0f} {y:.0f}" for x, y in (tip, neck + across, neck - across))
    dash = ' stroke-dasharray="14 12"' if way_of.dashed else ""
    return f'<path class="k" d="M{line}"{dash}/><path class="a" d="M{head}z"/>'
