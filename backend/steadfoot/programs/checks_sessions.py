"""Problems of sessions and their prescriptions: keys, exercises, variants, doses, kit."""

from collections import Counter
from collections.abc import Collection, Iterator

from steadfoot.exercises.alternatives import nearest_instead
from steadfoot.exercises.schemas import Exercise, LoadNeed, Variant
from steadfoot.exercises.service import Library, that_fit, variant_of
from steadfoot.programs.content import AnySession, Cardio, Circuit, Prescription, ProgramContent, instead
from steadfoot.programs.findings import Finding, Fix, Mend, error, warning
from steadfoot.programs.words import listed
from steadfoot.rules.dose import missing_kit
from steadfoot.rules.vocabulary import Kit


def session_findings(content: ProgramContent, kit: Collection[Kit], library: Library) -> Iterator[Finding]:
    """Answer the problems of all sessions in their order."""
    yield from _repeated_keys(content)
    planned = {day.session for day in content.days}
    for place, session in enumerate(content.sessions):
        pointer = f"/sessions/{place}"
        yield from _own_findings(session, pointer)
        if session.key not in planned:
            text = f"{session.name or 'This session'} is not planned on any day."
            yield warning(pointer, "never_planned", text)
        if isinstance(session, Circuit):
            for index, one in enumerate(session.prescriptions):
                yield from _prescription_findings(one, f"{pointer}/prescriptions/{index}", kit, library)
                yield from _alternative_findings(one, f"{pointer}/prescriptions/{index}", kit, library)


def _repeated_keys(content: ProgramContent) -> Iterator[Finding]:
    sessions = Counter(session.key for session in content.sessions)
    keys = Counter(
        one.key for session in content.sessions if isinstance(session, Circuit) for one in session.prescriptions
    )
    for place, session in enumerate(content.sessions):
        if sessions[session.key] > 1:
            text = f"The key {session.key} is used by more than one session."
            yield error(f"/sessions/{place}/key", "repeated_key", text)
        for index, one in enumerate(session.prescriptions if isinstance(session, Circuit) else []):
            if keys[one.key] > 1:
                text = f"The key {one.key} is used by more than one exercise of the program."
                yield error(f"/sessions/{place}/prescriptions/{index}/key", "repeated_key", text)


def _own_findings(session: AnySession, pointer: str) -> Iterator[Finding]:
    if not session.name:
        yield error(f"{pointer}/name", "no_name", "Give the session a name; the client sees it.")
    if isinstance(session, Circuit) and not session.prescriptions:
        text = f"{session.name or 'This session'} has no exercise yet."
        yield error(f"{pointer}/prescriptions", "empty_session", text)
    if isinstance(session, Cardio) and not session.activity:
        yield error(f"{pointer}/activity", "empty_session", "Say what to do, such as 'bike, easy'.")


def _prescription_findings(
    one: Prescription, pointer: str, kit: Collection[Kit], library: Library
) -> Iterator[Finding]:
    yield from _dose_findings(one, pointer)
    entry = library.get(one.exercise)
    if entry is None:
        text = f"There is no exercise {one.exercise} in the library."
        yield error(f"{pointer}/exercise", "unknown_exercise", text)
        return
    variant = variant_of(entry, one.variant)
    if variant is None:
        names = listed([rung.name for rung in entry.ladder], "or")
        text = f"{entry.name} has no variant {one.variant}. There is: {names}."
        yield error(f"{pointer}/variant", "unknown_variant", text)
        return
    yield from _kit_findings(entry, variant, pointer, kit, library)
    yield from _load_findings(entry, variant, one, pointer)


def _load_findings(entry: Exercise, variant: Variant, one: Prescription, pointer: str) -> Iterator[Finding]:
    if variant.load is LoadNeed.REQUIRED and one.load_kg is None:
        text = f"{entry.name}, {variant.name}: say how heavy."
        yield warning(f"{pointer}/load_kg", "no_load", text)


def _alternative_findings(one: Prescription, pointer: str, kit: Collection[Kit], library: Library) -> Iterator[Finding]:
    """Answer the problems of what a prescription allows instead: each by itself, and that it is another movement."""
    seen = {one.exercise}
    for index, alternative in enumerate(one.alternatives):
        place = f"{pointer}/alternatives/{index}"
        yield from _prescription_findings(instead(one, alternative), place, kit, library)
        if alternative.exercise in seen:
            text = "What may be done instead is another movement, each named once."
            yield error(f"{place}/exercise", "same_movement", text)
        seen.add(alternative.exercise)


def _dose_findings(one: Prescription, pointer: str) -> Iterator[Finding]:
    low, high, hold = one.reps_low, one.reps_high, one.hold_s
    counted = low is not None or high is not None
    if counted and hold is not None:
        fix = Fix("Keep the repetitions", (Mend(f"{pointer}/hold_s", None),))
        yield error(f"{pointer}/hold_s", "two_doses", "Give repetitions or a hold, not both.", fix)
    elif not counted and hold is None:
        yield error(f"{pointer}/reps_low", "no_dose", "Give repetitions, or seconds to hold.")
    elif counted and (low is None or high is None):
        missing, given = ("reps_low", high) if low is None else ("reps_high", low)
        fix = Fix(f"Use {given} for both", (Mend(f"{pointer}/{missing}", given),))
        yield error(f"{pointer}/{missing}", "half_dose", "Give the fewest and the most repetitions.", fix)
    if low is not None and high is not None and low > high:
        mends = (Mend(f"{pointer}/reps_low", high), Mend(f"{pointer}/reps_high", low))
        text = f"The fewest repetitions ({low}) are more than the most ({high})."
        yield error(f"{pointer}/reps_low", "reps_upside_down", text, Fix("Turn them round", mends))


def _kit_findings(
    entry: Exercise, variant: Variant, pointer: str, kit: Collection[Kit], library: Library
) -> Iterator[Finding]:
    missing = sorted(missing_kit(variant.kit, kit))
    if not missing:
        return
    fitting = that_fit(entry, kit)
    needs = f"{entry.name}, {variant.name} needs {listed(missing)}, which the client does not have."
    text = f"{needs} {_what_would_do(entry, variant, fitting, kit, library)}"
    yield warning(f"{pointer}/variant", "kit_missing", text, _kit_fix(entry, variant, fitting, pointer))


def _what_would_do(
    entry: Exercise, variant: Variant, fitting: list[Variant], kit: Collection[Kit], library: Library
) -> str:
    if fitting:
        return f"This would do: {listed([rung.name for rung in fitting], 'or')}."
    other = nearest_instead(entry, variant, kit, library)
    end = f"; instead of it, this would do: {other}." if other else "."
    return f"No variant of it fits the kit in the house{end}"


def _kit_fix(entry: Exercise, variant: Variant, fitting: list[Variant], pointer: str) -> Fix | None:
    """Offer the nearest variant that fits, an easier one first, where the same kind of dose carries over."""
    place = entry.ladder.index(variant)
    same_dose = [rung for rung in fitting if type(rung.dose) is type(variant.dose)]
    nearest = sorted(same_dose, key=lambda rung: _distance(entry.ladder.index(rung) - place))
    if not nearest:
        return None
    return Fix(f"Use {nearest[0].name}", tuple(_mends(nearest[0], variant, pointer)))


def _mends(rung: Variant, instead_of: Variant, pointer: str) -> Iterator[Mend]:
    yield Mend(f"{pointer}/variant", rung.variant)
    if rung.sides is not instead_of.sides:
        yield Mend(f"{pointer}/sides", rung.sides.value)
    if rung.load is LoadNeed.NONE and instead_of.load is not LoadNeed.NONE:
        yield Mend(f"{pointer}/load_kg", None)


def _distance(rungs: int) -> tuple[bool, int]:
    return rungs > 0, abs(rungs)
