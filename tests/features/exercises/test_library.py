"""The library's files: whole, plain, and refused when broken."""

import json
import re
import shutil
from itertools import pairwise
from pathlib import Path

import pytest

import steadfoot.exercises
from steadfoot.exercises import service
from steadfoot.exercises.schemas import SHORT_MAX_LETTERS, Exercise, Quality, RepetitionDose
from steadfoot.exercises.store import LibraryBroken, read_library
from steadfoot.rules.vocabulary import Kit, Region

FOLDER = Path(steadfoot.exercises.__file__).parent / "library"
ENTRIES = list(service.library().values())
FAST = [entry for entry in ENTRIES if Quality.POWER in entry.trains]
LONGEST_SENTENCE_WORDS = 18
LEAST_MOVEMENTS, LEAST_VARIANTS, LEAST_FOR_A_QUALITY = 48, 150, 4


def sentences(entry: Exercise) -> list[str]:
    faults = [text for fault in entry.faults for text in (fault.see, fault.instead)]
    steps = [step for rung in entry.ladder for step in rung.how]
    return [entry.why, *entry.cues, *faults, *entry.cautions, *steps]


def test_the_library_holds_enough_movements_for_a_season():
    assert len(ENTRIES) >= LEAST_MOVEMENTS
    assert sum(len(entry.ladder) for entry in ENTRIES) >= LEAST_VARIANTS


@pytest.mark.parametrize("quality", list(Quality))
def test_every_quality_has_movements_to_choose_from(quality):
    assert len([entry for entry in ENTRIES if quality in entry.trains]) >= LEAST_FOR_A_QUALITY


def test_every_file_is_read():
    assert {path.stem for path in FOLDER.glob("*.json")} == set(service.library())


@pytest.mark.parametrize("entry", ENTRIES, ids=lambda entry: entry.code)
def test_every_sentence_is_short(entry):
    for sentence in sentences(entry):
        assert len(sentence.split()) <= LONGEST_SENTENCE_WORDS, sentence


@pytest.mark.parametrize("entry", ENTRIES, ids=lambda entry: entry.code)
def test_texts_are_clean(entry):
    for sentence in sentences(entry):
        assert sentence == sentence.strip()
        assert not re.search(r"  |\.\.|[!?]", sentence), sentence


@pytest.mark.parametrize("entry", ENTRIES, ids=lambda entry: entry.code)
def test_every_ladder_has_three_to_five_rungs_with_captions_that_fit_and_differ(entry):
    assert 3 <= len(entry.ladder) <= 5
    shorts = [rung.short for rung in entry.ladder if rung.short]
    assert len(set(shorts)) == len(shorts)
    assert all(len(short) <= SHORT_MAX_LETTERS for short in shorts)
    assert len(set(entry.cues)) == len(entry.cues)


@pytest.mark.parametrize("entry", ENTRIES, ids=lambda entry: entry.code)
def test_every_code_is_one_of_the_vocabularys(entry):
    written = json.loads((FOLDER / f"{entry.code}.json").read_text())
    assert set(written["loads"]) <= {region.value for region in Region}
    assert {code for rung in written["ladder"] for code in rung["kit"]} <= {kit.value for kit in Kit}


@pytest.mark.parametrize("entry", ENTRIES, ids=lambda entry: entry.code)
def test_a_required_weight_names_what_carries_it(entry):
    carriers = {Kit.DUMBBELL, Kit.PACK}
    for rung in entry.ladder:
        assert (rung.load == "required") == bool(carriers & set(rung.kit)), rung.variant


def test_the_lowest_rung_of_every_movement_but_the_carrying_ones_needs_no_weight():
    weighted = [entry for entry in ENTRIES if entry.ladder[0].load == "required"]
    assert weighted
    assert {entry.trains[0] for entry in weighted} == {Quality.CARRYING}


@pytest.mark.parametrize("entry", FAST, ids=lambda entry: entry.code)
def test_a_fast_movement_says_when_to_stop(entry):
    assert any(re.search(r"\bstop\b", caution, re.IGNORECASE) for caution in entry.cautions)


@pytest.mark.parametrize("entry", ENTRIES, ids=lambda entry: entry.code)
def test_a_band_is_looked_over_before_it_is_pulled(entry):
    uses_band = any(Kit.BAND in rung.kit for rung in entry.ladder)
    assert not uses_band or any("Check the band" in caution for caution in entry.cautions)


@pytest.mark.parametrize("entry", ENTRIES, ids=lambda entry: entry.code)
def test_a_one_legged_variant_is_done_for_each_side(entry):
    for rung in entry.ladder:
        if re.search(r"single|one-arm|down-one", rung.variant):
            assert rung.sides == "each", rung.variant


def test_no_two_movements_share_a_name():
    names = [entry.name for entry in ENTRIES]
    assert len(set(names)) == len(names)


def test_easier_and_harder_walk_the_whole_ladder():
    for entry in ENTRIES:
        codes = [rung.variant for rung in entry.ladder]
        assert service.easier(entry, codes[0]) is None
        assert service.harder(entry, codes[-1]) is None
        for lower, upper in pairwise(codes):
            assert service.harder(entry, lower).variant == upper
            assert service.easier(entry, upper).variant == lower


def test_an_unknown_variant_has_no_neighbours():
    entry = ENTRIES[0]
    assert service.variant_of(entry, "unheard-of") is None
    assert service.easier(entry, "unheard-of") is None


def test_the_rules_see_the_same_ladder():
    for entry in ENTRIES:
        for variant, rung in zip(entry.ladder, service.ladder_of(entry), strict=True):
            dose = rung.reps if isinstance(variant.dose, RepetitionDose) else rung.hold_s
            assert dose is not None
            assert (rung.reps is None) != (rung.hold_s is None)
            assert rung.carries_load == (variant.load != "none")


def test_a_program_carries_the_entries_of_what_may_be_done_instead():
    whole = {"sessions": [{"prescriptions": [{"exercise": "squat", "alternatives": [{"exercise": "clam"}]}]}]}
    assert [one["code"] for one in service.entries_for(whole, service.library())] == ["squat", "clam"]


def test_a_program_carries_each_used_entry_once_and_whole():
    one = {"exercise": "step-down"}
    content = {"sessions": [{"prescriptions": [one, {"exercise": "clam"}]}, {"prescriptions": [one]}, {"kind": "rest"}]}
    entries = service.entries_for(content, service.library())
    assert [entry["code"] for entry in entries] == ["step-down", "clam"]
    whole = [{key: value for key, value in rung.items() if key != "drawn"} for rung in entries[0]["ladder"]]
    assert entries[0].pop("own") is None
    assert {**entries[0], "ladder": whole} == json.loads((FOLDER / "step-down.json").read_text())


@pytest.fixture
def copy(tmp_path):
    shutil.copy(FOLDER / "clam.json", tmp_path)
    return tmp_path


def edit(folder, **more):
    path = folder / "clam.json"
    path.write_text(json.dumps(json.loads(path.read_text()) | more))


@pytest.mark.parametrize(
    ("more", "words"),
    [
        ({"colour": "blue"}, "clam.json: colour: Extra inputs"),
        ({"loads": ["knees"]}, "clam.json: loads.0: Input should be 'head'"),
        ({"ladder": []}, "clam.json: ladder: List should have at least 3"),
        ({"cues": ["Go slowly."] * 3}, "cues must differ"),
        ({"why": "no full stop"}, "clam.json: why: String should match"),
        ({"sides": "both"}, "sides must be those of the easiest variant"),
        ({"code": "shell"}, "must be named shell.json"),
    ],
)
def test_a_broken_file_is_refused_by_file_and_field(copy, more, words):
    edit(copy, **more)
    with pytest.raises(LibraryBroken, match=re.escape(words)):
        read_library(copy)


def test_a_dose_from_high_to_low_is_refused(copy):
    ladder = json.loads((copy / "clam.json").read_text())["ladder"]
    ladder[0]["dose"] = {"reps": [12, 8]}
    edit(copy, ladder=ladder)
    with pytest.raises(LibraryBroken, match="dose of lying runs from high to low"):
        read_library(copy)
