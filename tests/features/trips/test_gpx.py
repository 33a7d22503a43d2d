"""Reading GPX files: honest ones, odd ones and hostile ones."""

import gzip
import io
import json
import tracemalloc
from pathlib import Path

import pytest

from steadfoot.rules.ranges import OutOfRange
from steadfoot.rules.route import TooFewPoints
from steadfoot.trips import gpx
from steadfoot.trips.gpx_bytes import FileTooLarge, PackedBadly
from steadfoot.trips.gpx_xml import NotGpx

HEAD = (
    '<?xml version="1.0" encoding="UTF-8"?>\n<gpx version="1.1" creator="t" xmlns="http://www.topografix.com/GPX/1/1">'
)
TWO = '<trkpt lat="46.00" lon="13"><ele>100</ele></trkpt><trkpt lat="46.01" lon="13"><ele>150</ele></trkpt>'


def track(points, head=HEAD):
    return f"{head}<trk><trkseg>{points}</trkseg></trk></gpx>"


def read(text):
    return gpx.read(io.BytesIO(text if isinstance(text, bytes) else text.encode()))


def says(text, words):
    return any(words in warning for warning in read(text).warnings)


def test_a_plain_track():
    found = read(track(TWO))
    assert found.warnings == ()
    assert found.route.distance_m == pytest.approx(1111.95, abs=0.01)
    assert (found.route.ascent_m, found.route.points) == (50, 2)


@pytest.mark.parametrize(
    "text",
    [
        track(TWO).replace(' xmlns="http://www.topografix.com/GPX/1/1"', ""),
        track(TWO).replace("GPX/1/1", "GPX/1/0"),
        "\ufeff" + track(TWO),
        track(TWO).replace("UTF-8", "UTF-16").encode("utf-16"),
        track(TWO).replace("UTF-8", "ISO-8859-1").replace('"t"', '"Höhe"').encode("latin-1"),
        gzip.compress(track(TWO).encode()),
        HEAD.replace("<gpx", "<g:gpx").replace("xmlns=", "xmlns:g=")
        + f"<g:trk><g:trkseg>{TWO.replace('<', '<g:').replace('<g:/', '</g:')}</g:trkseg></g:trk></g:gpx>",
    ],
)
def test_the_same_track_in_every_dress(text):
    assert read(text).route.distance_m == pytest.approx(1111.95, abs=0.01)
    assert read(text).route.ascent_m == 50


def test_extensions_and_waypoints_are_passed_over():
    odd = '<extensions><x:trkpt xmlns:x="urn:x" lat="9" lon="9"><x:ele>9</x:ele></x:trkpt><ele>7</ele></extensions>'
    text = track(TWO.replace("</ele>", f"</ele>{odd}", 1)).replace(
        "<trk>", '<wpt lat="1" lon="1"><ele>5</ele></wpt><trk>', 1
    )
    assert (read(text).route.points, read(text).route.ascent_m) == (2, 50)


def test_a_planned_route_is_taken_and_told():
    planned = f"<rte>{TWO.replace('trkpt', 'rtept')}</rte>"
    assert says(f"{HEAD}{planned}</gpx>", "planned route, not a recording")
    both = track(TWO + TWO).replace("<trk>", f"{planned}<trk>")
    assert read(both).route.points == 4
    assert says(both, "only its tracks are counted")


def test_missing_heights_are_said():
    assert says(track(TWO.replace("<ele>100</ele>", "").replace("<ele>150</ele>", "")), "unknown, not 0")
    assert says(track(TWO.replace("<ele>100</ele>", "<ele/>")), "1 of 2 points (50 percent) have no height")
    assert says(track(TWO.replace("100", "0").replace("150", "0")), "Every height is exactly 0")
    assert says(track(TWO.replace(">100<", ">0<")), "1 heights are exactly 0")


@pytest.mark.parametrize("height", ["nan", "inf", "99999", "-501", "12,5", "high", "1" * 5000])
def test_heights_that_cannot_be_count_as_missing(height):
    text = track(TWO.replace(">100<", f">{height}<"))
    assert says(text, "1 heights are no numbers from -500 to 9000 m")
    assert read(text).route.points_with_height == 1


def timed(*times):
    points = "".join(
        f'<trkpt lat="46.0{n}" lon="13"><ele>9</ele><time>{time}</time></trkpt>' for n, time in enumerate(times)
    )
    return track(points)


def test_time_that_runs_backwards_is_said():
    assert says(timed("2027-05-01T09:00:00Z", "2027-05-01T08:59:59Z"), "Time runs backwards at 1 points")
    assert says(timed("2027-05-01T09:00:00", "2027-05-01T10:00:00+02:00"), "Time runs backwards at 1 points")
    assert read(timed("2027-05-01T09:00:00Z", "2027-05-01T09:00:00Z")).warnings == ()
    assert says(timed("2027-05-01T09:00:00Z", "yesterday"), "1 times cannot be read")


def test_each_segment_has_its_own_clock():
    text = timed("2027-05-01T09:00:00Z", "2027-05-01T10:00:00Z").replace("</trkseg>", "</trkseg><trkseg></trkseg>")
    later = timed("2027-05-01T08:00:00Z", "2027-05-01T08:30:00Z")
    joined = text.replace("<trkseg></trkseg>", later[later.index("<trkseg>") : later.index("</trk>")])
    assert read(joined).warnings == ()
    assert read(joined).route.segments == 2


def test_one_place_and_empty_segments_are_said():
    same = '<trkpt lat="1" lon="1"/>' * 3
    assert says(track(same), "All points are one place")
    assert says(track(TWO).replace("<trk>", "<trk><trkseg/>"), "1 of 2 segments hold no point")


@pytest.mark.parametrize(
    ("lat", "lon"), [("nan", "13"), ("46", "inf"), ("95", "13"), ("46", "181"), ("46,5", "13"), ("", "13")]
)
def test_a_point_that_lies_nowhere_is_named(lat, lon):
    with pytest.raises(gpx.PlaceUnknown, match=r"^Point 3 lies nowhere: latitude") as refused:
        read(track(f'{TWO}<trkpt lat="{lat}" lon="{lon}"/>'))
    assert (refused.value.point, refused.value.lat, refused.value.lon) == (3, lat, lon)


def test_a_point_without_a_place_is_named():
    with pytest.raises(gpx.PlaceUnknown, match=r"^Point 1 "):
        read(track("<trkpt/>"))


def test_a_way_around_the_earth_is_refused():
    far = '<trkpt lat="0" lon="0"/><trkpt lat="0" lon="90"/>'
    with pytest.raises(OutOfRange, match="distance km"):
        read(track(far))


@pytest.mark.parametrize("text", [f"{HEAD}</gpx>", track(""), track('<trkpt lat="1" lon="1"/>')])
def test_too_few_points(text):
    with pytest.raises(TooFewPoints):
        read(text)


BOMB = "<!DOCTYPE gpx [" + "".join(f'<!ENTITY l{n} "{f"&l{n - 1};" * 10 if n else "ha"}">' for n in range(10)) + "]>"


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("", "no element found at line 1"),
        ("hello", "at line 1, character 1"),
        (track(TWO)[:-20], "unclosed token at line 2"),
        (HEAD, "no element found at line 2"),
        ("<html><body/></html>", "its outermost element is <html>"),
        (track(TWO).replace("GPX/1/1", "GPX/9/9"), "not <gpx> of version 1.0 or 1.1"),
        (HEAD.replace("\n", f"\n{BOMB}") + "<name>&l9;</name></gpx>", "declares a document type"),
        (HEAD.replace("\n", '\n<!DOCTYPE gpx SYSTEM "file:///etc/passwd">') + "</gpx>", "declares a document type"),
        (f"{HEAD}<name>&ha;</name></gpx>", "undefined entity"),
        (HEAD + "<a>" * 40, "nested too deeply"),
        (HEAD.replace("UTF-8", "klingon") + "</gpx>", "encoding"),
        (f'{HEAD}<a b="' + "x" * 1_200_000, "larger than 1 MB"),
        (b"\x00\x01\x02", "at line 1"),
    ],
)
def test_what_is_no_gpx_is_refused_with_its_reason(text, words):
    with pytest.raises(NotGpx, match=words):
        read(text)


@pytest.mark.parametrize("packed", [gzip.compress(track(TWO).encode())[:-9], b"\x1f\x8b", b"\x1f\x8b" + b"x" * 100])
def test_damaged_gzip_is_refused(packed):
    with pytest.raises(PackedBadly, match="damaged or breaks off"):
        read(packed)


def packed(points, more=b""):
    """A gzip file of a million bytes a step, made without holding it unpacked."""
    file = io.BytesIO()
    with gzip.GzipFile(fileobj=file, mode="wb", compresslevel=9) as out:
        out.write(track("@").split("@")[0].encode())
        for piece in points:
            out.write(piece)
        out.write(more + b"</trkseg></trk></gpx>")
    file.seek(0)
    return file


def test_43_megabytes_in_125_kilobytes_take_no_memory():
    """The same believable point, padded as some receivers do, again and again."""
    point = b'<trkpt lat="46.0000000" lon="13.0000000"><ele>100</ele>' + b" " * 4200 + b"</trkpt>"
    file = packed(point * 100 for _ in range(101))
    assert file.getbuffer().nbytes < 200_000
    tracemalloc.start()
    found = gpx.read(file)
    _, most = tracemalloc.get_traced_memory()
    tracemalloc.stop()
    assert found.route.points == 10_100
    assert most < 3_000_000


def test_200_megabytes_are_refused_before_they_are_parsed():
    file = packed(b" " * 1_000_000 for _ in range(200))
    tracemalloc.start()
    with pytest.raises(FileTooLarge, match="larger than 64 MB unpacked"):
        gpx.read(file)
    _, most = tracemalloc.get_traced_memory()
    tracemalloc.stop()
    assert most < 1_000_000


def test_more_than_a_million_points_are_refused(monkeypatch):
    monkeypatch.setattr(gpx, "POINTS_MAX", 2)
    assert read(track(TWO)).route.points == 2
    with pytest.raises(gpx.TooManyPoints):
        read(track(TWO + '<trkpt lat="1" lon="1"/>'))


VECTORS = Path(__file__).parents[2] / "vectors"


@pytest.mark.parametrize("name", sorted(json.loads((VECTORS / "gpx_walks.json").read_text())))
def test_what_the_phone_says_of_a_recorded_walk_is_what_the_practice_says(name):
    said = json.loads((VECTORS / "gpx_walks.json").read_text())[name]
    with (VECTORS / "gpx" / name).open("rb") as file:
        route = gpx.read(file).route
    assert route.distance_m / 1000 == pytest.approx(said["distance_km"])
    assert (route.ascent_m, route.descent_m) == pytest.approx((said["ascent_m"], said["descent_m"]))
