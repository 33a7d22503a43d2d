"""What a page shows depends on the set of events alone: not on order, batches, repeats or the phone's luck."""

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from steadfoot.operations import rebuild_client
from tests.builders import House
from tests.sync.histories import history, shuffled_batches
from tests.sync.laboratory import Laboratory, open_laboratory, rows, seeded

SEEDS = st.integers(0, 2**32)
_ONE_DATABASE = [HealthCheck.function_scoped_fixture, HealthCheck.too_slow]


@pytest.fixture
def laboratory(house: House) -> Laboratory:
    """A client with a program and two phones."""
    return open_laboratory(house)


@settings(max_examples=60, deadline=None, suppress_health_check=_ONE_DATABASE)
@given(seed=SEEDS, count=st.integers(0, 40), phones=st.integers(1, 2))
def test_any_shuffle_split_and_repeat_leaves_the_same_rows(
    laboratory: Laboratory, seed: int, count: int, phones: int
) -> None:
    rng = seeded(seed)
    logs = history(rng, count, phones)
    with laboratory.undone() as session:
        for phone, log in enumerate(logs):
            laboratory.take_in(session, phone, log)
        in_order = rows(session)
    with laboratory.undone() as session:
        for phone, batch in shuffled_batches(rng, logs):
            assert laboratory.take_in(session, phone, batch)["refused"] == []
        assert rows(session) == in_order
        for phone, log in enumerate(logs):
            assert laboratory.take_in(session, phone, [])["acknowledged_through"] == len(log)


@settings(max_examples=200, deadline=None, suppress_health_check=_ONE_DATABASE)
@given(seed=SEEDS, count=st.integers(0, 40), phones=st.integers(1, 2))
def test_a_rebuild_makes_the_very_rows_that_upkeep_kept(
    laboratory: Laboratory, seed: int, count: int, phones: int
) -> None:
    rng = seeded(seed)
    with laboratory.undone() as session:
        for phone, batch in shuffled_batches(rng, history(rng, count, phones), repeats=3):
            laboratory.take_in(session, phone, batch)
        kept = rows(session)
        rebuild_client(session, laboratory.house.practice_id, laboratory.client_id)
        assert rows(session) == kept


@settings(max_examples=12, deadline=None, suppress_health_check=_ONE_DATABASE)
@given(seed=SEEDS, count=st.integers(1, 60))
def test_any_shuffle_split_and_repeat_gives_byte_equal_pages(laboratory: Laboratory, seed: int, count: int) -> None:
    rng = seeded(seed)
    logs = history(rng, count, phones=2)
    with laboratory.undone() as session:
        for phone, log in enumerate(logs):
            laboratory.take_in(session, phone, log)
        in_order = laboratory.pages(session)
    with laboratory.undone() as session:
        for phone, batch in shuffled_batches(rng, logs):
            laboratory.take_in(session, phone, batch)
        for phone in range(2):
            laboratory.take_in(session, phone, [])
        assert laboratory.pages(session) == in_order
        rebuild_client(session, laboratory.house.practice_id, laboratory.client_id)
        assert laboratory.pages(session) == in_order


def test_the_histories_are_not_so_tame_that_nothing_could_go_wrong(laboratory: Laboratory) -> None:
    """Guards the tests above: their histories have to fill every derived table, and take pains back."""
    sizes: dict[str, int] = {}
    reported = answered = 0
    for seed in range(5):
        logs = history(seeded(seed), 60, phones=2)
        reported += sum(event["kind"] == "pain_reported" for log in logs for event in log)
        answered += sum(event["kind"] == "screening_answered" for log in logs for event in log)
        with laboratory.undone() as session:
            for phone, log in enumerate(logs):
                laboratory.take_in(session, phone, log)
            for name, table in rows(session).items():
                sizes[name] = sizes.get(name, 0) + len(table)
    assert sizes["rollups"] > 100
    assert 5 < sizes["pain"] < reported
    assert sizes["findings"] > 5
    assert 5 < sizes["screenings"] < answered
