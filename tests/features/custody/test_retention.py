"""How long records are kept: the practice says it, the job names who is due, and nothing is erased by itself."""

from pathlib import Path

import pytest

from steadfoot.core.database import Database
from steadfoot.custody import nightly, service
from tests.builders import API, PASSWORD, House
from tests.conftest import StandingClock
from tests.features.audit.rows import rows as log_rows


def _years_on(house: House, clock: StandingClock, years: float) -> None:
    clock.forward(days=365.25 * years)
    house.http.post(f"{API}/sign-in", json={"email": "maren@thornwater.example", "password": PASSWORD})


def _archived(house: House, name: str) -> str:
    client_id = house.new_client(name)
    house.http.patch(f"{API}/clients/{client_id}", json={"archived": True})
    return client_id


def test_nobody_has_chosen_at_first_and_nothing_is_due_however_long_it_was(house: House, clock: StandingClock) -> None:
    _archived(house, "Emil Tarrow")
    _years_on(house, clock, 60)
    found = house.get("/retention")
    assert (found["chosen_at"], found["years"], found["due"]) == (None, None, [])


def test_an_archived_record_is_due_after_the_years_chosen_and_is_still_there(
    house: House, clock: StandingClock, database: Database, tmp_path: Path
) -> None:
    emil = _archived(house, "Emil Tarrow")
    house.new_client("Ida Falk")
    house.http.put(f"{API}/retention", json={"years": 10})
    _years_on(house, clock, 9.99)
    assert house.get("/retention")["due"] == []
    _years_on(house, clock, 0.02)
    (due,) = house.get("/retention")["due"]
    assert (due["client_id"], due["due_since"][:10]) == (emil, "2036-06-10")
    night = nightly.run(database, tmp_path / "erasures.jsonl", clock.now)
    assert (night.due, night.erased) == (1, 0)
    house.get(f"/clients/{emil}")
    house.post(f"/clients/{emil}/erasure", {"name": "Emil Tarrow", "when": "later"})
    assert house.get("/retention")["due"] == [], "asked for: it is on the other list"


def test_until_somebody_decides_is_a_choice_and_nothing_is_ever_due(house: House, clock: StandingClock) -> None:
    _archived(house, "Emil Tarrow")
    house.http.put(f"{API}/retention", json={"years": None})
    _years_on(house, clock, 80)
    found = house.get("/retention")
    assert found["chosen_at"] is not None
    assert found["due"] == []


@pytest.mark.parametrize("body", [{}, {"years": 0}, {"years": 101}, {"years": "10"}, {"years": True}, {"years": 2.5}])
def test_a_choice_must_be_said_and_must_make_sense(house: House, body: dict[str, object]) -> None:
    assert house.http.put(f"{API}/retention", json=body).status_code == 422
    assert house.get("/retention")["chosen_at"] is None


def test_a_record_archived_on_a_leap_day_is_due_on_the_first_of_march(clock: StandingClock) -> None:
    leap = clock.now.replace(year=2028, month=2, day=29)
    assert service._years_on(leap, 10).date().isoformat() == "2038-03-01"
    assert service._years_on(leap, 4).date().isoformat() == "2032-02-29"


def test_a_night_verifies_the_log_says_so_in_it_and_ends_dead_sessions(
    house: House, clock: StandingClock, database: Database, tmp_path: Path
) -> None:
    clock.forward(hours=13)
    night = nightly.run(database, tmp_path / "erasures.jsonl", clock.now)
    assert all(one.broken_at is None for one in night.verdicts)
    last = log_rows(database, house.practice_id)[-1]
    assert (last["action"], last["outcome"], last["actor_kind"]) == ("verifyAudit", "done", "server")
    assert house.http.get(f"{API}/me").status_code == 401


def test_the_next_night_begins_at_its_hour(clock: StandingClock) -> None:
    at = clock.now.replace(hour=nightly.HOUR, minute=0)
    assert nightly.until_next(at) == 24 * 3600
    assert nightly.until_next(at.replace(hour=nightly.HOUR - 1)) == 3600
