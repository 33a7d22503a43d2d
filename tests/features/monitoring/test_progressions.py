"""Suggestions on progress through HTTP: what they rest on."""

from datetime import date

import pytest

from tests.builders import first_variant
from tests.features.monitoring.progress import OVER, first, ready, trained
from tests.features.monitoring.scenes import MONDAY, later, scene


def test_without_a_program_or_a_check_in_nothing_is_suggested(house):
    client_id = house.new_client()
    assert house.get(f"/clients/{client_id}/suggestions") == {"program_number": None, "items": [], "declined": []}
    item = first(scene(house))
    assert (item["suggestion"], item["rule"], item["can_accept"], item["effect"]) == (
        "hold",
        "not_enough",
        False,
        None,
    )


def test_two_for_two_is_ready_with_rule_evidence_source_and_effect(house):
    here = scene(house)
    trained(here, OVER, OVER, OVER + 1)
    item = first(here)
    assert (item["suggestion"], item["rule"], item["kind"], item["source"]) == (
        "progress_variant",
        "two_for_two",
        "published",
        "baechle-2008",
    )
    assert [one["text"] for one in item["reasons"]] == [
        "The last set came to 12 repetitions; the goal is 10.",
        "The last set came to 13 repetitions; the goal is 10.",
    ]
    assert [one["day"] for one in item["reasons"]] == ["2026-06-03", "2026-06-05"]
    assert item["effect"].startswith("The phone then shows: Step-down: ")
    assert (item["can_accept"], item["then"]["key"]) == (True, "p1")
    assert item["then"]["variant"] != item["now"]["variant"]


@pytest.mark.parametrize("amounts", [(OVER, OVER - 1), (OVER - 1, OVER), (OVER,), (None, None)])
def test_less_than_two_for_two_holds(house, amounts):
    here = scene(house)
    trained(here, *amounts)
    assert (first(here)["suggestion"], here.row()["ready"]) == ("hold", 0)


def test_the_evidence_is_the_last_set_of_each_session(house):
    here = ready(house)
    last = [e["id"] for e in here.phone.events if e["kind"] == "set_ticked" and e["body"]["round"] == 3]
    *sets, caution = first(here)["reasons"]
    assert [one["event_id"] for one in sets] == last
    assert caution == {
        "text": "Only 2 of 3 due were done: ask whether the weeks have room for more.",
        "event_id": None,
        "day": None,
    }


def test_what_was_taken_back_or_done_another_way_is_no_evidence(house):
    here = scene(house)
    trained(here, OVER, OVER, OVER)
    body = {"planned_id": "2026-06-05.1", "prescription": "p1", "round": 3}
    here.phone.log("set_unticked", body, here.at(MONDAY, 23))
    here.phone.sync()
    assert first(here)["rule"] == "two_for_two"  # taken back before it was ticked, by the phone's own times
    here.phone.log("set_left_out", {**body, "reason": "too_hard"}, here.at(date(2026, 6, 5), 22))
    here.phone.sync()
    assert first(here)["rule"] == "not_yet_two_for_two"
    other = scene(house, "Noor")
    trained(other, OVER, OVER, variant="another-way")
    assert first(other)["rule"] == "not_enough"


def test_sets_of_another_movement_done_instead_say_nothing_of_the_prescribed_one(house):
    here = scene(house)
    same_code = first_variant("step-down")
    trained(here, OVER, OVER, exercise="squat", variant=same_code)
    assert first(here)["rule"] == "not_enough"
    assert here.adherence(MONDAY, date(2026, 6, 5))["by_set"]["done"] == 6  # the sessions were trained all the same
    same = scene(house, "Noor")
    trained(same, OVER, OVER, exercise="step-down", variant=same_code)
    assert first(same)["rule"] == "two_for_two"


@pytest.mark.parametrize(("region", "rule"), [("knee", "pain_acceptable"), ("shoulder", "two_for_two")])
def test_pain_without_a_movement_counts_where_the_movement_loads_the_place(house, region, rule):
    here = ready(house)
    here.hurt(date(2026, 6, 3), 3, region=region)
    here.phone.sync()
    assert first(here)["rule"] == rule


@pytest.mark.parametrize(("prescription", "rule"), [("p1", "pain_acceptable"), ("p9", "two_for_two")])
def test_pain_of_a_named_movement_counts_for_that_movement(house, prescription, rule):
    here = ready(house)
    here.hurt(date(2026, 6, 3), 3, prescription=prescription)
    here.phone.sync()
    assert first(here)["rule"] == rule


def test_a_morning_above_the_usual_asks_for_less_and_a_settled_one_does_not(house):
    here = ready(house)
    here.hurt(date(2026, 6, 4), 2, "next_morning", region="hip", prescription="p1")
    here.phone.sync()
    item = first(here)
    assert (item["suggestion"], item["rule"], item["can_accept"]) == ("regress", "pain_high", True)
    assert item["reasons"][0]["day"] == "2026-06-04"
    here.hurt(date(2026, 6, 5), 1, "next_morning", region="hip", prescription="p1")
    here.phone.sync()
    assert first(here)["suggestion"] == "hold"


def test_an_open_flag_about_the_place_holds_until_it_is_answered(house):
    here = ready(house)
    here.hurt(date(2026, 6, 1), 7, prescription="p9", region="knee")
    here.phone.sync()
    item = first(here)
    assert (item["rule"], here.row()["ready"]) == ("flag_open", 0)
    assert item["reasons"][0]["text"].endswith("the flag is open.")
    (flag,) = here.flags("open")
    house.post(f"/flags/{flag['id']}/decisions", {"action": "close", "note": "An old bruise."})
    assert (first(here)["rule"], here.row()["ready"]) == ("two_for_two", 1)


def test_effort_above_plan_few_sessions_and_a_day_too_near_each_hold(house, clock):
    hard = scene(house, "Hard")
    trained(hard, OVER, OVER, effort=7, first=date(2026, 6, 3))
    assert first(hard)["rule"] == "effort_above_target"
    near = scene(house, "Near")
    trained(near, OVER, OVER, effort=5, first=date(2026, 6, 8), every=1)
    assert first(near)["rule"] == "spacing_48h"
    few = ready(house)
    later(house, clock, days=14)
    few.phone.sync()
    assert first(few)["rule"] == "adherence_low"


def test_a_row_says_who_is_ready_and_the_overview_how_many(house):
    here = scene(house)
    trained(here, OVER, OVER, OVER)
    row = here.row()
    assert (row["group"], row["ready"]) == ("on_the_way", 1)
    assert row["suggestion"] == {
        "sentence": "Ready for more: step-down, hand on the rail",
        "flag_id": None,
        "action": "decide",
    }
    page = house.get(f"/clients/{here.client_id}/overview")
    assert page["suggestions"] == {"ready": 1, "sentence": row["suggestion"]["sentence"]}
