"""Ninety days without a signal, 5,000 entries, then a network: how long until all are received, how quick a tap is.

    python -m tests.bench.long_silence [--entries 5000] [--slower 4]

A real server, a real Chromium with its processor slowed; the log is written by the app's own outbox.
"""

import argparse
import tempfile
from collections.abc import Iterator
from contextlib import ExitStack
from dataclasses import dataclass
from pathlib import Path
from statistics import quantiles
from typing import Any

from playwright.sync_api import Page, Playwright, sync_playwright

from steadfoot.core.settings import Settings
from steadfoot.founding import found_practice
from tests.e2e.conftest import PASSWORD, Server, free_port, phone_browser, running, signed_in
from tests.e2e.silence import OUTBOX, Silence, load_outbox, outbox_bundle
from tests.e2e.test_main_job import ZONE, pair, pairing_link, today, write_program
from tests.e2e.test_phone_offline import between

DAYS, ENTRIES, SLOWER_BY = 90, 5_000, 4
BETWEEN_TAPS_MS = 250
"""Four times as quick as anybody does a set."""
TAP = """(n) => new Promise((told) => {
  const all = document.querySelectorAll('button.stone');
  const stone = all[n % all.length], before = stone.getAttribute('aria-pressed');
  const look = new MutationObserver(() => {
    if (stone.getAttribute('aria-pressed') === before) return;
    look.disconnect();
    told(performance.now() - from);
  });
  look.observe(stone, { attributes: true });
  const from = performance.now();
  stone.click();
})"""
_WATCH_TASKS = """() => {
  window.longTasks = [];
  new PerformanceObserver((list) => window.longTasks.push(...list.getEntries().map((one) => one.duration)))
    .observe({ type: 'longtask', buffered: false });
}"""
FIRST_STONE = """() => new Promise((told) => {
  const look = () => document.querySelector('button.stone') ? told(performance.now()) : requestAnimationFrame(look);
  look();
})"""
RECEIVED = """(wanted) => new Promise((told) => {
  const opening = indexedDB.open('steadfoot');
  opening.onsuccess = () => {
    const asked = opening.result.transaction('keep').objectStore('keep').get('sync');
    asked.onsuccess = () => { opening.result.close(); told(asked.result.acknowledged); };
  };
})"""


@dataclass
class Drain:
    """What a drain came to."""

    entries: int
    seconds: float
    taps_ms: list[float]
    long_tasks_ms: list[float]


def drain(page: Page, entries: int, slower_by: float = SLOWER_BY) -> Drain:
    """Give the phone its network back, tap stones meanwhile; answer how it went when everything was received."""
    page.context.new_cdp_session(page).send("Emulation.setCPUThrottlingRate", {"rate": slower_by})
    page.evaluate(_WATCH_TASKS)
    page.context.set_offline(False)
    started, taps = page.evaluate("performance.now()"), []
    while page.evaluate(RECEIVED, entries) < entries:
        taps.append(page.evaluate(TAP, len(taps)))
        page.wait_for_timeout(BETWEEN_TAPS_MS)
        assert len(taps) < 2_000, "the phone does not get rid of its log"
    seconds = (page.evaluate("performance.now()") - started) / 1000
    return Drain(entries, seconds, taps, page.evaluate("window.longTasks"))


def silent_phone(page: Page, silence: Silence) -> int:
    """Write the log of a long silence on a paired phone; answer how many entries it has."""
    load_outbox(page)
    page.context.set_offline(True)
    return silence.log(page)


def received_ids(server: Server, client_id: str) -> list[str]:
    """Answer the ids of all that the practitioner can read of a client's phone."""
    found: list[str] = []
    cursor = ""
    while True:
        page: dict[str, Any] = server.call("GET", f"/clients/{client_id}/timeline?limit=200{cursor}")
        found += [one["event_id"] for one in page["items"] if one["event_id"]]
        if page["next_cursor"] is None:
            return found
        cursor = f"&cursor={page['next_cursor']}"


def _p95(taken: list[float]) -> float:
    return quantiles(taken, n=20, method="inclusive")[18]


def _server(stack: ExitStack, folder: Path) -> Server:
    address = stack.enter_context(running(folder, free_port()))
    email = "maren@thornwater.example"
    found_practice(
        Settings(data_dir=folder), "Thornwater Physical Therapy", email, "Maren Brandvold", ZONE.key, PASSWORD
    )
    return Server(address, email, stack.enter_context(signed_in(address, {"email": email, "password": PASSWORD})))


def _cold_starts(
    playwright: Playwright, profile: Path, address: str, slower_by: float, times: int = 5
) -> Iterator[float]:
    for _ in range(times):
        with phone_browser(playwright, profile, offline=True) as phone:
            page = phone.new_page()
            page.context.new_cdp_session(page).send("Emulation.setCPUThrottlingRate", {"rate": slower_by})
            page.goto(f"{address}/app/", wait_until="commit")
            yield page.evaluate(FIRST_STONE)


def _tell(found: Drain, ids: list[str]) -> None:
    twice, taps, tasks = len(ids) - len(set(ids)), found.taps_ms, found.long_tasks_ms
    print(f"received after {found.seconds:.1f} s; {len(ids)} entries at the practice, {twice} twice")
    print(f"tap to saved meanwhile ({len(taps)} taps): p95 {_p95(taps):.0f} ms, longest {max(taps):.0f}")
    print(f"tasks over 50 ms: {len(tasks)}, longest {max(tasks, default=0):.0f} ms")


def main() -> None:
    """Run it once and print what it came to."""
    words = argparse.ArgumentParser(description=__doc__)
    words.add_argument("--entries", type=int, default=ENTRIES)
    words.add_argument("--slower", type=float, default=SLOWER_BY)
    given = words.parse_args()
    with ExitStack() as stack:
        folder = Path(stack.enter_context(tempfile.TemporaryDirectory()))
        server = _server(stack, folder)
        client_id = write_program(server)
        way = stack.enter_context(between(server.address))
        way.files = {OUTBOX: outbox_bundle()}
        playwright = stack.enter_context(sync_playwright())
        profile = folder / "phone"
        silence = Silence(DAYS, given.entries, today(), ZONE)
        with phone_browser(playwright, profile, reduced_motion="reduce") as phone:
            page = phone.pages[0]
            pair(page, way.link(pairing_link(server, client_id)))
            total = silent_phone(page, silence)
        print(f"{total} entries of {DAYS} days on the phone, processor {given.slower:g} times slower")
        cold = sorted(_cold_starts(playwright, profile, way.address, given.slower))
        print("offline cold start to the first stone, ms: " + ", ".join(f"{one:.0f}" for one in cold))
        with phone_browser(playwright, profile, offline=True, reduced_motion="reduce") as phone:
            page = phone.new_page()
            page.goto(f"{way.address}/app/")
            page.locator("button.stone").first.wait_for()
            taps = [page.evaluate(TAP, n) for n in range(15)]
            print(f"tap to saved before, offline: p95 {_p95(taps):.0f} ms")
            found = drain(page, total + 16, given.slower)
            used = page.evaluate("navigator.storage.estimate().then((found) => found.usage)")
        _tell(found, received_ids(server, client_id))
        print(f"storage used by the app, all of it: {used / 1e6:.1f} MB")


if __name__ == "__main__":
    main()
