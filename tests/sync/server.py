"""A real server in a process of its own, which can be killed; and phones that know what was acknowledged."""

import os
import signal
import socket
import subprocess
import sys
import threading
import time
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

import httpx

_ROOT = Path(__file__).parents[2]
_BACKEND = _ROOT / "backend"
_START_WITHIN_S = 40


def free_port() -> int:
    """Answer a port that nobody listens on."""
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        port: int = probe.getsockname()[1]
        return port


def environment(folder: Path, database_url: str | None = None) -> dict[str, str]:
    """Answer the environment of a command on a data folder, and on another database where one is named."""
    path = os.pathsep.join((str(_BACKEND), os.environ.get("PYTHONPATH", "")))
    kept = {name: value for name, value in os.environ.items() if not name.startswith("STEADFOOT_")}
    own = {
        "PYTHONPATH": path,
        "STEADFOOT_DATA_DIR": str(folder),
        "STEADFOOT_DRAW_AHEAD": "off",
        "STEADFOOT_LOG_LEVEL": "warning",
    }
    return {**kept, **own, **({"STEADFOOT_DATABASE_URL": database_url} if database_url else {})}


@dataclass
class Server:
    """``steadfoot serve`` on a data folder."""

    folder: Path
    database_url: str | None = None
    port: int = field(default_factory=free_port)
    process: "subprocess.Popen[bytes] | None" = None
    more: dict[str, str] = field(default_factory=dict)
    stderr: Path | None = None

    @property
    def address(self) -> str:
        """Where it listens."""
        return f"http://127.0.0.1:{self.port}"

    def start(self) -> None:
        """Start it and wait until its database answers."""
        words = [sys.executable, "-m", "steadfoot.cli", "serve", "--port", str(self.port)]
        env = {**environment(self.folder, self.database_url), **self.more}
        said = self.stderr.open("ab") if self.stderr else None
        self.process = subprocess.Popen(words, env=env, stdout=subprocess.DEVNULL, stderr=said)
        if said:
            said.close()
        self.wait_until_ready()

    def alive(self) -> bool:
        """Whether it runs."""
        return self.process is not None and self.process.poll() is None

    def wait_until_ready(self) -> None:
        """Wait until its database answers."""
        until = time.monotonic() + _START_WITHIN_S
        with httpx.Client(timeout=2, verify=False) as http:
            while time.monotonic() < until:
                assert self.alive(), "the server ended by itself"
                try:
                    if http.get(f"{self.address}/readyz").status_code == 200:
                        return
                except httpx.TransportError:
                    time.sleep(0.02)
        raise AssertionError("the server did not start in time")

    def kill(self) -> None:
        """End it as a power cut would end the process: nothing of its own runs any more."""
        assert self.process is not None
        self.process.send_signal(signal.SIGKILL)
        self.process.wait()

    def stop(self) -> int:
        """End it as an operator does; answer the exit code."""
        assert self.process is not None
        self.process.send_signal(signal.SIGTERM)
        return self.process.wait(timeout=40)


@dataclass
class Forked(Server):
    """As ``Server``, from a parent that has everything imported: for hundreds of kills."""

    parent: "subprocess.Popen[str] | None" = None
    child: int = 0

    def start(self) -> None:
        """Have one forked and wait until its database answers."""
        if self.parent is None:
            words = [sys.executable, "-m", "tests.sync.forking", str(self.port)]
            env = environment(self.folder, self.database_url)
            pipe = subprocess.PIPE
            self.parent = subprocess.Popen(words, env=env, cwd=_ROOT, stdin=pipe, stdout=pipe, text=True)
        assert self.parent.stdin is not None
        assert self.parent.stdout is not None
        self.parent.stdin.write("start\n")
        self.parent.stdin.flush()
        self.child = int(self.parent.stdout.readline())
        self.wait_until_ready()

    def alive(self) -> bool:
        """Whether the child runs."""
        try:
            os.kill(self.child, 0)
        except ProcessLookupError:
            return False
        return self.child > 0

    def kill(self) -> None:
        """End the child at once."""
        self._end(signal.SIGKILL)

    def stop(self) -> int:
        """End the child as an operator does."""
        self._end(signal.SIGTERM)
        return 0

    def _end(self, how: signal.Signals) -> None:
        os.kill(self.child, how)
        while self.alive():
            time.sleep(0.005)

    def close(self) -> None:
        """End the child, if it runs, and the parent."""
        if self.alive():
            self.kill()
        if self.parent is not None:
            self.parent.communicate()


@contextmanager
def forking(folder: Path) -> Iterator[Forked]:
    """A server that is started by forking, and gone at the end."""
    server = Forked(folder)
    try:
        server.start()
        yield server
    finally:
        server.close()


@contextmanager
def running(folder: Path, database_url: str | None = None, **more: Any) -> Iterator[Server]:
    """A server that is gone at the end, whatever happened."""
    server = Server(folder, database_url, **more)
    server.start()
    try:
        yield server
    finally:
        if server.process is not None and server.process.poll() is None:
            server.kill()


@dataclass
class Sender:
    """A phone's sender: sends what is not acknowledged, some of it twice, and never believes what was not said."""

    token: str
    events: list[dict[str, Any]]
    acknowledged: int = 0

    def send(self, address: str, events: list[dict[str, Any]], http: httpx.Client) -> dict[str, Any] | None:
        """Post a batch; None if no whole answer came."""
        headers = {"Authorization": f"Bearer {self.token}"}
        try:
            response = http.post(f"{address}/api/v1/sync", json={"cursor": 0, "events": events}, headers=headers)
        except httpx.TransportError:
            return None
        if response.status_code != 200:
            return None
        answer: dict[str, Any] = response.json()
        assert answer["refused"] == []
        self.acknowledged = max(self.acknowledged, answer["acknowledged_through"])
        return answer

    def drain(
        self, address: str, batches: list[list[dict[str, Any]]], answered: threading.Event, end: threading.Event
    ) -> None:
        """Send batches, one after the other, until the server is gone; tell of the first answer."""
        with httpx.Client(timeout=20, verify=False) as http:
            for batch in batches:
                if end.is_set() or self.send(address, batch, http) is None:
                    return
                answered.set()
