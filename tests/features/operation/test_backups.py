"""The backup that is made by itself: whole, tried, packed if wished, rotated; and loud when there is none."""

import sqlite3
from contextlib import closing
from datetime import UTC, date, datetime, time, timedelta
from pathlib import Path
from types import SimpleNamespace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from steadfoot import backups
from steadfoot.core.settings import Settings
from steadfoot.installation import record
from steadfoot.installation.nightly import due_at, nightly
from steadfoot.installation.rotation import name_of, superseded
from steadfoot.operations import NotPossible, restore
from steadfoot.serving import open_database
from tests.builders import House
from tests.conftest import START, StandingClock

pytestmark = pytest.mark.usefixtures("on_a_file")
NIGHT = time(2, 30)


@pytest.fixture
def on_a_file(server_url: str | None) -> None:
    """What is copied here is SQLite's file; PostgreSQL has a drill of its own."""
    if server_url is not None:
        pytest.skip("the backup of PostgreSQL is deploy/postgresql/backup.sh")


@pytest.fixture
def settings(house: House, tmp_path: Path) -> Settings:
    return Settings(data_dir=tmp_path)


def _files(settings: Settings) -> list[str]:
    return sorted(path.name for path in settings.backups().glob("steadfoot-*"))


def test_a_backup_is_made_beside_the_open_database_tried_and_told_of(
    house: House, settings: Settings, clock: StandingClock
) -> None:
    house.new_client("Emil")
    made = backups.make(settings, clock)
    assert _files(settings) == ["steadfoot-2026-06-10T080000Z.db"]
    assert made == record.read(settings.backups()) == record.read(settings.backups(), record.LAST_GOOD)
    assert (made.ok, made.verified_at, made.problem) == (True, START, "")
    file = settings.backups() / made.file
    assert file.stat().st_mode & 0o077 == 0, "a record of health is for its owner only"
    assert settings.backups().stat().st_mode & 0o077 == 0
    with closing(sqlite3.connect(file)) as copy:
        assert copy.execute("SELECT display_name FROM client").fetchall() == [("Emil",)]
    left = {path.name for path in settings.backups().iterdir()} - {made.file, record.LAST, record.LAST_GOOD, ".lock"}
    assert left == set(), "what was needed on the way is gone"


def test_what_is_written_during_the_copy_is_in_it_whole_or_not_at_all(
    house: House, settings: Settings, clock: StandingClock, monkeypatch: pytest.MonkeyPatch
) -> None:
    counted = backups._counts

    def and_then_somebody_writes(connection: sqlite3.Connection) -> dict[str, int]:
        found = counted(connection)
        if not house.get("/clients")["items"]:
            house.new_client("Meanwhile")
        return found

    monkeypatch.setattr(backups, "_counts", and_then_somebody_writes)
    made = backups.make(settings, clock)
    with closing(sqlite3.connect(settings.backups() / made.file)) as copy:
        assert copy.execute("SELECT count(*) FROM client").fetchone() == (0,)
    assert len(house.get("/clients")["items"]) == 1


def test_a_copy_that_cannot_be_restored_whole_is_no_backup(
    house: House, settings: Settings, clock: StandingClock, monkeypatch: pytest.MonkeyPatch
) -> None:
    whole = backups._copied_and_counted

    def one_row_short(source: Path, copy: Path) -> dict[str, int]:
        counted = whole(source, copy)
        with closing(sqlite3.connect(copy)) as held:
            held.execute("DELETE FROM practitioner")
            held.commit()
        return counted

    good = backups.make(settings, clock)
    clock.forward(days=1)
    monkeypatch.setattr(backups, "_copied_and_counted", one_row_short)
    with pytest.raises(NotPossible, match="other numbers of rows"):
        backups.make(settings, clock)
    assert _files(settings) == [good.file]
    failed = record.read(settings.backups())
    assert failed is not None
    assert (failed.ok, failed.at, failed.verified_at) == (False, clock(), None)
    assert record.read(settings.backups(), record.LAST_GOOD) == good


def test_a_database_in_which_no_practice_is_founded_yet_is_backed_up_too(tmp_path: Path, clock: StandingClock) -> None:
    settings = Settings(data_dir=tmp_path / "new")
    open_database(settings).close()
    assert backups.make(settings, clock).ok


def test_a_copy_of_a_damaged_database_is_no_backup(house: House, settings: Settings, clock: StandingClock) -> None:
    house.app.state.database.close()
    file = settings.data_dir / "steadfoot.db"
    content = bytearray(file.read_bytes())
    content[8192:12288] = b"\xff" * 4096
    file.write_bytes(content)
    with pytest.raises(NotPossible):
        backups.make(settings, clock)
    assert _files(settings) == []


def test_without_room_nothing_is_begun(
    settings: Settings, clock: StandingClock, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(backups.shutil, "disk_usage", lambda _path: SimpleNamespace(free=1000))
    with pytest.raises(NotPossible, match="1,000 are free"):
        backups.make(settings, clock)


def test_two_at_once_are_refused(settings: Settings, clock: StandingClock) -> None:
    settings.backups().mkdir()
    with backups._alone(settings.backups()), pytest.raises(NotPossible, match="Another backup"):
        backups.make(settings, clock)


def test_a_packed_backup_is_only_what_the_owners_command_made_of_it(settings: Settings, clock: StandingClock) -> None:
    turned = settings.model_copy(update={"backup_encrypt": "tr '\\000-\\377' '\\001-\\377\\000'"})
    made = backups.make(turned, clock)
    assert made.file.endswith(".db.enc")
    assert _files(settings) == [made.file]
    content = (settings.backups() / made.file).read_bytes()
    assert b"SQLite" not in content
    back = settings.data_dir / "back.db"
    back.write_bytes(bytes((byte - 1) % 256 for byte in content))
    restore(Settings(data_dir=settings.data_dir / "new"), back, clock())


@pytest.mark.parametrize(
    ("command", "words"), [("false", "ended with 1"), ("cat", "what it was given"), ("true", "wrote nothing")]
)
def test_a_command_that_packs_nothing_leaves_no_backup_in_the_clear(
    settings: Settings, clock: StandingClock, command: str, words: str
) -> None:
    with pytest.raises(NotPossible, match=words):
        backups.make(settings.model_copy(update={"backup_encrypt": command}), clock)
    assert _files(settings) == []


def test_a_year_of_nights_keeps_thirty_days_and_twelve_months(settings: Settings, clock: StandingClock) -> None:
    start = datetime(2026, 1, 1, 2, 30, tzinfo=UTC)
    names: list[str] = []
    for night in range(500):
        names.append(name_of(start + timedelta(days=night)))
        gone = superseded(names)
        names = [name for name in names if name not in gone]
    newest = date(2026, 1, 1) + timedelta(days=499)
    days = {date.fromisoformat(name[10:20]) for name in names}
    assert {newest - timedelta(days=back) for back in range(30)} <= days
    assert len({day.replace(day=1) for day in days}) == 12
    assert len(names) == 30 + 12 - 2, "the days of the last month and the one before it stand for their months"


@given(st.lists(st.datetimes(datetime(2020, 1, 1), datetime(2030, 1, 1)), unique=True), st.integers(1, 40))
def test_the_newest_is_never_superseded_and_strangers_are_left_alone(times: list[datetime], days: int) -> None:
    names = sorted({name_of(at) for at in times})
    gone = superseded([*names, "mine.db", "steadfoot.db", "last-backup.json"], days, 12)
    assert set(gone) <= set(names)
    assert not names or names[-1] not in gone
    kept = [name for name in names if name not in gone]
    assert len(kept) <= days + 12
    assert superseded(kept, days, 12) == []


def test_a_night_is_due_once_a_day_and_one_that_was_slept_through_is_made_up_for() -> None:
    started = datetime(2026, 6, 10, 8, tzinfo=UTC)
    soon = started + timedelta(minutes=5)
    assert due_at(None, started, NIGHT) == soon
    assert due_at(datetime(2026, 6, 8, 2, 31, tzinfo=UTC), started, NIGHT) == soon
    assert due_at(datetime(2026, 6, 10, 2, 31, tzinfo=UTC), started, NIGHT) == datetime(2026, 6, 11, 2, 30, tzinfo=UTC)
    assert due_at(datetime(2026, 6, 10, 1, 0, tzinfo=UTC), started - timedelta(days=1), NIGHT) == datetime(
        2026, 6, 10, 2, 30, tzinfo=UTC
    )


def test_the_server_has_one_made_when_it_is_due_and_not_again(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("steadfoot.installation.nightly._LOOK_EVERY_S", 0.001)
    clock, made = StandingClock(START), []

    def make() -> None:
        made.append(clock())
        record.write(tmp_path, record.BackupRecord(clock(), True, "x", 1, clock(), ""))
        if len(made) == 2:
            backups.close()
        clock.forward(hours=18, minutes=30 if len(made) == 1 else 0)

    backups = nightly(tmp_path, NIGHT, clock, make)
    backups.start()
    clock.forward(minutes=5)
    backups.join(10)
    assert made == [START + timedelta(minutes=5), START + timedelta(minutes=5, hours=18, seconds=1800)]


def test_a_backup_that_could_not_even_be_begun_is_tried_again(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("steadfoot.installation.nightly._LOOK_EVERY_S", 0.001)
    clock, tries = StandingClock(START), []

    def make() -> None:
        tries.append(clock())
        if len(tries) == 1:
            raise OSError("no process to be had")
        backups.close()

    backups = nightly(tmp_path, NIGHT, clock, make)
    backups.start()
    clock.forward(minutes=5)
    backups.join(10)
    assert len(tries) == 2
