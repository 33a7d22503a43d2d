"""The phone where its storage fails: held by another window, full, cleared, scribbled over; and months of silence."""

import re
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Page, Playwright, expect

from tests.bench.long_silence import drain, received_ids, silent_phone
from tests.e2e.conftest import Server, phone_browser
from tests.e2e.looking import faults
from tests.e2e.silence import OUTBOX, Silence, outbox_bundle
from tests.e2e.test_main_job import SLOW_MS, ZONE, lay_stones, pair, pairing_link, today, write_program
from tests.e2e.test_phone_offline import Between, between

pytestmark = pytest.mark.browser
LAID = "button.stone[aria-pressed=true]"
_HOLD = """() => new Promise((done) => {
  const opening = indexedDB.open('steadfoot');
  opening.onsuccess = () => { window.held = opening.result; done(opening.result.version); };
})"""
_OPENS = re.compile(rb"(=[`\"]steadfoot[`\"],\w+=)1,")

# Chromium's own switch for a quota (Storage.overrideQuotaForOrigin) changes nothing in a headless shell.
_FILL = """() => {
  const { add } = IDBObjectStore.prototype;
  IDBObjectStore.prototype.add = () => { throw new DOMException('full', 'QuotaExceededError'); };
  window.makeRoom = () => { IDBObjectStore.prototype.add = add; };
}"""


@pytest.fixture
def way(server: Server) -> Iterator[Between]:
    """What stands between the phone and the practice."""
    with between(server.address) as found:
        yield found


def _new_schema(way: Between, page: Page) -> None:
    """Serve the app as a build that wants the next version of the phone's database."""
    name = page.evaluate("new URL(document.querySelector('script[type=module]').src).pathname")
    script = page.request.get(f"{way.address}{name}").body()
    changed, count = _OPENS.subn(rb"\g<1>2,", script)
    assert count == 1, "the app opens its database in one place"
    way.files[name] = changed


def test_a_window_held_up_by_an_old_one_says_so_and_goes_on_by_itself_when_that_is_closed(
    server: Server, way: Between, playwright: Playwright, tmp_path: Path
) -> None:
    way.is_remembered = False
    with phone_browser(playwright, tmp_path / "phone", service_workers="block") as phone:
        old = phone.pages[0]
        old.goto(way.link(pairing_link(server, write_program(server))))
        old.get_by_role("button", name="Go on").click()
        old.get_by_role("button", name="Yes, this is me").click()
        lay_stones(old, 0, 2)
        assert old.evaluate(_HOLD) == 1  # a page whose code does not let go when it is asked to
        _new_schema(way, old)
        new = phone.new_page()
        new.goto(f"{way.address}/app/")
        expect(new.get_by_role("alert").first).to_contain_text("Please close that window.", timeout=5_000)
        assert faults(new, least_target_px=44) == []
        old.close()
        expect(new.locator(LAID)).to_have_count(2, timeout=SLOW_MS)
        lay_stones(new, 2, 3)
        assert new.evaluate("indexedDB.databases().then((all) => all.map((one) => one.version))") == [2]


def test_a_full_phone_says_so_shows_nothing_as_saved_and_goes_on_when_there_is_room(
    server: Server, playwright: Playwright, tmp_path: Path
) -> None:
    with phone_browser(playwright, tmp_path / "phone") as phone:
        page = phone.pages[0]
        pair(page, pairing_link(server, write_program(server)))
        lay_stones(page, 0, 1)
        page.evaluate(_FILL)
        page.locator("button.stone.next").click()
        expect(page.get_by_text("no room left").first).to_be_visible()
        page.locator("button.stone").last.click()  # far below the title and its line
        expect(page.locator("footer .trouble")).to_contain_text("no room left")
        expect(page.locator("footer .trouble")).to_be_in_viewport()
        expect(page.locator(LAID)).to_have_count(1)
        page.evaluate("window.makeRoom()")
        lay_stones(page, 1, 2)
        expect(page.get_by_text("no room left")).to_have_count(0)


def _clear_databases(page: Page) -> None:
    page.evaluate("""async () => {
      for (const { name } of await indexedDB.databases())
        await new Promise((done) => { indexedDB.deleteDatabase(name).onsuccess = done; });
    }""")


def test_a_phone_whose_databases_were_cleared_says_what_is_lost_and_takes_up_again_with_a_new_code(
    server: Server, playwright: Playwright, tmp_path: Path
) -> None:
    client_id, profile = write_program(server), tmp_path / "phone"
    with phone_browser(playwright, profile) as phone:
        page = phone.pages[0]
        pair(page, pairing_link(server, client_id))
        lay_stones(page, 0, 2)
        expect(page.get_by_text("All received by Thornwater")).to_be_visible(timeout=SLOW_MS)
        phone.set_offline(True)
        lay_stones(page, 2, 3)
        page.goto("about:blank")
        phone.set_offline(False)
        page.goto(f"{server.address}/app/icon.svg")
        _clear_databases(page)
        page.goto(f"{server.address}/app/")
        expect(page.get_by_text("the browser has cleared it")).to_be_visible()
        expect(page.get_by_text("1 entry had not been sent yet and is lost.")).to_be_visible()
        assert faults(page, least_target_px=44) == []
        pair(page, pairing_link(server, client_id))
        expect(page.locator(LAID)).to_have_count(2, timeout=SLOW_MS)
        lay_stones(page, 2, 3)
    phones: list[Any] = server.call("GET", f"/clients/{client_id}/devices")["items"]
    assert len(phones) == 2, "a phone that lost its numbers counts from 1 again, as a new one"


@pytest.mark.parametrize("harm", ["cut", "overwritten"])
def test_a_phone_whose_database_files_are_damaged_starts_says_what_it_can_and_can_be_paired(
    server: Server, playwright: Playwright, tmp_path: Path, harm: str
) -> None:
    client_id, profile = write_program(server), tmp_path / "phone"
    with phone_browser(playwright, profile) as phone:
        pair(phone.pages[0], pairing_link(server, client_id))
        lay_stones(phone.pages[0], 0, 2)
        expect(phone.pages[0].get_by_text("All received by Thornwater")).to_be_visible(timeout=SLOW_MS)
    (folder,) = profile.glob("**/IndexedDB/*.indexeddb.leveldb")
    for file in folder.iterdir():
        if file.is_file():
            size = file.stat().st_size
            file.write_bytes(b"" if harm == "cut" else b"\xa5" * size)
    with phone_browser(playwright, profile) as phone:
        page = phone.pages[0]
        page.goto(f"{server.address}/app/")
        expect(page.get_by_text("the browser has cleared it")).to_be_visible()
        pair(page, pairing_link(server, client_id))
        expect(page.locator(LAID)).to_have_count(2, timeout=SLOW_MS)


def test_months_without_a_signal_are_received_whole_once_and_while_they_are_sent_a_tap_is_still_saved(
    server: Server, way: Between, playwright: Playwright, tmp_path: Path
) -> None:
    client_id = write_program(server)
    way.files = {OUTBOX: outbox_bundle()}
    with phone_browser(playwright, tmp_path / "phone", reduced_motion="reduce") as phone:
        page = phone.pages[0]
        pair(page, way.link(pairing_link(server, client_id)))
        total = silent_phone(page, Silence(90, 1_000, today(), ZONE))
        page.reload()
        expect(page.get_by_text("saved on this phone").first).to_be_visible()
        expect(page.get_by_text("All received")).to_have_count(0)
        found = drain(page, total, slower_by=1)
        expect(page.get_by_text("All received by Thornwater")).to_be_visible(timeout=SLOW_MS)
        kept = page.evaluate("""() => new Promise((told) => { indexedDB.open('steadfoot').onsuccess = ({ target }) =>
          target.result.transaction('events').objectStore('events').getAll().onsuccess = (all) =>
            told(all.target.result.map((one) => one.id)); })""")
    ids = received_ids(server, client_id)
    assert sorted(ids) == sorted(kept)
    assert len(set(ids)) == len(ids) > total
    assert found.taps_ms, "stones were laid meanwhile"
