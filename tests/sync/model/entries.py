"""What a person enters, by a number: bodies of every kind, some that the practice will not take."""

from typing import Any

Entry = dict[str, Any]
PLANNED = ("2026-06-10.1", "2026-06-17.1", "2026-06-10.2")
_REGIONS = ("knee", "hip")


def _set(number: int) -> dict[str, Any]:
    return {"planned_id": PLANNED[number % 3], "prescription": f"p{1 + number % 2}", "round": 1 + number // 2 % 2}


def body_of(number: int, word: str, earlier: list[str]) -> Entry:
    """Answer an entry; ``word`` marks whose it is, ``earlier`` are ids that it may take back."""
    more = number // 11
    match number % 11:
        case 0 | 1:
            return {"kind": "set_ticked", "body": _set(more)}
        case 2:
            return {"kind": "set_unticked", "body": _set(more)}
        case 3:
            return {"kind": "set_left_out", "body": {**_set(more), "reason": "pain"}}
        case 4:
            body = {"minutes": 5 + more % 50, "effort": more % 11, "planned_id": PLANNED[more % 3]}
            return {"kind": "session_finished", "body": body}
        case 5:
            body = {"rating": more % 11, "region": _REGIONS[more % 2], "side": "left", "when": "during"}
            return {"kind": "pain_reported", "body": body}
        case 6 if earlier:
            return {"kind": "entry_withdrawn", "body": {"event_id": earlier[more % len(earlier)]}}
        case 7:
            walk = {"distance_km": 5, "ascent_m": more, "descent_m": more, "minutes": 90, "pack_kg": 4}
            return {"kind": "walk_logged", "body": {**walk, **({"day": "2026-06-09"} if more % 2 else {})}}
        case 8:
            return {"kind": "symptom_reported", "body": {"symptom": "calf_swelling", "note": f"{word} {number}"}}
        case 9:
            names = ("regular_activity", "known_disease", "signs_or_symptoms")
            answers = {name: bool(more >> place & 1) for place, name in enumerate(names)}
            return {"kind": "screening_answered", "body": {**answers, "intensity": "vigorous"}}
        case _:
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
