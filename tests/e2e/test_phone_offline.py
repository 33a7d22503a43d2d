"""The phone where the network or the phone itself fails: killed, offline, behind a sign-in page, not understood."""

import gzip
import json
import os
import random
import signal
import threading
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from dataclasses import dataclass, field
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from mimetypes import guess_type
from pathlib import Path
from typing import Any

import httpx
import pytest
from playwright.sync_api import Error, Page, Playwright, expect

from tests.e2e.conftest import FLAGS, PHONE, Server, chromium, phone_browser
from tests.e2e.test_main_job import SETS, SLOW_MS, finish, lay_stones, pair, pairing_link, write_program

pytestmark = pytest.mark.browser
ROUNDS, LONGEST_WAIT_MS = 5, 300
PORTAL = b"<!doctype html><title>Hut Wi-Fi</title><h1>Please sign in</h1>"
HOP_BY_HOP = {"connection", "transfer-encoding", "content-length", "content-encoding", "date", "server"}

NO_COPY = {"cache-control": "no-store"}


@dataclass
class Between:
    """What stands between a phone and the practice, and may change or withhold what passes."""

    practice: str
    address: str = ""
    captive: bool = False
    files: dict[str, bytes] = field(default_factory=dict)
    """Path to the body to answer in the place of the practice's."""
    change: Callable[[dict[str, Any]], dict[str, Any]] | None = None
    """What becomes of a sync call's body on its way."""
    is_remembered: bool = True
    """False: the browser is told to keep no copy of what passes."""

    def link(self, link: str) -> str:
        """Answer a pairing link that leads through here."""
        return link.replace(self.practice, self.address)


class _Passing(BaseHTTPRequestHandler):
    between: Between
    http: httpx.Client

    def do_GET(self) -> None:
        self._pass(b"")

    def do_POST(self) -> None:
        self._pass(self.rfile.read(int(self.headers.get("Content-Length", 0))))

    def _pass(self, body: bytes) -> None:
        path = self.path.partition("?")[0]
        if self.between.captive and path.startswith("/api/"):
            self._answer(200, {"Content-Type": "text/html"}, PORTAL)
        elif path in self.between.files:
            self._answer(200, {"Content-Type": guess_type(path)[0] or "text/html"}, self.between.files[path])
        else:
            self._ask(body)

    def _ask(self, body: bytes) -> None:
        headers = dict(self.headers.items())  # with Host: the practice holds it against the browser's Origin
        if self.between.change and self.path == "/api/v1/sync":
            packed = headers.pop("Content-Encoding", "") == "gzip"
            body = json.dumps(self.between.change(json.loads(gzip.decompress(body) if packed else body))).encode()
        headers["Content-Length"] = str(len(body))
        found = self.http.request(self.command, self.path, content=body, headers=headers)
        kept = {name: value for name, value in found.headers.items() if name.lower() not in HOP_BY_HOP}
        self._answer(found.status_code, kept if self.between.is_remembered else kept | NO_COPY, found.content)

    def _answer(self, status: int, headers: dict[str, str], body: bytes) -> None:
        self.send_response(status)
        for name, value in headers.items():
            self.send_header(name, value)
        self.send_header("Content-Length", str(len(body)))
        self.end_headers()
        with suppress(BrokenPipeError):
            self.wfile.write(body)

    def log_message(self, *words: Any) -> None:
        """Say nothing: the browser's every call would fill the test's output."""


@contextmanager
def between(practice: str) -> Iterator[Between]:
    """Stand between phones and a practice until the block ends."""
    found = Between(practice)
    with httpx.Client(base_url=practice, timeout=20) as http:
        handler = type("Passing", (_Passing,), {"between": found, "http": http})
        server = ThreadingHTTPServer(("127.0.0.1", 0), handler)
        found.address = f"http://127.0.0.1:{server.server_port}"
        threading.Thread(target=server.serve_forever, daemon=True).start()
        try:
            yield found
        finally:
            server.shutdown()
            server.server_close()


def _browser_of(profile: Path) -> int:
    """Answer the process id of the browser that this test started on a profile."""
    wanted = f"--user-data-dir={profile}".encode()
    for folder in Path("/proc").glob("[0-9]*"):
        with suppress(OSError):
            words = (folder / "cmdline").read_bytes().split(b"\0")
            if wanted in words and not any(word.startswith(b"--type=") for word in words):
                return int(folder.name)
    raise AssertionError("the browser is not running")


_LAY_AND_SEE = """(before) => new Promise((seen) => {
  const laid = () => document.querySelectorAll('button.stone[aria-pressed=true]').length;
  const look = new MutationObserver(() => { if (laid() > before) { look.disconnect(); seen(laid()); } });
  look.observe(document.body, { subtree: true, childList: true, attributes: true });
  document.querySelector('button.stone.next').click();
})"""


def _lay_one_and_kill(playwright: Playwright, profile: Path, address: str, laid: int, wait_ms: float) -> None:
    phone = playwright.chromium.launch_persistent_context(
        str(profile), executable_path=chromium(), args=FLAGS, offline=True, **PHONE
    )
    page = phone.new_page()
    page.goto(f"{address}/app/")
    expect(page.locator("button.stone.next")).to_be_visible()
    expect(page.locator("button.stone[aria-pressed=true]")).to_have_count(laid)
    group = os.getpgid(_browser_of(profile))
    assert group != os.getpgid(0), "the browser must have a process group of its own"
    assert page.evaluate(_LAY_AND_SEE, laid) == laid + 1
    time.sleep(wait_ms / 1000)
    os.killpg(group, signal.SIGKILL)
    with suppress(Error):
        phone.close()


def test_a_stone_that_shows_as_laid_is_there_after_the_browser_was_killed(
    server: Server, playwright: Playwright, tmp_path: Path
) -> None:
    profile, waits = tmp_path / "phone", random.Random(20261125)
    with phone_browser(playwright, profile) as phone:
        pair(phone.pages[0], pairing_link(server, write_program(server)))
    for laid in range(ROUNDS):
        _lay_one_and_kill(playwright, profile, server.address, laid, waits.uniform(0, LONGEST_WAIT_MS))
    with phone_browser(playwright, profile, offline=True) as phone:
        page = phone.new_page()
        page.goto(f"{server.address}/app/")
        expect(page.locator("button.stone[aria-pressed=true]")).to_have_count(ROUNDS)
        page.goto(f"{server.address}/app/me")
        expect(page.get_by_text(f"{ROUNDS + 1} entries saved on this phone.")).to_be_visible()


def _send_from_me(page: Page, answer: str) -> None:
    page.get_by_role("link", name="Me", exact=True).click()
    page.get_by_role("button", name="Send now").click()
    expect(page.get_by_text(answer)).to_be_visible(timeout=SLOW_MS)


def test_the_sign_in_page_of_a_network_never_counts_as_received(
    server: Server, playwright: Playwright, tmp_path: Path
) -> None:
    client_id = write_program(server)
    with between(server.address) as way, phone_browser(playwright, tmp_path / "phone") as phone:
        page = phone.pages[0]
        pair(page, way.link(pairing_link(server, client_id)))
        way.captive = True
        lay_stones(page, 0, 2)
        expect(page.get_by_text("They go to the practice when there is signal.")).to_be_visible()
        _send_from_me(page, "No signal, or the practice could not be reached.")
        expect(page.get_by_text("0 of them received by the practice.")).to_be_visible()
        assert server.call("GET", f"/clients/{client_id}/timeline")["items"] == []
        way.captive = False
        _send_from_me(page, "All sent.")
        expect(page.get_by_text("The practice has all of them.")).to_be_visible()
    kinds = [one["kind"] for one in server.call("GET", f"/clients/{client_id}/timeline")["items"]]
    assert kinds == ["session_started", "set_ticked", "set_ticked"]


def _spoil_the_finish(body: dict[str, Any]) -> dict[str, Any]:
    for event in body["events"]:
        if event["kind"] == "session_finished":
            event["body"]["effort"] = "hard"
    return body


def test_an_entry_that_is_not_understood_is_said_on_the_phone_and_kept_for_the_practice(
    server: Server, playwright: Playwright, tmp_path: Path
) -> None:
    client_id = write_program(server)
    with between(server.address) as way, phone_browser(playwright, tmp_path / "phone") as phone:
        way.change = _spoil_the_finish
        page = phone.pages[0]
        pair(page, way.link(pairing_link(server, client_id)))
        lay_stones(page, 0, SETS)
        finish(page)
        words = "1 entry was received but not understood. It is kept; Maren will look at it."
        expect(page.get_by_text(words)).to_be_visible(timeout=SLOW_MS)
        page.get_by_role("link", name="Me", exact=True).click()
        page.get_by_text("1 entry was not understood").click()
        expect(page.get_by_role("listitem").filter(has_text="the end of a session")).to_be_visible()
    (kept,) = server.call("GET", f"/clients/{client_id}/refused-events")["items"]
    assert json.loads(kept["raw"])["body"]["effort"] == "hard"
    assert kept["problem"]["errors"][0]["pointer"].endswith("effort")
