"""What the bibliography says of one work."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Source:
    """One work: who, when, what, where; whom it studied; how far it was read."""

    key: str
    authors: str
    year: str
    title: str
    where: str
    population: str
    read_as: str
