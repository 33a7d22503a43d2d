"""The bytes that a page sends and gets, as its browser counts them: heads and bodies, packed as they travelled."""

from dataclasses import dataclass, field
from typing import Any

from playwright.sync_api import Page


@dataclass
class Request:
    """One request with its answer; bytes of head and body together."""

    method: str
    url: str
    sent: int = 0
    got: int = 0


def _head_bytes(first_line: str, headers: dict[str, str]) -> int:
    return len(f"{first_line}\r\n") + sum(len(f"{name}: {value}\r\n") for name, value in headers.items()) + 2


@dataclass
class Wire:
    """All requests of a page since ``begin``."""

    page: Page
    _open: dict[str, Request] = field(default_factory=dict)

    def __post_init__(self) -> None:
        """Begin to listen."""
        told = self.page.context.new_cdp_session(self.page)
        told.on("Network.requestWillBeSent", self._asked)
        told.on("Network.requestWillBeSentExtraInfo", self._sent)
        told.on("Network.loadingFinished", self._got)
        told.send("Network.enable")

    def _asked(self, told: dict[str, Any]) -> None:
        found = self._open.setdefault(told["requestId"], Request("", ""))
        found.method, found.url = told["request"]["method"], told["request"]["url"]

    def _sent(self, told: dict[str, Any]) -> None:
        found = self._open.setdefault(told["requestId"], Request("", ""))
        headers = told["headers"]
        body = next((int(value) for name, value in headers.items() if name.lower() == "content-length"), 0)
        path = found.url.partition("://")[2].partition("/")[2]
        found.sent = _head_bytes(f"{found.method} /{path} HTTP/1.1", headers) + body

    def _got(self, told: dict[str, Any]) -> None:
        if told["requestId"] in self._open:
            self._open[told["requestId"]].got = int(told["encodedDataLength"])

    def begin(self) -> None:
        """Forget what was counted."""
        self._open.clear()

    def requests(self, of: str = "/") -> list[Request]:
        """Answer the requests whose address holds ``of`` and that left the browser."""
        return [one for one in self._open.values() if of in one.url and one.sent]
