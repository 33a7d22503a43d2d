"""What accepting a suggestion does to a program: one prescription, a circuit's rounds, or one easier week. Pure."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from steadfoot.programs.content import Circuit, PlannedDay, Prescription, ProgramContent
from steadfoot.programs.lighter import is_lighter, whole_key
from steadfoot.rules.adherence import WEEK_DAYS

_EASY = "-easy"
_CODE_LETTERS = 60
_EASY_NAME = ", easier week"


@dataclass(frozen=True, slots=True)
class EasierWeek:
    """A circuit with fewer rounds for seven days from ``first`` on."""

    circuit: str
    rounds: int
    first: date


@dataclass(frozen=True, slots=True)
class Accepted:
    """All that was accepted: new prescriptions by key, new rounds and easier weeks by circuit."""

    prescriptions: Mapping[str, Prescription]
    rounds: Mapping[str, int]
    easier: Sequence[EasierWeek]


def changed(content: ProgramContent, accepted: Accepted) -> ProgramContent:
    """Answer the program with all that was accepted in it."""
    sessions = [_session(one, accepted) if isinstance(one, Circuit) else one for one in content.sessions]
    content = content.model_copy(update={"sessions": sessions})
    for week in accepted.easier:
        content = _with_easier_week(content, week)
    return content


def easy_days(content: ProgramContent, circuit: str, first: date) -> list[PlannedDay]:
    """Answer the planned days of a circuit that an easier week from ``first`` on takes in."""
    last = first + timedelta(days=WEEK_DAYS - 1)
    return [day for day in content.days if day.session == circuit and first <= day.date <= last]


def is_easier_week(circuit: Circuit) -> bool:
    """Whether a circuit was made for an easier week: it asks for no progress of its own."""
    return circuit.key.endswith(_EASY) or is_lighter(circuit)


def _session(circuit: Circuit, accepted: Accepted) -> Circuit:
    prescriptions = [_prescription(one, accepted) for one in circuit.prescriptions]
    rounds = accepted.rounds.get(circuit.key, circuit.rounds)
    return circuit.model_copy(update={"prescriptions": prescriptions, "rounds": rounds})


def _prescription(one: Prescription, accepted: Accepted) -> Prescription:
    """A copy with fewer rounds goes on with the whole circuit, under its own key."""
    new = accepted.prescriptions.get(one.key) or accepted.prescriptions.get(whole_key(one.key))
    return one if new is None else new.model_copy(update={"key": one.key})


def _easy_key(key: str) -> str:
    return key[: _CODE_LETTERS - len(_EASY)] + _EASY


def _with_easier_week(content: ProgramContent, week: EasierWeek) -> ProgramContent:
    """A circuit of its own for the days of that week, so that the program goes on as before afterwards.

    Its sets count for adherence but not for progress: fewer rounds are no evidence of more strength.
    """
    whole = next(one for one in content.sessions if one.key == week.circuit)
    assert isinstance(whole, Circuit)
    easy = whole.model_copy(
        update={
            "key": _easy_key(whole.key),
            "name": f"{whole.name.removesuffix(_EASY_NAME)}{_EASY_NAME}",
            "rounds": week.rounds,
            "expected_minutes": None,
            "prescriptions": [one.model_copy(update={"key": _easy_key(one.key)}) for one in whole.prescriptions],
        }
    )
    moved = easy_days(content, whole.key, week.first)
    days = [day.model_copy(update={"session": easy.key}) if day in moved else day for day in content.days]
    others = [one for one in content.sessions if one.key != easy.key]
    return content.model_copy(update={"sessions": [*others, easy], "days": days})
