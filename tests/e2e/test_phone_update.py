"""A new build of the phone app: offered between sessions only, and nothing is lost."""

import re
from pathlib import Path

import pytest
from playwright.sync_api import Page, Playwright, expect

from tests.e2e.conftest import Server, phone_browser
from tests.e2e.test_main_job import lay_stones, pair, pairing_link
from tests.e2e.test_phone_app import client_id, go
from tests.e2e.test_phone_offline import Between, between

__all__ = ["client_id"]

pytestmark = pytest.mark.browser
SECOND_BUILD = "SECOND00"
STATIC = "/app/"
LAID = "button.stone[aria-pressed=true]"
LAST_RESORT = Path(__file__).parents[2] / "deploy/last-resort-sw.js"


_UPDATE = """async () => {
  const found = await navigator.serviceWorker.getRegistration();
  const fresh = (await found.update()).installing ?? found.waiting;
  const isThere = () => fresh.state === 'installed';
  if (!isThere()) await new Promise((done) => fresh.addEventListener('statechange', () => isThere() && done()));
}"""


def _second_build(way: Between, page: Page) -> None:
    """Serve the same app under other names, as a new version of it would be."""
    html = page.request.get(f"{way.address}{STATIC}index.html").text()
    worker = page.request.get(f"{way.address}{STATIC}sw.js").text()
    entry = re.search(r"assets/index-([\w-]+)\.js", html)
    assert entry, "the page names its script"
    new = f"assets/index-{SECOND_BUILD}.js"
    page_changed = html.replace(entry[0], new).encode()
    revised = re.sub(r'"revision":"\w+","url":"index.html"', '"revision":"second","url":"index.html"', worker)
    worker_changed = revised.replace(entry[0], new).encode()
    assert worker_changed != worker.encode()
    script = page.request.get(f"{way.address}{STATIC}{entry[0]}").body()
    way.files = {
        STATIC: page_changed,
        f"{STATIC}index.html": page_changed,
        f"{STATIC}sw.js": worker_changed,
        f"{STATIC}{new}": script,
    }
    page.evaluate(_UPDATE)


def test_an_update_is_offered_between_sessions_only_and_loses_nothing(
    server: Server, playwright: Playwright, tmp_path: Path, client_id: str
) -> None:
    with between(server.address) as way, phone_browser(playwright, tmp_path / "phone") as phone:
        page = phone.pages[0]
        pair(page, way.link(pairing_link(server, client_id)))
        page.reload()
        lay_stones(page, 0, 2)
        _second_build(way, page)
        go(page, "Me")
        expect(page.get_by_text("3 entries saved on this phone.")).to_be_visible()
        offer = page.get_by_role("button", name="Use the new version")
        expect(offer).to_have_count(0)
        go(page, "Today")
        page.get_by_role("button", name="Pause").click()
        page.get_by_role("button", name="Skip").click()
        page.get_by_role("button", name="Finish here for today").click()
        page.get_by_role("radio", name="5", exact=True).check(force=True)
        page.get_by_role("button", name="Finish: effort 5").click()
        go(page, "Me")
        offer.click()
        expect(page.get_by_text(f"Version {SECOND_BUILD}.")).to_be_visible()
        expect(page.get_by_text("4 entries saved on this phone.")).to_be_visible()
        phone.set_offline(True)
        go(page, "Today")
        page.reload()
        expect(page.locator(LAID)).to_have_count(2)
        expect(page.get_by_text("Finished.")).to_be_visible()


_CACHED = """async () => {
  const all = await Promise.all((await caches.keys()).map(async (name) => (await caches.open(name)).keys()));
  return all.flat().map((one) => new URL(one.url).pathname);
}"""
_SCOPE = "navigator.serviceWorker.ready.then((found) => new URL(found.scope).pathname)"
_GONE = "async () => (await navigator.serviceWorker.getRegistrations()).length === 0"


def test_a_broken_worker_can_be_taken_off_every_phone_and_nothing_that_was_entered_goes_with_it(
    server: Server, playwright: Playwright, tmp_path: Path, client_id: str
) -> None:
    with between(server.address) as way, phone_browser(playwright, tmp_path / "phone") as phone:
        page = phone.pages[0]
        pair(page, way.link(pairing_link(server, client_id)))
        page.reload()
        phone.set_offline(True)
        lay_stones(page, 0, 2)
        cached = page.evaluate(_CACHED)
        assert page.evaluate(_SCOPE) == STATIC
        assert f"{STATIC}index.html" in cached
        assert [one for one in cached if one.startswith("/api/") and "/figures/" not in one and ".svg" not in one] == []
        phone.set_offline(False)
        for path, words in (("/healthz", "alive"), ("/desk/", "Password")):  # none of the worker's business
            page.goto(f"{way.address}{path}")
            expect(page.get_by_text(words).first).to_be_visible()
        page.goto(f"{way.address}{STATIC}")
        way.files = {f"{STATIC}sw.js": LAST_RESORT.read_bytes()}
        page.evaluate("navigator.serviceWorker.getRegistration().then((found) => found.update())")
        page.wait_for_function(_GONE)
        page.reload()
        expect(page.locator(LAID)).to_have_count(2)
        lay_stones(page, 2, 3)
