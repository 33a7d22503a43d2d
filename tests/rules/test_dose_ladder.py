"""One rung easier, one rung harder."""

from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from steadfoot.rules.dose import Prescription, Rung, ease_off, missing_kit, progress
from steadfoot.rules.vocabulary import Kit, Sides


def rung(variant, *kit, reps=(8, 12), hold_s=None, load=False, sides=Sides.EACH):
    return Rung(variant, variant.replace("-", " "), sides, frozenset(kit), None if hold_s else reps, hold_s, load)


LADDER = (
    rung("hand-on-the-rail", Kit.RAIL, reps=(8, 10)),
    rung("low-step", Kit.STEP),
    rung("high-step", Kit.STEP, load=True),
    rung("with-pack", Kit.STEP, Kit.PACK, reps=(6, 10), load=True),
)
ALL = frozenset(Kit)


def on(variant, low=8, high=10, hold=None, load=None):
    low, high = (None, None) if hold else (low, high)
    return Prescription("p1", "x", variant, Sides.EACH, low, high, hold, load, None, 45, "slowly")


def test_easing_off_takes_the_next_easier_rung_and_says_so():
    step = ease_off(on("low-step"), LADDER, ALL)
    assert step.prescription == on("hand-on-the-rail")
    assert step.change == "hand on the rail instead of low step"


def test_a_rung_whose_kit_is_missing_is_passed_over():
    step = ease_off(on("with-pack"), LADDER, {Kit.RAIL})
    assert step.prescription.variant == "hand-on-the-rail"


def test_a_dose_outside_the_new_rungs_range_starts_at_that_range():
    step = ease_off(on("low-step", 10, 12), LADDER, ALL)
    assert (step.prescription.reps_low, step.prescription.reps_high) == (8, 10)
    assert step.change == "hand on the rail instead of low step, 8 to 10 repetitions"


def test_on_the_lowest_rung_a_third_of_the_repetitions_goes():
    step = ease_off(on("hand-on-the-rail", 9, 12), LADDER, ALL)
    assert (step.prescription.reps_low, step.prescription.reps_high) == (6, 8)
    assert step.change == "6 to 8 repetitions instead of 9 to 12 repetitions"


def test_on_the_lowest_rung_a_third_of_the_hold_goes():
    ladder = (rung("wall", hold_s=(20, 40)),)
    assert ease_off(on("wall", hold=30), ladder, ALL).prescription.hold_s == 20


def test_one_repetition_cannot_be_eased_off():
    assert ease_off(on("hand-on-the-rail", 1, 1), LADDER, ALL) is None


def test_a_weight_is_left_off_when_easing_to_a_rung_without_a_pack():
    assert ease_off(on("with-pack", load=6), LADDER, ALL).prescription.load_kg is None


def test_a_carried_pack_stays_on_an_easier_way_of_carrying_it():
    ladder = (
        rung("stand", Kit.PACK, hold_s=(60, 120), load=True),
        rung("march", Kit.PACK, hold_s=(60, 120), load=True),
    )
    assert ease_off(on("march", hold=60, load=6), ladder, ALL).prescription.load_kg == 6


def test_a_hold_is_brought_into_the_new_rungs_range():
    ladder = (rung("wall", hold_s=(20, 40)), rung("knees", hold_s=(15, 30)))
    assert progress(on("wall", hold=40), ladder, ALL).prescription.hold_s == 30


def test_from_repetitions_to_a_hold_starts_at_the_shortest():
    ladder = (rung("count", reps=(8, 12)), rung("hold", hold_s=(20, 40)))
    moved = progress(on("count"), ladder, ALL).prescription
    assert (moved.reps_low, moved.reps_high, moved.hold_s) == (None, None, 20)


def test_from_two_legs_to_one_each_side_is_done_in_turn():
    ladder = (rung("both-legs", sides=Sides.BOTH), rung("one-leg"))
    step = progress(replace(on("both-legs"), sides=Sides.BOTH), ladder, ALL)
    assert step.prescription.sides is Sides.EACH
    assert step.change == "one leg instead of both legs, each side in turn"


def test_progress_takes_the_next_harder_rung_that_fits():
    assert progress(on("low-step"), LADDER, ALL).prescription.variant == "high-step"
    assert progress(on("high-step"), LADDER, {Kit.STEP}) is None


def test_there_is_nothing_above_the_highest_rung():
    assert progress(on("with-pack"), LADDER, ALL) is None


@pytest.mark.parametrize("move", [ease_off, progress])
def test_a_variant_that_is_not_on_the_ladder_stays_as_it_is(move):
    assert move(on("unheard-of"), LADDER, ALL) is None


CALM = settings(deadline=None)  # a busy machine must not fail a test
KITS = st.frozensets(st.sampled_from(Kit))
RUNGS = st.builds(
    Rung,
    variant=st.uuids().map(str),
    name=st.just("a way"),
    sides=st.sampled_from(Sides),
    kit=st.frozensets(st.sampled_from(Kit), max_size=3),
    reps=st.sampled_from([(1, 1), (6, 10), (8, 12)]),
    hold_s=st.none() | st.sampled_from([(1, 5), (20, 40)]),
    carries_load=st.booleans(),
)
LADDERS = st.lists(RUNGS, min_size=1, max_size=5, unique_by=lambda one: one.variant)


@CALM
@given(LADDERS, KITS, st.data())
def test_no_move_ever_leads_to_a_variant_whose_kit_is_missing(ladder, kit, data):
    here = data.draw(st.sampled_from(ladder))
    prescription = on(here.variant, hold=20 if here.hold_s else None)
    for move in (ease_off, progress):
        step = move(prescription, ladder, kit)
        if step is not None:
            there = next(one for one in ladder if one.variant == step.prescription.variant)
            assert not missing_kit(there.kit, kit)
            assert step.prescription != prescription
            assert step.change


@CALM
@given(LADDERS, KITS, st.data())
def test_easing_off_again_and_again_comes_to_an_end_within_the_plausible_range(ladder, kit, data):
    here = data.draw(st.sampled_from(ladder))
    now = replace(on(here.variant, hold=20 if here.hold_s else None), load_kg=4)
    for _ in range(len(ladder) + 50):
        step = ease_off(now, ladder, kit)
        if step is None:
            break
        now = step.prescription
        assert (now.hold_s or 0) >= 1 or 1 <= now.reps_low <= now.reps_high
    else:
        pytest.fail("easing off never ended")


def test_from_a_hold_to_repetitions_starts_at_the_rungs_own():
    ladder = (rung("hold", hold_s=(20, 40)), rung("count", reps=(8, 12)), rung("once", reps=(1, 1)))
    for variant, expected in (("count", (8, 12, None)), ("once", (1, 1, None))):
        moved = progress(on("hold", hold=30), (ladder[0], next(one for one in ladder if one.variant == variant)), ALL)
        now = moved.prescription
        assert (now.reps_low, now.reps_high, now.hold_s) == expected


def test_a_hold_has_no_tempo():
    ladder = (rung("count", reps=(8, 12)), rung("hold", hold_s=(20, 40)))
    assert progress(replace(on("count"), tempo_down_s=3), ladder, ALL).prescription.tempo_down_s is None


@pytest.mark.parametrize(("low", "high"), [(8, 8), (9, 10), (8, 12)])
def test_a_dose_within_the_new_rungs_range_is_kept(low, high):
    moved = progress(on("low-step", low, high), LADDER, ALL).prescription
    assert (moved.reps_low, moved.reps_high) == (low, high)


def test_a_load_goes_along_to_a_harder_rung_that_carries_it_and_to_no_other():
    ladder = (rung("low-step"), rung("high-step", load=True), rung("one-leg"))
    assert progress(on("low-step", load=4), ladder, ALL).prescription.load_kg == 4
    assert progress(on("high-step", load=4), ladder, ALL).prescription.load_kg is None
