"""What is new in each prescription since the version before: said on the exercise's own card on the phone."""

from collections.abc import Iterator

from steadfoot.exercises.service import Library
from steadfoot.programs.changes_prescriptions import dose_change
from steadfoot.programs.content import Circuit, Prescription, ProgramContent


def changed_prescriptions(old: ProgramContent | None, new: ProgramContent, library: Library) -> list[dict[str, str]]:
    """Answer the changed prescriptions by key, a sentence each; those that came or went are not among them.

    The sentence does not name the exercise. Another number of rounds is a change of every movement in them.
    """
    before = dict(_by_key(old)) if old is not None else {}
    found = []
    for key, (circuit, now) in _by_key(new):
        if key in before:
            parts = list(_parts(before[key], (circuit, now), library))
            if parts:
                words = ", ".join(parts)
                found.append({"prescription": key, "sentence": words[0].upper() + words[1:]})
    return found


_Place = tuple[Circuit, Prescription]


def _by_key(content: ProgramContent) -> Iterator[tuple[str, _Place]]:
    for session in content.sessions:
        if isinstance(session, Circuit):
            yield from ((one.key, (session, one)) for one in session.prescriptions)


def _parts(was: _Place, now: _Place, library: Library) -> Iterator[str]:
    dose = dose_change(was[1], now[1], library)
    if dose is not None:
        yield dose
    if was[0].rounds != now[0].rounds:
        yield f"{now[0].rounds} {'round' if now[0].rounds == 1 else 'rounds'} instead of {was[0].rounds}"
