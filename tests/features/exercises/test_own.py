"""A practice's own movements over HTTP: written, changed, archived, and used like the library's."""

from typing import Any

import pytest
from fastapi.testclient import TestClient

from tests.builders import API, House, circuit, content, step_down
from tests.conftest import START, StandingClock
from tests.features.exercises.own import FALLING, STANDING, make, own_body, rung
from tests.features.sheets.reading import whole


def _entry(house: House, code: str) -> dict[str, Any]:
    return next(one for one in house.get("/exercises")["items"] if one["code"] == code)


def _program(code: str) -> dict[str, Any]:
    one = step_down(exercise=code, variant="v1", sides="both", tempo_down_s=None)
    return content(START.date(), sessions=[circuit(prescriptions=[one])])


def _put(house: House, code: str, body: dict[str, Any], tag: str, status: int = 200) -> Any:
    answer = house.http.put(f"{API}/exercises/own/{code}", json=body, headers={"If-Match": tag})
    assert answer.status_code == status, answer.text
    return answer.json()


def _figure(http: TestClient, code: str, variant: str = "v1", form: str = "still") -> Any:
    return http.get(f"{API}/exercises/{code}/figure.svg", params={"variant": variant, "form": form})


def test_it_stands_among_the_librarys_movements_with_its_drawing(house: House) -> None:
    made = make(house)
    entry = _entry(house, made["code"])
    assert (entry["name"], entry["own"]["version"], entry["own"]["archived"]) == ("Ridge bend", 1, False)
    assert [one["drawn"] for one in entry["ladder"]] == [True]
    assert house.get(f"/exercises/{made['code']}") == entry
    for form in ("still", "moving", "strip"):
        answer = _figure(TestClient(house.app), entry["own"]["drawing"], form=form)
        assert answer.status_code == 200
        assert answer.text.startswith("<svg")


def test_who_was_not_told_the_key_sees_no_drawing(house: House) -> None:
    made = make(house)
    for guess in (made["code"], "own-", "own-" + "0" * 26):
        assert _figure(house.http, guess).status_code == 404


def test_another_practice_does_not_have_it(house: House, other_house: House) -> None:
    made = make(house)
    assert all(one["own"] is None for one in other_house.get("/exercises")["items"])
    other_house.get(f"/exercises/{made['code']}", status=404)
    client_id = other_house.new_client()
    refused = other_house.post(f"/clients/{client_id}/programs", {"content": _program(made["code"])}, status=422)
    assert refused["errors"][0]["code"] == "unknown_exercise"
    make(other_house)  # a name is taken in its own practice only


def test_a_program_takes_it_to_the_phone_whole(house: House) -> None:
    made = make(house)
    client_id = house.new_client()
    house.publish(client_id, _program(made["code"]))
    (change,) = [one for one in house.pair(client_id).sync()["changes"] if one["kind"] == "program"]
    (entry,) = change["body"]["exercises"]
    assert entry == _entry(house, made["code"])


def test_a_published_program_keeps_its_words_and_its_drawing(house: House, clock: StandingClock) -> None:
    made = make(house)
    client_id = house.new_client()
    house.publish(client_id, _program(made["code"]))
    sheet = f"{API}/clients/{client_id}/programs/current/sheet.pdf"
    key = _entry(house, made["code"])["own"]["drawing"]
    before = _figure(house.http, key).content
    clock.forward(hours=1)
    deep = STANDING | {"keys": {"up": {"t": 0, "aim": {"knee.R": 4}}, "down": {"t": 1, "aim": {"knee.R": 75}}}}
    body = own_body("Ridge bend", {"v1": deep}, cues=["Slow as a snail.", "Keep your heels down.", "Look ahead."])
    assert _put(house, made["code"], body, '"1"')["version"] == 2
    assert _figure(house.http, key).content == before
    assert _entry(house, made["code"])["own"]["drawing"] != key
    assert "Slow as a snail" not in whole(house.http.get(sheet).content)
    house.publish(client_id, _program(made["code"]))
    assert "Slow as a snail" in whole(house.http.get(sheet).content)


def test_a_sheet_shows_its_key_poses(house: House) -> None:
    sizes = []
    for poses in ({"v1": STANDING}, {}):
        made = make(house, f"Bend {len(poses)}", poses)
        client_id = house.new_client()
        house.publish(client_id, _program(made["code"]))
        sizes.append(len(house.http.get(f"{API}/clients/{client_id}/programs/current/sheet.pdf").content))
    assert sizes[0] > sizes[1]


def test_a_class_sheet_takes_it(house: House) -> None:
    made = make(house)
    body = {"title": "Knees", "movements": [{"exercise": made["code"], "variant": "v1"}]}
    answer = house.http.post(f"{API}/class-sheets", json=body)
    assert answer.status_code == 200
    assert "Ridge bend" in whole(answer.content)


def test_it_is_found_instead_of_others_until_it_is_archived(house: House) -> None:
    made = make(house, trains=["hip_control", "knee_control"], loads=["knee"])
    found = house.get("/exercises/squat/alternatives")["items"]
    assert made["code"] in [one["exercise"] for one in found]
    house.http.patch(f"{API}/exercises/own/{made['code']}", json={"archived": True})
    found = house.get("/exercises/squat/alternatives")["items"]
    assert made["code"] not in [one["exercise"] for one in found]


def test_an_archived_movement_stays_in_programs_and_comes_back(house: House) -> None:
    made = make(house)
    client_id = house.new_client()
    house.publish(client_id, _program(made["code"]))
    path = f"{API}/exercises/own/{made['code']}"
    answer = house.http.patch(path, json={"archived": True}, headers={"If-Match": '"1"'})
    assert (answer.json()["archived"], answer.headers["ETag"]) == (True, '"1a"')
    assert _entry(house, made["code"])["own"]["archived"] is True
    house.publish(client_id, _program(made["code"]))
    assert house.http.patch(path, json={"archived": False}, headers={"If-Match": '"1"'}).status_code == 412
    assert house.http.patch(path, json={"archived": False}, headers={"If-Match": '"1a"'}).json()["archived"] is False


def test_a_colleagues_change_is_not_written_over(house: House) -> None:
    made = make(house)
    assert house.http.get(f"{API}/exercises/own/{made['code']}").headers["ETag"] == '"1"'
    _put(house, made["code"], own_body("Ridge bend, slow"), '"1"')
    refused = _put(house, made["code"], own_body("Ridge bend, fast"), '"1"', status=412)
    assert refused["current_number"] == 2


def test_a_drawing_that_a_body_cannot_do_is_kept_and_not_used(house: House) -> None:
    made = make(house, poses={"v1": FALLING})
    assert [one["fault"] for one in made["findings"]["v1"]] == ["falls over"]
    assert made["poses"]["v1"]["keys"]["down"]["pelvis"]["x"] == -0.2
    entry = _entry(house, made["code"])
    assert entry["ladder"][0]["drawn"] is False
    assert _figure(house.http, entry["own"]["drawing"]).status_code == 404


def test_a_variant_that_was_saved_stays(house: House) -> None:
    made = make(house)
    refused = _put(house, made["code"], own_body("Ridge bend", {}, ladder=[rung("v2")]), '"1"', status=422)
    assert refused["errors"][0]["pointer"] == "/body/text/ladder"
    _put(house, made["code"], own_body("Ridge bend", ladder=[rung("v2"), rung("v1")]), '"1"')


@pytest.mark.parametrize("taken", ["Squat", "ridge BEND"])
def test_two_movements_have_not_one_name(house: House, taken: str) -> None:
    make(house)
    assert house.post("/exercises/own", own_body(taken), status=409)["code"] == "exercise-name-taken"


def test_words_of_any_language_begin_with_a_capital(house: House) -> None:
    make(house, "Öffnen", cues=["Öffne die Hand.", "Ärmel hoch.", "Über die Zehen schauen."])


@pytest.mark.parametrize(
    ("field", "value", "pointer"),
    [
        ("name", "", "/body/text/name"),
        ("name", "nul\0", "/body/text/name"),
        ("trains", ["flying"], "/body/text/trains/0"),
        ("cues", ["no capital.", "Keep low.", "Look ahead."], "/body/text/cues/0"),
        ("cues", ["One only."], "/body/text/cues"),
        ("ladder", [], "/body/text/ladder"),
        ("ladder", [rung(kit=["rocket"])], "/body/text/ladder/0/kit/0"),
        ("ladder", [rung(dose={"reps": [0, 900]})], "/body/text/ladder/0/dose/RepetitionDose/reps/0"),
        ("ladder", [rung(dose={"reps": [12, 8]})], "/body/text"),
        ("ladder", [rung(drawn=True)], "/body/text/ladder/0/drawn"),
        ("code", "squat", "/body/text/code"),
    ],
)
def test_words_that_are_not_in_order_are_refused_at_their_field(
    house: House, field: str, value: Any, pointer: str
) -> None:
    body = own_body("Ridge bend")
    body["text"][field] = value
    refused = house.post("/exercises/own", body, status=422)
    assert pointer in [one["pointer"] for one in refused["errors"]]


@pytest.mark.parametrize(
    ("change", "pointer"),
    [
        ({"wings": 2}, "/body/poses/v1/wings"),
        ({"contacts": ["tail"]}, "/body/poses/v1/contacts"),
        ({"contacts": []}, "/body/poses/v1/contacts"),
        ({"poster": "sideways"}, "/body/poses/v1/poster"),
        ({"seconds": 900}, "/body/poses/v1/seconds"),
        ({"solve": {"pelvis.z": "elbow.R"}}, "/body/poses/v1/solve/pelvis/z"),
        ({"keys": STANDING["keys"] | {"up": {"t": 0.5, "aim": {"knee.R": 4}}}}, "/body/poses/v1/keys"),
    ],
)
def test_poses_that_are_not_in_order_are_refused_at_their_field(
    house: House, change: dict[str, Any], pointer: str
) -> None:
    refused = house.post("/exercises/own", own_body("Ridge bend", {"v1": STANDING | change}), status=422)
    assert refused["errors"][0]["pointer"] == pointer, refused
    strange = house.post("/exercises/own", own_body("Ridge bend", {"v9": STANDING}), status=422)
    assert strange["errors"][0]["pointer"] == "/body/poses/v9"
