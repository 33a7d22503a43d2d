"""Forward kinematics: numbers of a pose in, the frame of every bone out."""

from collections.abc import Mapping
from dataclasses import dataclass, field

import numpy as np

from steadfoot.exercises.figures import body
from steadfoot.exercises.figures.reach import two_bone
from steadfoot.exercises.figures.rotations import TINY, Matrix, Vector, least_turn, length, limb, rx, ry, rz

Numbers = Mapping[str, float]
BALL = np.array((body.BALL_AHEAD, 0.0, body.BALL_RADIUS - body.ANKLE_HEIGHT))
HEEL = np.array((body.HEEL_RADIUS - body.HEEL_BEHIND, 0.0, body.HEEL_RADIUS - body.ANKLE_HEIGHT))
ON_FLOOR = np.array((1.0, 1.0, 0.0))
PALM = 0.45 * body.HAND
"""House: from the wrist to the middle of the palm."""
LEG = (body.THIGH, body.SHANK)
ARM = (body.UPPER_ARM, body.FOREARM)


@dataclass(frozen=True, slots=True)
class Switches:
    """What does not change during a movement: how each limb is told, and how feet and hands are set.

    ``limbs`` says for leg.L, leg.R, arm.L and arm.R whether the limb is told by its joint angles ("angles") or by the
    place of its foot or hand ("place"). ``pivots`` holds the feet that stand on an edge, ``frames`` what a hand's place
    is measured in, ``grips`` the hands that hold something.
    """

    limbs: Mapping[str, str]
    pivots: frozenset[str] = frozenset()
    frames: Mapping[str, str] = field(default_factory=dict)
    grips: frozenset[str] = frozenset()


@dataclass(slots=True)
class Skeleton:
    """Origin and turn of every bone in the room, and how far each limb missed its place."""

    at: dict[str, Vector] = field(default_factory=dict)
    turn: dict[str, Matrix] = field(default_factory=dict)
    missed: dict[str, float] = field(default_factory=dict)
    span: dict[str, tuple[float, float]] = field(default_factory=dict)

    def point(self, bone: str, offset: Vector) -> Vector:
        """Answer a point given in a bone's frame as a point in the room."""
        return np.asarray(self.at[bone] + self.turn[bone] @ offset)

    def _add(self, bone: str, at: Vector, turn: Matrix) -> None:
        self.at[bone], self.turn[bone] = at, turn


def pose(numbers: Numbers, switches: Switches) -> Skeleton:
    """Place every bone for one pose; ``sole`` is the floor below a heel, for what slides along with it."""
    skeleton = Skeleton()
    _trunk(skeleton, numbers)
    for side in body.SIDES:
        told = switches.limbs[f"leg.{side}"]
        (_leg_by_angles if told == "angles" else _leg_by_place)(skeleton, numbers, switches, side)
        skeleton._add(f"sole.{side}", skeleton.point(f"foot.{side}", HEEL) * ON_FLOOR, np.eye(3))
    for side in body.SIDES:
        told = switches.limbs[f"arm.{side}"]
        (_arm_by_angles if told == "angles" else _arm_by_place)(skeleton, numbers, switches, side)
    for side in body.SIDES:
        _arch(skeleton, numbers.get(f"foot.{side}.arch", 0.0), side)
    _between_hands(skeleton)
    return skeleton


def _arch(skeleton: Skeleton, angle: float, side: str) -> None:
    """Place the two halves of a foot: its arch rises as both turn up, each about where it bears on the floor."""
    at, turn = skeleton.at[f"foot.{side}"], skeleton.turn[f"foot.{side}"]
    for half, sign, pivot in (("hindfoot", -1, HEEL), ("forefoot", 1, BALL)):
        bearing = pivot * (1, 1, 0) + _down(body.ANKLE_HEIGHT)
        turned = turn @ ry(sign * angle)
        skeleton._add(f"{half}.{side}", at + (turn - turned) @ bearing, turned)


def _between_hands(skeleton: Skeleton) -> None:
    """Place the bone of what two hands carry: midway between the palms, upright, turned as the pelvis is."""
    palms = [skeleton.point(f"hand.{side}", _down(PALM)) for side in body.SIDES]
    ahead = skeleton.turn["pelvis"][:, 0]
    facing = rz(float(np.degrees(np.arctan2(ahead[1], ahead[0]))))
    skeleton._add("hands", (palms[0] + palms[1]) / 2, facing)


def _three(numbers: Numbers, path: str) -> Vector:
    return np.array([numbers.get(f"{path}.{i}", 0.0) for i in range(3)])


def _bend(numbers: Numbers, part: str, share: float) -> Matrix:
    turn, flexion, lean = (share * numbers.get(f"{part}.{name}", 0.0) for name in ("turn", "flexion", "lean"))
    return rz(turn) @ ry(flexion) @ rx(lean)


def _trunk(skeleton: Skeleton, numbers: Numbers) -> None:
    x, y, z, turn, tilt, lean = (numbers.get(f"pelvis.{n}", 0.0) for n in ("x", "y", "z", "turn", "tilt", "lean"))
    skeleton._add("pelvis", np.array((x, y, z)), rz(turn) @ ry(tilt) @ rx(lean))
    half = _bend(numbers, "spine", 0.5)
    nod = _bend(numbers, "neck", 0.5)
    chain = (
        ("pelvis", "abdomen", body.LUMBAR, half),
        ("abdomen", "thorax", body.THORACIC - body.LUMBAR, half),
        ("thorax", "neck", body.HIP_TO_SHOULDER - body.THORACIC, nod),
        ("neck", "head", body.NECK, nod),
    )
    for parent, bone, height, turned in chain:
        skeleton._add(bone, skeleton.point(parent, np.array((0.0, 0.0, height))), skeleton.turn[parent] @ turned)


def _hip(skeleton: Skeleton, side: str) -> Vector:
    return skeleton.point("pelvis", np.array((0.0, body.outward(side) * body.HIP_HALF, 0.0)))


def _shoulder(skeleton: Skeleton, numbers: Numbers, side: str) -> Vector:
    forward, up = numbers.get("shoulders.forward", 0.0), numbers.get("shoulders.up", 0.0)
    height = body.HIP_TO_SHOULDER - body.THORACIC + up
    return skeleton.point("thorax", np.array((forward, body.outward(side) * body.SHOULDER_HALF, height)))


def _down(distance: float) -> Vector:
    return np.array((0.0, 0.0, -distance))


def _sole(numbers: Numbers, limb: str, side: str) -> Matrix:
    """Answer the turn of a sole inward, about the length of the foot."""
    return rx(-body.outward(side) * numbers.get(f"{limb}.inversion", 0.0))


def _leg_by_angles(skeleton: Skeleton, numbers: Numbers, _switches: Switches, side: str) -> None:
    leg = f"leg.{side}"
    flexion, abduction, external = _three(numbers, f"{leg}.hip")
    thigh = skeleton.turn["pelvis"] @ limb(flexion, abduction, external, body.outward(side))
    skeleton._add(f"thigh.{side}", _hip(skeleton, side), thigh)
    shank = thigh @ ry(numbers.get(f"{leg}.knee", 0.0))
    skeleton._add(f"shank.{side}", skeleton.point(f"thigh.{side}", _down(body.THIGH)), shank)
    foot = shank @ ry(-numbers.get(f"{leg}.ankle", 0.0)) @ _sole(numbers, leg, side)
    skeleton._add(f"foot.{side}", skeleton.point(f"shank.{side}", _down(body.SHANK)), foot)
    toe = foot @ ry(-numbers.get(f"{leg}.toe", 0.0))
    skeleton._add(f"toe.{side}", skeleton.point(f"foot.{side}", BALL), toe)


def _leg_by_place(skeleton: Skeleton, numbers: Numbers, switches: Switches, side: str) -> None:
    foot, sign = f"foot.{side}", body.outward(side)
    flat = rz(sign * numbers.get(f"{foot}.heading", 0.0))
    pitch = numbers.get(f"{foot}.pitch", 0.0)
    level = flat @ ry(pitch)
    turned = level @ _sole(numbers, foot, side)
    pivot = BALL if pitch > 0 or foot in switches.pivots else HEEL
    ankle = _three(numbers, f"{foot}.at") + np.array((0.0, 0.0, body.ANKLE_HEIGHT)) + (flat - turned) @ pivot
    hint = level @ rz(sign * numbers.get(f"{foot}.knee_out", 0.0)) @ np.array((1.0, 0.0, 1.0))
    hip = _hip(skeleton, side)
    reach = two_bone(hip, ankle, LEG, hint, 1)
    skeleton._add(f"thigh.{side}", hip, reach.upper)
    skeleton._add(f"shank.{side}", reach.middle, reach.lower)
    skeleton._add(foot, reach.end, turned)
    skeleton._add(f"toe.{side}", skeleton.point(foot, BALL), flat if pivot is BALL else turned)
    skeleton.missed[foot] = reach.missed
    skeleton.span[f"knee.{side}"] = (length(ankle - hip), length(reach.end - hip))


def _arm_by_angles(skeleton: Skeleton, numbers: Numbers, _switches: Switches, side: str) -> None:
    arm = f"arm.{side}"
    flexion, abduction, external = _three(numbers, f"{arm}.shoulder")
    upper = skeleton.turn["thorax"] @ limb(flexion, abduction, external, body.outward(side))
    skeleton._add(f"upper_arm.{side}", _shoulder(skeleton, numbers, side), upper)
    forearm = upper @ ry(-numbers.get(f"{arm}.elbow", 0.0))
    skeleton._add(f"forearm.{side}", skeleton.point(f"upper_arm.{side}", _down(body.UPPER_ARM)), forearm)
    hand = forearm @ ry(-numbers.get(f"{arm}.wrist", 0.0))
    skeleton._add(f"hand.{side}", skeleton.point(f"forearm.{side}", _down(body.FOREARM)), hand)


def _frame(skeleton: Skeleton, name: str, side: str) -> tuple[Vector, Matrix]:
    if name == "world":
        return np.zeros(3), np.eye(3)
    bone = f"thigh.{side}" if name == "thigh" else name
    return skeleton.at[bone], skeleton.turn[bone]


def _arm_by_place(skeleton: Skeleton, numbers: Numbers, switches: Switches, side: str) -> None:
    hand = f"hand.{side}"
    origin, frame = _frame(skeleton, switches.frames.get(hand, "world"), side)
    target = origin + frame @ _three(numbers, f"{hand}.at")
    hint = skeleton.turn["thorax"] @ _three(numbers, f"{hand}.elbow")
    shoulder = _shoulder(skeleton, numbers, side)
    reach = two_bone(shoulder, target, ARM, hint, -1)
    skeleton._add(f"upper_arm.{side}", shoulder, reach.upper)
    skeleton._add(f"forearm.{side}", reach.middle, reach.lower)
    fingers = frame @ _three(numbers, f"{hand}.fingers")
    far = length(fingers)
    bent = least_turn(-reach.lower[:, 2], fingers / far) if far > TINY else np.eye(3)
    skeleton._add(hand, reach.end, bent @ reach.lower)
    skeleton.missed[hand] = reach.missed
    skeleton.span[f"elbow.{side}"] = (length(target - shoulder), length(reach.end - shoulder))
