"""Calls that come while others are under way are done together in the next turn; each hears its own result."""

import asyncio
import threading
from collections.abc import Sequence

from steadfoot.core.database import Turns
from steadfoot.core.gathering import Gathering


def test_what_comes_while_work_is_under_way_is_done_together_next() -> None:
    groups: list[list[int]] = []
    first, go_on = threading.Event(), threading.Event()

    def work(calls: Sequence[int]) -> list[int | Exception]:
        groups.append(list(calls))
        first.set()
        assert go_on.wait(10)
        return [ValueError(str(call)) if call == 3 else call * 10 for call in calls]

    async def ask() -> list[int | BaseException]:
        gathering: Gathering[int, int] = Gathering(work, Turns(1), 4)
        asked = [asyncio.ensure_future(gathering.do(0))]
        await asyncio.to_thread(first.wait, 10)
        asked += [asyncio.ensure_future(gathering.do(call)) for call in range(1, 7)]
        await asyncio.sleep(0)
        asked[2].cancel()  # someone who hangs up keeps nobody from an answer
        go_on.set()
        return await asyncio.gather(*asked, return_exceptions=True)

    found = asyncio.run(ask())
    assert groups == [[0], [1, 2, 3, 4], [5, 6]]
    assert [found[0], found[1], *found[4:]] == [0, 10, 40, 50, 60]
    assert isinstance(found[2], asyncio.CancelledError)
    assert str(found[3]) == "3"


def test_an_error_of_the_work_itself_is_heard_by_everyone_and_the_next_call_is_served() -> None:
    broken = [True]

    def work(calls: Sequence[int]) -> list[int | Exception]:
        if broken.pop():
            broken.append(False)
            raise OSError("the disk is full")
        broken.append(False)
        return list(calls)

    async def ask() -> None:
        gathering: Gathering[int, int] = Gathering(work, Turns(1), 4)
        for found in await asyncio.gather(gathering.do(1), gathering.do(2), return_exceptions=True):
            assert isinstance(found, OSError)
        assert await gathering.do(3) == 3

    asyncio.run(ask())
