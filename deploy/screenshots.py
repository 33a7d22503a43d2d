"""Makes the pictures of README.md: starts the demo, opens it as a practitioner and as a client, and looks.

.venv/bin/python deploy/screenshots.py        after sh deploy/test.sh, which installs a browser
"""

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
from pathlib import Path
from typing import Any

from playwright.sync_api import Browser, Page, sync_playwright

PICTURES = Path(__file__).parent / "screenshots"
FLAGS = ["--no-sandbox", "--disable-gpu", "--no-first-run", "--disable-background-networking", "--disable-sync"]
PHONE = {"viewport": {"width": 390, "height": 844}, "has_touch": True, "is_mobile": True, "device_scale_factor": 2}
DESK = {"viewport": {"width": 1440, "height": 900}}
PLACE = {"locale": "en-GB", "timezone_id": "Europe/Vienna"}
START_WITHIN_S = 90


def free_port() -> int:
    """Answer a port that nobody listens on."""
    with closing(socket.socket()) as probe:
        probe.bind(("127.0.0.1", 0))
        return int(probe.getsockname()[1])


@contextmanager
def demo() -> Iterator[dict[str, Any]]:
    """Run the demo in a folder of its own; yield its note of how to get in."""
    with tempfile.TemporaryDirectory() as folder:
        environment = {**os.environ, "STEADFOOT_DATA_DIR": folder}
        command = [sys.executable, "-m", "steadfoot.cli", "demo", "--port", str(free_port())]
        process = subprocess.Popen(command, env=environment, stdout=subprocess.DEVNULL)
        try:
            yield wait_for_note(Path(folder) / "demo.json", process)
        finally:
            process.terminate()
            process.wait()


def wait_for_note(path: Path, process: "subprocess.Popen[bytes]") -> dict[str, Any]:
    """Answer the demo's note once it is written and the server listens."""
    for _ in range(START_WITHIN_S * 10):
        if process.poll() is not None:
            raise SystemExit("The demo stopped at its start.")
        if path.is_file():
            time.sleep(2)
            found: dict[str, Any] = json.loads(path.read_text())
            return found
        time.sleep(0.1)
    raise SystemExit(f"The demo did not start within {START_WITHIN_S} s.")


def picture(page: Page, name: str) -> None:
    """Keep what the page shows now, once it has settled."""
    page.wait_for_timeout(900)
    page.screenshot(path=PICTURES / f"{name}.png")
    print(f"{name}.png")


def desk(browser: Browser, note: dict[str, Any]) -> None:
    """Look at the practitioner's pages."""
    page = browser.new_context(**DESK, **PLACE).new_page()
    page.goto(f"{note['address']}/desk/")
    page.get_by_label("Email").fill(note["sign_in"]["email"])
    page.get_by_label("Password", exact=True).fill(note["sign_in"]["password"])
    page.get_by_role("button", name="Sign in").click()
    person = page.get_by_role("link", name="Emil Tarrow", exact=True)
    person.wait_for()
    picture(page, "desk-caseload")
    person.click()
    page.get_by_role("heading", name="Day by day").wait_for()
    picture(page, "desk-person")
    page.get_by_role("link", name="Open the program").click()
    page.get_by_text("As the phone will show it").wait_for()
    page.get_by_role("button", name="Braking legs").first.click()
    picture(page, "desk-editor")


def phone(browser: Browser, note: dict[str, Any]) -> None:
    """Look at the client's phone, in the middle of a session."""
    page = browser.new_context(**PHONE, **PLACE).new_page()
    page.goto(note["pairing_link"])
    page.get_by_role("button", name="Go on").click()
    page.get_by_role("button", name="Yes, this is me").click()
    page.locator("button.stone.next").wait_for()
    for laid in range(6):
        page.locator("button.stone.next").click()
        page.locator("button.stone[aria-pressed=true]").nth(laid).wait_for()
    picture(page, "phone-today")
    page.get_by_role("link", name="See").click()
    picture(page, "phone-exercise")
    page.get_by_role("link", name="It hurts").click()
    page.get_by_role("button", name="Knee, front, right").click()
    page.evaluate("scrollTo(0, 0)")
    picture(page, "phone-pain")


def main() -> None:
    """Make all pictures."""
    PICTURES.mkdir(exist_ok=True)
    chromium = os.environ.get("STEADFOOT_CHROMIUM") or shutil.which("chromium")
    with demo() as note, sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=chromium, args=FLAGS)
        desk(browser, note)
        phone(browser, note)
        browser.close()


if __name__ == "__main__":
    main()
