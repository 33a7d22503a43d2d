"""Colors and lines of the figures: ink and light washes on paper, working muscles in ochre with an ink edge.

The ochre is none of the three map inks of the pages, since those mean other things there.
"""

INK = "#221f1a"
SOFT = "#716a5c"
"""Ink of the far side: 4.9:1 on the sheet, so that it prints."""
NEAR = {
    "s": "#f2dfc8",
    "t": "#8fb0b5",
    "p": "#46505c",
    "e": "#3c444e",
    "h": "#46505c",
    "m": "#d98324",
    "w": "#d6c7a3",
    "u": "#b9c2a6",
    "l": "#e6dfd0",
    "b": "#7b8c58",
    "q": "#9aa58b",
    "y": "#4a5236",
    "i": "#6d747b",
    "g": "#a8441c",
    "v": "#f7f1e2",
}
FAR = {"fs": "#d9cebb", "ft": "#aebfbf", "fp": "#707781", "fe": "#6b7178", "fm": "#d9b07a", "fi": "#8f959a"}
LINES = {"r": "#716a5c"}
LINE = 4.2
"""Width of the ink line in drawing units: 1000 a stature."""


def css(used: set[str]) -> str:
    """Answer the style sheet for the classes that a drawing uses."""
    rules = [f"svg{{stroke:{INK};stroke-width:{LINE};stroke-linejoin:round;stroke-linecap:round}}"]
    rules += [f".{name}{{fill:{color}}}" for name, color in NEAR.items() if name in used]
    rules += [f".{name}{{fill:{color};stroke:{SOFT}}}" for name, color in FAR.items() if name in used]
    rules += [".n{stroke:none}"] if "n" in used else []
    rules += [f".r{{stroke:{LINES['r']};stroke-width:2.5;stroke-dasharray:9 9}}"] if "r" in used else []
    rules += [f".k{{fill:none;stroke:{WATER};stroke-width:6}}"] if "k" in used else []
    rules += [f".a{{fill:{WATER};stroke:none}}"] if "a" in used else []
    return "".join(rules)


WATER = "#174a70"
"""Arrows and marks, in the water ink of the pages: where to, what next."""
