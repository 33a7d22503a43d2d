"""Every screen of both apps, small and large, by day and by night: looked at by a program, before a person does."""

from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser, BrowserContext, Page, expect

from tests.e2e.conftest import PASSWORD, Demo
from tests.e2e.looking import faults, walk_by_tab
from tests.e2e.walking import colleague_of, desk_paths, walk_as

pytestmark = pytest.mark.browser
PHONE_TARGET_PX, DESK_TARGET_PX = 48, 44
PLACE = {"locale": "en-GB", "timezone_id": "Europe/Vienna", "reduced_motion": "reduce"}


@pytest.fixture(scope="module")
def phone(one_browser: Browser, demo: Demo) -> Iterator[Page]:
    """A phone at the narrowest width, paired as someone with a program, some stones laid."""
    context = one_browser.new_context(viewport={"width": 320, "height": 640}, has_touch=True, is_mobile=True, **PLACE)
    page = context.new_page()
    page.set_default_timeout(15_000)
    page.goto(demo.link_for("Jonna Stroud"))
    assert faults(page, PHONE_TARGET_PX) == []
    page.get_by_role("button", name="Go on").click()
    accept = page.get_by_role("button", name="Yes, this is me")
    accept.wait_for()
    assert faults(page, PHONE_TARGET_PX) == []
    accept.click()
    page.locator("button.stone.next").click()
    expect(page.locator("button.stone[aria-pressed=true]")).to_have_count(1)
    yield page
    context.close()


@pytest.fixture(scope="module")
def desk(one_browser: Browser, demo: Demo) -> Iterator[BrowserContext]:
    """A signed-in practitioner's browser."""
    context = one_browser.new_context(viewport={"width": 1440, "height": 900}, **PLACE)
    page = context.new_page()
    page.goto(f"{demo.address}/desk/")
    page.get_by_label("Email").wait_for()
    assert faults(page, DESK_TARGET_PX) == []
    page.get_by_label("Email").fill(demo.note["sign_in"]["email"])
    page.get_by_label("Password", exact=True).fill(demo.note["sign_in"]["password"])
    page.get_by_role("button", name="Sign in").click()
    page.get_by_role("link", name="Emil Tarrow", exact=True).wait_for()
    page.close()
    yield context
    context.close()


PHONE_SCREENS = {
    "today": "/app/",
    "hurts": "/app/hurts",
    "stop": "/app/stop",
    "one sign": "/app/stop/chest_pain",
    "season": "/app/season",
    "practice": "/app/practice",
    "me": "/app/me",
    "health questions": "/app/health",
    "another walk": "/app/walk",
    "not found": "/app/nowhere",
}


@pytest.mark.parametrize("screen", PHONE_SCREENS)
def test_a_screen_of_the_phone_has_no_fault_at_320_px(phone: Page, demo: Demo, screen: str) -> None:
    phone.goto(f"{demo.address}{PHONE_SCREENS[screen]}")
    phone.get_by_role("heading", level=1).wait_for()
    phone.emulate_media(color_scheme="light")
    light = faults(phone, PHONE_TARGET_PX)
    phone.emulate_media(color_scheme="dark")
    assert (light, faults(phone, PHONE_TARGET_PX)) == ([], [])


def test_the_steps_of_a_session_have_no_fault_at_320_px(phone: Page, demo: Demo) -> None:
    phone.goto(f"{demo.address}/app/")
    phone.get_by_role("link", name="See").click()
    phone.get_by_role("button", name="Lay this stone").wait_for()
    assert faults(phone, PHONE_TARGET_PX) == []
    phone.get_by_role("link", name="It hurts").click()
    phone.get_by_role("button", name="Knee, front, right").click()
    assert faults(phone, PHONE_TARGET_PX) == []
    phone.get_by_role("button", name="Next").click()
    phone.get_by_role("radio", name="While moving").wait_for()
    assert faults(phone, PHONE_TARGET_PX) == []
    phone.get_by_role("radio", name="4", exact=True).check(force=True)
    phone.get_by_role("radio", name="While moving").check(force=True)
    phone.get_by_role("button", name="Save on this phone").click()
    phone.get_by_text("Saved: right knee").first.wait_for()
    assert faults(phone, PHONE_TARGET_PX) == []


def test_the_questions_after_a_session_have_no_fault_at_320_px(phone: Page, demo: Demo) -> None:
    phone.goto(f"{demo.address}/app/")
    phone.get_by_role("button", name="Finish here for today").click()
    phone.get_by_role("radio", name="5", exact=True).wait_for()
    assert faults(phone, PHONE_TARGET_PX) == []


def _desk_paths(demo: Demo) -> dict[str, str]:
    people = {one["display_name"]: one["id"] for one in demo.http.get("/api/v1/clients").json()["items"]}
    emil, marek = people["Emil Tarrow"], people["Marek Sorrel"]
    return {
        "caseload": "/desk/",
        "status": "/desk/practice/status",
        "clients": "/desk/clients",
        "new client": "/desk/clients/new",
        "person": f"/desk/clients/{emil}",
        "person without a program": f"/desk/clients/{marek}",
        "edit": f"/desk/clients/{emil}/edit",
        "phones": f"/desk/clients/{emil}/phones",
        "screening": f"/desk/clients/{emil}/screening",
        "tests": f"/desk/clients/{emil}/tests",
        "load": f"/desk/clients/{emil}/load",
        "readiness": f"/desk/clients/{emil}/readiness",
        "readiness without a trip": f"/desk/clients/{marek}/readiness",
        "trip": f"/desk/clients/{emil}/trip",
        "trip without legs": f"/desk/clients/{marek}/trip",
        "season": f"/desk/clients/{emil}/season?pause=pain",
        "first season": f"/desk/clients/{marek}/season",
        "sources": "/desk/sources",
        "account": "/desk/account",
        "people": "/desk/practice/people",
        "words": "/desk/practice/words",
        "program": f"/desk/clients/{emil}/program",
        "first program": f"/desk/clients/{marek}/program",
        "templates": "/desk/templates",
        "exercises": "/desk/exercises",
        "one exercise": "/desk/exercises/step-down",
        "not found": "/desk/nowhere",
    }


DESK_SCREENS = [
    "caseload",
    "status",
    "clients",
    "new client",
    "person",
    "person without a program",
    "edit",
    "phones",
    "screening",
    "tests",
    "load",
    "readiness",
    "readiness without a trip",
    "season",
    "first season",
    "trip",
    "trip without legs",
    "sources",
    "account",
    "people",
    "words",
    "program",
    "first program",
    "templates",
    "exercises",
    "one exercise",
    "not found",
]


@pytest.mark.parametrize("screen", DESK_SCREENS)
def test_a_screen_of_the_desk_has_no_fault_large_by_day_and_small_by_night(
    desk: BrowserContext, demo: Demo, screen: str
) -> None:
    page = desk.new_page()
    page.goto(f"{demo.address}{_desk_paths(demo)[screen]}")
    page.get_by_role("heading", level=1).wait_for()
    page.wait_for_timeout(900)
    large = faults(page, DESK_TARGET_PX)
    page.set_viewport_size({"width": 320, "height": 900})
    page.emulate_media(color_scheme="dark")
    page.wait_for_timeout(100)
    small = faults(page, DESK_TARGET_PX)
    page.close()
    assert (large, small) == ([], [])


@pytest.mark.parametrize("screen", ["caseload", "person", "program", "phones"])
def test_the_focus_walks_through_a_desk_screen_and_is_always_seen(
    desk: BrowserContext, demo: Demo, screen: str
) -> None:
    page = desk.new_page()
    page.goto(f"{demo.address}{_desk_paths(demo)[screen]}")
    page.get_by_role("heading", level=1).wait_for()
    page.wait_for_timeout(900)
    spots = walk_by_tab(page)
    page.close()
    assert len(spots) > 8
    assert [spot["name"] for spot in spots if spot["covered"] or not spot["ring"]] == []


@pytest.mark.parametrize("screen", ["today", "hurts", "season", "me"])
def test_the_focus_walks_through_a_phone_screen_and_is_always_seen(phone: Page, demo: Demo, screen: str) -> None:
    phone.goto(f"{demo.address}{PHONE_SCREENS[screen]}")
    phone.get_by_role("heading", level=1).wait_for()
    spots = walk_by_tab(phone)
    assert len(spots) > 4
    assert [spot["name"] for spot in spots if spot["covered"] or not spot["ring"]] == []


LOOKS = ("Find a", "Which test", "Print", "Show the movement", "Show earlier", "Export this record")
"""What whoever may only read is offered beside links, by the first words: it filters, opens, prints, exports."""
COMPUTES = {"season-plans", "checks"}
"""Posted, but only computed."""
OWNERS_PAGES = {f"/desk/practice/{page}" for page in ("people", "words", "audit", "status")}
CLOSED = OWNERS_PAGES | {"/desk/clients/new", "/desk/exercises/own/new"}


def _everywhere(demo: Demo) -> list[str]:
    people = {one["display_name"]: one["id"] for one in demo.http.get("/api/v1/clients").json()["items"]}
    fresh = f"/clients/{people['Marek Sorrel']}"  # nothing is set down about him yet
    known = desk_paths(id=people["Emil Tarrow"], code="step-down")
    return [path for path in known if path != "/account"] + [
        fresh,
        f"{fresh}/program",
        f"{fresh}/trip",
        f"{fresh}/screening",
    ]


def test_who_may_only_read_is_offered_nothing_that_is_refused(browser: Browser, demo: Demo) -> None:
    walk = walk_as(browser.new_context(**PLACE), demo, colleague_of(demo, "read_only"))
    offered, leads, opened, pressed = {}, set(), "", 0
    for path in _everywhere(demo):
        assert walk.go(path), path
        offered[path] = [name for name in walk.offered() if not name.startswith(LOOKS)]
        leads |= walk.leads_to()
        pressed += walk.press_everything()
        opened += "".join(walk.page.locator("dialog[open]").all_inner_texts())
    assert {path: names for path, names in offered.items() if names} == {}
    assert (walk.refused, walk.writes - COMPUTES, leads & CLOSED) == ([], set(), set())
    assert "Language of the sheet" in opened
    assert "Pairs a phone" not in opened  # printing, without a secret
    assert pressed > 20  # weeks and days of a program, drawings, printing
    walk.go("/account")
    walk.page.get_by_label("Password you have now").fill(PASSWORD)
    walk.page.get_by_label("New password").fill(f"{PASSWORD}, and down")
    walk.page.get_by_role("button", name="Change password").click()
    expect(walk.page.get_by_text("Your password is changed.", exact=False)).to_be_visible()


def test_what_is_an_owners_is_absent_for_a_practitioner(browser: Browser, demo: Demo) -> None:
    walk = walk_as(browser.new_context(**PLACE), demo, colleague_of(demo, "practitioner"))
    leads = walk.leads_to()
    for path in (path for path in _everywhere(demo) if path.startswith("/practice") or path.endswith("/record")):
        is_closed = walk.go(path) == "This page is for others"
        assert is_closed == (f"/desk{path}" in OWNERS_PAGES), path
        assert [name for name in walk.offered() if not name.startswith(LOOKS)] == []
        leads |= walk.leads_to()
    assert (walk.refused, leads & OWNERS_PAGES) == ([], set())
