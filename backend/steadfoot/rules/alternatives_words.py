"""The reasons for another movement, and for none, in sentences."""

from collections.abc import Sequence
from dataclasses import dataclass

from steadfoot.rules.alternatives import (
    Because,
    Fit,
    Movement,
    Shortfall,
    Wish,
    height,
    in_common,
    other_kit,
    trains_most_wanted,
)
from steadfoot.rules.dose import SIDES_WORDS
from steadfoot.rules.vocabulary import Region

_MOST_LOADED = 2


@dataclass(frozen=True, slots=True)
class Reason:
    """One reason, in a sentence."""

    because: Because
    sentence: str


def reasons(wish: Wish, fit: Fit) -> list[Reason]:
    """Answer why a movement is offered, in the order by which what fits is sorted; then what else changes."""
    told = [
        (Because.TRAINS, _trains(wish, fit.movement)),
        (Because.SPARES, _spares(wish.spare, fit.movement) if wish.spare else ""),
        (Because.KIT, _kit(wish, fit)),
        (Because.SIDES, _sides(wish, fit)),
        (Because.DIFFICULTY, _difficulty(wish, fit)),
        (Because.DOSE, _dose(wish, fit)),
    ]
    return [Reason(because, sentence) for because, sentence in told if sentence]


def nothing_fits(wish: Wish, why: Shortfall) -> str:
    """Answer why nothing fits, with what would have to give: "Nothing in the library fits: ..."."""
    wanted = quality_words(wish.trains) if wish.trains else f"something that the {_lower(wish.movement)} trains"
    if not why.training:
        return f"Nothing in the library fits: no other movement trains {wanted}."
    region = region_words(wish.spare) if wish.spare else ""
    if why.training == 1:
        fault = f"loads the {region}" if why.loading else "needs kit that is not in the house"
        return f"Nothing in the library fits: the one other movement that trains {wanted} {fault}."
    of_them = [f"{why.loading} {_verb(why.loading, 'load')} the {region}"] if why.loading else []
    if why.lacking_kit:
        of_them.append(f"{why.lacking_kit} {_verb(why.lacking_kit, 'need')} kit that is not in the house")
    return f"Nothing in the library fits: {why.training} other movements train {wanted}; {' and '.join(of_them)}."


def quality_words(quality: str) -> str:
    """Answer a quality in words: "single-leg strength"."""
    return quality.replace("_", " ").replace("single leg", "single-leg")


def region_words(region: Region) -> str:
    """Answer a region in the middle of a sentence: "lower back", "Achilles tendon"."""
    return "Achilles tendon" if region is Region.ACHILLES else region.value.replace("_", " ")


def _trains(wish: Wish, movement: Movement) -> str:
    wanted = quality_words(wish.qualities[0])
    common = [quality_words(one) for one in in_common(wish, movement)]
    if not trains_most_wanted(wish, movement):
        return f"Trains {_listed(common)} as well, but not {wanted}.{_most(wish, movement)}"
    others = _listed([one for one in common if one != wanted])
    rest = f"and {others} as well" if others else "and nothing else of the same"
    return f"Trains {wanted}, {rest}.{_most(wish, movement)}"


def _most(wish: Wish, movement: Movement) -> str:
    """What it trains most, where that was not asked for: a jump in the place of a step must not pass for the same."""
    most = movement.trains[0]
    return "" if most in (*wish.movement.trains, *wish.qualities) else f" Most of all it trains {quality_words(most)}."


def _spares(region: Region, movement: Movement) -> str:
    most = _listed([region_words(one) for one in movement.loads[:_MOST_LOADED]])
    return f"Spares the {region_words(region)}: by common practice it loads {most} most."


def _kit(wish: Wish, fit: Fit) -> str:
    if not fit.rung.kit:
        return "Needs no kit."
    kit = _listed(sorted(fit.rung.kit))
    if not other_kit(wish, fit.rung):
        return f"Needs {kit}, nothing that was not needed before."
    return f"Needs {kit}, which the house has or can make do for." if wish.at_hand is not None else f"Needs {kit}."


def _sides(wish: Wish, fit: Fit) -> str:
    now = SIDES_WORDS[fit.rung.sides]
    if fit.rung.sides is wish.rung.sides:
        return f"Done with {now}, as before."
    return f"Done with {now}, not with {SIDES_WORDS[wish.rung.sides]}."


def _difficulty(wish: Wish, fit: Fit) -> str:
    new, old = height(fit.place, fit.movement.ladder), height(wish.place, wish.movement.ladder)
    here = f"Variant {fit.place + 1} of {len(fit.movement.ladder)} on its ladder"
    before = f"{wish.place + 1} of {len(wish.movement.ladder)}"
    if new == old:
        return f"{here}, as far up as {before} before."
    return f"{here}, {'lower' if new < old else 'higher'} than {before} before."


def _dose(wish: Wish, fit: Fit) -> str:
    held = fit.rung.hold_s is not None
    if held == (wish.rung.hold_s is not None):
        return ""
    return "Held, not counted." if held else "Counted, not held."


def _lower(movement: Movement) -> str:
    return movement.name[0].lower() + movement.name[1:]


def _verb(number: int, verb: str) -> str:
    return f"{verb}s" if number == 1 else verb


def _listed(words: Sequence[str]) -> str:
    return " and ".join([", ".join(words[:-1]), words[-1]]) if len(words) > 1 else "".join(words)
