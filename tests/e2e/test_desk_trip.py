"""The trip on the desk: a file is read, looked over, saved and taken back; what is wrong with a file is said."""

import pytest
from playwright.sync_api import BrowserContext, FilePayload, Page, expect

from steadfoot.demo import traverse
from tests.e2e.conftest import Server
from tests.e2e.looking import faults
from tests.e2e.test_desk_program import new_client, open_desk

pytestmark = pytest.mark.browser
TARGET_PX = 44


def file(body: bytes) -> FilePayload:
    return {"name": "way.gpx", "mimeType": "application/gpx+xml", "buffer": body}


def read(page: Page, body: bytes) -> None:
    page.get_by_label("GPX file").set_input_files(file(body))
    page.get_by_role("button", name="Read the file").click()


def test_a_route_is_uploaded_looked_over_saved_and_asks_something(desk: BrowserContext, server: Server) -> None:
    client_id = new_client(server, body_mass_kg=72)
    page = open_desk(desk, server)
    page.goto(f"{server.address}/desk/clients/{client_id}/trip")
    expect(page.get_by_text("No leg yet.")).to_be_visible()
    read(page, b"<html/>")
    expect(page.get_by_role("alert").filter(has_text="outermost element is <html>")).to_be_visible()
    read(page, traverse.gpx())
    expect(page.get_by_text("5 legs read.")).to_be_visible()
    assert server.call("GET", f"/clients/{client_id}/trip")["version"] == 0
    page.get_by_role("group", name="Leg 3").get_by_label("Name").fill("The long descent")
    page.get_by_label("Pack", exact=True).fill("10")
    page.get_by_role("button", name="Save the trip").click()
    expect(page.get_by_role("heading", name="Leg 3, day 3: The long descent")).to_be_visible()
    expect(page.get_by_role("img", name="Profile over")).to_have_count(5)
    demand = page.get_by_role("region", name="Day by day")
    expect(demand.get_by_role("row")).to_have_count(6)
    expect(page.get_by_text("Own pace not known yet")).to_be_visible()
    assert faults(page, TARGET_PX) == []
    page.get_by_role("button", name="Undo").click()
    expect(page.get_by_text("No leg yet.")).to_be_visible()
    assert server.call("GET", f"/clients/{client_id}/trip")["legs"] == []
