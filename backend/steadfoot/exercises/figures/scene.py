"""One view of one figure, moved and framed: what still drawing, animation and strip start from."""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property

import numpy as np

from steadfoot.exercises.figures import outline, style
from steadfoot.exercises.figures.camera import CAMERAS, SCALE, Camera, circles
from steadfoot.exercises.figures.items import Item, gather
from steadfoot.exercises.figures.layers import GROUPS, order
from steadfoot.exercises.figures.links import Link, links
from steadfoot.exercises.figures.motion import Sample, move
from steadfoot.exercises.figures.points import point
from steadfoot.exercises.figures.read import Figure
from steadfoot.exercises.figures.skeleton import Skeleton

CLOSE = 70
"""House: rim around the points of a close view, in drawing units."""
CLOSE_LINE = 2.6
"""House: width of the ink line in a close view, in drawing units."""
MARGIN = 22
"""House: empty rim around a picture, in drawing units."""
Frame = tuple[int, int, int, int]
"""Left, top, width and height in drawing units."""


@dataclass(frozen=True)
class Scene:
    """A figure seen from one side."""

    figure: Figure
    view: str
    samples: Sequence[Sample]

    @cached_property
    def camera(self) -> Camera:
        """The camera of this view."""
        return CAMERAS[self.view]

    @cached_property
    def poster(self) -> int:
        """The sample that is shown when nothing moves."""
        wanted = self.figure.time_of(self.figure.movement.poster)
        return min(range(len(self.samples)), key=lambda i: abs(self.samples[i].time - wanted))

    @cached_property
    def items(self) -> list[Item]:
        """Every outline, from back to front."""
        found = gather(self.figure, self.view, self.samples[self.poster].skeleton)
        return [item for item in found if not self.close or self._shows(item)]

    @property
    def close(self) -> list[str]:
        """The named points that the picture closes in on; none when it shows the whole person."""
        return next((names for view, names in self.figure.movement.frame.items() if view == self.view), [])

    @property
    def line_css(self) -> str:
        """A thinner line for a close view, which pages and paper show larger."""
        return f"svg{{stroke-width:{CLOSE_LINE}}}" if self.close else ""

    @cached_property
    def links(self) -> list[Link]:
        """Every band and towel."""
        return links(self.figure)

    @cached_property
    def before_links(self) -> int:
        """How many outlines are drawn before the bands."""
        groups = order(self.view, self.figure.movement.lift, self.figure.movement.sink)
        later = set(groups[groups.index(GROUPS["band"][0]) :])
        return sum(item.shape.name not in later and item.shape.fill not in ("muscle", "mark") for item in self.items)

    @cached_property
    def frame(self) -> Frame:
        """The picture's edges, wide enough for every sample."""
        edges = [(self._ends if self.close else self._edges)(sample.skeleton) for sample in self.samples]
        rim = CLOSE if self.close else MARGIN
        low = np.min([edge[0] for edge in edges], axis=0) - rim
        high = np.max([edge[1] for edge in edges], axis=0) + rim
        left, top = map(int, np.floor(low))
        return left, top, int(np.ceil(high[0])) - left, int(np.ceil(high[1])) - top

    def _ends(self, skeleton: Skeleton) -> tuple[list[float], list[float]]:
        found = np.array([self.camera.paper @ point(skeleton, name) for name in self.close])
        return list(found.min(axis=0)), list(found.max(axis=0))

    def _shows(self, item: Item) -> bool:
        """Answer whether any of an outline is inside a close picture at any time."""
        left, top, width, height = self.frame
        rows = np.vstack([circles(self.camera, s.skeleton, item.shape.bone, item.shape.spheres) for s in self.samples])
        low, high = (rows[:, :2] - rows[:, 2:]).min(axis=0), (rows[:, :2] + rows[:, 2:]).max(axis=0)
        return bool(low[0] < left + width and high[0] > left and low[1] < top + height and high[1] > top)

    def _edges(self, skeleton: Skeleton) -> tuple[list[float], list[float]]:
        found = np.vstack([circles(self.camera, skeleton, item.shape.bone, item.shape.spheres) for item in self.items])
        low, high = found[:, :2] - found[:, 2:], found[:, :2] + found[:, 2:]
        ends = [spot for link in self.links for spot in link.on_paper(self.camera, skeleton)]
        spread = np.vstack([low, high, *ends]) if ends else np.vstack([low, high])
        return list(spread.min(axis=0)), list(spread.max(axis=0))

    @cached_property
    def ground(self) -> int | None:
        """Height of the ground line on paper; none when the floor is seen from above."""
        if self.camera.elevation > 0:
            return None
        mats = [prop for prop in self.figure.movement.props.values() if prop.kind == "mat"]
        return round(SCALE * 0.007) if mats else 0


def scene(figure: Figure, view: str | None = None, samples: Sequence[Sample] | None = None) -> Scene:
    """Move a figure and answer one view of it; the first view of the pose file unless told."""
    return Scene(figure, view or figure.movement.views[0], samples or move(figure.task))


def svg(frame: Frame, body: str, used: set[str], more_css: str = "") -> str:
    """Answer a complete SVG document."""
    box = " ".join(map(str, frame))
    sheet = style.css(used) + more_css
    return f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="{box}"><style>{sheet}</style>{body}</svg>'


def outline_of(item: Item, camera: Camera, skeleton: Skeleton) -> str:
    """Answer the path of an outline in drawing units."""
    return outline.path(circles(camera, skeleton, item.shape.bone, item.shape.spheres))


def ground_line(scene: Scene) -> str:
    """Answer the ground line, or nothing."""
    left, _, width, _ = scene.frame
    return "" if scene.ground is None else f'<path d="M{outline.joined([left, scene.ground])}h{width}"/>'


def element(css: str, data: str) -> str:
    """Answer one path."""
    return f'<path class="{css}" d="{data}"/>'


def classes(item: Item) -> str:
    """Answer the classes of an outline; the bare ones have no ink line."""
    return f"{item.css} n" if item.shape.bare else item.css
