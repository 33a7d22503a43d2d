"""The rules on the phone: a sign locks the day, a new dose is told, the health questions reach the practice."""

import re
from datetime import date, datetime, time, timedelta
from pathlib import Path
from typing import Any

import httpx
import pytest
from playwright.sync_api import Browser, Page, Playwright, expect

from tests.builders import Phone, circuit, content, step_down
from tests.e2e.conftest import PHONE, Server, phone_browser
from tests.e2e.looking import faults
from tests.e2e.test_main_job import SLOW_MS, ZONE, lay_stones, pair, pairing_link, today, write_program

pytestmark = pytest.mark.browser
TARGET_PX = 48
SIGN = "Pain, pressure or tightness in the chest"
STOPPED = "Training is stopped"
WRITTEN = """() => new Promise((done) => {
  const asked = indexedDB.open('steadfoot');
  asked.onsuccess = () => {
    const names = asked.result.objectStoreNames;
    asked.result.transaction(names, 'readonly').oncomplete = () => { asked.result.close(); done(); };
  };
})"""
"""Waits for what was being written: a reload in the same millisecond as a tap would break it off."""


@pytest.fixture
def client_id(server: Server) -> str:
    """Emil, with a session of 15 sets today."""
    return write_program(server)


@pytest.fixture
def page(browser: Browser) -> Page:
    """A phone that need not survive its closing."""
    context = browser.new_context(**{**PHONE, "viewport": {"width": 320, "height": 640}, "reduced_motion": "reduce"})
    context.set_default_timeout(15_000)
    return context.new_page()


def report_chest_pain(page: Page, address: str) -> None:
    page.goto(f"{address}/app/stop/chest_pain")
    page.get_by_role("button", name="Tell the practice too").click()
    page.get_by_text("Training stays stopped until Maren").wait_for()


def expect_locked(page: Page, path: str) -> None:
    page.goto(path)
    expect(page.get_by_role("heading", name=STOPPED)).to_be_visible()
    expect(page.get_by_role("heading", name=SIGN)).to_be_visible()
    expect(page.get_by_text("Call your local emergency number now.").first).to_be_visible()
    expect(page.locator("button.stone")).to_have_count(0)
    expect(page.get_by_role("button", name="Lay this stone")).to_have_count(0)


def flag_of(server: Server, client_id: str) -> dict[str, Any]:
    items = server.call("GET", f"/flags?client_id={client_id}")["items"]
    return next(one for one in items if one["rule"] == "red_flag_symptom")


def test_a_sign_locks_the_day_offline_and_after_a_reload_until_the_desk_clears_it(
    server: Server, playwright: Playwright, tmp_path: Path, client_id: str
) -> None:
    with phone_browser(playwright, tmp_path / "phone") as phone:
        page = phone.pages[0]
        pair(page, pairing_link(server, client_id))
        lay_stones(page, 0, 2)
        page.get_by_role("link", name="See ").click()
        page.get_by_role("button", name="Lay this stone").wait_for()
        card = page.url
        phone.set_offline(True)
        report_chest_pain(page, server.address)
        session = card.split("/p")[0]
        for path in (f"{server.address}/app/", session, card):
            expect_locked(page, path)
        page.reload()
        expect(page.get_by_role("heading", name=STOPPED)).to_be_visible()
        for tab in ("Season", "Practice", "Me"):
            page.get_by_role("navigation").get_by_role("link", name=tab, exact=True).click()
            expect(page.get_by_role("heading", name=STOPPED)).to_have_count(0)
        phone.set_offline(False)
        page.goto(f"{server.address}/app/")
        expect(page.get_by_text("The practice has received it.")).to_be_visible(timeout=SLOW_MS)

        flag = flag_of(server, client_id)
        server.call("POST", f"/flags/{flag['id']}/decisions", {"action": "clear", "note": "Seen by Dr Ashgrove today."})
        page.get_by_role("button", name="Send now").click()
        expect(page.get_by_role("heading", name="Maren says you may train again")).to_be_visible(timeout=SLOW_MS)
        expect(page.locator("button.stone[aria-pressed=true]")).to_have_count(2)
        page.get_by_role("button", name="All right").click()
        expect(page.get_by_text("you may train again")).to_have_count(0)
        page.evaluate(WRITTEN)
        page.reload()
        page.locator("button.stone.next").wait_for()
        expect(page.get_by_text("you may train again")).to_have_count(0)


def test_a_slip_is_asked_once_and_opens_training_again(server: Server, page: Page, client_id: str) -> None:
    pair(page, pairing_link(server, client_id))
    report_chest_pain(page, server.address)
    page.goto(f"{server.address}/app/")
    page.get_by_role("button", name="This was a slip").click()
    expect(page.get_by_role("dialog")).to_contain_text(SIGN)
    assert faults(page, TARGET_PX) == []
    page.get_by_role("button", name="No, keep it").click()
    assert faults(page, TARGET_PX) == []
    page.get_by_role("button", name="This was a slip").click()
    page.get_by_role("button", name="Yes, take it back").click()
    expect(page.locator("button.stone")).to_have_count(15)


def test_a_set_left_out_for_pain_leads_to_where_it_hurts(server: Server, page: Page, client_id: str) -> None:
    pair(page, pairing_link(server, client_id))
    page.get_by_role("link", name="See ").click()
    page.get_by_role("button", name="Leave this one out").click()
    page.get_by_role("dialog").get_by_role("button", name="It hurts").click()
    page.get_by_role("heading", name="Where does it hurt?").wait_for()
    page.get_by_role("link", name="Back").click()
    expect(page.locator("button.stone").first).to_have_accessible_name(re.compile("left out", re.IGNORECASE))


def answer(page: Page, choice: str) -> None:
    page.get_by_role("radio", name=choice).check(force=True)
    page.get_by_role("button", name="Next").click()


def test_health_answers_given_offline_reach_the_practice(server: Server, page: Page, client_id: str) -> None:
    asked = server.call("GET", "/screening/questions")["items"]
    pair(page, pairing_link(server, client_id))
    offer = page.get_by_role("heading", name="A few health questions")
    offer.wait_for()
    page.context.set_offline(True)
    page.reload()
    page.get_by_role("link", name="Answer").click()
    assert faults(page, TARGET_PX) == []
    page.get_by_role("button", name="Begin").click()
    for place, one in enumerate(asked):
        expect(page.get_by_role("heading", level=1, name=one["question"])).to_be_focused()
        if place == 1:
            page.get_by_role("button", name="Next").click()
            page.get_by_text("Please choose an answer.").wait_for()
            assert faults(page, TARGET_PX) == []
        if place == 3:
            page.get_by_role("button", name="Question before").click()
            expect(page.get_by_role("radio", name="Yes")).to_be_checked()
            page.reload()
            page.get_by_role("button", name="Next").click()
        answer(page, "Yes" if one["code"] in ("active", "diabetes") else "No")
    page.get_by_role("radio", name="Hard: I am out of breath").check(force=True)
    page.get_by_role("button", name="Save on this phone").click()
    page.get_by_role("heading", name="Please wait for Maren before you begin").wait_for()
    page.get_by_text("A doctor should have a look before hard training.").wait_for()
    assert faults(page, TARGET_PX) == []
    page.context.set_offline(False)
    page.get_by_text("The practice has received it.").wait_for(timeout=SLOW_MS)
    found = server.call("GET", f"/clients/{client_id}/screenings")
    assert found["state"] == "clearance_recommended"
    assert found["items"][0]["details"] == ["active", "diabetes"]
    assert found["items"][0]["source"] == "client"

    page.get_by_role("button", name="Answer again").click()
    for _ in asked:
        answer(page, "No")
    page.get_by_role("radio", name="Easy to medium").check(force=True)
    page.get_by_role("button", name="Save on this phone").click()
    page.get_by_role("heading", name="Fine to begin").wait_for()
    page.get_by_role("link", name="Go to today").click()
    page.locator("button.stone.next").wait_for()
    expect(offer).to_have_count(0)


def test_health_questions_can_be_put_off_and_stay_under_me(server: Server, page: Page, client_id: str) -> None:
    pair(page, pairing_link(server, client_id))
    page.get_by_role("button", name="Not now").click()
    expect(page.get_by_role("heading", name="A few health questions")).to_have_count(0)
    page.reload()
    page.locator("button.stone.next").wait_for()
    expect(page.get_by_role("heading", name="A few health questions")).to_have_count(0)
    page.goto(f"{server.address}/app/me")
    page.get_by_role("link", name="Answer").click()
    page.get_by_role("button", name="Begin").wait_for()


def test_every_health_question_is_asked_in_german_too(server: Server, page: Page, client_id: str) -> None:
    asked = server.call("GET", "/screening/questions")["items"]
    pair(page, pairing_link(server, client_id))
    page.goto(f"{server.address}/app/me")
    page.get_by_role("radio", name="Deutsch").check(force=True)
    page.get_by_role("link", name="Antworten").click()
    page.get_by_role("button", name="Anfangen").click()
    for place, one in enumerate(asked, start=1):
        page.get_by_text(f"{place} von {len(asked) + 1}").wait_for()
        text = page.locator(".phone").inner_text()
        assert one["question"] not in text
        assert one["help"] not in text
        page.get_by_role("radio", name="Nein").check(force=True)
        page.get_by_role("button", name="Weiter").click()
    expect(page.get_by_role("heading", level=1)).to_have_text("Wie anstrengend werden dein Training und deine Tour?")


def ready_for_more(server: Server) -> str:
    """Take on someone whose last sessions, on an earlier phone, went two above the goal; answer their id."""
    client = server.call("POST", "/clients", {"display_name": "Emil Tarrow", "kit": ["step", "stairs", "rail", "wall"]})
    session = circuit(prescriptions=[step_down("p1", "step-15")])
    plan = content(today() - timedelta(days=5), sessions=[session], weekdays=(0, 1, 2, 3, 4, 5, 6))
    server.call("POST", f"/clients/{client['id']}/programs", {"content": plan})
    code = server.call("POST", f"/clients/{client['id']}/invitations", {"delivery": "in_person"})["code"]
    with httpx.Client(base_url=server.address, timeout=20) as visitor:
        told = visitor.post("/api/v1/pairings", json={"code": code}).json()
        phone = Phone(visitor, told["token"], told["device_id"], lambda: datetime.now(ZONE))  # type: ignore[arg-type]
        for days_ago, reps in ((4, 12), (2, 13)):
            train(phone, today() - timedelta(days=days_ago), reps)
        phone.sync()
    return str(client["id"])


def train(phone: Phone, day: date, reps: int) -> None:
    """Lay the three stones of a past day, and finish without much effort."""
    at = datetime.combine(day, time(18), ZONE).isoformat()
    for turn in (1, 2, 3):
        body = {"planned_id": f"{day}.1", "prescription": "p1", "round": turn, "reps": reps, "program_version": 1}
        phone.log("set_ticked", body, at)
    phone.log("session_finished", {"planned_id": f"{day}.1", "minutes": 30, "effort": 4}, at)


def test_an_accepted_progression_stands_on_the_card_until_the_session_is_done(server: Server, page: Page) -> None:
    client_id = ready_for_more(server)
    pair(page, pairing_link(server, client_id))
    expect(page.get_by_text("Changed since last time:")).to_have_count(0)
    item = server.call("GET", f"/clients/{client_id}/suggestions")["items"][0]
    assert item["can_accept"], item
    accepted = {"program_number": 1, "decisions": [{"suggestion_id": item["id"], "action": "accept"}]}
    assert server.call("POST", f"/clients/{client_id}/progressions", accepted)["program_number"] == 2
    page.reload()
    expect(page.get_by_text("Changed since last time: Step-down")).to_be_visible(timeout=SLOW_MS)
    page.get_by_role("link", name="See Step-down").click()
    change = page.get_by_text("Changed since last time:")
    expect(change).to_be_visible()
    assert len(change.locator("xpath=..").inner_text()) > len("Changed since last time: ") + 5
    assert faults(page, TARGET_PX) == []
    page.goto(f"{server.address}/app/")
    lay_stones(page, 0, 3)
    expect(page.get_by_text("Changed since last time: Step-down")).to_be_visible()
    page.get_by_role("link", name="Finish: three short questions").click()
    page.get_by_role("radio", name="5", exact=True).check(force=True)
    page.get_by_role("button", name="Finish: effort 5").click()
    expect(page.get_by_text("Finished.")).to_be_visible()
    expect(page.get_by_text("Changed since last time:")).to_have_count(0)
