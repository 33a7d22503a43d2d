"""Taking people on, changing what is known of them, and keeping practices apart."""

from typing import Any

import pytest

from tests.builders import API, House

FULL = {
    "display_name": "Emil Tarrow",
    "birth_year": 1961,
    "sex": "female",
    "height_cm": 171.5,
    "body_mass_kg": 68,
    "time_zone": "America/Denver",
    "kit": ["step", "band"],
    "usual_pain": 3,
    "thresholds": {"pain_stop": 5},
    "note": "Left knee, downhill.",
}


def test_a_client_is_answered_as_given_and_with_the_practices_zone_where_none_was(house: House) -> None:
    full, least = house.post("/clients", FULL), house.post("/clients", {"display_name": "  Runa Velk "})
    assert {name: full[name] for name in FULL} == FULL
    assert (full["archived_at"], full["version"], full["created_at"]) == (None, 1, "2026-06-10T08:00:00Z")
    assert least["display_name"] == "Runa Velk"
    assert (least["time_zone"], least["birth_year"], least["kit"]) == ("Europe/Vienna", None, [])
    assert (least["sex"], least["height_cm"], least["body_mass_kg"]) == (None, None, None)
    assert least["thresholds"] == {"pain_stop": 6}
    assert house.get(f"/clients/{full['id']}") == full


def test_the_list_is_by_name_and_begins_empty(house: House) -> None:
    assert house.get("/clients") == {"items": []}
    for name in ("Veit", "Anouk", "Mirre"):
        house.new_client(name)
    assert [client["display_name"] for client in house.get("/clients")["items"]] == ["Anouk", "Mirre", "Veit"]


@pytest.mark.parametrize(
    ("fault", "pointer"),
    [
        ({"display_name": ""}, "/body/display_name"),
        ({"display_name": "   "}, "/body/display_name"),
        ({"display_name": "n" * 121}, "/body/display_name"),
        ({"display_name": "a\x00b"}, "/body/display_name"),
        ({"display_name": 7}, "/body/display_name"),
        ({"birth_year": 1899}, "/body/birth_year"),
        ({"birth_year": "1961"}, "/body/birth_year"),
        ({"birth_year": True}, "/body/birth_year"),
        ({"sex": "other"}, "/body/sex"),
        ({"height_cm": 99.9}, "/body/height_cm"),
        ({"height_cm": 230.1}, "/body/height_cm"),
        ({"height_cm": "171"}, "/body/height_cm"),
        ({"body_mass_kg": 24.9}, "/body/body_mass_kg"),
        ({"body_mass_kg": 300.1}, "/body/body_mass_kg"),
        ({"body_mass_kg": True}, "/body/body_mass_kg"),
        ({"time_zone": "Middle/Earth"}, "/body/time_zone"),
        ({"time_zone": "../../etc/passwd"}, "/body/time_zone"),
        ({"kit": ["anvil"]}, "/body/kit/0"),
        ({"kit": ["step"] * 31}, "/body/kit"),
        ({"usual_pain": 11}, "/body/usual_pain"),
        ({"usual_pain": -1}, "/body/usual_pain"),
        ({"usual_pain": None}, "/body/usual_pain"),
        ({"thresholds": {"pain_stop": 2}}, "/body/thresholds/pain_stop"),
        ({"thresholds": {"other": 2}}, "/body/thresholds/other"),
        ({"note": "n" * 4001}, "/body/note"),
        ({"practice_id": "x"}, "/body/practice_id"),
        ({"id": "x"}, "/body/id"),
        ({"version": 9}, "/body/version"),
        ({"change_head": 9}, "/body/change_head"),
    ],
)
def test_what_cannot_be_is_refused_by_its_field_and_stores_nobody(
    house: House, fault: dict[str, Any], pointer: str
) -> None:
    problem = house.post("/clients", {**FULL, **fault}, status=422)
    assert [error["pointer"] for error in problem["errors"]] == [pointer]
    assert house.get("/clients")["items"] == []


def test_names_that_look_alike_are_stored_alike(house: House) -> None:
    names = [house.post("/clients", {"display_name": name})["display_name"] for name in ("Zoe\u0308", "Zo\u00eb")]
    assert names == ["Zo\u00eb", "Zo\u00eb"]


def test_a_name_that_grows_when_it_is_normalised_is_held_to_the_same_length(house: House) -> None:
    house.post("/clients", {"display_name": "\u0958" * 120}, status=422)
    house.post("/clients", {"display_name": "\u0958" * 60})


def test_a_change_keeps_what_it_does_not_name_and_counts_the_version(house: House) -> None:
    client = house.post("/clients", FULL)
    response = house.http.patch(f"{API}/clients/{client['id']}", json={"usual_pain": 1, "birth_year": None})
    changed = response.json()
    assert changed == {**client, "usual_pain": 1, "birth_year": None, "version": 2}
    assert response.headers["ETag"] == '"v2"'
    assert house.http.get(f"{API}/clients/{client['id']}").headers["ETag"] == '"v2"'


def test_what_norms_need_may_be_made_unknown_again_and_never_goes_to_the_phone(house: House) -> None:
    client = house.post("/clients", FULL)
    unknown = {"sex": None, "height_cm": None, "body_mass_kg": None}
    changed = house.http.patch(f"{API}/clients/{client['id']}", json=unknown).json()
    assert changed == {**client, **unknown, "version": 2}
    changed = house.http.patch(f"{API}/clients/{client['id']}", json={"sex": "male", "height_cm": 100}).json()
    assert (changed["sex"], changed["height_cm"], changed["body_mass_kg"]) == ("male", 100, None)
    settings = [c["body"] for c in house.pair(client["id"]).sync()["changes"] if c["kind"] == "settings"]
    assert not any(set(unknown) & set(body) for body in settings)


def test_a_change_over_a_colleagues_is_refused_and_changes_nothing(house: House) -> None:
    client_id = house.new_client()
    path = f"{API}/clients/{client_id}"
    etag = house.http.get(path).headers["ETag"]
    assert house.http.patch(path, json={"note": "mine"}, headers={"If-Match": etag}).status_code == 200
    stale = house.http.patch(path, json={"note": "yours"}, headers={"If-Match": etag})
    assert (stale.status_code, stale.json()["code"], stale.headers["ETag"]) == (412, "stale", '"v2"')
    assert house.get(f"/clients/{client_id}")["note"] == "mine"
    assert house.http.patch(path, json={"note": "unguarded"}).status_code == 200


def test_archiving_is_undone_and_archiving_twice_keeps_the_first_day(house: House, clock: Any) -> None:
    client_id = house.new_client()
    path = f"{API}/clients/{client_id}"
    first = house.http.patch(path, json={"archived": True}).json()["archived_at"]
    clock.forward(minutes=5)
    assert house.http.patch(path, json={"archived": True}).json()["archived_at"] == first == "2026-06-10T08:00:00Z"
    assert house.http.patch(path, json={"archived": False}).json()["archived_at"] is None
    for odd in ("true", 1, 0):
        assert house.http.patch(path, json={"archived": odd}).status_code == 422


def test_the_phone_of_an_archived_client_is_still_heard(house: House) -> None:
    client_id = house.new_client()
    phone = house.pair(client_id)
    house.http.patch(f"{API}/clients/{client_id}", json={"archived": True})
    phone.log("note_written", {"text": "still here"})
    assert phone.sync()["acknowledged_through"] == 1
    assert len(house.get(f"/clients/{client_id}/timeline")["items"]) == 1


def test_another_practices_client_looks_like_one_that_does_not_exist(house: House, other_house: House) -> None:
    client_id = house.new_client()
    other_house.new_client("Somebody else")
    for path in ("", "/devices", "/timeline", "/refused-events"):
        theirs = other_house.get(f"/clients/{client_id}{path}", status=404)
        nobodys = other_house.get(f"/clients/01977777-7777-7777-8777-777777777777{path}", status=404)
        assert {**theirs, "instance": ""} == {**nobodys, "instance": ""}
    assert other_house.http.patch(f"{API}/clients/{client_id}", json={"note": "taken"}).status_code == 404
    other_house.post(f"/clients/{client_id}/invitations", {"delivery": "link"}, status=404)
    assert [client["display_name"] for client in other_house.get("/clients")["items"]] == ["Somebody else"]
    assert house.get(f"/clients/{client_id}")["version"] == 1
