"""Brings a database to the schema of this version, at start, one process at a time."""

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from sqlalchemy import Connection, create_engine, inspect, text

from steadfoot.core.database import Database
from steadfoot.migrations import HEAD

_LOCK_KEY = 7_323_568  # any number, the same in every process that may start at once


class NewerSchema(Exception):
    """The database was written by a newer version of Steadfoot than this one."""


def revision_of(connection: Connection) -> str | None:
    """Answer the schema's revision; None for an empty database."""
    if not inspect(connection).has_table("alembic_version"):
        return None
    found = connection.execute(text("SELECT version_num FROM alembic_version")).scalar()
    return None if found is None else str(found)


def upgrade(database: Database) -> None:
    """Take the steps that are missing.

    Raises:
        NewerSchema: there is nothing this version can do with the database.
    """
    with database.reader.connect() as connection:
        found = revision_of(connection)
    if found == HEAD:
        return
    if found is not None and found > HEAD:
        raise NewerSchema(f"The database has schema {found}; this version of Steadfoot knows only {HEAD}.")
    with _locked(database) as connection:
        _run(connection)


@contextmanager
def _locked(database: Database) -> Iterator[Connection]:
    engine = create_engine(database.url)
    try:
        with engine.connect() as connection:
            if database.is_sqlite:
                # A batch migration drops and renames tables; with foreign keys on, the drop would delete the
                # children, and switching them off inside the transaction has no effect.
                connection.exec_driver_sql("PRAGMA foreign_keys=OFF")
                connection.exec_driver_sql("PRAGMA journal_mode=WAL")
                connection.commit()
                connection.connection.isolation_level = None  # type: ignore[attr-defined]
                connection.exec_driver_sql("BEGIN IMMEDIATE")
            else:
                connection.exec_driver_sql(f"SELECT pg_advisory_xact_lock({_LOCK_KEY})")
            yield connection
            if database.is_sqlite:
                _check_foreign_keys(connection)
                connection.exec_driver_sql("COMMIT")
            connection.commit()
    finally:
        engine.dispose()


def _check_foreign_keys(connection: Connection) -> None:
    broken = connection.exec_driver_sql("PRAGMA foreign_key_check").all()
    if broken:
        raise RuntimeError(
            f"The migration would have left {len(broken)} rows without their parent; nothing was changed."
        )


def _run(connection: Connection) -> None:
    from alembic import command
    from alembic.config import Config

    config = Config()
    config.set_main_option("script_location", str(Path(__file__).parent))
    config.attributes["connection"] = connection
    command.upgrade(config, "head")
