"""``steadfoot practice create``: the first practice and practitioner, or a clear word why not."""

from pathlib import Path

import pytest

from tests.builders import PASSWORD
from tests.sync.server import command

pytestmark = pytest.mark.server


def test_a_practice_is_founded_once_and_its_data_are_for_the_owner_only(tmp_path: Path) -> None:
    folder = tmp_path / "data"
    words = ("practice", "create", "Thornwater Physical Therapy", "--email", "maren@thornwater.example")
    done = command(folder, *words, "--time-zone", "Europe/Vienna", stdin=f"{PASSWORD}\n")
    assert (done.returncode, "is founded" in done.stdout) == (0, True), done.stderr
    assert folder.stat().st_mode & 0o077 == 0
    again = command(folder, *words, stdin=f"{PASSWORD}\n")
    assert (again.returncode, "already" in again.stderr) == (1, True)
    assert PASSWORD not in done.stdout + done.stderr + again.stdout + again.stderr


@pytest.mark.parametrize(
    ("words", "stdin", "said"),
    [
        (("--email", "maren@thornwater.example"), "short\n", "12 to 256"),
        (("--email", "maren@thornwater.example"), "", "12 to 256"),
        (("--email", "no address"), f"{PASSWORD}\n", "The address"),
        (("--email", "a@b.example", "--time-zone", "Middle/Earth"), f"{PASSWORD}\n", "The time zone"),
    ],
)
def test_what_cannot_be_is_said_in_words(tmp_path: Path, words: tuple[str, ...], stdin: str, said: str) -> None:
    done = command(tmp_path / "data", "practice", "create", "Thornwater", *words, stdin=stdin)
    assert (done.returncode, "Traceback" in done.stderr) == (1, False)
    assert said in done.stderr.replace("\n", " ")
