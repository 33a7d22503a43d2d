"""``steadfoot calc test``."""

from typing import Annotated, Any

import typer

from steadfoot.calc.answer import AsJson, source_fields, tell, work_of
from steadfoot.rules.baseline import read
from steadfoot.rules.baseline_catalogue import TestCode
from steadfoot.rules.norms import NoReference, Person, Reference, Sex, TestSide
from steadfoot.rules.sources import BIBLIOGRAPHY


def baseline(
    code: Annotated[TestCode, typer.Argument(help="The test.", show_default=False)],
    value: Annotated[float, typer.Option(help="The result, in the test's unit.")],
    age: Annotated[int | None, typer.Option(help="Age in years.")] = None,
    sex: Annotated[Sex | None, typer.Option(help="Sex, as the norms are split by it.")] = None,
    height_cm: Annotated[float | None, typer.Option(help="Height in cm, for the six-minute walk.")] = None,
    body_mass_kg: Annotated[float | None, typer.Option(help="Body mass in kg, for the six-minute walk.")] = None,
    side: Annotated[TestSide | None, typer.Option(help="Side of the result.")] = None,
    other: Annotated[float | None, typer.Option(help="Result of the other side.")] = None,
    as_json: AsJson = False,
) -> None:
    """Read a baseline test beside the person's norm, and beside the other side."""
    found = read(code, value, Person(age, sex, height_cm, body_mass_kg), side, other)
    answer = {
        "value": found.value,
        "unit": found.test.unit,
        "reference": _reference(found.reference),
        "reading": found.reading,
        "mdc": found.test.mdc,
        "symmetry_percent": found.symmetry_percent,
        "even_enough": found.even_enough,
        "rule": f"test.{found.test.code}",
        "source": work_of(found.test.work),
        "protocol": list(found.test.protocol),
    }
    tell(found.test.name, answer, as_json=as_json)


def _reference(found: Reference | NoReference) -> dict[str, Any] | None:
    if isinstance(found, NoReference):
        return None
    return {
        "shape": found.shape.value,
        "low": found.low,
        "middle": found.middle,
        "high": found.high,
        "grade": found.grade,
        "group": found.group,
        "population": BIBLIOGRAPHY[found.work].population,
        "read_as": BIBLIOGRAPHY[found.work].read_as,
        **source_fields(found.cited),
    }
