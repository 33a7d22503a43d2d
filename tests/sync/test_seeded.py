"""Every seeded bug is caught by the story that its patch names, which ends well without it (test_stories.py)."""

import pickle
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from tests.sync.model import run
from tests.sync.model.seeds import Seed, nursery, planted, seeds
from tests.sync.model.stories import STORIES
from tests.sync.model.tell import CAUGHT
from tests.sync.model.template import Template

SEEDS = seeds()
IN_PHONES = [name for name, seed in SEEDS.items() if seed.of_the_phone]
IN_SERVERS = [name for name, seed in SEEDS.items() if not seed.of_the_phone]


@pytest.fixture(scope="module")
def begin() -> Iterator[Template]:
    """What histories begin with, made by phones without a bug."""
    with run.begun() as found:
        yield found


def test_there_are_fifteen_at_least_on_both_sides() -> None:
    assert len(SEEDS) >= 15
    assert len(IN_PHONES) >= 7
    assert len(IN_SERVERS) >= 7
    assert all(seed.story in STORIES for seed in SEEDS.values())


@pytest.mark.parametrize("name", IN_PHONES)
def test_a_bug_of_the_phone_is_caught(name: str, begin: Template, tmp_path: Path) -> None:
    seed = SEEDS[name]
    with run.worlds(planted(seed, tmp_path), begin) as make, pytest.raises(AssertionError):
        STORIES[seed.story](make())


@pytest.fixture(scope="module")
def tell(
    begin: Template, tmp_path_factory: pytest.TempPathFactory
) -> Iterator[Callable[[Seed, Path], tuple[int, str]]]:
    """Tells a bug's story by a server that has it."""
    file = tmp_path_factory.mktemp("begin") / "begin.pickle"
    file.write_bytes(pickle.dumps(begin))
    with nursery() as told:
        yield lambda seed, folder: told(seed, folder, file)


@pytest.mark.parametrize("name", IN_SERVERS)
def test_a_bug_of_the_server_is_caught(
    name: str, tell: Callable[[Seed, Path], tuple[int, str]], tmp_path: Path
) -> None:
    code, words = tell(SEEDS[name], tmp_path)
    assert (code, "caught: " in words) == (CAUGHT, True), words
