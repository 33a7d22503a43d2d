"""The 24 invented people of the invented practice in Thornwater, and the ridge they want to cross."""

from collections.abc import Mapping
from dataclasses import dataclass, field

from steadfoot.demo.habits import Habit, Pain
from steadfoot.programs.content import Alternative
from steadfoot.rules.vocabulary import Sides

PRACTICE = "Thornwater Physical Therapy"
PRACTITIONER = "Maren Brandvold"
EMAIL = "maren@thornwater.example"
ZONE = "Europe/Vienna"
FIRST_WEEKS, DESCENT, PACK = "hips-and-knees-first-weeks", "descent-legs", "pack-and-trunk"
RIDGE = "Harrowcomb traverse"
_ALL_KIT = ("step", "stairs", "rail", "wall", "mat", "chair", "band", "pack", "towel", "table", "pillow")

_STANDING = Alternative(
    exercise="hip-hinge",
    variant="wall",
    sides=Sides.BOTH,
    reps_low=8,
    reps_high=12,
    reason="On days when getting down to the floor is hard.",
)


@dataclass(frozen=True, slots=True)
class Person:
    """One invented client.

    Attributes:
        age: in years, today.
        template: code of the template their program was laid out from; None: no program yet.
        weeks_in: how many weeks ago the program began.
        trip_in_weeks: when the trip begins, from today.
        paired: whether a phone was paired.
        cleared_by: who gave the go-ahead that their health asked for; None: none was needed.
        body_mass_kg: without a pack.
        instead: what they may do instead, by the key of the prescription.
        season_weeks: for how many weeks before the trip their program was planned as a season; None: by hand.
    """

    name: str
    age: int
    template: str | None
    habit: Habit = field(default_factory=Habit)
    weeks_in: int = 8
    trip: str = RIDGE
    trip_in_weeks: int = 6
    usual_pain: int = 0
    kit: tuple[str, ...] = _ALL_KIT
    paired: bool = True
    cleared_by: str | None = None
    body_mass_kg: float = 68.0
    season_weeks: int | None = None
    instead: Mapping[str, Alternative] = field(default_factory=dict)


PEOPLE = (
    Person(
        "Emil Tarrow",
        47,
        DESCENT,
        Habit(
            keeps=0.95,
            pains=(
                Pain("knee", "right", "step-down", (0, 1, 0, 1, 2, 2, 3, 5, 5), (0, 0, 0, 0, 1, 1, 2, 4, 4), "front"),
                Pain("achilles", "left", "heel-raise", (2, 1, 1, 0, 0, 0, 0, 0, 0)),
            ),
            notes={7: "Knee was fine on the way up. Only going down."},
        ),
        usual_pain=1,
        body_mass_kg=79,
    ),
    Person(
        "Greta Sommerfeld",
        58,
        FIRST_WEEKS,
        Habit(keeps=0.97, keeps_lately=0.12, sends_every_days=1, notes={6: "My mother is in hospital. Not much time."}),
        trip="Lantern loop",
        trip_in_weeks=3,
    ),
    Person(
        "Walt Imhoff",
        71,
        FIRST_WEEKS,
        Habit(keeps=1.0, effort_lately=3, sends_every_days=1),
        trip="Coldwell walk",
        trip_in_weeks=10,
    ),
    Person("Noor Bellamy", 29, DESCENT, Habit(keeps=0.98, silent_days=9, notes={5: "Kettle Hut again next week."})),
    Person("Joss Penhallow", 34, PACK, Habit(keeps=0.9, sets_share=0.94, silent_days=6, sends_every_days=6)),
    Person("Dora Vance", 55, PACK, Habit(keeps=1.0, sends_every_days=1)),
    Person(
        "Ines Calloway",
        62,
        FIRST_WEEKS,
        Habit(symptom="calf_swelling", sends_every_days=1, notes={7: "Long bus ride home on Sunday."}),
    ),
    Person(
        "Tobias Renn",
        38,
        DESCENT,
        Habit(
            pains=(Pain("knee", "left", "split-squat", (0, 0, 0, 0, 1, 2, 3, 7, 6), (), "front"),), sends_every_days=1
        ),
    ),
    Person(
        "Halvard Oakes",
        66,
        FIRST_WEEKS,
        Habit(keeps=1.0, sets_share=1.0, effort_shift=-1, moves=0.0, over_goal={"heel-raise": 3, "squat": 2}),
    ),
    Person(
        "Mira Lindqvist",
        44,
        PACK,
        Habit(
            keeps=0.95, pause=(4, 5), notes={4: "Down with a fever. Back when it is gone.", 6: "Started again, easy."}
        ),
    ),
    Person("Anselm Dray", 25, DESCENT, Habit(keeps=1.0, extra_walks=3, effort_shift=1, sends_every_days=1)),
    Person("Petra Holloway", 51, DESCENT, Habit(keeps=0.85, sets_share=0.9)),
    Person(
        "Ruben Ashdown",
        60,
        FIRST_WEEKS,
        Habit(pains=(Pain("lower_back", "middle", "hip-bridge", (3, 3, 2, 2, 2, 1, 1, 0, 0)),)),
        usual_pain=2,
    ),
    Person(
        "Sanne Verhage",
        33,
        PACK,
        Habit(keeps=1.0, sets_share=1.0, effort_shift=-1, moves=0.0, over_goal={"dead-bug": 2, "step-up": 1}),
    ),
    Person(
        "Oskar Thistle",
        76,
        FIRST_WEEKS,
        Habit(keeps=0.95, effort_shift=1),
        trip="Coldwell walk",
        trip_in_weeks=10,
        cleared_by="Dr. Selma Oake, Thornwater",
    ),
    Person("Lene Marrow", 41, DESCENT, Habit(keeps=0.8, moves=0.5, sets_share=0.95)),
    Person(
        "Caspar Wold",
        52,
        PACK,
        Habit(pains=(Pain("shoulder", "right", "pack-carry", (0, 0, 1, 2, 1, 1, 2, 1, 1)),)),
        usual_pain=1,
    ),
    Person("Freya Dunmore", 68, FIRST_WEEKS, Habit(keeps=0.94, sets_share=0.97), trip="Lantern loop", trip_in_weeks=3),
    Person("Ilya Brandt", 36, DESCENT, Habit(keeps=0.55, keeps_lately=0.6)),
    Person(
        "Yara Quill",
        30,
        DESCENT,
        Habit(keeps=1.0, sets_share=1.0, effort_shift=-2, moves=0.0, over_goal={"heel-raise": 2, "split-squat": 1}),
        weeks_in=3,
        trip_in_weeks=11,
    ),
    Person(
        "Bastian Kerr",
        57,
        PACK,
        Habit(keeps=1.0, moves=0.0, notes={1: "The Saturday walk fits well. Took the dog."}),
        weeks_in=3,
        trip_in_weeks=4,
        season_weeks=7,
    ),
    Person("Nele Farrow", 48, FIRST_WEEKS, Habit(keeps=0.9), weeks_in=1, trip_in_weeks=13),
    Person("Jonna Stroud", 64, FIRST_WEEKS, weeks_in=0, trip_in_weeks=14, paired=False, instead={"bridge": _STANDING}),
    Person("Marek Sorrel", 45, None, paired=False),
)
