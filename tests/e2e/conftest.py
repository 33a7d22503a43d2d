"""A real server in a process of its own, and real browsers: a phone and a desk."""

import json
import os
import shutil
import socket
import subprocess
import sys
import tempfile
import time
from collections.abc import Iterator
from contextlib import closing, contextmanager
from dataclasses import dataclass
from pathlib import Path
from secrets import token_hex
from typing import Any

import httpx
import pytest
from playwright.sync_api import Browser, BrowserContext, Playwright, sync_playwright

from steadfoot.core.settings import Settings
from steadfoot.founding import found_practice
from tests.e2e.watching import SEEN, watch, watch_all

PASSWORD = "five huts over one ridge"
FLAGS = [
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
]
PHONE: dict[str, Any] = {
    "viewport": {"width": 360, "height": 740},
    "has_touch": True,
    "is_mobile": True,
    "device_scale_factor": 2,
    "locale": "en-GB",
    "timezone_id": "Europe/Vienna",
}
DESK: dict[str, Any] = {
    "viewport": {"width": 1440, "height": 900},
    "locale": "en-GB",
    "timezone_id": "Europe/Vienna",
}


def chromium() -> str:
    """Answer the path of a Chromium: the one that deploy/test.sh found, else one on the path."""
    names = ("chromium-headless-shell", "chromium", "chromium-browser")
    found = os.environ.get("STEADFOOT_CHROMIUM") or next(filter(None, map(shutil.which, names)), None)
    assert found, "no Chromium: run these tests through deploy/test.sh, which installs one"
    return found


def free_port() -> int:
    """Answer a port that nobody listens on."""
    with closing(socket.socket()) as probe:
        probe.bind(("127.0.0.1", 0))
        return int(probe.getsockname()[1])


@dataclass
class Server:
    """A practice on a running server: its practitioner's address, and that practitioner's HTTP client."""

    address: str
    email: str
    http: httpx.Client

    def call(self, method: str, path: str, body: Any = None) -> Any:
        """Call the API as the practitioner."""
        response = self.http.request(method, f"/api/v1{path}", json=body)
        assert response.is_success, response.text
        return response.json() if response.content else None

    def take_on(self, name: str, **more: Any) -> str:
        """Take on a client who was screened and needs no clearance; answer their id."""
        client_id = str(self.call("POST", "/clients", {"display_name": name, **more})["id"])
        well = {"regular_activity": True, "known_disease": False, "signs_or_symptoms": False, "intensity": "vigorous"}
        self.call("POST", f"/clients/{client_id}/screenings", {"answers": well})
        return client_id


def _environment(folder: Path, port: int, **more: str) -> dict[str, str]:
    figures = Path(tempfile.gettempdir()) / "steadfoot-test-figures"  # named by content: all servers may share them
    settings = {"DATA_DIR": str(folder), "PORT": str(port), "DRAW_AHEAD": "off", "FIGURES_DIR": str(figures), **more}
    return {**os.environ, **{f"STEADFOOT_{name}": value for name, value in settings.items()}}


def _command(*words: str) -> list[str]:
    return [sys.executable, "-m", "steadfoot.cli", *words]


@contextmanager
def running(folder: Path, port: int, **settings: str) -> Iterator[str]:
    """Serve the folder's database on a port until the block ends."""
    environment = _environment(folder, port, **settings)
    process = subprocess.Popen(_command("serve"), env=environment, stdout=subprocess.DEVNULL)
    address = f"http://127.0.0.1:{port}"
    try:
        _wait_until_ready(address, process)
        yield address
    finally:
        process.terminate()
        process.wait(40)


def _wait_until_ready(address: str, process: "subprocess.Popen[bytes]", within_s: int = 20) -> None:
    for _ in range(within_s * 10):
        assert process.poll() is None, "the server stopped at its start"
        try:
            if httpx.get(f"{address}/readyz", timeout=2).is_success:
                return
        except httpx.TransportError:
            pass
        time.sleep(0.1)
    raise AssertionError(f"the server did not answer within {within_s} s")


@pytest.fixture(scope="session")
def served(tmp_path_factory: pytest.TempPathFactory) -> Iterator[tuple[Path, str]]:
    """A real server without a practice: its folder and its address."""
    folder = tmp_path_factory.mktemp("served")
    with running(folder, free_port()) as address:
        yield folder, address


@pytest.fixture
def server(served: tuple[Path, str]) -> Iterator[Server]:
    """A fresh practice; others on the same server are none of its business."""
    folder, address = served
    email, zone = f"maren.{token_hex(4)}@thornwater.example", "Europe/Vienna"
    found_practice(Settings(data_dir=folder), "Thornwater Physical Therapy", email, "Maren Brandvold", zone, PASSWORD)
    with signed_in(address, {"email": email, "password": PASSWORD}) as http:
        yield Server(address, email, http)


@contextmanager
def signed_in(address: str, who: dict[str, str]) -> Iterator[httpx.Client]:
    """Sign a practitioner in; yield the client that carries the cookie."""
    answer = httpx.post(f"{address}/api/v1/sign-in", json=who, timeout=20)
    cookie = answer.headers["set-cookie"].partition(";")[0]
    with httpx.Client(base_url=address, headers={"Cookie": cookie}, timeout=20) as http:
        yield http


@pytest.fixture(scope="session")
def playwright() -> Iterator[Playwright]:
    """The driver of all browsers."""
    with sync_playwright() as found:
        yield found


@pytest.fixture(scope="session")
def one_browser(playwright: Playwright) -> Iterator[Browser]:
    """The browser's process: starting one for each test would take as long as the test."""
    found = playwright.chromium.launch(executable_path=chromium(), args=FLAGS)
    yield watch_all(found)
    found.close()


@pytest.fixture(autouse=True)
def nothing_forbidden() -> Iterator[None]:
    """No test passes in which a page breached its policy or asked another host."""
    SEEN.clear()
    yield
    assert not SEEN


@pytest.fixture
def browser(one_browser: Browser) -> Iterator[Browser]:
    """A browser whose contexts share nothing and end with the test."""
    yield one_browser
    for context in one_browser.contexts:
        context.close()


@pytest.fixture
def desk(browser: Browser) -> BrowserContext:
    """The practitioner's browser."""
    return browser.new_context(**DESK)


@contextmanager
def phone_browser(playwright: Playwright, profile: Path, **more: Any) -> Iterator[BrowserContext]:
    """A client's browser with a profile that survives its closing."""
    context = playwright.chromium.launch_persistent_context(
        str(profile), executable_path=chromium(), args=FLAGS, **{**PHONE, **more}
    )
    context.set_default_timeout(15_000)
    yield watch(context)
    context.close()


@dataclass
class Demo:
    """A running demo: its address, how to get in, and the practitioner's HTTP client."""

    address: str
    note: dict[str, Any]
    http: httpx.Client

    def link_for(self, name: str) -> str:
        """Answer a fresh pairing link for one of its people."""
        people = self.http.get("/api/v1/clients").json()["items"]
        client_id = next(one["id"] for one in people if one["display_name"] == name)
        answer = self.http.post(f"/api/v1/clients/{client_id}/invitations", json={"delivery": "in_person"})
        return str(answer.json()["url"])


@contextmanager
def running_demo(folder: Path) -> Iterator[Demo]:
    """Run the demo in a folder until the block ends."""
    port = free_port()
    process = subprocess.Popen(_command("demo"), env=_environment(folder, port))
    try:
        _wait_until_ready(f"http://127.0.0.1:{port}", process, within_s=90)
        note = json.loads((folder / "demo.json").read_text())
        with signed_in(note["address"], note["sign_in"]) as http:
            yield Demo(note["address"], note, http)
    finally:
        process.terminate()
        process.wait(40)


@pytest.fixture(scope="session")
def demo(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Demo]:
    """The demo, started once for all tests that only look."""
    with running_demo(tmp_path_factory.mktemp("demo")) as found:
        yield found
