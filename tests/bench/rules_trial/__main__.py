"""Prints the table of the trial: the thresholds as they are, and their neighbours."""

import argparse
import sys
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from random import Random
from statistics import median

from steadfoot.rules import attention, effort, pain_findings, progression
from steadfoot.rules.pain import PAIN_STOP
from tests.bench.rules_trial.judged import Score, judge
from tests.bench.rules_trial.people import Kind, Somebody, somebody

HEADER = (
    "| threshold | days to first right flag: tendon | falls behind | never flagged | "
    "false flags per person-month | direction right | up against the truth |"
)
MONTH_DAYS = 30.4
_WHERE = {
    "RISING_WEEKS": (pain_findings,),
    "EFFORT_ABOVE_PLAN": (effort, progression),
    "REPS_OVER_GOAL": (progression,),
    "MISSED_SESSIONS": (attention,),
}
NEIGHBOURS: tuple[tuple[str, int], ...] = (
    ("PAIN_STOP", 5),
    ("PAIN_STOP", 7),
    ("RISING_WEEKS", 2),
    ("RISING_WEEKS", 4),
    ("EFFORT_ABOVE_PLAN", 1),
    ("EFFORT_ABOVE_PLAN", 3),
    ("REPS_OVER_GOAL", 1),
    ("REPS_OVER_GOAL", 3),
    ("MISSED_SESSIONS", 1),
    ("MISSED_SESSIONS", 3),
)


@contextmanager
def _set(name: str, value: int) -> Iterator[None]:
    """Give a threshold another value in every file that reads it, for as long as the block runs."""
    modules = _WHERE.get(name, ())
    kept = [getattr(module, name) for module in modules]
    for module in modules:
        setattr(module, name, value)
    try:
        yield
    finally:
        for module, earlier in zip(modules, kept, strict=True):
            setattr(module, name, earlier)


def people(each: int, seed: int) -> list[Somebody]:
    """Answer so many people of each kind; the same seed draws the same ones."""
    chance = Random(seed)
    return [somebody(kind, number, chance) for kind in Kind for number in range(each)]


def run(everybody: Sequence[Somebody], pain_stop: int = PAIN_STOP) -> Score:
    """Judge everybody with the thresholds as they are now."""
    score = Score()
    for person in everybody:
        judge(person, pain_stop, score)
    return score


def table(each: int, seed: int) -> list[str]:
    """Answer the table, line by line."""
    everybody = people(each, seed)
    rows = [HEADER, "|" + " --- |" * HEADER[1:-1].count("|") + " --- |", _row("as they are", run(everybody))]
    for name, value in NEIGHBOURS:
        with _set(name, value):
            rows.append(_row(f"{name} {value}", run(everybody, value if name == "PAIN_STOP" else PAIN_STOP)))
    return rows


def _row(name: str, score: Score) -> str:
    days = [_days(score.days_to_flag[kind]) for kind in (Kind.TENDON, Kind.BEHIND)]
    months = score.quiet_days / MONTH_DAYS
    cells = (
        name,
        *days,
        str(score.never_flagged),
        f"{score.false_flags / months:.2f}",
        f"{100 * score.right / score.decisions:.0f} %",
        f"{100 * score.harmful / score.decisions:.1f} %",
    )
    return "| " + " | ".join(cells) + " |"


def _days(found: Sequence[int]) -> str:
    return f"{median(found):g} (worst {max(found)})" if found else "none"


def main(arguments: Sequence[str]) -> None:
    """Run the trial and print its table."""
    parser = argparse.ArgumentParser(prog="python -m tests.bench.rules_trial", description=__doc__)
    parser.add_argument("--each", type=int, default=100, help="people of each kind")
    parser.add_argument("--seed", type=int, default=7)
    given = parser.parse_args(arguments)
    print(f"{given.each} people of each kind, 8 to 12 weeks, seed {given.seed}\n")
    print("\n".join(table(given.each, given.seed)))


if __name__ == "__main__":
    main(sys.argv[1:])
