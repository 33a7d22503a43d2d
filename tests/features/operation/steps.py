"""What each schema step changes, read from SQLite itself: a step may add, and what it narrows has a reason."""

from collections.abc import Iterator
from dataclasses import dataclass, field
from itertools import pairwise
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, Inspector, create_engine, inspect

from steadfoot.migrations import upgrade as steps


@dataclass(frozen=True)
class Shape:
    """A table: its columns, and what its rows must satisfy."""

    columns: dict[str, dict[str, Any]]
    rules: set[str]


@dataclass(frozen=True)
class Schema:
    """All tables after a step."""

    revision: str
    tables: dict[str, Shape] = field(default_factory=dict)


def schemas() -> list[tuple[Schema, Schema]]:
    """Answer what was and what is, step by step."""
    return list(pairwise(_walk()))


def _walk() -> Iterator[Schema]:
    from alembic.migration import MigrationContext
    from alembic.operations import Operations
    from alembic.script import ScriptDirectory

    script = ScriptDirectory(str(Path(steps.__file__).parent))
    with (
        create_engine("sqlite://").connect() as connection,
        Operations.context(MigrationContext.configure(connection, opts={"render_as_batch": True})),
    ):
        for step in reversed(list(script.walk_revisions())):
            step.module.upgrade()
            yield Schema(step.revision, _shapes(connection))


def _shapes(connection: Connection) -> dict[str, Shape]:
    seen = inspect(connection)
    return {
        name: Shape({c["name"]: dict(c) for c in seen.get_columns(name)}, _rules(seen, name)) for name in _names(seen)
    }


def _names(seen: Inspector) -> list[str]:
    return [name for name in seen.get_table_names() if name != "alembic_version"]


def _rules(seen: Inspector, table: str) -> set[str]:
    unique = {f"unique {one['column_names']}" for one in seen.get_unique_constraints(table)}
    unique |= {f"unique {one['column_names']}" for one in seen.get_indexes(table) if one["unique"]}
    checks = {f"check {one['sqltext']}" for one in seen.get_check_constraints(table)}
    return unique | checks | {f"key {one['constrained_columns']}" for one in seen.get_foreign_keys(table)}


def narrowed(before: Schema, after: Schema) -> Iterator[str]:
    """Say what a program written for ``before`` would miss in ``after``, or could no longer write there."""
    for table, was in before.tables.items():
        now = after.tables.get(table)
        if now is None:
            yield f"{after.revision} {table}: gone"
            continue
        for line in (*_columns(was, now), *(f"new rule: {rule}" for rule in sorted(now.rules - was.rules))):
            yield f"{after.revision} {table}: {line}"


def _columns(was: Shape, now: Shape) -> Iterator[str]:
    for name, column in was.columns.items():
        if name not in now.columns:
            yield f"{name} is gone"
        elif str(now.columns[name]["type"]) != str(column["type"]):
            yield f"{name} has another type"
        elif column["nullable"] and not now.columns[name]["nullable"]:
            yield f"{name} must be given"
    for name in sorted(set(now.columns) - set(was.columns)):
        if not now.columns[name]["nullable"] and now.columns[name]["default"] is None:
            yield f"{name} is new and must be given"
