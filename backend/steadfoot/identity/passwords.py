"""Passwords: argon2id through pwdlib, a length rule, and a cap on how many are hashed at once."""

import threading

from pwdlib import PasswordHash
from pwdlib.hashers.argon2 import Argon2Hasher

from steadfoot.core.problems import Invalid

MIN_LENGTH = 12
MAX_LENGTH = 256
_AT_ONCE = 4  # each hash takes 64 MiB; fifty sign-ins together must not exhaust a small server
_hasher = PasswordHash((Argon2Hasher(),))
_gate = threading.BoundedSemaphore(_AT_ONCE)
_decoy = _hasher.hash("a password that nobody has")


def hashed(password: str) -> str:
    """Answer the argon2id hash of a new password.

    Raises:
        Invalid: shorter than 12 characters or longer than 256.
    """
    if not MIN_LENGTH <= len(password) <= MAX_LENGTH:
        detail = f"A password has {MIN_LENGTH} to {MAX_LENGTH} characters; any characters will do."
        raise Invalid("password-length", detail)
    with _gate:
        return _hasher.hash(password)


def is_right(password: str, password_hash: str | None) -> bool:
    """Say whether a password is the hashed one; takes as long for nobody's as for somebody's."""
    with _gate:
        right = _hasher.verify(password, password_hash or _decoy)
    return right and password_hash is not None
