"""Takes in the sync calls of many phones in one transaction (decision 0011).

What is plain is stored in a few statements for all calls together. Everything else is judged call by call by
``service.sync``, which answers the same for what is plain.
"""

from collections.abc import Iterator, Sequence
from datetime import datetime
from typing import NamedTuple, Self

from sqlalchemy import Connection, Dialect
from sqlalchemy.exc import DataError, IntegrityError, OperationalError
from sqlmodel import Session

from steadfoot.checkins import service
from steadfoot.checkins.beyond import MoreToLookAt
from steadfoot.checkins.reading import Item, Reading, read
from steadfoot.checkins.schemas import ChangeOut, SyncBody, SyncOut
from steadfoot.checkins.tables import Due, Event, Receipt
from steadfoot.core.bulk import Bulk, Row
from steadfoot.core.database import Database
from steadfoot.core.limits import Limiter
from steadfoot.core.problems import Problem
from steadfoot.identity import phones
from steadfoot.identity import service as identity
from steadfoot.identity.access import unknown_phone
from steadfoot.identity.phones import Phone

SYNC_CALLS_A_MINUTE = 600
CALLS_AT_ONCE = 64
"""How many calls one transaction takes: with more of them the first would wait long for its answer. House value."""
_EVENT = (
    "id",
    "practice_id",
    "client_id",
    "device_id",
    "seq",
    "kind",
    "recorded_at",
    "instant",
    "received_at",
    "local_day",
    "planned_id",
    "body",
    "content_digest",
)
_RECEIPT = ("device_id", "seq", "practice_id", "event_id")
_DUE = ("device_id", "first_seq", "last_seq", "practice_id", "client_id")


class Call(NamedTuple):
    """One sync call: the digest of the phone's token, and what it sent."""

    token_digest: str
    cursor: int
    items: list[Item]
    at: datetime

    @classmethod
    def of(cls, token_digest: str, body: SyncBody, at: datetime) -> Self:
        """Read what was sent: before its turn in the database, so that it holds nobody up."""
        return cls(token_digest, body.cursor, [read(raw) for raw in body.events], at)


class Taken(NamedTuple):
    """What became of a call: whose it was, the answer, and whether anything is due now."""

    practice_id: str
    client_id: str
    answer: SyncOut
    due: bool


class _Plain(NamedTuple):
    """A known phone's next numbers, each with a readable event."""

    place: int
    phone: Phone
    call: Call
    events: list[Reading]

    @property
    def through(self) -> int:
        """The end of the phone's gapless numbers, once this is stored."""
        return self.phone.acknowledged_through + len(self.events)


Results = dict[int, Taken | Exception]


class Taking:
    """Takes calls in; each gets its answer or its error, in their order."""

    def __init__(self, database: Database, limiter: Limiter) -> None:
        self._database = database
        self._limiter = limiter
        dialect = database.writer.dialect
        self._contacts, self._more, self._rows = phones.Contacts(dialect), MoreToLookAt(dialect), _Rows(dialect)

    def take(self, calls: Sequence[Call]) -> list[Taken | Exception]:
        """Answer after the commit. What fails together is done again one by one; a database that is away, only once."""
        try:
            found = self._taken(calls)
        except Exception as error:  # every call has to hear what became of it  # noqa: BLE001
            return [error] if len(calls) == 1 else self._one_by_one(calls)
        return [found[place] for place in range(len(calls))]

    def _one_by_one(self, calls: Sequence[Call]) -> list[Taken | Exception]:
        found: list[Taken | Exception] = []
        for call in calls:
            last = found[-1] if found else None
            found.append(last if isinstance(last, OperationalError) else self.take([call])[0])
        return found

    def _taken(self, calls: Sequence[Call]) -> Results:
        """A key that is there already is somebody's repeat: each call is then judged by itself, and anew."""
        try:
            return self._transaction(calls, at_once=True)
        except (IntegrityError, DataError):
            return self._transaction(calls, at_once=False)

    def _transaction(self, calls: Sequence[Call], *, at_once: bool) -> Results:
        with self._database.writer.begin() as connection, Session(connection, expire_on_commit=False) as session:
            return self._together(connection, session, calls, at_once=at_once)

    def _together(self, connection: Connection, session: Session, calls: Sequence[Call], *, at_once: bool) -> Results:
        results = Results()
        known = self._contacts.locked(connection, list({call.token_digest for call in calls}))
        let_in: dict[int, Phone] = {}
        for place, call in enumerate(calls):
            try:
                phone = known.get(call.token_digest)
                if phone is None:
                    raise unknown_phone(session, call.token_digest)
                let_in[place] = self._let_in(phone, again=not at_once)
            except Problem as problem:
                results[place] = problem
        more = self._more.among(connection, [phone.device_id for phone in let_in.values()])
        plain = _plain(calls, let_in, more) if at_once else []
        self._rows.store(connection, plain)
        self._contacts.note(connection, [(one.call.at, one.through, one.phone.device_id) for one in plain])
        results |= {one.place: _answer(session, one) for one in plain}
        for place in sorted(let_in.keys() - results.keys()):
            results[place] = _by_itself(session, let_in[place], calls[place])
        return results

    def _let_in(self, phone: Phone, *, again: bool) -> Phone:
        phone.access()
        if not again:
            self._limiter.check(phone.device_id)
        return phone


def _plain(calls: Sequence[Call], let_in: dict[int, Phone], more_to_look_at: set[str]) -> list[_Plain]:
    """Answer the calls that need no look at what is held: in a group a phone's first, and an event's first."""
    devices, ids = set(more_to_look_at), set[str]()
    found = []
    for place, phone in let_in.items():
        events = None if phone.device_id in devices else _next_events(calls[place].items, phone)
        devices.add(phone.device_id)
        fresh = {event.id for event in events or ()}
        if events is not None and len(fresh) == len(events) and ids.isdisjoint(fresh):
            ids |= fresh
            found.append(_Plain(place, phone, calls[place], events))
    return found


def _next_events(items: Sequence[Item], phone: Phone) -> list[Reading] | None:
    """Answer the events of a batch that follows without a gap on what is held, if all of it could be read."""
    found = [item.event for item in items if item.event is not None]
    numbers = range(phone.acknowledged_through + 1, phone.acknowledged_through + 1 + len(items))
    return found if [event.seq for event in found] == list(numbers) else None


class _Rows:
    """Writes what is plain, in one statement for each table."""

    def __init__(self, dialect: Dialect) -> None:
        self._events = Bulk(Event, _EVENT, dialect)
        self._receipts = Bulk(Receipt, _RECEIPT, dialect)
        self._due = Bulk(Due, _DUE, dialect)
        self._time, self._day = self._events.converter("instant"), self._events.converter("local_day")

    def store(self, connection: Connection, plain: Sequence[_Plain]) -> None:
        """Store all of it.

        Raises:
            IntegrityError: one of the ids is held already.
        """
        some = [one for one in plain if one.events]
        # By id, so that two servers never wait for each other in a ring.
        self._events.insert(connection, sorted(row for one in some for row in self._event_rows(one)))
        receipts = [(p.device_id, e.seq, p.practice_id, e.id) for _, p, _, events in some for e in events]
        self._receipts.insert(connection, receipts)
        due = [(p.device_id, e[0].seq, e[-1].seq, p.practice_id, p.client_id) for _, p, _, e in some]
        self._due.insert(connection, due)

    def _event_rows(self, one: _Plain) -> Iterator[Row]:
        time, day, phone = self._time, self._day, one.phone
        whose, at = (phone.practice_id, phone.client_id, phone.device_id), time(one.call.at)
        for e in one.events:
            said = (e.seq, e.kind, e.recorded_at, time(e.instant), at, day(e.local_day))
            yield (e.id, *whose, *said, e.planned_id, e.body_text, e.digest)


def _answer(session: Session, one: _Plain) -> Taken:
    phone, cursor = one.phone, one.call.cursor
    changes: list[ChangeOut] = []
    if cursor != phone.change_head:
        news, cursor = identity.changes_since(session, phone.practice_id, phone.client_id, cursor)
        changes = [ChangeOut(number=c.number, kind=c.kind, at=c.at, body=c.body) for c in news]
    answer = SyncOut(
        server_epoch=phone.epoch,
        server_time=one.call.at,
        acknowledged_through=one.through,
        refused=[],
        changes=changes,
        cursor=cursor,
    )
    return Taken(phone.practice_id, phone.client_id, answer, due=bool(one.events))


def _by_itself(session: Session, phone: Phone, call: Call) -> Taken | Exception:
    """Judge a call item by item; what goes wrong with it is undone, and no other call's business.

    Raises:
        OperationalError: the database fails, and may have undone what it took of the others, too.
    """
    try:
        with session.begin_nested():
            answer = service.sync(session, phone.access(), call.cursor, call.items, call.at)
    except OperationalError:
        raise
    except Exception as error:  # told to this caller alone  # noqa: BLE001
        return error
    return Taken(phone.practice_id, phone.client_id, answer, due=bool(call.items))
