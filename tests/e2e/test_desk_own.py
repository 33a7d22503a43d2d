"""An exercise of the practice's own, from an empty page to the phone, by keyboard alone."""

import re

import pytest
from playwright.sync_api import Browser, BrowserContext, Locator, Page, expect

from tests.e2e.conftest import PHONE, Server
from tests.e2e.looking import faults
from tests.e2e.test_desk_program import open_desk, open_program, plan
from tests.e2e.test_main_job import pair, pairing_link

pytestmark = pytest.mark.browser
NAME = "Ridge bend"
NARROW = {"width": 360, "height": 800}
WORDS = {
    "Name": NAME,
    "What it is good for": "It gets your knees ready for the way down.",
    "Cue 1": "Keep your heels down.",
    "Cue 2": "Knees over your toes.",
    "Cue 3": "Look ahead.",
    "Fault 1: what you see": "The knees fall in.",
    "Fault 1: what to do instead": "Press them out.",
    "Caution 1": "Hold on to something steady.",
    "Name of variant 1": "both legs",
    "Variant 1, Step 1": "Stand with your feet apart.",
    "Variant 1, Step 2": "Bend your knees a little.",
}


@pytest.fixture
def page(desk: BrowserContext, server: Server) -> Page:
    return open_desk(desk, server)


def _fill(page: Page) -> None:
    for label, text in WORDS.items():
        page.get_by_label(label, exact=True).focus()
        page.keyboard.insert_text(text)
    for box in ("knee control", "thigh"):
        page.get_by_role("checkbox", name=box, exact=True).focus()
        page.keyboard.press("Space")


def _spot(handle: Locator) -> tuple[float, float]:
    circle = handle.locator(".knob")
    return float(circle.get_attribute("cx") or 0), float(circle.get_attribute("cy") or 0)


def _until_moved(handle: Locator, axis: str, before: float) -> None:
    expect(handle.locator(".knob")).not_to_have_attribute(axis, f"{before:g}")


def _draw(page: Page) -> None:
    page.get_by_role("button", name="Variant 1: Begin the drawing").press("Enter")
    page.get_by_role("button", name="Add a pose after this one").press("Enter")
    pelvis = page.get_by_role("button", name="pelvis, movable")
    _, before = _spot(pelvis)
    for _ in range(8):
        pelvis.press("ArrowDown")
        _, now = _spot(pelvis)
        _until_moved(pelvis, "cy", before) if now == before else None
        _, before = _spot(pelvis)
    wrist = page.get_by_role("button", name="wrist, right, movable")
    reach, _ = _spot(wrist)
    page.get_by_role("radio", name="both sides alike").press("Space")
    elbow = page.get_by_role("slider", name="Elbow flexion, right")
    elbow.press("PageUp")
    _until_moved(wrist, "cx", reach)
    page.get_by_role("button", name="Undo", exact=True).press("Enter")
    expect(wrist.locator(".knob")).to_have_attribute("cx", f"{reach:g}")
    page.get_by_role("button", name="Redo", exact=True).press("Enter")
    _until_moved(wrist, "cx", reach)
    page.get_by_role("button", name="Play and check").press("Enter")
    expect(page.get_by_role("img", name=f"{NAME}, both legs, moving")).to_be_visible()
    expect(page.get_by_text("Nothing here that a body cannot do.")).to_be_visible()


def test_an_exercise_is_written_drawn_saved_and_trained(page: Page, server: Server, browser: Browser) -> None:
    page.goto(f"{server.address}/desk/exercises")
    page.get_by_role("link", name="Write your own exercise").press("Enter")
    page.get_by_role("button", name="Save", exact=True).press("Enter")
    expect(page.get_by_role("alert").filter(has=page.get_by_role("heading"))).to_be_focused()
    _fill(page)
    page.reload()  # asks before it leaves; what was typed is there again
    expect(page.get_by_label("Name", exact=True)).to_have_value(NAME)
    _draw(page)
    assert faults(page, 44) == []
    page.set_viewport_size(NARROW)
    assert faults(page, 44) == []
    page.get_by_role("button", name="Save", exact=True).press("Enter")
    expect(page.get_by_role("heading", level=1)).to_have_text(NAME)
    expect(page.get_by_role("img", name=f"Drawing of {NAME}, both legs")).to_be_visible()
    assert faults(page, 44) == []

    code = page.url.rpartition("/")[2]
    client_id = server.take_on("Emil Tarrow")
    content = plan(exercise=code, variant="v1", sides="both", tempo_down_s=None)
    server.call("POST", f"/clients/{client_id}/programs", {"content": content})
    page.set_viewport_size({"width": 1280, "height": 800})
    open_program(page, server, client_id)
    expect(page.get_by_role("heading", level=3, name=re.compile(NAME))).to_be_visible()
    phone = browser.new_context(**PHONE).new_page()
    pair(phone, pairing_link(server, client_id))
    phone.get_by_role("link", name=f"See {NAME}").click()
    picture = phone.get_by_role("img", name=f"Drawing of {NAME}, both legs")
    expect(picture).to_be_visible()
    phone.wait_for_function("(image) => image.complete && image.naturalWidth > 0", arg=picture.element_handle())
    expect(phone.get_by_text("Bend your knees a little.")).to_be_visible()
