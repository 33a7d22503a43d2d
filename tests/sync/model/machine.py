"""The state machine: what may happen in a history, in any order."""

from typing import Any

from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, initialize, rule

from tests.sync.model import checker, practice
from tests.sync.model.entries import body_of, poison_of
from tests.sync.model.template import HANDSETS
from tests.sync.model.world import Handset, World

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
    *[
        (f"{when}_{what}", 0)
        for when in ("before", "after")
        for what in ("killed", "cut", "recorded", "late", "other_page")
    ],
    ("before_restored", 0),
    ("after_restored", 0),
]
CASTS = [["emil-1"], ["emil-1", "emil-2"], ["emil-1", "odd-1"], ["emil-1", "emil-2", "nora-1", "odd-1"]]
"""Whose phones play a part: few, so that a history comes to them often; sometimes all."""
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
        self.cast = CASTS[0]
        self.deep = False

    @initialize(cast=st.sampled_from(CASTS[:1] + CASTS), deep=st.sampled_from([True] + [False] * 7))
    def begin(self, cast: list[str], deep: bool) -> None:
        """Whose history it is, and whether the practice's pages are read at the end, too."""
        self.cast, self.deep = cast, deep

    def _handset(self, who: int) -> Handset:
        return self.world.handset(self.cast[who % len(self.cast)])

    @rule(
        who=SMALL,
        page=SMALL,
        numbers=st.lists(NUMBER, min_size=1, max_size=3),
        kill=st.sampled_from([False] * 7 + [True]),
    )
    def enter(self, who: int, page: int, numbers: list[int], kill: bool) -> None:
        """Somebody enters something; the phone may end the app the moment it says so."""
        handset = self._handset(who)
        earlier = sorted(self.world.entries)
        entries = [body_of(number, handset.word, earlier) for number in numbers]
        self.world.record(handset, self.world.page(handset, page), entries, kill=kill)

    @rule(who=SMALL, number=NUMBER)
    def enter_what_is_not_understood(self, who: int, number: int) -> None:
        """An entry that the practice will not take."""
        handset = self._handset(who)
        self.world.record(handset, self.world.page(handset), [poison_of(number, handset.word)])

    @rule(who=SMALL, number=NUMBER)
    def enter_under_an_id_of_before(self, who: int, number: int) -> None:
        """Chance makes an id that there was already, here or elsewhere."""
        handset, ids = self._handset(who), sorted(self.world.entries)
        here = {event["id"] for event in self.world.stored(handset)["events"]}
        free = [one for one in ids if one not in here]
        if free:
            entry = body_of(number, handset.word, [])
            self.world.record(handset, self.world.page(handset), [entry], id=free[number % len(free)])

    @rule(who=SMALL, page=SMALL, plan=PLAN)
    def send(self, who: int, page: int, plan: list[tuple[str, int]]) -> None:
        """An occasion to send."""
        handset = self._handset(who)
        self.world.send(handset, self.world.page(handset, page), plan)

    @rule(who=SMALL, numbers=st.lists(NUMBER, min_size=1, max_size=3), plan=PLAN)
    def enter_and_send(self, who: int, numbers: list[int], plan: list[tuple[str, int]]) -> None:
        """The ordinary course of things."""
        self.enter(who=who, page=0, numbers=numbers, kill=False)
        self.send(who=who, page=0, plan=plan)

    @rule(who=SMALL, wait=st.sampled_from(_WAITS_MS), plan=PLAN)
    def wait(self, who: int, wait: int, plan: list[tuple[str, int]]) -> None:
        """The page's own timers send."""
        handset = self._handset(who)
        self.world.network.plan = list(plan)
        self.world.phones.call("pass", phone=handset.name, ms=wait)

    @rule(point=st.sampled_from([0, 0, 4, 9, 16, 25]), dies=st.booleans())
    def send_at_once(self, point: int, dies: bool) -> None:
        """Several phones' calls reach the server together; it dies, or its disk fails."""
        self.world.send_together([self.world.handset(name) for name in self.cast], point, dies=dies)

    @rule(who=SMALL, after=st.integers(1, 30), how=HOW, number=NUMBER, sends=st.booleans())
    def storage_fails(self, who: int, after: int, how: str, number: int, sends: bool) -> None:
        """The n-th call of the phone's storage fails, or is the last."""
        handset = self._handset(who)
        page = self.world.page(handset)
        self.world.phones.call("fault", phone=handset.name, page=page, after=after, how=how)
        entries = [body_of(number + one, handset.word, []) for one in range(1 + number % 3)]
        self.world.record(handset, page, entries)
        if sends:
            self.world.send(handset, page, [])

    @rule(who=SMALL, how=st.sampled_from(["close", "cut"]), page=SMALL)
    def end(self, who: int, how: str, page: int) -> None:
        """The phone ends the app, or its battery is empty."""
        handset = self._handset(who)
        self.world.phones.call(how, phone=handset.name, page=self.world.page(handset, page))

    @rule(who=SMALL, plan=PLAN)
    def open(self, who: int, plan: list[tuple[str, int]]) -> None:
        """The app is opened once more, beside what is open."""
        self.world.open(self._handset(who), list(plan))

    @rule(who=SMALL, frozen=st.booleans())
    def update(self, who: int, frozen: bool) -> None:
        """A newer build is opened beside older pages; one of those may hang on to the database."""
        handset = self._handset(who)
        if frozen:
            self.world.phones.call("freeze", phone=handset.name, page=self.world.page(handset))
        handset.build = 1
        self.world.open(handset)

    @rule(who=SMALL, jump=st.sampled_from(_JUMPS_H), zone=st.sampled_from(_ZONES_MIN))
    def set_the_clock(self, who: int, jump: int, zone: int) -> None:
        """The phone's clock is set, forward or back, or its owner travels."""
        self.world.set_clock(self._handset(who), jump, zone)

    @rule(who=SMALL)
    def copy(self, who: int) -> None:
        """The phone's storage is copied, as a phone's own backup does."""
        self.world.copy(self._handset(who))

    @rule(number=SMALL, back=st.booleans())
    def use_a_copy(self, number: int, back: bool) -> None:
        """An older copy is put back on its phone, or is switched on as a second one."""
        self.world.use_copy(number, back)

    @rule(
        who=SMALL, act=st.sampled_from(practice.ACTS), number=NUMBER, dies=st.sampled_from([0] * 6 + [2, 5, 9, 14, 20])
    )
    def practise(self, who: int, act: Any, number: int, dies: int) -> None:
        """A practitioner does something; the server may die of it."""
        if dies:
            self.world.service.point.arm(dies, dies=True)
        act(self.world, HANDSETS[self.cast[who % len(self.cast)]], number)
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
        checker.check(self.world, deep=self.deep)
