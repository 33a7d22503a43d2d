"""The still drawing: one pose as a complete SVG, for lists and for paper."""

from steadfoot.exercises.figures.links import Link
from steadfoot.exercises.figures.scene import Scene, classes, element, ground_line, outline_of, svg
from steadfoot.exercises.figures.skeleton import Skeleton


def used_classes(scene: Scene) -> set[str]:
    """Answer the classes that a scene's outlines use."""
    bare = {"n"} if any(item.shape.bare for item in scene.items) else set()
    return {item.css for item in scene.items} | {link.css for link in scene.links} | bare


def figure_at(scene: Scene, skeleton: Skeleton) -> str:
    """Answer every outline of one pose, from back to front."""
    drawn = [element(classes(item), outline_of(item, scene.camera, skeleton)) for item in scene.items]
    bands = [_link(link, scene, skeleton) for link in scene.links]
    place = scene.before_links
    return "".join([*drawn[:place], *bands, *drawn[place:]])


def _link(link: Link, scene: Scene, skeleton: Skeleton) -> str:
    matrix = " ".join(f"{number:.2f}" for number in link.matrix(scene.camera, skeleton))
    return f'<path class="{link.css}" transform="matrix({matrix})" d="{link.path}"/>'


def still(scene: Scene) -> str:
    """Draw the poster pose."""
    body = ground_line(scene) + figure_at(scene, scene.samples[scene.poster].skeleton)
    return svg(scene.frame, body, used_classes(scene), scene.line_css)
