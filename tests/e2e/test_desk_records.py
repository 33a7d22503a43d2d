"""The log, the export, the erasure and what clients read, by keyboard where it matters; what the phone then says."""

import io
import json
import zipfile
from pathlib import Path

import pytest
from playwright.sync_api import BrowserContext, Page, Playwright, expect

from tests.e2e.conftest import Server, phone_browser
from tests.e2e.looking import faults
from tests.e2e.test_desk_program import new_client, open_desk
from tests.e2e.test_main_job import pairing_link

pytestmark = pytest.mark.browser
TARGET_PX = 44


def test_who_saw_it_a_copy_of_it_and_its_end(
    desk: BrowserContext, server: Server, playwright: Playwright, tmp_path: Path
) -> None:
    client_id = new_client(server)
    with phone_browser(playwright, tmp_path / "phone") as phone:
        mine = phone.pages[0]
        mine.goto(pairing_link(server, client_id))
        for name in ("Go on", "Yes, this is me"):
            mine.get_by_role("button", name=name).click()
        expect(mine.get_by_role("link", name="Me")).to_be_visible()
        mine.goto(f"{server.address}/app/me")
        with mine.expect_download() as own:
            mine.get_by_role("button", name="Download my data").click()
        assert json.loads(_part(own.value.path(), "record.json"))["client_id"] == client_id

        page = open_desk(desk, server)
        page.goto(f"{server.address}/desk/clients/{client_id}")
        page.get_by_role("link", name="Who saw this record").click()
        table = page.get_by_role("region", name="Rows, newest first")
        expect(table.get_by_role("row").filter(has_text="Opened the client’s page").first).to_be_visible()
        expect(table.get_by_role("row").filter(has_text="The client took their record out")).to_be_visible()
        assert faults(page, TARGET_PX) == []
        page.set_viewport_size({"width": 320, "height": 700})
        assert faults(page, TARGET_PX) == []
        page.get_by_label("On which day").fill("2020-01-01")
        expect(page.get_by_text("Nothing here for this choice.")).to_be_visible()
        page.set_viewport_size({"width": 1440, "height": 900})

        page.goto(f"{server.address}/desk/clients/{client_id}/record")
        with page.expect_download() as download:
            page.get_by_role("button", name="Export this record").click()
        assert "Emil Tarrow" in _part(download.value.path(), "index.html")
        assert faults(page, TARGET_PX) == []
        page.get_by_label("At once; nothing can be taken back").check()
        page.get_by_label("Type the person’s name to confirm: Emil Tarrow").press("Enter")
        expect(page.get_by_text("This is not the name as it stands above.")).to_be_visible()
        page.keyboard.type("Emil Tarrow")
        page.keyboard.press("Enter")
        expect(page.get_by_text("The record of Emil Tarrow is erased.")).to_be_visible()
        assert page.url.endswith("/desk/clients")
        page.goto(f"{server.address}/desk/clients/{client_id}")
        page.get_by_role("heading", name="This person is not here").wait_for()
        expect(page.get_by_role("main").get_by_role("link", name="All clients")).to_be_visible()
        assert faults(page, TARGET_PX) == []

        mine.goto(f"{server.address}/app/")
        expect(mine.get_by_role("heading", name="The practice has erased your record")).to_be_visible()
        assert faults(mine, TARGET_PX) == []
        with mine.expect_download():
            mine.get_by_role("button", name="Save what is on this phone").click()


def _part(path: Path, name: str) -> str:
    with zipfile.ZipFile(io.BytesIO(path.read_bytes())) as file:
        return file.read(name).decode()


def test_how_long_records_are_kept_is_asked_and_has_no_default(desk: BrowserContext, server: Server) -> None:
    page = open_desk(desk, server)
    page.goto(f"{server.address}/desk/practice/records")
    expect(page.get_by_text("Nobody has chosen yet.")).to_be_visible()
    page.get_by_role("button", name="Save").click()
    expect(page.get_by_text("Please choose one of the two.")).to_be_visible()
    page.get_by_label("Name them as due after a number of years").check()
    page.get_by_label("Years after archiving").fill("10")
    assert faults(page, TARGET_PX) == []
    page.get_by_role("button", name="Save").click()
    expect(page.get_by_text("Chosen. Nothing was erased.")).to_be_visible()
    assert server.call("GET", "/retention")["years"] == 10


def _paired(mine: Page, server: Server) -> Page:
    mine.goto(pairing_link(server, new_client(server)))
    for name in ("Go on", "Yes, this is me"):
        mine.get_by_role("button", name=name).click()
    mine.get_by_role("link", name="Me", exact=True).wait_for()
    mine.goto(f"{server.address}/app/practice")
    return mine


def test_a_practice_says_whom_to_call_and_the_phone_shows_it_after_its_next_contact(
    desk: BrowserContext, server: Server, playwright: Playwright, tmp_path: Path
) -> None:
    with phone_browser(playwright, tmp_path / "phone") as phone:
        mine = _paired(phone.pages[0], server)
        expect(mine.get_by_text("Call your local emergency number.")).to_be_visible()
        page = open_desk(desk, server)
        page.locator(".menu summary").click()
        page.get_by_role("link", name="What clients read").click()
        call, save = page.get_by_label("In an emergency"), page.get_by_role("button", name="Save", exact=True)
        call.fill(" ")
        save.press("Enter")
        page.get_by_role("link", name="Please write whom to call in an emergency.").press("Enter")
        expect(call).to_be_focused()
        page.keyboard.type("In the valley dial 144.")
        page.set_viewport_size({"width": 320, "height": 700})
        expect(page.get_by_text("Clients read now: Call your local")).to_be_visible()
        assert faults(page, TARGET_PX) == []
        desk.set_offline(True)
        save.press("Enter")
        expect(page.get_by_text("What you typed is kept; please try again.", exact=False)).to_be_visible()
        desk.set_offline(False)
        save.press("Enter")
        expect(page.get_by_text("Each phone shows it from its next contact on.", exact=False)).to_be_visible()
        expect(page.get_by_text("Clients read now")).to_have_count(0)
        mine.reload()
        expect(mine.get_by_text("In the valley dial 144.")).to_be_visible()
        expect(mine.get_by_text("Call your local emergency number.")).to_have_count(0)
        page.get_by_role("button", name="Undo").click()
        expect(call).to_have_value("Call your local emergency number. This app calls nobody.")
