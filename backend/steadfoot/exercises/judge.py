"""Looks the drawings of a practice's own movement over: refused with the field, or kept with findings."""

from collections.abc import Mapping

from steadfoot.core.problems import Invalid
from steadfoot.exercises.figures.checks import findings
from steadfoot.exercises.figures.motion import Sample, move
from steadfoot.exercises.figures.patch import PoseFileBroken
from steadfoot.exercises.figures.read import Figure, figure_of
from steadfoot.exercises.figures.schema import Movement
from steadfoot.exercises.own_schemas import Fault, FindingOut, OwnBody


def figure_or_refuse(variant: str, movement: Movement, pointer: str) -> Figure:
    """Answer a movement ready to be drawn.

    Raises:
        Invalid: it does not hold together; the pointer leads to the field.
    """
    try:
        return figure_of("own", variant, movement)
    except PoseFileBroken as error:
        field, _, detail = str(error).partition(": ")
        place = "/".join((pointer, *field.split(".")))
        raise Invalid("pose", str(error), errors=[{"pointer": place, "code": "pose", "detail": detail}]) from error


def found_in(figure: Figure, samples: list[Sample]) -> list[FindingOut]:
    """Answer what the checks find."""
    told = (one.partition(": ") for one in findings(figure, samples))
    return [FindingOut(fault=Fault(fault), detail=detail) for fault, _, detail in told]


def judge(body: OwnBody) -> dict[str, list[FindingOut]]:
    """Answer the findings of each drawn variant. Takes up to half a second a variant.

    Raises:
        Invalid: a drawing does not hold together, or is of no variant of the ladder.
    """
    _refuse_strangers({rung.variant for rung in body.text.ladder}, body.poses)
    figures = {
        variant: figure_or_refuse(variant, movement, f"/body/poses/{variant}")
        for variant, movement in body.poses.items()
    }
    return {variant: found_in(figure, move(figure.task)) for variant, figure in figures.items()}


def _refuse_strangers(known: set[str], poses: Mapping[str, Movement]) -> None:
    for variant in poses:
        if variant not in known:
            detail = "This drawing is of no variant of the ladder."
            raise Invalid(
                "pose", detail, errors=[{"pointer": f"/body/poses/{variant}", "code": "unknown", "detail": detail}]
            )
