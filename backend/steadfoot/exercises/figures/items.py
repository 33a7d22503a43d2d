"""Gathers what is in a picture, from back to front."""

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import chain

import numpy as np

from steadfoot.exercises.figures import layers, muscles, props
from steadfoot.exercises.figures.camera import CAMERAS
from steadfoot.exercises.figures.parts import BAREFOOT, SHAPES, Shape
from steadfoot.exercises.figures.points import POINTS
from steadfoot.exercises.figures.read import Figure
from steadfoot.exercises.figures.rotations import rz, unit
from steadfoot.exercises.figures.schema import Prop
from steadfoot.exercises.figures.skeleton import Skeleton

MARK = 0.030
"""House: radius of the ring on the joint that the first cue is about, fractions of stature."""
FLAT = 0.7
AVERTED = -0.15
"""House: what looks away from the viewer by more than this cosine: a muscle is left out, a face is under the hair."""
_ON_TRUNK = ("abdomen", "thorax", "seam")
_PLACE = {"mat": "ground", "star": "ground", "wall": "behind", "rail": "behind"}


@dataclass(frozen=True, slots=True)
class Item:
    """One outline of the picture, and whether it is on the far side of the body."""

    shape: Shape
    far: bool = False

    @property
    def css(self) -> str:
        """Fill class: one letter, after an f on the far side."""
        letter = FILLS[self.shape.fill]
        return f"f{letter}" if self.far else letter


FILLS = {
    "skin": "s",
    "shirt": "t",
    "shorts": "p",
    "shoe": "e",
    "hair": "h",
    "muscle": "m",
    "wood": "w",
    "mat": "u",
    "pillow": "l",
    "towel": "v",
    "star": "r",
    "pack": "b",
    "pocket": "q",
    "strap": "y",
    "iron": "i",
    "mark": "k",
}


def gather(figure: Figure, view: str, skeleton: Skeleton) -> list[Item]:
    """Answer every outline of a view, from back to front; which muscles show is decided by the given pose."""
    slots: dict[str, list[Shape]] = {}
    for slot, shape in chain(_worn(figure), _standing(figure, view)):
        slots.setdefault(slot, []).append(shape)
    for name in figure.movement.working:
        region = muscles.REGIONS[name]
        if _faces(region, view, skeleton):
            slots.setdefault(_slot(region), []).append(region.shape)
    wanted = layers.order(view, figure.movement.lift, figure.movement.sink, _averted(skeleton, view))
    drawn = [(slot, shape) for slot in wanted for shape in _body(slot, figure, view) + slots.get(slot, [])]
    return [Item(shape, _far(slot, view)) for slot, shape in drawn] + _mark(figure)


def _averted(skeleton: Skeleton, view: str) -> bool:
    return float(skeleton.turn["head"][:, 0] @ CAMERAS[view].viewer) < AVERTED


def _mark(figure: Figure) -> list[Item]:
    if figure.movement.mark is None:
        return []
    bone, (x, y, z) = POINTS[figure.movement.mark]
    return [Item(Shape("mark", bone, "mark", ((float(x), float(y), float(z), MARK),)))]


def _body(slot: str, figure: Figure, view: str) -> list[Shape]:
    if slot not in SHAPES or (slot == "nose" and view not in ("side", "left")):
        return []
    if figure.movement.barefoot and slot in BAREFOOT:
        return list(BAREFOOT[slot])
    name, _, side = slot.partition(".")
    hidden = ("hand", "thumb") if side in figure.task.switches.grips else ("fist",)
    return [] if name in hidden else [SHAPES[slot]]


def _far(slot: str, view: str) -> bool:
    return slot.endswith(f".{layers.FAR.get(view, '-')}")


def _slot(region: muscles.Region) -> str:
    if region.on == "pelvis":
        return "seat.muscles"
    return "trunk.muscles" if region.on in _ON_TRUNK else region.on


def _faces(region: muscles.Region, view: str, skeleton: Skeleton) -> bool:
    looks = skeleton.turn[region.shape.bone] @ unit(np.array(region.facing, dtype=float))
    return float(looks @ CAMERAS[view].viewer) > AVERTED


def _seen_flat(faces: float, view: str) -> bool:
    """Answer whether a wall would fill the picture as a plain ground: then it is left out."""
    return abs(float(rz(faces)[:, 0] @ CAMERAS[view].viewer)) > FLAT


def _worn(figure: Figure) -> Iterator[tuple[str, Shape]]:
    for name, prop in figure.movement.props.items():
        for shape in props.worn(name, prop):
            yield _worn_slot(shape, prop), shape


def _worn_slot(shape: Shape, prop: Prop) -> str:
    if prop.kind == "pack":
        return "strap" if shape.fill == "strap" else "pack"
    return "beside" if prop.under else f"held{shape.bone[-2:]}"


def _standing(figure: Figure, view: str) -> Iterator[tuple[str, Shape]]:
    for name, prop in figure.movement.props.items():
        if prop.kind == "wall" and _seen_flat(prop.faces, view):
            continue
        slot = "behind" if prop.behind else _PLACE.get(prop.kind, "beside")
        for shape in props.standing(name, prop):
            yield slot, shape
