"""A parent that has everything imported but Steadfoot itself, and forks a process for each planted server.

Lines of JSON come in: where the copy is, which story to tell, what it begins with. Importing what others wrote takes
five times as long as the story.
"""

import importlib
import json
import os
import sys
import traceback
import warnings
from typing import Any

_OF_OTHERS = (
    "alembic.command",
    "fastapi.testclient",
    "httpx",
    "hypothesis.stateful",
    "numpy",
    "prometheus_client",
    "pwdlib.hashers.argon2",
    "pydantic_settings",
    "pytest",
    "segno",
    "sqlmodel",
    "typst",
    "uvicorn",
)


def _told(ask: dict[str, str]) -> int:
    """Tell the story with the copy; answer its exit code."""
    sys.path.insert(0, ask["backend"])
    tell = importlib.import_module("tests.sync.model.tell")
    found: int = tell.main(ask["story"], ask["begin"])
    return found


def _child(ask: dict[str, str], out: int) -> None:
    os.dup2(out, sys.stdout.fileno())
    code = 1
    try:
        code = _told(ask)
    except BaseException:  # a child must never go on as its parent  # noqa: BLE001
        traceback.print_exc(file=sys.stdout)
    sys.stdout.flush()
    os._exit(code)


def _in_a_child(ask: dict[str, str]) -> dict[str, Any]:
    read, write = os.pipe()
    pid = os.fork()
    if pid == 0:
        _child(ask, write)
    os.close(write)
    with os.fdopen(read) as said:
        words = said.read()
    return {"code": os.waitstatus_to_exitcode(os.waitpid(pid, 0)[1]), "words": words}


def main() -> None:
    """Fork for each line that comes."""
    warnings.simplefilter("ignore")
    for name in _OF_OTHERS:
        importlib.import_module(name)
    for line in sys.stdin:
        print(json.dumps(_in_a_child(json.loads(line))), flush=True)


if __name__ == "__main__":
    main()
