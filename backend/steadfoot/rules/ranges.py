"""Refusing what cannot be: a number outside its range is named with the range, and no answer is made of it."""


class OutOfRange(ValueError):
    """A number outside its range. ``name`` is for programs, ``unit`` may be empty."""

    def __init__(self, name: str, value: float, low: float, high: float, unit: str) -> None:
        self.name, self.value, self.low, self.high, self.unit = name, value, low, high, unit
        tail = f" {unit}" if unit else ""
        super().__init__(f"{name.replace('_', ' ')} is {value:g}; it must be {low:g} to {high:g}{tail}.")


class NotWhole(ValueError):
    """A count that is not a whole number."""

    def __init__(self, name: str, value: float, unit: str) -> None:
        self.name, self.value, self.unit = name, value, unit
        super().__init__(f"{name.replace('_', ' ')} is {value:g}; {unit} are counted whole.")


def within(name: str, value: float, low: float, high: float, unit: str = "") -> None:
    """Let a number pass that lies in its range, ends included.

    Raises:
        OutOfRange: it lies outside, or is not a number at all.

    >>> within("effort", 10, 0, 10)
    """
    if not low <= value <= high:
        raise OutOfRange(name, value, low, high, unit)


def whole(name: str, value: float, unit: str) -> None:
    """Let a count pass.

    Raises:
        NotWhole: it has a fraction.
    """
    if value != int(value):
        raise NotWhole(name, value, unit)
