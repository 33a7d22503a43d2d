"""Erasing one person: every row, the phones' keys, and the traces in the database's files."""

import logging
import sqlite3
from collections.abc import Callable
from contextlib import closing
from datetime import datetime
from pathlib import Path

from sqlalchemy import delete, make_url
from sqlmodel import Session

from steadfoot.core.database import Database
from steadfoot.custody import ledger, person, store
from steadfoot.custody.tables import ErasedPerson
from steadfoot.identity import service as identity

_log = logging.getLogger(__name__)
_WAIT_S = 5


def erase(session: Session, path: Path, practice_id: str, client_id: str, now: datetime) -> None:
    """Delete a person's rows in the session's transaction, and write the ledger first.

    The ledger's line stands before the commit: were it the other way round, a crash between the two would leave an
    erasure that a backup undoes. A line whose commit never came is carried out at the next start.
    """
    phones = tuple(identity.phone_digests(session, practice_id, client_id))
    ledger.append(path, ledger.Entry(practice_id, client_id, phones, now))
    _delete(session, ledger.Entry(practice_id, client_id, phones, now))


def _delete(session: Session, entry: ledger.Entry) -> None:
    known = identity.phone_digests(session, entry.practice_id, entry.subject_id)
    for table in reversed(person.tables()):
        if table.name not in person.KEPT:
            session.execute(delete(table).where(person.belongs(table, entry.practice_id, entry.subject_id)))
    session.expire_all()
    identity.remember_erased_phones(session, entry.practice_id, {*entry.phones, *known}, entry.erased_at)
    if store.erased(session, entry.practice_id, entry.subject_id) is None:
        row = ErasedPerson(subject_id=entry.subject_id, practice_id=entry.practice_id, erased_at=entry.erased_at)
        session.add(row)
    session.flush()


def apply_again(database: Database, path: Path) -> int:
    """Carry out what the ledger says and the database does not know, as after a restore; answer how many."""
    done = 0
    for entry in ledger.entries(path):
        with database.read() as session:
            is_there = store.practice_is_there(session, entry.practice_id)
            is_done = store.erased(session, entry.practice_id, entry.subject_id) is not None
        if is_there and not is_done:
            with database.write() as session:
                _delete(session, entry)
            done += 1
    if done:
        wipe(database)()
    return done


def wipe(database: Database) -> Callable[[], None]:
    """Answer what clears the traces that deleted rows leave in the database's files; to be called after the commit."""
    return (lambda: _wipe_sqlite(database)) if database.is_sqlite else (lambda: _vacuum(database))


def _wipe_sqlite(database: Database) -> None:
    """Rewrite the file, since moved cells leave copies in a page that ``secure_delete`` never sees; empty the log."""
    file = make_url(database.url).database
    if not file:
        return
    try:
        with closing(sqlite3.connect(file, timeout=_WAIT_S, isolation_level=None)) as connection:
            connection.execute("PRAGMA secure_delete=ON")
            connection.execute("VACUUM")
            is_busy = connection.execute("PRAGMA wal_checkpoint(TRUNCATE)").fetchone()[0]
    except sqlite3.OperationalError:
        is_busy = True
    if is_busy:
        _log.warning("Traces of an erased record are left in the file until the next night: the database was in use.")


def _vacuum(database: Database) -> None:
    with database.writer.connect().execution_options(isolation_level="AUTOCOMMIT") as connection:
        for table in person.tables():
            if table.name not in person.KEPT:
                connection.exec_driver_sql(f'VACUUM (FULL) "{table.name}"')
