"""Identifiers (UUIDv7, RFC 9562) and secrets. An id is never a secret: it tells when it was made."""

import hashlib
import secrets
from datetime import datetime
from uuid import UUID

_CROCKFORD = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"
_CODE_BITS = 128
_CODE_LENGTH = 26
_VERSION_7 = 0x7 << 76
_VARIANT = 0b10 << 62


def _assemble(milliseconds: int, noise: int) -> str:
    rand_a = (noise >> 62) & 0xFFF
    rand_b = noise & ((1 << 62) - 1)
    value = (milliseconds & ((1 << 48) - 1)) << 80 | _VERSION_7 | rand_a << 64 | _VARIANT | rand_b
    return str(UUID(int=value))


def uuid7(now: datetime) -> str:
    """Answer a fresh UUIDv7 as lower-case text; its first 48 bits are the milliseconds of ``now``."""
    return _assemble(int(now.timestamp() * 1000), secrets.randbits(74))


def derived_uuid7(origin: str, *parts: str) -> str:
    """Answer the same UUIDv7 for the same origin and parts, with the origin's time in it.

    Rows that are rebuilt from facts need ids that come out the same every time.
    """
    milliseconds = UUID(origin).int >> 80
    digest = hashlib.sha256("\x1f".join((origin, *parts)).encode()).digest()
    return _assemble(milliseconds, int.from_bytes(digest[:10]))


def new_token() -> str:
    """Answer 256 random bits as URL-safe text, for a session cookie or a phone's token."""
    return secrets.token_urlsafe(32)


def new_code() -> str:
    """Answer 128 random bits as 26 characters of Crockford's base 32, which a person can type."""
    value = secrets.randbits(_CODE_BITS)
    return "".join(_CROCKFORD[(value >> 5 * place) & 31] for place in reversed(range(_CODE_LENGTH)))


def normal_code(typed: str) -> str:
    """Answer a typed code in the form that ``new_code`` makes: no spaces or dashes, O as 0, I and L as 1."""
    kept = "".join(letter for letter in typed.upper() if letter.isalnum())
    return kept.replace("O", "0").replace("I", "1").replace("L", "1")


def digest_of(secret: str) -> str:
    """Answer the SHA-256 of a random secret as hex: all that the database keeps of it."""
    return hashlib.sha256(secret.encode()).hexdigest()
