"""A second factor from set-up to sign-in, a passkey of a virtual authenticator, sessions, and a colleague who joins."""

import re
import time
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from secrets import token_hex

import pyotp
import pytest
from playwright.sync_api import Browser, BrowserContext, Page, expect

from steadfoot.core.settings import Settings
from steadfoot.founding import found_practice
from tests.e2e.conftest import DESK, PASSWORD, free_port, running
from tests.e2e.looking import faults

pytestmark = pytest.mark.browser
DESK_TARGET_PX = 44


@dataclass
class Place:
    """A practice of its own on a server that is known by a name, as passkeys want it."""

    address: str
    email: str


@pytest.fixture(scope="module")
def named_server(tmp_path_factory: pytest.TempPathFactory) -> Iterator[tuple[Path, str]]:
    """The server's folder and address."""
    folder, port = tmp_path_factory.mktemp("named"), free_port()
    with pytest.MonkeyPatch.context() as patch:
        patch.setenv("STEADFOOT_PUBLIC_URL", f"http://localhost:{port}")
        with running(folder, port):
            yield folder, f"http://localhost:{port}"


@pytest.fixture
def place(named_server: tuple[Path, str]) -> Place:
    """A fresh practice."""
    folder, address = named_server
    email, zone = f"maren.{token_hex(4)}@thornwater.example", "Europe/Vienna"
    found_practice(Settings(data_dir=folder), "Thornwater Physical Therapy", email, "Maren Brandvold", zone, PASSWORD)
    return Place(address, email)


def _open(context: BrowserContext, place: Place) -> Page:
    page = context.new_page()
    page.set_default_timeout(15_000)
    page.goto(f"{place.address}/desk/")
    return page


def _password(page: Page, place: Place) -> None:
    page.get_by_label("Email").fill(place.email)
    page.get_by_label("Password", exact=True).fill(PASSWORD)
    page.get_by_role("button", name="Sign in", exact=True).click()


def _account(page: Page) -> None:
    page.get_by_text("Maren Brandvold", exact=True).click()
    page.get_by_role("link", name="Account and security").click()
    page.get_by_role("heading", name="Where you are signed in").wait_for()


def _set_up_app(page: Page) -> str:
    """Set the app up; answer its secret."""
    page.get_by_role("button", name="Set up an app").click()
    secret = re.sub(r"\s", "", page.locator(".secret").inner_text().partition(":")[2])
    assert faults(page, DESK_TARGET_PX) == []
    page.get_by_label("First code that the app shows").fill("000000")
    page.get_by_role("button", name="Turn on").click()
    page.get_by_text("This code does not work.", exact=False).first.wait_for()
    page.get_by_label("First code that the app shows").fill(pyotp.TOTP(secret).now())
    page.get_by_role("button", name="Turn on").click()
    return secret


def _asks_before_it_goes(page: Page) -> bool:
    asked: list[str] = []
    page.once("dialog", lambda dialog: (asked.append(dialog.type), dialog.dismiss()))
    page.close(run_before_unload=True)
    page.wait_for_timeout(300)
    return asked == ["beforeunload"]


def _next_code(secret: str) -> str:
    """Answer the next step's code, which is taken already now: the one of this moment was used."""
    return pyotp.TOTP(secret).at(time.time() + 30)


def test_an_app_for_codes_from_set_up_to_sign_in_and_out_everywhere(browser: Browser, place: Place) -> None:
    first = browser.new_context(**DESK)
    page = _open(first, place)
    _password(page, place)
    _account(page)
    secret = _set_up_app(page)
    page.get_by_role("heading", name="Your recovery codes").wait_for()
    assert faults(page, DESK_TARGET_PX) == []
    recovery = page.locator("ol.recovery li").all_inner_texts()
    assert len(recovery) == 10
    assert _asks_before_it_goes(page), "they are shown this once"
    page.get_by_role("button", name="I have kept them").click()
    expect(page.get_by_text("10 codes are left.")).to_be_visible()

    # Another browser: the second step, whole by keyboard, with what helps when it goes wrong.
    second = browser.new_context(**{**DESK, "viewport": {"width": 320, "height": 800}})
    other = _open(second, place)
    _password(other, place)
    code = other.get_by_label("Code from your app")
    expect(code).to_be_focused()
    expect(code).to_have_attribute("autocomplete", "one-time-code")
    assert faults(other, DESK_TARGET_PX) == []
    code.press("Enter")
    expect(other.get_by_text("Please type the six digits that your app shows.")).to_be_visible()
    code.fill("123")
    code.press("Enter")
    shown = _next_code(secret)
    code.fill(f" {shown[:3]} {shown[3:]}")
    code.press("Enter")
    other.get_by_role("link", name="Caseload").wait_for()

    # The first browser sees it and signs it out; a recovery code lets it in again; then everything ends.
    page.reload()
    expect(page.get_by_role("heading", name="Where you are signed in")).to_be_visible()
    page.get_by_role("button", name=re.compile("^Sign out Chrome on Linux")).click()
    expect(page.get_by_text("Chrome on Linux is signed out.")).to_be_visible()
    other.goto(f"{place.address}/desk/")
    _password(other, place)
    other.get_by_role("button", name="Use a recovery code").click()
    expect(other.get_by_label("Recovery code")).to_be_focused()
    other.get_by_label("Recovery code").fill(recovery[0][::-1])
    other.get_by_label("Recovery code").press("Enter")
    expect(other.get_by_text("compare it with your list", exact=False).first).to_be_visible()
    other.get_by_label("Recovery code").fill(recovery[0].lower())
    other.get_by_label("Recovery code").press("Enter")
    other.get_by_role("link", name="Caseload").wait_for()
    page.get_by_role("button", name="Sign out everywhere, here too").click()
    page.get_by_role("heading", name="Sign in").wait_for()
    other.goto(f"{place.address}/desk/clients")
    other.get_by_role("heading", name="Sign in").wait_for()


def test_a_passkey_is_added_and_signs_in_alone_and_beside_the_password(browser: Browser, place: Place) -> None:
    context = browser.new_context(**DESK)
    page = _open(context, place)
    devtools = context.new_cdp_session(page)
    devtools.send("WebAuthn.enable")
    kind = {"protocol": "ctap2", "transport": "internal", "hasResidentKey": True, "hasUserVerification": True}
    options = {**kind, "isUserVerified": True, "automaticPresenceSimulation": True}
    devtools.send("WebAuthn.addVirtualAuthenticator", {"options": options})
    _password(page, place)
    _account(page)
    page.get_by_label("Name of the new passkey").fill("Laptop")
    page.get_by_role("button", name="Add a passkey").click()
    page.get_by_role("button", name="I have kept them").click()
    expect(page.get_by_role("button", name="Remove passkey Laptop")).to_be_visible()
    page.get_by_role("button", name="Sign out everywhere, here too").click()

    page.get_by_role("button", name="Sign in with a passkey").click()
    page.get_by_role("heading", name="Account and security").wait_for()
    page.get_by_role("button", name="Sign out everywhere, here too").click()
    _password(page, place)
    page.get_by_role("button", name="Use a passkey").click()
    page.get_by_role("heading", name="Account and security").wait_for()

    page.get_by_role("button", name="Remove passkey Laptop").click()
    page.get_by_role("dialog").get_by_role("button", name="Remove").click()
    expect(page.get_by_text("No passkey yet.")).to_be_visible()


def test_a_colleague_joins_by_link_and_is_led_to_the_second_factor_that_the_practice_requires(
    browser: Browser, place: Place
) -> None:
    page = _open(browser.new_context(**DESK), place)
    _password(page, place)
    _account(page)
    _set_up_app(page)
    page.get_by_role("button", name="I have kept them").click()
    page.goto(f"{place.address}/desk/practice/people")
    page.get_by_label("Role of Maren Brandvold").select_option("read_only")
    ask = page.get_by_role("dialog")
    expect(ask.get_by_text("Only another owner can take that back.", exact=False)).to_be_visible()
    ask.get_by_role("button", name="Save").click()
    expect(ask.get_by_text("Make someone else an owner first.", exact=False)).to_be_visible()
    ask.get_by_role("button", name="Cancel").click()
    page.get_by_role("button", name="Require it").click()
    expect(page.get_by_text("Everyone needs a second factor.").first).to_be_visible()
    page.get_by_label("First and last name").fill("Lia Fenn")
    page.get_by_role("button", name="Make a link").click()
    expect(page.get_by_text("Please type their email address.").first).to_be_visible()
    page.get_by_label("Email").fill(place.email.replace("maren", "lia"))
    page.get_by_role("radio", name="Read-only").check(force=True)
    page.get_by_role("button", name="Make a link").click()
    link = page.get_by_label("Link for Lia Fenn").input_value()
    page.locator(".invitation").get_by_role("button", name="Close").press("Enter")
    expect(page.get_by_label("First and last name")).to_be_focused()

    theirs = browser.new_context(**{**DESK, "viewport": {"width": 320, "height": 800}}).new_page()
    theirs.goto(link)
    theirs.get_by_role("heading", name="Join Thornwater Physical Therapy").wait_for()
    assert "#join" not in theirs.url
    assert faults(theirs, DESK_TARGET_PX) == []
    theirs.reload()  # a phone begins a page anew while a password is fetched from another app
    theirs.get_by_label("Password", exact=True).fill(PASSWORD)
    theirs.get_by_role("button", name="Join").click()
    theirs.get_by_text("Your practice asks everyone for a second factor.", exact=False).wait_for()
    theirs.reload()
    theirs.get_by_text("Your practice asks everyone for a second factor.", exact=False).wait_for()
    assert faults(theirs, DESK_TARGET_PX) == []
    _set_up_app(theirs)
    theirs.get_by_role("button", name="I have kept them").click()
    theirs.get_by_role("link", name="Caseload").wait_for()
    expect(theirs.get_by_text("You may look at everything here and change nothing.", exact=False)).to_be_visible()
    expect(theirs.get_by_role("link", name="New client")).to_have_count(0)
    theirs.goto(f"{place.address}/desk/clients/new")
    expect(theirs.get_by_role("heading", name="This page is for others")).to_be_visible()
    assert faults(theirs, DESK_TARGET_PX) == []

    page.reload()
    page.get_by_role("button", name="New welcome link for Lia Fenn").click()
    page.get_by_role("dialog").get_by_role("button", name="New welcome link").click()
    link = page.get_by_label("Link for Lia Fenn", exact=True).input_value()
    assert faults(page, DESK_TARGET_PX) == []
    page.locator(".invitation").get_by_role("button", name="Close").press("Enter")
    expect(page.get_by_label("Role of Lia Fenn")).to_be_focused()
    page.get_by_label("First and last name").fill("Kit Aro")
    page.get_by_label("Email").fill(place.email.replace("maren", "kit"))
    page.get_by_role("button", name="Make a link").click()
    page.get_by_role("button", name="Withdraw the invitation of Kit Aro").press("Enter")
    expect(page.get_by_role("heading", name="Who signs in")).to_be_focused()
    theirs.get_by_role("link", name="Caseload").first.click()
    theirs.get_by_role("heading", name="Your session ended").wait_for()
    theirs.goto("about:blank")
    theirs.goto(link)
    theirs.get_by_role("heading", name="Welcome back to Thornwater Physical Therapy").wait_for()
    assert faults(theirs, DESK_TARGET_PX) == []
    theirs.get_by_label("Password", exact=True).fill("seven cairns before the pass")
    theirs.get_by_role("button", name="Come in").click()
    theirs.get_by_text("Your practice asks everyone for a second factor.", exact=False).wait_for()
