"""Random histories of phones, practitioners and a server (decision 0017): nothing is lost, doubled or leaked.

``STEADFOOT_TEST_HISTORIES`` sets how many, here and in test_model_too.py each, ``STEADFOOT_TEST_SEED`` which. A history
that breaks a promise is printed with the fewest steps that do; it then becomes a story (tests/sync/model/stories).
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
    """Run so many histories.

    Hypothesis breaks some off that would grow too long, and does not count them; they are checked like any other.
    """
    made = 0
    with worlds() as make:

        def counted() -> object:
            nonlocal made
            made += 1
            return make()

        while made < count:
            # Far from every other run's seed: the nightly run takes one after the other, and no history twice.
            further = seed + made * 10_000_000
            machine = type("Machine", (Histories,), {"make": staticmethod(counted)})
            run_state_machine_as_test(seeded(further)(machine), settings=_sized(max(1, (count - made) * 4 // 5)))


def _sized(count: int) -> settings:
    return settings(
        max_examples=count,
        stateful_step_count=STEPS,
        deadline=None,
        database=None,
        suppress_health_check=list(HealthCheck),
        phases=[phase for phase in Phase if phase is not Phase.explain],  # runs a broken history a hundred times more
    )
