"""``steadfoot audit``: told in words, with an exit code that a nightly job can act on."""

import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from steadfoot.audit import service
from steadfoot.audit.service import Act, Actor, ActorKind
from steadfoot.core.database import Database
from steadfoot.migrations.upgrade import upgrade
from tests.conftest import START
from tests.sync.commands import command

pytestmark = pytest.mark.server


def test_a_whole_chain_a_broken_one_and_one_that_was_noted(tmp_path: Path) -> None:
    file = tmp_path / "steadfoot.db"
    database = Database(f"sqlite:///{file}")
    upgrade(database)
    with database.write() as session:
        actor = Actor(ActorKind.SERVER, "p1")
        service.record_all(session, [Act(actor, "verifyAudit", START, str(number)) for number in range(3)])
    database.close()
    heads = command(tmp_path, "audit", "heads")
    (tmp_path / "noted").write_text(heads.stdout)
    whole = command(tmp_path, "audit", "verify", "--heads", str(tmp_path / "noted"))
    assert (whole.returncode, "p1: 3 rows, whole" in whole.stdout) == (0, True), whole.stderr
    with closing(sqlite3.connect(file)) as connection:
        connection.execute("DROP TRIGGER audit_entry_changed")
        connection.execute("UPDATE audit_entry SET action = 'another' WHERE number = 2")
        connection.commit()
    broken = command(tmp_path, "audit", "verify")
    assert (broken.returncode, "BROKEN at row 2" in broken.stdout) == (1, True)
    (tmp_path / "noted").write_text("no json")
    odd = command(tmp_path, "audit", "verify", "--heads", str(tmp_path / "noted"))
    assert (odd.returncode, "cannot be read" in odd.stderr, "Traceback" in odd.stderr) == (1, True, False)
