"""Requests read by httptools, with a limit on all that is not body: that parser would keep header after header."""

from typing import Any

from uvicorn.protocols.http.httptools_impl import HttpToolsProtocol

BESIDE_BODY_BYTES = 65_536
"""For request line, headers, the sizes of chunks and trailers together; browsers send some kilobytes. House value."""


class BoundedHeads(HttpToolsProtocol):
    """Hangs up on who sends headers without an end. The body has a limit of its own, in ``core.web``."""

    def __init__(self, *args: Any, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self._beside_body = 0

    def data_received(self, data: bytes) -> None:
        """Read on."""
        self._beside_body += len(data)
        super().data_received(data)
        if self._beside_body > BESIDE_BODY_BYTES and not self.transport.is_closing():
            self.send_400_response("The request's headers are too large.")

    def on_body(self, body: bytes) -> None:
        """Take a part of the body."""
        self._beside_body -= len(body)
        super().on_body(body)

    def on_message_complete(self) -> None:
        """Count anew: on a kept connection the next request follows."""
        self._beside_body = 0
        super().on_message_complete()
