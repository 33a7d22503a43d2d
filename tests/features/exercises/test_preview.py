"""The pose editor's questions over HTTP: changed by number or by a dragged joint, drawn, bounded."""

import json
from typing import Any

import pytest

from steadfoot.exercises import studio
from steadfoot.exercises.figures import solve
from steadfoot.exercises.figures.checks import RANGES
from tests.builders import API, House
from tests.features.exercises.own import FALLING, STANDING

STARTS = [
    ("squat", "free", "up"),
    ("squat", "chair", "down"),
    ("split-squat", "half", "up"),
    ("dead-bug", "leg-reach", "in"),
    ("hip-abduction", "side-lying", "down"),
    ("bird-dog", "leg", "in"),
    ("front-plank", "toes", "up"),
]
"""Those that the page offers."""


def _ask(house: House, status: int = 200, **more: Any) -> Any:
    body = {"movement": STANDING, "key": "down", "view": "side", **more}
    return house.post("/exercises/preview", body, status=status)


def _handle(answer: dict[str, Any], point: str) -> tuple[float, float]:
    (found,) = [one for one in answer["handles"] if one["point"] == point]
    return found["x"], found["y"]


def _control(answer: dict[str, Any], path: str) -> dict[str, Any]:
    (found,) = [one for one in answer["controls"] if one["path"] == path]
    return found


def test_a_pose_is_drawn_with_its_joints_and_its_numbers(house: House) -> None:
    answer = _ask(house)
    assert answer["svg"].startswith("<svg")
    assert f'viewBox="{" ".join(map(str, answer["frame"]))}"' in answer["svg"]
    assert answer["findings"] == []
    knee = _control(answer, "aim.knee.R")
    assert (knee["value"], knee["low"], knee["high"], knee["length"]) == (60, *RANGES["knee"], False)
    assert "pelvis.z" not in [one["path"] for one in answer["controls"]], "the solver finds it"


def test_a_change_of_one_key_leaves_the_others_as_they_are(house: House) -> None:
    before, after = _ask(house), _ask(house, set={"aim.knee.R": 80, "spine.flexion": 20})
    assert after["movement"]["keys"]["up"]["aim"] == before["movement"]["keys"]["up"]["aim"]
    assert after["movement"]["keys"]["down"]["spine"]["flexion"] == 20
    assert after["movement"]["keys"]["up"]["spine"]["flexion"] == 0
    assert _handle(after, "head")[1] > _handle(before, "head")[1], "deeper is lower on paper, where y goes down"


def test_what_was_answered_can_be_asked_again_and_saved(house: House) -> None:
    first = _ask(house)
    again = _ask(house, movement=first["movement"])
    assert again["svg"] == first["svg"]
    assert again["movement"] == first["movement"]


def test_both_sides_do_the_same_where_it_is_wished(house: House) -> None:
    one, both = (_ask(house, set={"arm.R.elbow": 90}, mirror=mirror)["movement"]["keys"] for mirror in (False, True))
    assert one["down"]["arm.L"] is None
    assert both["down"]["arm.L"]["elbow"] == 90
    wide = _ask(house, set={"foot.R.at.1": -0.1}, mirror=True)["movement"]["keys"]["down"]
    assert (wide["foot.L"]["at"][1], wide["foot.R"]["at"][1]) == (0.1, -0.1)


def test_a_number_goes_no_farther_than_its_range(house: House) -> None:
    answer = _ask(house, set={"neck.flexion": 360})
    assert answer["movement"]["keys"]["down"]["neck"]["flexion"] == 45


@pytest.mark.parametrize("point", ["wrist.R", "elbow.L", "head", "ankle.R", "pelvis", "neck"])
def test_a_joint_goes_nearer_to_where_it_is_dragged(house: House, point: str) -> None:
    before = _handle(_ask(house), point)
    to = (before[0] + 30, before[1] - 20)
    after = _handle(_ask(house, drag={"point": point, "to": to}), point)

    def away(spot: tuple[float, float]) -> float:
        return float(((spot[0] - to[0]) ** 2 + (spot[1] - to[1]) ** 2) ** 0.5)

    assert away(after) < away(before) - 5


def test_a_joint_dragged_out_of_the_room_stays_within_its_ranges(house: House) -> None:
    answer = _ask(house, drag={"point": "wrist.R", "to": [5000, -5000]})
    assert all(one["low"] <= one["value"] <= one["high"] for one in answer["controls"])


def test_the_whole_movement_moves_and_tells_all_that_is_wrong(house: House) -> None:
    answer = _ask(house, movement=FALLING, whole=True)
    assert "@keyframes" in answer["svg"]
    (finding,) = answer["findings"]
    assert finding["fault"] == "falls over"
    assert "outside the contacts" in finding["detail"]


@pytest.mark.parametrize(("code", "variant", "key"), STARTS)
def test_a_start_is_a_movement_of_the_library_or_one_key_of_it(house: House, code: str, variant: str, key: str) -> None:
    whole = house.get(f"/exercises/{code}/poses", variant=variant)["movement"]
    alone = house.get(f"/exercises/{code}/poses", variant=variant, key=key)["movement"]
    assert len(whole["keys"]) > len(alone["keys"]) == 1
    for movement in (whole, alone):
        assert _ask(house, movement=movement, key=key, whole=True)["findings"] == []


def test_there_is_no_start_where_nothing_is_drawn(house: House) -> None:
    for code, params in (("squat", {"variant": "no"}), ("no", {"variant": "free"})):
        house.get(f"/exercises/{code}/poses", status=404, **params)
    house.get("/exercises/squat/poses", status=404, variant="free", key="no")


@pytest.mark.parametrize("number", ["NaN", "Infinity", "1e308", "-1e308", '"7"', "true", "null"])
def test_numbers_that_are_none_are_refused(house: House, number: str) -> None:
    body = json.dumps({"movement": STANDING, "key": "down", "view": "side", "set": {"spine.flexion": 123456}})
    sent = body.replace("123456", number)
    answer = house.http.post(f"{API}/exercises/preview", content=sent, headers={"Content-Type": "application/json"})
    assert answer.status_code == 422
    moved = json.dumps({"movement": STANDING | {"base": {"pelvis": {"z": 123456}}}, "key": "down", "view": "side"})
    if number not in ('"7"', "true", "null"):
        sent = moved.replace("123456", number)
        answer = house.http.post(f"{API}/exercises/preview", content=sent, headers={"Content-Type": "application/json"})
        assert answer.status_code == 422


def _many(count: int) -> dict[str, Any]:
    return {f"k{number}": {"t": 0} for number in range(count)}


@pytest.mark.parametrize(
    "more",
    [
        {"movement": STANDING | {"keys": _many(5000)}},
        {"movement": STANDING | {"props": {f"p{n}": {"kind": "box", "at": [0, 0, 0]} for n in range(5000)}}},
        {"movement": STANDING | {"contacts": ["foot.R"] * 5000}},
        {"movement": STANDING | {"wings": True}},
        {"movement": STANDING | {"solve": {"__class__": "mass.x"}}},
        {"set": {f"spine.x{number}": 1 for number in range(5000)}},
        {"set": {"spine.wings": 1}},
        {"set": {"pelvis.z": 1}},
        {"drag": {"point": "tail", "to": [0, 0]}},
        {"drag": {"point": "head", "to": [1e300, 0]}},
        {"key": "sideways"},
        {"view": "below"},
        {"wings": 1},
    ],
)
def test_what_cannot_be_drawn_is_refused_with_its_field(house: House, more: dict[str, Any]) -> None:
    refused = _ask(house, status=422, **more)
    assert refused["errors"][0]["pointer"].startswith("/body/")


PROPS: list[dict[str, Any]] = [
    {"kind": "box"},
    {"kind": "box", "at": [0, 0, 0], "size": [0, 0, 0]},
    {"kind": "wall", "at": [2, 2, 2]},
    {"kind": "dumbbell"},
    {"kind": "band"},
    {"kind": "band", "ends": ["hand", "tail"]},
    {"kind": "towel", "anchor": [0, 0, 0]},
    {"kind": "pack", "mass": 1},
    {"kind": "star"},
    {"kind": "rail", "size": [-2, -2, -2]},
]


@pytest.mark.parametrize("prop", PROPS, ids=str)
def test_a_thing_that_lacks_what_its_kind_needs_is_drawn_or_refused(house: House, prop: dict[str, Any]) -> None:
    body = {"movement": STANDING | {"props": {"thing": prop}}, "key": "down", "view": "side", "whole": True}
    assert house.http.post(f"{API}/exercises/preview", json=body).status_code in (200, 422)


@pytest.mark.parametrize("change", [{"pelvis": {"z": -2, "tilt": 360}}, {"foot": {"at": [2, 2, 2]}}])
def test_a_wild_pose_ends_in_findings(house: House, change: dict[str, Any]) -> None:
    movement = STANDING | {"base": STANDING["base"] | change}
    assert _ask(house, movement=movement, whole=True)["findings"]


def _hardest() -> dict[str, Any]:
    """All that is allowed at once, and nothing of it possible: every solving goes on to its last round."""
    keys = {f"k{n}": {"t": n / 8, "aim": {"knee.R": 4 + 15 * n}, "spine": {"turn": 300 * (-1) ** n}} for n in range(9)}
    solve = STANDING["solve"] | {"pelvis.y": "head.y", "pelvis.tilt": "head.z"}
    base = STANDING["base"] | {"aim": {"mass.x": 0.018, "head.y": 2, "head.z": -2}}
    return STANDING | {"keys": keys, "solve": solve, "base": base, "poster": "k0", "strip": ["k0"]}


def test_the_hardest_question_takes_a_bounded_number_of_steps(house: House, monkeypatch: pytest.MonkeyPatch) -> None:
    """At 0.5 ms a step the bound is five seconds, and counting does not depend on the machine."""
    steps = 0
    place = solve.pose

    def counted(*told: Any) -> Any:
        nonlocal steps
        steps += 1
        return place(*told)

    monkeypatch.setattr(solve, "pose", counted)
    _ask(house, movement=_hardest(), key="k4", whole=True, drag={"point": "head", "to": [5000, 5000]})
    assert 1000 < steps < 15_000


def test_one_person_cannot_keep_the_server_drawing(house: House, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(house.app.state.studio, "_limiter", studio.Limiter(2, 60))
    assert [house.http.post(f"{API}/exercises/preview", json={}).status_code for _ in range(3)] == [422] * 3
    for status in (200, 200, 429):
        answer = _ask(house, status=status)
    assert answer["code"] == "too-many-tries"


def test_when_much_is_waiting_the_next_is_turned_away(house: House, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(house.app.state.studio, "_waiting", studio.WAITING_MAX)
    assert _ask(house, status=429)["code"] == "busy"
