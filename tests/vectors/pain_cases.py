"""Writes ``pain_cases.json``: 10,000 drawn cases with what the server's rules answer; the phone is held to them.

Run ``python -m tests.vectors.pain_cases`` after a change of the rules.
"""

import json
from pathlib import Path
from random import Random

from steadfoot.rules.pain import PAIN_MAX, Advice, Thresholds, Zone, advise, zone

FILE = Path(__file__).with_name("pain_cases.json")
CASES, SEED = 10_000, 20_261_125
COLUMNS = ("during", "next_morning", "usual_pain", "pain_stop", "acceptable_from", "zone", "advice")
ZONES, ADVICE = list(Zone), list(Advice)


def _case(rng: Random) -> list[int]:
    """Draw ratings and thresholds over the whole scale, also thresholds that lie the wrong way round."""
    during, morning, usual = (rng.randint(0, PAIN_MAX) for _ in range(3))
    if rng.random() < 1 / 2:
        morning = rng.randint(0, usual)  # settled by morning: else nearly every case would be a regress
    stop, acceptable = rng.randint(1, PAIN_MAX), rng.randint(0, PAIN_MAX)
    thresholds = Thresholds.of({"pain_stop": stop, "acceptable_from": acceptable}, usual)
    said = ZONES.index(zone(during, thresholds)), ADVICE.index(advise(during, morning, thresholds))
    return [during, morning, usual, stop, acceptable, *said]


def drawn(count: int = CASES) -> list[list[int]]:
    """Answer the cases, the same ones each time."""
    rng = Random(SEED)
    return [_case(rng) for _ in range(count)]


def text() -> str:
    """Answer the file's content, a case a line."""
    head = {"columns": COLUMNS, "zones": [one.value for one in ZONES], "advice": [one.value for one in ADVICE]}
    lines = ",\n".join(json.dumps(case, separators=(",", ":")) for case in drawn())
    return f'{json.dumps(head)[:-1]}, "cases": [\n{lines}\n]}}\n'


if __name__ == "__main__":
    FILE.write_text(text(), encoding="utf-8")
