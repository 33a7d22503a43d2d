"""Load by day and week through HTTP."""

from datetime import date

import pytest

from steadfoot.rules import load as rules
from tests.features.monitoring.scenes import MONDAY, days, later, scene


def load(here):
    return here.house.get(f"/clients/{here.client_id}/load")


def test_before_the_phone_is_heard_there_is_no_day_and_no_number(house):
    answer = load(scene(house))
    assert (answer["days"], answer["weekly"], answer["through"], answer["weekly_load"]) == ([], [], None, None)
    assert answer["caution"] == rules.CAUTION


def test_loads_stand_on_the_day_they_were_done_and_rest_is_zero(house, clock):
    here = scene(house)
    here.tick(MONDAY)
    here.finish(MONDAY, effort=6, minutes=40)
    moved = {"planned_id": "2026-06-03.1", "minutes": 30, "effort": 5}
    here.phone.log("session_finished", moved, here.at(date(2026, 6, 4)))
    walk = {"distance_km": 9, "ascent_m": 400, "descent_m": 400, "minutes": 90, "pack_kg": 4, "effort": 5}
    here.phone.log("walk_logged", walk, here.at(date(2026, 6, 8)))
    here.phone.sync()
    later(house, clock, days=3)
    answer = load(here)
    daily = [240, 0, 0, 150, 0, 0, 0, 450, 0, 0]
    assert [one["load"] for one in answer["days"]] == daily
    assert (answer["days"][0]["day"], answer["through"]) == ("2026-06-01", "2026-06-10")
    assert answer["weekly"] == [{"starts_on": "2026-06-01", "load": 390}, {"starts_on": "2026-06-08", "load": 450}]
    found = rules.load(daily)
    for name in ("weekly_load", "monotony", "strain", "ewma_7", "ewma_28"):
        assert answer[name] == pytest.approx(getattr(found, name))


@pytest.mark.parametrize(("start", "known"), [(4, True), (5, False)])
def test_numbers_need_seven_days(house, start, known):
    from tests.builders import content
    from tests.features.monitoring.scenes import Scene

    (first,) = days(date(2026, 5, 31), start)
    client_id = house.new_client()
    house.publish(client_id, content(first, 6, weekdays=tuple(range(7))))
    here = Scene(house, client_id, house.pair(client_id))
    here.phone.sync()
    answer = load(here)
    assert (answer["weekly_load"] is not None) is known
    assert answer["monotony"] is None  # all days alike


def test_each_number_says_what_it_can_and_cannot_tell(house):
    answer = load(scene(house))
    words = answer["words"]
    assert [one["code"] for one in words] == ["weekly_load", "monotony", "strain", "ewma_7", "ewma_28"]
    assert {one["code"] for one in words} <= set(answer)
    assert [one["about"] for one in words][:3] == ["Weekly load", "Monotony", "Strain"]
    for one in words:
        assert one["can_tell"]
        assert one["cannot_tell"]
        assert one["source"] in ("foster-1998", "foster-2001", "williams-2017")


def test_another_practice_sees_no_load(house, other_house):
    here = scene(house)
    assert other_house.get(f"/clients/{here.client_id}/load", 404)["code"] == "not-found"
