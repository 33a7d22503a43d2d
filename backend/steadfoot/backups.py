"""The backup that is made by itself: copied, restored once and counted, packed if wished, rotated, and told of."""

import os
import shlex
import shutil
import sqlite3
import subprocess
from collections.abc import Iterator
from contextlib import closing, contextmanager
from datetime import datetime
from pathlib import Path
from tempfile import TemporaryDirectory

from steadfoot.core.clock import Clock
from steadfoot.core.database import Database
from steadfoot.core.settings import Settings
from steadfoot.installation import record, rotation
from steadfoot.installation.record import BackupRecord
from steadfoot.operations import NotPossible, checked, restore, sqlite_path
from steadfoot.schema import METADATA

_ROOM = 3
"""The copy, its rehearsal and what is packed of it lie side by side for a while."""
_PLAIN = b"SQLite format 3\x00"
_MAKING = ".making"
_EPOCH = "server_epoch"
"""The one row that a restore writes: a database in which no practice is founded yet has none."""


def make(settings: Settings, clock: Clock, days: int = rotation.DAYS, months: int = rotation.MONTHS) -> BackupRecord:
    """Make one backup in the folder of backups and answer what is recorded of it.

    Raises:
        NotPossible: why there is none; that is recorded too.
    """
    folder, at = settings.backups(), clock()
    try:
        folder.mkdir(parents=True, exist_ok=True, mode=0o700)
        with _alone(folder), TemporaryDirectory(prefix=_MAKING, dir=folder) as work:
            file = _made(settings, Path(work), at, clock)
            size = file.stat().st_size
            done = BackupRecord(at, True, file.name, size, clock(), "")
            _keep(file, folder)
    except (NotPossible, OSError, sqlite3.Error) as error:
        problem = str(error) if isinstance(error, NotPossible) else f"{type(error).__name__}: {error}"
        if folder.is_dir():
            record.write(folder, BackupRecord(at, False, "", 0, None, problem))
        raise NotPossible(problem) from error
    record.write(folder, done)
    for name in rotation.superseded(os.listdir(folder), days, months):
        (folder / name).unlink()
    return done


@contextmanager
def _alone(folder: Path) -> Iterator[None]:
    """Two at once would count each other's half-made files as room that is taken."""
    lock = sqlite3.connect(folder / ".lock", timeout=0, isolation_level=None)
    with closing(lock):
        try:
            lock.execute("BEGIN EXCLUSIVE")
        except sqlite3.OperationalError:
            raise NotPossible("Another backup is being made.") from None
        yield


def _made(settings: Settings, work: Path, at: datetime, clock: Clock) -> Path:
    source = sqlite_path(settings)
    if not source.is_file():
        raise NotPossible(f"There is no database at {source} yet.")
    _insist_on_room(source, work)
    copy = work / rotation.name_of(at)
    counted = _copied_and_counted(source, copy)
    _rehearse(settings, copy, counted, clock)
    return _packed(copy, settings.backup_encrypt) if settings.backup_encrypt else copy


def _insist_on_room(source: Path, work: Path) -> None:
    needed, free = _ROOM * source.stat().st_size, shutil.disk_usage(work).free
    if free < needed:
        raise NotPossible(f"The backup needs {needed:,} bytes for a while and {free:,} are free in {work.parent}.")


def _counts(connection: sqlite3.Connection) -> dict[str, int]:
    found = connection.execute("SELECT name FROM sqlite_master WHERE type = 'table' ORDER BY name")
    names = [name for (name,) in found if not name.startswith("sqlite_")]
    return {name: connection.execute(f'SELECT count(*) FROM "{name}"').fetchone()[0] for name in names}  # noqa: S608


def _copied_and_counted(source: Path, copy: Path) -> dict[str, int]:
    """Copy and count in one read transaction: both see the same rows, whatever is written meanwhile."""
    copy.touch(mode=0o600)
    with (
        closing(sqlite3.connect(source, isolation_level=None)) as live,
        closing(sqlite3.connect(copy, isolation_level=None)) as fresh,
    ):
        live.execute("BEGIN")
        counted = _counts(live)
        live.backup(fresh)
        live.execute("COMMIT")
        fresh.execute("PRAGMA journal_mode=DELETE")  # one file, without a log beside it
    return counted


def _rehearse(settings: Settings, copy: Path, counted: dict[str, int], clock: Clock) -> None:
    """Restore the copy beside the others, as an owner would after a fire, and read every table of it."""
    checked(copy)
    with TemporaryDirectory(dir=copy.parent) as place:
        elsewhere = {"data_dir": Path(place), "database_url": "", "erasures_file": None, "key_file": None}
        there = settings.model_copy(update=elsewhere)
        restore(there, copy, clock())
        with closing(sqlite3.connect(sqlite_path(there))) as restored:
            found = _counts(restored)
        if found != {**counted, _EPOCH: 1}:
            raise NotPossible("The restored copy has other numbers of rows than the database.")
        _read_with_the_app(there)


def _read_with_the_app(settings: Settings) -> None:
    database = Database(settings.database())
    try:
        with database.read() as session:
            for table in METADATA.sorted_tables:
                session.execute(table.select().limit(1)).all()
    finally:
        database.close()


def _packed(copy: Path, command: str) -> Path:
    """Send the copy through the owner's command; only what came out is kept. The key to open it need not be here."""
    packed = copy.with_name(copy.name + ".enc")
    with copy.open("rb") as plain, packed.open("xb") as out:
        packed.chmod(0o600)
        done = subprocess.run(shlex.split(command), stdin=plain, stdout=out, stderr=subprocess.PIPE, check=False)  # noqa: S603
    if done.returncode:
        said = done.stderr.decode(errors="replace").strip().partition("\n")[0]
        raise NotPossible(f"STEADFOOT_BACKUP_ENCRYPT ended with {done.returncode}: {said}")
    with packed.open("rb") as written:
        begins = written.read(len(_PLAIN))
    if len(begins) < len(_PLAIN) or begins == _PLAIN:
        raise NotPossible("STEADFOOT_BACKUP_ENCRYPT wrote nothing, or what it was given.")
    return packed


def _keep(file: Path, folder: Path) -> None:
    """Have it on the disk before it has its name: a name promises a whole backup."""
    for path in (file, folder):
        handle = os.open(path, os.O_RDONLY)
        os.fsync(handle)
        os.close(handle)
    file.replace(folder / file.name)
