"""Statuses and adherence through HTTP, with real sync calls."""

from datetime import date

from tests.features.monitoring.scenes import MONDAY, days, later, scene

FIRST_WEEK = (MONDAY, date(2026, 6, 7))


def statuses(answer):
    return [(one["status"], one["settled"]) for one in answer["sessions"]]


def test_before_the_phone_is_heard_nothing_is_called_missed(house):
    answer = scene(house).adherence(*FIRST_WEEK)
    assert statuses(answer) == [("not_heard", False)] * 3
    assert answer["by_session"] == {"prescribed": 3, "done": 0, "low": 0.0, "high": 1.0}
    assert answer["by_set"] == {"prescribed": 9, "done": 0, "low": 0.0, "high": 1.0}


def test_a_late_sync_turns_silence_into_what_was_done(house):
    here = scene(house)
    first, second = days(MONDAY, 0, 2)
    here.tick(first)
    here.finish(first)
    here.tick(second, sets=2)
    here.phone.sync()
    answer = here.adherence(*FIRST_WEEK)
    assert statuses(answer) == [("done", True), ("partly", True), ("missed", True)]
    assert answer["by_session"] == {"prescribed": 3, "done": 1, "low": 1 / 3, "high": 1 / 3}
    assert answer["by_set"] == {"prescribed": 9, "done": 5, "low": 5 / 9, "high": 5 / 9}
    done = answer["sessions"][0]
    assert (done["done_on"], done["effort"], done["minutes"], done["done_load"]) == ("2026-06-01", 5, 30, 150)
    assert (done["planned_load"], done["program_version"], done["sets_prescribed"]) == (150, 1, 3)


def test_a_session_done_on_another_day_counts_where_it_was_planned(house):
    here = scene(house)
    for turn in (1, 2, 3):
        body = {"planned_id": "2026-06-01.1", "prescription": "p1", "round": turn}
        here.phone.log("set_ticked", body, here.at(date(2026, 6, 4)))
    here.phone.sync()
    session = here.adherence(*FIRST_WEEK)["sessions"][0]
    assert (session["status"], session["date"], session["done_on"]) == ("done", "2026-06-01", "2026-06-04")


def test_ticked_in_part_and_then_silence_is_partly_and_not_settled(house, clock):
    here = scene(house)
    wednesday = date(2026, 6, 10)
    here.tick(wednesday, sets=1)
    here.phone.sync()
    later(house, clock, days=8)
    answer = here.adherence(wednesday, wednesday)
    assert statuses(answer) == [("partly", False)]
    assert (answer["by_session"]["low"], answer["by_session"]["high"]) == (0.0, 1.0)
    assert (answer["by_set"]["low"], answer["by_set"]["high"]) == (1 / 3, 1.0)


def test_a_running_window_is_open_and_not_yet_due(house):
    here = scene(house)
    here.phone.sync()
    answer = here.adherence(date(2026, 6, 8), date(2026, 6, 14))
    assert [one["status"] for one in answer["sessions"]] == ["open", "open", "to_come"]
    assert answer["by_session"] == {"prescribed": 0, "done": 0, "low": None, "high": None}


def test_ticks_that_the_plan_does_not_ask_for_count_for_nothing(house):
    here = scene(house)
    here.tick(MONDAY, sets=2)
    extra = {"planned_id": f"{MONDAY}.1", "prescription": "p1", "round": 9}
    here.phone.log("set_ticked", extra)
    here.phone.log("set_ticked", {**extra, "prescription": "gone", "round": 1})
    here.phone.sync()
    assert here.adherence(*FIRST_WEEK)["sessions"][0]["sets_done"] == 2


def test_a_session_is_judged_under_the_version_its_entries_name(house):
    here = scene(house)
    before = house.get(f"/clients/{here.client_id}/programs/current")["content"]
    wednesday = date(2026, 6, 10)
    for turn in (1, 2, 3):
        body = {"planned_id": f"{wednesday}.1", "prescription": "p1", "round": turn, "program_version": 1}
        here.phone.log("set_ticked", body)
    longer = {**before, "sessions": [{**before["sessions"][0], "rounds": 5}]}
    house.publish(here.client_id, longer)
    here.phone.sync()
    by_day = {one["date"]: one for one in here.adherence(wednesday, date(2026, 6, 12))["sessions"]}
    assert (by_day["2026-06-10"]["status"], by_day["2026-06-10"]["sets_prescribed"]) == ("done", 3)
    assert (by_day["2026-06-12"]["program_version"], by_day["2026-06-12"]["sets_prescribed"]) == (2, 5)


def test_the_default_span_is_the_last_28_days_of_the_client(house):
    answer = house.get(f"/clients/{scene(house).client_id}/adherence")
    assert (answer["from"], answer["to"]) == ("2026-05-14", "2026-06-10")


def test_a_span_turned_round_or_no_day_is_refused(house):
    path = f"/clients/{scene(house).client_id}/adherence"
    assert house.get(path, 422, **{"from": "2026-06-02", "to": "2026-06-01"})["code"] == "span"
    assert house.get(path, 422, **{"from": "0001-01-01"})["code"] == "validation"


def test_another_practice_sees_nothing(house, other_house):
    client_id = scene(house).client_id
    for path in ("adherence", "overview", "messages"):
        assert other_house.get(f"/clients/{client_id}/{path}", 404)["code"] == "not-found"
    other_house.get("/flags", 404, client_id=client_id)
    assert other_house.get("/caseload")["items"] == []
