"""Transactions that the database ends by itself."""

from typing import Any

from sqlalchemy import text
from sqlmodel import Session


def interrupt(session: Session) -> None:
    """End a transaction on SQLite, as it does when a write meets a full disk, a fault of the disk, or an interrupt.

    Raises:
        OperationalError: always.
    """
    driver: Any = session.connection().connection.dbapi_connection
    driver.set_progress_handler(lambda: 1, 1)
    try:
        session.execute(text("DELETE FROM due"))
    finally:
        driver.set_progress_handler(None, 1)


def spoil(session: Session, *, on_sqlite: bool) -> None:
    """Have the database give a transaction up, on SQLite or PostgreSQL.

    Raises:
        DBAPIError: always.
    """
    if on_sqlite:
        interrupt(session)
    session.execute(text("SELECT 1 / 0"))
