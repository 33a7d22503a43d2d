"""Engines, transactions and the scope of a practice.

SQLite through SQLAlchemy's defaults loses updates without an error (no transaction for a SELECT) and reports
"database is locked" at once for a transaction that read before it wrote. Hence: the driver opens no transaction of
its own, writers begin with BEGIN IMMEDIATE, readers have an engine apart. ``synchronous=FULL``: what is committed has
been flushed to the disk, since the phone is then told "received". ``hide_parameters``: an error names its statement and
not its values, which would be somebody's health in a log.
"""

import asyncio
from collections.abc import AsyncIterator, Callable, Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path
from typing import Annotated, Any, TypeVar
from weakref import WeakKeyDictionary

from fastapi import Depends, Request
from sqlalchemy import Connection, Engine, create_engine, event, make_url
from sqlalchemy import select as sqlalchemy_select
from sqlalchemy.exc import OperationalError
from sqlmodel import Session, SQLModel, select
from sqlmodel.sql.expression import SelectOfScalar

T = TypeVar("T", bound=SQLModel)
R = TypeVar("R", bound=tuple[Any, ...])
_BUSY_TIMEOUT_S = 10
_POOL_SIZE = 20
_PRAGMAS = (
    "journal_mode=WAL",
    "synchronous=FULL",
    "foreign_keys=ON",
    "trusted_schema=OFF",
    "secure_delete=ON",
    # After a burst the log is cut back to this; it would keep its largest size otherwise.
    "journal_size_limit=67108864",
)
_SERVER_LIMITS = "-c statement_timeout=30s -c lock_timeout=10s -c idle_in_transaction_session_timeout=60s"
"""What hangs is ended by the server, so that it does not hold the rows that phones wait for. House values."""


def _on_connect(connection: Any, _record: Any) -> None:
    connection.isolation_level = None
    cursor = connection.cursor()
    for pragma in _PRAGMAS:
        cursor.execute(f"PRAGMA {pragma}")
    cursor.close()


def _on_checkin(connection: Any, _record: Any) -> None:
    """End a transaction whose commit failed.

    SQLAlchemy takes it for ended. SQLite may not (full disk, broken constraint), and would hold the file's only lock
    in the pool until somebody happened to be given this connection, who would then fail on it.
    """
    if connection is not None and connection.in_transaction:
        connection.rollback()


def _on_commit(connection: Connection) -> None:
    """Let nobody take for committed what the database has given up by itself.

    SQLite rolls a transaction back when a write meets a full disk; PostgreSQL answers the commit of one that failed
    with a rollback. Neither driver raises then: what was caught in between would be promised with nothing behind it.

    Raises:
        OperationalError: the transaction is gone.
    """
    driver: Any = connection.connection.dbapi_connection
    on_sqlite = connection.dialect.name == "sqlite"
    if not driver.in_transaction if on_sqlite else driver.info.transaction_status.name == "INERROR":
        driver.rollback()  # SQLAlchemy takes a transaction for ended whose commit raised, and hands the connection on
        raise OperationalError("COMMIT", None, RuntimeError("the database has given the transaction up"))


def _begin_with(statement: str) -> Callable[[Any], None]:
    def begin(connection: Any) -> None:
        connection.exec_driver_sql(statement)

    return begin


def _sqlite_engine(url: str, begin: str) -> Engine:
    engine = create_engine(url, pool_size=_POOL_SIZE, connect_args={"timeout": _BUSY_TIMEOUT_S}, hide_parameters=True)
    event.listen(engine, "connect", _on_connect)
    event.listen(engine, "checkin", _on_checkin)
    event.listen(engine, "begin", _begin_with(begin))
    event.listen(engine, "commit", _on_commit)
    return engine


def _server_engine(url: str, pool_size: int) -> Engine:
    own = {} if "options" in make_url(url).query else {"options": _SERVER_LIMITS}
    engine = create_engine(
        url,
        connect_args=own,
        pool_size=pool_size,
        max_overflow=pool_size,
        pool_pre_ping=True,
        pool_timeout=5,
        hide_parameters=True,
    )
    event.listen(engine, "commit", _on_commit)
    return engine


def _engines(url: str, pool_size: int) -> tuple[Engine, Engine]:
    if make_url(url).get_backend_name() == "sqlite":
        return _sqlite_engine(url, "BEGIN IMMEDIATE"), _sqlite_engine(url, "BEGIN")
    both = _server_engine(url, pool_size)
    return both, both


class Turns:
    """How many requests may hold a session at once; the others wait on the event loop and not in a thread.

    A request that holds a lock needs a thread again to answer. If those that wait for the lock had taken every
    thread, all of them would stand still until the database gave up: fifty phones at once are enough.
    """

    def __init__(self, at_once: int) -> None:
        self._at_once = at_once
        self._by_loop: WeakKeyDictionary[asyncio.AbstractEventLoop, asyncio.Semaphore] = WeakKeyDictionary()

    def here(self) -> asyncio.Semaphore:
        """Answer the running event loop's semaphore."""
        return self._by_loop.setdefault(asyncio.get_running_loop(), asyncio.Semaphore(self._at_once))


class Database:
    """One database, SQLite or PostgreSQL, with an engine for writers and one for readers."""

    def __init__(self, url: str, pool_size: int = _POOL_SIZE, engines: tuple[Engine, Engine] | None = None) -> None:
        """``engines``: a writer's and a reader's of another ``Database`` that is closed, which know the queries."""
        self.url = url
        self.is_sqlite = make_url(url).get_backend_name() == "sqlite"
        path = make_url(url).database
        if self.is_sqlite and path:
            Path(path).parent.mkdir(parents=True, exist_ok=True)
        self.writer, self.reader = engines or _engines(url, pool_size)
        self.write_turns = Turns(1 if self.is_sqlite else pool_size // 2)
        self.read_turns = Turns(pool_size // 2)

    @contextmanager
    def write(self) -> Iterator[Session]:
        """One transaction: committed when the block ends well, rolled back when it does not."""
        with Session(self.writer, expire_on_commit=False) as session:
            yield session
            session.commit()
        for done in session.info.get("after_commit", ()):
            done()

    @contextmanager
    def read(self) -> Iterator[Session]:
        """One consistent view of the database; what is written in it is not kept."""
        with Session(self.reader, expire_on_commit=False) as session:
            yield session

    def close(self) -> None:
        """Let go of every connection; with the last one SQLite writes its log into the file."""
        self.writer.dispose()
        self.reader.dispose()


def after_commit(session: Session, done: Callable[[], None]) -> None:
    """Have ``done`` called once the session's transaction is durable; never if it is rolled back."""
    session.info.setdefault("after_commit", []).append(done)


def scoped(table: type[T], practice_id: str) -> SelectOfScalar[T]:
    """Answer a query of one practice's rows of a table: the one place where practices are kept apart."""
    return select(table).where(table.practice_id == practice_id)  # type: ignore[attr-defined]


def plain_rows(
    session: Session, table: type[SQLModel], row: type[R], practice_id: str, *where: Any, order_by: Sequence[Any]
) -> list[R]:
    """Answer one practice's rows of a table as named tuples of those columns: objects cost three times as much."""
    columns = [getattr(table, name) for name in row._fields]  # type: ignore[attr-defined]
    query = sqlalchemy_select(*columns).where(table.practice_id == practice_id, *where)  # type: ignore[attr-defined]
    return [row(*found) for found in session.execute(query.order_by(*order_by))]


async def _write_turn(request: Request) -> AsyncIterator[None]:
    async with request.app.state.database.write_turns.here():
        yield


async def _read_turn(request: Request) -> AsyncIterator[None]:
    async with request.app.state.database.read_turns.here():
        yield


def _write_session(
    request: Request, _turn: Annotated[None, Depends(_write_turn, scope="function")]
) -> Iterator[Session]:
    with request.app.state.database.write() as session:
        yield session
        request.app.state.before_commit(request, session)


def _read_session(request: Request, _turn: Annotated[None, Depends(_read_turn, scope="function")]) -> Iterator[Session]:
    with request.app.state.database.read() as session:
        yield session


# scope="function": the commit happens before the reply leaves. FastAPI's default commits after the client has its 200.
WriteSession = Annotated[Session, Depends(_write_session, scope="function")]
ReadSession = Annotated[Session, Depends(_read_session, scope="function")]
