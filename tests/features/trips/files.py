"""GPX files for tests: an honest traverse, and files that mean harm."""

import gzip
import io
from collections.abc import Iterator

HEAD = '<gpx version="1.1" creator="Someone" xmlns="http://www.topografix.com/GPX/1/1"><metadata><name>Home</name></metadata>'
M_PER_DEGREE = 111_195
STEP_M = 50


def point(way_m: float, height_m: float | None) -> str:
    ele = "" if height_m is None else f"<ele>{height_m:.1f}</ele>"
    return f'<trkpt lat="{46 + way_m / M_PER_DEGREE:.7f}" lon="13.5">{ele}</trkpt>'


def track(start_m: float = 0, length_m: float = 10_000, heights: bool = True) -> str:
    """Up by a tenth for the first half, down by a tenth for the second; north, along one meridian."""
    half = length_m / 2
    found = []
    for step in range(int(length_m / STEP_M) + 1):
        way = step * STEP_M
        found.append(point(start_m + way, 800 + (way if way <= half else length_m - way) / 10 if heights else None))
    return f"<trk><name>Secret door</name><trkseg>{''.join(found)}</trkseg></trk>"


def gpx(*tracks: str) -> bytes:
    return f"{HEAD}{''.join(tracks)}</gpx>".encode()


def swollen(megabytes: int) -> bytes:
    """A gzip file that unpacks to padding of a stated size, made without holding it unpacked."""
    file = io.BytesIO()
    with gzip.GzipFile(fileobj=file, mode="wb", compresslevel=9) as out:
        out.write(HEAD.encode() + b"<trk><trkseg>" + (point(0, 800) + point(100, 810)).encode())
        for _ in range(megabytes):
            out.write(b" " * 1_000_000)
        out.write(b"</trkseg></trk></gpx>")
    return file.getvalue()


def endless(megabytes: int) -> Iterator[bytes]:
    """A body without a stated length, a megabyte at a time."""
    yield HEAD.encode() + b"<trk><trkseg>"
    for _ in range(megabytes):
        yield b" " * 1_000_000
