"""``steadfoot practice``: the first practice and practitioner, and letting in again who lost a way in."""

from pathlib import Path

import pyotp
import pytest
from fastapi.testclient import TestClient

from steadfoot.app import create_app
from steadfoot.core.settings import Settings
from tests.builders import API, PASSWORD
from tests.sync.commands import command

pytestmark = pytest.mark.server


def test_a_practice_is_founded_once_and_its_data_are_for_the_owner_only(tmp_path: Path) -> None:
    folder = tmp_path / "data"
    words = ("practice", "create", "Thornwater Physical Therapy", "--email", "maren@thornwater.example")
    done = command(folder, *words, "--time-zone", "Europe/Vienna", stdin=f"{PASSWORD}\n")
    assert (done.returncode, f"is founded (data in {folder})" in done.stdout) == (0, True), done.stderr
    assert folder.stat().st_mode & 0o077 == 0
    again = command(folder, *words, stdin=f"{PASSWORD}\n")
    assert (again.returncode, "already" in again.stderr) == (1, True)
    assert PASSWORD not in done.stdout + done.stderr + again.stdout + again.stderr


@pytest.mark.parametrize(
    ("words", "stdin", "said"),
    [
        (("--email", "maren@thornwater.example"), "short\n", "12 to 256"),
        (("--email", "maren@thornwater.example"), "", "12 to 256"),
        (("--email", "no address"), f"{PASSWORD}\n", "is no email address, such as"),
        (("--email", "a@b.example", "--time-zone", "Middle/Earth"), f"{PASSWORD}\n", "The time zone"),
    ],
)
def test_what_cannot_be_is_said_in_words(tmp_path: Path, words: tuple[str, ...], stdin: str, said: str) -> None:
    done = command(tmp_path / "data", "practice", "create", "Thornwater", *words, stdin=stdin)
    assert (done.returncode, "Traceback" in done.stderr) == (1, False)
    assert said in done.stderr.replace("\n", " ")


def test_who_cannot_get_in_any_more_is_let_in_again_by_who_runs_the_server(tmp_path: Path) -> None:
    folder, email = tmp_path / "data", "maren@thornwater.example"
    command(folder, "practice", "create", "Thornwater", "--email", email, stdin=f"{PASSWORD}\n")
    app = create_app(Settings(data_dir=folder, public_url="https://steadfoot.test"))
    desk = TestClient(app, base_url="https://testserver")
    assert desk.post(f"{API}/sign-in", json={"email": email, "password": PASSWORD}).status_code == 200
    secret = desk.post(f"{API}/account/totp").json()["secret"]
    desk.post(f"{API}/account/totp/activations", json={"code": pyotp.TOTP(secret).now()})
    new = "seven lakes and one pass"
    assert "signed out everywhere" in command(folder, "practice", "set-password", email, stdin=f"{new}\n").stdout
    assert desk.get(f"{API}/me").status_code == 401
    body = {"email": email, "password": new}
    assert desk.post(f"{API}/sign-in", json=body).json()["code"] == "second-factor-needed"
    assert command(folder, "practice", "reset-second-factor", email).returncode == 0
    assert desk.post(f"{API}/sign-in", json=body).status_code == 200
    unknown = command(folder, "practice", "reset-second-factor", "nobody@thornwater.example")
    assert (unknown.returncode, "Nobody signs in" in unknown.stderr) == (1, True)
    app.state.database.close()
