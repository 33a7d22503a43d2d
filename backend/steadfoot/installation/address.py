"""Whether the address that phones are told answers with a certificate that they will trust, and for how long."""

import socket
import ssl
from dataclasses import dataclass
from datetime import UTC, datetime
from urllib.parse import urlsplit

from steadfoot.core.clock import Clock
from steadfoot.core.recurring import Recurring

_TIMEOUT_S = 5.0
_LOOK_EVERY_S = 6 * 3600.0
_FIRST_AFTER_S = 20.0
_HTTPS = 443


@dataclass(frozen=True)
class Look:
    """What was found: ``problem`` is "" or one of "not_https", "unreachable", "untrusted"."""

    at: datetime
    expires_at: datetime | None
    problem: str


def look(url: str, at: datetime, context: ssl.SSLContext | None = None) -> Look:
    """Connect to the address as a phone would, and answer what its certificate says."""
    parts = urlsplit(url)
    if parts.scheme != "https" or not parts.hostname:
        return Look(at, None, "not_https")
    context = context or ssl.create_default_context()
    try:
        with (
            socket.create_connection((parts.hostname, parts.port or _HTTPS), _TIMEOUT_S) as raw,
            context.wrap_socket(raw, server_hostname=parts.hostname) as line,
        ):
            until = str((line.getpeercert() or {})["notAfter"])
    except ssl.SSLError:
        return Look(at, None, "untrusted")
    except (OSError, KeyError):
        return Look(at, None, "unreachable")
    return Look(at, datetime.fromtimestamp(ssl.cert_time_to_seconds(until), UTC), "")


class Lookout(Recurring):
    """Looks now and then while the server runs; ``last`` is None before the first look."""

    def __init__(self, url: str, clock: Clock) -> None:
        super().__init__("lookout", self._next_s, self._look)
        self.last: Look | None = None
        self._url, self._clock = url, clock

    def _next_s(self) -> float:
        return _LOOK_EVERY_S if self.last else _FIRST_AFTER_S  # the server has to be reached itself first

    def _look(self) -> None:
        self.last = look(self._url, self._clock())
