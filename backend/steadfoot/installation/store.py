"""What the database says of itself."""

from pathlib import Path

from sqlalchemy import make_url, text
from sqlmodel import Session

_LOG = "-wal"


def revision(session: Session) -> str:
    """Answer the schema's revision."""
    return str(session.execute(text("SELECT version_num FROM alembic_version")).scalar_one())


def size_bytes(session: Session, url: str) -> int:
    """Answer the size of the database on its disk, without the log of what is still to be written into it."""
    if make_url(url).get_backend_name() == "sqlite":
        return _file_bytes(make_url(url).database)
    return int(session.execute(text("SELECT pg_database_size(current_database())")).scalar_one())


def log_bytes(url: str) -> int | None:
    """Answer the size of SQLite's write-ahead log; None for PostgreSQL, which looks after its own."""
    if make_url(url).get_backend_name() != "sqlite":
        return None
    database = make_url(url).database
    return _file_bytes(database + _LOG if database else None)


def _file_bytes(path: str | None) -> int:
    file = Path(path or "")
    return file.stat().st_size if path and file.is_file() else 0
