"""What a person enters, by a number: bodies of every kind, some that the practice will not take."""

from collections.abc import Callable
from typing import Any

Entry = dict[str, Any]
PLANNED = ("2026-06-10.1", "2026-06-17.1", "2026-06-10.2")
_REGIONS = ("knee", "hip")


def _set(number: int) -> dict[str, Any]:
    return {"planned_id": PLANNED[number % 3], "prescription": f"p{1 + number % 2}", "round": 1 + number // 2 % 2}


def _finish(more: int) -> dict[str, Any]:
    return {"minutes": 5 + more % 50, "effort": more % 11, "planned_id": PLANNED[more % 3]}


def _pain(more: int) -> dict[str, Any]:
    return {"rating": more % 11, "region": _REGIONS[more % 2], "side": "left", "when": "during"}


def _walk(more: int) -> dict[str, Any]:
    walk = {"distance_km": 5, "ascent_m": more, "descent_m": more, "minutes": 90, "pack_kg": 4}
    return {**walk, **({"day": "2026-06-09"} if more % 2 else {})}


def _screening(more: int) -> dict[str, Any]:
    names = ("regular_activity", "known_disease", "signs_or_symptoms")
    return {name: bool(more >> place & 1) for place, name in enumerate(names)} | {"intensity": "vigorous"}


_PLAIN: list[tuple[str, Callable[[int], dict[str, Any]]]] = [
    ("set_ticked", _set),
    ("set_ticked", _set),
    ("set_unticked", _set),
    ("set_left_out", lambda more: {**_set(more), "reason": "pain"}),
    ("session_finished", _finish),
    ("pain_reported", _pain),
    ("walk_logged", _walk),
    ("screening_answered", _screening),
]


def body_of(number: int, word: str, earlier: list[str]) -> Entry:
    """Answer an entry; ``word`` marks whose it is, ``earlier`` are ids that it may take back."""
    which, more = number % (len(_PLAIN) + 3), number // (len(_PLAIN) + 3)
    if which < len(_PLAIN):
        kind, body = _PLAIN[which]
        return {"kind": kind, "body": body(more)}
    if which == len(_PLAIN) and earlier:
        return {"kind": "entry_withdrawn", "body": {"event_id": earlier[more % len(earlier)]}}
    if which == len(_PLAIN) + 1:
        return {"kind": "symptom_reported", "body": {"symptom": "calf_swelling", "note": f"{word} {number}"}}
    return {"kind": "note_written", "body": {"text": f"{word} {number}"}}


def poison_of(number: int, word: str) -> Entry:
    """Answer an entry that a practice cannot take: of a newer phone, or damaged."""
    choices: list[Entry] = [
        {"kind": "balance_held", "body": {"seconds": number, "who": word}},
        {"kind": "note_written", "body": {"text": ""}},
        {"kind": "pain_reported", "body": {"rating": 99, "region": "knee", "side": "left", "when": "during"}},
        {"kind": "set_ticked", "body": {"planned_id": "2026-02-30.1", "prescription": word, "round": 1}},
        {"kind": "note_written", "body": {"text": f"{word} \x00"}},
    ]
    return choices[number % len(choices)]
