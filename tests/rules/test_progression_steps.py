"""From a verdict to the next dose: load, repetitions, variant, rounds, and the way down."""

from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from steadfoot.rules.dose import LOAD_MAX_KG, Prescription, Rung
from steadfoot.rules.pain import Zone
from steadfoot.rules.progression import Facts, Goal, SessionDone, decide
from steadfoot.rules.progression_steps import Around, load_step_kg, more_reps, next_load, suggest, without_ladder
from steadfoot.rules.progression_words import PROGRESSION_CARDS, ProgressionRule, Reason, Suggested
from steadfoot.rules.ranges import OutOfRange
from steadfoot.rules.vocabulary import Kit, Sides


def rung(variant, *kit, reps=(8, 12), hold_s=None, load=False):
    return Rung(
        variant=variant,
        name=variant.replace("-", " "),
        kit=frozenset(kit),
        sides=Sides.EACH,
        reps=None if hold_s else reps,
        hold_s=hold_s,
        carries_load=load,
    )


LADDER = (rung("low-step", Kit.STEP), rung("high-step", Kit.STEP, load=True), rung("with-pack", Kit.PACK, load=True))
KIT = frozenset({Kit.STEP})


def on(variant, low=10, high=12, hold=None, load=None):
    low, high = (None, None) if hold else (low, high)
    return Prescription("p1", "x", variant, Sides.EACH, low, high, hold, load, None, 45, "slowly")


def around(prescription, kit=KIT, rounds=3, step_kg=None, ladder=LADDER):
    return Around(prescription, rounds, ladder, kit, step_kg)


UP = Facts(Goal(10, 12), (SessionDone((14,)), SessionDone((14,))))
DOWN = replace(UP, pain_zone=Zone.HIGH)


@pytest.mark.parametrize(
    ("load", "step", "more"),
    [
        (20, 2, 22),
        (20, 2.1, None),
        (50, 0.5, 51),
        (50, 1, 51),
        (50, 0.9, 51.8),
        (25, 0.5, 25.5),
        (10, 0.5, 10.5),
        (0.1, 0.1, None),
        (3, 0.3, 3.3),
        (7, 0.7, 7.7),
        (196, 4, 200),
        (196.1, 4, None),
    ],
)
def test_the_smallest_step_of_2_to_10_percent(load, step, more):
    assert next_load(load, step) == more


@pytest.mark.parametrize(("load", "step"), [(0, 1), (201, 1), (-5, 1), (10, 0), (10, 201), (0.09, 1), (1, 0.09)])
def test_a_load_or_step_that_cannot_be_is_refused(load, step):
    with pytest.raises(OutOfRange) as refused:
        next_load(load, step)
    assert refused.value.name == ("step_kg" if 0.1 <= load <= 200 else "load_kg")
    assert (refused.value.low, refused.value.high, refused.value.unit) == (0.1, 200, "kg")


@settings(deadline=None)
@given(st.integers(1, 1999), st.integers(1, 200))
def test_any_next_load_adds_2_to_10_percent_in_whole_steps_and_one_step_less_would_not(tenths, step_tenths):
    load, step = tenths / 10, step_tenths / 10
    found = next_load(load, step)
    steps = [k for k in range(1, 201) if 20 * tenths <= 1000 * k * step_tenths <= 100 * tenths]
    legal = [k for k in steps if tenths + k * step_tenths <= 10 * LOAD_MAX_KG]
    assert found == (pytest.approx((tenths + legal[0] * step_tenths) / 10) if legal[:1] == steps[:1] != [] else None)


def test_load_goes_first():
    found = suggest(UP, around(on("high-step", load=10), step_kg=0.5))
    assert found.suggested is Suggested.PROGRESS_LOAD
    assert found.step.prescription == on("high-step", load=10.5)
    assert found.step.change == "10.5 kg instead of 10 kg"
    assert found.rounds is None


@pytest.mark.parametrize(("load", "step_kg"), [(None, 0.5), (10, None), (8, 2.5)])
def test_without_a_legal_step_of_load_it_is_repetitions_within_the_variants_range(load, step_kg):
    found = suggest(UP, around(on("high-step", 6, 8, load=load), step_kg=step_kg))
    assert found.suggested is Suggested.PROGRESS_REPS
    assert found.step.prescription == on("high-step", 8, 10, load=load)
    assert found.step.change == "8 to 10 repetitions instead of 6 to 8 repetitions"


@pytest.mark.parametrize(("high", "moved"), [(10, (10, 12)), (11, (10, 12)), (12, None), (13, None)])
def test_repetitions_stop_at_the_variants_highest(high, moved):
    found = more_reps(around(on("low-step", high - 2, high)))
    assert (found and (found.prescription.reps_low, found.prescription.reps_high)) == moved


@pytest.mark.parametrize(("hold", "longer"), [(30, 35), (35, 40), (38, 40), (40, None), (45, None)])
def test_a_hold_grows_by_five_seconds_up_to_the_variants_longest(hold, longer):
    ladder = (rung("wall", hold_s=(20, 40)),)
    found = more_reps(around(on("wall", hold=hold), ladder=ladder))
    assert (found and found.prescription.hold_s) == longer
    if longer == 35:
        assert found.change == "hold 35 seconds instead of hold 30 seconds"


def test_where_prescription_and_rung_count_differently_or_the_rung_is_unknown_nothing_is_made_up():
    holds, counts = (rung("wall", hold_s=(20, 40)),), (rung("wall", reps=(8, 20)),)
    assert more_reps(around(on("wall", 8, 10), ladder=holds)) is None
    assert more_reps(around(on("wall", hold=20), ladder=counts)) is None
    assert more_reps(around(on("elsewhere", 8, 10))) is None
    for low, high in ((None, 10), (8, None)):
        assert more_reps(around(on("wall", low, high), ladder=counts)) is None


def test_at_the_top_of_its_range_it_is_the_next_variant():
    found = suggest(UP, around(on("low-step")))
    assert found.suggested is Suggested.PROGRESS_VARIANT
    assert found.step.prescription.variant == "high-step"


@pytest.mark.parametrize(("rounds", "suggested", "new"), [(3, Suggested.PROGRESS_ROUNDS, 4), (4, Suggested.HOLD, None)])
def test_where_the_kit_allows_no_variant_it_is_rounds_up_to_four(rounds, suggested, new):
    found = suggest(UP, around(on("high-step"), rounds=rounds))
    assert (found.suggested, found.rounds, found.step) == (suggested, new, None)
    last = "Nothing harder is possible with the kit in the house."
    assert (found.reasons[-1] == Reason(last)) is (suggested is Suggested.HOLD)


def test_with_the_kit_in_the_house_the_same_person_gets_the_variant():
    found = suggest(UP, around(on("high-step"), kit={Kit.STEP, Kit.PACK}))
    assert found.step.prescription.variant == "with-pack"


def test_the_way_down_is_one_rung():
    found = suggest(DOWN, around(on("high-step", load=5)))
    assert (found.suggested, found.rule) == (Suggested.REGRESS, ProgressionRule.PAIN_HIGH)
    assert found.step.prescription.variant == "low-step"


def test_where_nothing_is_easier_the_practitioner_is_told():
    found = suggest(DOWN, around(on("low-step", 1, 1)))
    assert (found.suggested, found.step) == (Suggested.REGRESS, None)
    assert found.reasons[-1].words.startswith("Nothing easier is possible")


@pytest.mark.parametrize(("rounds", "fewer"), [(1, 1), (2, 1), (3, 2), (4, 2)])
def test_an_easier_week_halves_the_rounds(rounds, fewer):
    found = suggest(replace(UP, hard_weeks=4), around(on("low-step"), rounds=rounds))
    assert (found.suggested, found.rounds, found.step) == (Suggested.DELOAD, fewer, None)


def test_hold_changes_nothing():
    found = suggest(replace(UP, pain_zone=Zone.ACCEPTABLE), around(on("low-step")))
    assert (found.suggested, found.rounds, found.step) == (Suggested.HOLD, None, None)


@pytest.mark.parametrize("facts", [UP, DOWN, replace(UP, hard_weeks=4), Facts(Goal(1, 2), ())])
def test_a_suggestion_carries_its_rules_card_and_the_verdicts_reasons(facts):
    found, verdict = suggest(facts, around(on("low-step"))), decide(facts)
    card = PROGRESSION_CARDS[found.rule]
    assert found.rule is verdict.rule
    assert (found.sentence, found.cited, found.would_change) == (card.sentence, card.cited, card.would_change)
    assert found.reasons[: len(verdict.reasons)] == verdict.reasons
    assert found.suggested is not Suggested.PROGRESS


@pytest.mark.parametrize(
    ("facts", "load", "step", "suggested", "next_kg"),
    [
        (UP, 10, 1, Suggested.PROGRESS_LOAD, 11),
        (UP, 8, 2.5, Suggested.PROGRESS_REPS, 8),
        (UP, 8, None, Suggested.PROGRESS_REPS, 8),
        (UP, None, None, Suggested.PROGRESS_VARIANT, None),
        (UP, None, 1, Suggested.PROGRESS_VARIANT, None),
        (DOWN, 10, 1, Suggested.REGRESS, 9),
        (DOWN, 1, 2.5, Suggested.REGRESS, 0),
        (DOWN, 10, None, Suggested.REGRESS, 10),
        (DOWN, None, None, Suggested.REGRESS, None),
        (DOWN, None, 1, Suggested.REGRESS, None),
        (replace(UP, pain_zone=Zone.ACCEPTABLE), 10, 1, Suggested.HOLD, 10),
    ],
)
def test_without_a_ladder_only_load_and_step_are_known(facts, load, step, suggested, next_kg):
    found, kilograms = without_ladder(decide(facts), load, step)
    assert (found.suggested, kilograms) == (suggested, next_kg)


@pytest.mark.parametrize("facts", [UP, DOWN])
def test_without_a_ladder_a_load_that_cannot_be_is_refused_all_the_same(facts):
    with pytest.raises(OutOfRange, match="load kg"):
        without_ladder(decide(facts), 300, 1)


@pytest.mark.parametrize(
    ("load", "step", "words"),
    [
        (None, None, "There is no load to add to: next variant."),
        (8, 2.5, "No step of 2 to 10 percent is at hand."),
        (10, 1, "The last set came to 14 repetitions; the goal is 12."),
    ],
)
def test_without_a_ladder_the_way_up_says_why_it_is_that_one(load, step, words):
    assert without_ladder(decide(UP), load, step)[0].reasons[-1].words == words


def test_a_pack_takes_half_a_litre_more_and_no_other_step_is_known():
    assert load_step_kg(rung("with-pack", Kit.PACK, load=True)) == 0.5
    assert load_step_kg(rung("high-step", Kit.STEP, load=True)) is None
    assert load_step_kg(rung("pack-on-the-floor", Kit.PACK)) is None
    assert load_step_kg(None) is None


def test_without_a_ladder_the_way_down_keeps_fractions_of_a_kilogram():
    assert without_ladder(decide(DOWN), 7.5, 0.7)[1] == 6.8
