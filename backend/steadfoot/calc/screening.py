"""``steadfoot calc screening``."""

import json
from pathlib import Path
from typing import Annotated, Any

import typer

from steadfoot.calc.answer import AsJson, tell, work_of
from steadfoot.calc.refusals import NotReadable
from steadfoot.rules import screening as rules

_YES_NO = ("regular_activity", "known_disease", "signs_or_symptoms")
_FORM = (
    "an object with regular_activity, known_disease and signs_or_symptoms (true or false) and intensity "
    '("light_to_moderate" or "vigorous"), and nothing else'
)


def screening(
    json_in: Annotated[Path, typer.Option(help=f"File with {_FORM}. Known disease: cardiovascular, metabolic, renal.")],
    as_json: AsJson = False,
) -> None:
    """Say whether someone should be cleared by a doctor before a program."""
    outcome = rules.screen(_answers(_read(json_in)))
    answer = {
        "value": outcome.clearance.value,
        "unit": None,
        "clearance": outcome.clearance.value,
        "reasons": list(outcome.reasons),
        "rule": "screening_2015",
        "source": work_of(outcome.source),
    }
    tell("Screening", answer, as_json=as_json)


def _read(file: Path) -> Any:
    try:
        return json.loads(file.read_text(encoding="utf-8"))
    except OSError as error:
        raise NotReadable("json in", str(file), "a file that can be read") from error
    except ValueError as error:
        raise NotReadable("json in", str(file), f"a JSON file: {_FORM}") from error


def _answers(said: Any) -> rules.Answers:
    if not isinstance(said, dict) or set(said) != {*_YES_NO, "intensity"}:
        raise NotReadable("json in", json.dumps(said), _FORM)
    for name in _YES_NO:
        if not isinstance(said[name], bool):
            raise NotReadable(name, json.dumps(said[name]), "true or false")
    if said["intensity"] not in tuple(rules.Intensity):
        raise NotReadable("intensity", json.dumps(said["intensity"]), " or ".join(rules.Intensity))
    return rules.Answers(
        said["regular_activity"],
        said["known_disease"],
        said["signs_or_symptoms"],
        rules.Intensity(said["intensity"]),
    )
