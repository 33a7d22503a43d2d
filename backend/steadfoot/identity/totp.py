"""Codes of the moment by RFC 6238: six digits, HMAC-SHA-1, steps of 30 s, as every app for codes reads them."""

import hmac
from datetime import datetime

import pyotp

from steadfoot.core.keyring import CannotOpen, Keyring
from steadfoot.core.problems import NotSignedIn
from steadfoot.identity.tables import TotpSecret

STEP_S = 30
"""RFC 6238, 4.1."""
STEPS_OFF = 1
"""How far a phone's clock may be off, in steps: RFC 6238, 5.2, recommends at most one."""
DIGITS = 6
_SECRET_LENGTH = 32
"""160 bits in base 32: the length that RFC 4226, 4, recommends."""
NO_STEP = -1


def new_secret() -> str:
    """Answer a random secret of 160 bits in base 32."""
    return pyotp.random_base32(_SECRET_LENGTH)


def matching_step(secret: str, code: str, now: datetime) -> int | None:
    """Answer the step of time that a code belongs to; None when it is of none that is near ``now``.

    Every near step is compared, so that the time taken tells nothing.
    """
    at = int(now.timestamp()) // STEP_S
    codes = pyotp.TOTP(secret, digits=DIGITS, interval=STEP_S)
    steps = range(at - STEPS_OFF, at + STEPS_OFF + 1)
    found = [step for step in steps if hmac.compare_digest(codes.generate_otp(step).encode(), code.encode())]
    return found[-1] if found else None


def digits_of(typed: str) -> str:
    """Answer what was typed or pasted without the spaces that apps show codes with."""
    return "".join(typed.split())


def uri(secret: str, email: str, practice: str) -> str:
    """Answer the address that an app for codes reads from a QR code."""
    issuer = f"Steadfoot {practice}".replace(":", " ")
    return pyotp.TOTP(secret, digits=DIGITS, interval=STEP_S).provisioning_uri(name=email, issuer_name=issuer)


def opened(keyring: Keyring, row: TotpSecret) -> str:
    """Answer the secret of a row.

    Raises:
        NotSignedIn: ``code-not-readable``: it was sealed with another key than this installation's.
    """
    try:
        return keyring.open(row.sealed, row.practitioner_id)
    except CannotOpen as error:
        detail = "Codes of the app cannot be checked: this server has another key than they were set up with."
        raise NotSignedIn("code-not-readable", f"{detail} Use a recovery code or a passkey.") from error
