"""Turns the poses of a file into plain numbers by path, side by side, and into the switches of the limbs."""

from collections.abc import Iterator
from typing import Any

from steadfoot.exercises.figures.body import SIDES, outward
from steadfoot.exercises.figures.motion import Keys
from steadfoot.exercises.figures.patch import PoseFileBroken
from steadfoot.exercises.figures.schema import Key, Movement, PosePart
from steadfoot.exercises.figures.skeleton import Switches

_WAYS = {"leg": ("leg", "foot"), "arm": ("arm", "hand")}
"""Each limb, told by its angles or by the place of its end."""
_ACROSS = {"at", "fingers", "elbow"}
"""Fields with a y that the other side mirrors."""
_SWITCHES = {"pivot", "measured_in", "grip"}
ELBOW_HINT = (-1.0, 0.4, -0.3)
"""House: elbows point back, a little out and down, unless told."""


def _fields(part: Any) -> dict[str, Any]:
    return {name: value for name in type(part).model_fields if (value := getattr(part, name)) is not None}


def _mirrored(fields: dict[str, Any], side: str) -> dict[str, Any]:
    sign = outward(side)
    return {
        name: (value[0], sign * value[1], value[2]) if name in _ACROSS and isinstance(value, tuple) else value
        for name, value in fields.items()
    }


def _told(pose: PosePart, part: str, side: str) -> dict[str, Any]:
    both, own = getattr(pose, part), getattr(pose, f"{part}_{side.lower()}")
    return (_mirrored(_fields(both), side) if both else {}) | (_fields(own) if own else {})


def _way(base: PosePart, limb: str, side: str) -> str:
    by_angles, by_place = _WAYS[limb]
    own = [part for part in _WAYS[limb] if getattr(base, f"{part}_{side.lower()}") is not None]
    both = [part for part in _WAYS[limb] if getattr(base, part) is not None]
    found = own or both or [by_angles]
    if len(found) > 1:
        raise PoseFileBroken(f"base: {limb}.{side} is told twice, by {by_angles} and by {by_place}; keep one")
    return found[0]


def switches_of(base: PosePart) -> Switches:
    """Answer how each limb is told and set; only the base says so, since these cannot change halfway."""
    ways = {(limb, side): _way(base, limb, side) for limb in _WAYS for side in SIDES}
    told = {f"{way}.{side}": _told(base, way, side) for (_, side), way in ways.items()}
    return Switches(
        limbs={f"{limb}.{side}": "angles" if way == limb else "place" for (limb, side), way in ways.items()},
        pivots=frozenset(name for name, fields in told.items() if fields.get("pivot")),
        frames={name: fields["measured_in"] for name, fields in told.items() if "measured_in" in fields},
        grips=frozenset(name[-1] for name, fields in told.items() if fields.get("grip")),
    )


def _numbers(path: str, value: Any) -> Iterator[tuple[str, float]]:
    if isinstance(value, tuple):
        yield from ((f"{path}.{i}", float(one)) for i, one in enumerate(value))
    else:
        yield path, float(value)


def flat(pose: PosePart, switches: Switches) -> dict[str, float]:
    """Answer the numbers that a pose names, by path."""
    numbers: dict[str, float] = {}
    for part in ("pelvis", "spine", "neck", "shoulders"):
        for name, value in (_fields(found) if (found := getattr(pose, part)) else {}).items():
            numbers |= _numbers(f"{part}.{name}", value)
    for limb, (by_angles, by_place) in _WAYS.items():
        for side in SIDES:
            part = by_angles if switches.limbs[f"{limb}.{side}"] == "angles" else by_place
            for name, value in _told(pose, part, side).items():
                if name not in _SWITCHES:
                    numbers |= _numbers(f"{part}.{side}.{name}", value)
    return numbers | {f"aim.{name}": value for name, value in pose.aim.items()}


def _refuse_changed_ways(name: str, key: Key, switches: Switches) -> None:
    for limb, (by_angles, by_place) in _WAYS.items():
        for side in SIDES:
            told_by_angles = switches.limbs[f"{limb}.{side}"] == "angles"
            other = by_place if told_by_angles else by_angles
            if getattr(key, f"{other}_{side.lower()}") is not None:
                told = by_angles if told_by_angles else by_place
                raise PoseFileBroken(f"keys.{name}.{other}.{side}: the base tells this limb by {told}")
            if any(field in _told(key, part, side) for part in (by_angles, by_place) for field in _SWITCHES):
                raise PoseFileBroken(f"keys.{name}: pivot, in and grip belong to the base; they cannot change halfway")


def _defaults(switches: Switches) -> dict[str, float]:
    hands = [side for side in SIDES if switches.limbs[f"arm.{side}"] == "place"]
    hint = [(f"hand.{side}", (ELBOW_HINT[0], outward(side) * ELBOW_HINT[1], ELBOW_HINT[2])) for side in hands]
    return {path: value for name, vector in hint for path, value in _numbers(f"{name}.elbow", vector)}


def keys_of(movement: Movement, switches: Switches) -> Keys:
    """Answer the key poses in order of time, each complete: what one leaves out is as in the one before it."""
    in_order = sorted(movement.keys.items(), key=lambda item: item[1].t)
    for name, key in in_order:
        _refuse_changed_ways(name, key, switches)
    told = [flat(key, switches) for _, key in in_order]
    start = _defaults(switches) | flat(movement.base, switches)
    unset = {path: 0.0 for numbers in told for path in numbers if path not in start}
    complete, current = [], unset | dict.fromkeys(movement.solve, 0.0) | start
    for numbers in told:
        current = current | numbers
        complete.append(current)
    return Keys(tuple(key.t for _, key in in_order), tuple(complete), movement.cycle)
