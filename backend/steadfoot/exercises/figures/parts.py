"""The shapes of the body: each part is a few spheres fixed to a bone, and is drawn as the outline of their hull.

House: all radii and offsets, in fractions of stature, in the frame of the bone (x forward, y left, z up when standing).
"""

from dataclasses import dataclass, replace

from steadfoot.exercises.figures import body

Sphere = tuple[float, float, float, float]
"""x, y, z and radius."""


@dataclass(frozen=True, slots=True)
class Shape:
    """One outline: its name, the bone it is fixed to, its fill class and its spheres; ``bare`` has no ink line."""

    name: str
    bone: str
    fill: str
    spheres: tuple[Sphere, ...]
    bare: bool = False


def mirrored(spheres: tuple[Sphere, ...], side: str) -> tuple[Sphere, ...]:
    """Answer spheres told for the left side on either side."""
    sign = body.outward(side)
    return tuple((x, sign * y, z, r) for x, y, z, r in spheres)


_T, _S, _U, _F = body.THIGH, body.SHANK, body.UPPER_ARM, body.FOREARM
_SOLE = -body.ANKLE_HEIGHT
_LIMBS: dict[str, tuple[str, str, tuple[Sphere, ...]]] = {
    "shank": ("shank", "skin", ((0, 0, 0, 0.0275), (-0.010, 0, -0.07, 0.031), (0, 0, -_S, 0.0165))),
    "toe": ("toe", "shoe", ((0, -0.010, 0, 0.0125), (0, 0.010, 0, 0.0125), (0.0265, -0.003, -0.002, 0.0105))),
    "foot": (
        "foot",
        "shoe",
        (
            (body.HEEL_RADIUS - body.HEEL_BEHIND, 0, _SOLE + body.HEEL_RADIUS, body.HEEL_RADIUS),
            (0.002, 0, 0, 0.0165),
            (0.036, -0.003, _SOLE + 0.0175, 0.0165),
            (body.BALL_AHEAD, -0.010, _SOLE + body.BALL_RADIUS, body.BALL_RADIUS),
            (body.BALL_AHEAD, 0.010, _SOLE + body.BALL_RADIUS, body.BALL_RADIUS),
        ),
    ),
    "thigh": ("thigh", "skin", ((0.002, 0, -0.09, 0.0425), (0, 0, -_T, 0.0285))),
    "leg": ("thigh", "shorts", ((0, 0, 0, 0.050), (0.003, 0, -0.09, 0.0475), (0.002, 0, -0.128, 0.0435))),
    "hand": ("hand", "skin", ((0, 0, 0, 0.0125), (0, 0, -0.042, 0.0165), (0, 0, -0.099, 0.0085))),
    "thumb": ("hand", "skin", ((0.006, 0, -0.02, 0.009), (0.022, 0, -0.056, 0.0065))),
    "fist": ("hand", "skin", ((0, 0, -0.006, 0.0125), (0.004, 0, -0.034, 0.0205))),
    "forearm": ("forearm", "skin", ((0, 0, 0, 0.0185), (0, 0, -0.035, 0.0205), (0, 0, -_F, 0.0125))),
    "upper_arm": ("upper_arm", "skin", ((0, 0, -0.02, 0.0245), (0, 0, -0.08, 0.0235), (0, 0, -_U, 0.0185))),
    "sleeve": ("upper_arm", "shirt", ((0, 0, 0, 0.0325), (0, 0, -0.05, 0.0305), (0, 0, -0.088, 0.0285))),
}
_NECK_TOP = body.HIP_TO_SHOULDER - body.THORACIC
_WAIST: tuple[Sphere, ...] = ((0.004, -0.034, 0, 0.0465), (0.004, 0.034, 0, 0.0465))
_TRUNK: tuple[Shape, ...] = (
    Shape(
        "pelvis",
        "pelvis",
        "shorts",
        (
            (0, -0.048, 0, 0.050),
            (0, 0.048, 0, 0.050),
            (-0.026, -0.036, -0.004, 0.052),
            (-0.026, 0.036, -0.004, 0.052),
            (0.002, -0.040, 0.055, 0.046),
            (0.002, 0.040, 0.055, 0.046),
        ),
    ),
    Shape("abdomen", "abdomen", "shirt", (*_WAIST, (0.002, -0.040, 0.08, 0.047), (0.002, 0.040, 0.08, 0.047))),
    Shape(
        "thorax",
        "thorax",
        "shirt",
        (
            (0.002, -0.040, 0, 0.0445),
            (0.002, 0.040, 0, 0.0445),
            (0, -0.050, 0.045, 0.050),
            (0, 0.050, 0.045, 0.050),
            (0.014, -0.040, 0.075, 0.046),
            (0.014, 0.040, 0.075, 0.046),
            (0, -0.088, _NECK_TOP, 0.0285),
            (0, 0.088, _NECK_TOP, 0.0285),
            (-0.002, 0, _NECK_TOP + 0.008, 0.030),
        ),
    ),
    # Hides the line where the two halves of the shirt meet.
    Shape("seam", "abdomen", "shirt", ((0.0025, -0.038, 0.055, 0.0445), (0.0025, 0.038, 0.055, 0.0445)), bare=True),
    Shape("neck", "neck", "skin", ((-0.002, 0, -0.002, 0.031), (0.004, 0, body.NECK, 0.027))),
    Shape(
        "face",
        "head",
        "skin",
        (
            (0.002, 0, body.HEAD_CENTRE, 0.0465),
            (0.012, 0, body.HEAD_CENTRE + 0.004, 0.0400),
            (0.024, 0, 0.014, 0.0215),
        ),
    ),
    Shape("nose", "head", "skin", ((0.046, 0, body.HEAD_CENTRE, 0.0065), (0.0545, 0, 0.046, 0.0060))),
    Shape(
        "hair",
        "head",
        "hair",
        (
            (-0.012, 0.009, body.HEAD_CENTRE + 0.016, 0.0445),
            (-0.012, -0.009, body.HEAD_CENTRE + 0.016, 0.0445),
            (-0.026, 0, body.HEAD_CENTRE - 0.008, 0.0340),
            (0.020, 0, body.HEAD_CENTRE + 0.036, 0.0200),
        ),
    ),
)


_INSTEP: Sphere = (0.018, -0.003, -0.0155, 0.0140)
_BARE: dict[str, tuple[Sphere, ...]] = {
    "hindfoot": (*_LIMBS["foot"][2][:2], _INSTEP),
    "forefoot": (_INSTEP, *_LIMBS["foot"][2][3:]),
}


def _bare(side: str) -> tuple[Shape, ...]:
    return tuple(
        Shape(f"{name}.{side}", f"{name}.{side}", "skin", mirrored(spheres, side)) for name, spheres in _BARE.items()
    )


def _sided(name: str, side: str) -> Shape:
    bone, fill, spheres = _LIMBS[name]
    return Shape(f"{name}.{side}", f"{bone}.{side}", fill, mirrored(spheres, side))


SHAPES: dict[str, Shape] = {shape.name: shape for shape in _TRUNK} | {
    f"{name}.{side}": _sided(name, side) for name in _LIMBS for side in body.SIDES
}
"""Every shape of the body by its name."""
SOLID = tuple(name for name in SHAPES if not name.startswith(("hair", "seam", "nose", "fist", "thumb")))
"""Shapes that must not sink into floor, box or wall."""
BAREFOOT: dict[str, tuple[Shape, ...]] = {f"foot.{side}": _bare(side) for side in body.SIDES} | {
    f"toe.{side}": (replace(SHAPES[f"toe.{side}"], fill="skin"),) for side in body.SIDES
}
"""What takes the place of a shoe on a bare foot: the foot in two halves with the arch between, and the toes."""
