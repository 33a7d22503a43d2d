"""What a person may set by hand in a pose: each number with its range, and the joints that can be taken hold of."""

from collections.abc import Mapping
from dataclasses import dataclass

from steadfoot.exercises.figures.body import SIDES
from steadfoot.exercises.figures.checks import RANGES
from steadfoot.exercises.figures.explicit import told_of
from steadfoot.exercises.figures.read import Figure

ROM: dict[str, tuple[float, float]] = {
    "hip.1": (-30, 45),
    "hip.2": (-45, 45),
    "shoulder.0": (-60, 180),
    "shoulder.1": (0, 180),
    "shoulder.2": (-70, 90),
    "wrist": (-70, 80),
    "spine.flexion": (-30, 80),
    "spine.lean": (-35, 35),
    "spine.turn": (-45, 45),
    "neck.flexion": (-45, 45),
    "neck.lean": (-45, 45),
    "neck.turn": (-60, 60),
}
"""Degrees, published: American Academy of Orthopaedic Surgeons 1965, "Joint Motion: Method of Measuring and Recording",
average ranges; extension, adduction and internal rotation are negative."""
LOADED = {"hip.0": RANGES["hip flexion"], "knee": RANGES["knee"], "ankle": RANGES["ankle"], "elbow": RANGES["elbow"]}
"""Degrees: where a check watches a joint, the slider goes as far as the check, for a shin leans farther under load."""
OTHER: dict[str, tuple[float, float]] = {
    "toe": (-30, 70),
    "heading": (-30, 60),
    "pitch": (-40, 70),
    "knee_out": (-40, 60),
    "pelvis.turn": (-180, 180),
    "pelvis.tilt": (-120, 120),
    "pelvis.lean": (-120, 120),
}
"""House, degrees."""
PLACE = (-1.2, 1.2)
"""House, fractions of stature: how far from the middle of the picture hands, feet and pelvis may be put."""
_TRUNK = [f"{part}.{name}" for part in ("spine", "neck") for name in ("flexion", "lean", "turn")]
_TRUNK += [f"pelvis.{name}" for name in ("tilt", "lean", "turn")]
_LEG = ("hip.0", "hip.1", "hip.2", "knee", "ankle", "toe")
_ARM = ("shoulder.0", "shoulder.1", "shoulder.2", "elbow", "wrist")
_FOOT = ("heading", "pitch", "knee_out")
_OTHER_SIDE = str.maketrans("LR", "RL")
_SET_BY_ENGINE = ("fingers", "elbow")


@dataclass(frozen=True, slots=True)
class Control:
    """A number that may be set: its path in the key, what it is now, and how far it goes."""

    path: str
    value: float
    low: float
    high: float
    length: bool
    """True for a fraction of stature, False for degrees."""


def controls(figure: Figure, numbers: Mapping[str, float]) -> dict[str, Control]:
    """Answer what may be set in one key pose, by path; what the solver finds by itself is not among it."""
    limbs = [path for limb, way in figure.task.switches.limbs.items() for path in _limb(limb, way)]
    wanted = dict.fromkeys([*_TRUNK, *limbs, *numbers])
    found = [_control(path, numbers.get(path, 0.0)) for path in wanted if path not in figure.task.unknowns]
    return {one.path: one for one in found if one}


def mirrored(figure: Figure, before: Mapping[str, float], after: Mapping[str, float]) -> dict[str, float]:
    """Answer what changed on one side for the other, as far as that limb is told alike; sideways turns its sign."""
    known = controls(figure, before)
    changed = [path for path, value in after.items() if value != before.get(path, 0.0)]
    pairs = [(path, path.translate(_OTHER_SIDE)) for path in changed if ".L." in path or ".R." in path]
    return {other: -after[path] if path.endswith(".at.1") else after[path] for path, other in pairs if other in known}


def _limb(limb: str, way: str) -> list[str]:
    """Answer the numbers that a limb has, also those that no key has told yet."""
    kind, side = limb.split(".")
    if way == "angles":
        return [f"{limb}.{name}" for name in (_LEG if kind == "leg" else _ARM)]
    return [f"foot.{side}.{name}" for name in _FOOT] if kind == "leg" else []


def _control(path: str, value: float) -> Control | None:
    place = told_of(path)
    if place is None or (place[0].startswith("hand.") and place[1] in _SET_BY_ENGINE):
        return None
    limits = _limits(place)
    length = limits is PLACE
    return Control(path, value, min(limits[0], value), max(limits[1], value), length)


def _limits(place: list[str]) -> tuple[float, float]:
    if place[0] == "aim":
        return LOADED.get(place[1].partition(".")[0], PLACE)
    for name in (".".join(place), ".".join(place[1:])):
        for table in (ROM, LOADED, OTHER):
            if name in table:
                return table[name]
    return PLACE


def moved_by(point: str) -> list[str]:
    """Answer the numbers that bring a joint to another place, however its limb is told."""
    name, _, side = point.partition(".")
    return [path.format(s=side) for path in _MOVED_BY[name]]


_MOVED_BY: dict[str, list[str]] = {
    "pelvis": ["pelvis.x", "pelvis.y", "pelvis.z"],
    "chest": ["pelvis.tilt", "pelvis.lean"],
    "neck": ["spine.flexion", "spine.lean"],
    "head": ["neck.flexion", "neck.lean"],
    "knee": ["leg.{s}.hip.0", "leg.{s}.hip.1", "foot.{s}.knee_out", "aim.knee.L", "aim.knee.R"],
    "ankle": ["leg.{s}.knee", "leg.{s}.hip.0", "leg.{s}.hip.1", "foot.{s}.at.0", "foot.{s}.at.1", "foot.{s}.at.2"],
    "toe": ["leg.{s}.ankle", "foot.{s}.pitch", "foot.{s}.heading"],
    "elbow": ["arm.{s}.shoulder.0", "arm.{s}.shoulder.1"],
    "wrist": [
        "arm.{s}.elbow",
        "arm.{s}.shoulder.0",
        "arm.{s}.shoulder.1",
        "hand.{s}.at.0",
        "hand.{s}.at.1",
        "hand.{s}.at.2",
    ],
}
HANDLES: tuple[str, ...] = tuple(
    point
    for name in _MOVED_BY
    for point in ([name] if name in ("pelvis", "chest", "neck", "head") else [f"{name}.{side}" for side in SIDES])
)
"""Named points that can be dragged."""
