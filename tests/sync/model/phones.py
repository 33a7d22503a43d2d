"""The real phone code in a child process: commands go in as lines of JSON, what pages ask of the network comes back."""

import json
import os
import shutil
import subprocess
import sys
from collections import deque
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from select import select
from typing import Any

FRONTEND = Path(__file__).parents[3] / "frontend"
_ANSWER_WITHIN_S = 30
Ask = dict[str, Any]
Answer = dict[str, Any]


class Failed(Exception):
    """A command ended with an error of the page; its name says which."""

    def __init__(self, name: str, message: str) -> None:
        super().__init__(f"{name}: {message}")
        self.name = name


def node() -> str:
    """Answer the node beside this Python, else any."""
    beside = Path(sys.executable).with_name("node")
    found = str(beside) if beside.exists() else shutil.which("node")
    assert found, "the phones need node: sh deploy/test.sh installs it"
    return found


class Phones:
    """A conductor's end of the wire."""

    def __init__(self, frontend: Path = FRONTEND) -> None:
        words = [node(), str(frontend / "tools" / "phones.mjs"), str(frontend)]
        environment = {**os.environ, "TZ": "UTC"}
        self._process = subprocess.Popen(
            words, cwd=frontend, stdin=subprocess.PIPE, stdout=subprocess.PIPE, bufsize=0, env=environment
        )
        self._unread = b""
        self._lately: deque[str] = deque(maxlen=12)
        self._last = 0
        self._done: dict[int, dict[str, Any]] = {}
        self._asked: list[Ask] = []
        self.network: Callable[[Ask], Answer] = lambda _ask: {"error": "TypeError"}

    def call(self, do: str, **words: Any) -> Any:
        """Have something done, and answer its result; what is asked of the network meanwhile goes to ``network``."""
        return self.result(self.begin(do, **words))

    def begin(self, do: str, **words: Any) -> int:
        """Have something begun; ``result`` waits for its end."""
        self._last += 1
        self._write({"call": self._last, "do": do, **words})
        return self._last

    def result(self, number: int) -> Any:
        """Answer what came of something begun.

        Raises:
            Failed: the page threw, or was killed.
        """
        while number not in self._done:
            if self._asked:
                self.reply(self._asked[0], self.network(self._asked.pop(0)))
            else:
                self._read()
        found = self._done.pop(number)
        if "error" in found:
            raise Failed(found["error"], found["message"])
        return found["value"]

    def asked_by(self, numbers: list[int]) -> list[Ask]:
        """Answer what some begun commands ask first; those that end without asking are passed over."""
        while len(self._asked) + sum(number in self._done for number in numbers) < len(numbers):
            self._read()
        found, self._asked = self._asked, []
        return found

    def reply(self, ask: Ask, answer: Answer) -> None:
        """Answer a page's question."""
        self._write({"reply": ask["fetch"], **answer})

    def _write(self, value: Any) -> None:
        assert self._process.stdin is not None
        line = json.dumps(value)
        self._lately.append(line[:300])
        self._process.stdin.write(line.encode() + b"\n")

    def _read(self) -> None:
        assert self._process.stdout is not None
        while b"\n" not in self._unread:
            ready, _, _ = select([self._process.stdout], [], [], _ANSWER_WITHIN_S)
            part = os.read(self._process.stdout.fileno(), 1 << 16) if ready else b""
            assert part, "the phones do not answer; lately: " + "\n".join(self._lately)
            self._unread += part
        line, _, self._unread = self._unread.partition(b"\n")
        self._lately.append(line[:300].decode())
        found = json.loads(line)
        if "fetch" in found:
            self._asked.append(found)
        else:
            self._done[found["done"]] = found

    def forget(self) -> None:
        """Throw every phone away, and what they still ask."""
        self.call("reset")
        self._done.clear()
        self._asked.clear()

    def close(self) -> None:
        """End the process."""
        assert self._process.stdin is not None
        assert self._process.stdout is not None
        self._process.kill()
        self._process.wait()
        self._process.stdin.close()
        self._process.stdout.close()


@contextmanager
def phones_from(frontend: Path = FRONTEND) -> Iterator[Phones]:
    """Phones that are gone at the end."""
    found = Phones(frontend)
    try:
        yield found
    finally:
        found.close()
