"""``steadfoot calc load``."""

import re
from typing import Annotated

import typer

from steadfoot.calc.answer import AsJson, tell, work_of
from steadfoot.calc.refusals import NotReadable
from steadfoot.rules import load as rules
from steadfoot.rules.dose import MINUTES_MAX
from steadfoot.rules.effort import EFFORT_MAX
from steadfoot.rules.ranges import within

_FORM = "minutes x effort for each day, such as 60x4,0,45x6, with 0 for rest and + between two sessions of a day"
_SESSION = re.compile(r"\s*(\d+(?:\.\d+)?)\s*[xX×]\s*(\d+(?:\.\d+)?)\s*")


def load(
    sessions: Annotated[str, typer.Option(help=f"Seven or more days: {_FORM}.")],
    as_json: AsJson = False,
) -> None:
    """Say how much was done: weekly load, monotony, strain and running averages."""
    found = rules.load([_day(text) for text in sessions.split(",")])
    answer = {
        "value": found.weekly_load,
        "unit": "effort x minutes",
        "weekly_load": found.weekly_load,
        "monotony": found.monotony,
        "strain": found.strain,
        "ewma_7": found.ewma_7,
        "ewma_28": found.ewma_28,
        "rule": "session_load",
        "source": "; ".join(work_of(key) for key in ("foster-2001", "foster-1998", "williams-2017")),
        "tells": rules.TELLS,
        "caution": rules.CAUTION,
    }
    tell("Load", answer, as_json=as_json)


def _day(text: str) -> float:
    return 0.0 if text.strip() == "0" else sum(_session(part) for part in text.split("+"))


def _session(text: str) -> float:
    match = _SESSION.fullmatch(text)
    if match is None:
        raise NotReadable("sessions", text, _FORM)
    minutes, effort = (float(number) for number in match.groups())
    within("minutes", minutes, 0, MINUTES_MAX, "minutes")
    within("effort", effort, 0, EFFORT_MAX)
    return effort * minutes
