"""Whom to call first, through HTTP."""

from datetime import date

import pytest
from sqlalchemy import event

from tests.features.monitoring.scenes import MONDAY, days, later, scene

TUESDAY = date(2026, 6, 9)


def test_an_empty_practice_has_an_empty_caseload(house):
    answer = house.get("/caseload")
    assert (answer["items"], answer["today"]) == ([], "2026-06-10")
    assert answer["headline"] == {"people": 0, "need_you": 0, "silent": 0}


def test_the_order_goes_by_told_reasons(house, clock):
    house.new_client("Ada New")
    fine, silent, missed, sore, urgent = (scene(house, name) for name in ("Fia", "Sil", "Mia", "Sor", "Urs"))
    for day in days(MONDAY, 0, 2, 4):
        silent.tick(day)
    silent.phone.sync()
    later(house, clock, days=5)
    for here in (fine, missed, sore, urgent):
        for day in days(MONDAY, 0, 2, 4, 7, 9, 11):
            if here is not missed:
                here.tick(day)
        here.phone.sync()
    sore.hurt(clock.now.date(), 6)
    sore.phone.sync()
    urgent.phone.log("symptom_reported", {"symptom": "calf_swelling"})
    urgent.phone.sync()
    answer = house.get("/caseload")
    told = [(row["client"]["display_name"], row["group"], row["reason"]["rule"]) for row in answer["items"]]
    assert told == [
        ("Urs", "needs_you", "red_flag_symptom"),
        ("Sor", "needs_you", "pain_too_high"),
        ("Mia", "needs_you", "missed_sessions"),
        ("Sil", "silent", "silent"),
        ("Fia", "on_the_way", "on_the_way"),
        ("Ada New", "no_program", "no_program"),
    ]
    assert [row["place"] for row in answer["items"]] == [1, 2, 3, 4, 5, 6]
    assert answer["headline"] == {"people": 6, "need_you": 3, "silent": 1}


def test_a_row_says_what_happened_what_hurt_and_what_is_suggested(house):
    here = scene(house, birth_year=1961)
    for day in days(MONDAY, 0, 2):
        here.tick(day)
        here.finish(day)
    here.hurt(TUESDAY, 7)
    here.phone.sync()
    row = here.row()
    assert row["client"]["age"] == 65
    assert row["goal"] == {"name": "Harrowcomb traverse", "date": "2026-07-18", "days_to": 38}
    assert row["weeks_to_trip"] == 5
    assert row["pain"] == {"worst_7d": 7, "region": "knee", "side": "right", "on": "2026-06-09"}
    assert row["reason"]["sentence"] == "Right knee hurt 7 of 10 during the session yesterday; usual is 1."
    assert row["suggestion"]["flag_id"] == row["open_flags"][0]["id"]
    assert [one["status"] for one in row["last_days"]] == ["done", "done", "missed", "open", "open"]
    assert row["adherence"]["days_28"]["by_session"] == {"prescribed": 3, "done": 2, "low": 2 / 3, "high": 2 / 3}


def test_the_ridge_has_every_week_with_what_was_heard(house):
    here = scene(house)
    here.tick(MONDAY)
    here.finish(MONDAY, effort=6, minutes=40)
    here.tick(days(MONDAY, 2)[0])
    here.phone.sync()
    ridge = here.row()["ridge"]
    assert len(ridge["weeks"]) == 6
    first, running, ahead = ridge["weeks"][:3]
    assert (first["planned_load"], first["done_load"], first["heard"]) == (450, 390, "all")
    assert (running["heard"], running["due_share"]) == ("part", pytest.approx(1 / 3))
    assert (ahead["heard"], ahead["due_share"]) == ("none", None)
    assert (ridge["today"], ridge["heard_until"]) == ("2026-06-10", "2026-06-10")


def test_sessions_of_their_own_are_seen(house):
    here = scene(house)
    for day in days(MONDAY, 7, 8):
        walk = {"distance_km": 9, "ascent_m": 400, "descent_m": 400, "minutes": 90, "pack_kg": 4, "effort": 5}
        here.phone.log("walk_logged", walk, here.at(day))
    for day in days(MONDAY, 0, 2, 4):
        here.tick(day)
    here.phone.sync()
    assert here.row()["reason"]["rule"] == "over_eager"


def test_entries_kept_aside_are_a_reason(house):
    here = scene(house)
    for day in days(MONDAY, 0, 2, 4):
        here.tick(day)
    here.phone.log("pain_reported", {"rating": 11, "region": "knee", "side": "right", "when": "during"})
    here.phone.sync()
    assert here.row()["reason"]["sentence"] == "1 entry kept aside, not understood."


def test_a_client_without_a_phone_is_told_apart_from_a_silent_one(house):
    from tests.builders import content

    client_id = house.new_client("Noa")
    house.publish(client_id, content(date(2026, 6, 10)))
    (row,) = house.get("/caseload")["items"]
    assert (row["group"], row["reason"]["rule"], row["last_heard_at"]) == ("silent", "never_paired", None)


def test_archived_clients_are_left_out(house):
    here = scene(house)
    house.http.patch(f"/api/v1/clients/{here.client_id}", json={"archived": True})
    assert house.get("/caseload")["items"] == []


def test_today_is_the_clients_own_day(house, clock):
    later(house, clock, hours=4)  # 12:00 in London is midnight of the next day in Auckland
    here = scene(house, "Kiri", time_zone="Pacific/Auckland")
    assert here.row()["ridge"]["today"] == "2026-06-11"
    assert house.get("/caseload")["today"] == "2026-06-10"


def test_the_number_of_queries_does_not_grow_with_the_clients(house, database):
    asked: list[str] = []

    def note(*args):
        asked.append(args[2])

    def queries():
        asked.clear()
        house.get("/caseload")
        return len(asked)

    event.listen(database.reader, "before_cursor_execute", note)
    scene(house, "One").phone.sync()
    one = queries()
    for name in ("Two", "Three", "Four"):
        here = scene(house, name)
        here.hurt(TUESDAY, 7)
        here.phone.sync()
    assert queries() == one
    event.remove(database.reader, "before_cursor_execute", note)


def test_an_overview_shows_one_client_whole(house, clock):
    here = scene(house)
    here.tick(MONDAY)
    here.finish(MONDAY)
    here.hurt(TUESDAY, 4, "next_morning", aspect="front")
    here.phone.log("note_written", {"text": "Stairs felt fine."})
    walk = {"distance_km": 5, "ascent_m": 0, "descent_m": 0, "minutes": 60, "pack_kg": 0, "effort": 3}
    here.phone.log("walk_logged", walk, here.at(MONDAY))
    here.phone.sync()
    page = house.get(f"/clients/{here.client_id}/overview")
    assert (page["program"]["title"], page["current_number"], page["phone_number"]) == ("Legs for Harrowcomb", 1, None)
    first, last = page["days"][0]["date"], page["days"][-1]["date"]
    assert (first, last) == ("2026-06-01", "2026-06-19")
    assert page["pain"][0]["aspect"] == "front"
    assert page["pain_regions"] == [
        {"region": "knee", "side": "right", "quiet_days": 1, "worst_by_week": [None] * 7 + [4]}
    ]
    assert [note["text"] for note in page["notes"]] == ["Stairs felt fine."]
    assert page["possible_doubles"] == [{"day": "2026-06-01", "planned_id": "2026-06-01.1", "name": "Steps and hips"}]
    assert [flag["rule"] for flag in page["flags"]] == ["pain_next_morning"]
    assert page["adherence_28"]["by_session"]["done"] == 1
    assert (page["refused_count"], page["messages"]) == (0, [])
    assert page["heard_until"].startswith("2026-06-10T10:00:00")


def test_a_long_silence_counts_every_session_since(house, clock):
    here = scene(house, weeks=10)
    here.phone.sync()
    later(house, clock, days=42)
    assert here.row()["reason"]["sentence"] == "Last heard on Wednesday 10 June; 19 sessions not heard."
