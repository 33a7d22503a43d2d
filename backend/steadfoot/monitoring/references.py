"""Where our numbers come from: the bibliography and every cited number of the rules, as one page."""

from dataclasses import asdict
from functools import cache

from steadfoot.monitoring.progression_schemas import NumberOut, Sources, WorkOut
from steadfoot.rules.numbers import numbers
from steadfoot.rules.sources import BIBLIOGRAPHY


@cache
def sources() -> Sources:
    """Answer all works and all numbers; they change with the program only."""
    works = [WorkOut(**asdict(work)) for work in BIBLIOGRAPHY.values()]
    found = [
        NumberOut(
            name=one.name,
            value=one.value,
            unit=one.unit,
            kind=one.kind,
            source=one.source,
            note=one.note,
            where=f"rules/{one.module}.py",
        )
        for one in numbers()
    ]
    return Sources(works=works, numbers=found)
