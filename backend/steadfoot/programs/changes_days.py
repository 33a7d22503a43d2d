"""What is different in the dates."""

from collections import Counter, defaultdict
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date

from steadfoot.programs.content import ProgramContent
from steadfoot.programs.plan import monday_of
from steadfoot.programs.words import count_words, day_words, listed

_SAID_ONE_BY_ONE = 3
_Dated = dict[date, list[tuple[str, bool]]]


@dataclass(frozen=True, slots=True)
class _Change:
    day: date
    what: str
    sentence: str


def day_changes(old: ProgramContent, new: ProgramContent) -> list[str]:
    """Answer what came, went, moved within its week, or is now tied to its day.

    Sessions that are in one of the two programs only are left out: that they came or went is said already.
    More than three changes become one sentence.
    """
    names = {session.key: session.name for content in (old, new) for session in content.sessions}
    common = {one.key for one in old.sessions} & {one.key for one in new.sessions}
    found = sorted(_found(_dated(old, common), _dated(new, common), names), key=lambda change: change.day)
    if len(found) <= _SAID_ONE_BY_ONE:
        return [change.sentence for change in found]
    counts = Counter(change.what for change in found)
    parts = [f"{counts[what]} {what}" for what in ("added", "taken out", "moved", "changed") if counts[what]]
    return [f"{count_words(len(found), 'date', 'dates')} from {day_words(found[0].day)}: {listed(parts)}"]


def _dated(content: ProgramContent, keys: set[str]) -> _Dated:
    dated: _Dated = defaultdict(list)
    for day in content.days:
        if day.session in keys:
            dated[day.date].append((day.session, day.fixed_day))
    return dated


def _found(old: _Dated, new: _Dated, names: dict[str, str]) -> Iterator[_Change]:
    went, came = [], []
    for day in sorted(old.keys() | new.keys()):
        before, after = old.get(day, []), new.get(day, [])
        if before == after:
            continue
        gone = Counter(key for key, _ in before) - Counter(key for key, _ in after)
        fresh = Counter(key for key, _ in after) - Counter(key for key, _ in before)
        went += [(day, key) for key in gone.elements()]
        came += [(day, key) for key in fresh.elements()]
        if not gone and not fresh:
            yield _same_sessions(day, before, after, names)
    yield from _moves(went, came, names)


def _same_sessions(
    day: date, before: list[tuple[str, bool]], after: list[tuple[str, bool]], names: dict[str, str]
) -> _Change:
    freed = [key for key, fixed in after if (key, fixed) not in before]
    if not freed:
        return _Change(day, "changed", f"The sessions on {day_words(day)} come in another order")
    fixed = dict(after)[freed[0]]
    when = "on that day only" if fixed else "on any day of that week"
    return _Change(day, "changed", f"{names[freed[0]]} on {day_words(day)}: {when}")


def _moves(went: list[tuple[date, str]], came: list[tuple[date, str]], names: dict[str, str]) -> Iterator[_Change]:
    """Pair what went with what came in the same week; the rest was taken out or added."""
    left = list(came)
    for day, key in went:
        to = next((one for one in left if one[1] == key and monday_of(one[0]) == monday_of(day)), None)
        if to is None:
            yield _Change(day, "taken out", f"{names[key]} on {day_words(day)} is taken out")
        else:
            left.remove(to)
            words = f"{names[key]}: {day_words(to[0])} instead of {day_words(day)}"
            yield _Change(min(day, to[0]), "moved", words)
    for day, key in left:
        yield _Change(day, "added", f"{names[key]} is added on {day_words(day)}")
