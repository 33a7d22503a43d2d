"""Asks for and writes many rows in the driver's own words: what is worded anew at each call, or made into dictionaries
first, costs several times what it costs the database."""

from collections.abc import Callable, Sequence
from datetime import UTC, date, datetime
from functools import lru_cache
from typing import Any

from sqlalchemy import ColumnElement, Connection, Dialect, Select, literal_column
from sqlalchemy.orm import Mapped
from sqlmodel import SQLModel

Row = tuple[Any, ...]
_KEYS = "__keys__"


def _mark(dialect: Dialect) -> str:
    return "?" if dialect.paramstyle == "qmark" else "%s"


def _as_it_is(value: Any) -> Any:
    return value


def _time(value: datetime) -> str:
    at = value.astimezone(UTC)
    fields = (at.year, at.month, at.day, at.hour, at.minute, at.second, at.microsecond)
    return "%04d-%02d-%02d %02d:%02d:%02d.%06d" % fields  # noqa: UP031  half the time of every other way


_ON_SQLITE: dict[type, Callable[[Any], str]] = {datetime: _time, date: date.isoformat}
"""The texts that SQLAlchemy stores there, at a third of the time that it takes for them."""


class Bulk:
    """Statements on some columns of a table, in the database's own dialect; rows are tuples in that order."""

    def __init__(self, table: type[SQLModel], columns: Sequence[str], dialect: Dialect) -> None:
        self._table = table.__table__  # type: ignore[attr-defined]
        self._dialect = dialect
        mark = _mark(dialect)
        marks = ", ".join(mark for _ in columns)
        self._insert = f"INSERT INTO {self._table.name} ({', '.join(columns)}) VALUES ({marks})"  # noqa: S608
        values = ", ".join(f"{name} = {mark}" for name in columns[:-1])
        self._update = f"UPDATE {self._table.name} SET {values} WHERE {columns[-1]} = {mark}"  # noqa: S608

    def converter(self, column: str) -> Callable[[Any], Any]:
        """Answer what makes a column's values ready for the driver; times are aware."""
        kind = self._table.c[column].type
        if self._dialect.name == "sqlite" and kind.python_type in _ON_SQLITE:
            return _ON_SQLITE[kind.python_type]
        return kind.dialect_impl(self._dialect).bind_processor(self._dialect) or _as_it_is

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


@lru_cache(maxsize=64)
def _around_keys(query: Select[Any], key: ColumnElement[str] | Mapped[str], dialect: Dialect) -> list[str]:
    """Answer a query's text before and after its keys: wording it takes longer than all else that makes an app."""
    return str(query.where(key.in_([literal_column(_KEYS)])).compile(dialect=dialect)).split(_KEYS)


class Asking:
    """A query for what belongs to any of some keys; its values come as the driver has them."""

    def __init__(self, query: Select[Any], key: ColumnElement[str] | Mapped[str], dialect: Dialect) -> None:
        """``query`` has no values of its own; ``key`` is the column that the keys are looked for in."""
        self._mark = _mark(dialect)
        self._before, self._after = _around_keys(query, key, dialect)

    def rows(self, connection: Connection, keys: Sequence[str]) -> Sequence[Any]:
        """Answer the rows of these keys, of which there is at least one."""
        marks = ", ".join([self._mark] * len(keys))
        return connection.exec_driver_sql(f"{self._before}{marks}{self._after}", tuple(keys)).all()
