"""The long run: ``python -m tests.made_up --examples 200``.

Ends with 1 if any answer was at fault, with its request, or if anything was never done, with its name.
"""

import argparse
import sys
import tempfile
from datetime import date
from functools import partial
from pathlib import Path
from random import Random

from fastapi.testclient import TestClient

from steadfoot.app import create_app
from steadfoot.core.database import Database
from steadfoot.core.settings import Settings
from steadfoot.demo.generate import PASSWORD, invent
from steadfoot.demo.people import EMAIL
from steadfoot.migrations.upgrade import upgrade
from tests.builders import API, House
from tests.conftest import START, StandingClock
from tests.features.access import furnished
from tests.made_up.judging import BEYOND, try_out
from tests.made_up.world import World, world_of
from tests.quick import quick_passwords_now


def _demo_world(folder: Path) -> World:
    """A fresh demo, to whose people one is added who has everything that a path can name."""
    database, clock = Database(f"sqlite:///{folder / 'demo.db'}"), StandingClock(START)
    upgrade(database)
    invented = invent(database, START, Random(1), lambda _: None)
    settings = Settings(data_dir=folder, public_url="https://steadfoot.test", draw_ahead="off")
    app = create_app(settings, database, clock)
    http = TestClient(app, base_url="https://testserver")
    answer = http.post(f"{API}/sign-in", json={"email": EMAIL, "password": PASSWORD})
    assert answer.is_success, answer.text
    house = House(http, app, clock, invented.access.practice_id, invented.access.practitioner_id)
    return world_of(furnished(house), tuple(invented.client_ids.values()))


def main() -> int:
    """Ask everything; print a line for each operation and asker with its faults, then what was never done."""
    asked = argparse.ArgumentParser(description=__doc__)
    asked.add_argument("--examples", type=int, default=200, help="for each operation and each who may ask it")
    asked.add_argument("--seed", type=int, default=date.today().toordinal())
    asked.add_argument("--only", default="", help="operations with this in their name")
    given = asked.parse_args()
    with quick_passwords_now(), tempfile.TemporaryDirectory() as folder:
        world = _demo_world(Path(folder))
        run = try_out(world, given.examples, given.seed, given.only, partial(print, flush=True), swept=True)
        world.close()
    never = run.never_done()
    for name in never:
        print(f"never done: {name}")
    for name, why in BEYOND.items():
        print(f"never done, and need not be: {name}: {why}")
    print(f"seed {given.seed}: {run.answers()} answers, {len(run.faults)} faults, {len(never)} operations never done")
    return 1 if run.faults or never else 0


if __name__ == "__main__":
    sys.exit(main())
