"""Where the phone is: on the server's own machine, slower, or far away."""

from dataclasses import dataclass

from playwright.sync_api import Page


@dataclass(frozen=True)
class Scene:
    """How much slower the page's processor is, and its link: round trip in ms, bits a second up and down."""

    name: str
    slower_by: int = 1
    latency_ms: int = 0
    up_bits: float | None = None
    down_bits: float | None = None


SCENES = [
    Scene("no network between, this processor"),
    Scene("no network between, 4 times slower processor", 4),
    Scene("4 times slower processor, 1 Mbit/s up, 3 Mbit/s down, 150 ms", 4, 150, 1e6, 3e6),
]
_BYTE = 8


class Stage:
    """Puts one page into a scene."""

    def __init__(self, page: Page) -> None:
        self._told = page.context.new_cdp_session(page)
        self._told.send("Network.enable")

    def offline(self) -> None:
        """Take the page's network away."""
        self._link(Scene(""), offline=True)

    def enter(self, scene: Scene) -> None:
        """Slow the page down and give it the scene's link."""
        self._told.send("Emulation.setCPUThrottlingRate", {"rate": scene.slower_by})
        self._link(scene, offline=False)

    def _link(self, scene: Scene, *, offline: bool) -> None:
        up, down = (rate / _BYTE if rate else -1 for rate in (scene.up_bits, scene.down_bits))
        link = {"latency": scene.latency_ms, "uploadThroughput": up, "downloadThroughput": down}
        self._told.send("Network.emulateNetworkConditions", {"offline": offline, **link})
