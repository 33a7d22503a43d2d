"""Passwords: argon2id through pwdlib, what a new one must be, and a cap on how many are hashed at once."""

import threading

from pwdlib import PasswordHash
from pwdlib.hashers.argon2 import Argon2Hasher

from steadfoot.core.ids import new_token
from steadfoot.core.problems import Invalid
from steadfoot.identity.guessed import is_guessed_first

MIN_LENGTH = 12
MAX_LENGTH = 256
_AT_ONCE = 4  # each hash takes 64 MiB; fifty sign-ins together must not exhaust a small server
_hasher = PasswordHash((Argon2Hasher(),))
_gate = threading.BoundedSemaphore(_AT_ONCE)
_decoy = _hasher.hash("a password that nobody has")


def hashed(password: str, *about: str) -> str:
    """Answer the argon2id hash of a new password; ``about``: names and addresses that must not be all of it.

    Raises:
        Invalid: shorter than 12 characters or longer than 256, or one that is guessed first.
    """
    _refuse_weak(password, about)
    with _gate:
        return _hasher.hash(password)


def nobodys() -> str:
    """Answer a hash that no password fits: for who shall choose a new one."""
    with _gate:
        return _hasher.hash(new_token())


def _refuse_weak(password: str, about: tuple[str, ...]) -> None:
    if not MIN_LENGTH <= len(password) <= MAX_LENGTH:
        detail = f"A password has {MIN_LENGTH} to {MAX_LENGTH} characters; any characters will do."
        raise Invalid("password-length", detail)
    if is_guessed_first(password, about):
        detail = "This password is among the first that are guessed. Take words that do not belong together."
        raise Invalid("password-guessed", detail)


def is_right(password: str, password_hash: str | None) -> bool:
    """Say whether a password is the hashed one; takes as long for nobody's as for somebody's."""
    with _gate:
        right = _hasher.verify(password, password_hash or _decoy)
    return right and password_hash is not None
