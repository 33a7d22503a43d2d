"""What is written for an operator's machine: it parses, names what exists, and gives nothing more than is needed."""

import configparser
import re
import shutil
import subprocess
import tomllib
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

import pytest
import yaml

from steadfoot.core.settings import Settings
from steadfoot.installation import record
from steadfoot.installation.rotation import name_of, superseded

ROOT = Path(__file__).parents[3]
DEPLOY = ROOT / "deploy"
COMPOSE = sorted(DEPLOY.glob("compose.*.yaml"))
SERVICES = sorted((DEPLOY / "systemd").glob("*.service"))
OF_SHELLS_ONLY = {"IMAGE", "SITE", "UPSTREAM", "CERTIFICATE", "SECRETS_DIR", "CADDY", "TEST_DATABASE", "CHROMIUM"}
"""Names that no setting of the server reads: the proxy's, the compose files', the tests'."""
HARDENED = {
    "NoNewPrivileges": "yes",
    "ProtectSystem": "strict",
    "ProtectHome": "yes",
    "PrivateTmp": "yes",
    "PrivateDevices": "yes",
    "ProtectKernelTunables": "yes",
    "ProtectControlGroups": "yes",
    "RestrictSUIDSGID": "yes",
    "RestrictNamespaces": "yes",
    "LockPersonality": "yes",
    "CapabilityBoundingSet": "",
    "User": "steadfoot",
    "UMask": "0077",
}


def _unit(path: Path) -> dict[str, dict[str, str]]:
    found = configparser.RawConfigParser(strict=False, interpolation=None)
    found.optionxform = str  # type: ignore[assignment,method-assign]
    found.read(path)
    return {name: dict(found[name]) for name in found.sections()}


def _texts() -> list[Path]:
    return [path for path in DEPLOY.rglob("*") if path.is_file() and path.suffix not in {".png", ".pyc"}]


def test_every_setting_that_is_named_exists() -> None:
    known = {name.upper() for name in Settings.model_fields} | OF_SHELLS_ONLY
    for path in _texts():
        for name in re.findall(r"\bSTEADFOOT_([A-Z_]+[A-Z])\b", path.read_text(encoding="utf-8")):
            assert name in known, (path.name, name)


@pytest.mark.parametrize("path", COMPOSE, ids=lambda path: path.name)
def test_a_compose_file_names_what_exists_and_limits_what_runs(path: Path) -> None:
    found = yaml.safe_load(path.read_text(encoding="utf-8"))
    secrets, volumes, networks = (set(found[name]) for name in ("secrets", "volumes", "networks"))
    for name, service in found["services"].items():
        assert "image" in service, name
        assert "mem_limit" in service, name
        assert "no-new-privileges:true" in service["security_opt"], name
        assert set(service["networks"]) <= networks, name
        assert {_source(secret) for secret in service.get("secrets", [])} <= secrets, name
        for volume in (entry.split(":")[0] for entry in service.get("volumes", [])):
            assert volume in volumes or (DEPLOY / volume).is_file(), (name, volume)
        assert set(service.get("depends_on", {})) <= set(found["services"]), name
    assert found["networks"]["inside"]["internal"], "the database and the server are reached through the proxy only"
    published = {name for name, service in found["services"].items() if "ports" in service}
    assert published == {"proxy"}
    serving = found["services"]["steadfoot"]
    assert serving["stop_grace_period"] == "40s", "longer than the server takes for answers under way"
    assert serving["read_only"] is True
    subnet = found["networks"]["inside"]["ipam"]["config"][0]["subnet"]
    assert serving["environment"]["STEADFOOT_TRUSTED_PROXIES"] == subnet


def _source(secret: Any) -> str:
    return secret if isinstance(secret, str) else str(secret["source"])


def test_no_password_stands_in_a_compose_file() -> None:
    for path in COMPOSE:
        assert not re.search(r"PASSWORD: |://[^/\s]+:[^/\s]+@", path.read_text(encoding="utf-8")), path.name


def test_the_image_is_built_from_named_files_without_root_and_without_tests() -> None:
    text = (DEPLOY / "Containerfile").read_text(encoding="utf-8")
    build, serve = text.split("FROM ${BASE}\n")
    copied = [word for line in re.findall(r"^COPY (?!--)(.*)", build, re.M) for word in line.split()[:-1]]
    let_in = re.findall(r"^!(\S+)", (DEPLOY / "Containerfile.dockerignore").read_text(encoding="utf-8"), re.M)
    assert sorted(copied) == sorted(let_in)
    assert all((ROOT / name).exists() for name in copied)
    assert not any(name.startswith("tests") for name in copied)
    assert re.findall(r"^COPY (.*)", serve, re.M) == ["--from=build /opt/steadfoot /opt/steadfoot"]
    assert re.search(r"^USER 10001:10001$", serve, re.M)
    assert "HEALTHCHECK" in serve


def test_an_installation_takes_only_locked_packages_by_their_hashes() -> None:
    script = (DEPLOY / "install.sh").read_text(encoding="utf-8")
    from_registries = [line for line in script.splitlines() if "--requirement" in line]
    assert len(from_registries) == 2
    assert all("--require-hashes" in line and "--no-deps" in line for line in from_registries)
    for name in ("requirements.txt", "requirements-build.txt"):
        for block in re.split(r"\n(?=\S)", (DEPLOY / name).read_text(encoding="utf-8")):
            assert "==" not in block.splitlines()[0] or "--hash=sha256:" in block, block
    wanted = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["build-system"]["requires"]
    locked = (DEPLOY / "requirements-build.txt").read_text(encoding="utf-8")
    assert all(f"{name} \\" in locked for name in wanted)


@pytest.mark.parametrize("name", ["steadfoot.service", "steadfoot-backup.service"])
def test_a_unit_may_do_nothing_that_serving_does_not_need(name: str) -> None:
    service = _unit(DEPLOY / "systemd" / name)["Service"]
    assert {key: service.get(key) for key in HARDENED} == HARDENED
    assert service["StateDirectory"] == "steadfoot"


def test_the_server_is_started_again_and_given_time_to_stop() -> None:
    service = _unit(DEPLOY / "systemd" / "steadfoot.service")["Service"]
    assert (service["Restart"], service["TimeoutStopSec"], service["LimitNOFILE"]) == ("always", "40", "65536")
    timer = _unit(DEPLOY / "systemd" / "steadfoot-backup.timer")["Timer"]
    assert timer["Persistent"] == "yes"
    for name in ("steadfoot.service", "steadfoot-backup.service"):
        unit = _unit(DEPLOY / "systemd" / name)["Unit"]
        assert unit["OnFailure"].startswith("steadfoot-alarm@"), name
        assert "Documentation" not in unit, "an installation has no documents"


@pytest.mark.skipif(shutil.which("systemd-analyze") is None, reason="no systemd on this machine")
def test_systemd_reads_the_units() -> None:
    paths = [str(path) for path in [*SERVICES, *(DEPLOY / "systemd").glob("*.timer")]]
    said = subprocess.run(["systemd-analyze", "verify", *paths], capture_output=True, text=True, check=False).stderr
    ours = [line for line in said.splitlines() if "steadfoot" in line and "is not executable" not in line]
    assert ours == []


@pytest.mark.parametrize("path", sorted(DEPLOY.rglob("*.sh")), ids=lambda path: path.name)
def test_every_script_is_read_by_a_plain_shell(path: Path) -> None:
    done = subprocess.run(["sh", "-n", str(path)], capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr


def _stand_in(folder: Path, name: str, does: str) -> None:
    tool = folder / name
    tool.write_text(f"#!/bin/sh\n{does}\n")
    tool.chmod(0o755)


def test_an_installation_that_failed_leaves_nothing_that_refuses_the_next(tmp_path: Path) -> None:
    python = "\n".join(
        (
            'case "$*" in *venv*) for folder; do :; done; mkdir -p "$folder/bin"; cp "$0" "$folder/bin/python";;',
            "*requirements.txt*) echo no network >&2; exit 1;; esac",
        )
    )
    _stand_in(tmp_path, "python", python)
    words = ["sh", str(DEPLOY / "install.sh"), str(tmp_path / "there")]
    env = {"PATH": "/usr/bin:/bin", "PYTHON": str(tmp_path / "python"), "TMPDIR": str(tmp_path)}
    done = subprocess.run(words, env=env, capture_output=True, text=True, check=False)
    assert (done.returncode, "no network" in done.stderr) == (1, True)
    assert [path.name for path in tmp_path.iterdir()] == ["python"]


def _backup(folder: Path, psql: str) -> "subprocess.CompletedProcess[str]":
    """Run the script with stand-ins for the database's tools; the drill runs it with the real ones."""
    tools = folder / "tools"
    tools.mkdir(exist_ok=True)
    for name in ("createdb", "dropdb", "pg_restore"):
        _stand_in(tools, name, "exit 0")
    _stand_in(tools, "psql", psql)
    env = {"PATH": f"{tools}:/usr/bin:/bin", "BACKUP_DIR": str(folder), "PGDATABASE": "steadfoot"}
    return subprocess.run(["sh", str(DEPLOY / "postgresql" / "backup.sh")], env=env, capture_output=True, text=True)


def test_the_backup_of_postgresql_keeps_what_the_others_keep_and_tells_of_it(tmp_path: Path) -> None:
    start = datetime(2025, 1, 1, 2, 30, tzinfo=UTC)
    names = [name_of(start + timedelta(days=night)).replace(".db", ".dump") for night in range(400)]
    for name in [*names, "mine.dump"]:
        (tmp_path / name).touch()
    done = _backup(tmp_path, 'printf dump >"$BACKUP_DIR/.making.dump"; echo "alembic_version|1"')
    assert done.returncode == 0, done.stderr
    told = record.read(tmp_path, record.LAST_GOOD)
    assert told is not None
    assert (told.ok, told.size_bytes, told.verified_at is not None) == (True, 4, True)
    kept = {path.name for path in tmp_path.glob("*.dump")}
    assert kept == {*names, told.file, "mine.dump"} - set(superseded([*names, told.file]))


@pytest.mark.parametrize(
    "psql",
    ["exit 1", 'echo "alembic_version|1"', 'printf dump >"$BACKUP_DIR/.making.dump"; echo "mine|1"']
    + ['printf dump >"$BACKUP_DIR/.making.dump"; echo "event|$$"; echo "alembic_version|1"'],
    ids=["no database", "no dump", "another's database", "rows are missing"],
)
def test_a_backup_of_postgresql_that_is_not_whole_is_loud(tmp_path: Path, psql: str) -> None:
    done = _backup(tmp_path, psql)
    assert done.returncode == 1
    assert "No backup was made" in done.stderr
    told = record.read(tmp_path)
    assert told is not None
    assert (told.ok, told.verified_at) == (False, None)
    assert told.problem
    assert record.read(tmp_path, record.LAST_GOOD) is None
    assert not list(tmp_path.glob("*.dump"))
