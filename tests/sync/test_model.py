"""Random histories of phones, practitioners and a server (decision 0017): nothing lost, doubled or told elsewhere."""

import os

from hypothesis import HealthCheck, settings
from hypothesis.stateful import run_state_machine_as_test

from tests.sync.model.machine import Histories
from tests.sync.model.run import worlds

HISTORIES = int(os.environ.get("STEADFOOT_TEST_HISTORIES", "1000"))


def test_no_history_breaks_the_promise() -> None:
    with worlds() as make:
        machine = type("Machine", (Histories,), {"make": staticmethod(make)})
        run_state_machine_as_test(
            machine,
            settings=settings(
                max_examples=HISTORIES,
                stateful_step_count=20,
                deadline=None,
                database=None,
                suppress_health_check=list(HealthCheck),
                print_blob=True,
            ),
        )
