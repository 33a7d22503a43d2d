"""Request and reply bodies of signing in, one's own account, and the people of the practice."""

from datetime import datetime
from typing import Annotated, Any

from pydantic import BaseModel, StringConstraints

from steadfoot.core.texts import STORABLE, Inward, JsonBool, Name
from steadfoot.identity.factors import Given
from steadfoot.identity.roles import Role
from steadfoot.identity.schemas import Email

Password = Annotated[str, StringConstraints(min_length=1, max_length=256)]
"""As typed: nothing is trimmed or changed. How a new one must be, the rules of passwords say."""
Typed = Annotated[str, StringConstraints(min_length=1, max_length=80)]
Bytes = Annotated[str, StringConstraints(pattern=r"^[A-Za-z0-9_-]+$", max_length=8000)]
"""Bytes in URL-safe base 64 without padding, as Web Authentication writes them."""
CredentialId = Annotated[str, StringConstraints(pattern=r"^[A-Za-z0-9_-]+$", max_length=1400)]


class PasskeyAnswer(Inward):
    """What a browser's passkey answered to a challenge."""

    id: CredentialId
    client_data: Bytes
    authenticator_data: Bytes
    signature: Bytes

    def credential(self) -> dict[str, Any]:
        """Answer it in the shape that Web Authentication gives it."""
        said = {"authenticatorData": self.authenticator_data, "signature": self.signature}
        return _credential(self.id, {"clientDataJSON": self.client_data, **said})


class NewPasskey(Inward):
    """What a browser made, and what its owner calls it."""

    name: Name
    id: CredentialId
    client_data: Bytes
    attestation: Bytes

    def credential(self) -> dict[str, Any]:
        """Answer it in the shape that Web Authentication gives it."""
        return _credential(self.id, {"clientDataJSON": self.client_data, "attestationObject": self.attestation})


def _credential(credential_id: str, response: dict[str, Any]) -> dict[str, Any]:
    return {"id": credential_id, "rawId": credential_id, "type": "public-key", "response": response}


class _SecondFactor(Inward):
    code: Typed | None = None
    recovery_code: Typed | None = None
    passkey: PasskeyAnswer | None = None

    def given(self) -> Given:
        """Answer what was shown beside the password."""
        return Given(self.code, self.recovery_code, self.passkey.credential() if self.passkey else None)


class SignInBody(_SecondFactor):
    """Who signs in; what they have beside the password in a second try, once it is asked for."""

    email: Email
    password: Password


class PasskeySignInBody(Inward):
    """Who signs in without a password."""

    passkey: PasskeyAnswer


class ChallengeBody(Inward):
    """Whose passkeys may answer, by address and password; without them any that verifies its holder."""

    email: Email
    password: Password


class ConfirmBody(_SecondFactor):
    """The sign-in data again; without a password a passkey that verifies its holder."""

    password: Password | None = None


class PasskeyOptions(BaseModel):
    """What the browser's call of Web Authentication is given, bytes in URL-safe base 64."""

    public_key: dict[str, Any]


class PasswordBody(Inward):
    """The password there is, and the one there shall be."""

    current: Password
    new: Password


class TotpBegun(BaseModel):
    """The secret for an app for codes, shown once; it counts after the first right code."""

    secret: str
    uri: str
    qr_svg: str


class TotpCode(Inward):
    """The code that the app shows."""

    code: Typed


class RecoveryCodes(BaseModel):
    """Codes for paper, shown once. Empty: those there are stay good."""

    recovery_codes: list[str]


class PasskeyOut(BaseModel):
    """A passkey of one's own."""

    id: str
    name: str
    created_at: datetime
    last_used_at: datetime | None


class AccountOut(BaseModel):
    """How one signs in."""

    email: str
    display_name: str
    role: Role
    totp_since: datetime | None
    passkeys: list[PasskeyOut]
    passkeys_possible: bool
    recovery_codes_left: int
    required: bool
    confirmed_until: datetime


class OpenSession(BaseModel):
    """Where one is signed in: browser and system as codes, ``unknown`` where it did not say."""

    id: str
    browser: str
    system: str
    signed_in_at: datetime
    last_seen_at: datetime
    here: bool


class OpenSessions(BaseModel):
    """Every place, the one used last first."""

    items: list[OpenSession]


class ColleagueBody(Inward):
    """Who shall join the practice."""

    email: Email
    display_name: Name
    role: Role


class ColleagueLink(BaseModel):
    """A link by which a colleague joins or comes back, once. It is shown now and never again."""

    id: str
    url: str
    expires_at: datetime


class ColleagueChange(Inward):
    """What to change of a colleague; what is left out stays."""

    role: Role | None = None
    disabled: JsonBool | None = None


class Colleague(BaseModel):
    """Someone of the practice, as an owner sees them."""

    id: str
    display_name: str
    email: str
    role: Role
    disabled_at: datetime | None
    second_factor: bool
    created_at: datetime


class WaitingColleague(BaseModel):
    """Someone who was invited and has not come yet."""

    id: str
    display_name: str
    email: str
    role: Role
    expires_at: datetime


class People(BaseModel):
    """The people of the practice, longest there first, and what it asks of them."""

    items: list[Colleague]
    waiting: list[WaitingColleague]
    requires_second_factor: bool


class PracticeSecurity(Inward):
    """What the practice asks of its people."""

    requires_second_factor: JsonBool


JoinCode = Annotated[str, StringConstraints(min_length=1, max_length=100), STORABLE]


class JoinCodeBody(Inward):
    """The code of a colleague's link."""

    code: JoinCode


class JoinBody(JoinCodeBody):
    """The code of a colleague's link, and the password that they choose."""

    display_name: Name
    password: Password


class Welcome(BaseModel):
    """Whose practice a link leads to. ``returning``: they are of it already and only choose a new password."""

    practice_name: str
    email: str
    display_name: str
    role: Role
    returning: bool
