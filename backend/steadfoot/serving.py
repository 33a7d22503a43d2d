"""Starts the server on one database: one process, since live pages and SQLite both live in it."""

import gc
import logging
import os
import socket
import subprocess
import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import time
from pathlib import Path

import uvicorn
from fastapi import FastAPI
from sqlalchemy import make_url

from steadfoot.app import create_app
from steadfoot.core import logs
from steadfoot.core.database import Database
from steadfoot.core.heads import BoundedHeads
from steadfoot.core.production import mistyped, weaknesses
from steadfoot.core.settings import Settings
from steadfoot.custody import service as custody
from steadfoot.custody.nightly import nightly as nights_work
from steadfoot.installation.nightly import nightly as nightly_backup
from steadfoot.migrations.upgrade import upgrade

_log = logging.getLogger(__name__)
_STOP_WITHIN_S = 30
_HELPERS_END_WITHIN_S = 5
_ONE_CORE = {"OPENBLAS_NUM_THREADS": "1"}


class PortInUse(Exception):
    """Something else listens where the server should."""


class NoDatabase(Exception):
    """What a command is for is not there; the message says where it was looked for."""


def free_port(host: str, port: int) -> None:
    """Say early, in plain words, that a port is taken.

    Raises:
        PortInUse: it is.
    """
    with socket.socket(socket.AF_INET6 if ":" in host else socket.AF_INET) as probe:
        probe.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        try:
            probe.bind((host, port))
        except OSError as error:
            raise PortInUse(f"Port {port} on {host} is in use or not allowed; choose another with --port.") from error


def open_database(settings: Settings) -> Database:
    """Answer the settings' database, migrated. The data folder is made, for its owner only."""
    Path(settings.data_dir).mkdir(parents=True, exist_ok=True, mode=0o700)
    database = Database(settings.database(), settings.pool_size)
    upgrade(database)
    custody.apply_again(database, settings.erasures())  # a backup that was put back may know who was erased since
    return database


def insist_on_database(settings: Settings) -> None:
    """Refuse where the settings' database would only be begun: a command was given in another folder than the server's.

    Raises:
        NoDatabase: there is none.
    """
    url = make_url(settings.database())
    if url.get_backend_name() == "sqlite" and not Path(url.database or "").is_file():
        raise NoDatabase(f"There is no database at {url.database}. STEADFOOT_DATA_DIR names the server's data folder.")


def open_existing(settings: Settings) -> Database:
    """Answer the settings' database, migrated.

    Raises:
        NoDatabase: there is none.
    """
    insist_on_database(settings)
    return open_database(settings)


class _Server(uvicorn.Server):
    """Ends live pages' streams first: they never end by themselves and would hold up the stop."""

    def __init__(self, config: uvicorn.Config, on_stop: Callable[[], None]) -> None:
        super().__init__(config)
        self._on_stop = on_stop

    async def shutdown(self, sockets: list[socket.socket] | None = None) -> None:
        self._on_stop()
        await super().shutdown(sockets)


@contextmanager
def _drawing_ahead(settings: Settings) -> Iterator[None]:
    """Let another process fill the folder of drawings meanwhile: in this one it would slow every answer."""
    if settings.draw_ahead == "off":
        yield
        return
    command = [sys.executable, "-m", "steadfoot.exercises.ahead", str(settings.figures())]
    with subprocess.Popen(command, env={**os.environ, **_ONE_CORE}) as process:  # noqa: S603  our own module
        try:
            yield
        finally:
            process.terminate()


def _set_aside_what_stays() -> None:
    """Have the garbage collector pass over the modules and the app: looking through them holds every answer up."""
    gc.collect()
    gc.freeze()


def _config(app: FastAPI, settings: Settings) -> uvicorn.Config:
    """Forwarded headers count only from the proxies that the settings name: anybody can write one."""
    return uvicorn.Config(
        app,
        host=settings.host,
        port=settings.port,
        http=BoundedHeads,
        log_config=None,
        access_log=False,
        timeout_graceful_shutdown=_STOP_WITHIN_S,
        server_header=False,
        proxy_headers=bool(settings.trusted_proxies),
        forwarded_allow_ips=settings.trusted_proxies or None,
    )


@contextmanager
def _looked_after(app: FastAPI, settings: Settings) -> Iterator[None]:
    """Do each night's work and a backup, and look at the public address now and then, while the server runs."""
    clock = app.state.clock
    helpers = [app.state.installation.lookout, nights_work(app.state.database, settings.erasures(), clock)]
    if settings.backup_at != "off" and app.state.database.is_sqlite:
        at = time.fromisoformat(settings.backup_at)
        helpers.append(nightly_backup(settings.backups(), at, clock))
    for helper in helpers:
        helper.start()
    try:
        yield
    finally:
        for helper in helpers:
            helper.close()
        for helper in helpers:
            helper.join(_HELPERS_END_WITHIN_S)


def serve(settings: Settings, database: Database) -> None:
    """Serve until stopped; answers under way are finished first."""
    logs.configure(settings.log_level)
    for sentence in (*mistyped(os.environ), *weaknesses(settings)):
        _log.warning(sentence)
    app = create_app(settings, database)
    _set_aside_what_stays()
    with _drawing_ahead(settings), _looked_after(app, settings):
        _Server(_config(app, settings), app.state.pulse.close).run()
