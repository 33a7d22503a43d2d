"""Every number that changes advice says where it comes from."""

import importlib
import pkgutil
import re
from pathlib import Path
from typing import Annotated, get_args, get_origin

import pytest

import steadfoot.rules
from steadfoot.rules.findings import CARDS, Rule
from steadfoot.rules.sources import BIBLIOGRAPHY, Cited, Kind, house, plausible

MODULES = [
    importlib.import_module(f"steadfoot.rules.{found.name}") for found in pkgutil.iter_modules(steadfoot.rules.__path__)
]
NUMBERS = [
    (module, name)
    for module in MODULES
    for name, value in list(vars(module).items())
    if re.fullmatch("[A-Z][A-Z0-9_]*", name) and isinstance(value, int | float) and name in module.__annotations__
]


def cited(module, name):
    (inner,) = get_args(module.__annotations__[name]) or (None,)
    assert get_origin(inner) is Annotated, f"{module.__name__}.{name} says no source"
    return next(extra for extra in inner.__metadata__ if isinstance(extra, Cited))


def test_there_are_numbers_to_look_at():
    assert {name for _, name in NUMBERS} >= {"PAIN_STOP", "SILENT_DAYS", "WEEK_DAYS"}


@pytest.mark.parametrize(("module", "name"), NUMBERS)
def test_a_number_names_a_work_of_the_bibliography_and_a_place_or_reason(module, name):
    source = cited(module, name)
    assert source.source in BIBLIOGRAPHY
    assert source.note
    assert (source.kind is Kind.HOUSE) == (source.source == "house")


@pytest.mark.parametrize("module", MODULES)
def test_no_public_number_hides_without_an_annotation(module):
    assigned = re.findall(r"^([A-Z][A-Z0-9_]*) = -?[0-9]", Path(module.__file__).read_text(), re.MULTILINE)
    assert assigned == []


@pytest.mark.parametrize("module", MODULES)
def test_every_work_named_in_a_docstring_is_in_the_bibliography(module):
    keys = re.findall(r"\[([a-z]+(?:-[a-z]+)*-[0-9]{4})\]", Path(module.__file__).read_text())
    assert set(keys) <= set(BIBLIOGRAPHY)


def test_every_rule_has_a_card_with_a_source():
    assert set(CARDS) == set(Rule)
    assert {card.cited.source for card in CARDS.values()} <= set(BIBLIOGRAPHY)


def test_every_work_says_whom_it_studied_and_how_it_was_read():
    for work in BIBLIOGRAPHY.values():
        assert work.population
        assert work.read_as


def test_what_is_our_own_choice_says_so():
    assert house("Three days are enough") == Cited(Kind.HOUSE, "house", "Three days are enough")
    assert plausible("ten minutes").note == "Plausible range, to catch slips of the finger: ten minutes"
    assert (plausible("ten minutes").kind, plausible("ten minutes").source) == (Kind.HOUSE, "house")
