"""The client's program on paper, through HTTP."""

import re
from typing import Any

import pytest
from fastapi.testclient import TestClient

from steadfoot.exercises.gallery import Gallery
from steadfoot.exercises.service import library
from tests.builders import API, House, circuit, content, may_instead, step_down
from tests.conftest import START, StandingClock
from tests.features.sheets.reading import drawing_scale, pages, size_pt, whole

WALK = {
    "key": "w1", "kind": "walk", "name": "Over the weir", "distance_km": 8.5, "ascent_m": 300, "descent_m": 300,
    "pack_kg": 4, "expected_effort": 4,
}  # fmt: skip


USUAL_SCALE = {1: 0.084, 2: 0.065, 7: 0.05}
"""By number of movements: points a drawing unit, a thousandth of a person, at the least height of drawings."""


def _program(**more: Any) -> dict[str, Any]:
    found = content(START.date(), sessions=[circuit(), WALK])
    found["days"].append({"date": "2026-06-13", "session": "w1", "fixed_day": False})
    return found | more


def _client(house: House, program: dict[str, Any] | None = None, name: str = "Emil Tarrow", **more: Any) -> str:
    client_id = house.new_client(name, **more)
    house.publish(client_id, program or _program())
    return client_id


def _print(house: House, client_id: str, **params: Any) -> bytes:
    response = house.http.get(f"{API}/clients/{client_id}/programs/current/sheet.pdf", params=params)
    assert response.status_code == 200, response.text
    return response.content


def test_a_sheet_says_what_to_do_how_much_and_when_to_stop(house: House) -> None:
    pdf = _print(house, _client(house, thresholds={"pain_stop": 4}))
    text = whole(pdf)
    rung = library()["step-down"].ladder[0]
    for said in (
        "Legs for Harrowcomb", "For Emil Tarrow", "Harrowcomb traverse", "Thornwater Physical Therapy",
        "Step-down", rung.name, "8 to 10 repetitions, each side in turn", "3 rounds", *rung.how,
        *library()["step-down"].cautions, "step and rail", "pain is 4 of 10 or more",
        "call your local emergency number", "https://steadfoot.test/app/", "8.5 km", "300 m up", "pack 4 kg",
    ):  # fmt: skip
        assert said in text, said


def test_boxes_begin_with_the_running_week_and_end_with_the_program(house: House, clock: StandingClock) -> None:
    client_id = _client(house)
    first = whole(_print(house, client_id))
    assert [day for day in ("8 Jun", "15 Jun", "22 Jun", "29 Jun", "6 Jul") if f"{day} " in first] == [
        "8 Jun", "15 Jun", "22 Jun", "29 Jun",
    ]  # fmt: skip
    clock.forward(days=14)
    house.http.post(
        f"{API}/sign-in", json={"email": "maren@thornwater.example", "password": "five huts over one ridge"}
    )
    later = whole(_print(house, client_id))
    assert "22 Jun" in later
    assert "15 Jun" not in later


def test_a_program_that_is_over_says_so_instead_of_boxes(house: House, clock: StandingClock) -> None:
    client_id = _client(house)
    clock.forward(days=200)
    house.http.post(
        f"{API}/sign-in", json={"email": "maren@thornwater.example", "password": "five huts over one ridge"}
    )
    assert "No planned days are left" in whole(_print(house, client_id))


def test_one_session_alone_is_on_one_page(house: House) -> None:
    client_id = _client(house, _program(sessions=[circuit(prescriptions=[step_down(f"p{n}") for n in range(6)]), WALK]))
    alone = pages(_print(house, client_id, session="s1"))
    assert len(alone) == 1
    assert "Over the weir" not in alone[0]
    assert "emergency number" in alone[0]
    assert "Page 1 of 1" in alone[0]


def test_a_session_that_the_program_does_not_have_is_not_found(house: House) -> None:
    client_id = _client(house)
    for key, status in (("s9", 404), ("Not a key!", 422)):
        response = house.http.get(f"{API}/clients/{client_id}/programs/current/sheet.pdf", params={"session": key})
        assert response.status_code == status
        assert response.headers["Content-Type"] == "application/problem+json"


def test_before_the_first_program_there_is_no_sheet_and_no_invitation(house: House) -> None:
    client_id = house.new_client()
    for method in ("GET", "POST"):
        response = house.http.request(method, f"{API}/clients/{client_id}/programs/current/sheet.pdf")
        assert (response.status_code, response.json()["code"]) == (404, "not-found")


@pytest.mark.parametrize(("paper", "size"), [("a4", (595, 842)), ("letter", (612, 792))])
def test_paper_is_the_one_that_was_chosen(house: House, paper: str, size: tuple[int, int]) -> None:
    assert size_pt(_print(house, _client(house), paper=paper)) == size


def test_large_print_says_the_same_on_more_paper(house: House) -> None:
    client_id = _client(house, _program(sessions=[circuit(prescriptions=[step_down(f"p{n}") for n in range(6)]), WALK]))
    small, large = _print(house, client_id), _print(house, client_id, large=True)
    assert len(pages(large)) > len(pages(small))
    for caution in library()["step-down"].cautions:
        assert whole(large).count(caution) == 6


def test_german_words_stand_around_the_texts_of_the_library(house: House) -> None:
    text = whole(_print(house, _client(house), language="de"))
    assert "8 bis 10 Wiederholungen, jede Seite nacheinander" in text
    assert "örtlichen Notruf" in text
    assert "8,5 km" in text
    assert library()["step-down"].ladder[0].how[0] in text


def test_a_drawing_is_printed_where_there_is_one(house: House, monkeypatch: pytest.MonkeyPatch) -> None:
    client_id = _client(house)
    with_one = _print(house, client_id)
    monkeypatch.setattr(Gallery, "strip_of", lambda *_: None)
    without = _print(house, client_id)
    assert len(with_one) > len(without)
    assert pages(with_one)[0].startswith(pages(without)[0][:40])


@pytest.mark.parametrize(("movements", "large", "papers"), [(1, False, 1), (7, False, 2), (2, True, 2)])
def test_drawings_take_the_room_that_there_is_and_no_further_paper(
    house: House, movements: int, large: bool, papers: int
) -> None:
    some = [circuit(prescriptions=[step_down(f"p{n}") for n in range(movements)])]
    pdf = _print(house, _client(house, content(START.date(), sessions=some)), large=large)
    assert len(pages(pdf)) == papers
    assert drawing_scale(pdf) > 1.4 * USUAL_SCALE[movements]


@pytest.mark.parametrize(
    ("language", "said"),
    [
        ("en", "Or instead: Squat, without a chair, 6 to 8 repetitions, each side in turn, with 4 kg. Without a step."),
        ("de", "Oder stattdessen: Squat, without a chair, 6 bis 8 Wiederholungen, jede Seite nacheinander, mit 4 kg."),
    ],
)
def test_what_may_be_done_instead_is_printed_with_its_dose_and_reason(house: House, language: str, said: str) -> None:
    some = [circuit(prescriptions=[step_down(alternatives=[may_instead(load_kg=4)])])]
    client_id = _client(house, content(START.date(), sessions=some))
    assert said in whole(_print(house, client_id, language=language))


def test_only_a_sheet_that_is_asked_for_it_carries_an_invitation(house: House) -> None:
    client_id = _client(house)
    path = f"{API}/clients/{client_id}/programs/current/sheet.pdf"
    assert "Pair your phone" not in whole(house.http.get(path).content)
    text = whole(house.http.post(path).content)
    assert "works once, until Saturday 13 June 2026, 10:00" in text
    found = re.search(r"(?:[0-9A-Z]{5}- ?)+[0-9A-Z]{1,5}", text)  # it may take two lines, broken after a dash
    assert found is not None
    code = found.group().replace(" ", "")
    visitor = TestClient(house.app, base_url="https://testserver")
    paired = visitor.post(f"{API}/pairings", json={"code": code})
    # A paper may lie where others read it: the practice compares a number before the phone is let in.
    assert (paired.status_code, paired.json()["status"]) == (201, "awaiting_confirmation")
    assert visitor.post(f"{API}/pairings", json={"code": code}).status_code == 404


@pytest.mark.parametrize(
    ("name", "file"),
    [
        ("Jörg Ås", "home-program-jorg-as.pdf"),
        ('Emil"; filename="../x.exe', "home-program-emil-filename-x-exe.pdf"),
        ("山田", "home-program.pdf"),
    ],
)
def test_the_file_name_is_safe_and_nothing_is_kept_in_caches(house: House, name: str, file: str) -> None:
    response = house.http.get(f"{API}/clients/{_client(house, name=name)}/programs/current/sheet.pdf")
    assert response.headers["Content-Disposition"] == f'inline; filename="{file}"'
    assert response.headers["Cache-Control"] == "no-store"
    assert response.headers["Content-Type"] == "application/pdf"


def test_what_the_practice_says_of_emergencies_is_printed_too(house: House) -> None:
    client_id = _client(house)
    assert "Thornwater Physical Therapy says" not in whole(_print(house, client_id))
    from steadfoot.identity.tables import Practice

    with house.app.state.database.write() as session:
        practice = session.get(Practice, house.practice_id)
        practice.emergency_text = "The valley's emergency number is on the door."
        session.add(practice)
    assert "Thornwater Physical Therapy says: The valley's emergency number" in whole(_print(house, client_id))
