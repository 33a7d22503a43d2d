"""Limits that name the wait; ids that sort by time; secrets that do not repeat."""

import re
from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from steadfoot.core.ids import derived_uuid7, digest_of, new_code, new_token, normal_code, uuid7
from steadfoot.core.limits import Limiter
from steadfoot.core.problems import TooMany

NOW = datetime(2026, 6, 10, 8, tzinfo=UTC)


class Seconds:
    """A clock for limits."""

    now = 0.0

    def __call__(self) -> float:
        return self.now


def test_a_limit_lets_in_so_many_in_any_window_and_keeps_keys_apart() -> None:
    seconds = Seconds()
    limit = Limiter(tries=3, window_s=60, seconds=seconds)
    for at in (0, 10, 20):
        seconds.now = at
        limit.check("a")
    with pytest.raises(TooMany) as refused:
        limit.check("a")
    assert refused.value.headers == {"Retry-After": "40"}
    limit.check("b")
    seconds.now = 60
    limit.check("a")
    with pytest.raises(TooMany):
        limit.check("a")
    limit.forgive("a")
    limit.check("a")


@pytest.mark.parametrize("at", [0.4, 59.6, 30.5])
def test_who_waits_as_long_as_told_is_let_in(at: float) -> None:
    seconds = Seconds()
    limit = Limiter(tries=1, window_s=60, seconds=seconds)
    limit.check("a")
    seconds.now = at
    with pytest.raises(TooMany) as refused:
        limit.check("a")
    seconds.now += float(refused.value.headers["Retry-After"])
    limit.check("a")


def test_a_stranger_with_many_addresses_does_not_fill_the_memory() -> None:
    seconds = Seconds()
    limit = Limiter(tries=1, window_s=60, seconds=seconds)
    for number in range(10_001):
        limit.check(str(number))
    seconds.now = 61
    limit.check("one more")
    assert len(limit._seen) == 1


def test_ids_are_version_7_and_sort_by_time() -> None:
    ids = [uuid7(NOW + timedelta(milliseconds=number)) for number in range(200)]
    pattern = r"[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}"
    assert all(re.fullmatch(pattern, found) for found in ids)
    assert ids == sorted(ids)
    assert len({uuid7(NOW) for _ in range(1000)}) == 1000


def test_a_derived_id_is_the_same_each_time_and_another_for_other_parts() -> None:
    origin = uuid7(NOW)
    found = derived_uuid7(origin, "a", "b")
    assert found == derived_uuid7(origin, "a", "b")
    assert (
        len({found, derived_uuid7(origin, "ab"), derived_uuid7(origin, "b", "a"), derived_uuid7(uuid7(NOW), "a")}) == 4
    )
    assert found[:13] == origin[:13]


def test_ten_thousand_secrets_never_repeat() -> None:
    assert len({new_code() for _ in range(10_000)} | {new_token() for _ in range(10_000)}) == 20_000
    assert len(digest_of(new_token())) == 64


@given(st.text(max_size=60))
def test_reading_a_typed_code_never_fails_and_settles_at_once(typed: str) -> None:
    once = normal_code(typed)
    assert normal_code(once) == once
    assert not set(once) & set("OIL -")


def test_a_code_reads_back_to_itself() -> None:
    for _ in range(100):
        code = new_code()
        assert normal_code(code) == code
