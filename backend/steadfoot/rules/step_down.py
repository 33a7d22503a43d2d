"""The points of the lateral step-down: what is seen adds up, and fewer are better."""

from dataclasses import dataclass, fields
from typing import Annotated, Final

from steadfoot.rules.ranges import whole, within
from steadfoot.rules.sources import Cited, Kind

KNEE_MAX: Final[
    Annotated[int, Cited(Kind.PUBLISHED, "piva-2006", "Knee inside the second toe 1, inside the edge of the foot 2")]
] = 2
ITEM_MAX: Final[Annotated[int, Cited(Kind.PUBLISHED, "piva-2006", "Every other item counts 1 at most")]] = 1


@dataclass(frozen=True, slots=True)
class StepDown:
    """What is seen over five step-downs, points each: 0 or 1, for the knee 0 to 2.

    Raises:
        OutOfRange: an item has more points than it can.
        NotWhole: an item has half a point.
    """

    arms: int
    trunk: int
    pelvis: int
    knee: int
    steadiness: int

    def __post_init__(self) -> None:
        for item in fields(self):
            points = getattr(self, item.name)
            within(item.name, points, 0, KNEE_MAX if item.name == "knee" else ITEM_MAX, "points")
            whole(item.name, points, "points")

    @property
    def points(self) -> int:
        """The sum, 0 to 6 [piva-2006]."""
        return self.arms + self.trunk + self.pelvis + self.knee + self.steadiness
