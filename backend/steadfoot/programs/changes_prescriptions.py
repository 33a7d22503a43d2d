"""What is different in the exercises of a circuit."""

from collections.abc import Collection, Iterator

from steadfoot.exercises.service import Library, variant_of
from steadfoot.programs.content import Alternative, Circuit, Prescription, instead, rule_prescription
from steadfoot.programs.words import count_words, number_words, quoted
from steadfoot.rules.dose import SIDES_WORDS, dose_words


def prescription_changes(was: Circuit, now: Circuit, library: Library, repeated: Collection[str]) -> Iterator[str]:
    """Answer what came, went and changed among the prescriptions of a circuit, matched by their keys.

    Exercises whose code is among ``repeated`` come more than once in the program: the circuit is named with them.
    """
    before = {one.key: one for one in was.prescriptions}
    after = {one.key: one for one in now.prescriptions}
    for key, one in after.items():
        if key not in before:
            yield f"New in {now.name}: {_whole_words(one, library)}"
        elif one != before[key]:
            name = exercise_words(one, library)
            label = f"{name} in {now.name}" if one.exercise in repeated else name
            yield from _one_prescription(before[key], one, label, library)
    for key, one in before.items():
        if key not in after:
            yield f"Taken out of {now.name}: {exercise_words(one, library)}, {variant_words(one, library)}"
    if [key for key in before if key in after] != [key for key in after if key in before]:
        yield f"The exercises of {now.name} come in another order"


def _one_prescription(was: Prescription, now: Prescription, label: str, library: Library) -> Iterator[str]:
    if was.exercise != now.exercise:
        old = f"{exercise_words(was, library)}, {variant_words(was, library)}"
        yield f"{_whole_words(now, library)} instead of {old}"
        parts = _details(was, now)
    else:
        parts = [*_movement(was, now, library), *_details(was, now)]
    parts += _instead(was, now, library)
    if parts:
        yield f"{label}: {', '.join(parts)}"
    yield from note_change(was.note, now.note, label)


def dose_change(was: Prescription, now: Prescription, library: Library) -> str | None:
    """Answer what changed in one prescription, for the card that names the exercise already; None for nothing.

    Notes are left out: the card shows them as they are.
    """
    if was.exercise != now.exercise:
        return f"{_whole_words(now, library)} instead of {exercise_words(was, library)}"
    parts = [*_movement(was, now, library), *_details(was, now), *_instead(was, now, library)]
    return ", ".join(parts) or None


def _movement(was: Prescription, now: Prescription, library: Library) -> list[str]:
    parts = []
    if was.variant != now.variant:
        parts.append(f"{variant_words(now, library)} instead of {variant_words(was, library)}")
    if _amount(was) != _amount(now):
        parts.append(f"{_dose_words(now)} instead of {_dose_words(was)}")
    return parts


def _details(was: Prescription, now: Prescription) -> list[str]:
    parts = []
    if was.sides != now.sides:
        parts.append(f"{SIDES_WORDS[now.sides]} instead of {SIDES_WORDS[was.sides]}")
    if was.load_kg != now.load_kg:
        parts.append(f"{_load_words(now.load_kg)} instead of {_load_words(was.load_kg)}")
    if was.tempo_down_s != now.tempo_down_s:
        parts.append(f"{_tempo_words(now.tempo_down_s)} instead of {_tempo_words(was.tempo_down_s)}")
    if was.rest_s != now.rest_s:
        parts.append(f"{count_words(now.rest_s, 'second', 'seconds')} of rest instead of {was.rest_s}")
    return parts


def _instead(was: Prescription, now: Prescription, library: Library) -> list[str]:
    """Answer what may be done instead from now on, in another way or for another reason, or no longer."""
    before = {one.exercise: _instead_words(was, one, library) for one in was.alternatives}
    after = {one.exercise: _instead_words(now, one, library) for one in now.alternatives}
    came = [words for code, words in after.items() if words != before.get(code)]
    gone = [exercise_words(instead(was, one), library) for one in was.alternatives if one.exercise not in after]
    return came + [f"{name} may no longer be done instead" for name in gone]


def _instead_words(one: Prescription, alternative: Alternative, library: Library) -> str:
    other = instead(one, alternative)
    load = "" if other.load_kg is None else f", {_load_words(other.load_kg)}"
    why = f" ({quoted(alternative.reason)})" if alternative.reason else ""
    return f"{_whole_words(other, library)}, {SIDES_WORDS[other.sides]}{load}, may be done instead{why}"


def note_change(was: str, now: str, where: str) -> Iterator[str]:
    """Answer that a note came, went or changed."""
    if was != now:
        yield f"Note for {where}: {quoted(now)}" if now else f"The note for {where} is taken out"


def exercise_words(one: Prescription, library: Library) -> str:
    """Answer the exercise's name, or its code where the library does not have it."""
    entry = library.get(one.exercise)
    return entry.name if entry else one.exercise


def variant_words(one: Prescription, library: Library) -> str:
    """Answer the variant's name, or its code where the library does not have it."""
    entry = library.get(one.exercise)
    rung = variant_of(entry, one.variant) if entry else None
    return rung.name if rung else one.variant


def _whole_words(one: Prescription, library: Library) -> str:
    return f"{exercise_words(one, library)}, {variant_words(one, library)}, {_dose_words(one)}"


def _amount(one: Prescription) -> tuple[int | None, int | None, int | None]:
    return one.reps_low, one.reps_high, one.hold_s


def _dose_words(one: Prescription) -> str:
    """Answer the dose; a half-written one of a draft is called open."""
    complete = one.hold_s is not None or (one.reps_low is not None and one.reps_high is not None)
    return dose_words(rule_prescription(one)) if complete else "an open dose"


def _load_words(load_kg: float | None) -> str:
    return "no weight" if load_kg is None else f"{number_words(load_kg)} kg"


def _tempo_words(seconds: int | None) -> str:
    if seconds is None:
        return "no set time on the way down"
    return f"{count_words(seconds, 'second', 'seconds')} on the way down"
