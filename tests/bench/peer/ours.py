"""The phone: a paired page of the real app, filled by its own outbox, in front of the real server."""

from datetime import date
from typing import Any

from playwright.sync_api import Page, expect

from tests.bench.peer import checkins
from tests.bench.peer.install import OUTBOX
from tests.bench.peer.scenes import Scene, Stage
from tests.e2e.conftest import Server
from tests.e2e.test_main_job import pair, pairing_link

_KIT = ["step", "stairs", "rail", "wall", "mat", "chair"]
_SAVED, _ALL = "1,000 entries saved on this phone.", "The practice has all of them."
_WATCH = """(all) => {
  globalThis.allReceived = new Promise((told, failed) => {
    let from = null;
    addEventListener('online', (event) => (from = event.timeStamp), { capture: true, once: true });
    const look = new MutationObserver(() => {
      if (from === null || !document.body.textContent.includes(all)) return;
      look.disconnect();
      told(performance.now() - from);
    });
    look.observe(document.body, { subtree: true, childList: true, characterData: true });
    setTimeout(() => failed(new Error('not received within 60 s')), 60_000);
  });
}"""


def take_on(server: Server, today: date) -> str:
    """Take on a person with a program; answer their id."""
    client_id = server.take_on("Emil Tarrow", kit=_KIT, usual_pain=1)
    server.call("POST", f"/clients/{client_id}/programs", {"content": checkins.program(today)})
    return client_id


def fill(page: Page, stage: Stage, server: Server, client_id: str, events: list[dict[str, Any]]) -> None:
    """Pair the page, take it offline and write the check-ins as the app writes them."""
    pair(page, pairing_link(server, client_id))
    page.wait_for_load_state("networkidle")  # the drawings have come: what is left to fetch later would be in the way
    stage.offline()
    page.evaluate(OUTBOX.read_text())
    assert page.evaluate("(events) => fillOutbox(events)", events) == len(events)
    page.goto(f"{server.address}/app/me")
    expect(page.get_by_text(_SAVED)).to_be_visible()
    page.evaluate(_WATCH, _ALL)


def send(page: Page, stage: Stage, scene: Scene, server: Server, client_id: str, count: int) -> float:
    """Go online; answer the milliseconds until the page says that all is received."""
    stage.enter(scene)
    took = float(page.evaluate("() => globalThis.allReceived"))
    page.evaluate(OUTBOX.read_text())
    assert page.evaluate("() => acknowledged()") == count
    assert _held(server, client_id) == count
    return took


def _held(server: Server, client_id: str) -> int:
    held, cursor = 0, ""
    while True:
        answer = server.call("GET", f"/clients/{client_id}/timeline?limit=200{cursor}")
        held += sum(one["event_id"] is not None for one in answer["items"])
        if answer["next_cursor"] is None:
            return held
        cursor = f"&cursor={answer['next_cursor']}"
