"""The bibliography: where each number that changes advice comes from, and of what kind it is."""

from dataclasses import dataclass
from enum import StrEnum
from types import ModuleType
from typing import Final, get_args

from steadfoot.rules.work import Source
from steadfoot.rules.works_walking import WALKING_WORKS


class Kind(StrEnum):
    """How much weight a number can bear."""

    PUBLISHED = "published"
    """Copied from the source."""
    DERIVED = "derived"
    """Follows from published numbers by arithmetic that the docstring shows."""
    HOUSE = "house"
    """Our own choice, or common practice without a source. A practice may set it otherwise."""


@dataclass(frozen=True, slots=True)
class Cited:
    """Annotation of a constant: its kind, the key of its source and the place in it or the reason for it."""

    kind: Kind
    source: str
    note: str


def house(note: str) -> Cited:
    """Answer the citation of a choice of our own, with the reason for it."""
    return Cited(Kind.HOUSE, "house", note)


def plausible(note: str) -> Cited:
    """Answer the citation of an edge of what can be, beyond which a number is taken for a slip of the finger."""
    return house(f"Plausible range, to catch slips of the finger: {note}")


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
        "ratamess-2009",
        "American College of Sports Medicine (Ratamess NA, et al.)",
        "2009",
        "Progression models in resistance training for healthy adults (position stand)",
        "Med Sci Sports Exerc 41(3):687-708",
        "Healthy adults; replaced in 2026 by a stand that leaves more to the practitioner",
        "Summaries",
    ),
    Source(
        "baechle-2008",
        "Baechle TR, Earle RW",
        "2008",
        "Essentials of Strength Training and Conditioning",
        "Textbook, Human Kinetics",
        "People who train with weights",
        "Pages that quote the textbook; the year of the edition from memory",
    ),
    Source(
        "foster-1998",
        "Foster C",
        "1998",
        "Monitoring training in athletes with reference to overtraining syndrome",
        "Med Sci Sports Exerc 30(7):1164-1168",
        "Competitive athletes",
        "Restatements of the two definitions; that the deviation is the sample's is our reading",
    ),
    Source(
        "williams-2017",
        "Williams S, West S, Cross MJ, Stokes KA",
        "2017",
        "Better way to determine the acute:chronic workload ratio?",
        "Br J Sports Med 51(3):209-210",
        "Invented athletes in a letter; only its averages are used here, not its ratio",
        "Whole text",
    ),
    Source(
        "impellizzeri-2021",
        "Impellizzeri FM, Woodcock S, Coutts AJ, Fanchini M, McCall A, Vigotsky AD",
        "2021",
        "What role do chronic workloads play in the acute to chronic workload ratio? Time to dismiss ACWR and its "
        "underlying theory",
        "Sports Med 51:581-592",
        "Footballers, analysed again",
        "Abstract",
    ),
    Source(
        "riebe-2015",
        "Riebe D, Franklin BA, Thompson PD, Garber CE, Whitfield GP, Magal M, Pescatello LS",
        "2015",
        "Updating ACSM's recommendations for exercise preparticipation health screening",
        "Med Sci Sports Exerc 47(11):2473-2479",
        "Adults who want to begin or go on with exercise",
        "A public program and a guideline chapter that restate the table; the 12 months from memory",
    ),
    Source(
        "rikli-1999",
        "Rikli RE, Jones CJ",
        "1999",
        "Functional fitness normative scores for community-residing older adults, ages 60-94",
        "J Aging Phys Act 7:162-181; lower bounds as in the CDC's STEADI",
        "Older adults living at home, 60 to 94 years",
        "Pages that restate it: all lower bounds, upper bounds of 60 to 69; the other upper bounds from memory",
    ),
    Source(
        "springer-2007",
        "Springer BA, Marin R, Cyhan T, Roberts H, Gill NW",
        "2007",
        "Normative values for the unipedal stance test with eyes open and closed",
        "J Geriatr Phys Ther 30(1):8-15",
        "549 healthy people, 18 to 99 years",
        "Abstract; eyes closed, best of three, by a research note; eyes open from memory",
    ),
    Source(
        "mcgill-1999",
        "McGill SM, Childs A, Liebenson C",
        "1999",
        "Endurance times for low back stabilization exercises: clinical targets for testing and training from a "
        "normal database",
        "Arch Phys Med Rehabil 80(8):941-944",
        "31 men and 44 women, young and healthy",
        "Abstract; the seconds from memory, they reproduce the abstract's ratios",
    ),
    Source(
        "hebert-losier-2017",
        "Hebert-Losier K, Wessman C, Alricsson M, Svantesson U",
        "2017",
        "Updated reliability and normative values for the standing heel-rise test in healthy adults",
        "Physiotherapy 103(4):446-452",
        "566 healthy people, 20 to 81 years",
        "Abstract; its equations by age were in no public text",
    ),
    Source(
        "enright-1998",
        "Enright PL, Sherrill DL",
        "1998",
        "Reference equations for the six-minute walk in healthy adults",
        "Am J Respir Crit Care Med 158(5):1384-1387",
        "Healthy adults, 40 to 80 years",
        "About ten public programs that agree",
    ),
    Source(
        "piva-2006",
        "Piva SR, Fitzgerald K, Irrgang JJ, et al.",
        "2006",
        "Reliability of measures of impairments associated with patellofemoral pain syndrome",
        "BMC Musculoskelet Disord 7:33",
        "People with patellofemoral pain",
        "A review's table of the items; the bands by a clinician's page",
    ),
    Source(
        "plisky-2006",
        "Plisky PJ, Rauh MJ, Kaminski TW, Underwood FB",
        "2006",
        "Star Excursion Balance Test as a predictor of lower extremity injury in high school basketball players",
        "J Orthop Sports Phys Ther 36(12):911-919",
        "235 basketball players of school age: its cut-offs are not for adults who hike",
        "Abstract",
    ),
    Source(
        "weir-2005",
        "Weir JP",
        "2005",
        "Quantifying test-retest reliability using the intraclass correlation coefficient and the SEM",
        "J Strength Cond Res 19:231-240",
        "Not a clinical population: arithmetic",
        "Formulas recomputed with public libraries",
    ),
    Source(
        "stratford-1995",
        "Stratford P, Gill C, Westaway M, Binkley J",
        "1995",
        "Assessing disability and change on individual patients: a report of a patient specific measure",
        "Physiother Can 47:258-263",
        "People with musculoskeletal complaints",
        "A form reproduced with permission",
    ),
    Source(
        "golding-2000",
        "Golding LA",
        "2000",
        "YMCA Fitness Testing and Assessment Manual",
        "Book",
        "Adults who use fitness centres",
        "From memory; only the youngest row of its step-test table was seen in a public program",
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
BIBLIOGRAPHY: Final = {work.key: work for work in (*_WORKS, *WALKING_WORKS)}


def citation(module: ModuleType, name: str) -> Cited:
    """Answer the citation written beside a constant of a module, typed ``Final[Annotated[..., Cited(...)]]``."""
    (annotated,) = get_args(module.__annotations__[name])
    found: Cited = next(extra for extra in annotated.__metadata__ if isinstance(extra, Cited))
    return found
