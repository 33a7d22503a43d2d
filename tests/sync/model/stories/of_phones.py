"""What befalls phones, and what lies between them and the server."""

from tests.sync.model import practice
from tests.sync.model.entries import poison_of
from tests.sync.model.network import STRANGE, Fault
from tests.sync.model.stories.book import enter, note, send, sent, story
from tests.sync.model.world import World


@story
def a_reply_is_lost_and_the_entry_comes_again_days_later(world: World) -> None:
    """The id is known for ever, not for a while."""
    handset = world.handset("emil-1")
    enter(world, handset, 1, 2)
    send(world, handset, ("lost_reply", 0))
    world.later(days=9)
    world.service.restart()
    sent(world, "nora-1", 1)
    enter(world, handset, 3)


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
    send(world, fast)
    practice.threshold(world, "emil", 1)
    send(world, slow)


@story
def a_phone_is_copied_and_both_go_on(world: World) -> None:
    """Two phones with one number range: each is told only of its own entries."""
    one = sent(world, "emil-1", 1, 2)
    world.copy(one)
    enter(world, one, 3, 4)
    send(world, one)
    world.use_copy(0, back=False)
    other = next(handset for name, handset in world.handsets.items() if "copy" in name)
    send(world, other)
    enter(world, other, 5)
    send(world, other)
    enter(world, one, 6)


@story
def a_network_answers_in_the_practices_place(world: World) -> None:
    """A hotel's page, an empty object, a proxy's refusal: none of them is an acknowledgement."""
    handset = world.handset("emil-1")
    for number in range(len(STRANGE)):
        enter(world, handset, number)
        page = world.page(handset)
        world.send(handset, page, [("strange", number)] * 40)
        assert world.look(handset, page)["received"] == 0, "received, and nobody has it"


@story
def the_battery_ends_a_moment_after_it_said_saved(world: World) -> None:
    """Saved is what a power cut cannot take."""
    handset = world.handset("emil-1")
    for number in range(3):
        enter(world, handset, number)
        world.phones.call("cut", phone=handset.name)


@story
def the_app_is_ended_while_three_entries_are_written(world: World) -> None:
    """All of them or none."""
    handset = world.handset("emil-1")
    for point in range(1, 16):
        world.phones.call("fault", phone=handset.name, page=world.page(handset), after=point, how="killed")
        enter(world, handset, 1, 2, 3)
        world.phones.call("close", phone=handset.name, page=world.page(handset))


@story
def the_app_is_ended_the_moment_it_said_saved(world: World) -> None:
    """Saved is said when it is."""
    handset = world.handset("emil-1")
    for number in range(3):
        enter(world, handset, number, kill=True)


@story
def storage_fails_once_at_every_call(world: World) -> None:
    """The entry is there all the same, and once: also where the failure came after it was stored."""
    handset = world.handset("emil-1")
    for how in ("UnknownError", "InvalidStateError", "unanswered"):
        for point in range(1, 9):
            before = len(handset.told)
            page = world.page(handset)
            world.phones.call("fault", phone=handset.name, page=page, after=point, how=how)
            enter(world, handset, point)
            assert len(handset.told) == before + 1, f"not saved after one failure: {how} at call {point}"
            world.phones.call("close", phone=handset.name, page=page)


@story
def the_app_is_ended_while_it_takes_the_news(world: World) -> None:
    """What the practice sent is there, or comes again: never half, never skipped."""
    handset = world.handset("emil-1")
    for point in range(1, 30):
        practice.message(world, "emil", point)
        page = world.page(handset)
        world.phones.call("fault", phone=handset.name, page=page, after=point, how="killed")
        send(world, handset)
        if not world.look(handset, page)["dead"]:
            break


@story
def something_on_the_way_refuses_an_entry_in_the_practices_words(world: World) -> None:
    """The phone never says received of what only it has, whether the practice understands such an entry or not."""
    handset = world.handset("emil-1")
    refusal: Fault = ("strange", sorted(STRANGE).index("too_large"))
    page = world.page(handset)
    for count, entry in enumerate((note(handset, 1), poison_of(0, handset.word)), 1):
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
        world.record(handset, second if number % 2 else first, [note(handset, number)])
        world.send(handset, first, [(fault, 0), ("lost_reply", 0)])


@story
def a_newer_build_waits_for_an_older_page_that_is_frozen(world: World) -> None:
    """It says so, goes on when that page is gone, and what was entered is there."""
    handset = sent(world, "emil-1", 1)
    page = world.page(handset)
    world.phones.call("freeze", phone=handset.name, page=page)
    handset.build = 1
    newer = world.open(handset)
    assert world.look(handset, newer)["storage"] == "blocked"
    world.phones.call("close", phone=handset.name, page=page)
    world.record(handset, newer, [note(handset, 2)])
    assert len(handset.told) == 2
