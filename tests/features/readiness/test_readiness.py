"""Readiness through HTTP: what is asked beside what was shown, for people of whom much, little or nothing is known."""

from datetime import date, timedelta

import pytest

from tests.builders import content
from tests.features.monitoring.scenes import later, scene
from tests.features.readiness.walkers import TODAY, give_trip, leg, readiness, walked


def items(here):
    return {one["subject"]: one for one in readiness(here)["shown"]["items"]}


@pytest.fixture
def here(house):
    """A woman of 66 with a program to a trip on Saturday 11 July, its two days known, and a phone."""
    found = scene(house, birth_year=1960, sex="female", height_cm=165, body_mass_kg=62)
    give_trip(house, found.client_id, [leg(1), leg(2, distance_km=9, ascent_m=300, descent_m=900)])
    return found


def test_without_a_trip_there_is_what_needs_none_and_nothing_else(house):
    found = house.get(f"/clients/{house.new_client()}/readiness")
    shown = found["shown"]
    assert (shown["trip"], shown["weeks_left"], shown["heard_on"], found["notes"]) == (None, None, None, [])
    assert {one["subject"] for one in shown["items"]} >= {"pain_at_rest", "heel-rise", "step-down"}
    assert "longest_day" not in {one["subject"] for one in shown["items"]}
    assert {one["mark"] for one in shown["items"]} == {"unknown"}
    assert shown["cautions"] == ["not_screened"]


def test_the_trip_is_told_day_by_day_with_the_weeks_left(here):
    shown = readiness(here)["shown"]
    assert shown["trip"]["name"] == "Harrowcomb traverse"
    assert (shown["as_of"], shown["trip"]["starts_on"]) == ("2026-06-10", "2026-07-18")
    assert [one["name"] for one in shown["trip"]["days"]] == ["Day 1", "Day 2"]
    assert (shown["weeks_left"], shown["weeks_to_build"]) == (5, 3)


def test_legs_of_one_day_add_up_and_days_between_are_rest(here):
    legs = [leg(1, distance_km=6), leg(1, distance_km=5, pack_kg=3), leg(3, ascent_m=None, descent_m=None)]
    give_trip(here.house, here.client_id, legs)
    one, rest, three = readiness(here)["shown"]["trip"]["days"]
    assert (one["name"], one["distance_km"], one["ascent_m"], one["pack_kg"]) == ("Day 1 · Day 1", 11, 1600, 8)
    assert (rest["name"], rest["distance_km"], rest["ascent_m"], rest["pack_kg"]) == ("", 0, None, None)
    assert (three["ascent_m"], three["descent_m"]) == (None, None)
    found = items(here)
    assert "days_in_a_row" not in found
    assert found["ascent"]["doubts"] == ["trip_not_said", "silent"]


def test_a_pack_left_at_nothing_is_one_that_was_not_said(here):
    give_trip(here.house, here.client_id, [leg(1)], pack_kg=0)
    found = items(here)["pack"]
    assert (found["mark"], found["closing"], found["asked"]) == ("unknown", "say_trip", None)


def test_a_person_of_whom_nothing_was_heard_is_unknown_everywhere(here):
    found = items(here)
    assert {one["mark"] for one in found.values()} == {"unknown"}
    assert found["longest_day"]["asked"] == 14
    assert (found["descent"]["asked"], found["days_in_a_row"]["asked"]) == (900, 2)
    assert found["longest_day"]["closing"] == "log_a_walk"


def test_walks_are_shown_with_the_check_in_that_shows_them(here):
    first, second = walked(here, 4), walked(here, 3, distance_km=15)
    here.phone.sync()
    found = items(here)
    assert (found["longest_day"]["mark"], found["longest_day"]["shown"]) == ("shown", 15)
    assert [one["id"] for one in found["longest_day"]["evidence"]] == [second["id"]]
    assert found["longest_day"]["evidence"][0] | {"id": ""} == {
        "kind": "walk",
        "id": "",
        "day": "2026-06-07",
        "value": 15,
        "side": None,
    }
    assert (found["descent"]["mark"], found["descent"]["weeks"], found["descent"]["in_time"]) == ("near", 2, True)
    assert (found["whole_day"]["mark"], found["days_in_a_row"]["mark"]) == ("shown", "shown")
    assert [one["id"] for one in found["days_in_a_row"]["evidence"]] == [first["id"], second["id"]]
    assert (found["effort"]["mark"], found["effort"]["shown"], found["effort"]["kind"]) == ("shown", 4, "house")


def test_a_walk_that_was_taken_back_shows_nothing(here):
    slip = walked(here, 3, distance_km=40)
    walked(here, 4, distance_km=8)
    here.phone.log("entry_withdrawn", {"event_id": slip["id"]})
    here.phone.sync()
    assert items(here)["longest_day"]["shown"] == 8


def test_the_last_entry_about_a_planned_walk_is_the_one_that_counts(here):
    walked(here, 5, planned_id="2026-06-05.1", distance_km=30)
    mended = walked(here, 4, planned_id="2026-06-05.1", distance_km=13)
    here.phone.sync()
    found = items(here)["longest_day"]
    assert (found["shown"], found["evidence"][0]["id"]) == (13, mended["id"])


def test_pain_on_waking_counts_and_pain_in_training_does_not(here):
    here.hurt(TODAY - timedelta(days=2), 7, "during")
    waking = here.hurt(TODAY - timedelta(days=1), 4, "next_morning")
    here.hurt(TODAY - timedelta(days=1), 2, "before")
    here.phone.sync()
    found = items(here)["pain_at_rest"]
    assert (found["mark"], found["shown"], found["asked"], found["at_most"]) == ("near", 4, 2, True)
    assert found["evidence"][0]["id"] == waking["id"]
    assert (found["kind"], found["source"]) == ("published", "silbernagel-2007")


def test_sessions_without_a_word_of_pain_are_told_as_what_was_heard(here):
    here.tick(date(2026, 6, 8))
    here.phone.sync()
    found = items(here)["pain_at_rest"]
    assert (found["mark"], found["shown"], found["doubts"]) == ("shown", 1, ["self_rated"])  # the usual level is 1


def test_a_phone_that_opened_a_session_and_said_no_more_tells_nothing_of_pain(here):
    here.phone.log("session_started", {"planned_id": "2026-06-08.1"}, here.at(date(2026, 6, 8)))
    here.phone.sync()
    assert items(here)["pain_at_rest"]["mark"] == "unknown"


def test_tests_are_read_beside_the_norm_by_their_weaker_side(here):
    for side, value in (("left", 22), ("right", 14)):
        body = {"code": "heel-rise", "value": value, "side": side}
        here.house.post(f"/clients/{here.client_id}/tests", body)
    here.house.post(f"/clients/{here.client_id}/tests", {"code": "chair-stand-30s", "value": 12})
    found = items(here)
    assert (found["heel-rise"]["shown"], found["heel-rise"]["mark"]) == (14, "not_shown")
    assert {one["side"] for one in found["heel-rise"]["evidence"]} == {"left", "right"}
    assert "sides_differ" in found["heel-rise"]["doubts"]
    assert (found["chair-stand-30s"]["mark"], found["chair-stand-30s"]["asked"]) == ("shown", 11)
    assert found["chair-stand-30s"]["source"] == "rikli-1999"


def test_a_phone_that_is_silent_for_five_days_may_hold_more(here, clock):
    walked(here, 3, distance_km=12)
    here.phone.sync()
    assert "silent" not in items(here)["longest_day"]["doubts"]
    later(here.house, clock, days=5)
    assert "silent" in items(here)["longest_day"]["doubts"]
    assert readiness(here)["shown"]["heard_on"] == "2026-06-10"


def test_what_a_person_should_know_before_they_sign_is_told_first(here):
    here.phone.log("symptom_reported", {"symptom": "chest_pain"})
    here.phone.sync()
    answers = {"regular_activity": False, "known_disease": True, "signs_or_symptoms": False, "intensity": "vigorous"}
    here.house.post(f"/clients/{here.client_id}/screenings", {"answers": answers})
    assert readiness(here)["shown"]["cautions"] == ["symptom", "clearance_required", "open_findings"]


def test_a_program_without_a_goal_leaves_gaps_without_weeks_left(here):
    program = content(TODAY, 4) | {"goal": None}
    here.house.publish(here.client_id, program)
    walked(here, 3, pack_kg=5)
    here.phone.sync()
    shown = readiness(here)["shown"]
    assert (shown["trip"]["name"], shown["trip"]["starts_on"], shown["weeks_left"]) == (None, None, None)
    assert [(one["weeks"], one["in_time"]) for one in shown["items"] if one["subject"] == "pack"] == [(3, None)]


def test_the_digest_names_what_is_shown_and_nothing_else(here):
    before = readiness(here)["digest"]
    assert readiness(here)["digest"] == before
    walked(here, 3)
    here.phone.sync()
    assert readiness(here)["digest"] != before
