"""A real server with one practice, for measurements that are not run by pytest."""

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from steadfoot.core.settings import Settings
from steadfoot.founding import found_practice
from tests.e2e.conftest import PASSWORD, Server, free_port, running, signed_in

EMAIL = "maren@thornwater.example"


@contextmanager
def practice_server(folder: Path) -> Iterator[Server]:
    """Found the practice in a folder and serve it until the block ends."""
    zone = "Europe/Vienna"
    found_practice(Settings(data_dir=folder), "Thornwater Physical Therapy", EMAIL, "Maren Brandvold", zone, PASSWORD)
    with running(folder, free_port()) as address, signed_in(address, {"email": EMAIL, "password": PASSWORD}) as http:
        yield Server(address, EMAIL, http)
