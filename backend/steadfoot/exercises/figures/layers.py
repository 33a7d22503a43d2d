"""What is drawn before what. The order is fixed for a movement and a view; a pose file may lift or sink a group."""

from collections.abc import Sequence

from steadfoot.exercises.figures.body import SIDES

TRUNK = ("pelvis", "neck", "abdomen", "thorax", "seam", "trunk.muscles")


def _arm(side: str) -> list[str]:
    return [f"{part}.{side}" for part in ("forearm", "upper_arm", "sleeve", "hand", "thumb", "held", "fist")]


def _leg(side: str) -> list[str]:
    return [f"{part}.{side}" for part in ("toe", "foot", "shank", "thigh", "leg")]


GROUPS: dict[str, list[str]] = {f"arm.{side}": _arm(side) for side in SIDES} | {
    f"leg.{side}": _leg(side) for side in SIDES
}
GROUPS |= {"trunk": list(TRUNK), "seat": ["seat.muscles"], "pack": ["pack"], "strap": ["strap"], "band": ["band"]}
GROUPS |= {"head.profile": ["face", "nose", "hair"], "head.front": ["hair", "face"], "head.back": ["face", "hair"]}
GROUPS |= {"behind": ["behind"], "beside": ["beside"], "ground": ["ground"]}

_FRONT = ("trunk", "strap", "head.front", "leg.L", "leg.R", "seat", "band", "arm.L", "arm.R")
ORDER: dict[str, tuple[str, ...]] = {
    "side": (
        *("ground", "behind", "arm.L", "leg.L", "beside", "pack", "trunk", "head.profile", "strap", "band"),
        *("leg.R", "seat", "arm.R"),
    ),
    "left": (
        *("ground", "behind", "arm.R", "leg.R", "beside", "pack", "trunk", "head.profile", "strap", "band"),
        *("leg.L", "seat", "arm.L"),
    ),
    "front": ("ground", "behind", "beside", "pack", *_FRONT),
    "back": (
        *("ground", "behind", "beside", "arm.L", "arm.R", "leg.L", "leg.R", "trunk", "head.back", "seat"),
        *("strap", "band", "pack"),
    ),
    "quarter": ("ground", "behind", "beside", "pack", "leg.L", "arm.L", *_FRONT[:3], "leg.R", "seat", "band", "arm.R"),
    "quarter-left": (
        *("ground", "behind", "beside", "pack", "arm.R", "leg.R", *_FRONT[:3], "leg.L", "seat", "band", "arm.L"),
    ),
}
FAR = {"side": "L"}
"""Side of the body that is drawn greyer."""


def order(view: str, lift: Sequence[str], sink: Sequence[str], averted: bool = False) -> list[str]:
    """Answer the slots of a view from back to front; lifted groups come last, sunk ones right after the ground.

    Of a head that is ``averted``, as when lying on the front, the hair hides the face.
    """
    usual = ["head.back" if averted and group == "head.front" else group for group in ORDER[view]]
    kept = [group for group in usual if group not in lift and group not in sink]
    groups = [kept[0], *sink, *kept[1:], *lift]
    return [slot for group in groups for slot in GROUPS[group]]
