"""Request and reply bodies of identity."""

from datetime import datetime
from enum import StrEnum
from typing import Annotated, Literal
from zoneinfo import ZoneInfo, available_timezones

from pydantic import AfterValidator, BaseModel, Field, StringConstraints

from steadfoot.core.texts import JSON_INT, JSON_NUMBER, STORABLE, Inward, JsonBool, Line, Name, Note
from steadfoot.identity.roles import Role
from steadfoot.rules.norms import BODY_MASS_MAX_KG, BODY_MASS_MIN_KG, HEIGHT_MAX_CM, HEIGHT_MIN_CM, Sex
from steadfoot.rules.vocabulary import Kit

PAIN_STOP_DEFAULT = 6
_ZONES = available_timezones()


def _known_zone(value: str) -> str:
    if value not in _ZONES:
        raise ValueError("is not a time zone, such as Europe/Vienna")
    return ZoneInfo(value).key


TimeZone = Annotated[str, StringConstraints(max_length=60), AfterValidator(_known_zone)]
Email = Annotated[
    str,
    StringConstraints(strip_whitespace=True, to_lower=True, max_length=254, pattern=r"^[^@\s\x00]+@[^@\s\x00]+$"),
]
Rating = Annotated[int, Field(ge=0, le=10), JSON_INT]
BirthYear = Annotated[int, Field(ge=1900, le=2100), JSON_INT]
HeightCm = Annotated[float, Field(ge=HEIGHT_MIN_CM, le=HEIGHT_MAX_CM), JSON_NUMBER]
BodyMassKg = Annotated[float, Field(ge=BODY_MASS_MIN_KG, le=BODY_MASS_MAX_KG), JSON_NUMBER]
KitList = Annotated[list[Kit], Field(max_length=30)]


class PractitionerOut(BaseModel):
    """The person who is signed in."""

    id: str
    display_name: str
    email: str
    role: Role


class PracticeOut(BaseModel):
    """The practice of the person who is signed in."""

    id: str
    name: str
    time_zone: str
    emergency_text: str
    reply_time_text: str


ClientLine = Annotated[str, StringConstraints(strip_whitespace=True, min_length=1, max_length=300), STORABLE]


class PracticeWords(Inward):
    """What a practice says to its clients in its own words. Phones show both where help is sought: neither is empty."""

    emergency_text: ClientLine = Field(description="Above pain and symptoms: whom to call in an emergency")
    reply_time_text: ClientLine = Field(description="Where clients write: when the practice reads and answers")


class Me(BaseModel):
    """Who is signed in, and where."""

    practitioner: PractitionerOut
    practice: PracticeOut
    must_set_up_second_factor: bool


class Thresholds(Inward):
    """Numbers of the rules that a practitioner may set for one client."""

    pain_stop: Annotated[int, Field(ge=3, le=10), JSON_INT] = Field(
        default=PAIN_STOP_DEFAULT, description="Pain rating, 0 to 10, from which a movement is stopped"
    )


class ClientBody(Inward):
    """A new client."""

    display_name: Name
    birth_year: BirthYear | None = None
    sex: Sex | None = Field(default=None, description="As the norms of tests are split by it")
    height_cm: HeightCm | None = None
    body_mass_kg: BodyMassKg | None = None
    time_zone: TimeZone | None = Field(default=None, description="IANA name; the practice's own if left out")
    kit: KitList = []
    usual_pain: Rating = Field(default=0, description="Pain on a usual day before the program, 0 to 10")
    thresholds: Thresholds = Thresholds()
    note: Note = ""


class ClientPatch(Inward):
    """What to change; what is left out stays."""

    display_name: Name | None = None
    birth_year: BirthYear | None = None
    sex: Sex | None = None
    height_cm: HeightCm | None = None
    body_mass_kg: BodyMassKg | None = None
    time_zone: TimeZone | None = None
    kit: KitList | None = None
    usual_pain: Rating | None = None
    thresholds: Thresholds | None = None
    note: Note | None = None
    archived: JsonBool | None = None


class ClientOut(BaseModel):
    """A client, as the practice knows them."""

    id: str
    display_name: str
    birth_year: int | None
    sex: Sex | None
    height_cm: float | None
    body_mass_kg: float | None
    time_zone: str
    kit: list[Kit]
    usual_pain: int
    thresholds: Thresholds
    note: str
    created_at: datetime
    archived_at: datetime | None
    version: int


class ClientList(BaseModel):
    """All clients of the practice."""

    items: list[ClientOut]


class Delivery(StrEnum):
    """How a code reaches the client: shown in the same room, or sent."""

    IN_PERSON = "in_person"
    LINK = "link"


class InvitationBody(Inward):
    """How the code will reach the client."""

    delivery: Delivery


class InvitationOut(BaseModel):
    """A code that pairs one phone, once. It is shown now and never again."""

    id: str
    client_id: str
    delivery: Delivery
    url: str
    code: str
    expires_at: datetime
    qr_svg: str


class PairingBody(Inward):
    """A code, as typed, pasted or scanned."""

    code: Annotated[str, StringConstraints(min_length=1, max_length=100)]
    label: Annotated[Line, StringConstraints(max_length=120)] = ""


class PairingOut(BaseModel):
    """The phone's key. The token is shown once."""

    device_id: str
    token: str
    pairing_id: str
    status: Literal["active", "awaiting_confirmation"]
    check_number: str
    client_id: str
    client_name: str
    practice_name: str
    practitioner_name: str


class WaitingPairing(BaseModel):
    """A phone that waits until someone has compared the number it shows."""

    id: str
    client_id: str
    client_name: str
    check_number: str
    created_at: datetime


class WaitingPairings(BaseModel):
    """Phones that wait."""

    items: list[WaitingPairing]


class ConfirmationBody(Inward):
    """The number that the phone shows, as the client reads it out."""

    check_number: Annotated[str, StringConstraints(pattern=r"^[0-9]{4}$")] | None = None


class WaitingMark(BaseModel):
    """Why a phone is not heard yet."""

    pairing_id: str
    check_number: str


class DeviceOut(BaseModel):
    """A phone of a client."""

    id: str
    client_id: str
    label: str
    paired_at: datetime
    revoked_at: datetime | None
    last_heard_at: datetime | None
    acknowledged_through: int
    waiting: WaitingMark | None


class DeviceList(BaseModel):
    """All phones a client ever paired, newest first."""

    items: list[DeviceOut]


class SuccessorOut(BaseModel):
    """A new number range for a phone whose numbers are used by another one."""

    device_id: str
    token: str
