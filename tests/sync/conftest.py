"""What every sync test shares: cheap passwords, fresh limits, and a house on a file that a real server can open."""

import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest

from steadfoot.app import create_app
from steadfoot.core.database import Database
from steadfoot.core.settings import Settings
from steadfoot.migrations.upgrade import upgrade
from tests.builders import House, found_house
from tests.conftest import StandingClock
from tests.quick import fresh_limits, quick_passwords
from tests.sync.laboratory import Laboratory, open_laboratory

__all__ = ["fresh_limits", "quick_passwords"]


@pytest.fixture(scope="session")
def sqlite_template(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A migrated SQLite file, also in a run on PostgreSQL: what is killed and restored here is the file."""
    file = tmp_path_factory.mktemp("sqlite") / "template.db"
    database = Database(f"sqlite:///{file}")
    upgrade(database)
    database.close()
    return file


@pytest.fixture
def sqlite_house(sqlite_template: Path, clock: StandingClock, tmp_path: Path) -> Iterator[House]:
    """A house on ``tmp_path / "steadfoot.db"``, the file that ``steadfoot serve`` opens in that data folder."""
    shutil.copy(sqlite_template, tmp_path / "steadfoot.db")
    database = Database(f"sqlite:///{tmp_path / 'steadfoot.db'}")
    app = create_app(Settings(data_dir=tmp_path, public_url="https://steadfoot.test"), database, clock)
    with found_house(app, clock, "Thornwater Physical Therapy", "maren@thornwater.example") as house:
        yield house
    database.close()


@pytest.fixture
def on_file(sqlite_house: House) -> Laboratory:
    """A client with a program and three phones, in a file that nothing has open any more."""
    found = open_laboratory(sqlite_house)
    found.phones.append(sqlite_house.pair(found.client_id))
    sqlite_house.app.state.database.close()
    return found
