"""What the command line does for people who sign in: the first of a practice, and those who cannot get in any more."""

from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any

from pydantic import TypeAdapter, ValidationError
from sqlmodel import Session

from steadfoot.core.clock import system_clock
from steadfoot.core.database import Database
from steadfoot.core.settings import Settings
from steadfoot.core.texts import Name
from steadfoot.identity import rescue
from steadfoot.identity import service as identity
from steadfoot.identity.schemas import Email, TimeZone
from steadfoot.serving import open_database, open_existing

_REASONS = {"string_pattern_mismatch": "is no email address, such as you@example.org"}
"""Instead of a pattern, which says nothing to whoever typed; only an address has one."""


class NotValid(Exception):
    """What the command line was given cannot be used."""


def _valid(kind: Any, value: str, what: str) -> str:
    try:
        return str(TypeAdapter(kind).validate_python(value))
    except ValidationError as error:
        found = error.errors()[0]
        reason = _REASONS.get(found["type"]) or found["msg"].removeprefix("Value error, ")
        raise NotValid(f"{what} {value!r}: {reason}.") from None


def found_practice(settings: Settings, name: str, email: str, practitioner: str, time_zone: str, password: str) -> None:
    """Write a practice and its first practitioner.

    Raises:
        NotValid: a name, an address or a time zone cannot be used.
        Problem: the address is taken, or the password too short.
    """
    name = _valid(Name, name, "The name")
    email = _valid(Email, email, "The address")
    time_zone = _valid(TimeZone, time_zone, "The time zone")
    person = _valid(Name, practitioner or email.partition("@")[0], "The practitioner's name")
    with _writing(open_database(settings)) as session:
        practice = identity.create_practice(session, name, time_zone, system_clock())
        identity.add_practitioner(session, practice, email, person, password, system_clock())


def set_password(settings: Settings, email: str, password: str) -> None:
    """Give someone a new password and end their sessions; their second factor stays.

    Raises:
        NotValid: the address cannot be one.
        NoDatabase: there is none.
        Problem: nobody signs in with it, or the password is too short or too easily guessed.
    """
    email = _valid(Email, email, "The address")
    with _writing(open_existing(settings)) as session:
        rescue.set_password(session, email, password)


def reset_second_factor(settings: Settings, email: str) -> None:
    """Take away a second factor that was lost and end the person's sessions; their password stays.

    Raises:
        NotValid: the address cannot be one.
        NoDatabase: there is none.
        Problem: nobody signs in with it.
    """
    email = _valid(Email, email, "The address")
    with _writing(open_existing(settings)) as session:
        rescue.reset_second_factor(session, email)


@contextmanager
def _writing(database: Database) -> Iterator[Session]:
    try:
        with database.write() as session:
            yield session
    finally:
        database.close()
