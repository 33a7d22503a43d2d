"""Orthographic cameras: from where the figure is looked at, and how the room falls on paper."""

from dataclasses import dataclass
from functools import cached_property

import numpy as np
from numpy.typing import NDArray

from steadfoot.exercises.figures.parts import Sphere
from steadfoot.exercises.figures.rotations import Matrix, Vector, Z, cross, unit
from steadfoot.exercises.figures.skeleton import Skeleton

SCALE = 1000.0
"""Drawing units a stature, so that whole numbers are exact to 2 mm."""


@dataclass(frozen=True)
class Camera:
    """Direction of the viewer: azimuth from x toward y, and elevation, both in degrees."""

    azimuth: float
    elevation: float

    @cached_property
    def viewer(self) -> Vector:
        """Unit vector toward the viewer."""
        a, e = np.radians((self.azimuth, self.elevation))
        return np.array((np.cos(a) * np.cos(e), np.sin(a) * np.cos(e), np.sin(e)))

    @cached_property
    def paper(self) -> Matrix:
        """The two rows that take a place in the room to drawing units, y down."""
        right = unit(cross(Z, self.viewer))
        return SCALE * np.vstack((right, -cross(self.viewer, right)))


CAMERAS = {
    "side": Camera(-90, 0),
    "left": Camera(90, 0),
    "front": Camera(0, 0),
    "back": Camera(180, 0),
    "quarter": Camera(-45, 25),
    "quarter-left": Camera(45, 25),
}


def circles(camera: Camera, skeleton: Skeleton, bone: str, spheres: tuple[Sphere, ...]) -> NDArray[np.float64]:
    """Answer x, y and radius on paper of spheres fixed to a bone, or to the room for the bone "world"."""
    told = np.array(spheres)
    places = told[:, :3] if bone == "world" else skeleton.at[bone] + told[:, :3] @ skeleton.turn[bone].T
    return np.column_stack((places @ camera.paper.T, told[:, 3] * SCALE))
