"""The practitioner's day in a real browser: phones paired, people answered, nothing typed lost."""

import re
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import UTC, datetime, timedelta
from typing import Any

import httpx
import pytest
from playwright.sync_api import Browser, BrowserContext, Page, expect

from steadfoot.core.ids import uuid7
from tests.e2e.conftest import PHONE, Server
from tests.e2e.test_desk_program import SOON_MS, fill_sign_in, new_client, open_desk, publish
from tests.e2e.test_main_job import ZONE

pytestmark = pytest.mark.browser


@pytest.fixture
def page(desk: BrowserContext, server: Server) -> Page:
    return open_desk(desk, server)


@contextmanager
def phone(browser: Browser) -> Iterator[Page]:
    """A phone of somebody's own: nothing is shared between two of them."""
    context = browser.new_context(**PHONE)
    context.set_default_timeout(SOON_MS)
    yield context.new_page()
    context.close()


def accept(page: Page) -> None:
    page.get_by_role("button", name="Go on").click()
    page.get_by_role("button", name="Yes, this is me").click()


def invited(server: Server, client_id: str, delivery: str) -> dict[str, Any]:
    answer: dict[str, Any] = server.call("POST", f"/clients/{client_id}/invitations", {"delivery": delivery})
    return answer


def says(server: Server, client_id: str, *entries: tuple[str, dict[str, Any]]) -> None:
    """Pair a phone in person and send what it says."""
    code = invited(server, client_id, "in_person")["code"]
    joined = httpx.post(f"{server.address}/api/v1/pairings", json={"code": code}).json()
    now = datetime.now(ZONE)
    events = [
        {"id": uuid7(now), "seq": seq, "kind": kind, "recorded_at": now.isoformat(), "body": body}
        for seq, (kind, body) in enumerate(entries, start=1)
    ]
    heard = httpx.post(
        f"{server.address}/api/v1/sync",
        json={"cursor": 0, "events": events},
        headers={"Authorization": f"Bearer {joined['token']}"},
    )
    assert heard.json()["acknowledged_through"] == len(entries), heard.text


def pain(region: str, rating: int = 8) -> tuple[str, dict[str, Any]]:
    return "pain_reported", {"rating": rating, "region": region, "side": "right", "when": "during"}


def findings(server: Server, client_id: str, status: str) -> list[dict[str, Any]]:
    items: list[dict[str, Any]] = server.call("GET", f"/flags?status={status}&client_id={client_id}")["items"]
    return items


def test_a_new_client_is_invited_in_person_and_seen_as_soon_as_the_phone_is_paired(
    page: Page, desk: BrowserContext, server: Server, browser: Browser
) -> None:
    caseload = desk.new_page()
    caseload.goto(f"{server.address}/desk/")
    page.get_by_role("link", name="New client").click()
    page.get_by_label("Name", exact=True).fill("Ines Calloway")
    page.get_by_role("button", name="Add the client").click()
    expect(page.get_by_role("heading", name="Phones of Ines Calloway")).to_be_visible()
    page.get_by_role("button", name="They are here with me").click()
    picture = page.get_by_role("img", name=re.compile("Picture with the link"))
    expect(picture).to_be_visible()
    assert picture.evaluate("one => one.decode().then(() => one.naturalWidth)") > 20
    code = page.locator(".code").inner_text()

    with phone(browser) as theirs:
        theirs.goto(f"{server.address}/app/")
        theirs.get_by_label("Code from your practice").fill(code)
        accept(theirs)
        expect(theirs.get_by_text("is still drawing your way.").first).to_be_visible()
        expect(page.get_by_text("A new phone is paired.")).to_be_visible()
        expect(page.get_by_role("button", name=re.compile("^Unpair"))).to_be_visible()
    expect(caseload.get_by_role("link", name="Ines Calloway", exact=True)).to_be_visible()


def wrong(number: str) -> str:
    return f"{(int(number) + 1) % 10_000:04d}"


def test_a_phone_invited_by_a_link_comes_in_by_its_number_only(page: Page, server: Server, browser: Browser) -> None:
    client_id = new_client(server, "Tobias Renn")
    with phone(browser) as theirs:
        theirs.goto(invited(server, client_id, "link")["url"])
        accept(theirs)
        number = theirs.locator(".check-number").inner_text().strip()
        page.get_by_role("button", name="Compare the number on the phone of Tobias Renn").click()
        dialog = page.get_by_role("dialog")
        field = dialog.get_by_label("The 4 digits that the phone shows")
        field.fill(wrong(number))
        dialog.get_by_role("button", name="Confirm").click()
        expect(dialog.get_by_text("This is not the number that the phone shows.")).to_be_visible()
        field.fill(number)
        dialog.get_by_role("button", name="Confirm").click()
        expect(page.get_by_text("Tobias Renn’s phone is paired.")).to_be_visible()
        theirs.get_by_role("button", name="Look now").click()
        expect(theirs.locator(".check-number")).to_have_count(0)


def test_a_strangers_phone_is_refused_and_stays_outside(page: Page, server: Server, browser: Browser) -> None:
    client_id = new_client(server, "Greta Sommerfeld")
    with phone(browser) as stranger:
        stranger.goto(invited(server, client_id, "link")["url"])
        accept(stranger)
        stranger.locator(".check-number").wait_for()
        page.get_by_role("button", name="Compare the number on the phone of Greta Sommerfeld").click()
        page.get_by_role("dialog").get_by_role("button", name="Refuse this phone").click()
        expect(page.get_by_text("The phone was refused. It can read and send nothing.")).to_be_visible()
        stranger.get_by_role("button", name="Look now").click()
        expect(stranger.get_by_text("The practice did not let this phone in.")).to_be_visible()
        stranger.get_by_role("button", name="Pair it again").click()
        expect(stranger.get_by_label("Code")).to_be_visible()
    assert server.call("GET", "/pairings")["items"] == []
    (device,) = server.call("GET", f"/clients/{client_id}/devices")["items"]
    assert device["revoked_at"] is not None


def test_findings_are_answered_with_a_message_with_a_reason_and_by_watching(page: Page, server: Server) -> None:
    client_id = new_client(server, "Emil Tarrow")
    publish(server, client_id)
    says(server, client_id, pain("knee"), pain("ankle"), pain("hip"))
    page.goto(f"{server.address}/desk/clients/{client_id}")
    expect(page.get_by_role("heading", name="Three things to decide")).to_be_visible()
    # By place, not by order: an answered one moves away from among the open ones.
    knee, ankle, hip = (page.locator("section.flag").filter(has_text=place) for place in ("knee", "ankle", "hip"))
    expect(knee.locator(".btn.main")).to_have_count(1)

    knee.get_by_role("button", name="Close, with a reason").click()
    knee.get_by_role("button", name="Close this finding").click()
    reason = knee.get_by_label("Why nothing more is to be done")
    expect(reason).to_be_focused()
    expect(knee.get_by_text("Please write in a sentence why nothing more is to be done.")).to_be_visible()
    reason.fill("A bruise from the garden, gone by now.")
    knee.get_by_role("button", name="Close this finding").click()
    expect(page.get_by_text("Closed, with your reason.")).to_be_visible()

    ankle.get_by_role("button", name="Seen, keep watching").click()
    expect(page.get_by_text("Noted as seen. It stays here for watching.")).to_be_visible()

    hip.get_by_role("button", name="Hold the dose").click()
    hip.get_by_label("Message to the client").fill("Please keep to last week's sets until we have spoken.")
    hip.get_by_role("button", name="Hold the dose, send the message").click()
    expect(page.get_by_text("Message sent. The phone takes it at its next contact.")).to_be_visible()

    expect(page.get_by_role("heading", name="Nothing to decide")).to_be_visible()
    closed = [one["decisions"][-1] for one in findings(server, client_id, "closed")]
    assert "A bruise from the garden, gone by now." in [one["note"] for one in closed]
    assert {one["action"] for one in closed} <= {"close", "hold"}
    messages = [one["text"] for one in server.call("GET", f"/clients/{client_id}/messages")["items"]]
    assert messages == ["Please keep to last week's sets until we have spoken."]


def test_a_stop_is_ended_by_a_person_who_writes_what_was_said(page: Page, server: Server) -> None:
    client_id = new_client(server, "Ines Calloway")
    publish(server, client_id)
    says(server, client_id, ("symptom_reported", {"symptom": "chest_pain"}))
    page.goto(f"{server.address}/desk/clients/{client_id}")
    stop = page.locator("section.flag").filter(has_text="chest")
    stop.get_by_role("button", name="Spoken to, may train again").click()
    stop.get_by_role("button", name="Let them train again").click()
    expect(stop.get_by_text("Please write in a sentence what was said before they train again.")).to_be_visible()
    stop.get_by_label("What was said, and why training is safe again").fill("Seen by Dr Ashgrove: a pulled muscle.")
    stop.get_by_role("button", name="Let them train again").click()
    expect(page.get_by_text("Noted. The phone shows the sessions again at its next contact.")).to_be_visible()
    (closed,) = findings(server, client_id, "closed")
    assert closed["decisions"][-1]["note"] == "Seen by Dr Ashgrove: a pulled muscle."
    assert findings(server, client_id, "open") == []


def test_an_ended_session_keeps_the_half_written_note(page: Page, server: Server) -> None:
    client_id = new_client(server, "Lene Marrow")
    publish(server, client_id)
    says(server, client_id, pain("knee"))
    page.goto(f"{server.address}/desk/clients/{client_id}")
    page.get_by_role("button", name="Add a note").click()
    note = page.get_by_label("Note for the record, if you like")
    note.fill("Called at noon, she says that")
    page.evaluate("fetch('/api/v1/sign-out', { method: 'POST' })")
    page.get_by_role("button", name="Seen, keep watching").click()
    expect(page.get_by_role("heading", name="Your session ended")).to_be_visible()
    assert len(findings(server, client_id, "open")) == 1
    fill_sign_in(page, server)
    expect(note).to_have_value("Called at noon, she says that")
    page.get_by_role("button", name="Seen, keep watching").click()
    expect(page.get_by_text("Noted as seen. It stays here for watching.")).to_be_visible()
    (decided,) = findings(server, client_id, "acknowledged")[0]["decisions"]
    assert decided["note"] == "Called at noon, she says that"


LONG_WALK = {"distance_km": 30, "ascent_m": 900, "descent_m": 900, "minutes": 900, "pack_kg": 8, "effort": 9}


def test_a_message_is_written_from_the_caseload_and_kept_until_it_is_sent(page: Page, server: Server) -> None:
    client_id = new_client(server, "Anselm Dray")
    publish(server, client_id)
    says(server, client_id, ("walk_logged", LONG_WALK))
    page.reload()
    row = page.get_by_role("row").filter(has_text="Anselm Dray")
    row.get_by_role("button", name="Write to them").click()
    dialog = page.get_by_role("dialog")
    dialog.get_by_label("Message").fill("You walked a lot beside the plan. How do your legs feel?")
    page.keyboard.press("Escape")
    row.get_by_role("button", name="Write to them").click()
    dialog.get_by_role("button", name="Send").click()
    expect(page.get_by_text("Sent to Anselm Dray. The phone takes it at its next contact.")).to_be_visible()
    texts = [one["text"] for one in server.call("GET", f"/clients/{client_id}/messages")["items"]]
    assert texts == ["You walked a lot beside the plan. How do your legs feel?"]


def test_news_waits_while_the_table_is_pointed_at_and_the_headline_waits_with_it(page: Page, server: Server) -> None:
    first = new_client(server, "Walt Imhoff")
    publish(server, first)
    page.reload()
    page.get_by_role("link", name="Walt Imhoff", exact=True).hover()
    before = page.get_by_role("heading", level=1).inner_text()
    says(server, first, pain("knee"))
    show = page.get_by_role("button", name=re.compile("change.*, show"))
    expect(show).to_be_visible()
    expect(page.get_by_role("heading", level=1)).to_have_text(before)
    show.click()
    expect(page.get_by_role("heading", level=1)).not_to_have_text(before)


def test_a_phone_is_unpaired_after_a_question(page: Page, server: Server) -> None:
    client_id = new_client(server, "Ilya Brandt")
    says(server, client_id)
    page.goto(f"{server.address}/desk/clients/{client_id}/phones")
    page.get_by_role("button", name="Unpair Phone").click()
    page.get_by_role("dialog").get_by_role("button", name="Cancel").click()
    assert server.call("GET", f"/clients/{client_id}/devices")["items"][0]["revoked_at"] is None
    page.get_by_role("button", name="Unpair Phone").click()
    page.get_by_role("dialog").get_by_role("button", name="Unpair").click()
    expect(page.get_by_text("“Phone” is unpaired.")).to_be_visible()
    revoked = server.call("GET", f"/clients/{client_id}/devices")["items"][0]["revoked_at"]
    assert datetime.now(UTC) - datetime.fromisoformat(revoked) < timedelta(minutes=5)


def test_too_many_wrong_passwords_are_answered_with_the_seconds_to_wait(desk: BrowserContext, server: Server) -> None:
    address = f"{server.address}/api/v1/sign-in"
    guess = {"email": "nobody@thornwater.example", "password": "a guess"}
    while httpx.post(address, json=guess, timeout=20).status_code != 429:
        pass
    page = desk.new_page()
    page.goto(f"{server.address}/desk/")
    page.get_by_label("Email").fill(guess["email"])
    page.get_by_label("Password", exact=True).fill(guess["password"])
    page.get_by_role("button", name="Sign in").click()
    expect(page.get_by_text(re.compile(r"Too many tries\. Please try again in \d+ seconds?\.")).first).to_be_visible()
