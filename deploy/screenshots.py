"""Makes the pictures of README.md: starts the demo, opens it as a practitioner and as a client, and looks.

.venv/bin/python -m deploy.screenshots        after sh deploy/test.sh, which installs a browser
"""

import tempfile
from pathlib import Path
from typing import Any

from playwright.sync_api import Browser, Page, sync_playwright

from tests.e2e.conftest import DESK, FLAGS, PHONE, chromium, running_demo

PICTURES = Path(__file__).parent / "screenshots"
PHONE_HIGHER = {**PHONE, "viewport": {"width": 390, "height": 844}}
_ALL_DRAWN = "() => [...document.images].every((one) => one.complete)"


def picture(page: Page, name: str) -> None:
    """Keep what the page shows now, once it has settled."""
    page.wait_for_timeout(900)
    page.wait_for_function(_ALL_DRAWN)
    page.screenshot(path=PICTURES / f"{name}.png")
    print(f"{name}.png")


def desk(browser: Browser, note: dict[str, Any]) -> None:
    """Look at the practitioner's pages."""
    page = browser.new_context(**DESK).new_page()
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
    page.goto(f"{note['address']}/desk/")
    for name, what in (("Bastian Kerr", "season"), ("Emil Tarrow", "readiness")):
        person = page.get_by_role("link", name=name, exact=True).get_attribute("href") or ""
        page.goto(f"{note['address']}/desk{person.partition('?')[0].removeprefix('/desk')}/{what}")
        page.get_by_role("heading", level=2).first.wait_for()
        picture(page, f"desk-{what}")
        page.goto(f"{note['address']}/desk/")


def phone(browser: Browser, note: dict[str, Any]) -> None:
    """Look at the client's phone, in the middle of a session."""
    page = browser.new_context(**PHONE_HIGHER).new_page()
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
    with tempfile.TemporaryDirectory() as folder, running_demo(Path(folder)) as demo, sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=chromium(), args=FLAGS)
        desk(browser, demo.note)
        phone(browser, demo.note)
        browser.close()


if __name__ == "__main__":
    main()
