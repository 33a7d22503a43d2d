"""A browser in two words, for the list of where someone is signed in. To recognise it by: anybody can claim any."""

_BROWSERS = (
    ("Edg", "edge"),
    ("Firefox/", "firefox"),
    ("FxiOS/", "firefox"),
    ("CriOS/", "chrome"),
    ("Chrome/", "chrome"),
    ("Safari/", "safari"),
)
"""In this order: most say that they are several of them."""
_SYSTEMS = (
    ("iPhone", "ios"),
    ("iPad", "ios"),
    ("Android", "android"),
    ("Windows", "windows"),
    ("Macintosh", "macos"),
    ("CrOS", "chromeos"),
    ("Linux", "linux"),
)
UNKNOWN = "unknown"


def _first(agent: str, marks: tuple[tuple[str, str], ...]) -> str:
    return next((word for mark, word in marks if mark in agent), UNKNOWN)


def words_of(agent: str) -> tuple[str, str]:
    """Answer browser and system of a User-Agent header; ``unknown`` where it names none of those known."""
    return _first(agent, _BROWSERS), _first(agent, _SYSTEMS)
