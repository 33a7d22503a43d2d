"""The OpenAPI document as the app answers: FastAPI describes errors of its own making, which nobody here ever gets."""

from collections.abc import Iterator, Mapping
from typing import Any, Final

from fastapi import FastAPI

from steadfoot.core.problems import MEDIA_TYPE

_REF: Final = "#/components/schemas/Problem"
_TEXT: Final = {"type": "string"}
_FIELD: Final = {"type": "object", "properties": dict.fromkeys(("pointer", "code", "detail"), _TEXT)}
_PROBLEM: Final = {
    "title": "Problem",
    "description": "An error (RFC 9457): code is for programs, detail for people; errors names each field.",
    "type": "object",
    "required": ["type", "title", "status", "code", "detail"],
    "properties": {
        **dict.fromkeys(("type", "title", "code", "detail", "instance"), _TEXT),
        "status": {"type": "integer"},
        "errors": {"type": "array", "items": _FIELD},
    },
}
_SAYS: Final = {
    400: "The request cannot be read.",
    401: "Not signed in.",
    403: "Not allowed, or from another site.",
    404: "There is no such thing in this practice.",
    409: "Not possible in this state.",
    412: "Someone else changed it first.",
    413: "More bytes than are taken.",
    422: "Understood, but not acceptable.",
    429: "Too many tries; Retry-After says when again.",
    503: "The database cannot be had for the moment; Retry-After says when again.",
}
_ERRORS_FROM: Final = 400


def _statuses(path: str, method: str, operation: Mapping[str, Any]) -> Iterator[int]:
    """Answer what an operation may answer besides what its route says."""
    yield from (400, 503)
    if operation.get("security"):
        yield 401
    if method != "get" or any("HTTPBearer" in scheme for scheme in operation.get("security", ())):
        yield 403
    if "{" in path:
        yield 404
    if "requestBody" in operation:
        yield from (413, 422)
    if operation.get("parameters"):
        yield 422


def _response(description: str) -> dict[str, Any]:
    return {"description": description, "content": {MEDIA_TYPE: {"schema": {"$ref": _REF}}}}


def _describe(path: str, method: str, operation: dict[str, Any]) -> None:
    told: dict[str, Any] = operation["responses"]
    errors = {int(status) for status in told if status.isdigit() and int(status) >= _ERRORS_FROM}
    for status in sorted(errors | set(_statuses(path, method, operation))):
        described = told.get(str(status), {}).get("description", "Validation Error")
        usual = described in ("Validation Error", _SAYS[status])
        told[str(status)] = {"$ref": f"#/components/responses/{status}"} if usual else _response(described)


def with_problems(document: dict[str, Any]) -> dict[str, Any]:
    """Answer the document with every error as the problem that it is."""
    for path, methods in document["paths"].items():
        for method, operation in methods.items():
            _describe(path, method, operation)
    components = document.setdefault("components", {})
    components["responses"] = {str(status): _response(words) for status, words in _SAYS.items()}
    schemas = components.setdefault("schemas", {})
    for unused in ("HTTPValidationError", "ValidationError"):
        schemas.pop(unused, None)
    schemas["Problem"] = _PROBLEM
    return document


class DescribedApp(FastAPI):
    """An app whose document tells its errors rightly."""

    def openapi(self) -> dict[str, Any]:
        """Answer the OpenAPI document; it is made once."""
        if self.openapi_schema is None:
            self.openapi_schema = with_problems(super().openapi())
        return self.openapi_schema
