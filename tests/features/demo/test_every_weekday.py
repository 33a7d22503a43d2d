"""The invented practice, made on each day of the week."""

from datetime import timedelta
from random import Random

import pytest

from steadfoot.core.clock import local_date
from steadfoot.demo import generate
from steadfoot.demo.people import PEOPLE, ZONE
from steadfoot.programs.content import Circuit
from steadfoot.programs.service import versions_of


@pytest.mark.parametrize("days", range(7))
def test_whoever_pairs_a_phone_has_a_circuit_to_do_today(database, app, clock, monkeypatch, days):
    newcomers = tuple(one for one in PEOPLE if not one.paired and one.template)
    monkeypatch.setattr(generate, "PEOPLE", newcomers)
    now = clock() + timedelta(days=days)
    invented = generate.invent(database, now, Random(7), lambda _: None)
    with database.read() as session:
        for person in newcomers:
            version = versions_of(session, invented.access.practice_id, invented.client_ids[person.name])[0]
            circuits = {one.key for one in version.content.sessions if isinstance(one, Circuit)}
            today = [day.session for day in version.content.days if day.date == local_date(now, ZONE)]
            assert circuits & set(today)
            offered = {
                each.key: list(each.alternatives)
                for one in version.content.sessions
                if isinstance(one, Circuit) and one.key in today
                for each in one.prescriptions
                if each.alternatives
            }
            assert offered == {key: [one] for key, one in person.instead.items()}
            assert version.content.goal.date > max(day.date for day in version.content.days)
