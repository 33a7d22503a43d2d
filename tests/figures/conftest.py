"""The figures of the library, moved once a run."""

import copy
import json
from pathlib import Path

import pytest

import steadfoot.exercises
from steadfoot.exercises.drawings import read_poses
from steadfoot.exercises.figures.motion import move
from steadfoot.exercises.figures.read import figure

POSES = Path(steadfoot.exercises.__file__).parent / "poses"
FIGURES = {f"{code} {variant}": found for code, variants in read_poses().items() for variant, found in variants.items()}


def squat_document() -> dict:
    """A complete document that a test may spoil."""
    whole = json.loads((POSES / "squat.json").read_text())
    return copy.deepcopy({name: value for name, value in whole.items() if name not in ("code", "variants")})


@pytest.fixture(scope="session")
def moved():
    """Answers the samples of a figure by its name; each is moved once a run."""
    known = {}

    def samples(name):
        if name not in known:
            known[name] = move(FIGURES[name].task)
        return known[name]

    return samples


@pytest.fixture
def squat():
    """A squat that a test may take apart, with its samples."""
    found = figure("squat", "free", squat_document())
    return found, move(found.task, 11)
