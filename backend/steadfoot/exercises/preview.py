"""What the pose editor is answered: the movement with a change, drawn and looked over, with handles and sliders."""

from collections.abc import Mapping
from dataclasses import asdict, replace

from steadfoot.core.problems import Invalid, not_found
from steadfoot.exercises.drawings import poses
from steadfoot.exercises.figures.animate import moving
from steadfoot.exercises.figures.camera import CAMERAS
from steadfoot.exercises.figures.controls import HANDLES, controls, mirrored
from steadfoot.exercises.figures.drag import dragged, on_paper, solved_at
from steadfoot.exercises.figures.draw import still
from steadfoot.exercises.figures.explicit import explicit
from steadfoot.exercises.figures.motion import Keys, Sample, move
from steadfoot.exercises.figures.read import Figure
from steadfoot.exercises.figures.scene import Scene
from steadfoot.exercises.figures.schema import Movement
from steadfoot.exercises.judge import figure_or_refuse, found_in
from steadfoot.exercises.own_schemas import ControlOut, HandleOut, PreviewBody, PreviewOut

_POINTER = "/body/movement"


def start_from(code: str, variant: str, key: str | None) -> Movement:
    """Answer a drawn variant of the library, told in full, to begin from; one of its keys alone where asked.

    Raises:
        NotFound: no such drawing or key.
    """
    figure = poses().get(code, {}).get(variant)
    if figure is None or (key is not None and key not in figure.movement.keys):
        raise not_found("drawing")
    return _alone(figure, key) if key else explicit(figure, figure.task.keys, _samples(figure))


def _alone(figure: Figure, key: str) -> Movement:
    """Answer one key as a movement of its own, solved where the way there has brought it."""
    whole = explicit(figure, figure.task.keys, {one.time: one for one in move(figure.task)})
    only = {"keys": {key: whole.keys[key].model_copy(update={"t": 0.0})}, "poster": key, "strip": [key]}
    return whole.model_copy(update=only | {"cycle": False})


def preview(body: PreviewBody) -> PreviewOut:
    """Answer a movement with a change in one key.

    Raises:
        Invalid: the movement does not hold together, or a number or joint of the change is not one that can be set.
    """
    figure = figure_or_refuse("own", body.movement, _POINTER)
    place = _place(figure, body)
    before = figure.task.keys.numbers[place]
    numbers = _changed(figure, body, before)
    if body.mirror:
        numbers |= mirrored(figure, before, numbers)
    figure = _with(figure, place, numbers)
    samples = _samples(figure)
    here, whole = samples[figure.task.keys.times[place]], move(figure.task) if body.whole else list(samples.values())
    shown = replace(figure, movement=figure.movement.model_copy(update={"poster": body.key}))
    seen = Scene(shown, body.view, whole)
    told = explicit(figure, figure.task.keys, samples)
    return PreviewOut(
        movement=told,
        svg=moving(seen) if body.whole else still(seen),
        frame=seen.frame,
        findings=found_in(figure, whole),
        handles=_handles(here, body.view),
        controls=[ControlOut(**asdict(one)) for one in controls(figure, here.solved.numbers).values()],
    )


def _place(figure: Figure, body: PreviewBody) -> int:
    if body.key not in figure.movement.keys:
        raise _refused("/body/key", "There is no key pose of that name.")
    return figure.task.keys.times.index(figure.time_of(body.key))


def _refused(pointer: str, detail: str) -> Invalid:
    return Invalid("pose", detail, errors=[{"pointer": pointer, "code": "unknown", "detail": detail}])


def _samples(figure: Figure) -> dict[float, Sample]:
    """Solve each key by itself: a change of one must not move another."""
    keys = figure.task.keys
    return {time: solved_at(figure, told, time) for time, told in zip(keys.times, keys.numbers, strict=True)}


def _changed(figure: Figure, body: PreviewBody, numbers: Mapping[str, float]) -> dict[str, float]:
    known = controls(figure, numbers)
    if any(path not in known for path in body.set):
        raise _refused("/body/set", "There is no such number to set in this pose.")
    bounded = {path: min(max(value, known[path].low), known[path].high) for path, value in body.set.items()}
    changed = dict(numbers) | bounded
    if body.drag is None:
        return changed
    if body.drag.point not in HANDLES:
        raise _refused("/body/drag/point", "There is no such joint to take hold of.")
    return dragged(figure, changed, body.drag.point, body.drag.to, body.view)


def _with(figure: Figure, place: int, numbers: dict[str, float]) -> Figure:
    """Answer a figure with other numbers in one key; a number that is new is 0 in all others."""
    keys = figure.task.keys
    fresh = dict.fromkeys(numbers, 0.0)
    told = [fresh | (numbers if at == place else one) for at, one in enumerate(keys.numbers)]
    movement = explicit(figure, Keys(keys.times, tuple(told), keys.cycle))
    return figure_or_refuse(figure.variant, movement, _POINTER)


def _handles(sample: Sample, view: str) -> list[HandleOut]:
    spots = {name: on_paper(CAMERAS[view], sample, name) for name in HANDLES}
    return [HandleOut(point=name, x=round(float(x), 1), y=round(float(y), 1)) for name, (x, y) in spots.items()]
