"""What a pose file may say. Strict: a misspelt field is refused with its name."""

from typing import Annotated, Literal

from pydantic import BaseModel, ConfigDict, Field, StringConstraints

Name = Annotated[str, StringConstraints(pattern=r"^[a-z][a-z0-9-]{0,39}$")]
Named = Annotated[str, StringConstraints(max_length=40)]
Length = Annotated[float, Field(ge=-2, le=2)]
Angle = Annotated[float, Field(ge=-360, le=360)]
Place = tuple[Length, Length, Length]
Extent = Annotated[float, Field(ge=0.001, le=2)]
Size = tuple[Extent, Extent, Extent]
Angles = tuple[Angle, Angle, Angle]
Direction = tuple[Length, Length, Length]
View = Literal["side", "left", "front", "back", "quarter", "quarter-left"]
Group = Literal["arm.L", "arm.R", "leg.L", "leg.R", "trunk", "beside", "behind", "band", "pack", "seat"]
Condition = Annotated[
    str, StringConstraints(pattern=r"^(mass\.[xyz]|(knee|elbow)\.[LR]|[a-z]+(\.[LR])?\.[xyz])$", max_length=40)
]


class Part(BaseModel):
    """Refuses what it does not know."""

    model_config = ConfigDict(extra="forbid", frozen=True, populate_by_name=True)


class Pelvis(Part):
    """Place of the middle between the hip joints, and its turn: left, forward, to the right are positive."""

    x: Length | None = None
    y: Length | None = None
    z: Length | None = None
    turn: Angle | None = None
    tilt: Angle | None = None
    lean: Angle | None = None


class Bend(Part):
    """Bend of spine or neck: forward, to the right, turned to the left are positive."""

    flexion: Angle | None = None
    lean: Angle | None = None
    turn: Angle | None = None


class Shoulders(Part):
    """How far the shoulder blades carry both shoulder joints along the thorax: forward (apart), up."""

    forward: Length | None = None
    up: Length | None = None


class Foot(Part):
    """A foot with a place: the point of the floor below the ankle when flat."""

    at: Place | None = None
    heading: Angle | None = Field(None, description="Toes outward.")
    inversion: Angle | None = Field(None, description="Sole inward is positive, outward negative.")
    arch: Angle | None = Field(None, description="Arch drawn up, by as much at its two ends; seen on bare feet.")
    pitch: Angle | None = Field(None, description="Heel up is positive and bends the toes; toes up is negative.")
    knee_out: Angle | None = Field(None, description="Knee outward of the toes.")
    pivot: Literal["ball"] | None = Field(None, description="Stands on an edge: the heel may sink.")


class Leg(Part):
    """A leg told by its angles; hip: flexion, abduction, external rotation."""

    hip: Angles | None = None
    knee: Angle | None = None
    ankle: Angle | None = Field(None, description="Toes toward the shin are positive.")
    inversion: Angle | None = Field(None, description="Sole inward is positive, outward negative.")
    toe: Angle | None = None


class Hand(Part):
    """A hand with a place: that of the wrist."""

    at: Place | None = None
    measured_in: Literal["world", "pelvis", "thorax", "head", "thigh"] | None = Field(None, alias="in")
    fingers: Direction | None = Field(None, description="Where they point; zeros: on from the forearm.")
    elbow: Direction | None = Field(None, description="Where the elbow points, in the thorax' frame.")
    grip: bool | None = None


class Arm(Part):
    """An arm told by its angles; shoulder: flexion, abduction, external rotation."""

    shoulder: Angles | None = None
    elbow: Angle | None = None
    wrist: Angle | None = None
    grip: bool | None = None


class PosePart(Part):
    """A pose, or what changes in it. A limb without a side means both, mirrored."""

    pelvis: Pelvis | None = None
    spine: Bend | None = None
    neck: Bend | None = None
    shoulders: Shoulders | None = None
    foot: Foot | None = None
    foot_l: Foot | None = Field(None, alias="foot.L")
    foot_r: Foot | None = Field(None, alias="foot.R")
    leg: Leg | None = None
    leg_l: Leg | None = Field(None, alias="leg.L")
    leg_r: Leg | None = Field(None, alias="leg.R")
    hand: Hand | None = None
    hand_l: Hand | None = Field(None, alias="hand.L")
    hand_r: Hand | None = Field(None, alias="hand.R")
    arm: Arm | None = None
    arm_l: Arm | None = Field(None, alias="arm.L")
    arm_r: Arm | None = Field(None, alias="arm.R")
    aim: dict[Condition, Annotated[float, Field(ge=-360, le=360)]] = Field({}, max_length=8)


class Key(PosePart):
    """A key pose at its time, 0 to 1."""

    t: Annotated[float, Field(ge=0, le=1)]


class Prop(Part):
    """A thing in the picture; which fields it needs depends on its kind."""

    kind: Literal[
        "box", "wall", "mat", "chair", "table", "rail", "pillow", "dumbbell", "band", "pack", "towel", "star", "ball"
    ]
    at: Place | None = Field(None, description="Middle of its foot print; of a carried pack, from between the palms.")
    size: Size | None = Field(None, description="Depth along x, width along y, height.")
    faces: Angle = Field(0, description="Direction its front looks, turned from x toward y.")
    slope: Annotated[float, Field(ge=-2, le=2)] = Field(0, description="Rise of a rail toward its front, for its run.")
    hands: list[Literal["L", "R"]] = Field([], max_length=2)
    under: list[Literal["L", "R"]] = Field(
        [], max_length=2, description="Heels that a towel lies under and slides along with."
    )
    ends: tuple[Named, Named] | None = Field(None, description="Named points that a band or towel joins.")
    anchor: Place | None = Field(None, description="A fixed end instead of the second point.")
    mass: Annotated[float, Field(ge=0, le=1)] | None = Field(None, description="As a fraction of body mass.")
    behind: bool = Field(False, description="Drawn behind the person in a front view.")


class Movement(Part):
    """One variant, complete."""

    views: list[View] = Field(min_length=1, max_length=3)
    seconds: Annotated[float, Field(ge=0.4, le=12)] = Field(description="One way, or one round of a cycle.")
    cycle: bool = False
    barefoot: bool = False
    again: bool = Field(False, description="Starts over after the last key: going back would be another movement.")
    working: list[Named] = Field(max_length=6)
    props: dict[Name, Prop] = Field({}, max_length=6)
    contacts: list[Named] = Field(max_length=12, description="Parts that bear weight all the time; none in walking.")
    balance: Literal["always", "keys", "moving"] = "always"
    poster: Name
    strip: list[Name] = Field(min_length=1, max_length=4)
    mark: Named | None = Field(None, description="Named point that the first cue is about.")
    lift: list[Group] = Field([], max_length=10, description="Drawn last, over all else.")
    frame: dict[View, Annotated[list[Named], Field(max_length=8)]] = Field(
        {}, description="Named points that the picture of a view closes in on."
    )
    sink: list[Group] = Field([], max_length=10, description="Drawn first, behind all else.")
    solve: dict[Annotated[str, StringConstraints(max_length=40)], Condition] = Field({}, max_length=4)
    base: PosePart
    keys: dict[Name, Key] = Field(min_length=1, max_length=9)
