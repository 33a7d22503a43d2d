"""Asks the library for another movement, and says why in the words of the rules."""

from collections.abc import Iterable

from steadfoot.core.problems import Invalid, not_found
from steadfoot.exercises.schemas import AlternativeOut, AlternativesOut, Exercise, Quality, ReasonOut, Variant
from steadfoot.exercises.service import Library, exercise, ladder_of, offered
from steadfoot.rules import alternatives as rules
from steadfoot.rules.alternatives_words import nothing_fits, reasons
from steadfoot.rules.vocabulary import Kit, Region


def alternatives(
    code: str, variant: str | None, kit: str | None, spare: Region | None, trains: Quality | None, known: Library
) -> AlternativesOut:
    """Answer the movements that can stand in for one, the most like it first.

    Args:
        code: the movement that is prescribed.
        variant: its variant; None: the easiest.
        kit: codes of the kit in the house with commas between; empty: none; None: whatever is needed.
        spare: a region that must not be loaded.
        trains: a quality that must be trained; None: something of what the movement trains.
        known: every movement that the practice has.

    Raises:
        NotFound: no such exercise, or no such variant of it.
        Invalid: a kit code that does not exist.
    """
    entry = exercise(code, known)
    here = _place(entry, variant)
    at_hand = None if kit is None else _at_hand(kit)
    wish = rules.Wish(_movement(entry), here, at_hand, spare, trains.value if trains else None)
    everything = [_movement(one) for one in offered(known).values()]
    found = [_out(wish, fit) for fit in rules.fitting(wish, everything)]
    none = None if found else nothing_fits(wish, rules.shortfall(wish, everything))
    return AlternativesOut(items=found, nothing_fits=none)


def nearest_instead(entry: Exercise, variant: Variant, at_hand: Iterable[Kit], library: Library) -> str | None:
    """Answer the name of what can best be done instead with the kit in the house: "Squat, without a chair".

    None where nothing that fits trains what the exercise trains most.
    """
    wish = rules.Wish(_movement(entry), entry.ladder.index(variant), frozenset(at_hand))
    found = rules.fitting(wish, [_movement(one) for one in offered(library).values()])
    if not found or not rules.trains_most_wanted(wish, found[0].movement):
        return None
    return f"{found[0].movement.name}, {found[0].rung.name}"


def _place(entry: Exercise, variant: str | None) -> int:
    codes = [rung.variant for rung in entry.ladder]
    if variant is not None and variant not in codes:
        raise not_found("variant of the exercise")
    return 0 if variant is None else codes.index(variant)


def _at_hand(kit: str) -> frozenset[Kit]:
    codes = [code.strip() for code in kit.split(",") if code.strip()]
    unknown = [code for code in codes if code not in list(Kit)]
    if unknown:
        detail = f"There is no such kit. Known are {', '.join(Kit)}."
        raise Invalid("unknown-kit", detail, errors=[{"pointer": "/query/kit", "code": "unknown", "detail": detail}])
    return frozenset(Kit(code) for code in codes)


def _movement(entry: Exercise) -> rules.Movement:
    trains = tuple(quality.value for quality in entry.trains)
    return rules.Movement(entry.code, entry.name, trains, tuple(entry.loads), ladder_of(entry))


def _out(wish: rules.Wish, fit: rules.Fit) -> AlternativeOut:
    return AlternativeOut(
        exercise=fit.movement.code,
        name=fit.movement.name,
        variant=fit.rung.variant,
        variant_name=fit.rung.name,
        reasons=[ReasonOut(because=one.because, sentence=one.sentence) for one in reasons(wish, fit)],
    )
