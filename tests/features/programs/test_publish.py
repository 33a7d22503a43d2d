"""Publishing over HTTP, and reading versions back."""

from datetime import UTC, date, datetime, timedelta

import pytest
from fastapi.testclient import TestClient

from steadfoot.programs import service
from tests.builders import API, PASSWORD, circuit, content, step_down

TODAY = date(2026, 6, 10)


@pytest.fixture
def client_id(house):
    return house.new_client()


def legs(**more):
    return content(TODAY) | more


def sign_in_again(house):
    """A practitioner's session ends after twelve hours."""
    body = {"email": "maren@thornwater.example", "password": PASSWORD}
    assert house.http.post(f"{API}/sign-in", json=body).status_code == 200


def put(house, client_id, whole, if_match=None, status=201):
    headers = {} if if_match is None else {"If-Match": if_match}
    answer = house.http.post(f"{API}/clients/{client_id}/programs", json={"content": whole}, headers=headers)
    assert answer.status_code == status, answer.text
    return answer


def test_the_first_version_is_number_one_and_says_who_when_and_from_which_day(house, client_id):
    answer = put(house, client_id, legs())
    body = answer.json()
    assert answer.headers["ETag"] == '"1"'
    assert answer.headers["Location"] == f"{API}/clients/{client_id}/programs/1"
    assert body["number"] == 1
    assert datetime.fromisoformat(body["published_at"]) == datetime(2026, 6, 10, 8, 0, tzinfo=UTC)
    assert body["effective_on"] == "2026-06-10"
    assert body["published_by"]["display_name"] == "Maren Brandvold"
    assert body["changes"] == ["First program: Legs for Harrowcomb"]


def test_the_day_is_the_clients_own(house, clock):
    later = clock.forward(hours=14.5)  # 22:30 UTC, past midnight in Vienna
    sign_in_again(house)
    assert later == datetime(2026, 6, 10, 22, 30, tzinfo=UTC)
    assert house.publish(house.new_client(), legs())["effective_on"] == "2026-06-11"
    assert house.publish(house.new_client(time_zone="Pacific/Honolulu"), legs())["effective_on"] == "2026-06-10"


def test_the_next_version_says_what_is_new_and_the_old_one_stays(house, client_id):
    first = house.publish(client_id, legs())
    second = house.publish(client_id, legs(sessions=[circuit(rounds=2)]), note="Knee sore on stairs")
    assert (second["number"], second["note"]) == (2, "Knee sore on stairs")
    assert second["changes"] == ["Rounds: 2 instead of 3 in Steps and hips"]
    assert house.get(f"/clients/{client_id}/programs/1") == first
    assert house.get(f"/clients/{client_id}/programs/current") == second
    listed = house.get(f"/clients/{client_id}/programs")["items"]
    assert [one["number"] for one in listed] == [2, 1]
    assert "content" not in listed[0]


def test_what_is_published_is_normalised(house, client_id):
    goal = {"name": "Harrowcomb traverse", "date": "2026-08-01"}
    whole = legs(goal=goal, ends_on=None)
    whole["days"].reverse()
    published = house.publish(client_id, whole)["content"]
    assert published["ends_on"] == "2026-07-31"
    assert published["days"] == sorted(whole["days"], key=lambda day: day["date"])


def test_the_phone_gets_the_version_with_its_exercises(house, client_id):
    phone = house.pair(client_id)
    published = house.publish(client_id, legs())
    (body,) = [change["body"] for change in phone.sync()["changes"] if change["kind"] == "program"]
    assert {body[name] == published[name] for name in ("id", "number", "effective_on", "changes", "content")} == {True}
    assert datetime.fromisoformat(body["published_at"]) == datetime.fromisoformat(published["published_at"])
    assert [entry["code"] for entry in body["exercises"]] == ["step-down"]
    assert len(body["exercises"][0]["ladder"]) > 1
    assert "note" not in body


def test_a_stale_tag_is_refused_with_the_current_number_and_nothing_is_published(house, client_id):
    put(house, client_id, legs(), '"0"')
    put(house, client_id, legs(title="Second"), '"1"')
    refused = put(house, client_id, legs(title="Too late"), '"1"', status=412)
    assert refused.headers["ETag"] == '"2"'
    assert refused.json()["current_number"] == 2
    assert house.get(f"/clients/{client_id}/programs/current")["content"]["title"] == "Second"


def test_a_tag_that_names_no_version_matches_none(house, client_id):
    for tag in ('"1"', '"v1"', "*", "nonsense", '"99999999999"'):
        refused = put(house, client_id, legs(), tag, status=412)
        assert refused.json()["current_number"] is None, tag


def test_a_tag_that_a_proxy_weakened_still_matches(house, client_id):
    put(house, client_id, legs())
    put(house, client_id, legs(), 'W/"1"')


def test_the_current_program_carries_the_tag_to_publish_with(house, client_id):
    house.publish(client_id, legs())
    tag = house.http.get(f"{API}/clients/{client_id}/programs/current").headers["ETag"]
    assert put(house, client_id, legs(title="Next"), tag).json()["number"] == 2


def test_errors_stop_publishing_and_point_into_the_body(house, client_id):
    broken = legs(sessions=[circuit(prescriptions=[step_down(reps_low=12, reps_high=8)])])
    refused = put(house, client_id, broken, status=422).json()
    assert refused["code"] == "program-has-errors"
    assert [one["pointer"] for one in refused["errors"]] == ["/body/content/sessions/0/prescriptions/0/reps_low"]
    house.get(f"/clients/{client_id}/programs/current", status=404)


def test_warnings_do_not_stop_publishing(house):
    bare = house.new_client(kit=[])
    assert house.publish(bare, legs())["number"] == 1


def test_a_malformed_body_is_refused_field_by_field_without_echo(house, client_id):
    secret = "knee operated in spring"
    refused = put(house, client_id, legs(title=7, colour=secret), status=422)
    pointers = {one["pointer"] for one in refused.json()["errors"]}
    assert pointers == {"/body/content/title", "/body/content/colour"}
    assert secret not in refused.text


def test_checks_tell_problems_changes_minutes_and_load_and_save_nothing(house, client_id):
    house.publish(client_id, legs())
    new = legs(sessions=[circuit(rounds=2, prescriptions=[step_down(variant="step-20-pack")])])
    answer = house.post(f"/clients/{client_id}/programs/checks", {"content": new}, status=200)
    assert [one["code"] for one in answer["problems"]] == ["kit_missing", "no_load", "not_screened"]
    assert answer["problems"][0]["fix"]["mends"] == [
        {"pointer": "/sessions/0/prescriptions/0/variant", "value": "step-20"}
    ]
    assert len(answer["changes"]) == 2
    assert answer["sessions"] == [{"key": "s1", "sets": 2, "minutes": 30, "planned_load": 150.0}]
    assert answer["weeks"][1] == {"starts_on": "2026-06-15", "sessions": 3, "minutes": 90, "planned_load": 450.0}
    assert house.get(f"/clients/{client_id}/programs/current")["number"] == 1


def test_the_service_answers_which_version_was_in_force(house, client_id, clock, database):
    house.publish(client_id, legs())
    clock.forward(days=5)
    sign_in_again(house)
    house.publish(client_id, legs(title="Second"))
    with database.read() as session:

        def number_on(day):
            found = service.in_force(service.versions_of(session, house.practice_id, client_id), day)
            return found.number if found else None

        days = [TODAY + timedelta(days=after) for after in (-1, 0, 4, 5)]
        assert [number_on(day) for day in days] == [None, 1, 1, 2]
        of_practice = service.versions_of_practice(session, house.practice_id)
        assert of_practice == {client_id: service.versions_of(session, house.practice_id, client_id)}


CALLS = [
    ("GET", "/programs", None),
    ("GET", "/programs/current", None),
    ("GET", "/programs/1", None),
    ("GET", "/programs/draft", None),
    ("DELETE", "/programs/draft", None),
    ("PUT", "/programs/draft", {"content": legs()}),
    ("POST", "/programs", {"content": legs()}),
    ("POST", "/programs/checks", {"content": legs()}),
    ("POST", "/programs/drafts/from-template", {"template": "descent-legs", "starts_on": "2026-06-10"}),
]


def test_another_practice_sees_and_changes_nothing(house, other_house, client_id):
    house.publish(client_id, legs())
    house.http.put(f"{API}/clients/{client_id}/programs/draft", json={"content": legs()})
    for method, path, body in CALLS:
        answer = other_house.http.request(method, f"{API}/clients/{client_id}{path}", json=body)
        assert answer.status_code == 404, (method, path)
    assert [one["number"] for one in house.get(f"/clients/{client_id}/programs")["items"]] == [1]
    assert house.get(f"/clients/{client_id}/programs/draft")["version"] == 1


def test_a_stranger_must_sign_in(app, house, client_id):
    stranger = TestClient(app, base_url="https://testserver")
    for method, path, body in CALLS:
        answer = stranger.request(method, f"{API}/clients/{client_id}{path}", json=body)
        assert answer.status_code == 401, (method, path)


def test_a_version_that_is_not_there_is_not_found(house, client_id):
    house.get(f"/clients/{client_id}/programs/current", status=404)
    house.get(f"/clients/{client_id}/programs/9", status=404)
    house.get(f"/clients/{client_id}/programs/0", status=422)
    assert house.get(f"/clients/{client_id}/programs") == {"items": []}


def test_of_two_practitioners_who_publish_at_once_one_is_told(house, client_id, monkeypatch):
    """Where several may write at once, both have read "no version yet" before either has written."""
    house.publish(client_id, legs())
    monkeypatch.setattr(service, "current", lambda session, practice_id, client_id: None)
    refused = put(house, client_id, legs(title="At the same time"), status=412)
    assert refused.json()["current_number"] == 1
    monkeypatch.undo()
    assert [one["title"] for one in house.get(f"/clients/{client_id}/programs")["items"]] == ["Legs for Harrowcomb"]


def test_what_is_derived_from_the_plan_is_brought_up_to_date(house, client_id, app):
    told = []
    app.state.client_changed = lambda session, practice_id, client_id: told.append((practice_id, client_id))
    house.publish(client_id, legs())
    assert told == [(house.practice_id, client_id)]
