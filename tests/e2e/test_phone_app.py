"""The phone app as a person meets it: pairing, a second phone, an update, another language, large text, a rest."""

import json
import re
from datetime import datetime
from pathlib import Path

import pytest
from playwright.sync_api import Browser, BrowserContext, Page, Playwright, expect

from tests.e2e.conftest import FLAGS, PHONE, Server, chromium
from tests.e2e.test_main_job import SLOW_MS, ZONE, lay_stones, pair, pairing_link, sign_in, write_program

pytestmark = pytest.mark.browser
SECOND_BUILD = "SECOND00"
STATIC = "/app/"
LAID = "button.stone[aria-pressed=true]"
NARROW_PX, LARGE_TEXT_PX = 320, 32
"""The narrowest phone, and twice a browser's usual text size."""


@pytest.fixture
def client_id(server: Server) -> str:
    """Emil, with a session of 15 sets today."""
    return write_program(server)


def new_phone(browser: Browser, **more: object) -> Page:
    context = browser.new_context(**{**PHONE, **more})
    context.set_default_timeout(15_000)
    return context.new_page()


def go(page: Page, tab: str) -> None:
    page.get_by_role("navigation").get_by_role("link", name=tab, exact=True).click()


def test_a_second_phone_shows_what_was_trained_on_the_first(server: Server, browser: Browser, client_id: str) -> None:
    first = new_phone(browser)
    pair(first, pairing_link(server, client_id))
    lay_stones(first, 0, 3)
    first.get_by_role("button", name="Finish here for today").click()
    first.get_by_role("radio", name="4", exact=True).check(force=True)
    first.get_by_role("button", name="Finish: effort 4").click()
    expect(first.get_by_text("All received by Thornwater")).to_be_visible(timeout=SLOW_MS)

    second = new_phone(browser)
    pair(second, pairing_link(server, client_id))
    expect(second.locator(LAID)).to_have_count(3)
    expect(second.get_by_text("3 stones are from your earlier phone.")).to_be_visible()
    expect(second.get_by_text("Finished.")).to_be_visible()
    expect(second.get_by_role("status").filter(has_text="saved on this phone")).to_contain_text("0 sets")
    go(second, "Season")
    line = second.get_by_role("listitem").filter(has_text="From your earlier phone.")
    expect(line).to_contain_text("3 of 15 laid")
    go(second, "Me")
    expect(second.get_by_text("0 entries saved on this phone.")).to_be_visible()

    # What the new phone says counts over it, and both are one session for the practice.
    go(second, "Today")
    second.locator(LAID).first.click()
    second.locator("button.stone.next").click()
    expect(second.locator(LAID)).to_have_count(3)
    second.reload()
    expect(second.locator(LAID)).to_have_count(3)
    expect(second.get_by_text("2 stones are from your earlier phone.")).to_be_visible()


def test_a_typed_code_pairs_a_fresh_browser(server: Server, browser: Browser, client_id: str) -> None:
    code = server.call("POST", f"/clients/{client_id}/invitations", {"delivery": "in_person"})["code"]
    page = new_phone(browser)
    page.goto(f"{server.address}/app/")
    expect(page.get_by_role("heading", name="Pair this phone")).to_be_visible()
    expect(page.get_by_role("heading", name="Put it on your home screen")).to_be_visible()
    order = page.evaluate("[...document.querySelectorAll('label, h2')].map((one) => one.textContent)")
    assert order[:2] == ["Code from your practice", "Put it on your home screen"]
    expect(page.get_by_text("keep your entries")).to_have_count(0)
    page.get_by_label("Code from your practice").fill("not a code")
    page.get_by_role("button", name="Go on").click()
    expect(page.get_by_text("This is not a whole code yet.")).to_be_visible()
    typed = " ".join(re.findall(".{1,4}", code.replace("-", "").lower()))
    page.get_by_label("Code from your practice").fill(typed)
    page.get_by_role("button", name="Go on").click()
    expect(page.get_by_text("Thornwater Physical Therapy is waiting for Emil Tarrow.")).to_be_visible()
    page.get_by_role("button", name="No, stop here").click()
    expect(page.get_by_text("If you stop here, the code is used up.")).to_be_visible()
    page.get_by_role("button", name="Go back").click()
    page.get_by_role("button", name="Yes, this is me").click()
    expect(page.get_by_role("heading", name="Steps and hips, 3 rounds")).to_be_visible()


def test_who_says_no_twice_is_not_paired(server: Server, browser: Browser, client_id: str) -> None:
    page = new_phone(browser)
    page.goto(server.call("POST", f"/clients/{client_id}/invitations", {"delivery": "in_person"})["url"])
    page.get_by_role("button", name="Go on").click()
    page.get_by_role("button", name="No, stop here").click()
    page.get_by_role("button", name="Yes, stop here").click()
    expect(page.get_by_text("Nothing was paired.")).to_be_visible()
    expect(page.get_by_label("Code from your practice")).to_be_visible()


def test_a_link_lets_a_phone_in_only_after_its_number_was_compared(
    server: Server, browser: Browser, desk: BrowserContext, client_id: str
) -> None:
    link = server.call("POST", f"/clients/{client_id}/invitations", {"delivery": "link"})["url"]
    page = new_phone(browser)
    page.goto(link)
    page.get_by_role("button", name="Go on").click()
    page.get_by_role("button", name="Yes, this is me").click()
    expect(page.get_by_role("heading", name="Read this number to Maren Brandvold")).to_be_visible()
    number = page.locator(".check-number").inner_text()
    practitioner = desk.new_page()
    sign_in(practitioner, server)
    practitioner.goto(f"{server.address}/desk/")
    practitioner.get_by_role("button", name="Compare the number on the phone of Emil Tarrow").click()
    box = practitioner.get_by_label("The 4 digits that the phone shows")
    box.fill(f"{(int(number) + 1) % 10_000:04d}")
    practitioner.get_by_role("button", name="Confirm").click()
    expect(practitioner.get_by_text("This is not the number that the phone shows.")).to_be_visible()
    page.get_by_role("button", name="Look now").click()
    expect(page.get_by_text("Not confirmed yet.")).to_be_visible()
    box.fill(number)
    practitioner.get_by_role("button", name="Confirm").click()
    expect(practitioner.get_by_text("Emil Tarrow’s phone is paired.").first).to_be_visible()
    page.get_by_role("button", name="Look now").click()
    expect(page.get_by_role("heading", name="Steps and hips, 3 rounds")).to_be_visible(timeout=SLOW_MS)


def test_the_language_changes_at_once_and_stays(server: Server, browser: Browser, client_id: str) -> None:
    page = new_phone(browser)
    pair(page, pairing_link(server, client_id))
    go(page, "Me")
    page.get_by_role("radio", name="Deutsch").check(force=True)
    expect(page.get_by_role("heading", name="Auf diesem Handy")).to_be_visible()
    page.reload()
    assert page.locator("html").get_attribute("lang") == "de"
    go(page, "Heute")
    page.locator("button.stone.next").click()
    expect(page.get_by_role("status").filter(has_text="auf diesem Handy")).to_be_visible()
    page.get_by_role("link", name="Es tut weh").click()
    expect(page.get_by_role("heading", name="Wo tut es weh?")).to_be_visible()


def test_everything_on_the_phone_can_be_had_as_a_file_that_holds_no_key(
    server: Server, browser: Browser, client_id: str
) -> None:
    page = new_phone(browser)
    pair(page, pairing_link(server, client_id))
    lay_stones(page, 0, 2)
    go(page, "Me")
    with page.expect_download() as waiting:
        page.get_by_role("button", name="Save all of it as a file").click()
    assert re.fullmatch(r"steadfoot-\d{4}-\d\d-\d\d\.json", waiting.value.suggested_filename)
    text = Path(waiting.value.path()).read_text()
    told = json.loads(text)
    assert [one["kind"] for one in told["events"]] == ["session_started", "set_ticked", "set_ticked"]
    assert [one["seq"] for one in told["events"]] == [1, 2, 3]
    assert told["feed"]["program"]["content"]["title"] == "Legs for Harrowcomb"
    assert "token" not in text


def test_a_rest_ends_when_it_should_although_the_page_was_loaded_again(
    server: Server, browser: Browser, client_id: str
) -> None:
    page = new_phone(browser)
    page.clock.install(time=datetime.now(ZONE))
    pair(page, pairing_link(server, client_id))
    lay_stones(page, 0, 1)
    page.clock.pause_at(datetime.fromtimestamp(page.evaluate("Date.now()") / 1000 + 1, ZONE))
    before = int(page.get_by_role("timer").inner_text().removeprefix("0:"))
    assert 35 <= before <= 44
    page.clock.fast_forward(20_000)
    page.reload()
    timer = page.get_by_role("timer")
    expect(timer).to_have_text(f"0:{before - 20:02d}")
    page.clock.run_for((before - 20) * 1_000 + 100)
    expect(timer).to_have_count(0)
    expect(page.get_by_role("status").filter(has_text="Rest is over.")).to_have_count(1)


def _too_wide(page: Page) -> int:
    """Answer by how much the page is wider than the screen; a phone's browser widens the page's own idea of it."""
    return int(page.evaluate("document.documentElement.scrollWidth - screen.width"))


def test_text_of_twice_the_size_needs_no_sideways_scrolling_at_320_px(
    server: Server, playwright: Playwright, client_id: str
) -> None:
    flags = [*FLAGS, f"--blink-settings=defaultFontSize={LARGE_TEXT_PX}"]
    large = playwright.chromium.launch(executable_path=chromium(), args=flags)
    page = new_phone(large, viewport={"width": NARROW_PX, "height": 640}, reduced_motion="reduce")
    pair(page, pairing_link(server, client_id))
    lay_stones(page, 0, 1)
    assert page.evaluate("getComputedStyle(document.documentElement).fontSize") == f"{LARGE_TEXT_PX * 1.125:g}px"
    wide = {"today": _too_wide(page)}
    page.get_by_role("link", name="See Squat").click()
    page.get_by_role("button", name="Lay this stone").wait_for()
    wide["exercise"] = _too_wide(page)
    page.get_by_role("link", name="It hurts").click()
    page.get_by_role("button", name="Knee, front, right").click()
    wide["where"] = _too_wide(page)
    page.get_by_role("button", name="Next").click()
    page.get_by_role("button", name="Change").click()
    wide["how"] = _too_wide(page)
    page.get_by_role("radio", name="7", exact=True).check(force=True)
    page.get_by_role("button", name="Save on this phone").click()
    page.get_by_role("link", name="Go on with the session").click()
    page.get_by_role("button", name="Finish here for today").click()
    page.get_by_role("radio", name="5", exact=True).wait_for()
    wide["after"] = _too_wide(page)
    page.get_by_role("link", name="Back").click()
    for tab in ("Season", "Practice", "Me"):
        page.goto(f"{server.address}/app/{tab.lower()}")
        page.get_by_role("heading", level=1).wait_for()
        wide[tab] = _too_wide(page)
    large.close()
    assert wide == dict.fromkeys(wide, 0)


def test_pain_from_the_page_of_stones_is_linked_only_to_what_the_person_names(
    server: Server, browser: Browser, client_id: str
) -> None:
    page = new_phone(browser)
    pair(page, pairing_link(server, client_id))
    lay_stones(page, 0, 2)

    def report(movement: str | None) -> None:
        page.get_by_role("link", name="It hurts").click()
        page.get_by_role("button", name="Knee, front, right").click()
        page.get_by_role("button", name="Next").click()
        page.get_by_role("radio", name="4", exact=True).check(force=True)
        names = page.get_by_role("group", name="Which movement?").get_by_role("radio")
        assert names.count() == 6
        expect(names.first).to_have_accessible_name("Squat")
        page.get_by_role("button", name="Save on this phone").click()
        expect(page.get_by_text("Please choose a movement, or the last answer.")).to_be_visible()
        page.get_by_role("radio", name=movement or "Not one movement, or I do not know").check(force=True)
        page.get_by_role("button", name="Save on this phone").click()
        page.get_by_role("link", name="Go on with the session").click()

    report(None)
    report("Step-down")
    page.get_by_role("link", name="See Heel raise").click()
    page.get_by_role("link", name="It hurts").click()
    page.get_by_role("button", name="Knee, front, right").click()
    page.get_by_role("button", name="Next").click()
    expect(page.get_by_text("About: Heel raise")).to_be_visible()
    page.get_by_role("radio", name="2", exact=True).check(force=True)
    page.get_by_role("button", name="Save on this phone").click()
    page.get_by_role("link", name="Go on with the session").click()
    page.get_by_role("link", name="Today", exact=True).click()
    go(page, "Me")
    expect(page.get_by_text("The practice has all of them.")).to_be_visible(timeout=SLOW_MS)
    items = server.call("GET", f"/clients/{client_id}/timeline?limit=200")["items"]
    bodies = [one["body"] for one in items if one["kind"] == "pain_reported"]
    assert [one.get("exercise") for one in bodies] == [None, "step-down", "heel-raise"]
    assert [one.get("prescription") for one in bodies] == [None, "p1", "p3"]
    assert all(one["planned_id"] for one in bodies)
