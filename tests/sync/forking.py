"""A parent that has everything imported and forks a server each time it is told to: a start takes a tenth of a second.

``python -m tests.sync.forking PORT`` with the data folder in the environment. Each child opens the database and serves
as ``steadfoot serve`` does; it is a process of its own, and dies of a kill like one.
"""

import os
import signal
import sys

from steadfoot import serving
from steadfoot.app import create_app
from steadfoot.core.database import Database
from steadfoot.wiring import settings_with


def _serve(port: int) -> None:
    signal.signal(signal.SIGCHLD, signal.SIG_DFL)
    settings = settings_with("127.0.0.1", port)
    serving.serve(settings, serving.open_database(settings))


def main(port: int) -> None:
    """Fork a server for each line that comes, and answer its process id."""
    create_app(settings_with("127.0.0.1", port), Database("sqlite://")).openapi()  # makes ready what every child needs
    signal.signal(signal.SIGCHLD, signal.SIG_IGN)  # the dead are nobody's to wait for
    for _ in sys.stdin:
        child = os.fork()
        if child == 0:
            _serve(port)
            os._exit(0)
        print(child, flush=True)


if __name__ == "__main__":
    main(int(sys.argv[1]))
