"""Notes on readiness through HTTP: signed for what was seen, kept as signed, superseded and never edited."""

import pytest
from sqlalchemy import text

from tests.builders import API, PASSWORD
from tests.features.monitoring.scenes import later, scene
from tests.features.readiness.test_readiness import give_trip, leg, readiness, walked

WORDS = "Two long days at the weekend first; the descent on day two is the question."


@pytest.fixture
def here(house):
    """A client with a trip in five weeks."""
    found = scene(house)
    give_trip(house, found.client_id, [leg(1), leg(2)])
    return found


def sign(here, verdict="adapt", words=WORDS, status=201, **more):
    body = {"verdict": verdict, "words": words, "digest": readiness(here)["digest"], **more}
    return here.house.post(f"/clients/{here.client_id}/readiness-notes", body, status)


def notes(here):
    return readiness(here)["notes"]


def test_a_note_bears_name_and_time_and_what_it_rested_on(here):
    seen = readiness(here)["shown"]
    signed = sign(here)
    assert (signed["verdict"], signed["words"], signed["signed_by"]) == ("adapt", WORDS, "Maren Brandvold")
    assert (signed["signed_at"], signed["superseded_at"]) == ("2026-06-10T08:00:00Z", None)
    assert signed["shown"] == seen
    assert notes(here) == [signed]


def test_a_note_keeps_what_it_rested_on_whatever_comes_in_later(here):
    signed = sign(here)
    walked(here, 3)
    here.phone.sync()
    give_trip(here.house, here.client_id, [leg(1, distance_km=30)])
    assert notes(here) == [signed]
    assert readiness(here)["shown"] != signed["shown"]


def test_a_newer_note_stands_first_and_the_older_one_says_since_when_it_does_not(here, clock):
    older = sign(here, "defer", "Knee first.")
    later(here.house, clock, hours=2)
    newer = sign(here, "go", "Shown all that it asks.")
    assert notes(here) == [newer, {**older, "superseded_at": newer["signed_at"]}]


def test_a_note_cannot_be_edited_or_taken_away(here):
    signed = sign(here)
    for path in (f"/clients/{here.client_id}/readiness-notes", f"/clients/{here.client_id}/readiness"):
        for method in ("PUT", "PATCH", "DELETE"):
            assert here.house.http.request(method, f"{API}{path}", json={}).status_code == 405
    assert here.house.http.delete(f"{API}/readiness-notes/{signed['id']}").status_code == 404
    assert notes(here) == [signed]


def test_the_name_under_a_note_stays_the_one_that_signed(here, database):
    signed = sign(here)
    with database.write() as session:
        session.execute(text("UPDATE practitioner SET display_name = 'Maren Oake'"))
    here.house.post("/sign-in", {"email": "maren@thornwater.example", "password": PASSWORD}, 200)
    assert notes(here) == [signed]


def test_what_has_changed_since_it_was_seen_is_not_signed(here):
    seen = readiness(here)["digest"]
    walked(here, 3)
    here.phone.sync()
    refused = sign(here, digest=seen, status=412)
    assert (refused["code"], notes(here)) == ("stale", [])
    sign(here)


def test_a_day_later_it_is_read_again_before_it_is_signed(here, clock):
    seen = readiness(here)["digest"]
    later(here.house, clock, days=1)
    assert sign(here, digest=seen, status=412)["code"] == "stale"


def test_without_a_trip_there_is_nothing_to_sign(here):
    assert here.house.http.delete(f"{API}/clients/{here.client_id}/trip").status_code == 204
    for verdict in ("go", "adapt", "defer"):
        assert sign(here, verdict, status=409)["code"] == "no-trip"


def test_go_is_refused_while_a_symptom_stops_training_and_the_others_are_not(here):
    here.phone.log("symptom_reported", {"symptom": "chest_pain"})
    here.phone.sync()
    assert sign(here, "go", status=409)["code"] == "not-with-symptom"
    sign(here, "defer")
    (flag,) = here.flags("open")
    cleared = {"action": "clear", "note": "Seen by Dr. Oake."}
    here.house.post(f"/flags/{flag['id']}/decisions", cleared)
    sign(here, "go")


def test_go_is_refused_while_a_clearance_is_missing(here):
    answers = {"regular_activity": False, "known_disease": True, "signs_or_symptoms": False, "intensity": "vigorous"}
    here.house.post(f"/clients/{here.client_id}/screenings", {"answers": answers})
    assert sign(here, "go", status=409)["code"] == "not-with-clearance-required"
    sign(here, "adapt")
    here.house.post(f"/clients/{here.client_id}/clearances", {"given_by": "Dr. Selma Oake"})
    assert [one["verdict"] for one in (sign(here, "go"), *notes(here))] == ["go", "go", "adapt"]


@pytest.mark.parametrize(
    "wrong",
    [
        {"words": "   "},
        {"words": "x" * 4001},
        {"verdict": "perhaps"},
        {"digest": "0"},
        {"signed_by": "Somebody else"},
    ],
)
def test_a_note_without_reasons_or_with_a_foreign_name_is_refused(here, wrong):
    refused = sign(here, **{"status": 422} | wrong)
    assert [one["pointer"] for one in refused["errors"]] == [f"/body/{next(iter(wrong))}"]
    assert notes(here) == []


def test_a_rebuild_leaves_notes_as_they_are(here, database):
    from steadfoot.checkins.service import rebuild

    walked(here, 3)
    here.phone.sync()
    signed = sign(here)
    with database.write() as session:
        rebuild(session, here.house.practice_id, here.client_id)
    assert notes(here) == [signed]


def test_notes_of_one_moment_have_an_order(here):
    ids = [sign(here, "defer", f"Word {number}.")["id"] for number in range(3)]
    assert sorted(one["id"] for one in notes(here)) == sorted(ids)
    assert [one["id"] for one in notes(here)] == sorted(ids, reverse=True)
