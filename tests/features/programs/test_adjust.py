"""Easing off and moving on, as a suggestion hands it to the practitioner."""

from datetime import date

from hypothesis import given
from hypothesis import strategies as st

from steadfoot.exercises.service import library, variant_of
from steadfoot.programs.adjust import ease_off_client, ease_off_region, prescriptions_loading, progress_client
from steadfoot.programs.changes import changes
from steadfoot.programs.checks import validate
from steadfoot.programs.content import ProgramContent
from steadfoot.programs.findings import Severity
from steadfoot.programs.lighter import with_rounds
from steadfoot.rules.dose import missing_kit
from steadfoot.rules.vocabulary import Kit, Region
from tests.builders import circuit, content, step_down
from tests.features.programs import made

MONDAY = date(2026, 11, 30)
CLAM = step_down("p2", "lying", exercise="clam", reps_low=10, reps_high=15)


def program():
    down = step_down(variant="step-15")
    return ProgramContent.model_validate(content(MONDAY, sessions=[circuit(prescriptions=[down, CLAM])]))


def keys_of(whole):
    return [one.key for session in whole.sessions for one in getattr(session, "prescriptions", [])]


def by_key(whole):
    return {one.key: one for session in whole.sessions for one in getattr(session, "prescriptions", [])}


def test_a_copy_with_fewer_rounds_is_eased_off_with_the_whole_circuit_whichever_was_named():
    whole = program()
    copied = whole.model_copy(update={"sessions": [whole.sessions[0], with_rounds(whole.sessions[0], 2)]})
    for named in ("p1", "p1-2r"):
        eased = ease_off_client(copied, set(Kit), library(), keys=[named])
        assert eased.sentences == ("Step-down: 10 cm step instead of 15 cm step",)
        assert eased.moved == ("p1", "p1-2r")
        assert by_key(eased.content)["p1-2r"].variant == "step-10"


def test_only_what_is_named_is_eased_off():
    eased = ease_off_client(program(), set(Kit), library(), keys=["p1"])
    assert eased.sentences == ("Step-down: 10 cm step instead of 15 cm step",)
    assert eased.moved == ("p1",)
    assert by_key(eased.content)["p1"].variant == "step-10"
    assert by_key(eased.content)["p2"] == by_key(program())["p2"]


def test_a_painful_knee_eases_off_what_loads_the_knee():
    assert prescriptions_loading(program(), Region.KNEE, library()) == ["p1"]
    eased = ease_off_region(program(), set(Kit), library(), region=Region.KNEE)
    assert eased.moved == ("p1",)


def test_a_region_that_nothing_loads_changes_nothing():
    eased = ease_off_region(program(), set(Kit), library(), region=Region.HEAD)
    assert (eased.content, eased.sentences) == (program(), ())


def test_keys_that_are_gone_are_passed_over():
    assert ease_off_client(program(), set(Kit), library(), keys=["gone"]).sentences == ()


def test_what_cannot_go_further_is_named():
    moved = progress_client(program(), {Kit.MAT, Kit.STEP, Kit.RAIL}, library(), keys=["p1", "p2"])
    assert moved.moved == ("p1", "p2")
    top = progress_client(moved.content, {Kit.STEP}, library(), keys=["p1"])
    assert top.at_the_end == ("p1",)
    assert top.content == moved.content


def test_the_program_given_is_left_as_it_was():
    before = program()
    ease_off_client(before, set(Kit), library(), keys=["p1", "p2"])
    assert before == program()


@made.CALM
@given(made.contents(), st.frozensets(st.sampled_from(Kit)), st.sampled_from([ease_off_client, progress_client]))
def test_a_moved_program_is_sound_fits_the_kit_and_says_what_is_new(whole, kit, move):
    moved = move(whole, kit, library(), keys=keys_of(whole))
    errors = [one for one in validate(moved.content, kit, library(), MONDAY) if one.severity is Severity.ERROR]
    assert errors == []
    assert bool(changes(whole, moved.content, library())) == bool(moved.moved)
    assert len(moved.sentences) == len(moved.moved)
    assert set(moved.moved) | set(moved.at_the_end) <= set(keys_of(whole))
    for key in moved.moved:
        one = by_key(moved.content)[key]
        assert not missing_kit(variant_of(library()[one.exercise], one.variant).kit, kit)
