"""Erasing a person: no byte of them is left in the database, their phones are told, and it can be taken back."""

import sqlite3
from contextlib import closing
from pathlib import Path

import pytest
from sqlalchemy import text as sql

from steadfoot.audit import service as audit
from steadfoot.core.database import Database
from steadfoot.core.ids import digest_of
from steadfoot.core.problems import NotSignedIn
from steadfoot.custody import ledger, person, service
from steadfoot.custody.service import UNDO_DAYS
from steadfoot.identity.access import device_of
from steadfoot.schema import METADATA
from tests.builders import API, PASSWORD, House
from tests.conftest import StandingClock
from tests.features.audit.rows import rows as log_rows
from tests.features.custody.marked import MARKER, marked_person

NAME = f"Emil {MARKER}"


def _erase(house: House, client_id: str, when: str = "now", name: str = NAME, status: int = 201) -> dict[str, object]:
    answer: dict[str, object] = house.post(f"/clients/{client_id}/erasure", {"name": name, "when": when}, status=status)
    return answer


def _left(database: Database, client_id: str) -> dict[str, int]:
    """How many rows of any table still hold the person's id or a marker."""
    found = {}
    with database.reader.connect() as connection:
        for table in METADATA.tables.values():
            rows = connection.execute(sql(f'SELECT * FROM "{table.name}"')).all()
            count = sum(client_id in repr(row) or MARKER in repr(row) for row in rows)
            if count:
                found[table.name] = count
    return found


def _bytes(folder: Path) -> bytes:
    return b"".join(path.read_bytes() for path in sorted(folder.glob("steadfoot.db*")))


def test_every_row_goes_but_the_log_and_the_mark_that_keeps_it_away(house: House, database: Database) -> None:
    client_id, _ = marked_person(house)
    other = house.new_client("Ida Falk")
    before = _left(database, client_id)
    assert set(before) >= set(person.LINKED) - {"progression_decision", "erasure", "receipt", "due"}
    assert _erase(house, client_id) == {"erased": True, "asked": None}
    assert set(_left(database, client_id)) == {"audit_entry", "erased_person"}
    house.get(f"/clients/{client_id}", status=404)
    house.get(f"/clients/{other}")
    last = [row for row in log_rows(database, house.practice_id) if row["action"] == "eraseClient"]
    assert [(row["subject_id"], row["actor_id"]) for row in last] == [(client_id, house.practitioner_id)]
    with database.read() as session:
        assert audit.verify(session, house.practice_id).broken_at is None


def test_no_byte_of_the_person_is_left_in_the_files_of_an_sqlite_database(
    house: House, database: Database, tmp_path: Path
) -> None:
    if not database.is_sqlite:
        pytest.skip("PostgreSQL's files are its own; VACUUM FULL rewrites the tables")
    client_id, _ = marked_person(house, entries=400)
    for _ in range(3):  # rows that move: pages split, and what moved leaves copies
        house.http.patch(f"{API}/clients/{client_id}", json={"note": MARKER + "y" * 3000})
        house.http.patch(f"{API}/clients/{client_id}", json={"note": MARKER})
    assert _bytes(tmp_path).count(MARKER.encode()) > 400
    _erase(house, client_id)
    assert MARKER.encode() not in _bytes(tmp_path)
    written = [path for path in tmp_path.rglob("*") if path.is_file() and MARKER.encode() in path.read_bytes()]
    assert written == [], "neither in drawings, sheets or the ledger"


def test_the_name_must_be_typed_as_it_stands(house: House) -> None:
    client_id, _ = marked_person(house, entries=1)
    for wrong in ("", "Emil", "Ida Falk"):
        answer = house.http.post(f"{API}/clients/{client_id}/erasure", json={"name": wrong, "when": "now"})
        assert (answer.status_code, answer.json()["code"]) == (422, "name-differs")
    house.get(f"/clients/{client_id}")
    assert _erase(house, client_id, name=f"  emil   {MARKER.upper()} ")["erased"] is True


def test_what_goes_is_said_in_numbers_first(house: House) -> None:
    client_id, _ = marked_person(house, entries=5)
    found = house.get(f"/clients/{client_id}/erasure")
    assert (found["entries"], found["programs"], found["phones"], found["undo_days"]) == (8, 1, 1, UNDO_DAYS)
    assert found["asked"] is None
    assert found["log_rows_kept"] > 10


def test_an_erasure_can_be_taken_back_for_two_weeks_and_is_done_after_them(
    house: House, database: Database, clock: StandingClock, tmp_path: Path
) -> None:
    client_id, phone = marked_person(house, entries=1)
    file = tmp_path / "erasures.jsonl"
    asked = _erase(house, client_id, "later")
    assert asked["erased"] is False
    assert house.get(f"/clients/{client_id}")["archived_at"] is not None
    assert [row["client_id"] for row in house.get("/retention")["erasures"]] == [client_id]
    assert (
        house.http.post(f"{API}/clients/{client_id}/erasure", json={"name": NAME, "when": "later"}).status_code == 409
    )
    assert phone.sync()["refused"] == [], "until then nothing is lost, and the phone is heard"
    assert house.http.delete(f"{API}/clients/{client_id}/erasure").status_code == 204
    assert house.get(f"/clients/{client_id}")["archived_at"] is None
    assert house.http.delete(f"{API}/clients/{client_id}/erasure").status_code == 404
    _erase(house, client_id, "later")
    clock.forward(days=UNDO_DAYS, seconds=-1)
    assert service.carry_out_due(database, file, clock.now) == 0
    assert not file.exists()
    clock.forward(seconds=1)
    assert service.carry_out_due(database, file, clock.now) == 1
    assert service.carry_out_due(database, file, clock.now) == 0
    assert set(_left(database, client_id)) == {"audit_entry", "erased_person"}
    assert log_rows(database, house.practice_id)[-1]["actor_kind"] == "server"


def test_who_was_archived_before_stays_so_when_it_is_taken_back(house: House) -> None:
    client_id, _ = marked_person(house, entries=1)
    house.http.patch(f"{API}/clients/{client_id}", json={"archived": True})
    _erase(house, client_id, "later")
    house.http.delete(f"{API}/clients/{client_id}/erasure")
    assert house.get(f"/clients/{client_id}")["archived_at"] is not None


def test_phones_are_told_that_the_record_is_gone_and_codes_work_no_more(house: House) -> None:
    client_id, phone = marked_person(house, entries=1)
    code = house.invite(client_id)["code"]
    headers = {"Authorization": f"Bearer {phone.token}"}
    fresh = phone.http.post(f"{API}/devices/current/successors", headers=headers).json()["token"]
    _erase(house, client_id)
    for token in (phone.token, fresh):
        answer = phone.http.post(f"{API}/sync", json={"cursor": 0}, headers={"Authorization": f"Bearer {token}"})
        assert (answer.status_code, answer.json()["code"]) == (401, "record-erased")
    assert phone.http.post(f"{API}/pairings", json={"code": code}).json()["code"] == "code-not-valid"


def test_a_backup_that_was_put_back_by_hand_does_not_bring_the_person_back(
    house: House, database: Database, tmp_path: Path, clock: StandingClock
) -> None:
    if not database.is_sqlite:
        pytest.skip("what is put back is a file")
    client_id, _ = marked_person(house, entries=3)
    copy = tmp_path / "copy.db"
    with closing(sqlite3.connect(tmp_path / "steadfoot.db")) as connection:
        connection.execute("VACUUM INTO ?", (str(copy),))
    late = house.pair(client_id)  # of this phone the backup knows nothing
    _erase(house, client_id)
    older = Database(f"sqlite:///{copy}")
    assert set(_left(older, client_id)) > {"client", "event"}
    assert service.apply_again(older, tmp_path / "erasures.jsonl") == 1
    assert service.apply_again(older, tmp_path / "erasures.jsonl") == 0
    assert set(_left(older, client_id)) == {"audit_entry", "erased_person"}
    with older.read() as session, pytest.raises(NotSignedIn, match="erased your record"):
        device_of(session, digest_of(late.token))
    older.close()
    assert MARKER.encode() not in copy.read_bytes()


def test_a_line_of_the_ledger_that_was_cut_neither_stops_a_start_nor_swallows_the_next(
    house: House, clock: StandingClock, tmp_path: Path
) -> None:
    file = tmp_path / "ledger"
    one = ledger.Entry("p", "one", ("a", "b"), clock.now)
    ledger.append(file, one)
    with file.open("ab") as out:
        out.write(b'{"practice_id": "p", "subj')
    ledger.append(file, ledger.Entry("p", "two", (), clock.now))
    assert [entry.subject_id for entry in ledger.entries(file)] == ["one", "two"]
    assert ledger.entries(file)[0] == one
    assert file.stat().st_mode & 0o077 == 0
    assert ledger.entries(tmp_path / "none") == []


def test_an_erasure_whose_commit_never_came_is_done_at_the_next_start(
    house: House, database: Database, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    client_id, _ = marked_person(house, entries=1)
    monkeypatch.setattr("steadfoot.custody.erase._delete", lambda *_: (_ for _ in ()).throw(InterruptedError))
    with pytest.raises(InterruptedError):
        _erase(house, client_id)
    monkeypatch.undo()
    assert "client" in _left(database, client_id)
    assert service.apply_again(database, tmp_path / "erasures.jsonl") == 1
    assert set(_left(database, client_id)) == {"audit_entry", "erased_person"}
    house.http.post(f"{API}/sign-in", json={"email": "maren@thornwater.example", "password": PASSWORD})
