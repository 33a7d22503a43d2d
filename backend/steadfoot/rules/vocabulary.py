"""Words that tables, request bodies and rules share."""

from enum import StrEnum


class Region(StrEnum):
    """A place on the body, as a client can name it."""

    HEAD = "head"
    NECK = "neck"
    SHOULDER = "shoulder"
    UPPER_ARM = "upper_arm"
    ELBOW = "elbow"
    FOREARM = "forearm"
    HAND = "hand"
    CHEST = "chest"
    ABDOMEN = "abdomen"
    UPPER_BACK = "upper_back"
    LOWER_BACK = "lower_back"
    HIP = "hip"
    GROIN = "groin"
    BUTTOCK = "buttock"
    THIGH = "thigh"
    KNEE = "knee"
    SHIN = "shin"
    CALF = "calf"
    ACHILLES = "achilles"
    ANKLE = "ankle"
    FOOT = "foot"


class Side(StrEnum):
    """Side of the body, as the client sees their own."""

    LEFT = "left"
    RIGHT = "right"
    BOTH = "both"
    MIDDLE = "middle"


class Aspect(StrEnum):
    """Which face of a region."""

    FRONT = "front"
    BACK = "back"
    INNER = "inner"
    OUTER = "outer"


class When(StrEnum):
    """When a pain was felt, seen from the exercise."""

    BEFORE = "before"
    DURING = "during"
    AFTER = "after"
    NEXT_MORNING = "next_morning"


class Feel(StrEnum):
    """What a pain felt like."""

    ACHING = "aching"
    SHARP = "sharp"
    BURNING = "burning"
    STIFF = "stiff"
    PINCHING = "pinching"
    NUMB = "numb"
    GIVING_WAY = "giving_way"


class Symptom(StrEnum):
    """A sign that training must stop and someone be asked."""

    CHEST_PAIN = "chest_pain"
    FAINTING = "fainting"
    BREATHLESS = "breathless"
    PALPITATIONS = "palpitations"
    ONE_SIDED_WEAKNESS = "one_sided_weakness"
    WORST_HEADACHE = "worst_headache"
    SADDLE_NUMBNESS = "saddle_numbness"
    BLADDER_OR_BOWEL = "bladder_or_bowel"
    CALF_SWELLING = "calf_swelling"
    CANNOT_BEAR_WEIGHT = "cannot_bear_weight"
    HEEL_SNAP = "heel_snap"
    HOT_JOINT_FEVER = "hot_joint_fever"
    NIGHT_BONE_PAIN = "night_bone_pain"
    FEVER = "fever"
    DARK_URINE = "dark_urine"
    HEAT_CONFUSION = "heat_confusion"
    OTHER = "other"


class LeftOut(StrEnum):
    """Why a client left a set out."""

    PAIN = "pain"
    TOO_HARD = "too_hard"
    NO_TIME = "no_time"
    NO_KIT = "no_kit"
    OTHER = "other"


class Kit(StrEnum):
    """What a movement needs to be done at home."""

    CHAIR = "chair"
    STEP = "step"
    STAIRS = "stairs"
    WALL = "wall"
    MAT = "mat"
    BAND = "band"
    DUMBBELL = "dumbbell"
    PACK = "pack"
    TOWEL = "towel"
    BALL = "ball"
    RAIL = "rail"
    TABLE = "table"
    PILLOW = "pillow"


class Sides(StrEnum):
    """Whether a dose is for each side in turn or for both together."""

    EACH = "each"
    BOTH = "both"


class Status(StrEnum):
    """What is known of a planned session."""

    DONE = "done"
    PARTLY = "partly"
    OPEN = "open"
    MISSED = "missed"
    NOT_HEARD = "not_heard"
    TO_COME = "to_come"
