"""A season in a real browser: planned, moved by keyboard and by mouse, planned again, taken into the draft."""

from datetime import date, datetime, timedelta

import pytest
from playwright.sync_api import BrowserContext, Page, expect

from tests.e2e.conftest import Server
from tests.e2e.looking import faults
from tests.e2e.test_desk_program import KIT, open_desk
from tests.e2e.test_main_job import ZONE

pytestmark = pytest.mark.browser
LEAST_TARGET_PX = 24


def moved_by_keyboard(page: Page) -> date:
    """Carry the first strength session of the second week a day on; answer the day it came to."""
    session = page.locator(".sea-week").nth(1).get_by_role("button", name="Strength").first
    was = date.fromisoformat(str(session.get_attribute("id"))[2:12])
    session.focus()
    for key in ("Enter", "ArrowDown", "ArrowUp", "ArrowRight", "Enter"):
        page.keyboard.press(key)
    return was + timedelta(days=1)


def at(page: Page, day: date, activity: str = "strength"):
    """Answer the session of a day."""
    return page.locator(f"#s-{day.isoformat()}-{activity}")


def test_a_season_is_planned_moved_planned_again_and_taken_into_the_draft(desk: BrowserContext, server: Server) -> None:
    client_id = server.take_on("Bastian Kerr", kit=KIT)
    page = open_desk(desk, server)
    page.emulate_media(reduced_motion="reduce")
    page.goto(f"{server.address}/desk/clients/{client_id}/season")
    today = datetime.now(ZONE).date()
    trip = today + timedelta(weeks=9)
    page.get_by_label("Trip", exact=True).fill("Harrowcomb traverse")
    page.get_by_label("First day of the trip").fill(trip.isoformat())
    expect(page.get_by_text("Planned: 9 weeks.")).to_be_visible()

    day = moved_by_keyboard(page)
    expect(at(page, day)).to_be_focused()
    expect(at(page, day)).to_contain_text("stays")
    page.keyboard.press("Control+z")
    expect(at(page, day)).to_have_count(0)
    page.keyboard.press("Control+Shift+z")
    expect(at(page, day)).to_be_visible()

    at(page, day).click()
    page.get_by_role("button", name="Lock: this day only").click()
    expect(at(page, day)).to_contain_text("on this day only")

    other = day + timedelta(days=14)
    walk = page.locator(".sea-week").nth(3).get_by_role("button", name="Walk")
    walk.drag_to(page.locator(f"[data-date='{other.isoformat()}']"))
    expect(at(page, other, "walk")).to_contain_text("stays")
    assert faults(page, LEAST_TARGET_PX) == []

    resumes = today + timedelta(days=21)
    page.get_by_text("Plan again after a pause").click()
    page.get_by_label("Pain", exact=True).check()
    page.get_by_label("First day missed").fill((today + timedelta(days=10)).isoformat())
    page.get_by_label("Begins again on").fill(resumes.isoformat())
    page.get_by_role("button", name="Plan the rest anew").click()
    expect(page.get_by_role("status").filter(has_text="60 percent")).to_be_visible()

    page.get_by_label("Circuits from").select_option("descent-legs")
    page.get_by_role("button", name="Into the draft").click()
    expect(page.get_by_text("The time is too short for what is named above")).to_be_visible()
    less = page.get_by_role("button", name="Go knowingly with less")
    while left := less.count():
        less.first.click()
        expect(less).to_have_count(left - 1)
    page.get_by_role("button", name="Into the draft").click()
    page.get_by_role("heading", level=1, name="Bastian Kerr, program version 1").wait_for()
    draft = server.call("GET", f"/clients/{client_id}/programs/draft")["content"]
    assert draft["season"]["paused"]["reason"] == "pain"
    assert draft["starts_on"] == resumes.isoformat()
    assert draft["goal"] == {"name": "Harrowcomb traverse", "date": trip.isoformat()}


def test_what_cannot_be_is_told_with_choices_and_taken_back(desk: BrowserContext, server: Server) -> None:
    client_id = server.take_on("Bastian Kerr", kit=KIT)
    page = open_desk(desk, server)
    page.goto(f"{server.address}/desk/clients/{client_id}/season")
    page.get_by_label("Strength sessions a week").select_option("3")
    page.get_by_label("Wed", exact=True).uncheck()
    expect(page.get_by_role("alert").filter(has_text="What would help")).to_be_visible()
    page.get_by_role("button", name="Into the draft").click()
    expect(page.get_by_text("The plan above does not fit yet")).to_be_visible()
    page.get_by_role("button", name="Undo", exact=True).click()
    expect(page.get_by_role("alert").filter(has_text="What would help")).to_have_count(0)
    page.set_viewport_size({"width": 320, "height": 700})
    assert faults(page, LEAST_TARGET_PX) == []
