"""Two host names in front of one server: a practitioner at one, a phone at the other, and nothing crosses."""

from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser, BrowserContext, expect

from steadfoot.core.settings import Settings
from steadfoot.founding import found_practice
from tests.e2e.conftest import PASSWORD, PHONE, Server, free_port, running, signed_in
from tests.e2e.test_desk_program import SOON_MS, open_desk

pytestmark = pytest.mark.browser
EMAIL = "maren@thornwater.example"


@pytest.fixture
def port() -> int:
    return free_port()


@pytest.fixture
def practice_host(port: int, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Server]:
    """The practice at localhost; its phones are at 127.0.0.1."""
    folder, here = tmp_path_factory.mktemp("two-hosts"), f"http://localhost:{port}"
    with running(folder, port, PUBLIC_URL=f"http://127.0.0.1:{port}", PRACTICE_URL=here):
        found_practice(Settings(data_dir=folder), "Thornwater", EMAIL, "Maren Brandvold", "Europe/Vienna", PASSWORD)
        with signed_in(here, {"email": EMAIL, "password": PASSWORD}) as http:
            yield Server(here, EMAIL, http)


def test_a_practitioner_and_a_phone_meet_across_two_hosts(
    desk: BrowserContext, browser: Browser, practice_host: Server, port: int
) -> None:
    client_id = practice_host.take_on("Ines Calloway")
    page = open_desk(desk, practice_host)
    invitation = practice_host.call("POST", f"/clients/{client_id}/invitations", {"delivery": "in_person"})
    assert invitation["url"].startswith(f"http://127.0.0.1:{port}/app/#pair=")

    phone = browser.new_context(**PHONE).new_page()
    phone.set_default_timeout(SOON_MS)
    phone.goto(f"{practice_host.address}/app/")  # a mistyped address leads to the right host
    assert phone.url.startswith(f"http://127.0.0.1:{port}/app/")
    phone.get_by_label("Code from your practice").fill(invitation["code"])
    phone.get_by_role("button", name="Go on").click()
    phone.get_by_role("button", name="Yes, this is me").click()
    expect(phone.get_by_text("is still drawing your way.").first).to_be_visible()

    page.goto(f"http://127.0.0.1:{port}/desk/clients/{client_id}")
    assert page.url == f"{practice_host.address}/desk/clients/{client_id}"
    expect(page.get_by_role("heading", name="Ines Calloway")).to_be_visible()
    assert phone.evaluate("fetch('/api/v1/caseload').then((reply) => reply.status)") == 401
