"""Findings of check-ins, and what a practitioner answers."""

from datetime import date

import pytest

from tests.builders import circuit, content
from tests.features.monitoring.scenes import MONDAY, Scene, days, harder, later, scene

TUESDAY, WEDNESDAY = date(2026, 6, 9), date(2026, 6, 10)


def eased_scene(house):
    """A client whose painful movement has an easier rung."""
    client_id = house.new_client("Emil Tarrow", usual_pain=1)
    house.publish(client_id, content(MONDAY, 6, [circuit(prescriptions=[harder()])]))
    return Scene(house, client_id, house.pair(client_id))


def painful(here, rating=7):
    here.hurt(TUESDAY, rating, prescription="p1", planned_id="2026-06-08.1")
    here.phone.sync()
    return here.flags()[0]


def decide(here, flag, action, status=201, **more):
    return here.house.post(f"/flags/{flag['id']}/decisions", {"action": action, **more}, status)


def test_pain_at_the_stop_is_a_flag_with_rule_evidence_and_source(house):
    flag = painful(scene(house))
    assert (flag["rule"], flag["status"], flag["since"]) == ("pain_too_high", "open", "2026-06-09")
    assert (flag["kind"], flag["source"]["key"]) == ("published", "silbernagel-2007")
    told = "Right knee hurt 7 of 10 during the step-down yesterday; usual is 1."
    assert [one["sentence"] for one in flag["evidence"]] == [told]


def test_pain_below_the_stop_is_none(house):
    here = scene(house)
    here.hurt(TUESDAY, 5)
    here.phone.sync()
    assert here.flags() == []


def test_a_stop_set_for_one_client_counts_at_once(house):
    here = scene(house)
    here.hurt(TUESDAY, 5)
    here.phone.sync()
    path = f"/api/v1/clients/{here.client_id}"
    house.http.patch(path, json={"thresholds": {"pain_stop": 5}})
    assert [flag["rule"] for flag in here.flags()] == ["pain_too_high"]


def test_a_withdrawn_report_takes_its_flag_with_it(house):
    here = scene(house)
    entry = here.hurt(TUESDAY, 8)
    here.phone.sync()
    here.phone.log("entry_withdrawn", {"event_id": entry["id"]})
    here.phone.sync()
    assert here.flags() == []


def test_each_rule_finds_its_own_and_the_red_flag_comes_first(house):
    here = scene(house)
    for week, rating in enumerate((2, 3, 4)):
        here.hurt(date(2026, 5, 25 + 7 * week) if week == 0 else days(MONDAY, 7 * (week - 1))[0], rating)
    here.hurt(TUESDAY, 3, "next_morning")
    for day in days(MONDAY, 0, 2, 4):
        here.tick(day)
        here.finish(day, effort=7)
    here.phone.log("symptom_reported", {"symptom": "chest_pain"})
    here.phone.sync()
    rules = [flag["rule"] for flag in here.flags()]
    assert rules == ["red_flag_symptom", "pain_next_morning", "pain_rising", "effort_rising"]
    assert here.row()["reason"]["sentence"] == "Chest pain was reported today."


def test_acknowledged_is_no_longer_open_but_may_still_be_closed(house, clock):
    here = scene(house)
    flag = painful(here)
    answered = decide(here, flag, "acknowledge")["flag"]
    assert (answered["status"], answered["decisions"][0]["by"]) == ("acknowledged", "Maren Brandvold")
    assert here.flags(status="open") == []
    assert "acknowledge" not in [one["action"] for one in answered["answers"]]
    clock.forward(seconds=1)
    closed = decide(here, flag, "close", note="An old bruise.")["flag"]
    assert (closed["status"], closed["answers"], closed["suggestion"]) == ("closed", [], None)
    assert [one["note"] for one in closed["decisions"]] == ["", "An old bruise."]


@pytest.mark.parametrize(
    ("action", "code"), [("hold", "message-needed"), ("message", "message-needed"), ("close", "note-needed")]
)
def test_an_answer_without_its_words_is_refused(house, action, code):
    here = scene(house)
    flag = painful(here)
    assert decide(here, flag, action, 422, note="", message=" ")["code"] == code
    assert here.flags()[0]["status"] == "open"


@pytest.mark.parametrize("action", ["hold", "message"])
def test_words_go_to_the_phone_with_the_answer(house, action):
    here = scene(house)
    flag = painful(here)
    decide(here, flag, action, message="Stay with the low step this week.")
    changes = {change["kind"]: change["body"] for change in here.phone.sync()["changes"]}
    assert changes["message"]["text"] == "Stay with the low step this week."
    assert changes["message"]["from"] == "Maren Brandvold"
    assert changes["message"]["flag_id"] == changes["flag_answer"]["flag_id"] == flag["id"]
    assert changes["flag_answer"]["action"] == action


def test_easing_off_publishes_the_painful_movement_one_rung_easier(house):
    here = eased_scene(house)
    flag = painful(here)
    assert flag["suggestion"]["action"] == "ease_off"
    answer = decide(here, flag, "ease_off", note="Knee after the hut walk.")
    assert answer["program_number"] == 2
    current = house.get(f"/clients/{here.client_id}/programs/current")
    before = harder()["variant"]
    after = current["content"]["sessions"][0]["prescriptions"][0]["variant"]
    assert (current["number"], current["note"]) == (2, "Knee after the hut walk.")
    assert after != before
    changes = here.phone.sync()["changes"]
    assert [change["kind"] for change in changes][-2:] == ["program", "flag_answer"]
    assert changes[-2]["body"]["number"] == 2


def test_without_a_program_there_is_nothing_to_ease_off(house):
    client_id = house.new_client("Emil Tarrow", usual_pain=1)
    here = Scene(house, client_id, house.pair(client_id))
    flag = painful(here)
    assert flag["suggestion"]["action"] == "hold"
    assert "ease_off" not in [one["action"] for one in flag["answers"]]
    assert decide(here, flag, "ease_off", 422)["code"] == "nothing-to-ease"


def test_answering_twice_is_told_and_changes_nothing(house):
    here = eased_scene(house)
    flag = painful(here)
    decide(here, flag, "ease_off")
    again = decide(here, flag, "ease_off", 409)
    assert (again["code"], again["decision"]["program_number"]) == ("already-answered", 2)
    assert house.get(f"/clients/{here.client_id}/programs/current")["number"] == 2


def test_new_evidence_opens_an_answered_flag_again(house):
    here = scene(house)
    flag = painful(here)
    decide(here, flag, "close", note="Seen.")
    here.hurt(WEDNESDAY, 8)
    here.phone.sync()
    (after,) = here.flags()
    assert (after["id"], after["status"], len(after["decisions"])) == (flag["id"], "open", 1)


def test_an_earlier_entry_that_comes_late_keeps_the_answer(house):
    """The flag's id comes from its first evidence and so changes; the answer belongs to the check-ins and stays."""
    here = scene(house)
    other = house.pair(here.client_id)
    flag = painful(here)
    decide(here, flag, "close", note="Seen.")
    body = {"rating": 6, "region": "knee", "side": "right", "when": "after"}
    other.log("pain_reported", body, here.at(MONDAY))
    other.sync()
    (after,) = here.flags()
    assert (after["status"], [one["note"] for one in after["decisions"]]) == ("open", ["Seen."])
    assert after["id"] != flag["id"]


def test_another_practice_cannot_answer(house, other_house):
    flag = painful(scene(house))
    assert other_house.post(f"/flags/{flag['id']}/decisions", {"action": "acknowledge"}, 404)["code"] == "not-found"


def test_a_message_is_kept_and_shows_when_it_was_read(house, clock):
    here = scene(house)
    sent = house.post(f"/clients/{here.client_id}/messages", {"text": "How was the long walk?"})
    assert sent["read_at"] is None
    here.phone.sync()
    later(house, clock, hours=1)
    here.phone.log("message_read", {"message_id": sent["id"]})
    here.phone.sync()
    (listed,) = house.get(f"/clients/{here.client_id}/messages")["items"]
    assert (listed["text"], listed["from"]) == ("How was the long walk?", "Maren Brandvold")
    assert listed["read_at"] == "2026-06-10T09:00:00Z"


def test_an_empty_message_is_refused(house):
    client_id = house.new_client()
    assert house.post(f"/clients/{client_id}/messages", {"text": " "}, 422)["code"] == "validation"
