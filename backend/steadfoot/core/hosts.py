"""Two host names for the two apps: what a script on one origin could read, it can read on that origin only.

Each host answers its own pages and takes its own kind of credential; what belongs to the other never reaches the app.
With one host, the default, nothing here is asked.
"""

import re
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final, Self
from urllib.parse import urlsplit

from steadfoot.core.settings import Settings

_FOR_PROBES: Final = frozenset({"/healthz", "/readyz", "/metrics"})
"""Asked by machines, by whatever address they have; they tell nothing of anybody."""


@dataclass(frozen=True, slots=True)
class Side:
    """One of the two apps: its address, the credential that counts there, what the other must not answer, its pages."""

    address: str
    credential: bytes
    own: re.Pattern[str]
    pages: str

    @property
    def host(self) -> str:
        """The host's name, without its port: cookies do not know ports."""
        return host_of(self.address)


@dataclass(frozen=True, slots=True)
class Hosts:
    """Both sides."""

    sides: tuple[Side, Side]

    @classmethod
    def of(cls, settings: Settings) -> Self | None:
        """Answer the two hosts of an installation, or None where it has one."""
        if settings.practice_address() == settings.address():
            return None
        phones = Side(
            settings.address(), b"authorization", re.compile(r"(?s)POST /api/v1/pairings|\w+ /app(/.*)?"), "/app"
        )
        practice = Side(
            settings.practice_address(),
            b"cookie",
            re.compile(r"(?s)\w+ /api/v1/(sign-in|sign-out|practice)(/.*)?|\w+ /desk(/.*)?"),
            "/desk",
        )
        return cls((phones, practice))

    def side(self, host: str) -> Side | None:
        """Answer whose host this is; None: nobody's."""
        return next((side for side in self.sides if side.host == host_of(f"//{host}")), None)

    def other_of(self, here: Side) -> Side:
        """Answer the other side."""
        return self.sides[0] if here is self.sides[1] else self.sides[1]

    def belongs_to_other(self, here: Side, method: str, path: str) -> bool:
        """Answer whether only the other side answers this."""
        return self.other_of(here).own.fullmatch(f"{method} {path}") is not None

    def without_others_credential(
        self, here: Side, headers: Sequence[tuple[bytes, bytes]]
    ) -> list[tuple[bytes, bytes]]:
        """Answer a request's headers without what would prove who asks on the other side."""
        strange = self.other_of(here).credential
        return [(name, value) for name, value in headers if name != strange]


def host_of(address: str) -> str:
    """Answer the name of an address's host, in small letters; empty if it has none that can be read."""
    try:
        return urlsplit(address).hostname or ""
    except ValueError:
        return ""


def for_probes(path: str) -> bool:
    """Answer whether machines that watch the server ask this."""
    return path in _FOR_PROBES
