"""The list of numbers is complete: what is written beside a constant anywhere in the rules is in it."""

import re
from pathlib import Path

import pytest

import steadfoot.rules
from steadfoot.rules.numbers import numbers, unit_of
from steadfoot.rules.sources import BIBLIOGRAPHY, Kind


def test_every_cited_constant_of_every_file_is_in_the_list():
    """Read from the text of the files, by another way than the list itself takes."""
    written = set()
    for file in Path(steadfoot.rules.__path__[0]).glob("*.py"):
        names = re.findall(r"^([A-Z][A-Z0-9_]*): Final\[\s*Annotated\[", file.read_text(), re.MULTILINE)
        written |= {(file.stem, name) for name in names}
    assert {(one.module, one.name) for one in numbers()} == written


def test_each_number_has_its_work_its_kind_and_a_note():
    found = numbers()
    for one in found:
        assert one.source in BIBLIOGRAPHY
        assert one.note
        assert (one.kind is Kind.HOUSE) == (one.source == "house")
    by_name = {one.name: one for one in found}
    assert (by_name["PAIN_STOP"].value, by_name["PAIN_STOP"].module) == (6, "pain")
    assert (by_name["PAIN_STOP"].kind, by_name["PAIN_STOP"].source) == (Kind.PUBLISHED, "silbernagel-2007")
    assert by_name["PAIN_STOP"].note == "Up to 5 of 10 is allowed, so 6 is the first too much"
    assert (by_name["SILENT_DAYS"].value, by_name["SILENT_DAYS"].unit) == (5, "days")
    assert (by_name["CHAIR_STAND"].value, by_name["CHAIR_STAND"].unit) == (None, "")


@pytest.mark.parametrize(
    ("name", "unit"),
    [
        ("LOAD_MAX_KG", "kg"),
        ("CLIMB_MAX_M", "m"),
        ("CLIMB_M_PER_H", "m/h"),
        ("WALK_KMH", "km/h"),
        ("DISTANCE_MAX_KM", "km"),
        ("REST_MAX_S", "s"),
        ("SPEED_MAX_M_S", "m/s"),
        ("GRAVITY_M_S2", "m/s²"),
        ("ERROR_W_PER_KG", "W/kg"),
        ("STEEP_DEGREES", "degrees"),
        ("ACTIVE_DAYS_A_WEEK", "days a week"),
        ("SPACING_DAYS", "days"),
        ("MINUTES_MAX", "minutes"),
        ("ADHERENT", ""),
    ],
)
def test_the_unit_is_read_from_the_names_ending(name, unit):
    assert unit_of(name) == unit
