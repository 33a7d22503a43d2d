"""A walk recorded by another app and shared to this one, by the post that the manifest names."""

from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, Playwright, expect

from tests.e2e.conftest import Server, phone_browser
from tests.e2e.looking import faults
from tests.e2e.test_main_job import pair, pairing_link
from tests.e2e.test_phone_app import client_id, go, new_phone

__all__ = ["client_id"]

pytestmark = pytest.mark.browser
WALKS = Path(__file__).parent.parent / "vectors" / "gpx"
PHONE_TARGET_PX = 48
HUGE_BYTES = 20_000_001
NARROW = {"width": 320, "height": 740}

_SHARE = """async ([text, bytes]) => {
  const { share_target: { action, method, enctype, params } } = await (await fetch('/app/manifest.webmanifest')).json();
  const form = Object.assign(document.createElement('form'), { action, method, enctype });
  const input = Object.assign(document.createElement('input'), { type: 'file', name: params.files[0].name });
  const given = new DataTransfer();
  given.items.add(new File([text ?? new Uint8Array(bytes)], 'walk.gpx', { type: 'application/gpx+xml' }));
  input.files = given.files;
  form.append(input);
  document.body.append(form);
  form.submit();
}"""


def share(page: Page, text: str | None, size: int = 0) -> None:
    """Post a walk as the phone's share sheet does, from a page of the same origin."""
    with page.expect_navigation():
        page.evaluate(_SHARE, [text, size])


def walk(name: str) -> str:
    return (WALKS / name).read_text()


def distance(page: Page) -> float:
    return float(page.get_by_label("How far?").input_value())


def say_yes(page: Page, link: str) -> None:
    page.goto(link)
    page.get_by_role("button", name="Go on").click()
    page.get_by_role("button", name="Yes, this is me").click()


def open_app(page: Page, server: Server) -> None:
    page.goto(f"{server.address}/app/")
    page.evaluate("navigator.serviceWorker.ready.then(() => true)")
    page.reload()  # from now on the worker answers for this page


def test_a_walk_shared_offline_before_pairing_waits_through_a_cold_start_and_is_saved(
    server: Server, playwright: Playwright, tmp_path: Path, client_id: str
) -> None:
    with phone_browser(playwright, tmp_path / "phone") as phone:
        open_app(phone.pages[0], server)
        phone.set_offline(True)
        page = phone.pages[0]
        share(page, walk("Mojstrovka.gpx"))
        expect(page).to_have_url(f"{server.address}/app/walk")
        expect(page.get_by_text("The walk you shared waits on this phone.")).to_be_visible()
        share(page, walk("korita-zbevnica.gpx"))
        page.set_viewport_size(NARROW)
        assert faults(page, PHONE_TARGET_PX) == []
    with phone_browser(playwright, tmp_path / "phone") as phone:
        page = phone.pages[0]
        say_yes(page, pairing_link(server, client_id))
        expect(page.get_by_text("Read. Please look it over, then save.")).to_be_visible()
        first = distance(page)
        phone.set_offline(True)
        page.reload()  # the second walk does not push out what is not saved
        assert distance(page) == first
        page.get_by_role("button", name="let it take the place of these numbers").click()
        expect(page.get_by_text("A shared walk waits")).to_have_count(0)
        assert distance(page) != first
        page.get_by_role("radio", name="4", exact=True).check(force=True)
        page.get_by_label("Weight of your pack").fill("5")
        page.get_by_label("How many minutes?").fill("90")
        page.get_by_role("button", name="Save this walk").click()
        expect(page.get_by_role("heading", name="Steps and hips, 3 rounds")).to_be_visible()
        go(page, "Me")
        expect(page.get_by_text("1 entry saved on this phone.")).to_be_visible()


def test_a_share_that_is_no_walk_says_why_once(server: Server, browser: Browser, client_id: str) -> None:
    page = new_phone(browser)
    pair(page, pairing_link(server, client_id))
    page.reload()
    share(page, "<html></html>")
    expect(page.get_by_text("This is not a GPX file that can be read.")).to_be_visible()
    share(page, None, HUGE_BYTES)
    expect(page.get_by_text("This file is larger than any walk (20 MB).")).to_be_visible()
    page.reload()
    expect(page.get_by_text("larger than any walk")).to_have_count(0)


def test_a_share_without_a_worker_leads_to_the_form(server: Server, browser: Browser, client_id: str) -> None:
    page = new_phone(browser, service_workers="block")
    page.goto(f"{server.address}/app/")
    share(page, walk("Mojstrovka.gpx"))
    expect(page.get_by_text("The walk you shared did not arrive.")).to_be_visible()
    say_yes(page, pairing_link(server, client_id))
    expect(page.get_by_role("heading", name="Steps and hips, 3 rounds")).to_be_visible()
    share(page, None, HUGE_BYTES)
    expect(page.get_by_text("The shared file did not arrive.")).to_be_visible()
    expect(page.get_by_label("How far?")).to_be_visible()
