"""A limit on how often something may be tried, kept in this process's memory."""

import threading
from collections import deque
from collections.abc import Callable
from math import ceil

from steadfoot.core.clock import monotonic_s
from steadfoot.core.problems import TooMany

_FORGET_ABOVE = 10_000


class Limiter:
    """At most ``tries`` per key in any ``window_s`` seconds."""

    def __init__(self, tries: int, window_s: float, seconds: Callable[[], float] = monotonic_s) -> None:
        self._tries = tries
        self._window_s = window_s
        self._seconds = seconds
        self._seen: dict[str, deque[float]] = {}
        self._lock = threading.Lock()

    def check(self, key: str) -> None:
        """Count one try.

        Raises:
            TooMany: the key has used up its tries; carries Retry-After.
        """
        now = self._seconds()
        with self._lock:
            self._forget(now)
            seen = self._seen.setdefault(key, deque())
            while seen and seen[0] <= now - self._window_s:
                seen.popleft()
            if len(seen) >= self._tries:
                self._refuse(seen[0] + self._window_s - now)
            seen.append(now)

    def forgive(self, key: str) -> None:
        """Forget a key's tries, after one that was right."""
        with self._lock:
            self._seen.pop(key, None)

    def _refuse(self, wait_s: float) -> None:
        seconds = max(1, ceil(wait_s))  # rounded down, the next try would be too early again
        raise TooMany(
            "too-many-tries",
            f"Too many tries. Please try again in {seconds} seconds.",
            headers={"Retry-After": str(seconds)},
        )

    def _forget(self, now: float) -> None:
        if len(self._seen) > _FORGET_ABOVE:  # a stranger with many addresses must not fill the memory
            old = [key for key, seen in self._seen.items() if not seen or seen[-1] <= now - self._window_s]
            for key in old:
                del self._seen[key]
