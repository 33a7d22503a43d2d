"""Turns a program, or a pick of movements, into the plain data of a sheet."""

from collections import Counter
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from steadfoot.exercises.service import Library, variant_of
from steadfoot.programs.content import (
    Alternative,
    AnySession,
    Circuit,
    Prescription,
    ProgramContent,
    Rest,
    Walk,
    expected_minutes,
    instead,
    rule_prescription,
)
from steadfoot.programs.plan import monday_of, planned_of
from steadfoot.rules import dose
from steadfoot.rules.vocabulary import Kit
from steadfoot.sheets.layout import WEEKS_SHOWN, Movement, Section, Week
from steadfoot.sheets.wording import Wording

StripOf = Callable[[str, str], str | None]
"""Answers the key poses of an exercise's variant as SVG; None where there is no drawing. A practice's own exercise is
named by the key of its drawings."""


@dataclass(frozen=True, slots=True)
class Shown:
    """What a sheet tells of exercises: their texts, and their drawings."""

    library: Library
    strip_of: StripOf


def sections_of(content: ProgramContent, only: str | None, today: date, words: Wording, shown: Shown) -> list[Section]:
    """Answer a section for each session in its order, rest left out; or for the one with this key.

    Args:
        content: a published, normalised program.
        only: key of a session, or None for all.
        today: the client's day; boxes begin with its week.
        words: the language.
        shown: texts and drawings.
    """
    sessions = [one for one in content.sessions if not isinstance(one, Rest) and only in (None, one.key)]
    return [_section(one, content, today, words, shown) for one in sessions]


def _section(session: AnySession, content: ProgramContent, today: date, words: Wording, shown: Shown) -> Section:
    weeks, note = _weeks(session.key, content, today, words)
    prescriptions = session.prescriptions if isinstance(session, Circuit) else []
    prescribed = [one for one in prescriptions if _is_whole(one)]
    picks = [rule_prescription(one) for one in prescribed]
    return Section(
        name=session.name,
        summary=_summary(session, words),
        note=session.note,
        bring=words.kit(_kit(picks, shown.library)),
        hint=words.labels["hint" if picks else "hint_plain"],
        movements=tuple(
            _movement(rule_prescription(one), words, shown, _instead(one, words, shown.library)) for one in prescribed
        ),
        weeks=weeks,
        weeks_note=note,
    )


def _is_whole(one: Prescription) -> bool:
    """Published programs have no half-written dose; what had one could not be put in words."""
    return one.hold_s is not None or (one.reps_low is not None and one.reps_high is not None)


def class_section(name: str, picks: Sequence[dose.Prescription], words: Wording, shown: Shown) -> Section:
    """Answer the one section of a class sheet: no boxes, for nobody in particular."""
    return Section(
        name=name,
        summary="",
        note="",
        bring=words.kit(_kit(picks, shown.library)),
        hint=words.labels["hint_class"],
        movements=tuple(_movement(one, words, shown) for one in picks),
        weeks=(),
        weeks_note="",
    )


def _summary(session: AnySession, words: Wording) -> str:
    parts = []
    if isinstance(session, Circuit):
        parts.append(words.counted("rounds", session.rounds))
    elif isinstance(session, Walk):
        parts.append(words.say("distance", n=words.number(session.distance_km)))
        climbs = (("ascent", session.ascent_m), ("descent", session.descent_m), ("pack", session.pack_kg))
        parts += [words.say(key, n=words.number(value)) for key, value in climbs if value]
    elif not isinstance(session, Rest) and session.activity != session.name:
        parts.append(session.activity)
    minutes = expected_minutes(session)
    if minutes is not None:
        parts.append(words.say("minutes", n=minutes))
    if not isinstance(session, Rest):
        parts.append(words.say("effort", n=session.expected_effort))
    return ", ".join(parts)


def _kit(picks: Sequence[dose.Prescription], library: Library) -> frozenset[Kit]:
    found: set[Kit] = set()
    for one in picks:
        entry = library.get(one.exercise)
        rung = variant_of(entry, one.variant) if entry else None
        found |= set(rung.kit) if rung else set()
    return frozenset(found)


def _instead(one: Prescription, words: Wording, known: Library) -> tuple[str, ...]:
    """Answer what may be done instead, a sentence each: "Squat, 10 repetitions, both sides together."""
    return tuple(_one_instead(one, each, words, known) for each in one.alternatives if _is_whole(instead(one, each)))


def _one_instead(one: Prescription, alternative: Alternative, words: Wording, known: Library) -> str:
    other = rule_prescription(instead(one, alternative))
    entry = known.get(other.exercise)
    rung = variant_of(entry, other.variant) if entry else None
    names = (entry.name if entry else other.exercise, rung.name if rung else other.variant)
    load = [words.say("load", n=words.number(other.load_kg))] if other.load_kg else []
    return ", ".join([*names, words.dose(other), *load]) + f". {alternative.reason}".rstrip()


def _movement(one: dose.Prescription, words: Wording, shown: Shown, may_instead: tuple[str, ...] = ()) -> Movement:
    """Answer a movement; one that the library no longer has is printed by its codes, with its dose."""
    entry = shown.library.get(one.exercise)
    rung = variant_of(entry, one.variant) if entry else None
    return Movement(
        name=entry.name if entry else one.exercise,
        variant=rung.name if rung else one.variant,
        dose=words.dose(one),
        details=words.details(one),
        how=tuple(rung.how) if rung else (),
        cues=tuple(entry.cues) if entry else (),
        cautions=tuple(entry.cautions) if entry else (),
        note=one.note,
        instead=may_instead,
        strip=shown.strip_of(entry.own.drawing if entry and entry.own else one.exercise, one.variant) or "",
    )


def _weeks(key: str, content: ProgramContent, today: date, words: Wording) -> tuple[tuple[Week, ...], str]:
    """Answer the next weeks' boxes, from today's week on, and what to say of weeks that are not shown."""
    planned = Counter(monday_of(one.day) for one in planned_of(content) if one.session.key == key)
    mondays = sorted(day for day in planned if day + timedelta(days=7) > today)
    shown = tuple(Week(words.short_day(day), planned[day]) for day in mondays[:WEEKS_SHOWN])
    if planned and not shown:
        return shown, words.labels["weeks_past"]
    return shown, words.labels["weeks_more"] if len(mondays) > len(shown) else ""
