"""Small wordings that problems and changes share: days, counts, lists."""

from collections.abc import Sequence
from datetime import date

_DAYS = ("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday")
_MONTHS = (
    "January", "February", "March", "April", "May", "June",
    "July", "August", "September", "October", "November", "December",
)  # fmt: skip


def day_words(day: date) -> str:
    """Answer a day as people say it: "Sunday 6 December".

    >>> day_words(date(2026, 12, 6))
    'Sunday 6 December'
    """
    return f"{_DAYS[day.weekday()]} {day.day} {_MONTHS[day.month - 1]}"


def full_day_words(day: date) -> str:
    """Answer a day with its year: "Saturday 16 January 2027"."""
    return f"{day_words(day)} {day.year}"


def count_words(count: int, one: str, many: str) -> str:
    """Answer a count with the right form of its noun: "1 session", "3 sessions"."""
    return f"{count} {one if count == 1 else many}"


def listed(words: Sequence[str], last: str = "and") -> str:
    """Answer words as a list in a sentence: "a, b and c"."""
    if len(words) <= 1:
        return "".join(words)
    return f"{', '.join(words[:-1])} {last} {words[-1]}"


def number_words(number: float) -> str:
    """Answer a number without a needless ".0"."""
    return f"{number:g}"


def quoted(text: str) -> str:
    """Answer a practitioner's own words in quotation marks, shortened where they are long."""
    shown = 80
    flat = " ".join(text.split())
    return f"“{flat}”" if len(flat) <= shown else f"“{flat[:shown].rstrip()} …”"
