"""What an audit finds: every locked part, and what looks like a secret."""

import pytest

from deploy.audit import LOCK, found_in, locked, sbom

_KEY = "-----BEGIN " + "PRIVATE KEY-----"  # in two pieces: this file is in the history that is searched


def test_every_locked_package_is_a_part_with_its_version_and_licence() -> None:
    text = LOCK.read_text(encoding="utf-8")
    parts = sbom(locked(text))["components"]
    assert len(parts) == text.count("    # via"), "the lock says of each who wants it"
    fastapi = next(part for part in parts if part["name"] == "fastapi")
    assert fastapi["purl"] == f"pkg:pypi/fastapi@{fastapi['version']}"
    assert "MIT" in fastapi["licenses"][0]["license"]["name"]


@pytest.mark.parametrize(
    "line",
    [_KEY, "key = AKIA" + "Q" * 16, "ghp" + "_" + "a" * 36, "postgresql://app:" + "s3cr3tword@db.example/x"]
    + ['api_key = "' + "k" * 24 + '"', "eyJ" + "a" * 20 + ".eyJ" + "b" * 20 + "." + "c" * 20],
)
def test_what_looks_like_a_secret_is_found(line: str) -> None:
    assert found_in("+" + line)


@pytest.mark.parametrize(
    "line",
    ["postgresql+psycopg://…", "https://localhost:8000/a@b", "password: str", 'secret = "short"', "://{user}:{word}@h"],
)
def test_what_only_speaks_of_secrets_is_not(line: str) -> None:
    assert found_in("+" + line) == []
