"""Printing an answer: one JSON object for programs, a table for people."""

import json
from collections.abc import Mapping, Sequence
from typing import Annotated, Any

import typer
from rich.console import Console
from rich.table import Table

from steadfoot.rules.sources import BIBLIOGRAPHY, Cited

AsJson = Annotated[bool, typer.Option("--json", help="Print one JSON object instead of a table.")]
_LABELS = {"mdc": "smallest real change"}
CAUTION = "It supports a licensed practitioner's judgment and never replaces it."


def tell(title: str, answer: Mapping[str, Any], *, as_json: bool) -> None:
    """Print the answer."""
    if as_json:
        typer.echo(json.dumps(answer, allow_nan=False))
        return
    console = Console(highlight=False)
    table = Table(title=title, show_header=False, title_justify="left", title_style="bold")
    table.add_column(no_wrap=True)
    table.add_column(overflow="fold")
    for name, value in answer.items():
        table.add_row(_LABELS.get(name, name.replace("_", " ")), _words(value))
    console.print(table)
    console.print(CAUTION)


def _words(value: Any) -> str:
    if value is None:
        return "none"
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, float):
        return f"{value:.6g}"
    if isinstance(value, Mapping):
        return "\n".join(f"{name.replace('_', ' ')}: {_words(one)}" for name, one in value.items() if one is not None)
    if isinstance(value, Sequence) and not isinstance(value, str):
        return "\n".join(_words(one) for one in value)
    return str(value)


def work_of(key: str) -> str:
    """Answer a work of the bibliography as one line."""
    work = BIBLIOGRAPHY[key]
    parts = (f"{work.authors} ({work.year})", work.title, work.where)
    return " ".join(part if part.endswith((".", "?")) else f"{part}." for part in parts)


def source_fields(cited: Cited) -> dict[str, str]:
    """Answer where a number comes from: the work, its kind, the place in it or the reason for it."""
    return {"source": work_of(cited.source), "source_kind": cited.kind.value, "source_note": cited.note}
