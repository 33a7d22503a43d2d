"""The moving drawing: each outline once, and CSS keyframes for the few motions that the outlines share.

Without CSS animation the file shows the poster pose, so it is a correct still everywhere.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import groupby

import numpy as np

from steadfoot.exercises.figures import outline, tracks
from steadfoot.exercises.figures.draw import still, used_classes
from steadfoot.exercises.figures.items import Item
from steadfoot.exercises.figures.links import Link
from steadfoot.exercises.figures.scene import Scene, classes, element, ground_line, svg
from steadfoot.exercises.figures.tracks import Array, Track

REACH = 250.0
"""House: how far from its joint an error of an angle or a stretch is weighed, in drawing units."""

FADE = 4
"""House: percent of its time in which a picture that starts over comes, and goes."""


@dataclass(frozen=True, slots=True)
class Piece:
    """What is drawn, and the track that moves it."""

    track: int
    markup: str


def moving(scene: Scene) -> str:
    """Draw the movement; a figure with one key pose only is a still."""
    if len(scene.samples) == 1:
        return still(scene)
    found, pieces = _pieces(scene)
    groups = [
        (which, "".join(piece.markup for piece in same)) for which, same in groupby(pieces, key=lambda p: p.track)
    ]
    body = ground_line(scene) + "".join(_group(which, found[which], markup, scene.poster) for which, markup in groups)
    frames = "".join(_keyframes(which, track) for which, track in enumerate(found) if not track.still)
    return svg(scene.frame, body, used_classes(scene), scene.line_css + _timing(scene) + frames)


def _timing(scene: Scene) -> str:
    movement = scene.figure.movement
    way = "" if movement.cycle or movement.again else " alternate"
    run = f"g{{animation:{movement.seconds:g}s linear infinite{way}}}"
    fade = _fade(movement.seconds) if movement.again else ""
    return f"{run}{fade}@media(prefers-reduced-motion:reduce){{{'svg,' * movement.again}g{{animation:none!important}}}}"


def _fade(seconds: float) -> str:
    """Answer how a picture goes and comes where it starts over, so that the leap is not taken for a movement."""
    return (
        f"svg{{animation:{seconds:g}s linear infinite;animation-name:again}}"
        f"@keyframes again{{0%,100%{{opacity:0}}{FADE}%,{100 - FADE}%{{opacity:1}}}}"
    )


def _pieces(scene: Scene) -> tuple[list[Track], list[Piece]]:
    found = [tracks.room(len(scene.samples), scene.poster)]
    pieces = [_piece(scene, item, found) for item in scene.items]
    bands = [_band(scene, link, found) for link in scene.links]
    place = scene.before_links
    return found, [*pieces[:place], *bands, *pieces[place:]]


def _piece(scene: Scene, item: Item, found: list[Track]) -> Piece:
    spots = tracks.spots_of(scene.camera, scene.samples, item.shape.bone, item.shape.spheres)
    which = next((i for i, track in enumerate(found) if tracks.rides(track, spots)), None)
    if which is None:
        which = len(found)
        found.append(_follow(scene, item))
    track = found[which]
    seen = spots[track.template]
    data = outline.path(np.column_stack((track.local(seen[:, :2]), seen[:, 2])))
    return Piece(which, element(classes(item), data))


def _follow(scene: Scene, item: Item) -> Track:
    bone = item.shape.bone
    spheres = tuple(s for other in scene.items if other.shape.bone == bone for s in other.shape.spheres)
    spots = tracks.spots_of(scene.camera, scene.samples, bone, spheres)
    joints = np.array([scene.camera.paper @ sample.skeleton.at[bone] for sample in scene.samples])
    return tracks.follow(bone, joints, spots)


def _band(scene: Scene, link: Link, found: list[Track]) -> Piece:
    rows = np.array([link.matrix(scene.camera, sample.skeleton) for sample in scene.samples])
    matrices = np.stack((rows[:, [0, 2, 4]], rows[:, [1, 3, 5]]), axis=1)
    found.append(Track(link.start, 0, matrices, None))
    return Piece(len(found) - 1, element(link.css, link.path))


def _group(which: int, track: Track, markup: str, poster: int) -> str:
    if track.still:
        return markup
    at_rest = _transform(track, poster, "")
    return f'<g style="animation-name:m{which}" transform="{at_rest}">{markup}</g>'


def _number(value: float, places: int) -> str:
    """Answer a number with few places, without a needless zero or sign: -0.0 is 0, 0.50 is .5."""
    text = f"{value:.{places}f}"
    if "." in text:
        text = text.rstrip("0").rstrip(".")
    text = text.replace("0.", ".", 1) if text.startswith(("0.", "-0.")) else text
    return "0" if text in ("-0", "", "-") else text


def _transform(track: Track, row: int, px: str) -> str:
    if track.rigid is not None:
        angle, x, y = track.rigid[row]
        unit = "deg" if px else ""
        comma = "," if px else " "
        moved = f"translate({_number(x, 0)}{px}{comma}{_number(y, 0)}{px})"
        return f"{moved}rotate({_number(float(np.degrees(angle)), 1)}{unit})"
    (a, c, x), (b, d, y) = track.matrices[row]
    numbers = [_number(n, 3) for n in (a, b, c, d)] + [_number(n, 0) for n in (x, y)]
    return f"matrix({','.join(numbers)})"


def _keyframes(which: int, track: Track) -> str:
    rows = _rows(track)
    last = len(track.matrices) - 1
    steps = _steps(track, rows, last)
    return f"@keyframes m{which}{{{''.join(steps)}}}"


def _steps(track: Track, rows: list[int], last: int) -> Iterator[str]:
    for row in rows:
        yield f"{_number(100 * row / last, 1)}%{{transform:{_transform(track, row, 'px')}}}"


def _rows(track: Track) -> list[int]:
    if track.rigid is not None:
        return tracks.keep(track.rigid, np.array([REACH, 1.0, 1.0]), tracks.TOLERANCE)
    flat: Array = track.matrices.reshape(len(track.matrices), 6)
    return tracks.keep(flat, np.array([REACH, REACH, 1.0] * 2), tracks.TOLERANCE)
