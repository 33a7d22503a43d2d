"""What every request meets first and every reply passes last: limits, headers, refusal of cross-site writes."""

import pytest
from fastapi import FastAPI
from fastapi.testclient import TestClient

from steadfoot.core.database import Database
from tests.builders import API, House

HEADERS = {
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "no-referrer",
    "Cross-Origin-Opener-Policy": "same-origin",
    "Strict-Transport-Security": "max-age=31536000; includeSubDomains",
}


@pytest.fixture
def visitor(app: FastAPI) -> TestClient:
    """Somebody who is not signed in, and to whom errors come as replies."""
    return TestClient(app, base_url="https://testserver", raise_server_exceptions=False)


@pytest.mark.parametrize(
    "origin", [{}, {"Origin": "null"}, {"Origin": "https://elsewhere.example", "Sec-Fetch-Site": "cross-site"}]
)
@pytest.mark.parametrize("size", [0, 3_000_000, 26_000_000])
def test_a_walk_shared_without_a_worker_leads_to_the_form(
    visitor: TestClient, origin: dict[str, str], size: int
) -> None:
    """The share of another app comes without an origin of ours, and a file may be larger than other bodies."""
    sent = {"walk": ("walk.gpx", b"." * size)} if size else None
    response = visitor.post("/app/walk", files=sent, headers=origin, follow_redirects=False)
    assert (response.status_code, response.headers["Location"]) == (303, "/app/walk?share=missed")
    assert response.headers["X-Content-Type-Options"] == "nosniff"


@pytest.mark.parametrize("path", ["/app/", "/app/season", "/app/walk/more", "/desk/walk"])
def test_no_other_page_takes_a_post(visitor: TestClient, path: str) -> None:
    assert visitor.post(path, headers={"Origin": "https://elsewhere.example"}).status_code == 403
    assert visitor.post(path).status_code == 405


def test_an_error_nobody_foresaw_is_a_problem_with_the_same_headers(
    visitor: TestClient, database: Database, monkeypatch: pytest.MonkeyPatch
) -> None:
    def broken() -> None:
        raise RuntimeError("a secret of the machine")

    visitor.cookies.set("__Host-steadfoot", "x")
    monkeypatch.setattr(database, "read", broken)
    monkeypatch.setattr(database, "write", broken)
    for response in (
        visitor.get(f"{API}/me"),
        visitor.post(f"{API}/pairings", json={"code": "x"}),
        visitor.get("/readyz"),
    ):
        assert response.status_code == 500
        assert response.headers["Content-Type"] == "application/problem+json"
        assert set(response.json()) == {"type", "title", "status", "code", "detail"}
        assert "secret" not in response.text
        for name, value in HEADERS.items():
            assert response.headers[name] == value
        assert "Content-Security-Policy" in response.headers


@pytest.mark.parametrize(
    "headers",
    [
        {"Origin": "https://evil.example"},
        {"Origin": "null"},
        {"Origin": "https://testserver.evil.example"},
        {"Origin": "https://testserver:444"},
        {"Sec-Fetch-Site": "cross-site"},
        {"Sec-Fetch-Site": "same-site"},
        {"Sec-Fetch-Site": "cross-site", "Origin": "https://testserver"},
    ],
)
def test_a_write_from_another_site_is_refused_and_writes_nothing(house: House, headers: dict[str, str]) -> None:
    response = house.http.post(f"{API}/clients", json={"display_name": "Somebody"}, headers=headers)
    assert (response.status_code, response.json()["code"]) == (403, "cross-site")
    assert house.get("/clients")["items"] == []


@pytest.mark.parametrize(
    "headers", [{}, {"Origin": "https://testserver"}, {"Sec-Fetch-Site": "same-origin"}, {"Sec-Fetch-Site": "none"}]
)
def test_a_write_from_our_own_pages_or_from_a_program_is_taken(house: House, headers: dict[str, str]) -> None:
    house.post("/clients", {"display_name": "Somebody"}, headers=headers)
    assert len(house.get("/clients")["items"]) == 1


def test_a_body_without_a_length_is_counted_while_it_is_read(house: House) -> None:
    def parts() -> object:
        for _ in range(40):
            yield b" " * 100_000

    response = house.http.post(f"{API}/clients", content=parts())  # type: ignore[arg-type]
    assert response.status_code == 413
    assert response.headers["Content-Type"] == "application/problem+json"


def test_another_site_is_never_told_that_it_may_read(visitor: TestClient) -> None:
    for method in ("GET", "OPTIONS"):
        response = visitor.request(method, f"{API}/clients", headers={"Origin": "https://evil.example"})
        assert not [name for name in response.headers if name.lower().startswith("access-control")]
