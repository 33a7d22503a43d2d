"""One thread that draws previews and looks drawings over, so that the editor never slows the phones' answers."""

import asyncio
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from typing import TypeVar

from steadfoot.core.limits import Limiter
from steadfoot.core.problems import TooMany

T = TypeVar("T")
WAITING_MAX = 8
"""House: more people than this do not draw at once; a queue that is longer answers nobody in time."""
PREVIEWS, WINDOW_S = 600, 60
"""House: a drag asks up to nine times a second."""


class Studio:
    """Works one piece after the other, and turns away what would wait too long."""

    def __init__(self) -> None:
        self._thread = ThreadPoolExecutor(max_workers=1, thread_name_prefix="studio")
        self._limiter = Limiter(PREVIEWS, WINDOW_S)
        self._waiting = 0

    async def work(self, who: str, piece: Callable[[], T]) -> T:
        """Answer what a piece of work comes to.

        Raises:
            TooMany: the person has asked too often, or too much is waiting.
        """
        self._limiter.check(who)
        if self._waiting >= WAITING_MAX:
            raise TooMany("busy", "Too many drawings are being made. Please try again.", headers={"Retry-After": "1"})
        self._waiting += 1
        try:
            return await asyncio.get_running_loop().run_in_executor(self._thread, piece)
        finally:
            self._waiting -= 1

    def close(self) -> None:
        """Begin no further piece."""
        self._thread.shutdown(wait=False, cancel_futures=True)
