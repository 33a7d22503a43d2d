"""Histories with a name: each known way to lose, double or betray an entry, short and the same every time.

Every seeded bug (tests/sync/seeded) is caught by one of them, and what the machine finds is kept here.
"""

from collections.abc import Callable
from typing import Any

from tests.sync.model import checker, practice
from tests.sync.model.entries import Entry, poison_of
from tests.sync.model.network import STRANGE, Fault
from tests.sync.model.world import Handset, World

Story = Callable[[World], None]
STORIES: dict[str, Story] = {}
_POINTS = range(1, 80)
"""More than a call has: a loop over them ends when a run meets no fault."""
_STATUS_NOT_FOUND = 404


def story(work: Story) -> Story:
    """Keep a story under its name; the checker ends it."""

    def told(world: World) -> None:
        work(world)
        checker.check(world)

    STORIES[work.__name__] = told
    return told


def _note(handset: Handset, number: int) -> Entry:
    return {"kind": "note_written", "body": {"text": f"{handset.word} {number}"}}


def _enter(world: World, handset: Handset, *numbers: int, **more: Any) -> None:
    world.record(handset, world.page(handset), [_note(handset, number) for number in numbers], **more)


def _send(world: World, handset: Handset, *plan: Fault) -> None:
    world.send(handset, world.page(handset), list(plan))


def _sent(world: World, name: str, *numbers: int) -> Handset:
    handset = world.handset(name)
    _enter(world, handset, *numbers)
    _send(world, handset)
    return handset


@story
def the_server_dies_at_every_point_of_a_call(world: World) -> None:
    """What it had acknowledged by then is on the disk; the rest comes again."""
    handset = world.handset("emil-1")
    for point in _POINTS:
        _enter(world, handset, point)
        _send(world, handset, ("dies", point))
        if world.service.point.met == 0:
            return
    raise AssertionError("a call has more points than were tried")


@story
def the_disk_fails_at_every_point_of_a_practitioners_deed(world: World) -> None:
    """Whoever comes next is heard at once: a commit that failed holds nothing up."""
    handset = world.handset("emil-1")
    for point in _POINTS:
        world.service.point.arm(point, dies=False)
        practice.message(world, handset.person, point)
        failed = world.service.point.met
        _send(world, handset)
        connection = world.look(handset, world.page(handset))["connection"]
        assert connection == "ready", f"after the disk failed at {point}: {connection}"
        if not failed:
            return
    raise AssertionError("a deed has more points than were tried")


@story
def a_reply_is_lost_and_the_entry_comes_again_days_later(world: World) -> None:
    """The id is known for ever, not for a while."""
    handset = world.handset("emil-1")
    _enter(world, handset, 1, 2)
    _send(world, handset, ("lost_reply", 0))
    world.later(days=9)
    world.service.restart()
    _sent(world, "nora-1", 1)
    _enter(world, handset, 3)


@story
def an_older_backup_is_restored(world: World) -> None:
    """What the backup lacks is asked of the phones, though they were told that it was received."""
    handset = _sent(world, "emil-1", 1, 2)
    world.back_up()
    _enter(world, handset, 3, 4)
    _send(world, handset)
    world.restore(world.backups[0])
    _enter(world, handset, 5)
    _send(world, handset)


@story
def messages_are_sent_after_an_older_backup_was_restored(world: World) -> None:
    """The numbers of the feed come again; the new epoch says so."""
    handset = _sent(world, "emil-1", 1)
    world.back_up()
    for number in (1, 2):
        practice.message(world, "emil", number)
    _send(world, handset)
    world.restore(world.backups[0])
    for number in (3, 4, 5):
        practice.message(world, "emil", number)


@story
def what_is_not_understood_stands_between_other_entries(world: World) -> None:
    """It is kept aside, visibly on both sides, and holds nothing up."""
    handset = world.handset("emil-1")
    page = world.page(handset)
    for number in range(5):
        world.record(handset, page, [_note(handset, number), poison_of(number, handset.word)])
    _enter(world, handset, 9)


@story
def a_practice_asks_for_another_practices_people(world: World) -> None:
    """There is nobody of that name; and no phone is told of another person's news."""
    for person in ("emil", "odd"):
        practice.message(world, person, 1)
        _sent(world, f"{person}-1", 1)
    for word, person in (("birch", "emil"), ("alder", "odd")):
        client = world.template.clients[person]
        for path in ("", "/timeline", "/overview", "/refused-events", "/devices"):
            heard = world.ask(word, "GET", f"/clients/{client}{path}")
            assert heard is not None
            assert heard.status == _STATUS_NOT_FOUND, f"{word} got {path} of {person}: {heard.text}"


@story
def somebody_travels_and_the_clock_is_wrong(world: World) -> None:
    """The day is the one that the person's calendar showed."""
    handset = world.handset("emil-1")
    page = world.page(handset)
    for jump_h, zone_min in ((12, 840), (-3, -600), (-24 * 30 + 11, 345), (24 * 2, 120)):
        world.set_clock(handset, jump_h, zone_min)
        walk = {"distance_km": 5, "ascent_m": 1, "descent_m": 1, "minutes": 90, "pack_kg": 4}
        world.record(handset, page, [{"kind": "walk_logged", "body": walk}])


@story
def an_entry_is_taken_back_before_it_has_come(world: World) -> None:
    """Another phone's undo may be faster than what it undoes."""
    slow, fast = world.handset("emil-1"), world.handset("emil-2")
    body = {"minutes": 30, "effort": 5, "planned_id": "2026-06-10.1"}
    world.record(slow, world.page(slow), [{"kind": "session_finished", "body": body}])
    undo = {"kind": "entry_withdrawn", "body": {"event_id": next(iter(slow.told))}}
    world.record(fast, world.page(fast), [undo])
    _send(world, fast)
    practice.threshold(world, "emil", 1)
    _send(world, slow)


@story
def an_id_comes_again_with_other_words(world: World) -> None:
    """Neither is thrown away: the second is kept aside for a person to see."""
    first = _sent(world, "emil-1", 1)
    for name in ("emil-2", "odd-1"):
        _enter(world, world.handset(name), 2, id=next(iter(first.told)))


@story
def a_phone_is_copied_and_both_go_on(world: World) -> None:
    """Two phones with one number range: each is told only of its own entries."""
    one = _sent(world, "emil-1", 1, 2)
    world.copy(one)
    _enter(world, one, 3, 4)
    _send(world, one)
    world.use_copy(0, back=False)
    other = next(handset for name, handset in world.handsets.items() if "copy" in name)
    _send(world, other)
    _enter(world, other, 5)
    _send(world, other)
    _enter(world, one, 6)


@story
def a_network_answers_in_the_practices_place(world: World) -> None:
    """A hotel's page, an empty object, a proxy's refusal: none of them is an acknowledgement."""
    handset = world.handset("emil-1")
    for number in range(len(STRANGE)):
        _enter(world, handset, number)
        page = world.page(handset)
        world.send(handset, page, [("strange", number)] * 40)
        assert world.look(handset, page)["received"] == 0, "received, and nobody has it"


@story
def the_battery_ends_a_moment_after_it_said_saved(world: World) -> None:
    """Saved is what a power cut cannot take."""
    handset = world.handset("emil-1")
    for number in range(3):
        _enter(world, handset, number)
        world.phones.call("cut", phone=handset.name)


@story
def the_app_is_ended_while_three_entries_are_written(world: World) -> None:
    """All of them or none."""
    handset = world.handset("emil-1")
    for point in range(1, 16):
        world.phones.call("fault", phone=handset.name, page=world.page(handset), after=point, how="killed")
        _enter(world, handset, 1, 2, 3)
        world.phones.call("close", phone=handset.name, page=world.page(handset))


@story
def the_app_is_ended_the_moment_it_said_saved(world: World) -> None:
    """Saved is said when it is."""
    handset = world.handset("emil-1")
    for number in range(3):
        _enter(world, handset, number, kill=True)


@story
def storage_fails_once_at_every_call(world: World) -> None:
    """The entry is there all the same, and once: also where the failure came after it was stored."""
    handset = world.handset("emil-1")
    for how in ("UnknownError", "InvalidStateError", "unanswered"):
        for point in range(1, 9):
            before = len(handset.told)
            page = world.page(handset)
            world.phones.call("fault", phone=handset.name, page=page, after=point, how=how)
            _enter(world, handset, point)
            assert len(handset.told) == before + 1, f"not saved after one failure: {how} at call {point}"
            world.phones.call("close", phone=handset.name, page=page)


@story
def a_phone_is_unpaired_and_paired_again(world: World) -> None:
    """What it holds stays on it, and comes under its new key."""
    handset = _sent(world, "nora-1", 1)
    _enter(world, handset, 2, 3)
    practice.revoke(world, "nora", 0)
    _send(world, handset)
    assert world.look(handset, world.page(handset))["connection"] == "revoked"
    practice.pair(world, handset)
    world.service.restart()


@story
def the_app_is_ended_while_it_takes_the_news(world: World) -> None:
    """What the practice sent is there, or comes again: never half, never skipped."""
    handset = world.handset("emil-1")
    for point in range(1, 30):
        practice.message(world, "emil", point)
        page = world.page(handset)
        world.phones.call("fault", phone=handset.name, page=page, after=point, how="killed")
        _send(world, handset)
        if not world.look(handset, page)["dead"]:
            break


@story
def something_on_the_way_refuses_an_entry_in_the_practices_words(world: World) -> None:
    """The phone never says received of what only it has, whether the practice understands such an entry or not."""
    handset = world.handset("emil-1")
    refusal: Fault = ("strange", sorted(STRANGE).index("too_large"))
    page = world.page(handset)
    for count, entry in enumerate((_note(handset, 1), poison_of(0, handset.word)), 1):
        world.record(handset, page, [entry])
        world.send(handset, page, [refusal])
        look = world.look(handset, page)
        assert (look["received"], len(look["unsendable"])) == (0, count), look


@story
def two_pages_send_while_one_of_them_enters_more(world: World) -> None:
    """Whichever answer is stored last, nothing is called received that was not sent."""
    handset = world.switch_on("emil-1", "emil", world.template.stored["emil-1"], locks=False)
    first, second = world.open(handset), world.open(handset)
    for number, fault in enumerate(("before_other_page", "after_other_page", "before_recorded", "after_recorded")):
        world.record(handset, second if number % 2 else first, [_note(handset, number)])
        world.send(handset, first, [(fault, 0), ("lost_reply", 0)])


@story
def a_newer_build_waits_for_an_older_page_that_is_frozen(world: World) -> None:
    """It says so, goes on when that page is gone, and what was entered is there."""
    handset = _sent(world, "emil-1", 1)
    page = world.page(handset)
    world.phones.call("freeze", phone=handset.name, page=page)
    handset.build = 1
    newer = world.open(handset)
    assert world.look(handset, newer)["storage"] == "blocked"
    world.phones.call("close", phone=handset.name, page=page)
    world.record(handset, newer, [_note(handset, 2)])
    assert len(handset.told) == 2
