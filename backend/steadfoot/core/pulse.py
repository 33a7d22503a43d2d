"""Tells open pages that something changed. It carries no data, only the topic and a word: pages then ask again."""

import asyncio
import threading
from collections.abc import AsyncIterator

_KEEP_ALIVE_S = 20.0
_QUEUE_LENGTH = 100


class Pulse:
    """Publish and subscribe inside this process. A page that misses a beat still asks again by itself."""

    def __init__(self) -> None:
        self._queues: dict[str, set[asyncio.Queue[str | None]]] = {}
        self._loop: asyncio.AbstractEventLoop | None = None
        self._lock = threading.Lock()
        self._closing = False

    def beat(self, topic: str, word: str) -> None:
        """Tell every subscriber of the topic; callable from any thread."""
        with self._lock:
            queues = list(self._queues.get(topic, ()))
        if self._loop is not None and not self._loop.is_closed():
            for queue in queues:
                self._loop.call_soon_threadsafe(_offer, queue, word)

    def close(self) -> None:
        """End every subscription, so that the server can stop."""
        self._closing = True
        for topic in list(self._queues):
            for queue in list(self._queues[topic]):
                _offer(queue, None)

    async def listen(self, topic: str) -> AsyncIterator[str]:
        """Yield words as they come; an empty one now and then shows that the line is alive."""
        self._loop = asyncio.get_running_loop()
        queue: asyncio.Queue[str | None] = asyncio.Queue(_QUEUE_LENGTH)
        with self._lock:
            self._queues.setdefault(topic, set()).add(queue)
        try:
            while not self._closing:
                word = await _next(queue)
                if word is None:
                    return
                yield word
        finally:
            with self._lock:
                self._queues[topic].discard(queue)


def _offer(queue: "asyncio.Queue[str | None]", word: str | None) -> None:
    if not queue.full():
        queue.put_nowait(word)


async def _next(queue: "asyncio.Queue[str | None]") -> str | None:
    try:
        return await asyncio.wait_for(queue.get(), _KEEP_ALIVE_S)
    except TimeoutError:
        return ""
