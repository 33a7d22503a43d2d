"""Forty texts that would be markup elsewhere, in every field of words: both apps show them as typed."""

from datetime import UTC, date, datetime, timedelta

import httpx
import pytest
from playwright.sync_api import Browser, BrowserContext, Dialog, Page, expect

from steadfoot.core.ids import uuid7
from tests.builders import circuit, content, step_down, trip
from tests.e2e.conftest import PHONE, Server
from tests.e2e.test_desk_program import SOON_MS, open_desk
from tests.features.exercises.own import own_body, rung

pytestmark = pytest.mark.browser
EVILS = [
    *("<b xss>", "<script xss>alert(1)</script>", "<img xss src=x onerror=alert(1)>", "<svg xss onload=alert(1)>"),
    *("<iframe xss srcdoc='<b>'>", "<a xss href=javascript:alert(1)>x</a>", "<style xss>*{display:none}</style>"),
    *(
        "<math xss><mi>",
        "<form xss action=//x>",
        "<input xss autofocus onfocus=alert(1)>",
        "<body xss onload=alert(1)>",
    ),
    *("<object xss data=x>", "<embed xss src=x>", "<base xss href=//x>", "<link xss rel=stylesheet href=//x>"),
    *(
        "<meta xss http-equiv=refresh content=0>",
        "<video xss><source onerror=alert(1)>",
        "<details xss open ontoggle=alert(1)>",
    ),
    *('"><b xss>', "'><b xss>", "`><b xss>", "--><b xss>", "]]><b xss>", "</title><b xss>", "</textarea><b xss>"),
    *("</script><b xss>", "</style><b xss>", '" onmouseover=alert(1) xss="', "' onfocus=alert(1) autofocus xss='"),
    *(
        "javascript:alert(1)//",
        "{{constructor.constructor('alert(1)')()}}",
        "${alert(1)}",
        "&lt;b xss&gt;",
        "&#60;b xss>",
    ),
    *(
        "%3Cb%20xss%3E",
        "\\u003cb xss\\u003e",
        "<<b xss>>",
        "<b/xss>",
        "<b\txss\n>",
        "<plaintext xss>",
        "<template xss><b>",
    ),
]
ALL = " ".join(EVILS)
_MADE = "document.querySelectorAll('[xss], iframe, object, embed, base, math, plaintext').length"


def _some(place: int, length: int = 110) -> str:
    """Answer as many of the texts as a short field takes, others for each place."""
    text = ""
    for evil in EVILS[place % len(EVILS) :] + EVILS:
        text = f"{text} {evil}".strip() if len(text) + len(evil) < length else text
    return text


def _evil_client(server: Server) -> str:
    """Answer a client in whose every field something is typed."""
    client_id = server.take_on(_some(0), note=ALL, kit=["step", "rail"])
    client, start = f"/clients/{client_id}", datetime.now(UTC).date()
    server.call("POST", f"{client}/clearances", {"given_by": _some(5), "note": ALL})
    own = server.call(
        "POST",
        "/exercises/own",
        own_body(_some(8, 60), why=f"A {_some(9)}.", cautions=[f"A {_some(10)}."], ladder=[rung(name=_some(11, 60))]),
    )
    prescribed = [
        step_down(note=_some(12)),
        {**step_down("p2", "v1"), "exercise": own["code"], "sides": "both", "note": ""},
    ]
    session = {**circuit(prescriptions=prescribed), "name": _some(15, 60), "note": _some(16)}
    program = {**content(start, sessions=[session], weekdays=tuple(range(7))), "title": _some(18, 60)}
    program["goal"]["name"] = _some(20, 60)
    server.call("PUT", f"{client}/trip", trip(_some(24, 60)))
    server.call("PUT", f"{client}/programs/draft", {"content": program})
    server.call("POST", f"{client}/programs", {"content": program, "note": _some(22)})
    server.call(
        "POST",
        "/templates",
        {"name": _some(25, 60), "sessions": [session], "weeks": [[{"weekday": "mon", "session": "s1"}]]},
    )
    server.call("POST", f"{client}/messages", {"text": ALL})
    server.call("POST", f"{client}/tests", {"code": "chair-stand-30s", "value": 14, "note": _some(28)})
    server.call("POST", f"{client}/functional-scales", {"activities": [{"name": _some(30, 60), "rating": 3}]})
    seen = server.call("GET", f"{client}/readiness")["digest"]
    server.call("POST", f"{client}/readiness-notes", {"verdict": "defer", "words": ALL, "digest": seen})
    _evil_entries(server, client_id, start)
    return client_id


def _evil_entries(server: Server, client_id: str, day: date) -> None:
    code = server.call("POST", f"/clients/{client_id}/invitations", {"delivery": "in_person"})["code"]
    paired = httpx.post(f"{server.address}/api/v1/pairings", json={"code": code, "label": _some(33)}).json()
    at = datetime.now(UTC) - timedelta(minutes=5)
    said = [("note_written", {"text": ALL}), ("symptom_reported", {"symptom": "other", "note": ALL}), (ALL, {ALL: ALL})]
    events = [
        {"id": uuid7(at), "seq": seq, "kind": kind, "recorded_at": at.isoformat(), "body": body}
        for seq, (kind, body) in enumerate(said, start=1)
    ]
    proof = {"Authorization": f"Bearer {paired['token']}"}
    httpx.post(f"{server.address}/api/v1/sync", json={"events": events}, headers=proof).raise_for_status()


def _watched(page: Page) -> list[str]:
    opened: list[str] = []

    def said(dialog: Dialog) -> None:
        opened.append(dialog.message)
        dialog.dismiss()

    page.on("dialog", said)
    return opened


def test_what_is_typed_is_shown_as_it_was_typed_in_both_apps(
    server: Server, desk: BrowserContext, browser: Browser
) -> None:
    assert len(EVILS) >= 40
    client_id = _evil_client(server)
    page = open_desk(desk, server)
    opened = _watched(page)
    below = ["", "/edit", "/phones", "/screening", "/load", "/readiness", "/season", "/tests", "/trip", "/program"]
    for path in ["/", "/clients", "/templates", "/exercises", *(f"/clients/{client_id}{one}" for one in below)]:
        page.goto(f"{server.address}/desk{path}")
        page.locator("main h1").first.wait_for()
        page.wait_for_timeout(200)  # what is asked for comes in; the stream of live pages never ends
        assert page.evaluate(_MADE) == 0, path
    page.goto(f"{server.address}/desk/clients/{client_id}")
    expect(page.get_by_text("<script xss>").first).to_be_visible()

    phone = browser.new_context(**PHONE).new_page()
    phone.set_default_timeout(SOON_MS)
    opened += _watched(phone)
    invitation = server.call("POST", f"/clients/{client_id}/invitations", {"delivery": "in_person"})
    phone.goto(invitation["url"])
    phone.get_by_role("button", name="Go on").click()
    phone.get_by_role("button", name="Yes, this is me").click()
    phone.get_by_role("navigation").first.wait_for()
    for path in ["/", "/season", "/practice", "/me", "/health", "/walk", "/hurts"]:
        phone.goto(f"{server.address}/app{path}")
        phone.locator("h1").first.wait_for()
        assert phone.evaluate(_MADE) == 0, path
    assert not opened
