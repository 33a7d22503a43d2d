"""Findings and sheets that are built anew equal those that were kept up, whatever came in whatever order."""

from datetime import timedelta
from random import Random

import pytest
from sqlmodel import select

from steadfoot.checkins import service as checkins
from steadfoot.monitoring import service
from steadfoot.monitoring.tables import ClientSheet, Finding
from tests.features.monitoring.scenes import MONDAY, scene


def derived(database):
    with database.read() as session:
        findings = session.exec(select(Finding).order_by(Finding.id)).all()
        sheets = session.exec(select(ClientSheet).order_by(ClientSheet.client_id)).all()
        return [row.model_dump() for row in (*findings, *sheets)]


def random_entries(here, chance):
    for _ in range(40):
        day = MONDAY + timedelta(days=chance.randrange(10))
        match chance.randrange(5):
            case 0:
                here.tick(day, sets=chance.randrange(1, 4))
            case 1:
                here.finish(day, effort=chance.randrange(3, 10))
            case 2:
                here.hurt(day, chance.randrange(11), chance.choice(("before", "during", "after", "next_morning")))
            case 3:
                symptom = chance.choice(("fever", "calf_swelling"))
                here.phone.log("symptom_reported", {"symptom": symptom}, here.at(day))
            case _:
                entry = here.hurt(day, 9)
                here.phone.log("entry_withdrawn", {"event_id": entry["id"]}, here.at(day))


@pytest.mark.parametrize("seed", range(4))
def test_rebuilt_equals_kept_up_in_any_order(house, database, seed):
    here, chance = scene(house), Random(seed)
    random_entries(here, chance)
    events = list(here.phone.events)
    chance.shuffle(events)
    while events:
        cut = chance.randrange(1, 12)
        assert here.phone.send(events[:cut]).status_code == 200
        events = events[cut:]
    house.get("/flags")  # whoever reads finds all of it looked at
    kept = derived(database)
    assert len(kept) > 2
    with database.write() as session:
        for row in [*session.exec(select(Finding)), *session.exec(select(ClientSheet))]:
            session.delete(row)
    with database.write() as session:
        checkins.rebuild(session, house.practice_id, here.client_id)
        service.refresh_findings(session, house.practice_id, here.client_id)
    assert derived(database) == kept
