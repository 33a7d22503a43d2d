"""The first page of the phone app, opened by the link of an invitation and without one."""

import re

import httpx
import pytest
from playwright.sync_api import Browser, Page, expect

from tests.e2e.conftest import PHONE, Server
from tests.e2e.looking import faults
from tests.e2e.test_main_job import SLOW_MS, pair, pairing_link, write_program

pytestmark = pytest.mark.browser
TARGET_PX = 48
IPHONE = "Mozilla/5.0 (iPhone; CPU iPhone OS 17_0 like Mac OS X) AppleWebKit/605.1.15 Version/17.0 Mobile Safari/604.1"


@pytest.fixture
def phone(browser: Browser) -> Page:
    """A phone that has never been here."""
    page = browser.new_context(**PHONE).new_page()
    page.set_default_timeout(SLOW_MS)
    return page


def test_a_link_says_what_comes_and_asks_for_one_press(phone: Page, server: Server) -> None:
    phone.goto(pairing_link(server, server.take_on("Ines Calloway")))
    expect(phone.get_by_text("there is nothing to type", exact=False)).to_be_visible()
    expect(phone.get_by_role("textbox")).to_have_count(0)
    assert faults(phone, TARGET_PX) == []
    phone.get_by_role("button", name="Go on").click()
    expect(phone.get_by_text("is waiting for Ines Calloway")).to_be_visible()


def test_a_dead_link_says_so_and_another_code_can_be_typed(phone: Page, server: Server) -> None:
    client_id = server.take_on("Ines Calloway")
    used, code = pairing_link(server, client_id), pairing_link(server, client_id).partition("#pair=")[2]
    spent = {"code": used.partition("#pair=")[2], "label": "Another phone"}
    httpx.post(f"{server.address}/api/v1/pairings", json=spent, timeout=20).raise_for_status()
    phone.goto(used)
    phone.get_by_role("button", name="Go on").click()
    expect(phone.get_by_role("alert").filter(has_text="This code does not work")).to_be_visible()
    phone.get_by_role("button", name="Type a code instead").click()
    expect(phone.get_by_label("Code from your practice")).to_have_value("")
    assert faults(phone, TARGET_PX) == []
    phone.get_by_label("Code from your practice").fill(code)
    phone.get_by_role("button", name="Go on").click()
    expect(phone.get_by_text("is waiting for Ines Calloway")).to_be_visible()


def test_on_an_iphone_the_code_of_a_link_is_taken_along_to_the_home_screen(browser: Browser, server: Server) -> None:
    """There a home-screen app has storage of its own, and a link never opens it."""
    context = browser.new_context(**{**PHONE, "user_agent": IPHONE})
    context.grant_permissions(["clipboard-read", "clipboard-write"])
    page = context.new_page()
    link = pairing_link(server, server.take_on("Ines Calloway"))
    page.goto(link)
    expect(page.get_by_role("heading", name="Put it on your home screen first")).to_be_visible()
    page.get_by_role("button", name="Copy the code").click()
    expect(page.get_by_role("status").filter(has_text=re.compile("^Copied"))).to_be_visible()
    assert faults(page, TARGET_PX) == []
    assert page.evaluate("navigator.clipboard.readText()").replace("-", "") == link.partition("#pair=")[2]


def test_whoever_began_to_pair_anew_can_leave_it(phone: Page, server: Server) -> None:
    client_id = server.take_on("Ines Calloway")
    phone.goto(pairing_link(server, client_id))
    phone.get_by_role("button", name="Go on").click()
    phone.get_by_role("button", name="Yes, this is me").click()
    phone.get_by_role("link", name="Me", exact=True).click()
    phone.get_by_role("button", name="Pair it again").click()
    phone.get_by_role("link", name="Me", exact=True).click()
    expect(phone.get_by_role("heading", name="Ines Calloway")).to_be_visible()
    phone.get_by_role("button", name="Pair it again").click()
    phone.get_by_label("Code from your practice").fill(pairing_link(server, client_id))
    phone.get_by_role("button", name="Go on").click()
    phone.get_by_role("button", name="No, stop here").click()
    phone.get_by_role("button", name="Yes, stop here").click()
    expect(phone.get_by_text("Nothing was paired.", exact=False)).to_be_visible()
    phone.go_back()
    expect(phone.get_by_role("heading", name="Ines Calloway")).to_be_visible()


def test_a_first_session_says_what_a_stone_is_and_shows_the_question_that_is_open(phone: Page, server: Server) -> None:
    pair(phone, pairing_link(server, write_program(server)))
    how = phone.get_by_text("Each stone is one set.", exact=False)
    expect(how).to_be_visible()
    assert faults(phone, TARGET_PX) == []
    phone.locator("button.stone.next").click()
    expect(how).to_have_count(0)
    phone.get_by_role("button", name="Finish here for today").click()
    phone.set_viewport_size({"width": 360, "height": 420})  # the keyboard takes the rest
    phone.get_by_label("A line to Maren").fill("Went well.")
    phone.get_by_role("button", name="Finish", exact=True).click()
    expect(phone.get_by_text("Please choose a number from 0 to 10.")).to_be_in_viewport()
    expect(phone.get_by_role("radio", name="0", exact=True)).to_be_focused()
