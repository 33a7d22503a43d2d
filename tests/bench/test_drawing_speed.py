"""How smoothly the one moving drawing of a card runs on a slow phone. Prints figures and never fails on time.

A drawing in an image element is painted anew for each frame by the page's own thread, so a frame that comes late there
is one that is seen late. Beside it stands the same card held still: no drawing could let the page run faster.
"""

from pathlib import Path
from statistics import quantiles

import pytest
from playwright.sync_api import CDPSession, Page, Playwright, expect

from tests.e2e.conftest import Server, phone_browser
from tests.e2e.test_main_job import pair, pairing_link, write_program

pytestmark = pytest.mark.browser
SLOWER_BY, SECONDS = 4, 5
LATE_MS = 25
"""A frame that takes longer than one and a half of the usual 16.7 ms was missed by the screen."""
_TRACED = "devtools.timeline,disabled-by-default-devtools.timeline.frame"
_FRAMES = """(ms) => new Promise((told) => {
  const times = [];
  const look = (at) => {
    times.push(at);
    if (at - times[0] < ms) requestAnimationFrame(look);
    else told(times.slice(1).map((time, i) => time - times[i]));
  };
  requestAnimationFrame(look);
})"""


def _tell(name: str, taken: list[float]) -> None:
    late = sum(one > LATE_MS for one in taken)
    p95 = quantiles(taken, n=20, method="inclusive")[18]
    fps = 1000 * len(taken) / sum(taken)
    print(f"{name}: {fps:.1f} frames a second, p95 {p95:.1f} ms a frame, {late} of {len(taken)} late")


def _drawn(page: Page, session: CDPSession) -> dict[str, int]:
    """Answer from the browser's own trace how often, in a while in which no script runs, it painted and drew frames."""
    found: list[str] = []
    session.on("Tracing.dataCollected", lambda part: found.extend(one["name"] for one in part["value"]))
    session.send("Tracing.start", {"categories": _TRACED, "transferMode": "ReportEvents"})
    page.wait_for_timeout(1000 * SECONDS)
    whole: list[object] = []
    session.on("Tracing.tracingComplete", lambda told: whole.append(told))
    session.send("Tracing.end")
    while not whole:
        page.wait_for_timeout(50)
    return {name: found.count(name) for name in ("Paint", "DrawFrame", "DroppedFrame")}


def test_how_smoothly_the_drawing_of_a_card_moves(server: Server, playwright: Playwright, tmp_path: Path) -> None:
    with phone_browser(playwright, tmp_path / "phone") as phone:
        page = phone.pages[0]
        pair(page, pairing_link(server, write_program(server)))
        page.get_by_role("link", name="See Step-down").click()
        image = page.get_by_role("img", name="Drawing of Step-down, 15 cm step")
        expect(image).to_be_visible()
        session = phone.new_cdp_session(page)
        session.send("Emulation.setCPUThrottlingRate", {"rate": SLOWER_BY})
        print(f"\nCPU {SLOWER_BY} times slower, a phone of {page.viewport_size} points")
        _tell("moving", page.evaluate(_FRAMES, 1000 * SECONDS))
        moving = _drawn(page, session)
        page.evaluate("() => scrollTo(0, document.body.scrollHeight)")
        page.wait_for_function("(image) => image.currentSrc.endsWith('still')", arg=image.element_handle())
        page.wait_for_timeout(500)
        away = _drawn(page, session)
        page.evaluate("() => scrollTo(0, 0)")
        page.get_by_role("button", name="Hold still").click()
        page.wait_for_timeout(500)
        _tell("held still", page.evaluate(_FRAMES, 1000 * SECONDS))
        held = _drawn(page, session)
    print(f"in {SECONDS} s: moving {moving}, out of view {away}, held still {held}")
    assert moving["Paint"] > away["Paint"]
    assert moving["Paint"] > held["Paint"]
