"""Plain words for places on the body, days and symptoms, for the sentences that findings are told in."""

from datetime import date
from typing import Annotated, Final

from steadfoot.rules.sources import Cited, Kind
from steadfoot.rules.vocabulary import Region, Side, Symptom, When

DAY_NAME_SPAN_DAYS: Final[Annotated[int, Cited(Kind.HOUSE, "house", "A bare day name is clear within a week")]] = 6

_DAYS: Final = ("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday")
_MONTHS: Final = (
    "January",
    "February",
    "March",
    "April",
    "May",
    "June",
    "July",
    "August",
    "September",
    "October",
    "November",
    "December",
)
_PLURALS: Final = {Region.FOOT: "feet", Region.CALF: "calves", Region.ACHILLES: "Achilles tendons"}
_WHEN: Final = {
    When.BEFORE: "before",
    When.DURING: "during",
    When.AFTER: "after",
    When.NEXT_MORNING: "on waking",
}
SYMPTOM_WORDS: Final = {
    Symptom.CHEST_PAIN: "Chest pain",
    Symptom.FAINTING: "Fainting or nearly fainting",
    Symptom.BREATHLESS: "Unusual breathlessness",
    Symptom.PALPITATIONS: "Palpitations",
    Symptom.ONE_SIDED_WEAKNESS: "Weakness of one side",
    Symptom.WORST_HEADACHE: "A sudden, worst headache",
    Symptom.SADDLE_NUMBNESS: "Numbness between the legs",
    Symptom.BLADDER_OR_BOWEL: "A change of bladder or bowel control",
    Symptom.CALF_SWELLING: "A swollen calf",
    Symptom.CANNOT_BEAR_WEIGHT: "Cannot bear weight",
    Symptom.HEEL_SNAP: "A snap at the heel",
    Symptom.HOT_JOINT_FEVER: "A hot joint with fever",
    Symptom.NIGHT_BONE_PAIN: "Bone pain at night",
    Symptom.FEVER: "Fever",
    Symptom.DARK_URINE: "Dark urine",
    Symptom.HEAT_CONFUSION: "Confusion in the heat",
    Symptom.OTHER: "Another worrying symptom",
}


def place_words(region: Region, side: Side) -> str:
    """Name a place on the body at the beginning of a sentence: "Right knee", "Both calves", "Lower back"."""
    name = "Achilles tendon" if region is Region.ACHILLES else region.value.replace("_", " ")
    if side is Side.BOTH:
        return f"Both {_PLURALS.get(region, name + 's')}"
    return name[0].upper() + name[1:] if side is Side.MIDDLE else f"{side.value.capitalize()} {name}"


def when_words(when: When, exercise: str | None) -> str:
    """Say when a pain was felt, naming the movement if it is known: "during the step-down"."""
    if when is When.NEXT_MORNING:
        return _WHEN[when]
    return f"{_WHEN[when]} the {exercise.lower()}" if exercise else f"{_WHEN[when]} the session"


def day_words(day: date, today: date) -> str:
    """Say a past day as a person would: "today", "yesterday", "on Monday", "on Monday 5 October"."""
    ago_days = (today - day).days
    name = f"on {_DAYS[day.weekday()]}"
    if not 0 <= ago_days <= DAY_NAME_SPAN_DAYS:
        return f"{name} {day.day} {_MONTHS[day.month - 1]}"
    return {0: "today", 1: "yesterday"}.get(ago_days, name)


def counted(number: int, one: str, many: str | None = None) -> str:
    """Put a number before a noun: "1 session", "2 sessions", "2 entries"."""
    return f"{number} {one}" if number == 1 else f"{number} {many or one + 's'}"
