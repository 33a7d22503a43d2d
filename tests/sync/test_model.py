"""Random histories of phones, practitioners and a server (decision 0017): nothing is lost, doubled or leaked.

``STEADFOOT_TEST_HISTORIES`` sets how many, here and in test_model_too.py each, ``STEADFOOT_TEST_SEED`` which. A history
that breaks a promise is printed with the fewest steps that do; it then becomes a story (tests/sync/model/stories.py).
"""

import os

from hypothesis import HealthCheck, Phase, settings
from hypothesis import seed as seeded
from hypothesis.stateful import run_state_machine_as_test

from tests.sync.model.machine import Histories
from tests.sync.model.run import worlds

HISTORIES = int(os.environ.get("STEADFOOT_TEST_HISTORIES", "1000"))
SEED = int(os.environ.get("STEADFOOT_TEST_SEED", "20261128"))
STEPS = 14


def test_no_history_breaks_the_promise() -> None:
    run_histories(HISTORIES, SEED)


def run_histories(count: int, seed: int) -> None:
    """Run so many histories."""
    phases = [phase for phase in Phase if phase is not Phase.explain]  # it runs a broken history a hundred times more
    sized = settings(max_examples=count, stateful_step_count=STEPS, deadline=None, database=None, phases=phases)
    made = 0
    with worlds() as make:

        def counted() -> object:
            nonlocal made
            made += 1
            return make()

        machine = seeded(seed)(type("Machine", (Histories,), {"make": staticmethod(counted)}))
        run_state_machine_as_test(machine, settings=settings(sized, suppress_health_check=list(HealthCheck)))
    assert made >= count, f"only {made} histories were run"
