"""Where stories are kept, and what they are told with."""

from collections.abc import Callable
from typing import Any

from tests.sync.model import checker
from tests.sync.model.entries import Entry
from tests.sync.model.network import Fault
from tests.sync.model.world import Handset, World

Story = Callable[[World], None]
STORIES: dict[str, Story] = {}
POINTS = range(1, 80)
"""More than a call has: a loop over them ends when a run meets no fault."""


def story(work: Story) -> Story:
    """Keep a story under its name; the checker ends it."""

    def told(world: World) -> None:
        work(world)
        checker.check(world)

    STORIES[work.__name__] = told
    return told


def note(handset: Handset, number: int) -> Entry:
    """Answer a note of a phone's owner."""
    return {"kind": "note_written", "body": {"text": f"{handset.word} {number}"}}


def enter(world: World, handset: Handset, *numbers: int, **more: Any) -> None:
    """Enter notes."""
    world.record(handset, world.page(handset), [note(handset, number) for number in numbers], **more)


def send(world: World, handset: Handset, *plan: Fault) -> None:
    """Send what there is, with what befalls it on the way."""
    world.send(handset, world.page(handset), list(plan))


def sent(world: World, name: str, *numbers: int) -> Handset:
    """Answer a phone that has entered and sent notes."""
    handset = world.handset(name)
    enter(world, handset, *numbers)
    send(world, handset)
    return handset
