"""Asking the library for another movement, over HTTP."""

import pytest

from steadfoot.exercises.service import library
from steadfoot.rules.dose import missing_kit
from steadfoot.rules.vocabulary import Kit, Region


def ask(house, code="step-down", status=200, **query):
    return house.get(f"/exercises/{code}/alternatives", status=status, **query)


def test_no_step_at_home(house):
    answer = ask(house, variant="step-15", kit="chair")
    assert answer["nothing_fits"] is None
    assert "squat" in [item["exercise"] for item in answer["items"]]
    assert "step-up" not in [item["exercise"] for item in answer["items"]]
    for item in answer["items"]:
        assert [one["because"] for one in item["reasons"]][:4] == ["trains", "kit", "sides", "difficulty"]
        rung = next(one for one in library()[item["exercise"]].ladder if one.variant == item["variant"])
        assert not missing_kit(rung.kit, {Kit.CHAIR})


def test_an_empty_kit_is_not_the_same_as_any_kit(house):
    bare, any_kit = ask(house, kit=""), ask(house)
    assert len(bare["items"]) < len(any_kit["items"])


@pytest.mark.parametrize("region", ["knee", "achilles", "shoulder", "lower_back"])
def test_a_painful_region_is_spared_whatever_the_movement(house, region):
    for code in library():
        for item in ask(house, code, spare=region)["items"]:
            assert Region(region) not in library()[item["exercise"]].loads
            assert item["exercise"] != code


def test_what_bends_the_ankle_deeply_under_weight_does_not_spare_the_achilles_tendon(house):
    offered = {item["exercise"] for item in ask(house, "heel-raise", spare="achilles")["items"]}
    assert offered
    assert not offered & {"step-down", "balance-reach", "toe-walk", "knee-to-wall"}


def test_nothing_fits_says_why(house):
    answer = ask(house, "pack-carry", kit="", trains="carrying")
    assert answer["items"] == []
    assert answer["nothing_fits"].startswith("Nothing in the library fits: ")
    assert "carrying" in answer["nothing_fits"]


def test_unknown_names_are_problems(house):
    assert ask(house, "unheard-of", status=404)["code"] == "not-found"
    assert "variant" in ask(house, variant="unheard-of", status=404)["detail"]
    kit = ask(house, kit="chair,trampoline", status=422)
    assert (kit["code"], kit["errors"][0]["pointer"]) == ("unknown-kit", "/query/kit")
    assert ask(house, spare="wing", status=422)["errors"][0]["pointer"] == "/query/spare"
    assert ask(house, trains="patience", status=422)["errors"][0]["pointer"] == "/query/trains"
