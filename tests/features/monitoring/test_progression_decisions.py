"""Suggestions on progress through HTTP: what accepting, editing or declining them does."""

import json
from datetime import date, timedelta
from random import Random

from steadfoot.demo.generate import invent
from steadfoot.monitoring.caseload import caseload_json
from tests.builders import circuit, content, step_down
from tests.features.monitoring.progress import (
    OVER,
    accepting,
    current,
    decide,
    declining,
    first,
    ready,
    suggestions,
    trained,
)
from tests.features.monitoring.scenes import MONDAY, Scene, days, later, scene


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


def test_what_is_accepted_of_a_circuit_holds_for_its_copies_of_lighter_weeks(house):
    program = content(MONDAY, 6)
    lighter = {**circuit("s1-2r", rounds=2, prescriptions=[step_down("p1-2r")]), "name": "Steps and hips (×2)"}
    program["sessions"].append(lighter)
    program["days"].append({"date": (MONDAY + timedelta(days=36)).isoformat(), "session": "s1-2r", "fixed_day": False})
    client_id = house.new_client(usual_pain=1)
    house.publish(client_id, program)
    here = Scene(house, client_id, house.pair(client_id))
    trained(here, OVER, OVER)
    (item,) = suggestions(here)["items"]
    decide(here, accepting(item))
    whole, copy = [session["prescriptions"][0] for session in current(here)["content"]["sessions"]]
    assert (copy["key"], copy["variant"]) == ("p1-2r", whole["variant"])
    assert whole["variant"] == item["then"]["variant"] != step_down()["variant"]


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
