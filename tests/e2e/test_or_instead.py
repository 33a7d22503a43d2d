"""Another movement that the practitioner allows: written in the editor, taken on the phone offline, taken back."""

import re
import time
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import BrowserContext, Page, Playwright, expect

from tests.e2e.conftest import Server, phone_browser
from tests.e2e.looking import faults
from tests.e2e.test_desk_alternatives import ask
from tests.e2e.test_desk_program import current, open_desk, open_program, send
from tests.e2e.test_main_job import SLOW_MS, pair, pairing_link, write_program

pytestmark = pytest.mark.browser
DESK_TARGET_PX, PHONE_TARGET_PX = 44, 48


def allow_a_squat(desk: BrowserContext, server: Server, client_id: str) -> dict[str, Any]:
    """In the editor: allow it, look its dose over, say why, publish; answer it as published."""
    page = open_desk(desk, server)
    open_program(page, server, client_id)
    ask(page)
    page.get_by_role("button", name=re.compile("^Allow too: Squat, .* instead of Step-down$")).press("Enter")
    allowed = page.get_by_role("list", name="What may be done instead of Step-down")
    allowed.get_by_label("Squat, Why or when").fill("Where there is no step.")
    allowed.get_by_role("radio", name="from a chair", exact=True).check(force=True)
    assert faults(page, DESK_TARGET_PX) == []
    page.set_viewport_size({"width": 320, "height": 800})
    assert faults(page, DESK_TARGET_PX) == []
    page.set_viewport_size({"width": 1440, "height": 900})
    expect(page.get_by_role("region", name="Changes").get_by_role("listitem").first).to_contain_text(
        "may be done instead"
    )
    send(page, 2)
    expect(page.get_by_text("Version 2 published.")).to_be_visible()
    (one,) = current(server, client_id)[1]["alternatives"]
    return dict(one)


def test_what_is_allowed_is_done_instead_offline_and_heard_as_what_it_is(
    server: Server, desk: BrowserContext, playwright: Playwright, tmp_path: Path
) -> None:
    client_id = write_program(server)
    one = allow_a_squat(desk, server, client_id)
    assert (one["exercise"], one["variant"], one["reason"]) == ("squat", "chair", "Where there is no step.")
    with phone_browser(playwright, tmp_path / "phone") as phone:
        page = phone.pages[0]
        pair(page, pairing_link(server, client_id))
        phone.set_offline(True)
        page.get_by_role("link", name="See Step-down").click()
        instead(page, "Squat").click()
        expect(page.get_by_role("heading", name="Squat", level=1)).to_be_visible()
        assert faults(page, PHONE_TARGET_PX) == []
        instead(page, "Step-down").click()  # the way back
        expect(page.get_by_role("heading", name="Step-down", level=1)).to_be_visible()
        instead(page, "Squat").click()
        page.get_by_role("button", name="Lay this stone").click()
        phone.set_offline(False)
        (tick,) = until_ticked(server, client_id)
    assert (tick["prescription"], tick["exercise"], tick["variant"]) == ("p1", "squat", one["variant"])


def until_ticked(server: Server, client_id: str) -> list[dict[str, Any]]:
    """Answer what the practice holds of sets done, once there is one."""
    for _ in range(SLOW_MS // 200):
        items = server.call("GET", f"/clients/{client_id}/timeline?limit=200")["items"]
        found = [item["body"] for item in items if item["kind"] == "set_ticked"]
        if found:
            return found
        time.sleep(0.2)
    raise AssertionError("the set did not reach the practice")


def instead(page: Page, name: str) -> Any:
    """Answer the button of a movement among those in the place of the one shown."""
    return page.get_by_role("button", name=re.compile(f"(instead|as planned){name}|(instead|as planned) {name}"))
