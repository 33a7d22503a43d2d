"""The trial of the rules runs, is the same for the same seed, and its table is the one that the rules' README shows."""

from pathlib import Path

import steadfoot.rules
from steadfoot.rules import progression
from tests.bench.rules_trial.__main__ import HEADER, NEIGHBOURS, main, people, run, table

README = Path(steadfoot.rules.__path__[0]) / "README.md"


def test_a_small_trial_prints_a_row_for_each_threshold(capsys):
    main(["--each", "2", "--seed", "3"])
    lines = capsys.readouterr().out.splitlines()
    assert lines[0] == "2 people of each kind, 8 to 12 weeks, seed 3"
    assert lines[2] == HEADER
    assert [line.split(" | ")[0] for line in lines[4:]] == [
        "| as they are",
        *(f"| {name} {value}" for name, value in NEIGHBOURS),
    ]


def test_the_same_seed_gives_the_same_table_and_the_thresholds_are_put_back():
    earlier = progression.REPS_OVER_GOAL
    assert table(1, 5) == table(1, 5)
    assert earlier == progression.REPS_OVER_GOAL


def test_the_rules_find_trouble_and_ask_for_less_where_less_is_right():
    score = run(people(5, 11))
    assert all(score.days_to_flag.values())
    assert score.right / score.decisions > 0.8
    assert score.harmful / score.decisions < 0.01


def test_the_readme_shows_the_table_with_its_rows():
    text = README.read_text()
    assert HEADER in text
    for name, value in NEIGHBOURS:
        assert f"| {name} {value} |" in text


def test_the_readme_names_every_file_of_the_rules():
    text = README.read_text()
    files = {file.name for file in README.parent.glob("*.py")} - {"__init__.py"}
    assert {name for name in files if f"`{name}`" not in text} == set()
