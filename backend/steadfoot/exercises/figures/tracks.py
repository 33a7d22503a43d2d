"""How each bone moves on paper, and which bones can share one motion."""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from steadfoot.exercises.figures.body import STATURE_MM
from steadfoot.exercises.figures.camera import SCALE, Camera, circles
from steadfoot.exercises.figures.motion import Sample
from steadfoot.exercises.figures.parts import Sphere

Array = NDArray[np.float64]
TOLERANCE_MM = 6.0
"""House: how far a point of a bone may be drawn from where it is, on a person of 1.75 m."""
TOLERANCE = TOLERANCE_MM / STATURE_MM * SCALE
SHARED = 0.4 * TOLERANCE
THINNEST = 0.5
"""House: a part never looks thinner than half of what it is, since its spheres are round."""
RIM = np.arange(8) * np.pi / 4
CENTRE_WEIGHT = 2.5
ROOM = "world"


@dataclass(slots=True)
class Track:
    """One motion on paper: for each sample a 2 x 3 matrix from the bone's drawing to the paper.

    ``rigid`` holds angle in radians, x and y for each sample when turning and moving is enough.
    """

    bone: str
    template: int
    matrices: Array
    rigid: Array | None

    @property
    def still(self) -> bool:
        """True for the room, which does not move."""
        return self.bone == ROOM

    def local(self, spots: Array) -> Array:
        """Answer places of the template sample in the drawing of this track."""
        matrix = self.matrices[self.template]
        return np.asarray((spots - matrix[:, 2]) @ np.linalg.inv(matrix[:, :2]).T)


def room(count: int, poster: int) -> Track:
    """Answer the track of what does not move."""
    return Track(ROOM, poster, np.tile(np.eye(2, 3), (count, 1, 1)), np.zeros((count, 3)))


def spots_of(camera: Camera, samples: Sequence[Sample], bone: str, spheres: tuple[Sphere, ...]) -> Array:
    """Answer x, y and radius of spheres for every sample."""
    return np.array([circles(camera, sample.skeleton, bone, spheres) for sample in samples])


def rides(track: Track, spots: Array) -> bool:
    """Answer whether spheres keep their place in a track's drawing through the whole movement."""
    local = track.local(spots[track.template][:, :2])
    shown = np.einsum("kij,nj->kni", track.matrices[:, :, :2], local) + track.matrices[:, None, :, 2]
    return bool(np.abs(shown - spots[:, :, :2]).max() <= SHARED)


def follow(bone: str, joints: Array, spots: Array) -> Track:
    """Answer the track of a bone from its joint and its spheres on paper, sample by sample."""
    around = spots[:, :, :2] - joints[:, None]
    template = int(np.sqrt((around**2).sum(axis=2)).sum(axis=1).argmax())
    base = around[template]
    turns = np.array([_turn(base, seen) for seen in around])
    rotations = np.array([[[np.cos(a), -np.sin(a)], [np.sin(a), np.cos(a)]] for a in turns])
    shown = np.einsum("kij,nj->kni", rotations, base)
    if np.abs(shown - around).max() <= TOLERANCE:
        linear, rigid = rotations, np.column_stack((np.unwrap(turns), joints))
    else:
        linear, rigid = (
            np.array([_affine(base, seen, a, spots[0, :, 2]) for seen, a in zip(around, turns, strict=True)]),
            None,
        )
    return Track(bone, template, np.concatenate((linear, joints[:, :, None]), axis=2), rigid)


def _turn(base: Array, seen: Array) -> float:
    return float(np.arctan2((base[:, 0] * seen[:, 1] - base[:, 1] * seen[:, 0]).sum(), (base * seen).sum()))


def _affine(base: Array, seen: Array, turn: float, radii: Array) -> Array:
    """Answer the 2 x 2 matrix that takes centres to centres and, less strictly, rims to rims."""
    rim = np.column_stack((np.cos(RIM), np.sin(RIM)))
    turned = np.column_stack((np.cos(RIM + turn), np.sin(RIM + turn)))
    start = [CENTRE_WEIGHT * base, *(spot + radius * rim for spot, radius in zip(base, radii, strict=True))]
    end = [CENTRE_WEIGHT * seen, *(spot + radius * turned for spot, radius in zip(seen, radii, strict=True))]
    return _kept_thick(np.asarray(np.linalg.lstsq(np.vstack(start), np.vstack(end), rcond=None)[0].T))


def _kept_thick(matrix: Array) -> Array:
    """Answer the nearest matrix that neither turns a drawing over nor squeezes it thinner than a limb can look."""
    left, sizes, right = np.linalg.svd(matrix)
    if np.linalg.det(left @ right) < 0:
        left, sizes = left * (1, -1), sizes * (1, -1)
    return np.asarray(left * np.maximum(sizes, THINNEST) @ right)


def keep(values: Array, error: Array | float, tolerance: float) -> list[int]:
    """Answer which samples to keep so that straight lines between them stay within a tolerance.

    Args:
        values: One row of numbers a sample.
        error: What a unit of each number moves on paper.
        tolerance: In drawing units.
    """
    kept, count = [0, len(values) - 1], len(values)
    while len(kept) < count:
        shown = np.column_stack([np.interp(range(count), kept, column[kept]) for column in values.T])
        off = (np.abs(shown - values) * error).sum(axis=1)
        if off.max() <= tolerance:
            break
        kept = sorted({*kept, int(off.argmax())})
    return kept
