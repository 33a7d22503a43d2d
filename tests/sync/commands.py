"""Commands of the command line, each in a process of its own, forked by a parent that has everything imported.

Importing takes several times as long as what most commands do. That ``steadfoot`` also starts by itself is tried by
every server that the tests start.
"""

import atexit
import gc
import json
import os
import signal
import subprocess
import sys
import tempfile
import traceback
from functools import cache
from pathlib import Path
from typing import Any

from tests.sync.server import environment

_ROOT = Path(__file__).parents[2]
_AT_MOST_S = 60


def command(folder: Path, *words: str, stdin: str = "") -> "subprocess.CompletedProcess[str]":
    """Run a command on a data folder to its end."""
    with tempfile.TemporaryDirectory() as place:
        files = [Path(place) / name for name in ("stdin", "stdout", "stderr")]
        files[0].write_text(stdin)
        ask = {"words": words, "environment": environment(folder), "files": [str(file) for file in files]}
        code = _asked(ask)
        return subprocess.CompletedProcess(words, code, files[1].read_text(), files[2].read_text())


def _asked(ask: dict[str, Any]) -> int:
    parent = _parent()
    assert parent.stdin is not None
    assert parent.stdout is not None
    parent.stdin.write(json.dumps(ask) + "\n")
    parent.stdin.flush()
    return int(parent.stdout.readline())


@cache
def _parent() -> "subprocess.Popen[str]":
    words = [sys.executable, "-m", "tests.sync.commands"]
    path = os.pathsep.join((str(_ROOT / "backend"), os.environ.get("PYTHONPATH", "")))
    pipe = subprocess.PIPE
    found = subprocess.Popen(
        words, cwd=_ROOT, env={**os.environ, "PYTHONPATH": path}, stdin=pipe, stdout=pipe, text=True
    )
    atexit.register(found.communicate)
    return found


def _become(ask: dict[str, Any]) -> int:
    """Run the command with its own input, output and environment; what hangs is ended by the alarm."""
    from steadfoot import cli

    signal.alarm(_AT_MOST_S)
    sys.stdin, sys.stdout, sys.stderr = map(open, ask["files"], "rww")
    for number, file in enumerate((sys.stdin, sys.stdout, sys.stderr)):
        os.dup2(file.fileno(), number)
    os.environ.clear()
    os.environ.update(ask["environment"])
    sys.argv = ["steadfoot", *ask["words"]]
    try:
        cli.main()
    except SystemExit as end:
        return int(end.code or 0)
    except BaseException:  # a child must never go on as its parent  # noqa: BLE001
        traceback.print_exc()
        return 1
    return 0


def _in_a_child(ask: dict[str, Any]) -> int:
    child = os.fork()
    if child == 0:
        code = _become(ask)
        sys.stdout.flush()
        sys.stderr.flush()
        os._exit(code)  # taking down what the parent imported would take longer than the command
    return os.waitstatus_to_exitcode(os.waitpid(child, 0)[1])


def main() -> None:
    """Fork for each line that comes, and answer its exit code."""
    from steadfoot import backups, cli, custodian, founding, operations, serving  # noqa: F401
    from steadfoot.migrations import upgrade  # noqa: F401

    gc.freeze()
    for line in sys.stdin:
        print(_in_a_child(json.loads(line)), flush=True)


if __name__ == "__main__":
    main()
