"""The installation's key: made once, read by its owner only, and each use apart from every other."""

import threading
from pathlib import Path

import pytest

from steadfoot.core.keyring import CannotOpen, Keyring, KeyUnusable


def test_what_was_sealed_opens_with_this_key_and_for_this_row_only(tmp_path: Path) -> None:
    ring = Keyring(tmp_path / "secret.key")
    sealed = ring.seal("JBSWY3DP", "row-1")
    assert "JBSWY3DP" not in sealed
    assert ring.seal("JBSWY3DP", "row-1") != sealed
    assert Keyring(tmp_path / "secret.key").open(sealed, "row-1") == "JBSWY3DP"
    for other, about in ((ring, "row-2"), (Keyring(tmp_path / "other.key"), "row-1")):
        with pytest.raises(CannotOpen):
            other.open(sealed, about)


def test_what_is_signed_for_one_purpose_is_worth_nothing_for_another(tmp_path: Path) -> None:
    ring = Keyring(tmp_path / "secret.key")
    assert ring.signed("a", b"x") == Keyring(tmp_path / "secret.key").signed("a", b"x")
    assert len({ring.signed("a", b"x"), ring.signed("b", b"x"), ring.signed("a", b"y")}) == 3


def test_the_key_is_its_owners_alone_and_no_draft_of_it_stays(tmp_path: Path) -> None:
    path = tmp_path / "data" / "secret.key"
    Keyring(path).load()
    assert (path.stat().st_mode & 0o077, len(path.read_bytes())) == (0, 32)
    assert [one.name for one in path.parent.iterdir()] == ["secret.key"]


def test_processes_that_start_at_once_use_one_key(tmp_path: Path) -> None:
    rings = [Keyring(tmp_path / "secret.key") for _ in range(20)]
    threads = [threading.Thread(target=ring.load) for ring in rings]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert len({ring.signed("a", b"x") for ring in rings}) == 1


def test_a_key_that_others_may_read_or_that_is_none_is_not_used(tmp_path: Path) -> None:
    path = tmp_path / "secret.key"
    Keyring(path).load()
    path.chmod(0o640)
    with pytest.raises(KeyUnusable, match="chmod 600"):
        Keyring(path).load()
    path.write_bytes(b"short")
    path.chmod(0o600)
    with pytest.raises(KeyUnusable, match="5 bytes"):
        Keyring(path).load()
