"""Databases, a clock that stands still, and an app with one practice: what feature tests begin with.

``STEADFOOT_TEST_DATABASE=postgresql`` runs the same tests on a PostgreSQL that this file starts.
"""

import gc
import os
import shutil
import tempfile
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from functools import cache
from pathlib import Path

import pytest
from fastapi import FastAPI
from sqlalchemy import Engine, NullPool, create_engine, make_url

from steadfoot.core.database import Database
from steadfoot.core.settings import Settings
from steadfoot.migrations.upgrade import upgrade
from steadfoot.schema import METADATA
from tests.builders import House, found_house
from tests.ready import Engines, ready_app

START = datetime(2026, 6, 10, 8, 0, tzinfo=UTC)
"""A Wednesday morning; 10:00 in Vienna, where the tests' practice is."""


class StandingClock:
    """A clock that moves only when told to."""

    def __init__(self, now: datetime) -> None:
        self.now = now

    def __call__(self) -> datetime:
        return self.now

    def forward(self, **kwargs: float) -> datetime:
        """Move on by a timedelta's arguments."""
        self.now += timedelta(**kwargs)
        return self.now


def pytest_collection() -> None:
    """Look for garbage after the imports only: they make none, and looking through them is a quarter of their time."""
    gc.disable()


def pytest_collection_finish() -> None:
    """Leave what was imported out of every later look: nothing of it ever goes, and it takes a fifth of a second."""
    gc.collect()
    gc.freeze()
    gc.enable()


@pytest.fixture(scope="session")
def server_url() -> Iterator[str | None]:
    """The URL of a PostgreSQL server's empty database where the run asks for one, else None."""
    if os.environ.get("STEADFOOT_TEST_DATABASE") != "postgresql":
        yield None
        return
    from tests.postgres import running_server

    # Not below pytest's own folder: another run of pytest would take the server's rights to it away.
    with tempfile.TemporaryDirectory() as folder, running_server(Path(folder) / "data") as url:
        yield url


@pytest.fixture(scope="session")
def template(tmp_path_factory: pytest.TempPathFactory, server_url: str | None) -> str:
    """A migrated database that each test gets a copy of, or empty again: migrating anew takes a second."""
    if server_url is None:
        url = f"sqlite:///{tmp_path_factory.mktemp('template') / 'template.db'}"
    else:
        url = server_database(server_url, "test_steadfoot")
    database = Database(url)
    upgrade(database)
    database.close()
    return url


def server_database(server_url: str, name: str) -> str:
    engine = create_engine(server_url, isolation_level="AUTOCOMMIT")
    with engine.connect() as connection:
        connection.exec_driver_sql(f'CREATE DATABASE "{name}"')
    engine.dispose()
    return make_url(server_url).set(database=name).render_as_string(hide_password=False)


@cache
def _engine_of(url: str) -> Engine:
    return create_engine(url, poolclass=NullPool)


def _empty(url: str) -> None:
    """Delete every row: a copy of a whole database takes a server a hundred times as long."""
    with _engine_of(url).begin() as connection:
        connection.exec_driver_sql("SET session_replication_role = replica")  # no order among the tables to keep
        connection.exec_driver_sql("; ".join(str(table.delete()) for table in METADATA.tables.values()))


@pytest.fixture
def database_url(template: str, server_url: str | None, tmp_path: Path) -> str:
    """A fresh, migrated, empty database of this test's own."""
    if server_url is None:
        source = make_url(template).database
        assert source is not None
        shutil.copy(source, tmp_path / "steadfoot.db")
        return f"sqlite:///{tmp_path / 'steadfoot.db'}"
    _empty(template)
    return template


@pytest.fixture(scope="session")
def engines() -> Engines:
    """The engines of one test after the other."""
    return Engines()


@pytest.fixture
def database(database_url: str, engines: Engines) -> Iterator[Database]:
    """The test's database, open."""
    found = engines.lend(database_url)
    yield found
    found.close()


@pytest.fixture
def clock() -> StandingClock:
    """A clock that stands at START until told to move."""
    return StandingClock(START)


@pytest.fixture(scope="session")
def figures(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder of finished drawings for all tests: they are named by their content and take half a second each."""
    return tmp_path_factory.mktemp("figures")


@pytest.fixture
def app(database: Database, clock: StandingClock, tmp_path: Path, figures: Path) -> FastAPI:
    """The app on the test's database and clock."""
    settings = Settings(data_dir=tmp_path, public_url="https://steadfoot.test", figures_dir=figures)
    return ready_app(settings, database, clock)


@pytest.fixture
def house(app: FastAPI, clock: StandingClock) -> Iterator[House]:
    """A practice whose practitioner is signed in; it makes clients and phones."""
    with found_house(app, clock, "Thornwater Physical Therapy", "maren@thornwater.example") as found:
        yield found


@pytest.fixture
def other_house(app: FastAPI, clock: StandingClock) -> Iterator[House]:
    """A second practice in the same database, which must see nothing of the first."""
    with found_house(app, clock, "Far Valley Clinic", "someone@farvalley.example") as found:
        yield found
