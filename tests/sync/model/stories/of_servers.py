"""What befalls the server, and what it is told that it cannot take."""

from tests.sync.model import practice
from tests.sync.model.entries import poison_of
from tests.sync.model.stories.book import POINTS, enter, note, send, sent, story
from tests.sync.model.world import World

_STATUS_NOT_FOUND = 404


@story
def the_server_dies_at_every_point_of_a_call(world: World) -> None:
    """What it had acknowledged by then is on the disk; the rest comes again."""
    handset = world.handset("emil-1")
    for point in POINTS:
        enter(world, handset, point)
        send(world, handset, ("dies", point))
        if world.service.point.met == 0:
            return
    raise AssertionError("a call has more points than were tried")


@story
def the_disk_fails_at_every_point_of_a_practitioners_deed(world: World) -> None:
    """Whoever comes next is heard at once: a commit that failed holds nothing up."""
    handset = world.handset("emil-1")
    for point in POINTS:
        world.service.point.arm(point, dies=False)
        practice.message(world, handset.person, point)
        failed = world.service.point.met
        send(world, handset)
        connection = world.look(handset, world.page(handset))["connection"]
        assert connection == "ready", f"after the disk failed at {point}: {connection}"
        if not failed:
            return
    raise AssertionError("a deed has more points than were tried")


@story
def an_older_backup_is_restored(world: World) -> None:
    """What the backup lacks is asked of the phones, though they were told that it was received."""
    handset = sent(world, "emil-1", 1, 2)
    world.back_up()
    enter(world, handset, 3, 4)
    send(world, handset)
    world.restore(world.backups[0])
    enter(world, handset, 5)
    send(world, handset)


@story
def messages_are_sent_after_an_older_backup_was_restored(world: World) -> None:
    """The numbers of the feed come again; the new epoch says so."""
    handset = sent(world, "emil-1", 1)
    world.back_up()
    for number in (1, 2):
        practice.message(world, "emil", number)
    send(world, handset)
    world.restore(world.backups[0])
    for number in (3, 4, 5):
        practice.message(world, "emil", number)


@story
def a_practice_asks_for_another_practices_people(world: World) -> None:
    """There is nobody of that name; and no phone is told of another person's news."""
    for person in ("emil", "odd"):
        practice.message(world, person, 1)
        sent(world, f"{person}-1", 1)
    for word, person in (("birch", "emil"), ("alder", "odd")):
        client = world.template.clients[person]
        for path in ("", "/timeline", "/overview", "/refused-events", "/devices"):
            heard = world.ask(word, "GET", f"/clients/{client}{path}")
            assert heard is not None
            assert heard.status == _STATUS_NOT_FOUND, f"{word} got {path} of {person}: {heard.text}"


@story
def what_is_not_understood_stands_between_other_entries(world: World) -> None:
    """It is kept aside, visibly on both sides, and holds nothing up."""
    handset = world.handset("emil-1")
    page = world.page(handset)
    for number in range(5):
        world.record(handset, page, [note(handset, number), poison_of(number, handset.word)])
    enter(world, handset, 9)


@story
def an_id_comes_again_with_other_words(world: World) -> None:
    """Neither is thrown away: the second is kept aside for a person to see."""
    first = sent(world, "emil-1", 1)
    for name in ("emil-2", "odd-1"):
        enter(world, world.handset(name), 2, id=next(iter(first.told)))


@story
def a_phone_is_unpaired_and_paired_again(world: World) -> None:
    """What it holds stays on it, and comes under its new key."""
    handset = sent(world, "nora-1", 1)
    enter(world, handset, 2, 3)
    practice.revoke(world, "nora", 0)
    send(world, handset)
    assert world.look(handset, world.page(handset))["connection"] == "revoked"
    practice.pair(world, handset)
    world.service.restart()


@story
def the_disk_fails_at_every_point_while_calls_are_taken_together(world: World) -> None:
    """What the database then undoes by itself was nobody's to acknowledge."""
    handsets = [world.handset(name) for name in ("emil-1", "odd-1", "nora-1")]
    world.record(handsets[1], world.page(handsets[1]), [poison_of(1, handsets[1].word)])
    send(world, handsets[1])  # with something kept aside its calls are judged by themselves from now on
    for point in POINTS:
        for handset in handsets:
            enter(world, handset, point)
        world.send_together(handsets, point, dies=False)
        if world.service.point.met == 0:
            return
    raise AssertionError("three calls have more points than were tried")
