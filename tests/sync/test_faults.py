"""The table of faults is complete, and each test that it names is there to be run."""

import ast
from functools import cache
from pathlib import Path

import pytest

from tests.sync.faults import STORAGE_AND_SHELL
from tests.sync.faults_sending import SENDING

_ROOT = Path(__file__).parents[2]
FAULTS = STORAGE_AND_SHELL | SENDING
_COUNTS = {3: 10, 4: 16, 5: 9}
"""How many faults each chapter of the list has."""


@cache
def _functions(file: Path) -> frozenset[str]:
    assert file.name.startswith("test_"), f"{file} is not collected"
    return frozenset(node.name for node in ast.parse(file.read_text("utf-8")).body if isinstance(node, ast.FunctionDef))


def _is_there(name: str) -> bool:
    path, _, test = name.partition("::")
    file = _ROOT / path
    if file.suffix == ".py":
        return test in _functions(file)
    assert file.name.endswith(".test.ts"), f"{file} is not run"
    text = file.read_text("utf-8").replace("\\'", "'")
    return any(f"{quote}{test}" in text for quote in "'\"")


def test_every_fault_has_a_line() -> None:
    wanted = {f"{chapter}.{number}" for chapter, count in _COUNTS.items() for number in range(1, count + 1)}
    assert set(FAULTS) == wanted


@pytest.mark.parametrize("number", FAULTS)
def test_a_fault_is_provoked_by_tests_that_exist_or_it_is_said_why_it_cannot_be(number: str) -> None:
    fault = FAULTS[number]
    assert [name for name in fault.tests if not _is_there(name)] == []
    assert fault.tests or len(fault.beyond) > 40
