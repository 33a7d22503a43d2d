"""A movement told in full: each key says every number, so that a change of one key leaves the others as they are."""

from collections.abc import Mapping
from typing import Any

from steadfoot.exercises.figures.motion import Keys, Sample
from steadfoot.exercises.figures.read import Figure, figure_of
from steadfoot.exercises.figures.schema import Movement
from steadfoot.exercises.figures.solve import kind

PLACES = 4
"""House: decimals of a told number; 0.0001 of stature is 0.2 mm."""
FAR = {"length": 2.0, "angle": 360.0}
"""As far as a pose may say; a guess that ran off farther helps nobody."""
_LIMBS = ("leg", "foot", "arm", "hand")
_AIM = "aim."


def told_of(path: str) -> list[str] | None:
    """Answer where a number stands in a key: ["leg.R", "hip", "0"]; None where it names no single place."""
    if path.startswith(_AIM):
        return ["aim", path.removeprefix(_AIM)]
    first, *rest = path.split(".")
    if first not in _LIMBS:
        return [first, *rest]
    return [f"{first}.{rest[0]}", *rest[1:]] if rest[0] in ("L", "R") else None


def key_document(numbers: Mapping[str, float], time: float) -> dict[str, Any]:
    """Answer a key pose that says all of its numbers."""
    key: dict[str, Any] = {"t": time}
    for path, value in sorted(numbers.items()):
        place = told_of(path)
        if place is None:
            continue
        part = key.setdefault(place[0], {})
        told = round(value, PLACES) + 0.0
        if len(place) == 3:  # noqa: PLR2004
            part.setdefault(place[1], [0.0, 0.0, 0.0])[int(place[2])] = told
        else:
            part[place[1]] = told
    return key


def explicit(figure: Figure, keys: Keys, solved: Mapping[float, Sample] | None = None) -> Movement:
    """Answer a movement whose keys say every number.

    Args:
        figure: The movement; its names, contacts, props and switches are kept.
        keys: The numbers at each key time.
        solved: Samples by key time: what they found for the open numbers is the first guess of the next solving.

    Raises:
        PoseFileBroken: a number is beyond what a pose may say; the message begins with the field.
    """
    names = sorted(figure.movement.keys, key=figure.time_of)
    document = figure.movement.model_dump(by_alias=True, exclude_none=True)
    document["keys"] = {
        name: key_document(_with_found(figure, numbers, (solved or {}).get(time)), time)
        for name, time, numbers in zip(names, keys.times, keys.numbers, strict=True)
    }
    return figure_of(figure.code, figure.variant, Movement.model_validate(document)).movement


def _with_found(figure: Figure, numbers: Mapping[str, float], sample: Sample | None) -> dict[str, float]:
    found = sample.solved.numbers if sample else {}
    known = {path: found[path] for path in figure.task.unknowns if path in found}
    return dict(numbers) | {path: value for path, value in known.items() if abs(value) < FAR[kind(path)]}
