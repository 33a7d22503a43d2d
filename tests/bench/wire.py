"""A phone's HTTP for measurements: one kept connection and little else, so that the server is what is measured."""

import json
from http.client import HTTPConnection
from types import TracebackType
from typing import Any, Self
from urllib.parse import urlsplit


class Wire:
    """One connection, and the cursor that a phone keeps."""

    def __init__(self, address: str, token: str = "", cookie: str = "") -> None:
        self._connection = HTTPConnection(urlsplit(address).netloc, timeout=60)
        self._headers = {"Content-Type": "application/json", "Authorization": f"Bearer {token}"}
        if cookie:
            self._headers = {"Content-Type": "application/json", "Cookie": cookie}
        self._cursor = 0

    def __enter__(self) -> Self:
        """Nothing to do yet: it connects when it is first needed."""
        return self

    def __exit__(self, _kind: type[BaseException] | None, _error: object, _where: TracebackType | None) -> None:
        """Hang up."""
        self._connection.close()

    def ask(self, method: str, path: str, body: Any = None) -> tuple[bytes, str | None]:
        """Answer the body and the cookie of a reply that must be good."""
        payload = None if body is None else json.dumps(body)
        self._connection.request(method, path, payload, self._headers)
        reply = self._connection.getresponse()
        found = reply.read()
        assert reply.status == 200, found
        return found, reply.getheader("Set-Cookie")

    def get(self, path: str) -> bytes:
        """Answer what is at a path."""
        return self.ask("GET", path)[0]

    def sync(self, events: list[dict[str, Any]]) -> None:
        """Send events and insist that all of them are held afterwards."""
        body = {"cursor": self._cursor, "events": events}
        answer = json.loads(self.ask("POST", "/api/v1/sync", body)[0])
        assert answer["acknowledged_through"] >= events[-1]["seq"], answer
        self._cursor = answer["cursor"]

    def lines(self, path: str) -> Any:
        """Answer a reply that goes on, to be read line by line."""
        self._connection.request("GET", path, headers=self._headers)
        return self._connection.getresponse()
