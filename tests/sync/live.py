"""A real uvicorn in a thread, on a test's own app: sockets and threads as in life, database and clock as in tests."""

import threading
from collections.abc import Iterator
from contextlib import contextmanager

import uvicorn
from fastapi import FastAPI

from steadfoot.core.heads import BoundedHeads
from tests.sync.server import free_port


@contextmanager
def listening(app: FastAPI) -> Iterator[str]:
    """Serve an app; yield its address. Errors of the app become replies, as they do in life."""
    port = free_port()
    own = uvicorn.Config(app, host="127.0.0.1", port=port, http=BoundedHeads, log_level="critical", lifespan="off")
    server = uvicorn.Server(own)
    thread = threading.Thread(target=server.run)
    thread.start()
    try:
        while not server.started:
            assert thread.is_alive(), "the server ended by itself"
            threading.Event().wait(0.01)
        yield f"http://127.0.0.1:{port}"
    finally:
        server.should_exit = True
        thread.join()
