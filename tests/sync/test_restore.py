"""Backup and restore through the command line: phones that are ahead send the rest, and nothing else is harmed."""

import sqlite3
from contextlib import closing
from pathlib import Path

import httpx
import pytest

from steadfoot.core.database import Database
from steadfoot.custody.erase import erase, wipe
from steadfoot.identity.tables import Client
from tests.builders import API
from tests.conftest import START
from tests.sync.commands import command
from tests.sync.laboratory import Laboratory
from tests.sync.server import Sender, running

pytestmark = pytest.mark.server


def _log(laboratory: Laboratory, phone: int, count: int) -> None:
    for number in range(count):
        laboratory.phones[phone].log("note_written", {"text": f"{phone}-{number}"})


def _texts(file: Path) -> list[str]:
    with closing(sqlite3.connect(file)) as connection:
        return sorted(found for (found,) in connection.execute("SELECT body FROM event"))


def test_after_an_older_backup_is_restored_phones_send_the_rest_without_anyone_noticing(
    on_file: Laboratory, tmp_path: Path
) -> None:
    file, copy = tmp_path / "steadfoot.db", tmp_path / "copy.db"
    _log(on_file, 0, 10)
    _log(on_file, 1, 4)
    sender = Sender(on_file.phones[0].token, on_file.phones[0].events)
    other = Sender(on_file.phones[1].token, on_file.phones[1].events)
    with running(tmp_path) as server, httpx.Client(timeout=20) as http:
        first = sender.send(server.address, sender.events[:4], http)
        done = command(tmp_path, "backup", str(copy))
        assert done.returncode == 0, done.stderr
        ahead = sender.send(server.address, sender.events[4:], http)
        refused = command(tmp_path, "restore", str(copy))
        assert refused.returncode == 1
        assert "A server is running on this database; stop it first." in refused.stderr
        server.stop()
        assert first is not None
        assert ahead is not None
        assert ahead["acknowledged_through"] == 10
        stays = command(tmp_path, "restore", str(copy))
        assert stays.returncode == 1
        assert "is there already and stays" in stays.stderr.replace("\n", " ")
        restored = command(tmp_path, "restore", str(copy), "--replace")
        assert restored.returncode == 0, restored.stderr
        assert len(_texts(file)) == 4
        (kept,) = tmp_path.glob("steadfoot.db.before-*")
        assert len(_texts(kept)) == 10, "what was there is not thrown away"
        server.start()
        assert other.send(server.address, other.events, http) is not None
        answer = sender.send(server.address, [], http)
        assert answer is not None
        assert answer["server_epoch"] != ahead["server_epoch"] == first["server_epoch"]
        assert answer["acknowledged_through"] == 4
        rest = sender.send(server.address, sender.events[answer["acknowledged_through"] :], http)
        assert rest is not None
        assert rest["acknowledged_through"] == 10
        beyond = http.post(
            f"{server.address}{API}/sync", json={"cursor": 99}, headers={"Authorization": f"Bearer {sender.token}"}
        ).json()
        assert [change["number"] for change in beyond["changes"]] == list(range(1, beyond["cursor"] + 1))
    assert len(_texts(file)) == 14
    with closing(sqlite3.connect(file)) as connection:
        assert connection.execute("PRAGMA integrity_check").fetchall() == [("ok",)]


def test_a_backup_beside_a_running_server_has_what_was_acknowledged_a_moment_before(
    on_file: Laboratory, tmp_path: Path
) -> None:
    _log(on_file, 0, 50)
    sender, copy = Sender(on_file.phones[0].token, on_file.phones[0].events), tmp_path / "copy.db"
    with running(tmp_path) as server, httpx.Client(timeout=20) as http:
        assert sender.send(server.address, sender.events, http) is not None
        assert command(tmp_path, "backup", str(copy)).returncode == 0
    assert len(_texts(copy)) == 50
    assert copy.stat().st_mode & 0o077 == 0, "a record of health is for its owner only"


def test_a_backup_never_overwrites_and_says_where_it_cannot_write(on_file: Laboratory, tmp_path: Path) -> None:
    there = tmp_path / "there.db"
    there.write_text("something of the owner's")
    for target, words in ((there, "a backup never overwrites"), (tmp_path / "no" / "folder.db", "folder")):
        done = command(tmp_path, "backup", str(target))
        assert (done.returncode, "Traceback" in done.stderr) == (1, False), done.stderr
        assert words in done.stderr
    assert there.read_text() == "something of the owner's"


def test_what_is_no_whole_backup_is_refused_and_the_database_stays(on_file: Laboratory, tmp_path: Path) -> None:
    copy, before = tmp_path / "copy.db", (tmp_path / "steadfoot.db").read_bytes()
    assert command(tmp_path, "backup", str(copy)).returncode == 0
    whole = copy.read_bytes()
    damaged = {
        "cut.db": whole[: len(whole) // 2],
        "scribbled.db": whole[:5000] + b"\xff" * 8000 + whole[13000:],
        "text.db": b"not a database at all",
        "empty.db": b"",
    }
    for name, content in damaged.items():
        (tmp_path / name).write_bytes(content)
    with closing(sqlite3.connect(tmp_path / "foreign.db")) as connection:
        connection.execute("CREATE TABLE other (x)")
    with closing(sqlite3.connect(tmp_path / "newer.db")) as connection:
        connection.deserialize(whole)
        connection.execute("UPDATE alembic_version SET version_num = '9999'")
        connection.commit()
        (tmp_path / "newer.db").write_bytes(connection.serialize())
    for name in (*damaged, "foreign.db", "newer.db", "missing.db"):
        done = command(tmp_path, "restore", str(tmp_path / name))
        assert (done.returncode, "Traceback" in done.stderr) == (1, False), (name, done.stderr)
        assert name == "newer.db" or str(tmp_path / name) in done.stderr.replace("\n", "")
    assert "9999" in command(tmp_path, "restore", str(tmp_path / "newer.db")).stderr
    assert (tmp_path / "steadfoot.db").read_bytes() == before


def test_a_backup_is_put_in_the_place_of_a_database_that_is_damaged_or_gone(
    on_file: Laboratory, tmp_path: Path
) -> None:
    file, copy = tmp_path / "steadfoot.db", tmp_path / "copy.db"
    assert command(tmp_path, "backup", str(copy)).returncode == 0
    for harm in (lambda: file.write_bytes(b"damaged " * 1000), file.unlink):
        harm()
        done = command(tmp_path, "restore", str(copy), "--replace")
        assert done.returncode == 0, done.stderr
        with closing(sqlite3.connect(file)) as connection:
            assert connection.execute("SELECT count(*) FROM client").fetchone() == (1,)


def test_a_person_erased_after_the_backup_stays_erased_and_a_phone_that_is_ahead_does_not_bring_them_back(
    on_file: Laboratory, tmp_path: Path
) -> None:
    file, copy = tmp_path / "steadfoot.db", tmp_path / "copy.db"
    _log(on_file, 0, 8)
    sender, client_id = Sender(on_file.phones[0].token, on_file.phones[0].events), on_file.client_id
    with running(tmp_path) as server, httpx.Client(timeout=20) as http:
        assert sender.send(server.address, sender.events[:4], http) is not None
        assert command(tmp_path, "backup", str(copy)).returncode == 0
        assert sender.send(server.address, sender.events[4:], http) is not None
        server.stop()
        _erase_by_hand(tmp_path, client_id)
        assert b"0-7" in copy.read_bytes() or b"0-3" in copy.read_bytes()
        restored = command(tmp_path, "restore", str(copy), "--replace")
        assert restored.returncode == 0, restored.stderr
        server.start()
        answer = http.post(
            f"{server.address}{API}/sync",
            json={"cursor": 0, "events": sender.events},
            headers={"Authorization": f"Bearer {sender.token}"},
        )
        assert (answer.status_code, answer.json()["code"]) == (401, "record-erased")
    with closing(sqlite3.connect(file)) as connection:
        assert connection.execute("SELECT count(*) FROM client WHERE id = ?", (client_id,)).fetchone() == (0,)
        assert connection.execute("SELECT count(*) FROM event").fetchone() == (0,)


def _erase_by_hand(folder: Path, client_id: str) -> None:
    database = Database(f"sqlite:///{folder / 'steadfoot.db'}")
    with database.write() as session:
        found = session.get(Client, client_id)
        assert found is not None
        erase(session, folder / "erasures.jsonl", found.practice_id, client_id, START)
    wipe(database)()
    database.close()
    assert b"note_written" not in (folder / "steadfoot.db").read_bytes()
