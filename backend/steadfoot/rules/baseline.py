"""Reading the result of a baseline test: beside the person's norm, beside the other side, in words."""

from collections.abc import Callable
from dataclasses import dataclass
from typing import Final

from steadfoot.rules import norms_lookup
from steadfoot.rules.baseline_catalogue import TESTS, BaselineTest, TestCode
from steadfoot.rules.norms import NoReference, Person, Reference, TestSide, reading
from steadfoot.rules.ranges import whole, within
from steadfoot.rules.symmetry import even_enough, symmetry_percent


@dataclass(frozen=True, slots=True)
class Result:
    """A result read for one person: its reference, the words, and both sides compared.

    ``symmetry_percent`` and ``even_enough`` are None without another side, or where they are undefined.
    """

    test: BaselineTest
    value: float
    reference: Reference | NoReference
    reading: str
    symmetry_percent: float | None
    even_enough: bool | None


class NotSided(ValueError):
    """A side is given for a test that both sides do together."""

    def __init__(self, test: BaselineTest) -> None:
        self.test = test
        super().__init__(f"{test.name} has no sides: leave the side and the other side's value out.")


def read(
    code: TestCode,
    value: float,
    person: Person,
    side: TestSide | None = None,
    other: float | None = None,
) -> Result:
    """Read a result beside the person's norm.

    Parameters:
        code: the test.
        value: the result in the test's unit; ``other`` that of the other side, for tests of one side.
        person: whose it is; what is not known of them narrows the norms that can be used.
        side: the side of ``value``.

    Raises:
        OutOfRange: a value cannot be.
        NotWhole: a count has a fraction.
        NotSided: a side for a test without.
    """
    test = TESTS[code]
    if not test.sided and (side is not None or other is not None):
        raise NotSided(test)
    check(test, value)
    if other is not None:
        check(test, other, "other")
    found = _NORMS[code](person, value, side)
    words = reading(value, found, test.unit)
    if other is None:
        return Result(test, value, found, words, None, None)
    even = even_enough(value, other, lower_is_better=test.lower_is_better)
    return Result(test, value, found, words, symmetry_percent(value, other), even)


def check(test: BaselineTest, value: float, name: str = "value") -> None:
    """Let a result pass that can be.

    Raises:
        OutOfRange: it lies outside the test's range.
        NotWhole: the test counts and the value has a fraction.
    """
    within(name, value, test.low, test.high, test.unit)
    if test.counted:
        whole(name, value, test.unit)


_Norm = Callable[[Person, float, TestSide | None], Reference | NoReference]
_NORMS: Final[dict[TestCode, _Norm]] = {
    TestCode.CHAIR_STAND: lambda person, _value, _side: norms_lookup.chair_stand(person),
    TestCode.STANCE_OPEN: lambda person, _value, _side: norms_lookup.stance_open(person),
    TestCode.STANCE_CLOSED: lambda person, _value, _side: norms_lookup.stance_closed(person),
    TestCode.SIDE_BRIDGE: lambda person, _value, side: norms_lookup.side_bridge(person, side),
    TestCode.HEEL_RISE: lambda person, _value, _side: norms_lookup.heel_rise(person),
    TestCode.SIX_MINUTE_WALK: lambda person, _value, _side: norms_lookup.six_minute_walk(person),
    TestCode.STEP_TEST: lambda person, value, _side: norms_lookup.step_test(person, value),
    TestCode.STEP_DOWN: lambda _person, value, _side: norms_lookup.step_down(value),
    TestCode.REACH_ANTERIOR: lambda _person, _value, _side: norms_lookup.reach_anterior(),
}
