"""Bands and towels: a line between two named points, or from a point to a fixed place."""

from dataclasses import dataclass

import numpy as np

from steadfoot.exercises.figures import points
from steadfoot.exercises.figures.camera import Camera
from steadfoot.exercises.figures.read import Figure
from steadfoot.exercises.figures.rotations import Vector
from steadfoot.exercises.figures.skeleton import Skeleton

LENGTH = 100
"""Drawing units of a link before it is stretched."""
HALF_WIDTH = {"g": 6, "v": 10}
"""House: half the width of a band and of a towel, in drawing units."""


@dataclass(frozen=True, slots=True)
class Link:
    """One line: where it starts, where it ends (a point or a fixed place), and its class."""

    start: str
    end: str | None
    anchor: tuple[float, float, float] | None
    css: str

    def on_paper(self, camera: Camera, skeleton: Skeleton) -> Vector:
        """Answer both ends on paper, as two rows."""
        start = points.point(skeleton, self.start)
        end = np.array(self.anchor) if self.end is None else points.point(skeleton, self.end)
        return np.vstack((start, end)) @ camera.paper.T

    @property
    def path(self) -> str:
        """The link at rest."""
        half = HALF_WIDTH[self.css]
        return f"M0-{half}h{LENGTH}v{2 * half}H0z"

    def matrix(self, camera: Camera, skeleton: Skeleton) -> list[float]:
        """Answer the six numbers that take the line at rest to its place."""
        (x, y), (far_x, far_y) = self.on_paper(camera, skeleton)
        dx, dy = far_x - x, far_y - y
        span = max(float(np.hypot(dx, dy)), 1.0)
        return [dx / LENGTH, dy / LENGTH, -dy / span, dx / span, x, y]


def links(figure: Figure) -> list[Link]:
    """Answer every band and towel of a figure."""
    found = []
    for prop in figure.movement.props.values():
        if prop.kind in ("band", "towel") and prop.ends:
            css = "g" if prop.kind == "band" else "v"
            start, end = prop.ends
            fixed = prop.anchor is not None
            found.append(Link(start, None if fixed else end, prop.anchor, css))
    return found
