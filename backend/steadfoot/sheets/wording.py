"""Says days, numbers and doses in the sheet's language."""

from collections.abc import Collection
from datetime import date, datetime

from steadfoot.rules.dose import Prescription
from steadfoot.rules.vocabulary import Kit
from steadfoot.sheets import words_de, words_en
from steadfoot.sheets.layout import Language

_CATALOGS = {Language.EN: words_en, Language.DE: words_de}


class Wording:
    """The words of one language."""

    def __init__(self, language: Language) -> None:
        self._catalog = _CATALOGS[language]
        self.labels: dict[str, str] = self._catalog.WORDS

    def say(self, key: str, **values: object) -> str:
        """Answer the words for a key with its placeholders filled; values are put in as they are."""
        return self.labels[key].format(**values)

    def counted(self, key: str, number: int) -> str:
        """Answer "1 round", "3 rounds"."""
        return self.labels[f"{key}_one"] if number == 1 else self.say(key, n=number)

    def number(self, number: float) -> str:
        """Answer a number without a needless ".0", with the language's decimal mark."""
        return f"{number:g}".replace(".", self._catalog.DECIMAL_MARK)

    def day(self, day: date) -> str:
        """Answer a day with its weekday and year."""
        month = self._catalog.MONTHS[day.month - 1]
        weekday = self._catalog.DAYS[day.weekday()]
        return f"{self._catalog.DATE}".format(weekday=weekday, day=day.day, month=month, year=day.year)

    def short_day(self, day: date) -> str:
        """Answer a day and the first three letters of its month: "8 Jun"."""
        return f"{self._catalog.SHORT_DATE}".format(day=day.day, month=self._catalog.MONTHS[day.month - 1][:3])

    def moment(self, at: datetime) -> str:
        """Answer a local time with its day."""
        return f"{self.day(at.date())}, {at:%H:%M}"

    def listed(self, words: Collection[str]) -> str:
        """Answer words as a list in a sentence: "a, b and c"."""
        *first, last = words
        return f"{', '.join(first)} {self.labels['and']} {last}" if first else last

    def kit(self, kit: Collection[Kit]) -> str:
        """Answer what to have ready, in the order of the vocabulary; empty for nothing."""
        names = [self.labels[f"kit_{one.value}"] for one in Kit if one in kit]
        return self.say("bring", kit=self.listed(names)) if names else ""

    def dose(self, one: Prescription) -> str:
        """Answer repetitions or hold with sides: "8 to 10 repetitions, each side in turn"."""
        return f"{self._amount(one)}, {self.labels[one.sides.value]}"

    def _amount(self, one: Prescription) -> str:
        if one.hold_s is not None:
            return self.counted("hold", one.hold_s)
        low, high = one.reps_low, one.reps_high
        if low == high:
            return self.counted("reps", low or 0)
        return self.say("reps", n=self.say("range", low=low, high=high))

    def details(self, one: Prescription) -> str:
        """Answer weight, tempo and rest, those that are set; empty for none."""
        found = [
            self.say("load", n=self.number(one.load_kg)) if one.load_kg else "",
            self.say("tempo", n=one.tempo_down_s) if one.tempo_down_s else "",
            self.say("rest", n=one.rest_s) if one.rest_s else "",
        ]
        return ", ".join(part for part in found if part)
