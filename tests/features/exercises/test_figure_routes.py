"""Drawings over HTTP."""

import pytest
from fastapi.testclient import TestClient

from steadfoot.exercises.drawings import poses
from tests.builders import API, content
from tests.conftest import START

SQUAT = "/exercises/squat/figure.svg?variant=free"


@pytest.mark.parametrize("form", ["", "&form=still", "&form=strip"])
def test_a_variant_is_drawn_in_each_form(house, form):
    answer = house.http.get(f"{API}{SQUAT}{form}")
    assert answer.status_code == 200
    assert answer.headers["content-type"] == "image/svg+xml"
    assert answer.text.startswith("<svg ")
    assert ("@keyframes" in answer.text) == (form == "")


def test_a_copy_that_is_up_to_date_is_not_sent_again(house):
    etag = house.http.get(f"{API}{SQUAT}").headers["ETag"]
    assert not etag.startswith("W/")
    again = house.http.get(f"{API}{SQUAT}", headers={"If-None-Match": etag})
    assert (again.status_code, again.content) == (304, b"")
    still = house.http.get(f"{API}{SQUAT}&form=still", headers={"If-None-Match": etag})
    assert still.status_code == 200


def test_the_second_view_is_another_picture(house):
    base = f"{API}/exercises/step-down/figure.svg?variant=step-15"
    side, front = house.http.get(base), house.http.get(f"{base}&view=front")
    assert side.status_code == front.status_code == 200
    assert side.content != front.content


@pytest.mark.parametrize(
    ("code", "asked"),
    [
        ("unheard-of", {"variant": "free"}),
        ("squat", {"variant": "unheard-of"}),
        ("squat", {"variant": "free", "view": "top"}),
    ],
)
def test_what_is_not_drawn_is_not_found(house, code, asked):
    assert house.get(f"/exercises/{code}/figure.svg", status=404, **asked)["code"] == "not-found"


def test_a_variant_must_be_named(house):
    assert house.get("/exercises/squat/figure.svg", status=422)["code"] == "validation"


def test_an_image_element_may_ask_for_it_without_signing_in(app):
    answer = TestClient(app, base_url="https://testserver").get(f"{API}{SQUAT}&form=still")
    assert answer.status_code == 200
    assert "public" in answer.headers["Cache-Control"]
    assert answer.headers["X-Content-Type-Options"] == "nosniff"
    policy = answer.headers["Content-Security-Policy"]
    assert "default-src 'none'" in policy
    assert "sandbox" in policy
    assert "script-src" not in policy


def test_the_library_says_which_variants_are_drawn(house):
    for entry in house.get("/exercises")["items"]:
        for rung in entry["ladder"]:
            assert rung["drawn"] == (rung["variant"] in poses().get(entry["code"], {}))
    assert any(rung["drawn"] for rung in house.get("/exercises/squat")["ladder"])


def test_a_phone_is_told_which_of_its_movements_are_drawn(house):
    client_id = house.new_client()
    house.publish(client_id, content(START.date()))
    changes = house.pair(client_id).sync()["changes"]
    [entries] = [change["body"]["exercises"] for change in changes if change["kind"] == "program"]
    assert entries
    assert all(isinstance(rung["drawn"], bool) for entry in entries for rung in entry["ladder"])


def test_every_drawing_is_listed_with_a_version_and_whether_it_is_finished(app):
    http = TestClient(app, base_url="https://testserver")
    assert http.get(f"{API}{SQUAT}").status_code == 200
    answer = http.get(f"{API}/drawings")
    items = {(one["exercise"], one["variant"]): one for one in answer.json()["items"]}
    assert set(items) == {(code, variant) for code, variants in poses().items() for variant in variants}
    assert len({one["version"] for one in items.values()}) == len(items)
    assert items["squat", "free"]["ready"] is True
    again = http.get(f"{API}/drawings", headers={"If-None-Match": answer.headers["ETag"]})
    assert (again.status_code, again.content) == (304, b"")
