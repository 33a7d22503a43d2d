"""Suggestions on progress through HTTP: what they rest on, and what accepting, editing or declining them does."""

import json
from datetime import date, timedelta
from random import Random

import pytest

from steadfoot.demo.generate import invent
from steadfoot.monitoring.caseload import caseload_json
from tests.builders import circuit, content, step_down
from tests.features.monitoring.scenes import MONDAY, Scene, days, later, scene

OVER = 12
"""Two above the goal of 8 to 10."""


def trained(here, *amounts, first=MONDAY, effort=4, prescription="p1", every=2, **more):
    """One session every second day, its last set with so many repetitions."""
    for step, amount in enumerate(amounts):
        day = first + timedelta(days=every * step)
        for turn in (1, 2, 3):
            body = {"planned_id": f"{day}.1", "prescription": prescription, "round": turn, "reps": amount, **more}
            here.phone.log("set_ticked", {name: value for name, value in body.items() if value}, here.at(day))
        here.finish(day, effort=effort)
    here.phone.sync()


def suggestions(here):
    return here.house.get(f"/clients/{here.client_id}/suggestions")


def first(here):
    return suggestions(here)["items"][0]


def decide(here, *decisions, number=1, status=201, **more):
    body = {"program_number": number, "decisions": list(decisions), **more}
    return here.house.post(f"/clients/{here.client_id}/progressions", body, status)


def accepting(item, **more):
    return {"suggestion_id": item["id"], "action": "accept", **more}


def declining(item, reason="Knee first."):
    return {"suggestion_id": item["id"], "action": "decline", "reason": reason}


def current(here):
    return here.house.get(f"/clients/{here.client_id}/programs/current")


def ready(house, **more):
    here = scene(house, **more)
    trained(here, OVER, OVER + 1)
    return here


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


def test_accepted_ones_become_one_version_and_the_phone_says_what_changed(house):
    both = [step_down(), step_down("p2", exercise="heel-raise", variant="both-wall", reps_low=8, reps_high=10)]
    client_id = house.new_client(usual_pain=1)
    house.publish(client_id, content(MONDAY, 6, [circuit(prescriptions=both)]))
    here = Scene(house, client_id, house.pair(client_id))
    trained(here, OVER, OVER)
    trained(here, OVER, OVER, prescription="p2")
    items = suggestions(here)["items"]
    assert [one["suggestion"] for one in items] == ["progress_variant", "progress_reps"]
    answer = decide(here, *map(accepting, items), note="Both look easy.")
    assert (answer["program_number"], len(answer["changes"])) == (2, 2)
    assert (current(here)["number"], current(here)["note"]) == (2, "Both look easy.")
    body = next(change["body"] for change in here.phone.sync()["changes"] if change["body"].get("number") == 2)
    assert [one["prescription"] for one in body["changed"]] == ["p1", "p2"]
    assert body["changed"][1]["sentence"] == "10 to 12 repetitions instead of 8 to 10 repetitions"
    assert [one["rule"] for one in suggestions(here)["items"]] == ["not_enough", "not_enough"]
    assert here.row()["suggestion"] is None


def test_an_edit_stands_in_the_place_of_the_suggestion(house):
    here = ready(house)
    item = first(here)
    decide(here, accepting(item, edited={**item["now"], "reps_low": 10, "reps_high": 12}))
    (changed,) = current(here)["content"]["sessions"][0]["prescriptions"]
    assert (changed["reps_high"], changed["variant"]) == (12, item["now"]["variant"])


def test_an_edit_that_does_not_fit_names_the_prescription_and_nothing_is_lost(house):
    here = ready(house)
    item = first(here)
    wrong = decide(here, accepting(item, edited={**item["now"], "reps_low": 12, "reps_high": 8}), status=422)
    assert wrong["code"] == "program-has-errors"
    assert wrong["errors"][0]["pointer"].startswith("/body/decisions/0/edited/reps")
    assert wrong["errors"][0]["detail"].startswith("Step-down, hand on the rail: ")
    other = decide(here, accepting(item, edited={**item["now"], "key": "p9"}), status=422)
    assert other["code"] == "another-prescription"
    assert decide(here, accepting(item, edited=item["now"]), status=422)["code"] == "nothing-changes"
    assert (current(here)["number"], first(here)["id"]) == (1, item["id"])


def test_a_declined_one_stays_away_for_the_same_evidence_and_keeps_its_reason(house, clock):
    here = ready(house)
    item = first(here)
    assert decide(here, declining(item, " "), status=422)["code"] == "reason-needed"
    assert decide(here, declining(item)) == {"program_number": None, "changes": []}
    after = suggestions(here)
    assert (after["items"], after["declined"][0]["id"]) == ([], item["id"])
    assert (after["declined"][0]["reason"], after["declined"][0]["by"]) == ("Knee first.", "Maren Brandvold")
    assert here.row()["ready"] == 0
    assert current(here)["number"] == 1
    trained(here, OVER, first=date(2026, 6, 5))
    again = suggestions(here)
    assert (again["items"][0]["rule"], again["declined"]) == ("two_for_two", [])
    assert again["items"][0]["id"] != item["id"]


def test_a_declined_one_can_still_be_accepted(house, clock):
    here = ready(house)
    decide(here, declining(first(here)))
    clock.forward(seconds=1)
    (declined,) = suggestions(here)["declined"]
    assert decide(here, accepting(declined))["program_number"] == 2


def test_a_stale_number_a_gone_suggestion_and_a_hold_are_refused(house):
    here = ready(house)
    item = first(here)
    stale = decide(here, accepting(item), number=7, status=412)
    assert (stale["code"], stale["current_number"]) == ("stale", 1)
    gone = decide(here, accepting({"id": "0" * 32}), status=409)
    assert (gone["code"], gone["errors"][0]["pointer"]) == ("suggestion-gone", "/body/decisions/0")
    assert decide(here, accepting(item), declining(item), status=422)["code"] == "decided-twice"
    quiet = scene(house, "Quiet")
    assert decide(quiet, accepting(first(quiet)), status=422)["code"] == "nothing-to-accept"
    assert [current(one)["number"] for one in (here, quiet)] == [1, 1]


def test_sets_that_were_done_before_the_dose_changed_say_nothing_of_the_new_one(house):
    here = ready(house)
    before = current(here)["content"]
    fewer = {**before["sessions"][0], "prescriptions": [step_down(reps_low=6, reps_high=8)]}
    house.publish(here.client_id, {**before, "sessions": [fewer]})
    assert first(here)["rule"] == "not_enough"
    trained(here, 10, first=date(2026, 6, 5), program_version=1)
    assert first(here)["rule"] == "not_enough"
    trained(here, 10, 10, first=date(2026, 6, 8), program_version=2)
    assert first(here)["rule"] == "two_for_two"


def test_after_four_hard_weeks_one_easier_week_and_then_as_before(house, clock):
    here = scene(house, weeks=8)
    later(house, clock, days=26)  # Monday 6 July
    for week in range(5):
        trained(here, 9, 9, first=MONDAY + timedelta(weeks=week), effort=5)
    item = first(here)
    assert (item["suggestion"], item["then"]) == ("deload", None)
    assert item["effect"] == (
        "The phone then shows 2 of 3 rounds of Steps and hips for one week; after that it is as before."
    )
    assert decide(here, accepting(item))["program_number"] == 2
    program = current(here)["content"]
    easy = program["sessions"][1]
    assert (easy["name"], easy["rounds"], program["sessions"][0]["rounds"]) == ("Steps and hips, easier week", 2, 3)
    moved = [day["date"] for day in program["days"] if day["session"] == easy["key"]]
    assert moved == [str(day) for day in days(date(2026, 7, 6), 0, 2, 4)]
    assert first(here)["rule"] == "not_yet_two_for_two"


def test_a_person_whose_clearance_is_missing_can_be_eased_but_not_progressed(house):
    here = ready(house)
    answers = {
        "regular_activity": False,
        "known_disease": True,
        "signs_or_symptoms": True,
        "intensity": "vigorous",
    }
    house.post(f"/clients/{here.client_id}/screenings", {"answers": answers})
    assert decide(here, accepting(first(here)), status=409)["code"] == "clearance-needed"
    here.hurt(date(2026, 6, 4), 2, "next_morning", region="hip", prescription="p1")
    here.phone.sync()
    assert decide(here, accepting(first(here)))["program_number"] == 2


def test_another_practice_sees_and_decides_nothing(house, other_house):
    here = ready(house)
    path = f"/clients/{here.client_id}"
    assert other_house.get(f"{path}/suggestions", 404)["code"] == "not-found"
    body = {"program_number": 1, "decisions": [accepting(first(here))]}
    assert other_house.post(f"{path}/progressions", body, 404)["code"] == "not-found"


def test_in_the_invented_practice_some_are_ready_and_some_hold(database, app, clock):
    invented = invent(database, clock(), Random(7), lambda _: None)
    with database.read() as session:
        rows = json.loads(caseload_json(session, invented.access, clock()))["items"]
    ready = [row for row in rows if (row["suggestion"] or {}).get("action") == "decide"]
    assert len(ready) >= 2
    assert any(row["group"] == "on_the_way" and row["ready"] == 0 for row in rows)
