"""Fixtures that make hundreds of houses cheap and keep one test's tries from counting against the next."""

from collections.abc import Iterator
from contextlib import contextmanager

import pytest
from pwdlib import PasswordHash
from pwdlib.hashers.argon2 import Argon2Hasher

from steadfoot.checkins import routes as checkin_routes
from steadfoot.core.limits import Limiter
from steadfoot.custody import routes as custody_routes
from steadfoot.identity import factors, passwords, service
from steadfoot.identity import routes as identity_routes
from steadfoot.trips import routes as trip_routes

_LIMITERS: tuple[Limiter, ...] = (
    checkin_routes.calls,
    identity_routes._PAIRING_TRIES,
    service._GUESSES,
    factors._CODE_TRIES,
    trip_routes._READINGS,
    custody_routes._COPIES,
)


@contextmanager
def quick_passwords_now() -> Iterator[None]:
    """Hash with the least memory and time meanwhile."""
    quick = PasswordHash((Argon2Hasher(time_cost=1, memory_cost=8, parallelism=1),))
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(passwords, "_hasher", quick)
        patch.setattr(passwords, "_decoy", quick.hash("a password that nobody has"))
        yield


@pytest.fixture(autouse=True, scope="session")
def quick_passwords() -> Iterator[None]:
    """Hash quickly in every test: a quarter of a second a house would be most of the run.

    What a real installation hashes with is checked by a test of its own.
    """
    with quick_passwords_now():
        yield


def forget_tries() -> None:
    """Forget every try: limits live as long as the process, and all tests come from one address."""
    for limiter in _LIMITERS:
        limiter._seen.clear()


@pytest.fixture(autouse=True)
def fresh_limits() -> None:
    """Each test begins without tries."""
    forget_tries()
