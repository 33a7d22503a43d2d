"""One history's world: server, phones, practitioners, and what each of them was told."""

import json
from contextlib import suppress
from dataclasses import dataclass, field
from datetime import timedelta
from pathlib import Path
from typing import Any

from tests.builders import API
from tests.conftest import START
from tests.sync.model.entries import Entry
from tests.sync.model.network import Fault, Network
from tests.sync.model.phones import Ask, Failed, Phones
from tests.sync.model.service import Heard, Service
from tests.sync.model.template import HANDSETS, PEOPLE, PRACTICES, Template, setting, sign_in

_NOT_SAVED = ("killed", "NotSaved", "PhoneFull", "Blocked")
"""How an entry may end that the page did not call saved. It may be there all the same, or not: nobody was told."""
Content = tuple[str, str, str, str]
"""Person, kind, recorded_at and body of an entry."""


def plain(body: Any) -> str:
    """Answer a body as text that equal bodies share."""
    return json.dumps(body, sort_keys=True)


def content_of(person: str, event: dict[str, Any]) -> Content:
    """Answer what an entry says, and of whom."""
    return person, event["kind"], event["recorded_at"], plain(event["body"])


@dataclass
class Handset:
    """A phone in somebody's hand."""

    name: str
    person: str
    pages: list[int] = field(default_factory=list)
    """Pages that were opened and not closed; some may have died since."""
    build: int = 0
    told: set[str] = field(default_factory=set)
    """Ids of entries that it called saved (A1)."""

    @property
    def word(self) -> str:
        """The practice's word."""
        return PEOPLE[self.person]


@dataclass
class Backup:
    """A copy of the server, and what it held then."""

    file: Path
    held: set[tuple[str, str]]
    sent: dict[str, str]


class World:
    """Everything there is in one history."""

    def __init__(self, template: Template, service: Service, phones: Phones) -> None:
        self.template, self.service, self.phones = template, service, phones
        service.clock.now = START
        service.begin_with(template.file)
        phones.forget()
        self.network = Network(service, self._heard, meanwhile=self._meanwhile)
        phones.network = self.network.exchange
        self.handsets: dict[str, Handset] = {}
        self.entries: dict[str, list[Content]] = {}
        """What a phone said that it saved, by id; more than one where an id was used twice."""
        self.entered: set[tuple[str, str, str]] = set()
        """Person, kind and body of everything that anybody ever entered."""
        self.held: set[tuple[str, str]] = set()
        """Whose, and the id: what the server has acknowledged, and has not lost since by a restore of an older backup
        (A2)."""
        self.sent: dict[str, str] = {}
        """Ids of messages that the server said it took, and to whom; as ``held``."""
        self.backups: list[Backup] = []
        self.cookies = dict(template.cookies)
        self._switched_on = 0
        self._recording = False
        self.copies: list[tuple[str, Any]] = []
        """Contents of phones that were copied, with whose they are."""

    # Phones

    def handset(self, name: str) -> Handset:
        """Answer a phone; one that nobody touched yet is taken out of the pocket, without a network."""
        if name not in self.handsets:
            stored = self.template.stored[name]
            self.switch_on(name, HANDSETS[name], stored)
        return self.handsets[name]

    def switch_on(self, name: str, person: str, stored: Any, *, locks: bool = True) -> Handset:
        """Take a phone with some contents into the world."""
        self._switched_on += 1
        seed = f"{name} {self._switched_on}"
        self.phones.call("phone", phone=name, setting=setting(seed, stored, locks))
        self.handsets[name] = Handset(name, person)
        return self.handsets[name]

    def page(self, handset: Handset, choice: int = 0) -> int:
        """Answer one of a phone's open pages, opened now if there is none."""
        while handset.pages:
            page = handset.pages[choice % len(handset.pages)]
            if not self.look(handset, page)["dead"]:
                return page
            handset.pages.remove(page)
        return self.open(handset)

    def open(self, handset: Handset, plan: list[Fault] | None = None) -> int:
        """Open the app once more; without a plan there is no network."""
        self.network.plan = [("lost_request", 0)] * 4 if plan is None else plan
        page: int = self.phones.call("open", phone=handset.name, build=handset.build)
        handset.pages.append(page)
        return page

    def look(self, handset: Handset, page: int) -> dict[str, Any]:
        """Answer what a page shows."""
        found: dict[str, Any] = self.phones.call("look", phone=handset.name, page=page)
        return found

    def record(self, handset: Handset, page: int, entries: list[Entry], **more: Any) -> None:
        """Enter something; what comes of it is what the page says, or nobody knows."""
        self.entered |= {(handset.person, one["kind"], plain(one["body"])) for one in entries}
        self._recording = True  # also while it is counted: what a page had begun to send is answered meanwhile
        try:
            before = len(self.stored(handset)["events"])
            stored = self.phones.call("record", phone=handset.name, page=page, entries=entries, **more)
            assert len(self.stored(handset)["events"]) == before + len(entries), "not written just once"
        except Failed as failed:
            if failed.name not in _NOT_SAVED:
                raise
            grown = len(self.stored(handset)["events"]) - before
            assert grown in (0, len(entries)), f"{grown} of {len(entries)} entries were written"
            return
        finally:
            self._recording = False
        for event in stored:
            self.entries.setdefault(event["id"], []).append(content_of(handset.person, event))
        handset.told |= {event["id"] for event in stored}

    def stored(self, handset: Handset) -> dict[str, Any]:
        """Answer what is in a phone's storage, pages or not."""
        found: dict[str, Any] = self.phones.call("contents", phone=handset.name)
        return found

    def send(self, handset: Handset, page: int, plan: list[Fault]) -> None:
        """Somebody asks to send now."""
        self.network.plan = list(plan)
        with suppress(Failed):
            self.phones.call("send", phone=handset.name, page=page)

    def _meanwhile(self, ask: Ask, what: str) -> None:
        """Do something while a request is on its way."""
        handset = self.handsets[ask["phone"]]
        plan, self.network.plan = self.network.plan, []
        if what == "killed":
            self.phones.call("close", phone=handset.name, page=ask["page"])
        elif what == "cut":
            self.phones.call("cut", phone=handset.name)
        elif what == "recorded" and not self._recording:  # else nobody could say how many entries there should be
            note = {"kind": "note_written", "body": {"text": f"{handset.word} meanwhile"}}
            self.record(handset, ask["page"], [note])
        elif what == "restored" and self.backups:
            self.restore(self.backups[-1])
        elif what == "late":
            self.deliver_late()
        elif what == "other_page":
            self._other_page(handset, ask["page"])
        self.network.plan = plan

    def _other_page(self, handset: Handset, page: int) -> None:
        others = [other for other in handset.pages if other != page]
        for other in others[:1]:
            with suppress(Failed):
                self.phones.call("send", phone=handset.name, page=other)

    # What the server said

    def _heard(self, ask: Ask, heard: Heard) -> None:
        handset = self.handsets.get(ask["phone"])
        word = handset.word if handset else ""
        self.unmixed(word, heard.text)
        if handset is None or heard.status != 200 or not ask["path"].endswith("/sync"):
            return
        ids = [event["id"] for event in json.loads(ask["body"])["events"]]
        self.on_the_disk(ids)
        self.held |= {(handset.person, one) for one in ids}

    def unmixed(self, word: str, text: str) -> None:
        """Check that a reply to one practice has no word of the other's."""
        for other in PRACTICES:
            assert not word or other == word or other not in text, f"{word} was told of {other}: {text}"

    def on_the_disk(self, ids: list[str]) -> None:
        """Check that what was just acknowledged is committed, by another connection's reading."""
        marks = ",".join("?" * len(ids))
        query = (
            f"SELECT id FROM event WHERE id IN ({marks}) UNION SELECT event_id FROM refused_event "
            f"WHERE event_id IN ({marks})"
        )
        found = {row[0] for row in self.service.rows(query, *ids, *ids)} if ids else set()
        assert found == set(ids), f"acknowledged, and not on the disk: {set(ids) - found}"

    def deliver_late(self) -> None:
        """Requests that were given up long ago arrive; nobody waits for their replies."""
        late, self.network.late = self.network.late, []
        for ask in reversed(late):
            self.network.deliver(ask)

    # The practice

    def ask(self, word: str, method: str, path: str, body: Any = None) -> Heard | None:
        """Ask as a practice's practitioner; None when the server died of it."""
        for _ in range(2):
            if word not in self.cookies:
                point, self.service.point.left = self.service.point.left, None
                self.cookies[word] = sign_in(self.service, word)
                self.service.point.left = point
            headers = {"Cookie": self.cookies[word], "Content-Type": "application/json"}
            heard = self.service.ask(
                method, f"{API}{path}", headers, b"" if body is None else json.dumps(body).encode()
            )
            if heard is None or heard.status != 401:
                break
            del self.cookies[word]
        if heard is not None:
            self.unmixed(word, heard.text)
        return heard

    def get(self, word: str, path: str) -> Any:
        """Answer a page of the practice that has to come."""
        heard = self.ask(word, "GET", path)
        assert heard is not None
        assert heard.status == 200, heard
        return json.loads(heard.text)

    def back_up(self) -> None:
        """Copy the server."""
        self.backups.append(Backup(self.service.backup(), set(self.held), dict(self.sent)))

    def restore(self, backup: Backup) -> None:
        """Go back to a copy: what only the practice wrote since is gone, and phones send again what it lacks."""
        self.service.restore(backup.file)
        self.held, self.sent = set(backup.held), dict(backup.sent)
        self.cookies.clear()

    def later(self, **span: float) -> None:
        """Let time pass at the practice."""
        self.service.clock.now += timedelta(**span)

    # What happens to several, or to a phone as a thing

    def send_together(self, handsets: list[Handset], point: int, *, dies: bool = True) -> None:
        """Have several phones send, and the server get their calls at once; at a point it dies, or its disk fails."""
        pages = [(handset, self.page(handset)) for handset in handsets]
        self.network.plan = []
        begun = [self.phones.begin("send", phone=handset.name, page=page) for handset, page in pages]
        asks = self.phones.asked_by(begun)
        if point:
            self.service.point.arm(point, dies=dies)
        for ask, answer in zip(asks, self.network.together(asks), strict=True):
            self.phones.reply(ask, answer)
        for number in begun:
            with suppress(Failed):
                self.phones.result(number)

    def set_clock(self, handset: Handset, jump_h: int, zone_min: int) -> None:
        """Set a phone's clock so many hours off from the practice's."""
        now = int((self.service.clock.now + timedelta(hours=jump_h)).timestamp() * 1000)
        self.phones.call("set", phone=handset.name, now=now, ahead=zone_min)

    def copy(self, handset: Handset) -> None:
        """Copy a phone's storage."""
        self.copies.append((handset.name, self.stored(handset)))

    def use_copy(self, number: int, back: bool) -> None:
        """Put a copy back on its phone, which loses what came after it; or switch it on as a phone of its own."""
        if not self.copies:
            return
        name, stored = self.copies[number % len(self.copies)]
        old = self.handsets[name]
        ids = {event["id"] for event in stored["events"]}
        fresh = self.switch_on(name if back else f"{name}-copy-{len(self.handsets)}", old.person, stored)
        fresh.told, fresh.build = old.told & ids, max(0, stored["version"] - 1)
