"""``steadfoot calc pain``."""

from typing import Annotated

import typer

from steadfoot.calc.answer import AsJson, source_fields, tell
from steadfoot.rules import pain as rules
from steadfoot.rules.ranges import within
from steadfoot.rules.sources import citation

Rating = Annotated[int, typer.Option(help="0 (none) to 10 (worst imaginable).")]


def pain(during: Rating, next_morning: Rating, usual: Rating = rules.USUAL_PAIN, as_json: AsJson = False) -> None:
    """Say what a pain means for the dose, by the pain-monitoring model."""
    for name, rating in (("during", during), ("next_morning", next_morning), ("usual", usual)):
        within(name, rating, 0, rules.PAIN_MAX)
    thresholds = rules.Thresholds(usual_pain=usual)
    answer = {
        "value": during,
        "unit": "0 to 10",
        "zone": rules.zone(during, thresholds).value,
        "advice": rules.advise(during, next_morning, thresholds).value,
        "rule": "pain_monitoring",
        **source_fields(citation(rules, "PAIN_STOP")),
    }
    tell("Pain", answer, as_json=as_json)
