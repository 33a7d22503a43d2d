"""Published proportions of the body, and the few that are our own.

Sources: segment lengths of Drillis and Contini 1966, as fractions of stature, and segment masses and centers of mass of
Dempster 1955, as fractions of body mass and of segment length; both after Winter 2009, "Biomechanics and Motor Control
of Human Movement", Figure 4.1 and Table 4.1. Numbers marked house are our own choice, for drawing only.
"""

from typing import Final

ANKLE_HEIGHT: Final = 0.039
SHANK: Final = 0.246
THIGH: Final = 0.245
UPPER_ARM: Final = 0.186
FOREARM: Final = 0.146
HAND: Final = 0.108
HIP_TO_SHOULDER: Final = 0.288
FOOT: Final = 0.152

HEEL_BEHIND: Final = 0.044
"""House: from the ankle back to the end of the heel."""
BALL_AHEAD: Final = 0.070
"""House: from the ankle forward to the ball of the foot."""
TOE_AHEAD: Final = FOOT - HEEL_BEHIND
"""Derived: from the ankle forward to the tip of the toes."""
BALL_RADIUS: Final = 0.0125
HEEL_RADIUS: Final = 0.019
HIP_HALF: Final = 0.050
"""House: from the midline to a hip joint."""
SHOULDER_HALF: Final = 0.103
"""House: from the midline to a shoulder joint."""
LUMBAR: Final = 0.060
"""House: height of the lower bending place of the trunk above the hip joints."""
THORACIC: Final = 0.145
"""House: height of the upper bending place of the trunk above the hip joints."""
NECK: Final = 0.057
"""House: from the shoulder line to the base of the skull."""
HEAD_CENTRE: Final = 0.060
"""House: from the base of the skull to the centre of the head, which is .935 of stature high in standing."""

MASS: Final[dict[str, float]] = {
    "hand": 0.006,
    "forearm": 0.016,
    "upper_arm": 0.028,
    "foot": 0.0145,
    "shank": 0.0465,
    "thigh": 0.100,
    "head_neck": 0.081,
    "trunk": 0.497,
}
"""Mass of a segment as a fraction of body mass; those of the limbs count twice."""
CENTRE: Final[dict[str, float]] = {
    "hand": 0.506,
    "forearm": 0.430,
    "upper_arm": 0.436,
    "foot": 0.500,
    "shank": 0.433,
    "thigh": 0.433,
    "head_neck": 1.000,
    "trunk": 0.500,
}
"""Center of mass as a fraction of the segment's length from its upper end."""

STATURE_MM: Final = 1750.0
"""House: stature for which messages tell millimeters."""
SIDES: Final = ("L", "R")


def mm(length: float) -> float:
    """Answer a length in fractions of stature as millimeters on a person of 1.75 m."""
    return length * STATURE_MM


def outward(side: str) -> int:
    """Answer the sign of y that points away from the midline: +1 left, -1 right."""
    return 1 if side == "L" else -1
