"""Writes many rows by the driver's own call: made into dictionaries first, a row costs as much again as it costs the
database."""

from collections.abc import Callable, Sequence
from typing import Any

from sqlalchemy import Connection, Dialect
from sqlmodel import SQLModel

Row = tuple[Any, ...]


def _as_it_is(value: Any) -> Any:
    return value


class Bulk:
    """Statements on some columns of a table, in the database's own dialect; rows are tuples in that order."""

    def __init__(self, table: type[SQLModel], columns: Sequence[str], dialect: Dialect) -> None:
        self._table = table.__table__  # type: ignore[attr-defined]
        self._dialect = dialect
        mark = "?" if dialect.paramstyle == "qmark" else "%s"
        marks = ", ".join(mark for _ in columns)
        self._insert = f"INSERT INTO {self._table.name} ({', '.join(columns)}) VALUES ({marks})"  # noqa: S608
        values = ", ".join(f"{name} = {mark}" for name in columns[:-1])
        self._update = f"UPDATE {self._table.name} SET {values} WHERE {columns[-1]} = {mark}"  # noqa: S608

    def converter(self, column: str) -> Callable[[Any], Any]:
        """Answer what makes a column's values ready for the driver."""
        kind = self._table.c[column].type.dialect_impl(self._dialect)
        return kind.bind_processor(self._dialect) or _as_it_is

    def insert(self, connection: Connection, rows: Sequence[Row]) -> None:
        """Insert rows.

        Raises:
            IntegrityError: a key is there already, or a parent is not.
        """
        _run(connection, self._insert, rows)

    def update(self, connection: Connection, rows: Sequence[Row]) -> None:
        """Set all columns but the last of the rows that the last one names."""
        _run(connection, self._update, rows)


def _run(connection: Connection, statement: str, rows: Sequence[Row]) -> None:
    if rows:
        connection.exec_driver_sql(statement, list(rows))
