"""Keeps a stranger who asks without end from filling the disk with rows: beyond a limit, one row stands for many."""

import threading
from collections.abc import Callable
from dataclasses import dataclass, replace

from steadfoot.audit.entries import Act
from steadfoot.core.clock import monotonic_s

ROWS_A_MINUTE = 60
"""Rows of one kind of refusal in a minute, each on its own. House value."""
_WINDOW_S = 60.0
_FORGET_ABOVE = 1_000
_Key = tuple[str, str | None, str, str]


@dataclass(slots=True)
class _Run:
    began: float
    rows: int = 0
    held_back: int = 0


class Flood:
    """Counts refusals by practice, actor, action and outcome. What is held back stands in the next row's ``times``."""

    def __init__(self, seconds: Callable[[], float] = monotonic_s) -> None:
        self._seconds = seconds
        self._runs: dict[_Key, _Run] = {}
        self._lock = threading.Lock()

    def let_through(self, act: Act) -> Act | None:
        """Answer the act, standing for those held back before it; None where it is held back itself."""
        now = self._seconds()
        with self._lock:
            run = self._run(act, now)
            if run.rows >= ROWS_A_MINUTE:
                run.held_back += 1
                return None
            run.rows += 1
            times, run.held_back = 1 + run.held_back, 0
        return replace(act, times=times)

    def _run(self, act: Act, now: float) -> _Run:
        if len(self._runs) > _FORGET_ABOVE:
            self._runs = {key: run for key, run in self._runs.items() if now - run.began < _WINDOW_S}
        key = (act.actor.practice_id, act.actor.id, act.action, act.outcome.value)
        run = self._runs.setdefault(key, _Run(now))
        if now - run.began >= _WINDOW_S:
            run.began, run.rows = now, 0
        return run
