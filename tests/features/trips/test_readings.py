"""A GPX file through HTTP: honest ones become legs, odd and hostile ones a clear problem, and memory stays flat."""

import asyncio
import tracemalloc
from collections.abc import Callable, MutableMapping
from typing import Any

import pytest
from fastapi.testclient import TestClient

from tests.builders import API, House
from tests.features.trips import files


@pytest.fixture
def upload(house: House) -> Callable[..., Any]:
    client_id = house.new_client()

    def post(body: Any, status: int = 200, **params: Any) -> Any:
        path = f"{API}/clients/{client_id}/trip/readings"
        response = house.http.post(path, content=body, params=params, headers={"Content-Type": "application/gpx+xml"})
        assert response.status_code == status, response.text
        if status >= 400:
            assert response.headers["Content-Type"] == "application/problem+json"
        return response.json()

    return post


def test_each_track_is_a_leg_and_its_ascent_is_said_by_a_stated_rule(upload: Any) -> None:
    found = upload(files.gpx(files.track(), files.track(20_000, 6_000)))
    assert [round(one["distance_km"], 1) for one in found["legs"]] == [10.0, 6.0]
    assert [one["ascent_m"] for one in found["legs"]] == [500, 300]
    assert [one["day"] for one in found["legs"]] == [1, 2]
    assert found["ascent_threshold_m"] == 5
    counted = found["legs"][0]["from_file"]["counted"]
    assert [one["threshold_m"] for one in counted] == [0, 3, 5, 10]
    assert found["remarks"] == []


def test_nothing_of_places_names_or_times_is_answered(upload: Any) -> None:
    timed = files.track().replace("</ele>", "</ele><time>2027-05-01T07:00:00Z</time>")
    text = str(upload(files.gpx(timed)))
    for secret in ("Secret", "Home", "Someone", "2027", "46.0", "13.5"):
        assert secret not in text


def test_one_track_is_cut_into_days_of_even_time(upload: Any) -> None:
    legs = upload(files.gpx(files.track(length_m=20_000)), days=4)["legs"]
    assert len(legs) == 4
    assert sum(one["distance_km"] for one in legs) == pytest.approx(20, abs=0.01)
    # Uphill takes longer than down at a tenth: the first days are shorter.
    assert legs[0]["distance_km"] < legs[3]["distance_km"]
    assert sum(one["ascent_m"] for one in legs) == pytest.approx(1000, abs=4 * 5)


def test_one_track_is_cut_at_chosen_kilometres(upload: Any) -> None:
    legs = upload(files.gpx(files.track()), cut_km=[7, 3])["legs"]
    assert [one["distance_km"] for one in legs] == pytest.approx([3, 4, 3], abs=0.06)


def test_a_cut_beyond_the_end_is_refused(upload: Any) -> None:
    assert upload(files.gpx(files.track()), 422, cut_km=[40])["code"] == "cut-nowhere"
    assert upload(files.gpx(files.track(length_m=100)), 422, days=60)["code"] == "cut-nowhere"


def test_missing_heights_are_unknown_and_not_nothing(upload: Any) -> None:
    found = upload(files.gpx(files.track(heights=False)))
    (leg,) = found["legs"]
    assert (leg["ascent_m"], leg["descent_m"], leg["from_file"]["points_with_height"]) == (None, None, 0)
    assert "unknown, not 0" in found["remarks"][0]


def test_time_that_runs_backwards_is_said_and_does_no_harm(upload: Any) -> None:
    first = files.track().replace("</ele>", "</ele><time>2027-05-01T09:00:00Z</time>", 1)
    text = first[::-1].replace("</ele>"[::-1], "</ele><time>2027-05-01T08:00:00Z</time>"[::-1], 1)[::-1]
    assert "Time runs backwards at 1 points" in upload(files.gpx(text))["remarks"][0]


BOMB = (
    "<!DOCTYPE gpx ["
    + "".join(f'<!ENTITY l{n} "{f"&l{n - 1};" * 10 if n else "ha"}">' for n in range(10))
    + "]><gpx><name>&l9;</name></gpx>"
)


@pytest.mark.parametrize(
    ("body", "code", "words"),
    [
        (b"", "not-gpx", "no element found"),
        (b"{}", "not-gpx", "not a GPX file"),
        (BOMB.encode(), "not-gpx", "declares a document type"),
        (b'<!DOCTYPE gpx SYSTEM "file:///etc/passwd"><gpx/>', "not-gpx", "declares a document type"),
        (b"<html/>", "not-gpx", "outermost element is <html>"),
        (b"\x1f\x8b damaged", "packed-badly", "cannot be unpacked"),
        (files.gpx("<trk><trkseg/></trk>"), "too-few-points", "0 points"),
        (files.gpx(files.track().replace('lat="46.0', 'lat="nan', 1)), "place-unknown", "Point 1 lies nowhere"),
        (files.gpx(files.track().replace('lon="13.5"', 'lon="inf"', 1)), "place-unknown", "Point 1 lies nowhere"),
        (files.gpx(files.track(length_m=150_000)), "leg-too-long", "Leg 1 is 150 km long"),
        (files.gpx(files.track(length_m=1_200_000)), "out-of-range", "distance km"),
        (files.gpx("<trk>" + "<trkseg/>" * 501 + "</trk>"), "too-many-segments", "more than 500 segments"),
        (files.gpx(*["<trk><trkseg>" + files.point(0, 1) * 2 + "</trkseg></trk>"] * 61), "too-many-legs", "60 tracks"),
        (files.gpx("<trk><trkseg>" + files.point(0, 1) * 2 + "</trkseg></trk>"), "no-length", "one place"),
        (
            files.gpx("<trk><trkseg>" + (files.point(0, 1) + files.point(30, 90)) * 40 + "</trkseg></trk>"),
            "heights-past-belief",
            "more than its length",
        ),
    ],
)
def test_what_cannot_be_read_is_a_problem_with_its_reason(upload: Any, body: bytes, code: str, words: str) -> None:
    problem = upload(body, 422)
    assert problem["code"] == code
    assert words in problem["detail"]


def _most_memory(run: Callable[[], None]) -> int:
    tracemalloc.start()
    try:
        run()
        return tracemalloc.get_traced_memory()[1]
    finally:
        tracemalloc.stop()


def test_43_megabytes_packed_into_a_small_file_take_no_memory(upload: Any) -> None:
    packed = files.swollen(43)
    assert len(packed) < 125_000
    upload(files.gpx(files.track()))  # what is loaded once is no part of it

    def run() -> None:
        assert upload(packed)["legs"][0]["distance_km"] == 0.1

    assert _most_memory(run) < 4_000_000


def _send_piece_by_piece(house: House, client_id: str, megabytes: int) -> tuple[int, int]:
    """Stream an endless body straight into the app, as a server does; answer the status and the pieces that it took."""
    pieces, taken, status = files.endless(megabytes), 0, 0
    cookie = "; ".join(f"{one.name}={one.value}" for one in house.http.cookies.jar)

    async def receive() -> dict[str, Any]:
        nonlocal taken
        taken += 1
        piece = next(pieces, b"")
        return {"type": "http.request", "body": piece, "more_body": bool(piece)}

    async def send(message: MutableMapping[str, Any]) -> None:
        nonlocal status
        status = message.get("status", status)

    scope = {
        "type": "http",
        "method": "POST",
        "path": f"{API}/clients/{client_id}/trip/readings",
        "query_string": b"",
        "headers": [(b"cookie", cookie.encode()), (b"host", b"testserver")],
    }
    asyncio.run(house.app(scope, receive, send))
    return status, taken


def test_200_megabytes_packed_are_refused_and_take_no_memory(upload: Any) -> None:
    packed = files.swollen(200)
    upload(files.gpx(files.track()))

    def run() -> None:
        assert upload(packed, 413)["code"] == "file-too-large"

    assert _most_memory(run) < 4_000_000


def test_200_megabytes_without_a_stated_length_are_cut_off_and_take_no_memory(house: House) -> None:
    client_id = house.new_client()

    def run() -> None:
        status, taken = _send_piece_by_piece(house, client_id, 200)
        assert status == 413
        assert taken < 70

    run()
    assert _most_memory(run) < 8_000_000


def test_a_stated_length_over_the_limit_is_refused_before_anything_is_read(house: House) -> None:
    path = f"{API}/clients/{house.new_client()}/trip/readings"
    response = house.http.post(path, content=b"<gpx", headers={"Content-Length": "200000000"})
    assert (response.status_code, response.json()["code"]) == (413, "file-too-large")


def test_a_stranger_cannot_even_send(house: House) -> None:
    client_id = house.new_client()
    stranger = TestClient(house.app, base_url="https://testserver")
    assert (
        stranger.post(f"{API}/clients/{client_id}/trip/readings", content=files.gpx(files.track())).status_code == 401
    )
