"""The least and the fullest body of every kind of entry, and one fault for each field that has a range."""

from typing import Any

PLANNED = "2026-06-10.1"
ANY = {"day": "2026-06-09", "program_version": 3, "planned_id": PLANNED}
"""What every kind may say besides its own fields."""
OTHER_ID = "01977777-7777-7777-8777-777777777777"
_SET = {"planned_id": PLANNED, "prescription": "p1", "round": 1}
_PAIN = {"rating": 4, "region": "knee", "side": "left", "when": "during"}
_SCREENED = {
    "regular_activity": True,
    "known_disease": False,
    "signs_or_symptoms": False,
    "intensity": "light_to_moderate",
}
_WALK = {"distance_km": 7.5, "ascent_m": 420, "descent_m": 420.5, "minutes": 150, "pack_kg": 6}

LEAST: dict[str, dict[str, Any]] = {
    "session_started": {},
    "set_ticked": _SET,
    "set_unticked": _SET,
    "set_left_out": {**_SET, "reason": "pain"},
    "variant_swapped": {"prescription": "p1", "to_variant": "step-10"},
    "session_finished": {"minutes": 0, "effort": 0},
    "walk_logged": _WALK,
    "pain_reported": _PAIN,
    "symptom_reported": {"symptom": "chest_pain"},
    "screening_answered": _SCREENED,
    "note_written": {"text": "x"},
    "entry_withdrawn": {"event_id": OTHER_ID},
    "message_read": {"message_id": OTHER_ID},
}
FULLEST: dict[str, dict[str, Any]] = {
    kind: {**LEAST[kind], **more, **ANY}
    for kind, more in {
        "session_started": {},
        "set_ticked": {
            "round": 20,
            "exercise": "squat",
            "variant": "step-15",
            "reps": 500,
            "hold_s": 3600,
            "load_kg": 300.0,
        },
        "set_unticked": {"round": 20},
        "set_left_out": {"exercise": "squat", "reason": "other"},
        "variant_swapped": {"exercise": "squat", "from_variant": "step-15"},
        "session_finished": {"minutes": 1440, "effort": 10},
        "walk_logged": {"distance_km": 200, "minutes": 1440, "effort": 10},
        "pain_reported": {
            "rating": 10,
            "aspect": "front",
            "feels": ["aching", "sharp", "burning", "stiff", "pinching", "numb", "giving_way"],
            "prescription": "p1",
            "exercise": "step-down",
            "variant": "step-15",
        },
        "symptom_reported": {"symptom": "other", "note": "n" * 4000},
        "screening_answered": {"known_disease": True, "intensity": "vigorous", "details": ["active", "diabetes"]},
        "note_written": {"text": 'Žluťoučký kůň 🏔 "quoted" \\ <b>'},
        "entry_withdrawn": {},
        "message_read": {},
    }.items()
}
FAULTY: list[tuple[str, dict[str, Any], str]] = [
    ("set_ticked", {"round": 0}, "/round"),
    ("set_ticked", {"round": 21}, "/round"),
    ("set_ticked", {"round": "1"}, "/round"),
    ("set_ticked", {"round": True}, "/round"),
    ("set_ticked", {"round": 1.5}, "/round"),
    ("set_ticked", {"reps": -1}, "/reps"),
    ("set_ticked", {"reps": 501}, "/reps"),
    ("set_ticked", {"hold_s": 3601}, "/hold_s"),
    ("set_ticked", {"load_kg": 301}, "/load_kg"),
    ("set_ticked", {"prescription": "P 1"}, "/prescription"),
    ("set_ticked", {"planned_id": "2026-02-30.1"}, "/planned_id"),
    ("set_ticked", {"planned_id": "2026-06-10"}, "/planned_id"),
    ("set_ticked", {"planned_id": "2026-06-10.0"}, "/planned_id"),
    ("set_ticked", {"planned_id": "٢٠٢٦-06-10.1"}, "/planned_id"),
    ("set_ticked", {"misspelt": 1}, "/misspelt"),
    ("set_left_out", {"reason": "weather"}, "/reason"),
    ("session_finished", {"minutes": 1441}, "/minutes"),
    ("session_finished", {"effort": 11}, "/effort"),
    ("session_finished", {"effort": None}, "/effort"),
    ("walk_logged", {"distance_km": -0.1}, "/distance_km"),
    ("walk_logged", {"ascent_m": 10_001}, "/ascent_m"),
    ("walk_logged", {"pack_kg": "6"}, "/pack_kg"),
    ("pain_reported", {"rating": 11}, "/rating"),
    ("pain_reported", {"rating": -1}, "/rating"),
    ("pain_reported", {"region": "soul"}, "/region"),
    ("pain_reported", {"side": "up"}, "/side"),
    ("pain_reported", {"when": "always"}, "/when"),
    ("pain_reported", {"feels": ["green"]}, "/feels/0"),
    ("pain_reported", {"feels": None}, "/feels"),
    ("symptom_reported", {"symptom": "hiccups"}, "/symptom"),
    ("symptom_reported", {"note": "n" * 4001}, "/note"),
    ("screening_answered", {"regular_activity": "yes"}, "/regular_activity"),
    ("screening_answered", {"intensity": "hard"}, "/intensity"),
    ("screening_answered", {"details": ["Chest"]}, "/details/0"),
    ("screening_answered", {"details": ["chest"]}, "/details"),
    ("screening_answered", {"details": ["not-asked"]}, "/details"),
    ("screening_answered", {"details": ["active"] * 31}, "/details"),
    ("note_written", {"text": ""}, "/text"),
    ("note_written", {"text": 5}, "/text"),
    ("note_written", {"day": "2026-6-9"}, "/day"),
    ("note_written", {"day": "2026-06-31"}, "/day"),
    ("note_written", {"day": 20260609}, "/day"),
    ("note_written", {"program_version": 0}, "/program_version"),
    ("entry_withdrawn", {"event_id": "not-an-id"}, "/event_id"),
    ("message_read", {"message_id": OTHER_ID.upper()[:-1] + "A"}, "/message_id"),
]
"""Kind, what is put over its least body, and the pointer that the problem has to name."""
