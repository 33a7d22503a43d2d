"""The other half of the random histories, in a file of its own: files run side by side."""

from tests.sync.test_model import HISTORIES, SEED, run_histories


def test_no_history_breaks_the_promise_either() -> None:
    run_histories(HISTORIES, SEED + 1_000_000)
