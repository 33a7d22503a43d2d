"""Drawings on the phone's card and on the desk: moving, still, offline, and readable by tools."""

import shutil
import time
from pathlib import Path

import pytest
from playwright.sync_api import Browser, BrowserContext, Locator, Page, Playwright, expect

from tests.e2e.conftest import Server, phone_browser
from tests.e2e.looking import faults, violations
from tests.e2e.test_main_job import SLOW_MS, pair, pairing_link, sign_in, write_program

pytestmark = pytest.mark.browser
_WANTED = 2 * (3 + 3 + 2 + 2 + 2)
"""Still and moving; step-down and squat have a rung on both sides, the other three stand on their lowest."""
_KEPT = "async () => (await (await caches.open('steadfoot-drawings')).keys()).length"


def _card(page: Page) -> Locator:
    page.get_by_role("link", name="See Step-down").click()
    return page.get_by_role("img", name="Drawing of Step-down, 15 cm step")


def _shows(image: Locator, form: str) -> None:
    page = image.page
    page.wait_for_function(
        "([image, form]) => image.complete && image.naturalWidth > 0 && image.currentSrc.endsWith(form)",
        arg=[image.element_handle(), f"form={form}"],
    )


def _until_kept(page: Page) -> None:
    for _ in range(SLOW_MS // 200):
        if page.evaluate(_KEPT) == _WANTED:
            return
        time.sleep(0.2)
    raise AssertionError(f"{page.evaluate(_KEPT)} drawings are kept, not {_WANTED}")


def test_the_card_moves_is_held_still_and_is_there_after_a_cold_start_without_a_network(
    server: Server, playwright: Playwright, tmp_path: Path
) -> None:
    profile = tmp_path / "phone"
    with phone_browser(playwright, profile) as phone:
        page = phone.pages[0]
        pair(page, pairing_link(server, write_program(server)))
        image = _card(page)
        _shows(image, "moving")
        assert violations(page) == []
        _until_kept(page)
    shutil.rmtree(profile / "Default/Cache")  # a browser may clear it at any time; what the app put by must be enough

    with phone_browser(playwright, profile, offline=True) as phone:
        page = phone.new_page()
        page.goto(f"{server.address}/app/")
        image = _card(page)
        _shows(image, "moving")
        before = image.bounding_box()
        page.get_by_role("button", name="Hold still").click()
        _shows(image, "still")
        assert image.bounding_box() == before
        page.get_by_role("button", name="10 cm step").click()
        _shows(page.get_by_role("img", name="Drawing of Step-down, 10 cm step"), "still")
        page.get_by_role("button", name="Show the movement").click()
        _shows(page.get_by_role("img", name="Drawing of Step-down, 10 cm step"), "moving")


def test_who_asks_for_less_motion_gets_the_still_drawing(
    server: Server, playwright: Playwright, tmp_path: Path
) -> None:
    with phone_browser(playwright, tmp_path / "phone", reduced_motion="reduce") as phone:
        page = phone.pages[0]
        pair(page, pairing_link(server, write_program(server)))
        _shows(_card(page), "still")
        expect(page.get_by_role("button", name="Hold still")).to_be_hidden()


def test_the_desk_shows_the_rungs_and_moves_one_at_a_time(server: Server, desk: BrowserContext) -> None:
    write_program(server)
    page = desk.new_page()
    sign_in(page, server)
    page.goto(f"{server.address}/desk/exercises/step-down")
    first, second = (page.get_by_role("img", name=f"Drawing of Step-down, {one} cm step") for one in (10, 15))
    for image in (first, second):
        image.scroll_into_view_if_needed()
        _shows(image, "still")
    page.get_by_role("button", name="Show the movement 10 cm step").press("Enter")
    _shows(first, "moving")
    page.get_by_role("button", name="Show the movement 15 cm step").press("Space")
    _shows(second, "moving")
    _shows(first, "still")
    assert violations(page) == []


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_the_library_shows_drawings_on_a_narrow_screen_too(server: Server, browser: Browser, scheme: str) -> None:
    write_program(server)
    context = browser.new_context(
        viewport={"width": 320, "height": 800}, color_scheme=scheme, reduced_motion="reduce", locale="en-GB"
    )
    page = context.new_page()
    sign_in(page, server)
    page.goto(f"{server.address}/desk/exercises")
    _shows(page.locator("img.ed-still").first, "still")
    assert faults(page, 44) == []
    page.goto(f"{server.address}/desk/exercises/squat")
    _shows(page.get_by_role("img", name="Drawing of Squat").first, "still")
    assert faults(page, 44) == []
