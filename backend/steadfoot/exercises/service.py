"""Questions that other steps ask the library."""

import hashlib
from collections.abc import Iterable, Mapping
from typing import Any

from steadfoot.core.problems import not_found
from steadfoot.exercises.schemas import Exercise, ExerciseList, LoadNeed, RepetitionDose, Variant
from steadfoot.exercises.store import read_library
from steadfoot.rules.dose import Rung, missing_kit
from steadfoot.rules.vocabulary import Kit

Library = Mapping[str, Exercise]
LIBRARY: Library = read_library()  # at import: a broken file must stop the start, not a page
LIBRARY_JSON: bytes = ExerciseList(items=list(LIBRARY.values())).model_dump_json().encode()


def library() -> Library:
    """Answer every exercise by its code."""
    return LIBRARY


def offered(library: Library) -> Library:
    """Answer what may be chosen anew: all but what is archived."""
    return {code: one for code, one in library.items() if not (one.own and one.own.archived)}


def etag_of(body: bytes) -> str:
    """Answer a strong entity tag for a body."""
    return f'"{hashlib.sha256(body).hexdigest()[:32]}"'


def as_json(known: Library) -> bytes:
    """Answer the list of a library as the pages take it; the library alone is written once."""
    if known is LIBRARY:
        return LIBRARY_JSON
    return ExerciseList(items=list(known.values())).model_dump_json().encode()


def exercise(code: str, known: Library) -> Exercise:
    """Answer one exercise.

    Raises:
        NotFound: no such code in the library.
    """
    found = known.get(code)
    if found is None:
        raise not_found("exercise")
    return found


def variant_of(entry: Exercise, variant: str) -> Variant | None:
    """Answer a variant of an exercise by its code, or None."""
    return next((rung for rung in entry.ladder if rung.variant == variant), None)


def easier(entry: Exercise, variant: str) -> Variant | None:
    """Answer the next easier variant; None on the lowest rung or for a variant that is not on the ladder."""
    return _neighbour(entry, variant, -1)


def harder(entry: Exercise, variant: str) -> Variant | None:
    """Answer the next harder variant; None on the highest rung or for a variant that is not on the ladder."""
    return _neighbour(entry, variant, +1)


def _neighbour(entry: Exercise, variant: str, step: int) -> Variant | None:
    codes = [rung.variant for rung in entry.ladder]
    if variant not in codes:
        return None
    place = codes.index(variant) + step
    return entry.ladder[place] if 0 <= place < len(codes) else None


def ladder_of(entry: Exercise) -> tuple[Rung, ...]:
    """Answer the ladder in the plain form that the rules of dose take."""
    return tuple(_rung(variant) for variant in entry.ladder)


def _rung(variant: Variant) -> Rung:
    counted = isinstance(variant.dose, RepetitionDose)
    return Rung(
        variant=variant.variant,
        name=variant.name,
        sides=variant.sides,
        kit=frozenset(variant.kit),
        reps=variant.dose.reps if isinstance(variant.dose, RepetitionDose) else None,
        hold_s=None if counted else variant.dose.hold_s,  # type: ignore[union-attr]
        carries_load=variant.load is not LoadNeed.NONE,
    )


def that_fit(entry: Exercise, at_hand: Iterable[Kit]) -> list[Variant]:
    """Answer the variants that the kit in the house allows, easiest first."""
    have = frozenset(at_hand)
    return [rung for rung in entry.ladder if not missing_kit(rung.kit, have)]


def entries_for(content: Mapping[str, Any], known: Library) -> list[dict[str, Any]]:
    """Answer the whole library entries that a program's content uses, in the order of first use.

    The phone keeps them with the program, so that it needs nothing else to show every movement offline,
    easier and harder ways included. Codes that are not in the library are left out.
    """
    sessions = content.get("sessions", [])
    prescribed = [one for session in sessions for one in session.get("prescriptions", [])]
    used = [each for one in prescribed for each in (one, *one.get("alternatives", []))]
    codes = dict.fromkeys(each["exercise"] for each in used)
    return [known[code].model_dump(mode="json") for code in codes if code in known]
