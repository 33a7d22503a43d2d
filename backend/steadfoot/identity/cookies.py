"""The two cookies of a practitioner's browser: its session, and that someone signed in here before.

A stranger may guess for an address until its tries are used up. The second cookie keeps that from locking out the one
whose address it is: in a browser where they signed in before, tries are counted apart. It lets nobody in.
"""

import hmac
import secrets
from base64 import urlsafe_b64decode, urlsafe_b64encode
from datetime import timedelta

from fastapi import Request, Response

from steadfoot.core.ids import digest_of
from steadfoot.core.keyring import Keyring

COOKIE = "__Host-steadfoot"
KNOWN = "__Host-steadfoot-known"
_KNOWN_FOR = timedelta(days=365)
_NOISE_BYTES = 16


def set_session(response: Response, token: str) -> None:
    """Hand a browser the secret of its session."""
    response.set_cookie(COOKIE, token, path="/", secure=True, httponly=True, samesite="strict")


def remember(response: Response, request: Request, email: str) -> None:
    """Hand a browser the sign that this person signed in with it."""
    noise = secrets.token_bytes(_NOISE_BYTES)
    value = urlsafe_b64encode(noise + _signature(request.app.state.keyring, noise, email)).decode()
    age = int(_KNOWN_FOR.total_seconds())
    response.set_cookie(KNOWN, value, max_age=age, path="/", secure=True, httponly=True, samesite="strict")


def known_key(request: Request, email: str) -> str:
    """Answer what this browser's tries for an address are counted under; empty when nobody signed in so here before."""
    value = request.cookies.get(KNOWN, "")
    try:
        raw = urlsafe_b64decode(value)
    except ValueError:
        return ""
    noise, signature = raw[:_NOISE_BYTES], raw[_NOISE_BYTES:]
    right = hmac.compare_digest(signature, _signature(request.app.state.keyring, noise, email))
    return f"browser {digest_of(value)}" if right else ""


def _signature(keyring: Keyring, noise: bytes, email: str) -> bytes:
    return keyring.signed("known browser", noise + email.encode())
