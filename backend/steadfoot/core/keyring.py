"""The installation's key, in a file beside the database: it seals what must be read again and signs what comes back.

A copy of the database alone, such as a backup that left the house, opens nothing that was sealed.
"""

import hashlib
import hmac
import os
import secrets
import threading
from base64 import b64decode, b64encode
from pathlib import Path

from cryptography.exceptions import InvalidTag
from cryptography.hazmat.primitives.ciphers.aead import AESGCM

_KEY_BYTES = 32
_NONCE_BYTES = 12  # what AES-GCM is specified for; random, of which 2^32 may be used a key (NIST SP 800-38D)
_FOR_OTHERS = 0o077


class KeyUnusable(Exception):
    """The key file is not what was written, or others than its owner may read it."""


class CannotOpen(Exception):
    """Sealed with another key, for something else, or changed since."""


class Keyring:
    """One key of 256 random bits; each use has a key of its own, derived from it."""

    def __init__(self, path: Path) -> None:
        self._path = path
        self._key: bytes | None = None
        self._lock = threading.Lock()

    def load(self) -> None:
        """Read the key, or make it where there is none yet.

        Raises:
            KeyUnusable: the file is no key, or is not its owner's alone.
        """
        with self._lock:
            if self._key is None:
                self._key = _read(self._path) if self._path.exists() else _make(self._path)

    def seal(self, secret: str, about: str) -> str:
        """Answer a secret that only this key opens, and only with the same ``about``: it fits no other row."""
        nonce = secrets.token_bytes(_NONCE_BYTES)
        sealed = AESGCM(self._for("seal")).encrypt(nonce, secret.encode(), about.encode())
        return b64encode(nonce + sealed).decode()

    def open(self, sealed: str, about: str) -> str:
        """Answer the secret.

        Raises:
            CannotOpen: it was not sealed so by this key.
        """
        raw = b64decode(sealed)
        try:
            return AESGCM(self._for("seal")).decrypt(raw[:_NONCE_BYTES], raw[_NONCE_BYTES:], about.encode()).decode()
        except InvalidTag as error:
            raise CannotOpen from error

    def signed(self, purpose: str, message: bytes) -> bytes:
        """Answer HMAC-SHA256 of a message; what is signed for one purpose is worth nothing for another."""
        return hmac.digest(self._for(f"sign {purpose}"), message, hashlib.sha256)

    def _for(self, purpose: str) -> bytes:
        self.load()
        assert self._key is not None, "load leaves a key or raises"
        return hmac.digest(self._key, purpose.encode(), hashlib.sha256)


def _read(path: Path) -> bytes:
    if path.stat().st_mode & _FOR_OTHERS:
        raise KeyUnusable(f"{path} can be read by others. Take their rights away: chmod 600 {path}")
    found = path.read_bytes()
    if len(found) != _KEY_BYTES:
        raise KeyUnusable(f"{path} is not a key of Steadfoot: it has {len(found)} bytes instead of {_KEY_BYTES}.")
    return found


def _make(path: Path) -> bytes:
    """Write a new key whole, then give it its name: of two processes that start at once both use the first one's."""
    path.parent.mkdir(parents=True, exist_ok=True, mode=0o700)
    draft = path.with_name(f".{path.name}.{secrets.token_hex(8)}")
    descriptor = os.open(draft, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
    with os.fdopen(descriptor, "wb") as file:
        file.write(secrets.token_bytes(_KEY_BYTES))
        file.flush()
        os.fsync(file.fileno())
    try:
        os.link(draft, path)
    except FileExistsError:
        pass
    finally:
        draft.unlink()
    return _read(path)
