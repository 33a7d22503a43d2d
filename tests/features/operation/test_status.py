"""The owner's page: how the installation stands, in one call, and what to do about it."""

import socket
import ssl
import subprocess
import threading
from collections.abc import Iterator
from datetime import timedelta
from pathlib import Path
from typing import Any

import pytest

from steadfoot import __version__
from steadfoot.core.production import address_insecure, database_unverified, mistyped
from steadfoot.core.settings import Settings
from steadfoot.core.waiting import Waiting
from steadfoot.installation import record
from steadfoot.installation.address import Look, look
from steadfoot.installation.record import BackupRecord
from steadfoot.installation.replies import reply
from steadfoot.migrations import HEAD
from steadfoot.wiring import settings_with
from tests.builders import House
from tests.conftest import START, StandingClock


def _status(house: House) -> dict[str, Any]:
    found: dict[str, Any] = house.get("/practice/status")
    return found


def _codes(house: House) -> list[str]:
    return [notice["code"] for notice in _status(house)["notices"]]


def _backed_up(house: House, clock: StandingClock, **changes: Any) -> None:
    folder: Path = house.app.state.settings.backups()
    folder.mkdir(exist_ok=True)
    good = {"at": clock(), "ok": True, "file": "x.db", "size_bytes": 5, "verified_at": clock(), "problem": ""}
    record.write(folder, BackupRecord(**{**good, **changes}))


@pytest.fixture(autouse=True)
def roomy(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("shutil.disk_usage", lambda _path: (10**12, 10**11, 9 * 10**11))


def test_what_runs_and_on_what_is_told(house: House) -> None:
    found = _status(house)
    assert found["version"] == __version__
    assert found["database"]["schema_revision"] == HEAD
    assert found["database"]["kind"] in ("sqlite", "postgresql")
    assert found["database"]["size_bytes"] > 0
    assert found["disk"] == {"free_bytes": 9 * 10**11, "total_bytes": 10**12}
    assert found["address"]["url"] == "https://steadfoot.test"


def test_a_backup_of_last_night_is_well_and_one_of_three_nights_ago_is_not(house: House, clock: StandingClock) -> None:
    assert _codes(house) == ["backup_none"]
    for hours, codes in ((0, []), (26, []), (52, ["backup_old"])):
        _backed_up(house, clock, at=START - timedelta(hours=hours))
        assert _codes(house) == codes


def test_a_failed_backup_is_said_first_beside_the_last_good_one(house: House, clock: StandingClock) -> None:
    _backed_up(house, clock)
    clock.forward(minutes=9)
    _backed_up(house, clock, ok=False, file="", verified_at=None, problem="The disk is full.")
    found = _status(house)
    assert found["notices"] == [{"code": "backup_failed", "urgent": True}]
    assert found["backup"]["problem"] == "The disk is full."
    assert found["backup"]["made_at"] != found["backup"]["tried_at"]


def test_phones_not_heard_are_counted_by_person_and_only_of_ones_own_practice(
    house: House, other_house: House, clock: StandingClock
) -> None:
    emil, jonna, gone = (house.new_client(name) for name in ("Emil", "Jonna", "Gone"))
    old, new, theirs = house.pair(emil), house.pair(emil), house.pair(jonna)
    house.pair(gone)
    house.http.patch(f"/api/v1/clients/{gone}", json={"archived": True})
    other_house.pair(other_house.new_client("Somebody"))
    for phone in (old, theirs):
        phone.sync()
    clock.forward(days=5)
    new.sync()
    # Days later nobody is signed in any more: the answer without its door.
    installation = house.app.state.installation
    with installation.database.read() as session:
        found = reply(installation.standing(session, house.practice_id, clock()), "")
    assert found.phones.model_dump() == {"clients": 2, "silent": 1, "silent_days": 5}


def test_what_is_kept_aside_waits_for_its_own_practice_only(
    house: House, other_house: House, clock: StandingClock
) -> None:
    _backed_up(house, clock)
    phone = house.pair(house.new_client("Emil"))
    phone.log("dreamt", {})
    phone.sync()
    assert _status(house)["waiting"][0]["number"] == 1
    assert _codes(house) == ["kept_aside"]
    assert _status(other_house)["waiting"] == [
        {"name": name, "number": 0, "oldest_at": None} for name in ("kept_aside", "not_looked_at")
    ]


def test_work_that_does_not_get_done_is_urgent(house: House, clock: StandingClock) -> None:
    _backed_up(house, clock)
    for minutes, codes in ((15, []), (16, ["work_waits"])):
        since = START - timedelta(minutes=minutes)
        house.app.state.installation.queues = {"derived": lambda *_, since=since: Waiting(1, since)}
        assert _codes(house) == codes


def test_a_full_disk_and_a_certificate_that_ends_are_said_in_time(
    house: House, clock: StandingClock, monkeypatch: pytest.MonkeyPatch
) -> None:
    _backed_up(house, clock)
    lookout = house.app.state.installation.lookout
    for days, problem, codes in (
        (15, "", []),
        (13, "", ["certificate_ends"]),
        (None, "unreachable", ["certificate_unreachable"]),
        (None, "untrusted", ["certificate_untrusted"]),
    ):
        lookout.last = Look(START, None if days is None else START + timedelta(days=days), problem)
        assert _codes(house) == codes
    lookout.last = None
    monkeypatch.setattr("shutil.disk_usage", lambda _path: (10**12, 10**12, 999_999_999))
    assert _codes(house) == ["disk_low"]


def test_a_record_that_cannot_be_read_is_no_backup(house: House) -> None:
    folder: Path = house.app.state.settings.backups()
    folder.mkdir()
    for text in ("", "[]", '{"at": "yesterday"}', '{"at": 5}'):
        (folder / record.LAST_GOOD).write_text(text)
        assert _codes(house) == ["backup_none"]


@pytest.mark.parametrize(
    ("url", "open_way"),
    [
        ("", False),
        ("postgresql+psycopg://u@/steadfoot?host=/run/postgresql", False),
        ("postgresql+psycopg://u:p@localhost/steadfoot", False),
        ("postgresql+psycopg://u:p@db.example/steadfoot", True),
        ("postgresql+psycopg://u:p@db.example/steadfoot?sslmode=require", True),
        ("postgresql+psycopg://u:p@db.example/steadfoot?sslmode=verify-full", False),
        ("postgresql+psycopg://u:p@/steadfoot?host=a.example,b.example&sslmode=prefer", True),
    ],
)
def test_a_way_to_the_database_that_anyone_could_read_is_noticed(url: str, open_way: bool) -> None:
    assert database_unverified(Settings(database_url=url)) is open_way


@pytest.mark.parametrize(
    ("url", "insecure"),
    [("", False), ("http://127.0.0.1:9", False), ("http://[::1]:9", False), ("http://practice.example", True)]
    + [("http://192.168.1.5:8000", True), ("https://practice.example", False)],
)
def test_an_address_that_phones_cannot_be_safe_with_is_noticed(url: str, insecure: bool) -> None:
    assert address_insecure(Settings(public_url=url)) is insecure


@pytest.mark.parametrize(
    ("url", "codes"),
    [("", ["address_here"]), ("http://localhost:9", ["address_here"]), ("http://192.168.1.5:9", ["address_insecure"])],
)
def test_an_address_that_only_this_machine_can_reach_is_not_all_well(
    house: House, clock: StandingClock, url: str, codes: list[str]
) -> None:
    _backed_up(house, clock)
    installation = house.app.state.installation
    installation.settings = installation.settings.model_copy(update={"public_url": url})
    assert _codes(house) == codes


def test_a_setting_whose_name_is_mistyped_is_noticed_and_nobody_elses_is() -> None:
    given = ["STEADFOOT_PUBLC_URL", "STEADFOOT_BACKUPS_DIR", "STEADFOOT_PUBLIC_URL", "steadfoot_port", "STEADFOOT_SITE"]
    assert mistyped([*given, "STEADFOOT_SECRETS_DIR", "STEADFOOT_CHROMIUM", "STEADFOOT_TEST_DATABASE", "PATH"]) == [
        "STEADFOOT_PUBLC_URL is no setting. STEADFOOT_PUBLIC_URL is meant?",
        "STEADFOOT_BACKUPS_DIR is no setting. STEADFOOT_BACKUP_DIR is meant?",
    ]


def test_secrets_come_from_files_and_the_environment_wins(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (tmp_path / "steadfoot_metrics_token").write_text("from a file")
    monkeypatch.setenv("STEADFOOT_SECRETS_DIR", str(tmp_path))
    assert settings_with(None, None).metrics_token.get_secret_value() == "from a file"
    monkeypatch.setenv("STEADFOOT_METRICS_TOKEN", "said")
    assert settings_with(None, None).metrics_token.get_secret_value() == "said"


@pytest.fixture
def door(tmp_path: Path) -> Iterator[tuple[int, ssl.SSLContext]]:
    """A listener with a certificate of two days, and what trusts it."""
    cert, key = tmp_path / "cert.pem", tmp_path / "key.pem"
    words = "openssl req -x509 -newkey ec -pkeyopt ec_paramgen_curve:prime256v1 -nodes -days 2 -subj /CN=localhost"
    more = ["-addext", "subjectAltName=DNS:localhost", "-keyout", str(key), "-out", str(cert)]
    subprocess.run([*words.split(), *more], check=True, capture_output=True)
    context = ssl.SSLContext(ssl.PROTOCOL_TLS_SERVER)
    context.load_cert_chain(cert, key)
    with socket.create_server(("localhost", 0)) as listener:
        threading.Thread(target=_shake_hands, args=(listener, context), daemon=True).start()
        yield listener.getsockname()[1], ssl.create_default_context(cafile=str(cert))


def _shake_hands(listener: socket.socket, context: ssl.SSLContext) -> None:
    for _ in range(2):
        raw, _ = listener.accept()
        try:
            context.wrap_socket(raw, server_side=True).close()
        except OSError:
            raw.close()


def test_a_certificate_is_looked_at_as_a_phone_would(door: tuple[int, ssl.SSLContext]) -> None:
    port, trusting = door
    found = look(f"https://localhost:{port}", START, trusting)
    assert found.problem == ""
    assert found.expires_at is not None
    assert look(f"https://localhost:{port}", START).problem == "untrusted"
    assert look("https://localhost:1", START).problem == "unreachable"
    assert look("http://localhost", START).problem == "not_https"
