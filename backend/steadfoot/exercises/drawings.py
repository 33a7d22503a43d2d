"""Drawings of the library's variants, computed; the gallery keeps them."""

from collections.abc import Callable, Iterator, Mapping
from functools import lru_cache
from importlib.resources import files
from importlib.resources.abc import Traversable

from steadfoot.core.problems import not_found
from steadfoot.exercises.figures.animate import moving
from steadfoot.exercises.figures.draw import still
from steadfoot.exercises.figures.motion import Sample, move
from steadfoot.exercises.figures.read import Figure, read_figures
from steadfoot.exercises.figures.scene import Scene, scene
from steadfoot.exercises.figures.strip import strip
from steadfoot.exercises.schemas import Form

KEPT_MOVES = 8
"""House: how many solved movements are kept in memory: still, moving and strip are often asked for in turn."""
_DRAW: Mapping[Form, Callable[[Scene], str]] = {Form.MOVING: moving, Form.STILL: still, Form.STRIP: strip}


def read_poses(folder: Traversable | None = None) -> dict[str, dict[str, Figure]]:
    """Answer every figure by exercise and variant.

    Raises:
        PoseFileBroken: a file is not valid; the message names file, variant and field.
    """
    folder = folder or files("steadfoot.exercises") / "poses"
    named = sorted((file.name, file) for file in folder.iterdir() if file.name.endswith(".json"))
    return {name.removesuffix(".json"): read_figures(name, file.read_bytes()) for name, file in named}


@lru_cache(maxsize=1)
def poses() -> dict[str, dict[str, Figure]]:
    """Answer every figure of the library, read once."""
    return read_poses()


@lru_cache(maxsize=KEPT_MOVES)
def _samples(code: str, variant: str) -> list[Sample]:
    return move(poses()[code][variant].task)


def views() -> Iterator[tuple[str, str, str | None]]:
    """Answer every exercise, variant and view that can be drawn; None is the first view."""
    for code, figures in poses().items():
        for variant, figure in figures.items():
            yield from ((code, variant, view) for view in (None, *figure.movement.views))


def refuse_unknown(code: str, variant: str, view: str | None) -> None:
    """Refuse what cannot be drawn.

    Raises:
        NotFound: no such exercise, variant or view, or not drawn yet.
    """
    figure = poses().get(code, {}).get(variant)
    if figure is None or (view and view not in figure.movement.views):
        raise not_found("drawing")


def drawing(code: str, variant: str, form: Form, view: str | None) -> bytes:
    """Answer one drawing as SVG.

    Args:
        code: Exercise.
        variant: Variant of its ladder.
        form: Moving, still or strip.
        view: One of the pose file's views; its first when None.

    Raises:
        NotFound: no such exercise, variant or view, or not drawn yet.
    """
    refuse_unknown(code, variant, view)
    return drawn(poses()[code][variant], _samples(code, variant), form, view)


def drawn(figure: Figure, samples: list[Sample], form: Form, view: str | None) -> bytes:
    """Answer a solved figure as SVG; its first view when None."""
    return _DRAW[form](scene(figure, view, samples)).encode()
