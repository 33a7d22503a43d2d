"""Things in the picture: what stands in the room, what is worn or held, and what stretches between two points.

House: all usual sizes, in fractions of stature (0.257 is a chair seat of 45 cm on a person of 1.75 m).
"""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass

import numpy as np

from steadfoot.exercises.figures.parts import Shape, Sphere
from steadfoot.exercises.figures.points import POINTS, Load
from steadfoot.exercises.figures.rotations import rz
from steadfoot.exercises.figures.schema import Prop

Corner = tuple[float, float, float]
WORLD = "world"
USUAL: dict[str, Corner] = {
    "box": (0.30, 0.40, 0.17),
    "wall": (0.022, 0.90, 1.08),
    "mat": (1.00, 0.34, 0.007),
    "chair": (0.24, 0.25, 0.257),
    "table": (0.34, 0.60, 0.42),
    "rail": (0.50, 0.02, 0.53),
    "pillow": (0.24, 0.18, 0.05),
    "star": (0.42, 0.42, 0.0),
    "ball": (0.10, 0.10, 0.10),
}
"""Depth, width and height where a pose file gives no size."""
MASS = {"pack": 0.12, "dumbbell": 0.06}
"""Fraction of body mass where a pose file gives no mass."""
BAR, LEG, SEAT, BACK = 0.009, 0.012, 0.016, 0.25
ROUND = {"pillow": 0.02}


@dataclass(frozen=True, slots=True)
class Block:
    """A box with upright sides in the frame of its prop: low corner, high corner, fill class."""

    low: Corner
    high: Corner
    fill: str = "wood"


def size_of(prop: Prop) -> Corner:
    """Answer depth, width and height of a standing thing."""
    return prop.size or USUAL.get(prop.kind, (0.0, 0.0, 0.0))


def blocks(prop: Prop) -> list[Block]:
    """Answer the blocks that a standing thing is made of, its front toward +x."""
    depth, width, height = size_of(prop)
    x, y = depth / 2, width / 2
    if prop.kind == "wall":
        return [Block((-depth, -y, 0), (0, y, height))]
    if prop.kind == "mat":
        return [Block((-x, -y, -height), (x, y, 0), "mat")]
    if prop.kind == "pillow":
        return [Block((-x, -y, 0), (x, y, height), "pillow")]
    if prop.kind == "box":
        return [Block((-x, -y, 0), (x, y, height))]
    if prop.kind == "rail":
        posts = [Block((at - BAR, -BAR, 0), (at + BAR, BAR, height)) for at in (-x + BAR, x - BAR)]
        return [*posts, Block((-x, -BAR, height - 2 * BAR), (x, BAR, height))]
    return _on_legs(prop.kind, x, y, height)


def _on_legs(kind: str, x: float, y: float, height: float) -> list[Block]:
    if kind not in ("chair", "table"):
        return []
    feet = [(a * (x - LEG), b * (y - LEG)) for a in (-1, 1) for b in (-1, 1)]
    legs = [Block((a - LEG, b - LEG, 0), (a + LEG, b + LEG, height - SEAT)) for a, b in feet]
    seat = Block((-x, -y, height - SEAT), (x, y, height))
    back = [Block((-x - 2 * LEG, -y, 0), (-x, y, height + BACK))] if kind == "chair" else []
    return [*back, *legs, seat]


def _corners(prop: Prop, block: Block) -> list[Corner]:
    turn, at = rz(prop.faces), np.array(prop.at or (0, 0, 0))
    level = [(x, y, z) for x in _ends(block, 0) for y in _ends(block, 1) for z in _ends(block, 2)]
    spots = [(x, y, z + prop.slope * x if z > 0 else z) for x, y, z in level]
    return [tuple(map(float, at + turn @ np.array(spot))) for spot in spots]  # type: ignore[misc]


def _ends(block: Block, axis: int) -> tuple[float, float]:
    return block.low[axis], block.high[axis]


def extents(prop: Prop) -> list[tuple[Corner, Corner]]:
    """Answer low and high corner in the room of every block, for things that stand square to the axes."""
    found = []
    for block in blocks(prop):
        corners = np.array(_corners(prop, block))
        found.append((tuple(map(float, corners.min(axis=0))), tuple(map(float, corners.max(axis=0)))))
    return found  # type: ignore[return-value]


def standing(name: str, prop: Prop) -> Iterator[Shape]:
    """Answer the outlines of a standing thing, fixed to the room."""
    soft = ROUND.get(prop.kind, 0.0)
    for i, block in enumerate(blocks(prop)):
        corners = np.array(_corners(prop, block))
        middle = corners.mean(axis=0)
        inner = middle + (corners - middle) * np.maximum(0, 1 - 2 * soft / np.ptp(corners, axis=0))
        yield Shape(f"{name}{i}", WORLD, block.fill, tuple((*map(float, spot), soft) for spot in inner))  # type: ignore[misc]
    if prop.kind == "star":
        yield from _star(name, prop)
    if prop.kind == "ball":
        (x, y, z), radius = prop.at or (0, 0, 0), size_of(prop)[2] / 2
        yield Shape(name, WORLD, "pillow", ((x, y, z + radius, radius),))


def _star(name: str, prop: Prop) -> Iterator[Shape]:
    reach, at = size_of(prop)[0], np.array(prop.at or (0, 0, 0))
    for angle in range(0, 180, 45):
        ray = rz(angle + prop.faces) @ np.array((reach, 0, 0))
        ends = tuple((*map(float, at + sign * ray), 0.0) for sign in (-1, 1))
        yield Shape(f"{name}{angle}", WORLD, "star", ends)  # type: ignore[arg-type]


_PACK: dict[str, tuple[str, tuple[Sphere, ...]]] = {
    "bag": (
        "pack",
        tuple((-0.098 + dx, y, z, 0.044) for y in (-0.05, 0.05) for z, dx in ((-0.055, -0.008), (0.135, 0.008))),
    ),
    "pocket": ("pocket", tuple((-0.142, y, z, 0.026) for y in (-0.03, 0.03) for z in (-0.045, 0.03))),
}
_MIDDLE = (-0.100, 0.0, 0.040)
"""House: middle of the worn pack, in the frame of the thorax."""
_STRAPS: dict[str, tuple[Sphere, ...]] = {
    "strap_top": ((-0.045, 0.062, 0.160, 0.006), (0.030, 0.060, 0.140, 0.006), (0.040, 0.060, 0.120, 0.006)),
    "strap_side": ((0.044, 0.060, 0.110, 0.006), (-0.020, 0.085, 0.010, 0.006)),
}
_UNDER: tuple[Sphere, ...] = tuple((x, y, 0.0025, 0.0095) for x in (-0.060, 0.050) for y in (-0.04, 0.04))
"""A folded towel: the heel sinks in a little."""


def worn(name: str, prop: Prop) -> Iterator[Shape]:
    """Answer the outlines of a thing that is worn or held, fixed to a bone."""
    if prop.kind == "pack":
        yield from _carried_pack(name, prop) if prop.hands else _worn_pack(name)
    for side in prop.under:
        yield Shape(f"{name}.{side}", f"sole.{side}", "towel", _UNDER)
    if prop.kind == "dumbbell":
        for side in prop.hands:
            yield from _dumbbell(f"{name}.{side}", f"hand.{side}")


def _worn_pack(name: str) -> Iterator[Shape]:
    for part, (fill, spheres) in _PACK.items():
        yield Shape(f"{name}.{part}", "thorax", fill, spheres)
    for part, spheres in _STRAPS.items():
        for side, sign in (("L", 1), ("R", -1)):
            mirrored = tuple((x, sign * y, z, r) for x, y, z, r in spheres)
            yield Shape(f"{name}.{part}.{side}", "thorax", "strap", mirrored)


def _carried_pack(name: str, prop: Prop) -> Iterator[Shape]:
    for part, (fill, spheres) in _PACK.items():
        yield Shape(f"{name}.{part}", "hands", fill, tuple((*_carried(prop, at), r) for *at, r in spheres))


def _carried(prop: Prop, worn_at: Iterable[float]) -> Corner:
    """Answer a place of the worn pack in the frame of the carried one: its straps toward the person."""
    x, y, z = (told - middle for told, middle in zip(worn_at, _MIDDLE, strict=True))
    ahead, left, up = prop.at or (0.0, 0.0, 0.0)
    return ahead - x, left + y, up + z


def _dumbbell(name: str, bone: str) -> Iterator[Shape]:
    yield Shape(f"{name}.bar", bone, "iron", ((-0.05, 0, -0.034, 0.006), (0.058, 0, -0.034, 0.006)))
    for part, x in (("back", -0.052), ("front", 0.060)):
        disc = tuple((x + dx, 0.0, -0.034 + dz, 0.006) for dx in (-0.008, 0.008) for dz in (-0.018, 0.018))
        yield Shape(f"{name}.{part}", bone, "iron", disc)


def loads(props: Mapping[str, Prop]) -> tuple[Load, ...]:
    """Answer what is carried, for the center of mass."""
    return tuple(load for prop in props.values() for load in _loads(prop))


def _loads(prop: Prop) -> Iterator[Load]:
    mass = MASS.get(prop.kind, 0.0) if prop.mass is None else prop.mass
    if prop.kind == "pack":
        yield ("hands", np.array(prop.at or (0, 0, 0)), mass) if prop.hands else ("thorax", np.array(_MIDDLE), mass)
    if prop.kind == "dumbbell":
        for side in prop.hands:
            bone, offset = POINTS[f"palm.{side}"]
            yield bone, offset, mass
