"""Pose files: what is wrong in one is told with file, variant and field."""

import json

import pytest

from steadfoot.exercises.figures.patch import PoseFileBroken, merged, with_numbers
from steadfoot.exercises.figures.read import read_figures
from tests.figures.conftest import POSES


def spoilt(change):
    document = json.loads((POSES / "squat.json").read_text())
    change(document)
    return json.dumps(document).encode()


def told(change):
    with pytest.raises(PoseFileBroken) as caught:
        read_figures("squat.json", spoilt(change))
    return str(caught.value)


CASES = {
    "an unknown field": (lambda d: d["base"]["foot"].update({"hedding": 8}), "base.foot.hedding"),
    "a word for a number": (lambda d: d["base"]["pelvis"].update({"z": "high"}), "base.pelvis.z"),
    "a length in centimeters": (lambda d: d["base"]["pelvis"].update({"z": 93}), "base.pelvis.z"),
    "a poster that is no key": (lambda d: d.update({"poster": "top"}), "poster: 'top' is not one of down, half, up"),
    "an unknown muscle": (lambda d: d.update({"working": ["biceps.X"]}), "working: 'biceps.X'"),
    "an unknown contact": (lambda d: d.update({"contacts": ["ear.L"]}), "contacts: 'ear.L'"),
    "a body that floats": (lambda d: d.update({"contacts": []}), "contacts: name what bears weight"),
    "a movement without an end": (
        lambda d: d["keys"]["down"].update({"t": 0.9}),
        "the first t must be 0 and the last 1",
    ),
    "two keys at a time": (lambda d: d["keys"]["half"].update({"t": 1}), "two keys have the same t"),
    "a limb told twice": (lambda d: d["base"].update({"leg": {"knee": 4}}), "leg.L is told twice"),
    "a limb told otherwise": (lambda d: d["keys"]["down"].update({"leg.R": {"knee": 4}}), "keys.down.leg.R"),
    "a switch halfway": (lambda d: d["keys"]["down"].update({"foot": {"pivot": "ball"}}), "keys.down: pivot"),
    "no aim": (lambda d: d["base"].pop("aim"), "solve.pelvis.x: no aim for mass.x"),
    "a knee that nothing bends": (
        lambda d: d["base"].update({"foot": None, "leg": {"knee": 4}}),
        "knee.R decides only where the foot has a place",
    ),
    "a formula without its number": (
        lambda d: d["base"]["foot"].update({"at": [0, 0.07, "=step"]}),
        "base.foot.at.2: '=step' needs 'step' under numbers",
    ),
    "a broken formula": (lambda d: d["base"]["foot"].update({"heading": "=2*8"}), "base.foot.heading: '=2*8'"),
}


@pytest.mark.parametrize("case", CASES)
def test_a_fault_is_told_with_file_variant_and_field(case):
    change, words = CASES[case]
    message = told(change)
    assert message.startswith("squat.json: variant ")
    assert words in message


def test_in_walking_nothing_bears_weight_all_the_time():
    walking = spoilt(lambda d: d.update({"contacts": [], "balance": "moving"}))
    assert read_figures("squat.json", walking)["free"].movement.contacts == []


def test_a_file_must_be_named_after_its_code():
    with pytest.raises(PoseFileBroken, match=r"must be named squat\.json"):
        read_figures("lunge.json", (POSES / "squat.json").read_bytes())


@pytest.mark.parametrize("text", [b"{", b"[]", b'{"code": "squat"}'])
def test_what_is_no_pose_file_is_refused(text):
    with pytest.raises(PoseFileBroken, match=r"^squat\.json: "):
        read_figures("squat.json", text)


RFC_7396 = [
    ({"a": "b"}, {"a": "c"}, {"a": "c"}),
    ({"a": "b"}, {"b": "c"}, {"a": "b", "b": "c"}),
    ({"a": "b"}, {"a": None}, {}),
    ({"a": "b", "b": "c"}, {"a": None}, {"b": "c"}),
    ({"a": ["b"]}, {"a": "c"}, {"a": "c"}),
    ({"a": "c"}, {"a": ["b"]}, {"a": ["b"]}),
    ({"a": {"b": "c"}}, {"a": {"b": "d", "c": None}}, {"a": {"b": "d"}}),
    ({"a": [{"b": "c"}]}, {"a": [1]}, {"a": [1]}),
    (["a", "b"], ["c", "d"], ["c", "d"]),
    ({"e": None}, {"a": 1}, {"e": None, "a": 1}),
    ([1, 2], {"a": "b", "c": None}, {"a": "b"}),
    ({}, {"a": {"bb": {"ccc": None}}}, {"a": {"bb": {}}}),
]


@pytest.mark.parametrize(("whole", "patch", "result"), RFC_7396)
def test_patches_are_those_of_rfc_7396(whole, patch, result):
    assert merged(whole, patch) == result


@pytest.mark.parametrize(
    ("formula", "value"),
    [("=step", 0.1), ("=-step", -0.1), ("=step + 0.02", 0.12), ("=-step-1", -1.1), ("=step+.5", 0.6)],
)
def test_formulas(formula, value):
    assert with_numbers([formula], {"step": 0.1}) == [pytest.approx(value)]
