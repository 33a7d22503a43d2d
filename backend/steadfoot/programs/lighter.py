"""Circuits with fewer rounds for lighter weeks: copies of a whole one, under keys of their own that tell of it.

What is decided about a movement of the whole circuit holds for its copies too: the same person does both.
"""

import re

from steadfoot.programs.content import Circuit

_KEY_MAX_LETTERS = 60
_FEWER_ROUNDS = re.compile(r"-[0-9]+r$")


def whole_key(key: str) -> str:
    """Answer the key that a copy's key was made from; any other stays as it is.

    >>> whole_key("braking-2r"), whole_key("braking")
    ('braking', 'braking')
    """
    return _FEWER_ROUNDS.sub("", key)


def is_lighter(circuit: Circuit) -> bool:
    """Answer whether a circuit is such a copy: it asks for no progress of its own."""
    return whole_key(circuit.key) != circuit.key


def with_rounds(circuit: Circuit, rounds: int) -> Circuit:
    """Answer the copy of a circuit with fewer rounds."""
    minutes = circuit.expected_minutes
    less = {
        "name": f"{circuit.name} (×{rounds})",
        "rounds": rounds,
        "expected_minutes": max(minutes * rounds // circuit.rounds, 1) if minutes else None,
    }
    return with_suffix(circuit, f"-{rounds}r").model_copy(update=less)


def with_suffix(circuit: Circuit, suffix: str) -> Circuit:
    """Answer a copy whose keys, its own and its prescriptions', end with a suffix."""

    def key(old: str) -> str:
        return old[: _KEY_MAX_LETTERS - len(suffix)] + suffix

    prescriptions = [one.model_copy(update={"key": key(one.key)}) for one in circuit.prescriptions]
    return circuit.model_copy(update={"key": key(circuit.key), "prescriptions": prescriptions})
