"""Working muscles: where each is tinted, as spheres inside the limb in the frame of its bone.

``facing`` is the direction, in the bone's frame, that the region looks to; from behind it is left out.
House: all places and radii, in fractions of stature, told for the left side.
"""

from dataclasses import dataclass

from steadfoot.exercises.figures.body import SIDES
from steadfoot.exercises.figures.parts import Shape, Sphere, mirrored

Facing = tuple[float, float, float]


@dataclass(frozen=True, slots=True)
class Region:
    """The tint of one muscle: its outline, the shape that it is drawn on, and where it looks to."""

    shape: Shape
    on: str
    facing: Facing


_TOLD: dict[str, tuple[str, str, Facing, tuple[Sphere, ...]]] = {
    "quadriceps": (
        "thigh",
        "leg",
        (1, 0.6, 0),
        ((0.021, 0.006, -0.05, 0.017), (0.022, 0.006, -0.11, 0.017), (0.013, 0, -0.19, 0.010)),
    ),
    "hamstrings": (
        "thigh",
        "leg",
        (-1, 0.6, 0),
        ((-0.022, 0.004, -0.06, 0.016), (-0.020, 0.004, -0.12, 0.016), (-0.012, 0, -0.20, 0.009)),
    ),
    "gluteus_maximus": (
        "pelvis",
        "pelvis",
        (-1, 0.6, 0),
        ((-0.038, 0.044, 0.012, 0.028), (-0.030, 0.046, -0.014, 0.026)),
    ),
    "gluteus_medius": ("pelvis", "pelvis", (0, 1, 0), ((-0.006, 0.066, 0.034, 0.020), (-0.002, 0.076, 0.012, 0.014))),
    "adductors": ("thigh", "leg", (0.3, -1, 0), ((0.004, -0.024, -0.05, 0.014), (0.004, -0.018, -0.14, 0.012))),
    "calf": (
        "shank",
        "shank",
        (-1, 0.5, 0),
        ((-0.020, 0.004, -0.045, 0.014), (-0.020, 0.004, -0.085, 0.0150), (-0.006, 0, -0.155, 0.008)),
    ),
    "tibialis_anterior": (
        "shank",
        "shank",
        (1, 0.6, 0),
        ((0.007, 0.005, -0.05, 0.010), (0.005, 0.004, -0.11, 0.010), (0.003, 0, -0.19, 0.006)),
    ),
    "peroneals": (
        "shank",
        "shank",
        (0.2, 1, 0),
        ((0, 0.015, -0.05, 0.010), (-0.002, 0.012, -0.12, 0.008), (-0.002, 0.007, -0.20, 0.006)),
    ),
    "tibialis_posterior": (
        "shank",
        "shank",
        (-0.2, -1, 0),
        ((-0.005, -0.014, -0.06, 0.010), (-0.004, -0.011, -0.13, 0.008), (-0.001, -0.006, -0.20, 0.005)),
    ),
    "obliques": ("abdomen", "abdomen", (0.2, 1, 0), ((0.004, 0.058, 0.005, 0.019), (0.002, 0.062, 0.075, 0.019))),
    "deltoid": ("upper_arm", "sleeve", (0, 1, 0), ((0, 0.004, -0.012, 0.019), (0, 0.004, -0.072, 0.013))),
    "triceps": ("upper_arm", "upper_arm", (-1, 0.6, 0), ((-0.011, 0, -0.06, 0.0105), (-0.008, 0, -0.14, 0.0085))),
    "biceps": ("upper_arm", "upper_arm", (1, 0.6, 0), ((0.011, 0, -0.06, 0.0105), (0.008, 0, -0.14, 0.0085))),
    "pectoralis": ("thorax", "thorax", (1, 0.3, 0), ((0.032, 0.022, 0.085, 0.020), (0.028, 0.055, 0.095, 0.018))),
    "rhomboids": ("thorax", "thorax", (-1, 0.3, 0), ((-0.026, 0.030, 0.045, 0.016), (-0.012, 0.045, 0.110, 0.012))),
    "latissimus": ("thorax", "thorax", (-1, 0.8, 0), ((-0.022, 0.052, 0.010, 0.018), (-0.018, 0.068, 0.070, 0.018))),
    "serratus_anterior": ("thorax", "thorax", (0.3, 1, 0), ((0.006, 0.062, 0.02, 0.017), (0.016, 0.06, 0.07, 0.015))),
    "foot_muscles": ("foot", "foot", (0, 0.8, -0.5), ((0.030, 0, -0.026, 0.007), (0.062, 0, -0.029, 0.006))),
    "arch": ("foot", "foot", (0, -0.8, -0.3), ((-0.006, -0.005, -0.022, 0.006), (0.018, -0.005, -0.019, 0.005))),
    "rotators": ("pelvis", "pelvis", (-1, 0.8, 0), ((-0.044, 0.050, 0.000, 0.018), (-0.020, 0.068, -0.006, 0.014))),
}
_MIDDLE: dict[str, tuple[str, str, Facing, tuple[Sphere, ...]]] = {
    "rectus_abdominis": ("abdomen", "abdomen", (1, 0, 0), ((0.032, 0, 0.000, 0.014), (0.032, 0, 0.085, 0.014))),
    "erector_spinae": ("abdomen", "abdomen", (-1, 0, 0), ((-0.026, 0, -0.010, 0.013), (-0.028, 0, 0.088, 0.013))),
}


def _region(name: str, told: tuple[str, str, Facing, tuple[Sphere, ...]], side: str) -> Region:
    bone, on, (x, y, z), spheres = told
    end = f".{side}"
    limb = bone not in ("pelvis", "abdomen", "thorax")
    shape = Shape(f"{name}{end}", bone + end * limb, "muscle", mirrored(spheres, side))
    return Region(shape, on + end * limb, (x, y if side == "L" else -y, z))


def _middle(name: str) -> Region:
    bone, on, facing, spheres = _MIDDLE[name]
    return Region(Shape(name, bone, "muscle", spheres), on, facing)


REGIONS: dict[str, Region] = {name: _middle(name) for name in _MIDDLE} | {
    f"{name}.{side}": _region(name, told, side) for name, told in _TOLD.items() for side in SIDES
}
"""Every muscle that a pose file can name."""
