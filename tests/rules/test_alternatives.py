"""Another movement instead: what fits, in which order, and why."""

from dataclasses import replace

from hypothesis import given
from hypothesis import strategies as st

from steadfoot.rules.alternatives import Because, Movement, Wish, fitting, shortfall
from steadfoot.rules.alternatives_words import nothing_fits, reasons
from steadfoot.rules.dose import Rung, missing_kit
from steadfoot.rules.vocabulary import Kit, Region, Sides


def rung(name, *kit, sides=Sides.EACH, held=False):
    return Rung(name, name, sides, frozenset(kit), None if held else (8, 12), (20, 40) if held else None, False)


def movement(code, trains, loads, *ladder):
    return Movement(code, code.capitalize(), tuple(trains.split()), tuple(loads), ladder)


STEP = movement(
    "step-down", "descent_control knee_control hip_control", [Region.KNEE],
    rung("low", Kit.STEP), rung("mid", Kit.STEP), rung("high", Kit.STEP),
)  # fmt: skip
SQUAT = movement(
    "squat", "knee_control descent_control", [Region.THIGH, Region.KNEE],
    rung("chair", Kit.CHAIR, sides=Sides.BOTH), rung("free", sides=Sides.BOTH),
    rung("load", Kit.DUMBBELL, sides=Sides.BOTH),
)  # fmt: skip
HEEL = movement("heel-raise", "calf_strength descent_control", [Region.CALF], rung("wall", Kit.WALL), rung("one"))
CLAM = movement(
    "clam", "hip_control knee_control", [Region.HIP], rung("lying", Kit.MAT), rung("hold", Kit.MAT, held=True)
)
ROW = movement("row", "shoulder_control", [Region.SHOULDER], rung("band", Kit.BAND))
LIBRARY = [ROW, CLAM, HEEL, SQUAT, STEP]
MID = Wish(STEP, 1)


def codes(wish, library=LIBRARY):
    return [fit.movement.code for fit in fitting(wish, library)]


def sentences(wish, code):
    fit = next(fit for fit in fitting(wish, LIBRARY) if fit.movement.code == code)
    return {reason.because: reason.sentence for reason in reasons(wish, fit)}


def test_what_trains_the_most_wanted_comes_first_then_what_has_more_in_common():
    assert codes(MID) == ["squat", "heel-raise", "clam"]


def test_neither_itself_nor_what_trains_nothing_of_it_is_offered():
    assert not {"step-down", "row"} & set(codes(MID))


def test_a_region_to_spare_takes_out_whatever_loads_it_and_says_what_is_loaded():
    wish = replace(MID, spare=Region.KNEE)
    assert codes(wish) == ["heel-raise", "clam"]
    assert sentences(wish, "heel-raise")[Because.SPARES] == "Spares the knee: by common practice it loads calf most."


def test_only_rungs_for_the_kit_in_the_house_count_and_a_towel_stands_in_for_a_mat():
    assert codes(replace(MID, at_hand=frozenset())) == ["squat", "heel-raise"]
    told = sentences(replace(MID, at_hand=frozenset({Kit.TOWEL})), "clam")
    assert told[Because.KIT] == "Needs mat, which the house has or can make do for."


def test_a_quality_asked_for_decides_alone_what_is_offered():
    assert codes(replace(MID, trains="shoulder_control")) == ["row"]
    assert codes(replace(MID, trains="hip_control")) == ["clam"]


def test_the_nearest_rung_is_taken_and_its_place_told():
    fit = fitting(MID, [SQUAT])[0]
    assert fit.rung.variant == "free"
    assert sentences(MID, "squat")[Because.DIFFICULTY] == "Variant 2 of 3 on its ladder, as far up as 2 of 3 before."
    assert "lower than 3 of 3 before" in sentences(Wish(STEP, 2, frozenset()), "squat")[Because.DIFFICULTY]


def test_of_two_rungs_as_near_the_one_with_the_same_sides_then_the_easier_one():
    two = movement("two", "descent_control", [Region.HIP], rung("a", sides=Sides.BOTH), rung("b"))
    assert fitting(MID, [two])[0].rung.variant == "b"
    same = replace(two, ladder=(rung("a"), rung("b")))
    assert fitting(MID, [same])[0].rung.variant == "a"


def test_less_kit_comes_before_the_same_sides_and_those_before_the_height():
    needs = movement(
        "a-needs", "descent_control", [Region.HIP], rung("x", Kit.BALL), rung("y", Kit.BALL), rung("z", Kit.BALL)
    )
    both = movement("b-both", "descent_control", [Region.HIP], *[rung(n, sides=Sides.BOTH) for n in "xyz"])
    far = movement("c-far", "descent_control", [Region.HIP], rung("x"), rung("y"))
    near = movement("d-near", "descent_control", [Region.HIP], rung("x"), rung("y"), rung("z"))
    assert codes(MID, [needs, both, far, near]) == ["d-near", "c-far", "b-both", "a-needs"]


def test_a_change_from_counting_to_holding_and_of_sides_is_said():
    told = sentences(replace(Wish(STEP, 2), trains="hip_control"), "clam")
    assert told[Because.DOSE] == "Held, not counted."
    assert sentences(MID, "squat")[Because.SIDES] == "Done with both sides together, not with each side in turn."
    assert Because.DOSE not in sentences(MID, "squat")


def test_what_is_lost_is_said():
    assert (
        sentences(MID, "clam")[Because.TRAINS]
        == "Trains knee control and hip control as well, but not descent control."
    )
    assert sentences(MID, "squat")[Because.TRAINS] == "Trains descent control, and knee control as well."


def test_what_it_trains_most_is_said_where_that_was_not_asked_for():
    told = sentences(MID, "heel-raise")[Because.TRAINS]
    assert told == "Trains descent control, and nothing else of the same. Most of all it trains calf strength."
    asked = sentences(replace(MID, trains="calf_strength"), "heel-raise")[Because.TRAINS]
    assert "Most of all" not in asked


def test_why_nothing_fits_is_said_with_what_would_have_to_give():
    def why(wish, library=LIBRARY):
        assert fitting(wish, library) == []
        return nothing_fits(wish, shortfall(wish, library)).removeprefix("Nothing in the library fits: ")

    assert why(MID, [ROW]) == "no other movement trains something that the step-down trains."
    bare = replace(MID, trains="hip_control", at_hand=frozenset())
    assert why(bare) == "the one other movement that trains hip control needs kit that is not in the house."
    wish = Wish(ROW, 0, frozenset(), Region.KNEE, "knee_control")
    assert (
        why(wish) == "3 other movements train knee control; 2 load the knee and 1 needs kit that is not in the house."
    )
    assert why(wish, [ROW, SQUAT, STEP]) == "2 other movements train knee control; 2 load the knee."


@given(
    st.integers(0, 2),
    st.none() | st.frozensets(st.sampled_from(Kit)),
    st.none() | st.sampled_from(Region),
    st.randoms(),
)
def test_whatever_is_asked_every_offer_keeps_to_it_in_an_order_that_does_not_depend_on_the_librarys(
    place, kit, spare, rnd
):
    wish = Wish(STEP, place, kit, spare)
    found = fitting(wish, LIBRARY)
    for fit in found:
        assert spare not in fit.movement.loads
        assert kit is None or not missing_kit(fit.rung.kit, kit)
        assert set(fit.movement.trains) & set(STEP.trains)
        assert len(reasons(wish, fit)) >= 4
    shuffled = list(LIBRARY)
    rnd.shuffle(shuffled)
    assert fitting(wish, shuffled) == found
