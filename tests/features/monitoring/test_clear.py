"""A red-flag symptom stops training on the phone until a practitioner has cleared it."""

import pytest

from tests.features.monitoring.scenes import Scene
from tests.features.monitoring.test_flags import TUESDAY, WEDNESDAY, decide, painful


@pytest.fixture
def here(house):
    client_id = house.new_client("Emil Tarrow")
    return Scene(house, client_id, house.pair(client_id))


def report(here, symptom="chest_pain", day=TUESDAY):
    entry = here.phone.log("symptom_reported", {"symptom": symptom}, here.at(day))
    here.phone.sync()
    return entry


def actions(flag):
    return [one["action"] for one in flag["answers"]]


def answers_on_the_phone(here):
    return [change["body"] for change in here.phone.sync()["changes"] if change["kind"] == "flag_answer"]


def test_clearing_tells_the_phone_which_entries_no_longer_stop_training(here):
    entry = report(here)
    (flag,) = here.flags()
    assert "clear" in actions(flag)
    after = decide(here, flag, "clear", note="Called; seen by the doctor today.")["flag"]
    assert (after["status"], after["answers"]) == ("closed", [])
    assert after["decisions"][0]["note"] == "Called; seen by the doctor today."
    (told,) = answers_on_the_phone(here)
    assert (told["flag_id"], told["action"], told["event_ids"]) == (flag["id"], "clear", [entry["id"]])


@pytest.mark.parametrize("note", ["", "  "])
def test_clearing_needs_a_note(here, note):
    report(here)
    (flag,) = here.flags()
    assert decide(here, flag, "clear", 422, note=note)["code"] == "note-needed"
    assert here.flags()[0]["status"] == "open"
    assert answers_on_the_phone(here) == []


@pytest.mark.parametrize("first", ["acknowledge", "hold", "message", "close"])
def test_any_other_answer_leaves_training_stopped_and_it_can_be_cleared_afterwards(here, first):
    report(here)
    decide(here, here.flags()[0], first, note="Tried to call.", message="Please do not train. I will call.")
    (flag,) = here.flags()
    assert "clear" in actions(flag)
    if first != "acknowledge":
        assert (flag["status"], actions(flag)) == ("closed", ["clear"])
    cleared = decide(here, flag, "clear", note="Spoke on the phone.")["flag"]
    assert (cleared["status"], cleared["answers"]) == ("closed", [])
    assert decide(here, flag, "clear", 409, note="Again.")["code"] == "already-answered"


def test_the_same_symptom_again_stops_training_again(here):
    report(here)
    decide(here, here.flags()[0], "clear", note="Spoke on the phone.")
    second = report(here, day=WEDNESDAY)
    (flag,) = here.flags()
    assert (flag["status"], "clear" in actions(flag)) == ("open", True)
    decide(here, flag, "clear", note="Spoke again.")
    assert second["id"] in answers_on_the_phone(here)[-1]["event_ids"]


def test_each_symptom_is_cleared_by_itself(here):
    report(here, "chest_pain")
    other = report(here, "calf_swelling")
    flags = {flag["evidence"][0]["event_id"]: flag for flag in here.flags()}
    decide(here, flags[other["id"]], "clear", note="Seen in the clinic.")
    assert sorted(flag["status"] for flag in here.flags()) == ["closed", "open"]


def test_a_withdrawn_symptom_leaves_nothing_to_clear(here):
    entry = report(here)
    here.phone.log("entry_withdrawn", {"event_id": entry["id"]})
    here.phone.sync()
    assert here.flags() == []


def test_only_a_red_flag_can_be_cleared(here):
    flag = painful(here)
    assert "clear" not in actions(flag)
    assert decide(here, flag, "clear", 422, note="Fine.")["code"] == "nothing-to-clear"
    decide(here, flag, "close", note="Seen.")
    assert here.flags()[0]["answers"] == []
