"""What an operator is told to read and type is there, and does what it says."""

import re
import shlex
import subprocess
import sys
from pathlib import Path

import pytest
import typer

from steadfoot.cli import app
from tests.builders import PASSWORD
from tests.sync.server import environment

ROOT = Path(__file__).parents[3]
DOCUMENTS = [ROOT / "README.md", ROOT / "DEVELOPERS.md", *sorted((ROOT / "deploy").rglob("*.md"))]
SCRIPTS = [path for path in (ROOT / "deploy").rglob("*") if path.suffix in {".sh", ".yaml", ".service", ".timer"}]
IDS = {"ids": lambda path: str(path.relative_to(ROOT))}


def _named_files(text: str) -> set[str]:
    """Answer what begins with a folder of the repository and has an ending."""
    return set(re.findall(r"(?<![\w/.-])((?:deploy|backend|frontend|tests)/[\w./-]*\w\.[a-z]+)\b", text))


@pytest.mark.parametrize("path", [*DOCUMENTS, *SCRIPTS], **IDS)
def test_a_file_that_is_named_is_there(path: Path) -> None:
    made = {"frontend/src/generated/api.ts"}
    named = _named_files(path.read_text(encoding="utf-8")) - made
    assert [name for name in sorted(named) if not (ROOT / name).exists()] == []


@pytest.mark.parametrize("path", [path for path in DOCUMENTS if path.name != "scale.md"], **IDS)
def test_a_command_that_is_named_exists(path: Path) -> None:
    group = typer.main.get_command(app)
    typed = re.findall(r"(?:`|\.venv/bin/|/opt/steadfoot/bin/)steadfoot ([a-z-]+)", path.read_text(encoding="utf-8"))
    assert typed, "this finds nothing any more"
    assert set(typed) <= set(group.commands)  # type: ignore[attr-defined]


def _the_real_thing() -> list[list[str]]:
    text = (ROOT / "README.md").read_text(encoding="utf-8")
    block = re.search(r"## The real thing\n+```sh\n(.*?)```", text, re.S)
    assert block is not None
    lines = [shlex.split(line, comments=True) for line in block[1].splitlines()]
    assert all(line[0] == ".venv/bin/steadfoot" for line in lines)
    return [line[1:] for line in lines]


@pytest.mark.server
def test_the_readmes_first_commands_work_as_printed_in_an_empty_folder(tmp_path: Path) -> None:
    commands = [words for words in _the_real_thing() if words != ["serve"]]
    assert [words[0] for words in commands] == ["practice", "backup"]
    for words in commands:
        done = subprocess.run(
            [sys.executable, "-m", "steadfoot.cli", *words],
            env={key: value for key, value in environment(tmp_path).items() if key != "STEADFOOT_DATA_DIR"},
            cwd=tmp_path,
            input=f"{PASSWORD}\n",
            capture_output=True,
            text=True,
            check=False,
        )
        assert done.returncode == 0, done.stderr
