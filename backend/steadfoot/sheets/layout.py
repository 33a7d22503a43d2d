"""What a printed sheet holds, in plain data: every text is already in words, and nothing of it is markup."""

from dataclasses import dataclass
from enum import StrEnum
from typing import Annotated, Final

from steadfoot.rules.sources import Cited, Kind

WEEKS_SHOWN: Final[Annotated[int, Cited(Kind.HOUSE, "house", "Weeks of boxes that fit beside a movement")]] = 6


class Paper(StrEnum):
    """Sizes that a printer takes: ISO 216 A4, and US Letter."""

    A4 = "a4"
    LETTER = "letter"


class Language(StrEnum):
    """Languages of the sheet's own words; a movement's texts are in the library's."""

    EN = "en"
    DE = "de"


@dataclass(frozen=True, slots=True)
class Style:
    """How a sheet is printed."""

    paper: Paper = Paper.A4
    large: bool = False
    language: Language = Language.EN


@dataclass(frozen=True, slots=True)
class Week:
    """One week's boxes: its first day in words, and how many times the session is planned."""

    label: str
    times: int


@dataclass(frozen=True, slots=True)
class Movement:
    """One movement. ``strip`` is an SVG drawing of its key poses, or empty where there is none."""

    name: str
    variant: str
    dose: str
    details: str
    how: tuple[str, ...]
    cues: tuple[str, ...]
    cautions: tuple[str, ...]
    note: str
    instead: tuple[str, ...]
    strip: str


@dataclass(frozen=True, slots=True)
class Section:
    """One session, from the top of a page: its movements, or what a walk or other work asks for."""

    name: str
    summary: str
    note: str
    bring: str
    hint: str
    movements: tuple[Movement, ...]
    weeks: tuple[Week, ...]
    weeks_note: str


@dataclass(frozen=True, slots=True)
class Code:
    """A QR code with what it is for, and the address in letters for those who type."""

    svg: str
    text: str
    address: str


@dataclass(frozen=True, slots=True)
class Sheet:
    """A whole sheet. ``labels`` are the fixed words in its language."""

    title: str
    practice: str
    lines: tuple[str, ...]
    sections: tuple[Section, ...]
    care: tuple[str, ...]
    urgent: str
    practice_says: str
    code: Code | None
    labels: dict[str, str]
