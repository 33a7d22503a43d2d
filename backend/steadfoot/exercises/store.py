"""Reads the library's files."""

from collections.abc import Iterable
from importlib.resources import files
from importlib.resources.abc import Traversable

from pydantic import ValidationError

from steadfoot.exercises.schemas import Exercise


class LibraryBroken(Exception):
    """A file of the library cannot be used; the message names the file and each field."""


def read_library(folder: Traversable | None = None) -> dict[str, Exercise]:
    """Answer every exercise by its code, in the order of the codes.

    Raises:
        LibraryBroken: a file is not valid, or its name is not its code.
    """
    folder = folder or files("steadfoot.exercises") / "library"
    named = sorted((file.name, file) for file in folder.iterdir() if file.name.endswith(".json"))
    exercises = [_read(name, file.read_bytes()) for name, file in named]
    return {exercise.code: exercise for exercise in exercises}


def _read(name: str, text: bytes) -> Exercise:
    try:
        exercise = Exercise.model_validate_json(text)
    except ValidationError as error:
        raise LibraryBroken("; ".join(_faults(name, error))) from error
    if name != f"{exercise.code}.json":
        raise LibraryBroken(f"{name}: code is {exercise.code}, so the file must be named {exercise.code}.json")
    return exercise


def _faults(name: str, error: ValidationError) -> Iterable[str]:
    for fault in error.errors(include_url=False, include_input=False, include_context=False):
        field = ".".join(str(step) for step in fault["loc"]) or "whole file"
        yield f"{name}: {field}: {fault['msg']}"
