"""Has calls that come in at once done together, so that many share one transaction and one flush of the disk."""

import asyncio
from collections.abc import Callable, Sequence
from typing import Generic, TypeVar
from weakref import WeakKeyDictionary

from steadfoot.core.database import Turns

T = TypeVar("T")
R = TypeVar("R")


class _Queue(Generic[T, R]):
    """What waits on one event loop, and the task that works it off while there is any."""

    def __init__(self) -> None:
        self.waiting: list[tuple[T, asyncio.Future[R]]] = []
        self.task: asyncio.Task[None] | None = None


class Gathering(Generic[T, R]):
    """Collects calls while earlier ones are under way; nobody waits for company.

    ``work`` answers a result or an exception for each call, in their order. It runs in the event loop's own threads:
    those of the pool of requests may all be held by some that wait for the lock that it has.
    """

    def __init__(self, work: Callable[[Sequence[T]], Sequence[R | Exception]], turns: Turns, at_most: int) -> None:
        self._work = work
        self._turns = turns
        self._at_most = at_most
        self._queues: WeakKeyDictionary[asyncio.AbstractEventLoop, _Queue[T, R]] = WeakKeyDictionary()

    async def do(self, call: T) -> R:
        """Answer one call's result, once the work that it was part of is done.

        Raises:
            Exception: whatever became of this call.
        """
        loop = asyncio.get_running_loop()
        queue = self._queues.setdefault(loop, _Queue())
        done: asyncio.Future[R] = loop.create_future()
        queue.waiting.append((call, done))
        if queue.task is None:
            queue.task = loop.create_task(self._work_off(loop, queue))
        return await done

    async def _work_off(self, loop: asyncio.AbstractEventLoop, queue: _Queue[T, R]) -> None:
        try:
            while queue.waiting:
                async with self._turns.here():
                    taken, queue.waiting = queue.waiting[: self._at_most], queue.waiting[self._at_most :]
                    calls = [call for call, _ in taken]
                    results = await loop.run_in_executor(None, self._worked, calls)
                for (_, done), result in zip(taken, results, strict=True):
                    _tell(done, result)
        finally:
            queue.task = None

    def _worked(self, calls: Sequence[T]) -> Sequence[R | Exception]:
        try:
            return self._work(calls)
        except Exception as error:  # each caller has to hear of it  # noqa: BLE001
            return [error] * len(calls)


def _tell(done: "asyncio.Future[R]", result: R | Exception) -> None:
    if done.done():  # whoever asked has gone; what was stored stays stored
        return
    if isinstance(result, Exception):
        done.set_exception(result)
    else:
        done.set_result(result)
