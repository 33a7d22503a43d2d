"""The state machine: what may happen in a history, in any order."""

from typing import Any

from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, rule

from tests.sync.model import checker, practice
from tests.sync.model.entries import body_of, poison_of
from tests.sync.model.template import HANDSETS, PEOPLE
from tests.sync.model.world import World

_ON_THE_WAY: list[tuple[str, int]] = [
    *[("", 0)] * 8,
    ("lost_request", 0),
    *[("lost_reply", one) for one in (0, 1)],
    *[("late", one) for one in (0, 1)],
    ("twice", 0),
    *[("cut_short", one) for one in (1, 5)],
    *[("strange", one) for one in range(10)],
    *[("stale", one) for one in (0, 1)],
    *[("dies", one) for one in (1, 3, 5, 7, 9, 11, 14, 18, 24, 30)],
    *[("disk", one) for one in (2, 6, 10, 15, 21)],
    ("dies_after", 0),
    *[(f"{when}_{what}", 0) for when in ("before", "after") for what in ("killed", "cut", "recorded", "late", "other_page")],
    ("before_restored", 0),
    ("after_restored", 0),
]
NAMES = st.sampled_from(sorted(HANDSETS))
PEOPLES = st.sampled_from(sorted(PEOPLE))
PLAN = st.lists(st.sampled_from(_ON_THE_WAY), max_size=3)
NUMBER = st.integers(0, 400)
SMALL = st.integers(0, 3)
HOW = st.sampled_from(["UnknownError", "InvalidStateError", "QuotaExceededError", "unanswered", "killed"])
_ZONES_MIN = (120, 120, 0, -420, 330, 765)
_JUMPS_H = (0, 1, -1, 24, -24, 24 * 40, -24 * 400, 24 * 3000)
_WAITS_MS = (200, 2_000, 60_000, 1_000_000)


class Histories(RuleBasedStateMachine):
    """Phones, practitioners and a server, and everything that can go wrong between them."""

    make: Any = None
    """Answers a fresh world; set by the test that runs it."""

    def __init__(self) -> None:
        super().__init__()
        self.world: World = type(self).make()

    @rule(name=NAMES, page=SMALL, numbers=st.lists(NUMBER, min_size=1, max_size=3), kill=st.sampled_from([False] * 7 + [True]))
    def enter(self, name: str, page: int, numbers: list[int], kill: bool) -> None:
        """Somebody enters something; the phone may end the app the moment it says so."""
        handset = self.world.handset(name)
        earlier = sorted(self.world.entries)
        entries = [body_of(number, handset.word, earlier) for number in numbers]
        self.world.record(handset, self.world.page(handset, page), entries, kill=kill)

    @rule(name=NAMES, number=NUMBER)
    def enter_what_is_not_understood(self, name: str, number: int) -> None:
        """An entry that the practice will not take."""
        handset = self.world.handset(name)
        self.world.record(handset, self.world.page(handset), [poison_of(number, handset.word)])

    @rule(name=NAMES, number=NUMBER)
    def enter_under_an_id_of_before(self, name: str, number: int) -> None:
        """Chance makes an id that there was already, here or elsewhere."""
        handset, ids = self.world.handset(name), sorted(self.world.entries)
        here = {event["id"] for event in self.world.stored(handset)["events"]}
        free = [one for one in ids if one not in here]
        if free:
            entry = body_of(number, handset.word, [])
            self.world.record(handset, self.world.page(handset), [entry], id=free[number % len(free)])

    @rule(name=NAMES, page=SMALL, plan=PLAN)
    def send(self, name: str, page: int, plan: list[tuple[str, int]]) -> None:
        """An occasion to send."""
        handset = self.world.handset(name)
        self.world.send(handset, self.world.page(handset, page), plan)

    @rule(name=NAMES, numbers=st.lists(NUMBER, min_size=1, max_size=3), plan=PLAN)
    def enter_and_send(self, name: str, numbers: list[int], plan: list[tuple[str, int]]) -> None:
        """The ordinary course of things."""
        self.enter(name=name, page=0, numbers=numbers, kill=False)
        self.send(name=name, page=0, plan=plan)

    @rule(name=NAMES, wait=st.sampled_from(_WAITS_MS), plan=PLAN)
    def wait(self, name: str, wait: int, plan: list[tuple[str, int]]) -> None:
        """The page's own timers send."""
        handset = self.world.handset(name)
        self.world.network.plan = list(plan)
        self.world.phones.call("pass", phone=handset.name, ms=wait)

    @rule(names=st.lists(NAMES, min_size=2, max_size=4, unique=True), dies=st.sampled_from([0, 0, 4, 9, 16]))
    def send_at_once(self, names: list[str], dies: int) -> None:
        """Several phones' calls reach the server together."""
        self.world.send_together([self.world.handset(name) for name in names], dies)

    @rule(name=NAMES, after=st.integers(1, 30), how=HOW, number=NUMBER, sends=st.booleans())
    def storage_fails(self, name: str, after: int, how: str, number: int, sends: bool) -> None:
        """The n-th call of the phone's storage fails, or is the last."""
        handset = self.world.handset(name)
        page = self.world.page(handset)
        self.world.phones.call("fault", phone=name, page=page, after=after, how=how)
        entries = [body_of(number + one, handset.word, []) for one in range(1 + number % 3)]
        self.world.record(handset, page, entries)
        if sends:
            self.world.send(handset, page, [])

    @rule(name=NAMES, how=st.sampled_from(["close", "cut"]), page=SMALL)
    def end(self, name: str, how: str, page: int) -> None:
        """The phone ends the app, or its battery is empty."""
        handset = self.world.handset(name)
        self.world.phones.call(how, phone=name, page=self.world.page(handset, page))

    @rule(name=NAMES, plan=PLAN)
    def open(self, name: str, plan: list[tuple[str, int]]) -> None:
        """The app is opened once more, beside what is open."""
        self.world.open(self.world.handset(name), list(plan))

    @rule(name=NAMES, frozen=st.booleans())
    def update(self, name: str, frozen: bool) -> None:
        """A newer build is opened beside older pages; one of those may hang on to the database."""
        handset = self.world.handset(name)
        if frozen:
            self.world.phones.call("freeze", phone=name, page=self.world.page(handset))
        handset.build = 1
        self.world.open(handset)

    @rule(name=NAMES, jump=st.sampled_from(_JUMPS_H), zone=st.sampled_from(_ZONES_MIN))
    def set_the_clock(self, name: str, jump: int, zone: int) -> None:
        """The phone's clock is set, forward or back, or its owner travels."""
        self.world.set_clock(self.world.handset(name), jump, zone)

    @rule(name=NAMES)
    def copy(self, name: str) -> None:
        """The phone's storage is copied, as a phone's own backup does."""
        self.world.copy(self.world.handset(name))

    @rule(number=SMALL, back=st.booleans())
    def use_a_copy(self, number: int, back: bool) -> None:
        """An older copy is put back on its phone, or is switched on as a second one."""
        self.world.use_copy(number, back)

    @rule(person=PEOPLES, act=st.sampled_from(practice.ACTS), number=NUMBER, dies=st.sampled_from([0] * 6 + [2, 5, 9, 14, 20]))
    def practise(self, person: str, act: Any, number: int, dies: int) -> None:
        """A practitioner does something; the server may die of it."""
        if dies:
            self.world.service.point.arm(dies, dies=True)
        act(self.world, person, number)
        self.world.service.point.left = None

    @rule(what=st.sampled_from(["later", "much_later", "back_up", "restore", "restart", "deliver_late"]))
    def at_the_practice(self, what: str) -> None:
        """Time passes, or an owner tends the server."""
        world = self.world
        if what == "restore":
            if world.backups:
                world.restore(world.backups[0])
        elif what in ("later", "much_later"):
            world.later(minutes=7 if what == "later" else 60 * 30)
        elif what == "restart":
            world.service.restart()
        else:
            getattr(world, what)()

    def teardown(self) -> None:
        """The checker has the last word."""
        checker.check(self.world)
