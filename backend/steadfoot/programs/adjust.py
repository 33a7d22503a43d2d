"""Easing off and moving on: new content for a person to look at and publish. Nothing is published here."""

from collections.abc import Callable, Collection, Sequence
from dataclasses import dataclass

from steadfoot.exercises.service import Library, ladder_of
from steadfoot.programs.content import (
    AnySession,
    Circuit,
    Prescription,
    ProgramContent,
    rule_prescription,
    with_dose,
)
from steadfoot.programs.lighter import whole_key
from steadfoot.rules import dose
from steadfoot.rules.vocabulary import Kit, Region

_Move = Callable[[dose.Prescription, Sequence[dose.Rung], Collection[Kit]], dose.Step | None]


@dataclass(frozen=True, slots=True)
class Adjusted:
    """New content; what changed, a sentence each; the keys that could not be moved any further."""

    content: ProgramContent
    sentences: tuple[str, ...]
    moved: tuple[str, ...]
    at_the_end: tuple[str, ...]


def prescriptions_loading(content: ProgramContent, region: Region, library: Library) -> list[str]:
    """Answer the keys of the prescriptions whose exercise loads a region of the body."""
    return [
        one.key for one in _prescriptions(content) if one.exercise in library and region in library[one.exercise].loads
    ]


def ease_off_client(
    content: ProgramContent, kit: Collection[Kit], library: Library, *, keys: Collection[str]
) -> Adjusted:
    """Answer the program with the named prescriptions one step easier, as the kit in the house allows.

    A circuit and its copies with fewer rounds are moved together, whichever of them is named.
    Keys that the program does not have are passed over: the program may have changed since they were noted.
    """
    return _adjust(content, kit, library, keys, dose.ease_off)


def ease_off_region(content: ProgramContent, kit: Collection[Kit], library: Library, *, region: Region) -> Adjusted:
    """Answer the program with everything that loads a painful region one step easier."""
    keys = prescriptions_loading(content, region, library)
    return ease_off_client(content, kit, library, keys=keys)


def progress_client(
    content: ProgramContent, kit: Collection[Kit], library: Library, *, keys: Collection[str]
) -> Adjusted:
    """Answer the program with the named prescriptions one rung harder, as the kit in the house allows."""
    return _adjust(content, kit, library, keys, dose.progress)


def _prescriptions(content: ProgramContent) -> list[Prescription]:
    return [one for session in content.sessions if isinstance(session, Circuit) for one in session.prescriptions]


def _adjust(
    content: ProgramContent, kit: Collection[Kit], library: Library, keys: Collection[str], move: _Move
) -> Adjusted:
    wholes = {whole_key(key) for key in keys}
    steps: dict[str, dose.Step] = {}
    sentences, stuck = [], []
    for one in _prescriptions(content):
        entry = library.get(one.exercise)
        if whole_key(one.key) not in wholes or entry is None:
            continue
        step = move(rule_prescription(one), ladder_of(entry), kit)
        if step is None:
            stuck.append(one.key)
        else:
            if whole_key(one.key) not in steps:  # a lighter copy of what is said already goes without saying
                sentences.append(f"{entry.name}: {step.change}")
            steps[one.key] = step
    sessions = [_with(session, steps) for session in content.sessions]
    moved = content.model_copy(update={"sessions": sessions})
    return Adjusted(moved, tuple(sentences), tuple(steps), tuple(stuck))


def _with(session: AnySession, steps: dict[str, dose.Step]) -> AnySession:
    if not isinstance(session, Circuit):
        return session
    moved = [with_dose(one, steps[one.key].prescription) if one.key in steps else one for one in session.prescriptions]
    return session.model_copy(update={"prescriptions": moved})
