"""Another movement instead of a prescribed one: what fits, in an order of told reasons, no score.

A movement fits if it trains what is wanted, spares the painful region, and has a variant for the kit in the
house. What fits is ordered by the first of these that differs: it trains what is wanted most, it has more of
its qualities in common, it needs no other kit, it is done with the same sides, its variant stands as far up
its ladder. Ladders of two movements cannot be compared by more than that, so the words say "variant 3 of 5"
and no more.
"""

from collections.abc import Collection, Iterable, Sequence
from dataclasses import dataclass
from enum import StrEnum
from fractions import Fraction

from steadfoot.rules.dose import Rung, missing_kit
from steadfoot.rules.vocabulary import Kit, Region


class Because(StrEnum):
    """What a reason is about, in the order in which reasons are told."""

    TRAINS = "trains"
    SPARES = "spares"
    KIT = "kit"
    SIDES = "sides"
    DIFFICULTY = "difficulty"
    DOSE = "dose"


@dataclass(frozen=True, slots=True)
class Movement:
    """A movement as the library has it: qualities and regions most first, the ladder easiest first."""

    code: str
    name: str
    trains: tuple[str, ...]
    loads: tuple[Region, ...]
    ladder: tuple[Rung, ...]


@dataclass(frozen=True, slots=True)
class Wish:
    """What is prescribed now, and what the other movement must do.

    ``place`` counts the rungs of the ladder from 0. ``at_hand`` None: whatever kit is needed. ``trains`` None:
    something of what the movement itself trains.
    """

    movement: Movement
    place: int
    at_hand: frozenset[Kit] | None = None
    spare: Region | None = None
    trains: str | None = None

    @property
    def rung(self) -> Rung:
        """The prescribed rung."""
        return self.movement.ladder[self.place]

    @property
    def qualities(self) -> tuple[str, ...]:
        """What the other movement has to train some of, most wanted first."""
        return (self.trains,) if self.trains else self.movement.trains


@dataclass(frozen=True, slots=True)
class Fit:
    """A movement that fits, on the rung of it that comes nearest."""

    movement: Movement
    place: int

    @property
    def rung(self) -> Rung:
        """The rung that comes nearest."""
        return self.movement.ladder[self.place]


@dataclass(frozen=True, slots=True)
class Shortfall:
    """How many movements train what is wanted, and why each of them does not do."""

    training: int
    loading: int
    lacking_kit: int


def fitting(wish: Wish, library: Iterable[Movement]) -> list[Fit]:
    """Answer the other movements that fit, the most like the prescribed one first.

    The prescribed movement's own variants are not among them: they stand on its own ladder.
    """
    found = [
        Fit(movement, place)
        for movement in _training(wish, library)
        if wish.spare not in movement.loads and (place := _nearest(wish, movement)) is not None
    ]
    return sorted(found, key=lambda fit: (*_likeness(wish, fit), fit.movement.name))


def shortfall(wish: Wish, library: Iterable[Movement]) -> Shortfall:
    """Answer what stood in the way of the movements that train what is wanted; the region is looked at first."""
    training = _training(wish, library)
    sparing = [movement for movement in training if wish.spare not in movement.loads]
    lacking = [movement for movement in sparing if _nearest(wish, movement) is None]
    return Shortfall(len(training), len(training) - len(sparing), len(lacking))


def shared(wish: Wish, movement: Movement) -> list[str]:
    """Answer the wanted qualities that a movement trains, most wanted first."""
    return [quality for quality in wish.qualities if quality in movement.trains]


def trains_most_wanted(wish: Wish, movement: Movement) -> bool:
    """Say whether a movement trains the most wanted quality, be it first or last."""
    return wish.qualities[0] in movement.trains


def in_common(wish: Wish, movement: Movement) -> list[str]:
    """Answer the qualities that a movement and the prescribed one both train, most first."""
    return [quality for quality in wish.movement.trains if quality in movement.trains]


def other_kit(wish: Wish, rung: Rung) -> frozenset[Kit]:
    """Answer the kit of a rung that the prescribed one does not need; a wall is everywhere."""
    return missing_kit(rung.kit, wish.rung.kit)


def height(place: int, ladder: Sequence[Rung]) -> Fraction:
    """Answer how far up its ladder a rung stands: 0 the easiest, 1 the hardest.

    >>> height(1, [None, None, None])
    Fraction(1, 2)
    """
    return Fraction(place, max(1, len(ladder) - 1))


def _training(wish: Wish, library: Iterable[Movement]) -> list[Movement]:
    others = (movement for movement in library if movement.code != wish.movement.code)
    return [movement for movement in others if shared(wish, movement)]


def _nearest(wish: Wish, movement: Movement) -> int | None:
    """The possible rung nearest in height; of two as near, the one with the same sides, then the easier one."""
    places = [place for place, rung in enumerate(movement.ladder) if _possible(rung, wish.at_hand)]
    return min(places, key=lambda place: _nearness(wish, Fit(movement, place)), default=None)


def _nearness(wish: Wish, fit: Fit) -> tuple[Fraction, bool, int]:
    return _apart(wish, fit), fit.rung.sides is not wish.rung.sides, fit.place


def _possible(rung: Rung, at_hand: Collection[Kit] | None) -> bool:
    return at_hand is None or not missing_kit(rung.kit, at_hand)


def _apart(wish: Wish, fit: Fit) -> Fraction:
    return abs(height(fit.place, fit.movement.ladder) - height(wish.place, wish.movement.ladder))


def _likeness(wish: Wish, fit: Fit) -> tuple[bool, int, bool, bool, Fraction]:
    return (
        not trains_most_wanted(wish, fit.movement),
        -len(in_common(wish, fit.movement)),
        bool(other_kit(wish, fit.rung)),
        fit.rung.sides is not wish.rung.sides,
        _apart(wish, fit),
    )
