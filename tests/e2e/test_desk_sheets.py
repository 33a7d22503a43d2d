"""Sheets from the desk: options, what is made, what a failure says, on a narrow screen and by keyboard."""

from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import BrowserContext, Page, expect

from tests.e2e.conftest import Server
from tests.e2e.test_desk_program import new_client, open_desk, publish
from tests.features.sheets.reading import size_pt, whole

pytestmark = pytest.mark.browser
NARROW = {"width": 320, "height": 640}


def _dialog(page: Page, server: Server, **more: Any) -> Any:
    client_id = new_client(server, **more)
    publish(server, client_id)
    page.goto(f"{server.address}/desk/clients/{client_id}")
    page.get_by_role("button", name="Print the sheet").click()
    return page.get_by_role("dialog", name="The program of Emil Tarrow on paper")


def _made(page: Page, dialog: Any) -> bytes:
    with page.expect_download() as downloading:
        dialog.get_by_role("button", name="Make the PDF").press("Enter")
    return Path(downloading.value.path()).read_bytes()


def test_the_program_of_a_person_is_made_as_chosen(desk: BrowserContext, server: Server) -> None:
    page = open_desk(desk, server)
    dialog = _dialog(page, server)
    dialog.get_by_label("US Letter").check()
    dialog.get_by_label("Which sessions?").select_option("Steps and hips")
    pdf = _made(page, dialog)
    expect(dialog.get_by_role("status")).to_contain_text("home-program-emil-tarrow.pdf")
    assert size_pt(pdf) == (612, 792)
    assert "Pair your phone" not in whole(pdf)
    dialog.get_by_label("Pairs a phone").check()
    expect(dialog.get_by_text("carries a new secret")).to_be_visible()
    assert "Pair your phone" in whole(_made(page, dialog))


def test_without_a_network_the_dialog_says_so_and_keeps_what_was_chosen(desk: BrowserContext, server: Server) -> None:
    page = open_desk(desk, server)
    dialog = _dialog(page, server)
    dialog.get_by_label("Large", exact=True).check()
    desk.set_offline(True)
    dialog.get_by_role("button", name="Make the PDF").click()
    expect(dialog.get_by_role("alert")).to_contain_text("The server was not reached")
    desk.set_offline(False)
    expect(dialog.get_by_label("Large", exact=True)).to_be_checked()
    assert "Emil Tarrow" in whole(_made(page, dialog))


def test_a_class_sheet_is_picked_from_the_library(desk: BrowserContext, server: Server) -> None:
    page = open_desk(desk, server)
    page.set_viewport_size(NARROW)
    page.goto(f"{server.address}/desk/exercises")
    page.get_by_role("button", name="Print a class sheet").press("Enter")
    dialog = page.get_by_role("dialog", name="A sheet for a class or a talk")
    dialog.get_by_role("button", name="Make the PDF").click()
    expect(dialog.get_by_text("Please type a title.")).to_be_visible()
    expect(dialog.get_by_text("Please add at least one movement.")).to_be_visible()
    dialog.get_by_label("Title on the sheet").fill("Strong knees")
    for name in ("Step-down", "Wall sit"):
        dialog.get_by_label("Movement to add").select_option(name)
        dialog.get_by_role("button", name="Add", exact=True).click()
    dialog.get_by_label("How Step-down is done").select_option("15 cm step")
    dialog.get_by_role("button", name="Remove Wall sit").press("Enter")
    assert page.evaluate("document.documentElement.scrollWidth") <= NARROW["width"]
    assert dialog.evaluate("dialog => dialog.scrollWidth <= dialog.clientWidth")
    text = whole(_made(page, dialog))
    assert "Strong knees" in text
    assert "15 cm step" in text
    assert "Wall sit" not in text


def test_escape_closes_the_dialog_and_gives_the_focus_back(desk: BrowserContext, server: Server) -> None:
    page = open_desk(desk, server)
    dialog = _dialog(page, server)
    expect(dialog).to_be_visible()  # a key pressed before is nobody's
    page.keyboard.press("Escape")
    expect(dialog).to_be_hidden()
    expect(page.get_by_role("button", name="Print the sheet")).to_be_focused()
