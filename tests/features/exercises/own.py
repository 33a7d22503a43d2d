"""A movement of a practice's own, as tests make it."""

from typing import Any

from tests.builders import House

STANDING: dict[str, Any] = {
    "views": ["side"],
    "seconds": 2,
    "working": ["quadriceps.R"],
    "contacts": ["foot.L", "foot.R"],
    "poster": "up",
    "strip": ["up", "down"],
    "solve": {"pelvis.x": "mass.x", "pelvis.z": "knee.R"},
    "base": {"pelvis": {"z": 0.52}, "foot": {"at": [0, 0.075, 0], "heading": 8}, "aim": {"mass.x": 0.018}},
    "keys": {"up": {"t": 0, "aim": {"knee.R": 4}}, "down": {"t": 1, "aim": {"knee.R": 60}}},
}
"""A small knee bend; every check is content with it."""
FALLING: dict[str, Any] = STANDING | {
    "solve": {"pelvis.z": "knee.R"},
    "keys": STANDING["keys"] | {"down": {"t": 1, "aim": {"knee.R": 60}, "pelvis": {"x": -0.2}}},
}
"""The same with the pelvis far behind the feet."""


def rung(variant: str = "v1", **more: Any) -> dict[str, Any]:
    """One variant."""
    return {
        "variant": variant,
        "name": f"way {variant}",
        "short": variant,
        "sides": "both",
        "kit": [],
        "how": ["Stand with your feet apart.", "Bend your knees a little."],
        "dose": {"reps": [8, 12]},
        "load": "none",
        **more,
    }


def own_body(name: str, poses: dict[str, Any] | None = None, **more: Any) -> dict[str, Any]:
    """A movement with one variant, drawn unless told otherwise."""
    text = {
        "name": name,
        "trains": ["knee_control"],
        "loads": ["knee", "thigh"],
        "why": "It gets your knees ready for the way down.",
        "sides": "both",
        "cues": ["Keep your heels down.", "Knees over your toes.", "Look ahead."],
        "faults": [{"see": "The knees fall in.", "instead": "Press them out."}],
        "cautions": ["Hold on to something steady."],
        "ladder": [rung()],
        **more,
    }
    return {"text": text, "poses": {"v1": STANDING} if poses is None else poses}


def make(house: House, name: str = "Ridge bend", poses: dict[str, Any] | None = None, **more: Any) -> dict[str, Any]:
    """Keep one; answer it."""
    answer: dict[str, Any] = house.post("/exercises/own", own_body(name, poses, **more))
    return answer
