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
MOST_UNLIKE = 0.05
"""Lines that lie up to half a unit elsewhere, since a moving drawing's numbers are rounded."""
_PROGRAM = 3 + 3 + 2 + 2 + 2
"""Step-down and squat have a rung on both sides, the other three stand on their lowest."""
_KEPT = "async () => (await (await caches.open('steadfoot-drawings')).keys()).map(({ url }) => url)"
_UNLIKE = """async (moving) => {
  const still = moving.replace('form=moving', 'form=still');
  const drawnBy = async (address) => {
    const image = Object.assign(new Image(), { src: address });
    await image.decode();
    const paper = new OffscreenCanvas(200, 200).getContext('2d');
    paper.drawImage(image, 0, 0, 200, 200);
    return paper.getImageData(0, 0, 200, 200).data;
  };
  const asked = URL.createObjectURL(await (await fetch(still)).blob());
  const [here, there] = [await drawnBy(still), await drawnBy(asked)];
  const ink = there.filter((value, i) => i % 4 === 3 && value > 0).length;
  const off = here.filter((value, i) => Math.abs(value - there[i]) > 96).length / 4;
  return off / ink;
}"""
"""Share of the ink that differs between the still that the worker takes out of a moving drawing and the practice's."""


def _card(page: Page) -> Locator:
    page.get_by_role("link", name="See Step-down").click()
    return page.get_by_role("img", name="Drawing of Step-down, 15 cm step")


def _shows(image: Locator, form: str) -> None:
    page = image.page
    page.wait_for_function(
        "([image, form]) => image.complete && image.naturalWidth > 0 && image.currentSrc.endsWith(form)",
        arg=[image.element_handle(), f"form={form}"],
    )


def _until_kept(page: Page) -> list[str]:
    """Answer the addresses kept: those of the program, and of the library what other tests had drawn."""
    for _ in range(SLOW_MS // 200):
        kept: list[str] = page.evaluate(_KEPT)
        if len(kept) >= _PROGRAM:
            return kept
        time.sleep(0.2)
    raise AssertionError(f"{len(kept)} drawings are kept, not {_PROGRAM}")


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
        kept = _until_kept(page)
        assert all(address.endswith("form=moving") for address in kept)
        assert max(page.evaluate(_UNLIKE, address) for address in kept[:_PROGRAM]) < MOST_UNLIKE
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
