"""Steps of people who have a second factor."""

from datetime import timedelta
from typing import Any

import httpx
import pyotp
from fastapi import FastAPI
from fastapi.testclient import TestClient

from tests.authenticator import Authenticator
from tests.builders import API, PASSWORD, House

EMAIL = "maren@thornwater.example"
RIGHT = {"email": EMAIL, "password": PASSWORD}


def visitor(app: FastAPI, **headers: str) -> TestClient:
    """A browser in which nobody signed in yet."""
    return TestClient(app, base_url="https://testserver", headers=headers)


def sign_in(app: FastAPI, **shown: Any) -> httpx.Response:
    """Try to sign in from a browser that is not known."""
    return visitor(app).post(f"{API}/sign-in", json={**RIGHT, **shown})


def code_of(response: httpx.Response) -> str:
    """Answer the code of a problem, for comparing."""
    return str(response.json()["code"])


def code_at(house: House, secret: str, steps: int = 0) -> str:
    """Answer what the app shows now, or so many steps later."""
    return pyotp.TOTP(secret).at(house.clock() + timedelta(seconds=30 * steps))


def add_totp(house: House) -> tuple[str, list[str]]:
    """Set up an app for codes; answer its secret and the recovery codes."""
    secret = house.post("/account/totp")["secret"]
    codes = house.post("/account/totp/activations", {"code": code_at(house, secret)})["recovery_codes"]
    return secret, codes


def add_passkey(house: House, key: Authenticator) -> list[str]:
    """Add a passkey; answer the recovery codes."""
    options = house.post("/account/passkey-challenges")["public_key"]
    codes: list[str] = house.post("/account/passkeys", key.make(options))["recovery_codes"]
    return codes


def challenge(app: FastAPI, body: Any = None) -> dict[str, Any]:
    """Answer a challenge for a sign-in."""
    response = visitor(app).post(f"{API}/sign-in/challenges", json=body)
    assert response.status_code == 201, response.text
    found: dict[str, Any] = response.json()["public_key"]
    return found
