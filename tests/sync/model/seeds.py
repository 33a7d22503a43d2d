"""Seeded bugs: defects put into a copy of the sources on purpose; a suite that catches none proves nothing."""

import json
import os
import shutil
import subprocess
import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

ROOT = Path(__file__).parents[3]
FOLDER = Path(__file__).parents[1] / "seeded"
_CAUGHT_BY = "Caught by: "


@dataclass(frozen=True)
class Seed:
    """One bug: what it is, the story that has to catch it, and the patch."""

    name: str
    why: str
    story: str
    patch: str

    @property
    def of_the_phone(self) -> bool:
        """Whether it is in the phone's code."""
        return "+++ b/frontend/" in self.patch


def seeds() -> dict[str, Seed]:
    """Answer every seeded bug by its name."""
    found = {}
    for file in sorted(FOLDER.glob("*.patch")):
        why, caught_by, _, patch = file.read_text(encoding="utf-8").split("\n", 3)
        found[file.stem] = Seed(file.stem, why, caught_by.removeprefix(_CAUGHT_BY), patch)
    return found


def planted(seed: Seed, folder: Path) -> Path:
    """Answer a copy of the sources that has the bug."""
    skipped = shutil.ignore_patterns("static", "__pycache__", "node_modules")
    part = "frontend" if seed.of_the_phone else "backend"
    shutil.copytree(ROOT / part, folder / part, ignore=skipped)
    if seed.of_the_phone:
        (folder / part / "node_modules").symlink_to((ROOT / part / "node_modules").resolve())
    _apply(seed, folder)
    return folder / part


def _apply(seed: Seed, folder: Path) -> None:
    """Apply a patch by its text: wherever the lines are, they are there once."""
    for part in seed.patch.split("--- a/")[1:]:
        name, *hunks = part.split("\n@@ ")
        file = folder / name.split("\n", 1)[0]
        text = file.read_text(encoding="utf-8")
        for hunk in hunks:
            lines = [line for line in hunk.split("\n")[1:] if line]
            old = "\n".join(line[1:] for line in lines if line[0] in " -")
            new = "\n".join(line[1:] for line in lines if line[0] in " +")
            assert text.count(old) == 1, f"{seed.name} does not fit {file.name} any more: write it anew"
            text = text.replace(old, new)
        file.write_text(text, encoding="utf-8")


@contextmanager
def nursery() -> Iterator[Callable[[Seed, Path, Path], tuple[int, str]]]:
    """Answer what tells a bug's story by a planted server, in a process of its own: exit code and what it said."""
    words = [sys.executable, "-m", "tests.sync.model.nursery"]
    environment = {**os.environ, "PYTHONPATH": str(ROOT)}
    pipe = subprocess.PIPE
    with subprocess.Popen(words, cwd=ROOT, env=environment, stdin=pipe, stdout=pipe, text=True) as parent:

        def tell(seed: Seed, folder: Path, begin: Path) -> tuple[int, str]:
            ask = {"backend": str(planted(seed, folder)), "story": seed.story, "begin": str(begin)}
            assert parent.stdin is not None
            assert parent.stdout is not None
            parent.stdin.write(json.dumps(ask) + "\n")
            parent.stdin.flush()
            found = json.loads(parent.stdout.readline())
            return found["code"], found["words"]

        yield tell
        parent.communicate()
