"""The operations that the OpenAPI document names."""

from dataclasses import dataclass

from fastapi import FastAPI


@dataclass(frozen=True)
class Operation:
    """One method of one path."""

    name: str
    method: str
    path: str


def operations(app: FastAPI) -> list[Operation]:
    methods = {"get", "post", "put", "patch", "delete"}
    paths = app.openapi()["paths"]
    return [
        Operation(operation["operationId"], method.upper(), path)
        for path, found in paths.items()
        for method, operation in found.items()
        if method in methods
    ]
