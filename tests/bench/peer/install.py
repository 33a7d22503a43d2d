"""What only this measurement needs: the peer from npm, and the phone's outbox as one script."""

import shutil
import subprocess
from pathlib import Path

HERE = Path(__file__).parent
FRONTEND = HERE.parents[2] / "frontend"
OUTBOX = HERE / "node_modules" / "outbox.js"
_BUILD = """import {{ build }} from 'vite';
const lib = {{ entry: '{entry}', formats: ['iife'], name: 'bench', fileName: () => 'outbox.js' }};
const build_ = {{ lib, outDir: '{folder}', emptyOutDir: false, copyPublicDir: false }};
await build({{ configFile: false, logLevel: 'error', root: '{folder}', build: build_ }});
"""


def _run(*words: str, folder: Path) -> None:
    program = shutil.which(words[0])
    if program is None:
        raise SystemExit(f"No {words[0]} on the path: run this with .venv/bin first on it, after sh deploy/test.sh.")
    subprocess.run([program, *words[1:]], cwd=folder, check=True, stdout=subprocess.DEVNULL)


def install() -> None:
    """Install the peer as its lock file says, once, and pack the outbox. Needs ``frontend/node_modules``."""
    if not (HERE / "node_modules" / ".package-lock.json").exists():
        print("Installing the peer from npm.")
        _run("npm", "ci", "--ignore-scripts", "--silent", folder=HERE)
    if not (FRONTEND / "node_modules").exists():
        _run("npm", "ci", "--ignore-scripts", "--silent", folder=FRONTEND)
    script = _BUILD.format(entry=HERE / "fill.ts", folder=OUTBOX.parent)
    _run("node", "--input-type=module", "--eval", script, folder=FRONTEND)
