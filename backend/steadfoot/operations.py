"""What an owner does with a whole database: backup, restore, rebuild of derived tables."""

import sqlite3
from collections.abc import Callable
from contextlib import closing
from datetime import datetime
from pathlib import Path

from sqlalchemy import make_url
from sqlmodel import Session

from steadfoot.checkins import service as checkins
from steadfoot.core.database import Database
from steadfoot.core.settings import Settings
from steadfoot.identity import service as identity
from steadfoot.migrations import HEAD
from steadfoot.monitoring.service import refresh_findings
from steadfoot.serving import open_database


class NotPossible(Exception):
    """The operation cannot be done; the message says what to do instead."""


def sqlite_path(settings: Settings) -> Path:
    """Answer the database's file.

    Raises:
        NotPossible: it is no SQLite.
    """
    url = make_url(settings.database())
    if url.get_backend_name() != "sqlite" or not url.database:
        raise NotPossible(
            "This database is PostgreSQL: use deploy/postgresql/backup.sh, or pg_dump and pg_restore by hand."
        )
    return Path(url.database)


def checked(path: Path) -> str:
    """Answer the schema revision of a whole and readable database file.

    Raises:
        NotPossible: it is not there, damaged, or something else.
    """
    if not path.exists():
        raise NotPossible(f"There is no file {path}.")
    try:
        with closing(sqlite3.connect(f"file:{path}?mode=ro", uri=True)) as connection:
            found = connection.execute("PRAGMA integrity_check").fetchone()[0]
            revision = connection.execute("SELECT version_num FROM alembic_version").fetchone()
    except sqlite3.Error as error:
        raise NotPossible(f"{path} is not a readable Steadfoot database: {error}.") from error
    if found != "ok" or revision is None:
        raise NotPossible(f"{path} is damaged: {found}.")
    return str(revision[0])


def _copy(source: Path, target: Path) -> None:
    """Write a copy that only its owner can read: it is a record of health."""
    try:
        target.touch(mode=0o600, exist_ok=False)  # SQLite takes an empty file as its own
        with closing(sqlite3.connect(source)) as connection:
            connection.execute("VACUUM INTO ?", (str(target),))
    except OSError as error:
        raise NotPossible(f"{target} cannot be written: {error.strerror}. Is its folder there?") from error
    except sqlite3.Error as error:
        target.unlink(missing_ok=True)
        raise NotPossible(f"{source} could not be copied to {target}: {error}.") from error


def backup(settings: Settings, target: Path) -> int:
    """Write a consistent copy beside the running server and check it; answer its size in bytes.

    Copying the file would miss what is still in the write-ahead log.

    Raises:
        NotPossible: not SQLite, nothing to back up, or the target exists.
    """
    source = sqlite_path(settings)
    if not source.is_file():
        raise NotPossible(f"There is no database at {source} yet.")
    if target.exists():
        raise NotPossible(f"{target} exists already; a backup never overwrites.")
    _copy(source, target)
    checked(target)
    return target.stat().st_size


def restore(
    settings: Settings, source: Path, now: datetime, may_replace: Callable[[Path], bool] = lambda _there: True
) -> Path | None:
    """Put a backup in the place of the database and renew the server's epoch, so that phones send again.

    ``may_replace`` is asked before anything takes the place of a database that is there. That one is kept beside the
    new one until its owner deletes it; answers where, None if there was none.

    Raises:
        NotPossible: not SQLite, the backup is damaged or newer than this version, a server is running on the target,
            or its place may not be taken.
    """
    target = sqlite_path(settings)
    revision = checked(source)
    if revision > HEAD:
        raise NotPossible(f"The backup has schema {revision}; this version of Steadfoot knows only {HEAD}.")
    if target.exists():
        _refuse_if_running(target)
        if not may_replace(target):
            raise NotPossible(f"{target} is there already and stays; --replace puts the backup in its place.")
    target.parent.mkdir(parents=True, exist_ok=True, mode=0o700)
    fresh = target.with_name(target.name + ".restoring")
    fresh.unlink(missing_ok=True)
    _copy(source, fresh)
    kept = _set_aside(target, now)
    fresh.replace(target)
    renew_epoch(settings, now)
    _erase_again(settings)
    return kept


def _set_aside(target: Path, now: datetime) -> Path | None:
    kept = target.with_name(f"{target.name}.before-{now:%Y-%m-%dT%H%M%S}Z") if target.exists() else None
    if kept is not None:
        target.replace(kept)
    for leftover in ("-wal", "-shm"):
        target.with_name(target.name + leftover).unlink(missing_ok=True)
    return kept


def _refuse_if_running(target: Path) -> None:
    """A server keeps the database open in WAL mode; only without any other connection can the mode be changed."""
    with closing(sqlite3.connect(target, timeout=0)) as connection:
        try:
            mode = connection.execute("PRAGMA journal_mode=DELETE").fetchone()[0]
        except sqlite3.OperationalError:
            mode = "in use"
        except sqlite3.DatabaseError:
            return  # no server runs on what is no database; putting a backup in its place is what restore is for
    if mode != "delete":
        raise NotPossible("A server is running on this database; stop it first.")


def renew_epoch(settings: Settings, now: datetime) -> None:
    """Name another epoch: phones then compare what is held with what they have, and send again what is not."""
    database = Database(settings.database())
    with database.write() as session:
        identity.renew_epoch(session, now)
    database.close()


def _erase_again(settings: Settings) -> None:
    """Who was erased after the backup was made must not come back with it."""
    database = open_database(settings)
    database.close()


def rebuild(database: Database) -> int:
    """Make every derived row again from the facts; answer for how many clients."""
    with database.write() as session:
        clients = identity.every_client(session)
        for client in clients:
            rebuild_client(session, client.practice_id, client.id)
    return len(clients)


def rebuild_client(session: Session, practice_id: str, client_id: str) -> None:
    """Make one client's derived rows again."""
    checkins.rebuild(session, practice_id, client_id)
    session.flush()
    refresh_findings(session, practice_id, client_id)
