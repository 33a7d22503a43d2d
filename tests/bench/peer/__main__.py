"""Sync of 1,000 queued check-ins, ours and the peer's, in the same Chromium. Run as ``python -m tests.bench.peer``.

Prints milliseconds and bytes, medians of some rounds, and the ratios to the peer's best setting; never fails on time.

What each does before it says "received": ours checks and stores every check-in, folds it into derived rows, asks the
rules about the person, and has flushed the disk; and the page draws what has arrived. The peer's server stores
documents; LevelDB hands its writes to the system without a flush, so that they outlive a killed process and not a
power cut. The peer's page draws nothing.
"""

import sys
from contextlib import ExitStack
from dataclasses import dataclass, field
from datetime import date, datetime
from pathlib import Path
from secrets import token_hex
from statistics import median
from tempfile import TemporaryDirectory

from playwright.sync_api import BrowserContext, Playwright, sync_playwright

from steadfoot.core.settings import Settings
from steadfoot.founding import found_practice
from tests.bench.peer import ours, theirs
from tests.bench.peer.checkins import ZONE, check_ins
from tests.bench.peer.install import install
from tests.bench.peer.wire import Wire
from tests.e2e.conftest import PASSWORD, Server, free_port, phone_browser, running, signed_in

COUNT, ROUNDS, QUICK_ROUNDS = 1000, 5, 2
OURS = "Steadfoot"


@dataclass
class Taken:
    """What was measured of one way, a value a round."""

    ms: list[float] = field(default_factory=list)
    sent: list[int] = field(default_factory=list)
    got: list[int] = field(default_factory=list)
    requests: list[int] = field(default_factory=list)

    def add(self, ms: float, wire: Wire, of: str) -> None:
        """Take one round's time and bytes."""
        found = wire.requests(of)
        assert all(one.sent and one.got for one in found), found
        self.ms.append(ms)
        self.sent.append(sum(one.sent for one in found))
        self.got.append(sum(one.got for one in found))
        self.requests.append(len(found))

    @property
    def bytes(self) -> float:
        """Both directions."""
        return median(map(sum, zip(self.sent, self.got, strict=True)))


@dataclass
class Place:
    """Both servers, and where browsers keep their profiles."""

    server: Server
    peer: str
    folder: Path
    today: date


def _place(stack: ExitStack) -> Place:
    folder = Path(stack.enter_context(TemporaryDirectory(ignore_cleanup_errors=True)))
    settings = Settings(data_dir=folder / "ours")
    email = "maren@thornwater.example"
    found_practice(settings, "Thornwater Physical Therapy", email, "Maren Brandvold", str(ZONE), PASSWORD)
    address = stack.enter_context(running(folder / "ours", free_port()))
    http = stack.enter_context(signed_in(address, {"email": email, "password": PASSWORD}))
    peer = stack.enter_context(theirs.peer_server(folder / "theirs"))
    return Place(Server(address, email, http), peer, folder, datetime.now(ZONE).date())


def _ours(browser: BrowserContext, place: Place, taken: Taken) -> None:
    page = browser.new_page()
    client_id = ours.take_on(place.server, place.today)
    ours.fill(page, place.server, client_id, check_ins(place.today, COUNT))
    wire = Wire(page)
    taken.add(ours.send(page, place.server, client_id, COUNT), wire, "/api/v1/sync")
    page.close()


def _theirs(browser: BrowserContext, place: Place, setting: theirs.Setting, taken: Taken) -> None:
    page, name = browser.new_page(), f"peer{token_hex(4)}"
    theirs.fill(page, place.peer, setting, name, check_ins(place.today, COUNT))
    wire = Wire(page)
    taken.add(theirs.send(page, setting, place.peer, name, COUNT), wire, f"/{name}")
    page.close()


def measure(rounds: int) -> dict[str, Taken]:
    """Answer what was measured, by name; every round begins with a fresh profile of the browser."""
    found = {OURS: Taken(), **{setting.name: Taken() for setting in theirs.TRIED}}
    install()
    with ExitStack() as stack:
        place = _place(stack)
        driver = stack.enter_context(sync_playwright())
        for number in range(rounds):
            _round(driver, place, number, found)
    return found


def _round(driver: Playwright, place: Place, number: int, found: dict[str, Taken]) -> None:
    with phone_browser(driver, place.folder / f"profile{number}", reduced_motion="reduce") as browser:
        _ours(browser, place, found[OURS])
        for setting in theirs.TRIED:
            _theirs(browser, place, setting, found[setting.name])


def best(found: dict[str, Taken], of: str = "ms") -> Taken:
    """Answer the peer's best setting, by time or by bytes."""
    peers = [taken for name, taken in found.items() if name != OURS]
    return min(peers, key=lambda taken: taken.bytes if of == "bytes" else median(taken.ms))


def main() -> None:
    """Measure and print."""
    found = measure(QUICK_ROUNDS if "--quick" in sys.argv else ROUNDS)
    for name, taken in found.items():
        each = ", ".join(f"{ms:.0f}" for ms in sorted(taken.ms))
        print(
            f"{name}: {median(taken.ms):.0f} ms ({each}), {taken.bytes:,.0f} bytes "
            f"(sent {median(taken.sent):,.0f}, got {median(taken.got):,.0f}) in {median(taken.requests):.0f} requests"
        )
    mine = found[OURS]
    print(f"time: {median(best(found).ms) / median(mine.ms):.1f} times faster than the peer's fastest setting")
    print(f"bytes: {best(found, 'bytes').bytes / mine.bytes:.1f} times fewer than the peer's leanest setting")


if __name__ == "__main__":
    main()
