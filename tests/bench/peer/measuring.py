"""Rounds of the measurement: both ways in one browser, on one machine, in the same minutes."""

from collections.abc import Iterator
from contextlib import ExitStack, contextmanager
from dataclasses import dataclass, field
from datetime import date, datetime
from pathlib import Path
from secrets import token_hex
from statistics import median
from tempfile import TemporaryDirectory

from playwright.sync_api import BrowserContext, Playwright, sync_playwright

from tests.bench.peer import ours, theirs
from tests.bench.peer.checkins import ZONE, check_ins
from tests.bench.peer.install import install
from tests.bench.peer.scenes import Scene, Stage
from tests.bench.peer.wire import Wire
from tests.bench.serving import practice_server
from tests.e2e.conftest import Server, phone_browser

COUNT = 1000


@dataclass
class Taken:
    """What was measured of one way, a value a round."""

    name: str
    ms: list[float] = field(default_factory=list)
    sent: list[int] = field(default_factory=list)
    got: list[int] = field(default_factory=list)
    requests: int = 0

    def add(self, ms: float, wire: Wire, of: str) -> None:
        """Take one round's time and bytes."""
        found = wire.requests(of)
        assert found, "nothing was sent"
        assert all(one.got for one in found), found
        self.ms.append(ms)
        self.sent.append(sum(one.sent for one in found))
        self.got.append(sum(one.got for one in found))
        self.requests = len(found)

    @property
    def time(self) -> float:
        """Milliseconds, the median."""
        return median(self.ms)

    @property
    def bytes(self) -> float:
        """Both directions, the median."""
        return median(map(sum, zip(self.sent, self.got, strict=True)))

    def words(self) -> str:
        """In a line."""
        each = ", ".join(f"{ms:.0f}" for ms in sorted(self.ms))
        sent, got = median(self.sent), median(self.got)
        return (
            f"{self.name}: {self.time:.0f} ms ({each}), {self.bytes:,.0f} bytes "
            f"({sent:,.0f} up, {got:,.0f} down) in {self.requests} requests"
        )


@dataclass
class Place:
    """Both servers, and where browsers keep their profiles. ``peers``: whether flushed, to address."""

    server: Server
    peers: dict[bool, str]
    folder: Path
    today: date
    driver: Playwright

    @contextmanager
    def browser(self) -> Iterator[BrowserContext]:
        """A browser with a fresh profile on the disk."""
        profile = self.folder / f"profile-{token_hex(4)}"
        with phone_browser(self.driver, profile, reduced_motion="reduce") as found:
            yield found


@contextmanager
def place() -> Iterator[Place]:
    """Install what is missing and start everything."""
    install()
    with ExitStack() as stack:
        folder = Path(stack.enter_context(TemporaryDirectory(ignore_cleanup_errors=True)))
        server = stack.enter_context(practice_server(folder / "ours"))
        peers = {
            flushed: stack.enter_context(theirs.peer_server(folder / f"theirs-{flushed}", flushed=flushed))
            for flushed in (False, True)
        }
        driver = stack.enter_context(sync_playwright())
        yield Place(server, peers, folder, datetime.now(ZONE).date(), driver)


def _ours(browser: BrowserContext, at: Place, scene: Scene, taken: Taken) -> None:
    page = browser.new_page()
    stage, client_id = Stage(page), ours.take_on(at.server, at.today)
    ours.fill(page, stage, at.server, client_id, check_ins(at.today, COUNT))
    wire = Wire(page)
    taken.add(ours.send(page, stage, scene, at.server, client_id, COUNT), wire, "/api/v1/sync")
    page.close()


def _theirs(browser: BrowserContext, at: Place, scene: Scene, setting: theirs.Setting, taken: Taken) -> None:
    page, name, address = browser.new_page(), f"peer{token_hex(4)}", at.peers[setting.flushed]
    theirs.fill(page, address, setting, name, check_ins(at.today, COUNT))
    wire = Wire(page)
    taken.add(theirs.send(page, scene, setting, address, name, COUNT), wire, f"/{name}")
    page.close()


@dataclass
class Compared:
    """What was measured in one scene."""

    scene: Scene
    mine: Taken
    peers: dict[theirs.Setting, Taken]

    def best(self, of: str, *, flushed: bool = False) -> float:
        """Answer the peer's smallest ``time`` or ``bytes`` of all settings, with or without a flushed disk."""
        return min(float(getattr(taken, of)) for setting, taken in self.peers.items() if setting.flushed is flushed)

    def ratio(self, of: str, *, flushed: bool = False) -> float:
        """Answer how many times the peer's best is ours."""
        return self.best(of, flushed=flushed) / float(getattr(self.mine, of))


def compare(at: Place, scene: Scene, settings: list[theirs.Setting], rounds: int) -> Compared:
    """Measure one scene, a browser with a fresh profile a round."""
    found = Compared(scene, Taken("Steadfoot"), {setting: Taken(setting.name) for setting in settings})
    for _ in range(rounds):
        with at.browser() as browser:
            _ours(browser, at, scene, found.mine)
            for setting, taken in found.peers.items():
                _theirs(browser, at, scene, setting, taken)
    return found
