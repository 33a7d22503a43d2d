"""Serves the two built apps: hashed files for a year, pages and the service worker always asked for again."""

from pathlib import Path

from fastapi import FastAPI
from starlette.exceptions import HTTPException
from starlette.requests import Request
from starlette.responses import FileResponse, PlainTextResponse, RedirectResponse, Response

_ROOT = Path(__file__).parent.parent / "static"
_HASHED = "assets/"
_FOR_A_YEAR = "public, max-age=31536000, immutable"
_ASK_AGAIN = "no-cache"
_SHARE = "/app/walk"
_SHARE_MISSED = f"{_SHARE}?share=missed"
_SHARE_TAKEN_BYTES = 25_000_000
"""The largest file that the app reads, and room. House value."""
_NOT_BUILT = "The pages are not built. Install the project with pip, or run 'npm run build' in frontend/."
_MEDIA_TYPES = {".webmanifest": "application/manifest+json", ".js": "text/javascript"}


def _file(app_name: str, path: str) -> Response:
    root = _ROOT / app_name
    if not (root / "index.html").is_file():
        return PlainTextResponse(_NOT_BUILT, 503)
    found = (root / path).resolve()
    if path and found.is_file() and found.is_relative_to(root.resolve()):
        cache = _FOR_A_YEAR if path.startswith(_HASHED) else _ASK_AGAIN
        return FileResponse(found, headers={"Cache-Control": cache}, media_type=_MEDIA_TYPES.get(found.suffix))
    if "." in path.rpartition("/")[2]:
        raise HTTPException(404)  # a missing file must not be answered with a page: it would be cached as a script
    return FileResponse(root / "index.html", headers={"Cache-Control": _ASK_AGAIN})


def _phone(request: Request) -> Response:
    return _file("app", request.path_params["path"])


def _desk(request: Request) -> Response:
    return _file("desk", request.path_params["path"])


def keeps_nothing(method: str, path: str) -> bool:
    """Answer whether this is a walk shared to the phone app: let pass from anywhere, since nothing of it is kept."""
    return method == "POST" and path == _SHARE


async def _shared(request: Request) -> Response:
    """Tell that no service worker was there to keep the file. A browser listens only once it has sent all of it."""
    taken = 0
    async for part in request.stream():
        taken += len(part)
        if taken > _SHARE_TAKEN_BYTES:
            break
    return RedirectResponse(_SHARE_MISSED, 303)


def _slash(request: Request) -> Response:
    return RedirectResponse(f"{request.url.path}/", 307)


def _home(_request: Request) -> Response:
    return RedirectResponse("/desk/", 307)


def install(app: FastAPI) -> None:
    """Add the pages: the phone app under /app/, the practice's pages under /desk/."""
    app.add_route("/", _home, include_in_schema=False)
    app.add_route(_SHARE, _shared, methods=["POST"], include_in_schema=False)
    for name, serve in (("app", _phone), ("desk", _desk)):
        app.add_route(f"/{name}", _slash, include_in_schema=False)
        app.add_route(f"/{name}/{{path:path}}", serve, include_in_schema=False)
