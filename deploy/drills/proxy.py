"""Runs deploy/Caddyfile before a real server with a certificate made for the hour, and tries what it promises.

``sh deploy/drill.sh proxy``; needs Caddy on the PATH or in STEADFOOT_CADDY. Ends with 1 if a promise is not kept.
"""

import os
import shutil
import socket
import ssl
import subprocess
import sys
import threading
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from tempfile import TemporaryDirectory

import httpx

from tests.bench.ingest import bench
from tests.builders import API, PASSWORD
from tests.sync.server import Server, free_port

CADDYFILE = Path(__file__).parents[1] / "Caddyfile"
_PAIRING_TRIES = 20
_SEE_OTHER, _NOT_FOUND, _TOO_LARGE, _TOO_MANY = 303, 404, 413, 429
_STREAM_WITHIN_S = 3
_SLOW_ENDS_WITHIN_S = 14


@dataclass
class Door:
    """The proxy, and the server behind it."""

    port: int
    server: Server
    trusted: ssl.SSLContext

    @property
    def url(self) -> str:
        """The address as a phone types it."""
        return f"https://localhost:{self.port}"

    def http(self) -> httpx.Client:
        """A visitor that trusts the certificate."""
        return httpx.Client(base_url=self.url, verify=self.trusted, timeout=30)


def _certificate(folder: Path) -> tuple[Path, Path]:
    cert, key = folder / "cert.pem", folder / "key.pem"
    words = "req -x509 -newkey ec -pkeyopt ec_paramgen_curve:prime256v1 -nodes -days 1 -subj /CN=localhost"
    names = ["-addext", "subjectAltName=DNS:localhost", "-keyout", str(key), "-out", str(cert)]
    subprocess.run(["openssl", *words.split(), *names], check=True, capture_output=True)
    return cert, key


@contextmanager
def _door(caddy: str, folder: Path, server: Server) -> Iterator[Door]:
    cert, key = _certificate(folder)
    port = free_port()
    env = {
        **os.environ,
        "STEADFOOT_SITE": f"https://localhost:{port}",
        "STEADFOOT_UPSTREAM": f"127.0.0.1:{server.port}",
        "STEADFOOT_CERTIFICATE": f"{cert} {key}",
        "XDG_DATA_HOME": str(folder),
        "XDG_CONFIG_HOME": str(folder),
    }
    words = [caddy, "run", "--config", str(CADDYFILE), "--adapter", "caddyfile"]
    with subprocess.Popen(words, env=env, stderr=(folder / "proxy.log").open("wb")) as process:
        try:
            door = Door(port, server, ssl.create_default_context(cafile=str(cert)))
            _wait(door)
            yield door
        finally:
            process.terminate()


def _wait(door: Door) -> None:
    until = time.monotonic() + 20
    while time.monotonic() < until:
        try:
            with door.http() as http:
                http.get("/healthz")
                return
        except httpx.TransportError:
            time.sleep(0.1)
    raise TimeoutError("the proxy did not start")


def _old_tls_is_refused(door: Door) -> bool:
    context = ssl.SSLContext(ssl.PROTOCOL_TLS_CLIENT)
    context.check_hostname, context.verify_mode = False, ssl.CERT_NONE
    context.set_ciphers("ALL:@SECLEVEL=0")
    context.minimum_version, context.maximum_version = ssl.TLSVersion.TLSv1, ssl.TLSVersion.TLSv1_1
    try:
        with socket.create_connection(("localhost", door.port)) as raw, context.wrap_socket(raw):
            return False
    except ssl.SSLError:
        return True


def _headers_come_once(door: Door) -> bool:
    with door.http() as http:
        found = http.get("/app/").headers
    once = all(len(found.get_list(name)) == 1 for name in ("Strict-Transport-Security", "X-Content-Type-Options"))
    return once and "max-age=31536000" in found["Strict-Transport-Security"] and "Server" not in found


def _counts_stay_inside(door: Door) -> bool:
    with door.http() as http:
        return http.get("/metrics").status_code == _NOT_FOUND


def _a_large_body_is_refused_and_a_walk_is_not(door: Door) -> bool:
    with door.http() as http:
        large = http.post(f"{API}/sync", content=b" " * 3_000_000)
        larger = http.post(f"{API}/sync", content=b" " * 8_000_000)
        walk = http.post("/app/walk", content=b" " * 20_000_000)
        longer = http.post("/app/walk", content=b" " * 40_000_000)
    refused = [large.status_code, larger.status_code] == [_TOO_LARGE, _TOO_LARGE]
    # The server stops reading a walk at its own limit, which the proxy may notice before its own or after.
    read_to_the_limit = longer.status_code == _TOO_LARGE or longer.headers["Location"].endswith("share=missed")
    return refused and walk.status_code == _SEE_OTHER and read_to_the_limit


def _an_invented_address_buys_no_tries(door: Door) -> bool:
    """Each try says that it comes from somewhere else; the limit must count them as one visitor's."""
    with door.http() as http:
        found = [
            http.post(f"{API}/pairings", json={"code": "A" * 26}, headers={"X-Forwarded-For": f"203.0.113.{at}"})
            for at in range(_PAIRING_TRIES + 5)
        ]
    return found[-1].status_code == _TOO_MANY and found[_PAIRING_TRIES - 1].status_code != _TOO_MANY


def _news_arrives_at_once(door: Door) -> bool:
    """An open page hears of a new client within seconds, through the proxy and with its compression."""
    heard = threading.Event()
    with door.http() as http:
        http.post(f"{API}/sign-in", json={"email": "maren@thornwater.example", "password": PASSWORD}).raise_for_status()
        client = http.get(f"{API}/clients").json()["items"][0]["id"]

        def listen() -> None:
            with http.stream("GET", f"{API}/live") as stream:
                for part in stream.iter_text():
                    if client in part:
                        heard.set()
                        return

        threading.Thread(target=listen, daemon=True).start()
        time.sleep(0.5)
        http.patch(f"{API}/clients/{client}", json={"note": "seen"}).raise_for_status()
        http.post(f"{API}/clients/{client}/messages", json={"text": "seen"}).raise_for_status()
        return heard.wait(_STREAM_WITHIN_S)


def _who_dawdles_is_sent_away(door: Door) -> bool:
    begun = time.monotonic()
    with (
        socket.create_connection(("localhost", door.port)) as raw,
        door.trusted.wrap_socket(raw, server_hostname="localhost") as line,
    ):
        line.settimeout(1)
        line.sendall(b"GET /healthz HTTP/1.1\r\nHost: localhost\r\nX-Slow: ")
        while time.monotonic() - begun < _SLOW_ENDS_WITHIN_S:
            try:
                line.sendall(b"a")
                if not line.recv(100):
                    return True
            except TimeoutError:
                continue
            except OSError:
                return True
    return False


def _a_restart_is_a_wait(door: Door) -> bool:
    """The server stops and starts behind the proxy; whoever asks meanwhile waits, and nobody gets an error."""
    found, end = [], threading.Event()

    def ask() -> None:
        with door.http() as http:
            while not end.is_set():
                found.append(http.get("/healthz").status_code)

    thread = threading.Thread(target=ask)
    thread.start()
    door.server.stop()
    door.server.start()
    time.sleep(0.5)
    end.set()
    thread.join()
    return set(found) == {200}


PROMISES: tuple[Callable[[Door], bool], ...] = (
    _old_tls_is_refused,
    _headers_come_once,
    _counts_stay_inside,
    _a_large_body_is_refused_and_a_walk_is_not,
    _an_invented_address_buys_no_tries,
    _news_arrives_at_once,
    _who_dawdles_is_sent_away,
    _a_restart_is_a_wait,
)


def drill() -> int:
    """Try each promise, print what came of it, and answer the exit code."""
    caddy = os.environ.get("STEADFOOT_CADDY") or shutil.which("caddy")
    if caddy is None:
        print("Caddy is not here: install it (Debian: apt-get install caddy), or name it in STEADFOOT_CADDY.")
        return 1
    with TemporaryDirectory() as name, bench(1) as found:
        server = Server(found.folder, more={"STEADFOOT_TRUSTED_PROXIES": "127.0.0.1"})
        server.start()
        try:
            with _door(caddy, Path(name), server) as door:
                kept = [_tried(promise, door) for promise in PROMISES]
        finally:
            server.kill()
    return 0 if all(kept) else 1


def _tried(promise: Callable[[Door], bool], door: Door) -> bool:
    kept = promise(door)
    print(f"{'kept  ' if kept else 'BROKEN'}  {promise.__name__.strip('_').replace('_', ' ')}", flush=True)
    return kept


if __name__ == "__main__":
    sys.exit(drill())
