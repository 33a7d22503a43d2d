"""The bibliography: where each number that changes advice comes from, and of what kind it is."""

from dataclasses import dataclass
from enum import StrEnum
from typing import Final


class Kind(StrEnum):
    """How much weight a number can bear."""

    PUBLISHED = "published"
    """Copied from the source."""
    DERIVED = "derived"
    """Follows from published numbers by arithmetic that the docstring shows."""
    HOUSE = "house"
    """Our own choice, or common practice without a source. A practice may set it otherwise."""


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


@dataclass(frozen=True, slots=True)
class Cited:
    """Annotation of a constant: its kind, the key of its source and the place in it or the reason for it."""

    kind: Kind
    source: str
    note: str


_WORKS: Final = (
    Source(
        "silbernagel-2007",
        "Silbernagel KG, Thomee R, Eriksson BI, Karlsson J",
        "2007",
        "Continued sports activity, using a pain-monitoring model, during rehabilitation in patients with Achilles "
        "tendinopathy",
        "Am J Sports Med 35(6):897-906",
        "Adults with Achilles tendinopathy; not acute injury, bone stress or nerve pain",
        "Clinic pages that restate the model; the original's thresholds from memory",
    ),
    Source(
        "thomee-1997",
        "Thomee R",
        "1997",
        "A comprehensive treatment approach for patellofemoral pain syndrome in young women",
        "Phys Ther 77:1690-1703",
        "Young women with patellofemoral pain",
        "Clinic pages that restate the model; the original's thresholds from memory",
    ),
    Source(
        "farrar-2001",
        "Farrar JT, Young JP, LaMoreaux L, Werth JL, Poole RM",
        "2001",
        "Clinical importance of changes in chronic pain intensity measured on an 11-point numerical pain rating scale",
        "Pain 94(2):149-158",
        "2724 adults with chronic pain in 10 trials",
        "Abstract",
    ),
    Source(
        "foster-2001",
        "Foster C, Florhaug JA, Franklin J, et al.",
        "2001",
        "A new approach to monitoring exercise training",
        "J Strength Cond Res 15(1):109-115",
        "Recreational exercisers and basketball players",
        "Abstract",
    ),
    Source(
        "bailey-2020",
        "Bailey DL, Holden MA, Foster NE, Quicke JG, Haywood KL, Bishop A",
        "2020",
        "Defining adherence to therapeutic exercise for musculoskeletal pain: a systematic review",
        "Br J Sports Med 54:326-331",
        "Trials of exercise for musculoskeletal pain in adults; most of them never define adherence",
        "From memory: done over prescribed is the usual counting",
    ),
    Source(
        "finucane-2020",
        "Finucane LM, Downie A, Mercer C, et al.",
        "2020",
        "International framework for red flags for potential serious spinal pathologies",
        "J Orthop Sports Phys Ther 50(7):350-372",
        "Adults with spinal pain; other groups of symptoms by clinical consensus",
        "From memory; our own wording",
    ),
    Source(
        "iso-8601",
        "International Organization for Standardization",
        "2019",
        "ISO 8601-1: Date and time, representations for information interchange",
        "Standard",
        "Not a clinical source",
        "From memory: weeks begin on Monday",
    ),
    Source(
        "house",
        "The makers of Steadfoot",
        "2026",
        "Choices of this project, or common practice without a source",
        "backend/decisions",
        "None studied",
        "Written here",
    ),
)
BIBLIOGRAPHY: Final = {work.key: work for work in _WORKS}
