"""The main job, for real: pair, go offline, train, hurt, come back; the practice sees it and eases off."""

import time
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any
from zoneinfo import ZoneInfo

import pytest
from playwright.sync_api import BrowserContext, Page, Playwright, expect

from tests.builders import circuit, content, step_down
from tests.e2e.conftest import PASSWORD, Server, phone_browser

pytestmark = pytest.mark.browser
ZONE = ZoneInfo("Europe/Vienna")
SETS = 15
SLOW_MS = 30_000


def today() -> Any:
    return datetime.now(ZONE).date()


def five_movements() -> list[dict[str, Any]]:
    others = [
        {"key": "p2", "exercise": "squat", "variant": "chair"},
        {"key": "p3", "exercise": "heel-raise", "variant": "both-wall"},
        {"key": "p4", "exercise": "hip-bridge", "variant": "both-legs"},
        {"key": "p5", "exercise": "bird-dog", "variant": "leg-slide"},
    ]
    return [step_down("p1", "step-15"), *(step_down(**one) | {"sides": "both", **one} for one in others)]


def write_program(server: Server) -> str:
    """Take on a client with a session of 15 sets today and publish it; answer the client's id."""
    kit = ["step", "stairs", "rail", "wall", "mat", "chair"]
    client_id = server.take_on("Emil Tarrow", kit=kit, usual_pain=1)
    session = circuit(rounds=3, prescriptions=five_movements())
    plan = content(today(), sessions=[session], weekdays=(0, 1, 2, 3, 4, 5, 6))
    server.call("POST", f"/clients/{client_id}/programs", {"content": plan})
    return client_id


def pairing_link(server: Server, client_id: str) -> str:
    answer = server.call("POST", f"/clients/{client_id}/invitations", {"delivery": "in_person"})
    return str(answer["url"])


def pair(page: Page, link: str) -> None:
    page.goto(link)
    page.get_by_role("button", name="Go on").click()
    page.get_by_role("button", name="Yes, this is me").click()
    expect(page.get_by_role("heading", name="Steps and hips, 3 rounds")).to_be_visible()
    page.evaluate("navigator.serviceWorker.ready.then(() => true)")


def lay_stones(page: Page, first: int, last: int) -> None:
    for laid in range(first, last):
        page.locator("button.stone.next").click()
        expect(page.locator("button.stone[aria-pressed=true]")).to_have_count(laid + 1)


def report_pain_of_step_down(page: Page) -> None:
    page.get_by_role("link", name="See Step-down").click()
    expect(page.get_by_role("heading", name="Step-down")).to_be_visible()
    page.get_by_role("link", name="It hurts").click()
    page.get_by_role("button", name="Knee, front, right").click()
    page.get_by_role("button", name="Next").click()
    page.get_by_role("radio", name="7", exact=True).check(force=True)
    page.get_by_role("radio", name="While moving").check(force=True)
    page.get_by_role("button", name="Save on this phone").click()
    expect(page.get_by_text("Stop this movement for today.").first).to_be_visible()
    page.get_by_role("link", name="Go on with the session").click()


def finish(page: Page) -> None:
    page.get_by_role("link", name="Finish: three short questions").click()
    page.get_by_role("radio", name="8", exact=True).check(force=True)
    page.get_by_role("button", name="Finish: effort 8").click()
    expect(page.get_by_text("Finished.")).to_be_visible()


def until_finish_is_heard(server: Server, client_id: str) -> list[dict[str, Any]]:
    """Answer what the practice holds once the session's end is among it; the phone's words count only the sets."""
    for _ in range(SLOW_MS // 200):
        items: list[dict[str, Any]] = server.call("GET", f"/clients/{client_id}/timeline?limit=200")["items"]
        if any(one["kind"] == "session_finished" for one in items):
            return items
        time.sleep(0.2)
    raise AssertionError("the session's end did not reach the practice")


def sign_in(page: Page, server: Server) -> None:
    page.goto(f"{server.address}/desk/")
    page.get_by_label("Email").fill(server.email)
    page.get_by_label("Password", exact=True).fill(PASSWORD)
    page.get_by_role("button", name="Sign in").click()
    page.get_by_role("link", name="Emil Tarrow", exact=True).click()
    expect(page.get_by_role("heading", name="Emil Tarrow")).to_be_visible()


def expect_nothing_heard(desk: Page) -> None:
    expect(desk.get_by_text("Nothing to decide").first).to_be_visible()


def test_a_session_trained_offline_reaches_the_practice_and_its_answer_reaches_the_phone(
    server: Server, desk: BrowserContext, playwright: Playwright, tmp_path: Path
) -> None:
    client_id, profile = write_program(server), tmp_path / "phone"
    with phone_browser(playwright, profile) as phone:
        pair(phone.pages[0], pairing_link(server, client_id))

    # Cold start without a network: a new browser process that can reach nothing.
    with phone_browser(playwright, profile, offline=True) as phone:
        page = phone.new_page()
        page.goto(f"{server.address}/app/")
        expect(page.get_by_role("heading", name="Steps and hips, 3 rounds")).to_be_visible()
        page.locator("button.stone.next").click()
        page.locator("button.stone[aria-pressed=true]").click()
        lay_stones(page, 0, SETS - 5)
        report_pain_of_step_down(page)
        lay_stones(page, SETS - 5, SETS)
        finish(page)

    with phone_browser(playwright, profile, offline=True) as phone:
        page = phone.new_page()
        page.goto(f"{server.address}/app/")
        expect(page.locator("button.stone[aria-pressed=true]")).to_have_count(SETS)
        expect(page.get_by_text("Finished.")).to_be_visible()
        expect(page.get_by_role("status").filter(has_text="saved on this phone")).to_contain_text("15 sets")

        practitioner = desk.new_page()
        sign_in(practitioner, server)
        expect_nothing_heard(practitioner)

        phone.set_offline(False)
        expect(page.get_by_text("All received by Thornwater")).to_be_visible(timeout=SLOW_MS)

        # No reload on this page: the practice's server tells it that something changed.
        flag = practitioner.get_by_text("Right knee hurt 7 of 10").first
        expect(flag).to_be_visible(timeout=SLOW_MS)
        adherence = practitioner.get_by_role("region", name="Adherence").get_by_role("table")
        expect(adherence).to_contain_text("15 of 15")
        practitioner.get_by_role("button", name="Ease off one rung").click()
        expect(practitioner.get_by_text("Version 2 published").first).to_be_visible(timeout=SLOW_MS)

        page.reload()
        expect(page.get_by_text("Step-down: 10 cm step instead of 15 cm step").first).to_be_visible(timeout=SLOW_MS)


def test_nothing_is_there_twice_and_nothing_is_missing_after_the_session(
    server: Server, playwright: Playwright, tmp_path: Path
) -> None:
    client_id = write_program(server)
    with phone_browser(playwright, tmp_path / "phone") as phone:
        page = phone.pages[0]
        pair(page, pairing_link(server, client_id))
        lay_stones(page, 0, SETS)
        finish(page)
        items = until_finish_is_heard(server, client_id)
    ticks = [(one["body"]["prescription"], one["body"]["round"]) for one in items if one["kind"] == "set_ticked"]
    assert len(ticks) == len(set(ticks)) == SETS
    assert [one["body"]["effort"] for one in items if one["kind"] == "session_finished"] == [8]
    newest = datetime.fromisoformat(items[-1]["at"])
    assert datetime.now(UTC) - newest < timedelta(minutes=5)
