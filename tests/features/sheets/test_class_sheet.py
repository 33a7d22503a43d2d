"""A sheet for a group: movements, a title, nobody's data."""

from typing import Any

from httpx import Response

from steadfoot.exercises.service import library
from tests.builders import API, House
from tests.features.sheets.reading import whole


def _ask(house: House, **more: Any) -> Response:
    picks = [{"exercise": "step-down", "variant": "step-10"}, {"exercise": "wall-sit", "variant": _first("wall-sit")}]
    return house.http.post(f"{API}/class-sheets", json={"title": "Strong knees", "movements": picks} | more)


def _first(code: str) -> str:
    return library()[code].ladder[0].variant


def test_it_prints_the_picks_in_their_order_with_the_usual_dose(house: House) -> None:
    text = whole(_ask(house, about="Evening at the valley hall").content)
    assert text.index("1. Step-down, 10 cm step") < text.index("2. Wall sit")
    assert "8 to 12 repetitions, each side in turn" in text
    assert "Evening at the valley hall" in text
    assert "Ask a licensed therapist or a doctor before you begin" in text
    assert "call your local emergency number" in text


def test_it_names_no_client_and_no_practitioner(house: House) -> None:
    house.new_client("Emil Tarrow")
    text = whole(_ask(house).content)
    assert "Emil" not in text
    assert "Brandvold" not in text


def test_its_file_is_named_after_its_title(house: House) -> None:
    assert _ask(house).headers["Content-Disposition"] == 'inline; filename="class-strong-knees.pdf"'


def test_a_movement_that_the_library_does_not_have_is_named_by_its_place(house: House) -> None:
    picks = [{"exercise": "step-down", "variant": "step-10"}, {"exercise": "step-down", "variant": "nowhere"}]
    response = _ask(house, movements=picks)
    assert (response.status_code, response.json()["code"]) == (422, "not-in-library")
    assert [error["pointer"] for error in response.json()["errors"]] == ["/body/movements/1"]


def test_no_movement_no_title_or_an_unknown_field_is_refused(house: House) -> None:
    for more in ({"movements": []}, {"title": "  "}, {"client_id": "x"}, {"paper": "a5"}):
        assert _ask(house, **more).status_code == 422, more
