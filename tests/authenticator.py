"""An authenticator made of software: it makes passkeys and answers challenges, rightly or in some wrong way."""

import hashlib
import json
import secrets
from dataclasses import dataclass, field
from typing import Any

from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.hazmat.primitives.hashes import SHA256
from webauthn.helpers import bytes_to_base64url as text
from webauthn.helpers import encode_cbor

_PRESENT, _VERIFIED, _WITH_KEY = 0x01, 0x04, 0x40


@dataclass
class Authenticator:
    """One passkey of one site."""

    origin: str = "https://steadfoot.test"
    rp_id: str = "steadfoot.test"
    verifies: bool = True
    count: int = 0
    key: ec.EllipticCurvePrivateKey = field(default_factory=lambda: ec.generate_private_key(ec.SECP256R1()))
    id: bytes = field(default_factory=lambda: secrets.token_bytes(16))

    def make(self, options: dict[str, Any], name: str = "Key") -> dict[str, Any]:
        """Answer the body that adds this passkey."""
        data = self._data(_WITH_KEY) + bytes(16) + len(self.id).to_bytes(2) + self.id + encode_cbor(self._public())
        attestation = encode_cbor({"fmt": "none", "attStmt": {}, "authData": data})
        said = self._client_data("webauthn.create", options)
        return {"name": name, "id": text(self.id), "client_data": text(said), "attestation": text(attestation)}

    def answer(self, options: dict[str, Any]) -> dict[str, str]:
        """Answer a challenge."""
        self.count += 1
        data, said = self._data(0), self._client_data("webauthn.get", options)
        signature = self.key.sign(data + hashlib.sha256(said).digest(), ec.ECDSA(SHA256()))
        parts = {"client_data": said, "authenticator_data": data, "signature": signature}
        return {"id": text(self.id), **{name: text(part) for name, part in parts.items()}}

    def _data(self, flags: int) -> bytes:
        flags |= _PRESENT | (_VERIFIED if self.verifies else 0)
        return hashlib.sha256(self.rp_id.encode()).digest() + bytes([flags]) + self.count.to_bytes(4)

    def _public(self) -> dict[int, Any]:
        numbers = self.key.public_key().public_numbers()
        return {1: 2, 3: -7, -1: 1, -2: numbers.x.to_bytes(32), -3: numbers.y.to_bytes(32)}

    def _client_data(self, kind: str, options: dict[str, Any]) -> bytes:
        said = {"type": kind, "challenge": options["challenge"], "origin": self.origin, "crossOrigin": False}
        return json.dumps(said).encode()
