"""How long a printed sheet takes. Prints figures and never fails on time: a busy machine is no fault.

Beside it stands the same program read as JSON, by the same server: what is above it is the printing.
"""

import time
from collections.abc import Callable
from statistics import median
from typing import Any

from steadfoot.exercises.drawings import poses
from steadfoot.exercises.schemas import RepetitionDose
from steadfoot.exercises.service import library
from tests.builders import API, House, circuit, content
from tests.conftest import START
from tests.conftest import app as app
from tests.conftest import clock as clock
from tests.conftest import database as database
from tests.conftest import database_url as database_url
from tests.conftest import house as house
from tests.conftest import server_url as server_url
from tests.conftest import template as template
from tests.features.sheets.reading import whole

PEOPLE, EXERCISES, GOAL_S = 8, 10, 1.0
EVERYTHING = [
    "chair",
    "step",
    "stairs",
    "wall",
    "mat",
    "band",
    "dumbbell",
    "pack",
    "towel",
    "ball",
    "rail",
    "table",
    "pillow",
]


def _prescriptions(note: str) -> list[dict[str, Any]]:
    found = []
    for entry in [library()[code] for code in list(poses())[:EXERCISES]]:
        rung = entry.ladder[0]
        low, high = rung.dose.reps if isinstance(rung.dose, RepetitionDose) else (None, None)
        hold = None if isinstance(rung.dose, RepetitionDose) else rung.dose.hold_s[0]
        dose = {"reps_low": low, "reps_high": high, "hold_s": hold, "rest_s": 30, "note": note}
        found.append({"key": entry.code, "exercise": entry.code, "variant": rung.variant, "sides": rung.sides, **dose})
    return found


def _seconds(ask: Callable[[], Any]) -> float:
    begun = time.perf_counter()
    ask()
    return time.perf_counter() - begun


def test_ten_exercises_on_paper(house: House) -> None:
    printed, read = [], []
    for person in range(PEOPLE):  # each with other words, so that nothing is answered from what was made before
        client_id = house.new_client(f"Person {person}", kit=EVERYTHING)
        house.publish(client_id, content(START.date(), sessions=[circuit(prescriptions=_prescriptions(f"n {person}"))]))
        path = f"{API}/clients/{client_id}/programs/current"
        answers = []
        printed.append(_seconds(lambda path=path, kept=answers: kept.append(house.http.get(f"{path}/sheet.pdf"))))
        read.append(_seconds(lambda path=path: house.http.get(path)))
        assert f"n {person}" in whole(answers[0].content)
    usual = median(printed[1:])
    print(f"\nsheet of {EXERCISES} exercises: first {printed[0]:.3f} s, median {usual:.3f} s, goal {GOAL_S} s;")
    print(f"read as JSON: median {median(read):.3f} s, {usual / median(read):.0f} times")
