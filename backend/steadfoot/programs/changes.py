"""What is different between two versions, in plain sentences for the client and for the record."""

from collections import Counter
from collections.abc import Iterator, Sequence
from datetime import date

from steadfoot.exercises.service import Library
from steadfoot.programs.changes_days import day_changes
from steadfoot.programs.changes_prescriptions import note_change, prescription_changes
from steadfoot.programs.content import AnySession, Cardio, Circuit, Goal, ProgramContent, Walk, normalise
from steadfoot.programs.words import count_words, day_words, full_day_words, number_words, quoted

_WALKS_SAID_ONE_BY_ONE = 3
_KIND_WORDS = {"circuit": "a circuit", "walk": "a walk", "cardio": "other endurance work", "rest": "rest"}
_WALK_UNITS = {"distance_km": "km", "ascent_m": "m up", "descent_m": "m down", "pack_kg": "kg in the pack"}


def changes(old: ProgramContent | None, new: ProgramContent, library: Library) -> list[str]:
    """Answer what is new, one sentence a change; nothing for two contents that mean the same.

    Many changed dates, or many changed walks, are gathered into one sentence.
    """
    if old is None:
        return [f"First program: {new.title}"]
    old, new = normalise(old), normalise(new)
    return [
        *_frame_changes(old, new),
        *_came_and_went(old, new),
        *_session_changes(old, new, library),
        *day_changes(old, new),
    ]


def _frame_changes(old: ProgramContent, new: ProgramContent) -> Iterator[str]:
    if old.title != new.title:
        yield f"The program is now called {new.title}"
    if old.goal != new.goal:
        yield f"Goal: {_goal_words(new.goal)} instead of {_goal_words(old.goal)}"
    if old.starts_on != new.starts_on:
        yield f"Start: {full_day_words(new.starts_on)} instead of {full_day_words(old.starts_on)}"
    if old.ends_on != new.ends_on:
        yield f"End: {_end_words(new.ends_on)} instead of {_end_words(old.ends_on)}"


def _goal_words(goal: Goal | None) -> str:
    return f"{goal.name} on {full_day_words(goal.date)}" if goal else "no trip"


def _end_words(day: date | None) -> str:
    return full_day_words(day) if day else "open"


def _came_and_went(old: ProgramContent, new: ProgramContent) -> Iterator[str]:
    before, after = _by_key(old), _by_key(new)
    for key, session in after.items():
        if key not in before:
            yield f"New: {session.name}{_dates_words(new, key)}"
    for key, session in before.items():
        if key not in after:
            yield f"Taken out: {session.name}"
    if [key for key in before if key in after] != [key for key in after if key in before]:
        yield "The sessions are listed in another order"


def _by_key(content: ProgramContent) -> dict[str, AnySession]:
    return {session.key: session for session in content.sessions}


def _dates_words(content: ProgramContent, key: str) -> str:
    dates = [day.date for day in content.days if day.session == key]
    if not dates:
        return ""
    if len(dates) == 1:
        return f" on {day_words(dates[0])}"
    return f", {count_words(len(dates), 'time', 'times')}, first on {day_words(dates[0])}"


def _session_changes(old: ProgramContent, new: ProgramContent, library: Library) -> Iterator[str]:
    before = _by_key(old)
    pairs = [(before[one.key], one) for one in new.sessions if before.get(one.key, one) != one]
    walks = [one for _, one in pairs if isinstance(one, Walk)]
    gathered = len(walks) > _WALKS_SAID_ONE_BY_ONE
    for was, now in pairs:
        if not (gathered and isinstance(now, Walk)):
            yield from _one_session(was, now, new, library)
    if gathered:
        keys = {walk.key for walk in walks}
        dates = [day.date for day in new.days if day.session in keys]
        yield f"{len(walks)} walks change{f', the first on {day_words(dates[0])}' if dates else ''}"


def _one_session(was: AnySession, now: AnySession, new: ProgramContent, library: Library) -> Iterator[str]:
    if was.name != now.name:
        yield f"{was.name} is now called {now.name}"
    if was.kind != now.kind:
        yield f"{now.name} is now {_KIND_WORDS[now.kind]}"
        return
    if isinstance(was, Circuit) and isinstance(now, Circuit):
        if was.rounds != now.rounds:
            yield f"Rounds: {now.rounds} instead of {was.rounds} in {now.name}"
        yield from prescription_changes(was, now, library, _repeated(new))
    yield from _measures(was, now, _label(now, new))
    yield from _effort(was, now)
    yield from note_change(was.note, now.note, now.name)


def _repeated(content: ProgramContent) -> set[str]:
    circuits = [session for session in content.sessions if isinstance(session, Circuit)]
    counts = Counter(one.exercise for circuit in circuits for one in circuit.prescriptions)
    return {exercise for exercise, count in counts.items() if count > 1}


def _label(session: AnySession, content: ProgramContent) -> str:
    dates = [day.date for day in content.days if day.session == session.key]
    return f"{session.name} on {day_words(dates[0])}" if len(dates) == 1 else session.name


def _measures(was: AnySession, now: AnySession, label: str) -> Iterator[str]:
    """Answer one sentence for all that changed in a walk or in other endurance work."""
    parts: list[str] = []
    for field, unit in _WALK_UNITS.items():
        before, after = getattr(was, field, None), getattr(now, field, None)
        if before is not None and after is not None and before != after:
            parts.append(f"{number_words(after)} {unit} instead of {number_words(before)}")
    if isinstance(was, Cardio) and isinstance(now, Cardio) and was.activity != now.activity:
        parts.append(f"{quoted(now.activity)} instead of {quoted(was.activity)}")
    if parts:
        yield f"{label}: {', '.join(parts)}"


def _effort(was: AnySession, now: AnySession) -> Iterator[str]:
    if was.kind == "rest" or now.kind == "rest":
        return
    if was.expected_effort != now.expected_effort:
        yield f"Expected effort: {now.expected_effort} instead of {was.expected_effort} (of 10) in {now.name}"
    if was.expected_minutes != now.expected_minutes:
        words: Sequence[str] = [
            "as estimated" if minutes is None else count_words(minutes, "minute", "minutes")
            for minutes in (now.expected_minutes, was.expected_minutes)
        ]
        yield f"Expected time: {words[0]} instead of {words[1]} in {now.name}"
