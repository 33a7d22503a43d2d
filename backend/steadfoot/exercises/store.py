"""Reads the library's files."""

import json
from collections.abc import Iterable, Set
from importlib.resources import files
from importlib.resources.abc import Traversable

from pydantic import ValidationError

from steadfoot.exercises.schemas import Exercise, ExerciseFile


class LibraryBroken(Exception):
    """A file of the library cannot be used; the message names the file and each field."""


def read_library(folder: Traversable | None = None) -> dict[str, Exercise]:
    """Answer every exercise by its code, in the order of the codes.

    Raises:
        LibraryBroken: a file is not valid, or its name is not its code.
    """
    folder = folder or files("steadfoot.exercises") / "library"
    drawn = _drawn(files("steadfoot.exercises") / "poses")
    exercises = [_marked(_read(name, text), drawn) for name, text in _texts(folder)]
    return {exercise.code: exercise for exercise in exercises}


def _texts(folder: Traversable) -> list[tuple[str, bytes]]:
    named = sorted((file.name, file) for file in folder.iterdir() if file.name.endswith(".json"))
    return [(name, file.read_bytes()) for name, file in named]


def _drawn(folder: Traversable) -> Set[tuple[str, str]]:
    """Answer exercise and variant of each pose. Only names are read: poses are checked whole when they are drawn."""
    found = set()
    for name, text in _texts(folder):
        try:
            found |= {(name.removesuffix(".json"), variant) for variant in json.loads(text)["variants"]}
        except (ValueError, KeyError, TypeError) as error:
            raise LibraryBroken(f"{name}: the poses have no readable variants") from error
    return found


def _marked(entry: Exercise, drawn: Set[tuple[str, str]]) -> Exercise:
    ladder = [one.model_copy(update={"drawn": (entry.code, one.variant) in drawn}) for one in entry.ladder]
    return entry.model_copy(update={"ladder": ladder})


def _read(name: str, text: bytes) -> Exercise:
    try:
        exercise = ExerciseFile.model_validate_json(text)
    except ValidationError as error:
        raise LibraryBroken("; ".join(_faults(name, error))) from error
    if name != f"{exercise.code}.json":
        raise LibraryBroken(f"{name}: code is {exercise.code}, so the file must be named {exercise.code}.json")
    return exercise


def _faults(name: str, error: ValidationError) -> Iterable[str]:
    for fault in error.errors(include_url=False, include_input=False, include_context=False):
        field = ".".join(str(step) for step in fault["loc"]) or "whole file"
        yield f"{name}: {field}: {fault['msg']}"
