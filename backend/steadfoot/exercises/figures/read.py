"""Reads pose files: one a movement, with a patch for each variant. A fault names file, variant and field."""

import json
import re
from dataclasses import dataclass
from typing import Any

from pydantic import ValidationError

from steadfoot.exercises.figures import muscles, props
from steadfoot.exercises.figures.flatten import keys_of, switches_of
from steadfoot.exercises.figures.motion import Task
from steadfoot.exercises.figures.patch import PoseFileBroken, merged, with_numbers
from steadfoot.exercises.figures.points import POINTS
from steadfoot.exercises.figures.schema import Movement
from steadfoot.exercises.figures.support import CONTACTS

_OWN = {"code", "numbers", "variants"}
_NUMBER = re.compile(
    r"pelvis\.(x|y|z|turn|tilt|lean)|(spine|neck)\.(flexion|lean|turn)"
    r"|foot(\.[LR])?\.(at\.[012]|heading|pitch|knee_out)|leg(\.[LR])?\.(hip\.[012]|knee|ankle|toe)"
    r"|hand(\.[LR])?\.(at|fingers|elbow)\.[012]|arm(\.[LR])?\.(shoulder\.[012]|elbow|wrist)"
)
"""Paths of the numbers that a pose has."""


@dataclass(frozen=True, slots=True)
class Figure:
    """One variant, ready to be moved and drawn."""

    code: str
    variant: str
    movement: Movement
    task: Task

    def time_of(self, key: str) -> float:
        """Answer the time of a key pose."""
        return self.movement.keys[key].t


def read_figures(name: str, text: bytes) -> dict[str, Figure]:
    """Answer the figures of a pose file by variant.

    Raises:
        PoseFileBroken: the file is not valid; the message names the file, the variant and the field.
    """
    try:
        whole = json.loads(text)
    except ValueError as error:
        raise PoseFileBroken(f"{name}: not JSON: {error}") from error
    if not isinstance(whole, dict) or not isinstance(whole.get("variants"), dict) or "code" not in whole:
        raise PoseFileBroken(f"{name}: needs code and variants")
    if name != f"{whole['code']}.json":
        raise PoseFileBroken(f"{name}: code is {whole['code']}, so the file must be named {whole['code']}.json")
    return {variant: _read(name, whole, variant) for variant in whole["variants"]}


def _read(name: str, whole: dict[str, Any], variant: str) -> Figure:
    try:
        return figure(whole["code"], variant, _document(whole, variant))
    except PoseFileBroken as error:
        raise PoseFileBroken(f"{name}: variant {variant}: {error}") from error


def _document(whole: dict[str, Any], variant: str) -> dict[str, Any]:
    patched = merged({key: value for key, value in whole.items() if key != "variants"}, whole["variants"][variant])
    numbers = patched.get("numbers", {})
    if not all(isinstance(value, int | float) for value in numbers.values()):
        raise PoseFileBroken("numbers: each must be a number")
    return {key: with_numbers(value, numbers, key) for key, value in patched.items() if key not in _OWN}


def figure(code: str, variant: str, document: dict[str, Any]) -> Figure:
    """Answer the figure of a complete document.

    Raises:
        PoseFileBroken: it is not valid; the message begins with the field.
    """
    try:
        movement = Movement.model_validate(document)
    except ValidationError as error:
        raise PoseFileBroken("; ".join(_faults(error))) from error
    return figure_of(code, variant, movement)


def figure_of(code: str, variant: str, movement: Movement) -> Figure:
    """Answer the figure of a movement.

    Raises:
        PoseFileBroken: it does not hold together; the message begins with the field.
    """
    _refuse_unknown_names(movement)
    _refuse_bad_times(movement)
    _refuse_floating(movement)
    switches = switches_of(movement.base)
    keys = keys_of(movement, switches)
    _refuse_open_ends(movement, keys.numbers[0])
    return Figure(code, variant, movement, Task(keys, switches, dict(movement.solve), props.loads(movement.props)))


def _faults(error: ValidationError) -> list[str]:
    faults = error.errors(include_url=False, include_input=False, include_context=False)
    return [f"{'.'.join(str(step) for step in fault['loc']) or 'whole file'}: {fault['msg']}" for fault in faults]


def _refuse_unknown_names(movement: Movement) -> None:
    ends = [end for prop in movement.props.values() for end in prop.ends or ()]
    points = [name.rpartition(".")[0] for name in movement.solve.values() if name[-1] in "xyz" and name[:5] != "mass."]
    asked = (
        ("working", movement.working, muscles.REGIONS),
        ("contacts", movement.contacts, CONTACTS),
        ("poster", [movement.poster], movement.keys),
        ("strip", movement.strip, movement.keys),
        ("mark", [movement.mark] if movement.mark else [], POINTS),
        ("props: ends", ends, POINTS),
        ("frame", [name for names in movement.frame.values() for name in names], POINTS),
        ("solve", points, POINTS),
    )
    for field, names, known in asked:
        for unknown in (name for name in names if name not in known):
            raise PoseFileBroken(f"{field}: {unknown!r} is not one of {', '.join(sorted(known))}")


def _refuse_bad_times(movement: Movement) -> None:
    times = sorted(key.t for key in movement.keys.values())
    if len(set(times)) < len(times):
        raise PoseFileBroken("keys: two keys have the same t")
    if times[0] != 0 or (len(times) > 1 and times[-1] != 1):
        raise PoseFileBroken("keys: the first t must be 0 and the last 1")


def _refuse_floating(movement: Movement) -> None:
    if not movement.contacts and movement.balance != "moving":
        raise PoseFileBroken(
            "contacts: name what bears weight; only a movement whose balance is 'moving' may have none"
        )


def _refuse_open_ends(movement: Movement, first: dict[str, float]) -> None:
    for unknown, condition in movement.solve.items():
        if not _NUMBER.fullmatch(unknown):
            raise PoseFileBroken(f"solve.{unknown}: a pose has no such number")
        if f"aim.{condition}" not in first:
            raise PoseFileBroken(f"solve.{unknown}: no aim for {condition} in the base or the first key")
        limb = {"knee": "foot", "elbow": "hand"}.get(condition.partition(".")[0])
        if limb and condition[-1] in "LR" and f"{limb}.{condition[-1]}.at.0" not in first:
            raise PoseFileBroken(f"solve.{unknown}: {condition} decides only where the {limb} has a place")
