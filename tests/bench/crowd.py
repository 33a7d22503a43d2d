"""Fills a SQLite file with other practices: copies of one practice's every row, under ids and names of their own."""

import sqlite3
from collections.abc import Iterator
from contextlib import closing
from pathlib import Path

from sqlalchemy import Column, String, Table, UniqueConstraint
from sqlmodel import AutoString

from steadfoot.schema import METADATA


def _is_text(column: Column) -> bool:
    return isinstance(column.type, String | AutoString)


def _is_id(column: Column) -> bool:
    return _is_text(column) and bool(column.primary_key or column.foreign_keys)


def _named_once(table: Table) -> set[str]:
    """Columns of text that no two rows of the whole table share."""
    found = {c.name for index in table.indexes if index.unique for c in index.columns}
    found |= {c.name for rule in table.constraints if isinstance(rule, UniqueConstraint) for c in rule.columns}
    return {name for name in found if _is_text(table.c[name])}


def _told_apart(table: Table, copy: int) -> Iterator[str]:
    once = _named_once(table)
    for column in table.columns:
        own = _is_id(column) or column.name in once
        yield f"\"{column.name}\" || '~{copy}'" if own else f'"{column.name}"'


def copy_all(file: Path, copies: int) -> int:
    """Copy what is there so many times; answer how many rows there are then."""
    tables = [table for table in METADATA.sorted_tables if "practice_id" in table.c or table.name == "practice"]
    with closing(sqlite3.connect(file, isolation_level=None)) as held:
        held.execute("PRAGMA synchronous=OFF")
        for table in tables:
            held.execute(f'CREATE TEMP TABLE "first_{table.name}" AS SELECT * FROM "{table.name}"')
        for copy in range(1, copies + 1):
            held.execute("BEGIN")
            for table in tables:
                what = ", ".join(_told_apart(table, copy))
                names = ", ".join(f'"{column.name}"' for column in table.columns)
                held.execute(f'INSERT INTO "{table.name}" ({names}) SELECT {what} FROM "first_{table.name}"')
            held.execute("COMMIT")
        return sum(held.execute(f'SELECT count(*) FROM "{table.name}"').fetchone()[0] for table in tables)
