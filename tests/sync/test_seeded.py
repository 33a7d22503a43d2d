"""Every seeded bug is caught by the story that its patch names, which ends well without it (test_stories.py)."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.sync.model import run
from tests.sync.model.seeds import planted, seeds, told_by_a_planted_server
from tests.sync.model.stories import STORIES
from tests.sync.model.tell import CAUGHT
from tests.sync.model.template import Template

SEEDS = seeds()
IN_PHONES = [name for name, seed in SEEDS.items() if seed.of_the_phone]
IN_SERVERS = [name for name, seed in SEEDS.items() if not seed.of_the_phone]


@pytest.fixture(scope="module")
def begin(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Template]:
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


@pytest.mark.parametrize("name", IN_SERVERS)
def test_a_bug_of_the_server_is_caught(name: str, tmp_path: Path) -> None:
    done = told_by_a_planted_server(SEEDS[name], tmp_path)
    assert done.returncode == CAUGHT, done.stdout + done.stderr
    assert "caught: " in done.stdout
