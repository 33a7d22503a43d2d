"""Every cited number of the rules in one list, read from the annotations beside the numbers themselves."""

import importlib
import pkgutil
from dataclasses import dataclass
from types import ModuleType
from typing import Final, get_args

import steadfoot.rules
from steadfoot.rules.sources import Cited, Kind

_UNITS: Final = {
    "_M_PER_H": "m/h",
    "_KMH": "km/h",
    "_M_S": "m/s",
    "_M_S2": "m/s²",
    "_W_PER_KG": "W/kg",
    "_DEGREES": "degrees",
    "_KM": "km",
    "_KG": "kg",
    "_CM": "cm",
    "_BPM": "beats/min",
    "_PERCENT": "percent",
    "_POINTS": "points",
    "_MONTHS": "months",
    "_WEEKS": "weeks",
    "_DAYS": "days",
    "_DAYS_A_WEEK": "days a week",
    "_SESSIONS": "sessions",
    "_SESSIONS_A_WEEK": "sessions a week",
    "_MINUTES": "minutes",
    "_S": "s",
    "_M": "m",
}
"""What the ending of a name says of its unit; no ending is the end of another."""
_EDGES: Final = ("_MIN", "_MAX")


@dataclass(frozen=True, slots=True)
class Number:
    """A cited constant. ``value`` is None for a whole table; ``unit`` is empty where the name tells none."""

    name: str
    value: float | None
    unit: str
    kind: Kind
    source: str
    note: str
    module: str


def unit_of(name: str) -> str:
    """Answer the unit that a constant's name ends with, whether or not it says minimum or maximum.

    >>> unit_of("LOAD_MAX_KG"), unit_of("SILENT_DAYS"), unit_of("MINUTES_MAX"), unit_of("PAIN_STOP")
    ('kg', 'days', 'minutes', '')
    """
    bare = next((name.removesuffix(edge) for edge in _EDGES if name.endswith(edge)), name)
    return next((unit for ending, unit in _UNITS.items() if f"_{bare}".endswith(ending)), "")


def numbers() -> list[Number]:
    """Answer every constant of the rules that has a citation, by module and in the order written there."""
    names = sorted(found.name for found in pkgutil.iter_modules(steadfoot.rules.__path__))
    modules = (importlib.import_module(f"{steadfoot.rules.__name__}.{name}") for name in names)
    return [number for module in modules for number in _of_module(module)]


def _of_module(module: ModuleType) -> list[Number]:
    found = []
    for name, annotation in getattr(module, "__annotations__", {}).items():
        cited = _cited(annotation)
        if cited is not None:
            value = getattr(module, name)
            shown = value if isinstance(value, int | float) else None
            place = module.__name__.rpartition(".")[2]
            found.append(Number(name, shown, unit_of(name), cited.kind, cited.source, cited.note, place))
    return found


def _cited(annotation: object) -> Cited | None:
    beside = (extra for inner in get_args(annotation) for extra in getattr(inner, "__metadata__", ()))
    return next((extra for extra in beside if isinstance(extra, Cited)), None)
