"""What Steadfoot is made of and whether a secret was ever committed; `deploy/audit.sh` calls it.

``python -m deploy.audit sbom | licences | secrets``
"""

import json
import re
import subprocess
import sys
from collections import defaultdict
from collections.abc import Iterable, Iterator
from importlib.metadata import PackageNotFoundError, metadata
from pathlib import Path
from typing import Any

ROOT = Path(__file__).parents[1]
LOCK = ROOT / "deploy" / "requirements.txt"
_REFUSED = re.compile(r"\b(AGPL|SSPL|GPL)(?!.*exception)", re.I)
"""What would bind an installation to more than naming its parts; the LGPL does not."""
_SECRETS = {
    "a private key": r"-----BEGIN (?:[A-Z]+ )*PRIVATE KEY-----\s*$",
    "a key of a cloud": r"\b(?:AKIA|ASIA)[0-9A-Z]{16}\b",
    "a token of a code host": r"\b(?:gh[pousr]_[A-Za-z0-9]{36}|glpat-[A-Za-z0-9_-]{20})\b",
    "a token of a chat or a payment": r"\b(?:xox[abprs]-[A-Za-z0-9-]{10,}|[rs]k_live_[A-Za-z0-9]{16,})\b",
    "a signed web token": r"\beyJ[A-Za-z0-9_-]{16,}\.eyJ[A-Za-z0-9_-]{16,}\.[A-Za-z0-9_-]{16,}",
    "a password in an address": r"\b[a-z+]+://[^\s/:@\"'{}<>$%]+:(?!p@|password@|…|\.{3})[^\s/:@\"'{}<>$%]{3,}@[a-z0-9]",
    "a setting with a secret": r"(?i)\b(?:secret|api_?key|access_?key|passwd)\b\s*[:=]\s*[\"'][\w+/=-]{20,}[\"']",
}


def locked(text: str) -> Iterator[tuple[str, str]]:
    """Answer name and version of each package of a lock file."""
    for line in text.splitlines():
        found = re.match(r"^([A-Za-z0-9._-]+)==([^\s;\\]+)", line)
        if found:
            yield found[1], found[2]


def licence(name: str) -> str:
    """Answer the licence that an installed package names; empty if it names none or is not for this platform."""
    try:
        about = metadata(name)
    except PackageNotFoundError:
        return ""
    classified = [
        line.rpartition(" :: ")[2] for line in about.get_all("Classifier", []) if line.startswith("License ::")
    ]
    written = (about.get("License") or "").strip().partition("\n")[0]
    return about.get("License-Expression") or " / ".join(classified) or written


def sbom(packages: Iterable[tuple[str, str]]) -> dict[str, Any]:
    """Answer a CycloneDX document; the same for the same lock, so that two can be compared."""
    parts = [
        {
            "type": "library",
            "name": name,
            "version": version,
            "bom-ref": f"pkg:pypi/{name}@{version}",
            "purl": f"pkg:pypi/{name}@{version}",
            **({"licenses": [{"license": {"name": known}}]} if (known := licence(name)) else {}),
        }
        for name, version in packages
    ]
    whole = {"type": "application", "name": "steadfoot"}
    return {
        "bomFormat": "CycloneDX",
        "specVersion": "1.6",
        "version": 1,
        "metadata": {"component": whole},
        "components": parts,
    }


def _licences() -> int:
    by_licence: dict[str, list[str]] = defaultdict(list)
    for name, _version in locked(LOCK.read_text(encoding="utf-8")):
        by_licence[licence(name) or "(not installed here, or names none)"].append(name)
    for title, names in sorted(by_licence.items()):
        print(f"{title}: {', '.join(names)}")
    return 1 if any(_REFUSED.search(title) for title in by_licence) else 0


def found_in(line: str) -> list[str]:
    """Answer what a line looks like that nobody should commit."""
    return [what for what, pattern in _SECRETS.items() if re.search(pattern, line)]


def _secrets() -> int:
    """Every line that any commit of any branch ever added."""
    words = ["git", "log", "--all", "-p", "--no-color", "--no-ext-diff", "-U0", "--format=commit %h"]
    commit, hits, lines = "", 0, 0
    with subprocess.Popen(words, cwd=ROOT, stdout=subprocess.PIPE, text=True, errors="replace") as process:
        assert process.stdout is not None
        for line in process.stdout:
            commit = line.split()[1] if line.startswith("commit ") else commit
            if line.startswith("+"):
                lines += 1
                for what in found_in(line):
                    hits += 1
                    print(f"{commit}: {what}")
    if process.returncode:
        print("The history could not be read: is this a clone, and is git installed?")
        return 1
    print(f"{hits} hits in {lines:,} lines that were ever committed.")
    return 1 if hits else 0


def _sbom() -> int:
    json.dump(sbom(locked(LOCK.read_text(encoding="utf-8"))), sys.stdout, indent=1)
    print()
    return 0


if __name__ == "__main__":
    sys.exit({"sbom": _sbom, "licences": _licences, "secrets": _secrets}[sys.argv[1]]())
