"""Readiness on the desk: read item by item, followed to its evidence, signed for what was seen, printed."""

import io
from datetime import datetime, timedelta

import httpx
import pypdf
import pytest
from playwright.sync_api import BrowserContext, expect

from steadfoot.core.ids import uuid7
from tests.builders import trip
from tests.e2e.conftest import Server
from tests.e2e.looking import faults
from tests.e2e.test_desk_program import new_client, open_desk, publish
from tests.e2e.test_main_job import ZONE

pytestmark = pytest.mark.browser
TARGET_PX = 44
WORDS = "Climb and pack are there. Two long days at the weekend, then we look again."


def log_walk(server: Server, client_id: str) -> None:
    """Pair a phone and have it tell of a walk of the day before yesterday."""
    invitation = server.call("POST", f"/clients/{client_id}/invitations", {"delivery": "in_person"})
    paired = httpx.post(f"{server.address}/api/v1/pairings", json={"code": invitation["code"]}).json()
    at = datetime.now(ZONE) - timedelta(days=2)
    body = {"distance_km": 12, "ascent_m": 700, "descent_m": 600, "minutes": 260, "pack_kg": 9, "effort": 4}
    event = {"id": uuid7(at), "seq": 1, "kind": "walk_logged", "recorded_at": at.isoformat(), "body": body}
    headers = {"Authorization": f"Bearer {paired['token']}"}
    answer = httpx.post(f"{server.address}/api/v1/sync", json={"cursor": 0, "events": [event]}, headers=headers)
    assert answer.json()["acknowledged_through"] == 1


def test_readiness_is_read_followed_signed_and_handed_on(desk: BrowserContext, server: Server) -> None:
    client_id = new_client(server, birth_year=1980, sex="male")
    publish(server, client_id)
    server.call("PUT", f"/clients/{client_id}/trip", trip())
    log_walk(server, client_id)
    desk.route("**/api/v1/live", lambda route: route.abort())  # the page is not told that something came in
    page = open_desk(desk, server)
    page.get_by_role("link", name="Emil Tarrow", exact=True).click()
    page.get_by_role("link", name="Readiness").click()

    pack = page.get_by_role("row").filter(has_text="The heaviest pack is 9 kg; 9 kg was carried.")
    expect(pack.get_by_text("shown", exact=True).first).to_be_visible()
    descent = page.get_by_role("row").filter(has_text="The day with most descent asks 1,100 m")
    expect(descent.get_by_text("not shown", exact=True)).to_be_visible()
    expect(descent.get_by_text("Walks that grow by the season’s steps")).to_be_visible()
    pack.get_by_role("link", name="walk of").click()
    expect(page.locator("section.told h3:focus")).to_be_visible()
    page.go_back()

    page.get_by_role("button", name="Sign as Maren Brandvold").click()
    expect(page.get_by_role("alert").get_by_role("link", name="Please write why.")).to_be_visible()
    assert faults(page, TARGET_PX) == []
    page.get_by_label("Go, with changes").check()
    page.get_by_label("Why, and what goes with it").fill(WORDS)
    server.call("POST", f"/clients/{client_id}/tests", {"code": "heel-rise", "value": 25, "side": "left"})
    page.get_by_role("button", name="Sign as Maren Brandvold").click()
    expect(page.get_by_text("Something came in while you wrote")).to_be_visible()
    expect(page.get_by_role("row").filter(has_text="The norm asks 24 times")).to_be_visible()
    expect(page.get_by_label("Why, and what goes with it")).to_have_value(WORDS)
    page.get_by_role("button", name="Sign as Maren Brandvold").click()
    standing = page.get_by_role("region", name="The note that stands")
    expect(standing.get_by_text(WORDS)).to_be_visible()
    expect(standing.get_by_text("Signed by Maren Brandvold")).to_be_visible()
    (note,) = server.call("GET", f"/clients/{client_id}/readiness")["notes"]
    assert (note["verdict"], note["words"]) == ("adapt", WORDS)

    (sheet,) = pypdf.PdfReader(io.BytesIO(page.pdf(prefer_css_page_size=True))).pages
    said = " ".join(sheet.extract_text().split())
    for words in ("Readiness of Emil Tarrow", WORDS, "Signed by Maren Brandvold", "never replaces it"):
        assert words in said
    assert "Sign as" not in said
