"""Passkeys: Web Authentication, as a second factor, or alone where the authenticator has checked who holds it.

A challenge is not stored: it carries its end and a signature of this installation. Only what was answered is stored,
until then: no answer works twice, and a stranger who asks for challenges fills nothing.
"""

import hmac
import json
import secrets
from base64 import b64decode, b64encode
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from ipaddress import ip_address
from typing import Any
from urllib.parse import urlsplit

import webauthn
from sqlmodel import Session
from webauthn.helpers import (
    base64url_to_bytes,
    bytes_to_base64url,
    decode_credential_public_key,
    decoded_public_key_to_cryptography,
    options_to_json,
    parse_client_data_json,
)
from webauthn.helpers.structs import (
    AuthenticatorSelectionCriteria,
    PublicKeyCredentialDescriptor,
    ResidentKeyRequirement,
    UserVerificationRequirement,
)

from steadfoot.core.ids import digest_of, uuid7
from steadfoot.core.keyring import Keyring
from steadfoot.core.problems import Invalid, NotSignedIn
from steadfoot.identity import factor_store
from steadfoot.identity.tables import Passkey, Practitioner, SpentChallenge

CHALLENGE_FOR = timedelta(minutes=5)
"""What Web Authentication, level 2, 15.1, takes for a ceremony if nothing else is said."""
SIGN_IN, CONFIRM, REGISTER = "sign-in", "confirm", "register"
_NOISE_BYTES = 16
_END_BYTES = 6
_REQUIRED, _PREFERRED = UserVerificationRequirement.REQUIRED, UserVerificationRequirement.PREFERRED


@dataclass(frozen=True, slots=True)
class Site:
    """Whose passkeys these are: they work at this address and at no other."""

    rp_id: str
    origin: str

    @property
    def possible(self) -> bool:
        """Say whether browsers offer passkeys here: only to a name, and only over https or on the same machine."""
        try:
            ip_address(self.rp_id)
        except ValueError:
            return self.origin.startswith("https:") or self.rp_id == "localhost"
        return False


def site_of(address: str) -> Site:
    """Answer the site of the address that is set; never of a request's Host header, which a stranger can write."""
    parts = urlsplit(address)
    return Site(parts.hostname or "", f"{parts.scheme}://{parts.netloc}")


@dataclass(frozen=True, slots=True)
class Use:
    """A right answer of a passkey; it counts once its challenge is spent."""

    passkey_id: str
    practice_id: str
    sign_count: int
    challenge: bytes


def new_challenge(keyring: Keyring, purpose: str, about: str, now: datetime) -> bytes:
    """Answer a challenge for one purpose and person (none at a sign-in), good for five minutes."""
    end = int((now + CHALLENGE_FOR).timestamp())
    body = secrets.token_bytes(_NOISE_BYTES) + end.to_bytes(_END_BYTES)
    return body + _signature(keyring, purpose, about, body)


def _signature(keyring: Keyring, purpose: str, about: str, body: bytes) -> bytes:
    return keyring.signed(f"challenge {purpose} {about}", body)


def _end_of(challenge: bytes) -> datetime:
    return datetime.fromtimestamp(int.from_bytes(challenge[_NOISE_BYTES : _NOISE_BYTES + _END_BYTES]), UTC)


def _challenge_in(keyring: Keyring, credential: dict[str, Any], purpose: str, about: str, now: datetime) -> bytes:
    """Answer the challenge that a credential answers, if it is ours, for this, and young enough."""
    said = parse_client_data_json(base64url_to_bytes(credential["response"]["clientDataJSON"])).challenge
    body, signature = said[: _NOISE_BYTES + _END_BYTES], said[_NOISE_BYTES + _END_BYTES :]
    if not hmac.compare_digest(signature, _signature(keyring, purpose, about, body)) or _end_of(said) <= now:
        raise ValueError("the challenge is not ours, not for this, or too old")
    return said


def spend(session: Session, challenge: bytes, practice_id: str, now: datetime) -> bool:
    """Mark a challenge as answered; False when it was before."""
    digest = digest_of(challenge.hex())
    spent = SpentChallenge(digest=digest, practice_id=practice_id, expires_at=_end_of(challenge))
    return factor_store.spend_challenge(session, spent, now)


def _known(rows: Sequence[Passkey]) -> list[PublicKeyCredentialDescriptor]:
    return [PublicKeyCredentialDescriptor(id=base64url_to_bytes(row.credential_id)) for row in rows]


def options_to_add(
    keyring: Keyring, site: Site, person: Practitioner, rows: Sequence[Passkey], now: datetime
) -> dict[str, Any]:
    """Answer what a browser needs to make a passkey, as JSON."""
    options = webauthn.generate_registration_options(
        rp_id=site.rp_id,
        rp_name="Steadfoot",
        user_id=person.id.encode(),
        user_name=person.email,
        user_display_name=person.display_name,
        challenge=new_challenge(keyring, REGISTER, person.id, now),
        authenticator_selection=AuthenticatorSelectionCriteria(
            resident_key=ResidentKeyRequirement.PREFERRED, user_verification=_PREFERRED
        ),
        exclude_credentials=_known(rows),
    )
    return _as_json(options)


def options_to_show(
    keyring: Keyring, site: Site, purpose: str, about: str, rows: Sequence[Passkey], now: datetime
) -> dict[str, Any]:
    """Answer what a browser needs to use a passkey, as JSON; without ``rows`` any passkey of the site, verified."""
    options = webauthn.generate_authentication_options(
        rp_id=site.rp_id,
        challenge=new_challenge(keyring, purpose, about, now),
        allow_credentials=_known(rows),
        user_verification=_PREFERRED if rows else _REQUIRED,
    )
    return _as_json(options)


def _as_json(options: Any) -> dict[str, Any]:
    found: dict[str, Any] = json.loads(options_to_json(options))
    return found


def made(
    keyring: Keyring, site: Site, person: Practitioner, credential: dict[str, Any], name: str, now: datetime
) -> tuple[Passkey, bytes]:
    """Answer the row of a new passkey, and the challenge that it answered.

    Raises:
        Invalid: it is not an answer to a challenge of ours for this person and site.
    """
    try:
        challenge = _challenge_in(keyring, credential, REGISTER, person.id, now)
        found = webauthn.verify_registration_response(
            credential=credential,
            expected_challenge=challenge,
            expected_rp_id=site.rp_id,
            expected_origin=site.origin,
        )
        if bytes_to_base64url(found.credential_id) != credential["id"]:
            raise ValueError("what was signed has another id")
        decoded_public_key_to_cryptography(decode_credential_public_key(found.credential_public_key))
    except Exception as error:  # whatever a stranger's bytes provoke in the libraries that read them
        raise Invalid("passkey-not-valid", "This passkey could not be checked. Please begin again.") from error
    row = Passkey(
        id=uuid7(now),
        practice_id=person.practice_id,
        practitioner_id=person.id,
        credential_id=bytes_to_base64url(found.credential_id),
        public_key=b64encode(found.credential_public_key).decode(),
        sign_count=found.sign_count,
        name=name,
        created_at=now,
        last_used_at=None,
    )
    return row, challenge


def shown(
    keyring: Keyring,
    site: Site,
    row: Passkey,
    credential: dict[str, Any],
    purpose: str,
    about: str,
    now: datetime,
    *,
    alone: bool = False,
) -> Use:
    """Answer the use of a passkey. ``alone``, without a password beside it: it must have verified its holder.

    Raises:
        NotSignedIn: it is not an answer to a challenge of ours, made by this passkey, for this site.
    """
    try:
        challenge = _challenge_in(keyring, credential, purpose, about, now)
        found = webauthn.verify_authentication_response(
            credential=credential,
            expected_challenge=challenge,
            expected_rp_id=site.rp_id,
            expected_origin=site.origin,
            credential_public_key=b64decode(row.public_key),
            credential_current_sign_count=row.sign_count,
            require_user_verification=alone,
        )
    except Exception as error:  # whatever a stranger's bytes provoke in the libraries that read them
        raise not_accepted() from error
    return Use(row.id, row.practice_id, found.new_sign_count, challenge)


def not_accepted() -> NotSignedIn:
    """Answer the refusal of a passkey; it is the same whatever was wrong."""
    return NotSignedIn("passkey-refused", "This passkey was not accepted. Please try again, or sign in another way.")
