"""What each test would make ready anew, which is most of a small one's time: routes, and how queries are written."""

from typing import Any

from fastapi import FastAPI
from sqlalchemy import Engine, event, make_url

from steadfoot.app import create_app
from steadfoot.core.clock import Clock
from steadfoot.core.database import Database
from steadfoot.core.settings import Settings


class Engines:
    """Lends one pair of engines to a database after another.

    An engine that was disposed of has no connection any more and still knows how each query is written, which takes
    longer to find out than the query.
    """

    def __init__(self) -> None:
        self._pair: tuple[Engine, Engine] | None = None
        self._file: str | None = None

    def lend(self, url: str) -> Database:
        """Answer a database that is opened as any other; the one before must be closed."""
        self._file = make_url(url).database
        found = Database(url, engines=self._pair)
        if self._pair is None and found.is_sqlite:
            for engine in (found.writer, found.reader):
                event.listen(engine, "do_connect", self._lead)
        self._pair = found.writer, found.reader
        return found

    def _lead(self, _dialect: Any, _record: Any, where: list[Any], _how: dict[str, Any]) -> None:
        where[0] = self._file


_KEPT: list[FastAPI] = []


def ready_app(settings: Settings, database: Database, clock: Clock) -> FastAPI:
    """Answer an app as ``create_app`` makes it, which takes the place of the one that this answered before.

    What an app knows is in its state and its layers, and those are fresh; a route knows nothing, and FastAPI takes a
    hundredth of a second to make each ready at its first request.
    """
    fresh = create_app(settings, database, clock)
    if not _KEPT:
        _KEPT.append(fresh)
    kept = _KEPT[0]
    kept.state, kept.user_middleware, kept.middleware_stack = fresh.state, fresh.user_middleware, None
    kept.dependency_overrides.clear()
    return kept
