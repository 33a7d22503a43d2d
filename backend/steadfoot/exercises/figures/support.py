"""What a person stands, kneels, lies or leans on: contacts, the area they span, and surfaces below."""

from collections.abc import Iterable

import numpy as np
from numpy.typing import NDArray

from steadfoot.exercises.figures.body import SIDES
from steadfoot.exercises.figures.parts import SHAPES
from steadfoot.exercises.figures.rotations import Vector
from steadfoot.exercises.figures.skeleton import Skeleton

Array = NDArray[np.float64]
BEARING = 0.012
"""House: spheres of a contact within this of its lowest one bear weight, fractions of stature."""
_SIDED = {
    "foot": ("foot", "toe"),
    "toes": ("toe",),
    "heel": ("foot",),
    "knee": ("shank",),
    "shin": ("shank",),
    "thigh": ("leg", "thigh"),
    "hand": ("hand",),
    "forearm": ("forearm",),
    "elbow": ("forearm",),
    "shoulder": ("sleeve",),
    "arm": ("upper_arm", "forearm"),
}
CONTACTS: dict[str, tuple[str, ...]] = {"pelvis": ("pelvis",), "back": ("thorax",), "head": ("hair", "face")} | {
    f"{name}.{side}": tuple(f"{shape}.{side}" for shape in shapes) for name, shapes in _SIDED.items() for side in SIDES
}
"""Shapes that may bear weight, by the name of the contact."""
_FIRST_ONLY = ("knee", "elbow")
RIM = np.arange(16) * np.pi / 8


def spheres(skeleton: Skeleton, shape: str) -> Array:
    """Answer place and radius of a shape's spheres in the room."""
    told = np.array(SHAPES[shape].spheres)
    bone = SHAPES[shape].bone
    return np.column_stack((skeleton.at[bone] + told[:, :3] @ skeleton.turn[bone].T, told[:, 3]))


def bearing(skeleton: Skeleton, contact: str) -> Array:
    """Answer the spheres of a contact that are lowest."""
    kind = contact.partition(".")[0]
    found = [spheres(skeleton, shape) for shape in CONTACTS[contact]]
    rows = found[0][:1] if kind in _FIRST_ONLY else np.vstack(found)
    bottoms = rows[:, 2] - rows[:, 3]
    return np.asarray(rows[bottoms <= bottoms.min() + BEARING])


def area(skeleton: Skeleton, contacts: Iterable[str]) -> Array:
    """Answer the corners of the area that contacts span, seen from above, in order around it."""
    rows = np.vstack([bearing(skeleton, contact) for contact in contacts])
    rim = np.column_stack((np.cos(RIM), np.sin(RIM)))
    return hull(np.vstack([row[:2] + row[3] * rim for row in rows]))


def hull(spots: Array) -> Array:
    """Answer the convex hull of places on the floor, in order around it (Andrew 1979, monotone chain)."""
    ordered = np.unique(np.round(spots, 9), axis=0)
    return np.array(_chain(ordered) + _chain(ordered[::-1]))


def _chain(ordered: Array) -> list[Vector]:
    kept: list[Vector] = []
    for spot in ordered:
        while len(kept) > 1 and _turn(kept[-2], kept[-1], spot) <= 0:
            kept.pop()
        kept.append(spot)
    return kept[:-1]


def _turn(a: Vector, b: Vector, c: Vector) -> float:
    return float((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]))


def margin(corners: Array, spot: Vector) -> float:
    """Answer how far inside an area a place lies, in fractions of stature; negative is outside."""
    ahead = np.roll(corners, -1, axis=0) - corners
    inward = np.column_stack((-ahead[:, 1], ahead[:, 0])) / np.hypot(*ahead.T)[:, None]
    return float(((spot[:2] - corners) * inward).sum(axis=1).min())
