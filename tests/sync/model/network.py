"""What can happen to a request on its way, and to its reply on the way back."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from typing import Any

from tests.sync.model.phones import Answer, Ask
from tests.sync.model.service import Heard, Service

LOST: Answer = {"error": "TypeError"}
SLOW: Answer = {"error": "TimeoutError"}
_JSON = {"content-type": "application/json"}
SIGN_IN_PAGE = "<html><title>Hotel</title><p>Welcome. Your room number, please.</p></html>"
"""Answers that a network between phone and practice makes up by itself."""
STRANGE: dict[str, Answer] = {
    "html": {"status": 200, "headers": {"content-type": "text/html"}, "text": SIGN_IN_PAGE},
    "html_as_json": {"status": 200, "headers": _JSON, "text": SIGN_IN_PAGE},
    "empty": {"status": 200, "headers": _JSON, "text": "{}"},
    "nothing": {"status": 204, "headers": {}, "text": ""},
    "foreign_401": {"status": 401, "headers": {"content-type": "text/html"}, "text": SIGN_IN_PAGE},
    "foreign_403": {"status": 403, "headers": _JSON, "text": '{"error": "blocked"}'},
    "busy": {"status": 429, "headers": {**_JSON, "retry-after": "2"}, "text": "{}"},
    "broken": {"status": 500, "headers": _JSON, "text": '{"code": "internal"}'},
    "away": {"status": 503, "headers": {"content-type": "text/html"}, "text": SIGN_IN_PAGE},
    "too_large": {"status": 413, "headers": _JSON, "text": '{"code": "too-large"}'},
}
Fault = tuple[str, int]
"""A name, and a number where the fault has one: at which statement, which strange answer."""


@dataclass
class Network:
    """Between the phones and the server. ``plan`` says what befalls the next exchanges; after it, nothing does."""

    service: Service
    heard: Callable[[Ask, Heard], None]
    """Told of each genuine reply that left the server."""
    plan: list[Fault] = field(default_factory=list)
    meanwhile: Callable[[Ask, str], None] = lambda _ask, _name: None
    """Does what a plan wants done while a request is on its way."""
    late: list[Ask] = field(default_factory=list)
    """Requests that are still on their way, long after the phone gave them up."""
    replies: dict[str, list[Answer]] = field(default_factory=dict)
    """What each key was answered to its sync calls."""

    def exchange(self, ask: Ask) -> Answer:
        """Carry one request, with what the plan has for it."""
        name, number = self.plan.pop(0) if self.plan else ("", 0)
        return self._befallen(ask, name, number)

    def _befallen(self, ask: Ask, name: str, number: int) -> Answer:
        if name == "lost_request":
            return LOST
        if name == "late":
            self.late.append(ask)
            return SLOW if number % 2 else LOST
        if name == "strange":
            return STRANGE[sorted(STRANGE)[number % len(STRANGE)]]
        if name == "stale":
            earlier = self.replies.get(ask["headers"].get("Authorization", ""), [])
            return earlier[number % len(earlier)] if earlier and ask["path"].endswith("/sync") else LOST
        if name in ("dies", "disk"):
            self.service.point.arm(number, dies=name == "dies")
        elif name.startswith("before_"):
            self.meanwhile(ask, name.removeprefix("before_"))
        return self._on_the_way_back(ask, name, number, self.deliver(ask))

    def _on_the_way_back(self, ask: Ask, name: str, number: int, answer: Answer) -> Answer:
        if name == "lost_reply":
            return SLOW if number % 2 else LOST
        if name == "twice":
            self.deliver(ask)
        elif name == "dies_after":
            self.service.restart()
            return LOST
        elif name == "cut_short" and answer.get("text"):
            return {**answer, "text": answer["text"][: len(answer["text"]) * (number % 8) // 8]}
        elif name.startswith("after_"):
            self.meanwhile(ask, name.removeprefix("after_"))
        return answer

    def deliver(self, ask: Ask) -> Answer:
        """Have the server do it, and answer as it does."""
        return self.answered(ask, self.service.ask(*request_of(ask)))

    def together(self, asks: Sequence[Ask]) -> list[Answer]:
        """Have the server do several at once."""
        found = self.service.ask_together([request_of(ask) for ask in asks])
        return [self.answered(ask, heard) for ask, heard in zip(asks, found, strict=True)]

    def answered(self, ask: Ask, heard: Heard | None) -> Answer:
        """Answer what the phone gets to hear of a reply."""
        if heard is None:
            return LOST
        self.heard(ask, heard)
        answer: dict[str, Any] = {"status": heard.status, "headers": heard.headers, "text": heard.text}
        if heard.status == 200 and ask["path"].endswith("/sync"):
            self.replies.setdefault(ask["headers"]["Authorization"], []).append(answer)
        return answer


def request_of(ask: Ask) -> tuple[str, str, dict[str, str], bytes]:
    """Answer a page's question as the server takes it."""
    return ask["method"], ask["path"], ask["headers"], ask["body"].encode()
