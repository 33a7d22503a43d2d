"""The library over HTTP."""

from fastapi.testclient import TestClient

from steadfoot.exercises.service import library
from tests.builders import API


def test_the_practitioner_sees_the_whole_library(house):
    items = house.get("/exercises")["items"]
    assert [item["code"] for item in items] == list(library())
    assert items[0]["ladder"][0]["dose"].keys() <= {"reps", "hold_s"}


def test_a_paired_phone_may_read_it_too(house):
    phone = house.pair(house.new_client())
    answer = phone.http.get(f"{API}/exercises", headers={"Authorization": f"Bearer {phone.token}"})
    assert answer.status_code == 200


def test_a_stranger_may_not(app):
    stranger = TestClient(app, base_url="https://testserver")
    assert stranger.get(f"{API}/exercises").status_code == 401
    assert stranger.get(f"{API}/exercises/clam").status_code == 401


def test_a_copy_that_is_up_to_date_is_not_sent_again(house):
    for path in ("/exercises", "/exercises/clam"):
        etag = house.http.get(f"{API}{path}").headers["ETag"]
        for held in (etag, f"W/{etag}", f'"other", {etag}'):
            again = house.http.get(f"{API}{path}", headers={"If-None-Match": held})
            assert (again.status_code, again.content) == (304, b"")
        assert house.http.get(f"{API}{path}", headers={"If-None-Match": '"older"'}).status_code == 200


def test_one_movement_by_its_code(house):
    assert house.get("/exercises/step-down")["name"] == "Step-down"


def test_an_unknown_code_is_not_found(house):
    assert house.get("/exercises/unheard-of", status=404)["code"] == "not-found"
