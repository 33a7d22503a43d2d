"""The named histories (tests/sync/model/stories): each known way to lose, double or betray an entry."""

from collections.abc import Callable, Iterator

import pytest

from tests.sync.model.run import worlds
from tests.sync.model.stories import STORIES
from tests.sync.model.world import World


@pytest.fixture(scope="module")
def make() -> Iterator[Callable[[], World]]:
    """Makes a fresh world."""
    with worlds() as found:
        yield found


@pytest.mark.parametrize("name", STORIES)
def test_nothing_is_lost_doubled_or_told_elsewhere_when(make: Callable[[], World], name: str) -> None:
    STORIES[name](make())
