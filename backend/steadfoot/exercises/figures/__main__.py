"""Command line of the figures: ``python -m steadfoot.exercises.figures``."""

import sys
from collections.abc import Iterable, Iterator
from importlib.resources import files
from pathlib import Path
from statistics import median
from typing import Annotated

import typer

from steadfoot.exercises.figures.animate import moving
from steadfoot.exercises.figures.checks import findings
from steadfoot.exercises.figures.draw import still
from steadfoot.exercises.figures.motion import move
from steadfoot.exercises.figures.patch import PoseFileBroken
from steadfoot.exercises.figures.read import Figure, read_figures
from steadfoot.exercises.figures.scene import scene
from steadfoot.exercises.figures.sheet import Entry, packed_size, page
from steadfoot.exercises.figures.strip import strip

app = typer.Typer(
    help="Draw and check the figures of the library.",
    no_args_is_help=True,
    add_completion=False,
    pretty_exceptions_enable=False,
)
Codes = Annotated[list[str] | None, typer.Option("--only", help="Movements to take, such as squat; all without it.")]
Plain = Annotated[bool, typer.Option("--plain", help="Leave the titles out.")]


def _figures(codes: list[str] | None) -> Iterator[Figure]:
    folder = files("steadfoot.exercises") / "poses"
    for file in sorted(folder.iterdir(), key=lambda file: file.name):
        if file.name.endswith(".json") and (not codes or file.name.removesuffix(".json") in codes):
            yield from read_figures(file.name, file.read_bytes()).values()


def _entry(figure: Figure) -> Entry:
    samples = move(figure.task)
    pictures: dict[str, str] = {}
    for view in figure.movement.views:
        seen = scene(figure, view, samples)
        pictures |= {f"still {view}": still(seen), f"moving {view}": moving(seen), f"strip {view}": strip(seen)}
    return Entry(f"{figure.code}: {figure.variant}", pictures, findings(figure, samples))


@app.command()
def sheet(
    file: Annotated[Path, typer.Argument(help="HTML file to write.")], only: Codes = None, plain: Plain = False
) -> None:
    """Write a page with every variant: still, moving, strip, sizes and findings."""
    with typer.progressbar(list(_figures(only)), label="Drawing", file=sys.stderr) as figures:
        entries = [_entry(figure) for figure in figures]
    file.write_text(page(entries, plain))
    typer.echo(f"{file}: {len(entries)} variants, {sum(bool(entry.findings) for entry in entries)} with findings")


@app.command()
def check(only: Codes = None) -> None:
    """Run all checks on every sample of every variant; ends with 1 when anything is found."""
    try:
        figures = list(_figures(only))
    except PoseFileBroken as error:
        typer.echo(str(error))
        raise typer.Exit(1) from error
    found = [
        f"{figure.code} {figure.variant}: {told}" for figure in figures for told in findings(figure, move(figure.task))
    ]
    typer.echo("\n".join([*found, f"{len(figures)} variants checked, {len(found)} findings"]))
    raise typer.Exit(bool(found))


@app.command()
def sizes(only: Codes = None) -> None:
    """Tell the compressed size of each drawing and of all; a phone keeps the moving ones, and their stills in them."""
    told = []
    for figure in _figures(only):
        seen = scene(figure)
        told.append([packed_size(draw(seen)) for draw in (still, moving, strip)])
        typer.echo(f"{figure.code} {figure.variant}: {_sizes(told[-1])}")
    if told:
        columns = list(zip(*told, strict=True))
        typer.echo(f"median: {_sizes(round(median(column)) for column in columns)}")
        typer.echo(f"{len(told)} variants in all: {_sizes(map(sum, columns))}")


def _sizes(told: Iterable[int]) -> str:
    still_b, moving_b, strip_b = told
    return f"still {still_b} B, moving {moving_b} B, strip {strip_b} B"


if __name__ == "__main__":
    app()
