"""Every reply carries what protects a browser: pages, files, drawings, sheets, streams, redirects, errors."""

import re
from collections.abc import Callable
from pathlib import Path

import httpx
import pytest
from fastapi import FastAPI
from fastapi.testclient import TestClient

from steadfoot.core import pages
from steadfoot.core.database import Database
from steadfoot.identity.access import COOKIE
from tests.builders import API, HOST
from tests.features.access import Practice, practice
from tests.sync.live import listening

__all__ = ["practice"]
HEADERS = {
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "no-referrer",
    "Cross-Origin-Opener-Policy": "same-origin",
    "Cross-Origin-Resource-Policy": "same-origin",
    "Strict-Transport-Security": "max-age=31536000; includeSubDomains",
}
POLICY = {
    "default-src": "'none'",
    "script-src": "'self'",
    "style-src": "'self'",
    "img-src": "'self' data: blob:",
    "font-src": "'self'",
    "connect-src": "'self'",
    "worker-src": "'self'",
    "manifest-src": "'self'",
    "form-action": "'self'",
    "frame-ancestors": "'none'",
    "base-uri": "'none'",
    "object-src": "'none'",
    "require-trusted-types-for": "'script'",
    "trusted-types": "app",
}
"""Whole: a source more is a hole, and fails."""
FILES = {
    "app/index.html": "text/html; charset=utf-8",
    "app/sw.js": "text/javascript; charset=utf-8",
    "app/manifest.webmanifest": "application/manifest+json",
    "app/icon-192.png": "image/png",
    "app/assets/main-1a2b.js": "text/javascript; charset=utf-8",
    "app/assets/main-1a2b.css": "text/css; charset=utf-8",
    "app/assets/face-1a2b.woff2": "font/woff2",
    "desk/index.html": "text/html; charset=utf-8",
    "desk/assets/main-3c4d.js": "text/javascript; charset=utf-8",
}


@pytest.fixture(autouse=True)
def built(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Pages as a build leaves them."""
    for name in FILES:
        file = tmp_path / "static" / name
        file.parent.mkdir(parents=True, exist_ok=True)
        file.write_text("x")
    monkeypatch.setattr(pages, "_ROOT", tmp_path / "static")


def protected(reply: httpx.Response, policy_of: dict[str, str] = POLICY) -> httpx.Response:
    """Answer a reply that has every header, once, with its whole value."""
    for name, value in HEADERS.items():
        assert reply.headers.get_list(name) == [value], (reply.url, name)
    (policy,) = reply.headers.get_list("Content-Security-Policy")
    parts = (part.partition(" ") for part in policy.split("; "))
    assert {name: sources for name, _, sources in parts} == policy_of, reply.url
    (refused,) = reply.headers.get_list("Permissions-Policy")
    assert all(re.fullmatch(r"[a-z-]+=\(\)", one) for one in refused.split(", "))
    assert {"camera=()", "geolocation=()", "microphone=()"} <= set(refused.split(", "))
    assert not [name for name in reply.headers if name.lower() in ("server", "x-powered-by")]
    if reply.content:
        assert reply.headers["Content-Type"]
    return reply


@pytest.fixture
def visitor(app: FastAPI) -> TestClient:
    return TestClient(app, base_url=HOST, raise_server_exceptions=False, follow_redirects=False)


@pytest.mark.parametrize(("name", "media_type"), FILES.items())
def test_files_of_the_apps_say_what_they_are_and_how_long_they_hold(
    visitor: TestClient, name: str, media_type: str
) -> None:
    reply = protected(visitor.get(f"/{name}"))
    assert (reply.status_code, reply.headers["Content-Type"]) == (200, media_type)
    held = "public, max-age=31536000, immutable" if "/assets/" in name else "no-cache"
    assert reply.headers["Cache-Control"] == held
    assert protected(visitor.get(f"/{name}", headers={"Range": "bytes=0-0"})).status_code == 206
    assert protected(visitor.head(f"/{name}")).status_code in (200, 405)


REDIRECTS = ["/", "/app", "/desk"]
NO_PAGE = [
    "/nothing",
    "/app/missing.js",
    "/app/assets/old.js",
    "/.git/HEAD",
    "/.env",
    "/docs",
    "/redoc",
    f"{API}/nothing",
]


FOR_MACHINES = ["/healthz", "/readyz", "/metrics", "/openapi.json"]


@pytest.mark.parametrize("path", FOR_MACHINES)
def test_what_machines_ask(app: FastAPI, path: str) -> None:
    assert protected(TestClient(app, client=("127.0.0.1", 1)).get(path)).status_code == 200


@pytest.mark.parametrize(("path", "status"), [*((one, 307) for one in REDIRECTS), *((one, 404) for one in NO_PAGE)])
def test_redirects_and_what_is_not_there(visitor: TestClient, path: str, status: int) -> None:
    assert protected(visitor.get(path)).status_code == status


ODD: dict[str, tuple[int, Callable[[TestClient], httpx.Response]]] = {
    "no session": (401, lambda http: http.get(f"{API}/me")),
    "another site": (403, lambda http: http.post(f"{API}/sign-in", headers={"Origin": "https://evil.example"})),
    "no such method": (405, lambda http: http.put(f"{API}/sign-in")),
    "a trace": (405, lambda http: http.request("TRACE", f"{API}/me")),
    "too large": (413, lambda http: http.post(f"{API}/sign-in", content=b" " * 2_000_001)),
    "not JSON": (
        400,
        lambda http: http.post(f"{API}/sign-in", content=b"{", headers={"Content-Type": "application/json"}),
    ),
    "not text of a form": (422, lambda http: http.post(f"{API}/sign-in", data={"email": "a@b.example"})),
    "not valid": (422, lambda http: http.post(f"{API}/sign-in", json={})),
    "a NUL": (400, lambda http: http.get("/app/%00")),
    "a share": (303, lambda http: http.post("/app/walk")),
}


@pytest.mark.parametrize("name", ODD)
def test_errors_of_each_kind(visitor: TestClient, name: str) -> None:
    status, ask = ODD[name]
    assert protected(ask(visitor)).status_code == status


def test_a_fault_and_a_database_that_is_away(
    visitor: TestClient, database: Database, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(database, "read", lambda: 1 / 0)
    assert protected(visitor.get("/readyz")).status_code == 500


@pytest.fixture
def asked(practice: Practice) -> Callable[[str], httpx.Response]:
    """Asks a page as the practitioner."""
    client = f"{API}/clients/{practice.ids['client_id']}"
    return lambda path: practice.house.http.get(path.replace("CLIENT", client))


@pytest.mark.parametrize(
    ("path", "media_type"),
    [
        (f"{API}/me", "application/json"),
        ("CLIENT/timeline", "application/json"),
        ("CLIENT/programs/current/sheet.pdf", "application/pdf"),
        ("CLIENT/nothing", "application/problem+json"),
    ],
)
def test_what_is_personal_is_never_kept(asked: Callable[[str], httpx.Response], path: str, media_type: str) -> None:
    reply = protected(asked(path))
    assert reply.headers["Content-Type"] == media_type
    assert reply.headers["Cache-Control"] == "no-store"


def test_a_drawing_is_a_picture_and_holds_nothing_personal(asked: Callable[[str], httpx.Response]) -> None:
    sealed = {"default-src": "'none'", "style-src": "'unsafe-inline'", "sandbox": "", "frame-ancestors": "'none'"}
    reply = protected(asked(f"{API}/exercises/step-down/figure.svg?variant=rail&form=still"), sealed)
    assert reply.headers["Content-Type"] == "image/svg+xml"
    assert "<script" not in reply.text


def test_the_stream_of_live_pages(practice: Practice, app: FastAPI) -> None:
    cookie = {"Cookie": f"{COOKIE}={practice.house.http.cookies[COOKIE]}"}
    with listening(app) as address, httpx.stream("GET", f"{address}{API}/live", headers=cookie) as reply:
        for name, value in HEADERS.items():
            assert reply.headers[name] == value
        assert reply.headers["Content-Type"].startswith("text/event-stream")
        assert reply.headers["Cache-Control"] == "no-store"
        app.state.pulse.close()


def test_every_cookie_is_of_this_host_and_out_of_reach(practice: Practice, visitor: TestClient) -> None:
    email = practice.house.get("/me")["practitioner"]["email"]
    said = [visitor.post(f"{API}/sign-in", json={"email": email, "password": "five huts over one ridge"})]
    said.append(visitor.post(f"{API}/sign-out"))
    cookies = [cookie.lower() for reply in said for cookie in reply.headers.get_list("Set-Cookie")]
    assert len(cookies) >= 2
    for cookie in cookies:
        parts = set(cookie.split("; ")[1:])
        assert cookie.startswith("__host-steadfoot")
        assert {"path=/", "secure", "httponly", "samesite=strict"} <= parts
        assert not [part for part in parts if part.startswith("domain")]
