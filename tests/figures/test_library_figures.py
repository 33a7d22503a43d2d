"""Every variant that is drawn: what a body cannot do is in none, and every drawing is small and whole."""

import gzip
import re
import statistics
import xml.etree.ElementTree as ET

import pytest

from steadfoot.exercises.figures.animate import moving
from steadfoot.exercises.figures.checks import findings
from steadfoot.exercises.figures.draw import still
from steadfoot.exercises.figures.scene import scene
from steadfoot.exercises.figures.strip import strip
from steadfoot.exercises.service import library
from tests.figures.conftest import FIGURES

STILL_MAX, MOVING_MEDIAN_MAX, LIBRARY_MAX = 2048, 4096, 700_000
# A group each, so that one worker solves a movement and makes all of its drawings.
NAMES = [pytest.param(name, marks=pytest.mark.xdist_group(name)) for name in FIGURES]
VIEWS = [
    pytest.param(name, view, marks=pytest.mark.xdist_group(name))
    for name, figure in FIGURES.items()
    for view in figure.movement.views
]


def packed(svg):
    return len(gzip.compress(svg.encode(), 9))


@pytest.mark.parametrize("name", NAMES)
def test_every_sample_holds_every_check(name, moved):
    assert findings(FIGURES[name], moved(name)) == []


@pytest.mark.parametrize("name", NAMES)
def test_a_figure_is_of_a_variant_of_the_library(name):
    code, variant = name.split()
    assert variant in {rung.variant for rung in library()[code].ladder}


@pytest.mark.parametrize("name", NAMES)
def test_a_cycle_ends_where_it_began(name):
    keys = FIGURES[name].task.keys
    if keys.cycle:
        assert keys.numbers[0] == pytest.approx(keys.numbers[-1])


# Of the moving ones, which take half a second each, every third; the command `sizes` makes them all.
@pytest.mark.parametrize(
    ("name", "view", "draw"),
    [
        pytest.param(*one.values, draw, marks=one.marks)
        for draw, some in ((still, VIEWS), (strip, VIEWS), (moving, VIEWS[::3]))
        for one in some
    ],
)
def test_every_drawing_is_whole(name, view, draw, moved):
    svg = draw(scene(FIGURES[name], view, moved(name)))
    assert not re.search(r"nan|\binf\b|None|\de-\d", svg)
    root = ET.fromstring(svg)
    classes = {one for node in root.iter() for one in node.get("class", "").split()}
    style = root[0].text
    assert all(f".{one}{{" in style for one in classes)
    assert all(node.get("d", "M").startswith("M") for node in root.iter())
    named = re.findall(r"animation-name:(\w+)", svg)
    assert set(named) == set(re.findall(r"@keyframes (\w+)", svg))
    _, _, width, height = map(float, root.get("viewBox").split())
    assert 100 < width < 6000
    assert 100 < height < 1700


def test_a_strip_shows_with_an_arrow_how_far_the_pelvis_sinks(moved):
    assert 'class="a"' in strip(scene(FIGURES["wall-sit level"], samples=moved("wall-sit level")))


def test_a_pelvis_that_only_goes_back_has_no_arrow_down(moved):
    assert 'class="a"' not in strip(scene(FIGURES["hip-hinge wall"], samples=moved("hip-hinge wall")))


@pytest.mark.parametrize(("name", "view"), VIEWS)
def test_a_still_is_small(name, view, moved):
    assert packed(still(scene(FIGURES[name], view, moved(name)))) <= STILL_MAX


@pytest.fixture(scope="module")
def moving_sizes(moved):
    """Packed sizes of every fifth: all would take as long as all other tests; the command `sizes` tells of all."""
    return [packed(moving(scene(FIGURES[name], samples=moved(name)))) for name in list(FIGURES)[::5]]


@pytest.mark.xdist_group("moving sizes")
def test_the_median_moving_drawing_is_small(moving_sizes):
    assert statistics.median(moving_sizes) <= MOVING_MEDIAN_MAX


@pytest.mark.xdist_group("moving sizes")
def test_a_phone_keeps_the_whole_library_in_few_bytes(moving_sizes):
    """A phone keeps the moving drawings alone. Of a sample: two standard errors more than its mean for each variant."""
    variants = sum(len(entry.ladder) for entry in library().values())
    error = statistics.stdev(moving_sizes) / len(moving_sizes) ** 0.5
    assert variants * (statistics.mean(moving_sizes) + 2 * error) <= LIBRARY_MAX


# Every tenth: what a service worker takes out of the file that a phone keeps. A test in a browser looks at it.
@pytest.mark.parametrize("name", NAMES[::10])
def test_a_moving_drawing_without_its_movement_holds_every_outline_of_the_still_one(name, moved):
    seen = scene(FIGURES[name], samples=moved(name))
    rest = re.sub(r"(?s)g\{animation:.*?(?=</style>)", "", moving(seen))
    drawn, wanted = ET.fromstring(rest), ET.fromstring(still(seen))
    assert drawn[0].text == wanted[0].text
    assert _outlines(drawn) == _outlines(wanted)


def _outlines(drawing):
    return [node.get("class") for node in drawing.iter() if "d" in node.attrib]


@pytest.mark.parametrize("name", NAMES)
def test_a_key_is_at_a_sample_so_that_a_strip_shows_it(name, moved):
    times = [sample.time for sample in moved(name)]
    for key in FIGURES[name].movement.keys.values():
        assert min(abs(time - key.t) for time in times) <= 0.0101
