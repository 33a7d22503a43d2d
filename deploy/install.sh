#!/bin/sh
# Installs what serves a practice, and nothing else, into a folder of its own: the locked packages, each with its hash, and
# Steadfoot with its pages built. No tests, no compilers, no node. The container image and the systemd service use it.
#   sh deploy/install.sh FOLDER       FOLDER must not exist and keeps its name; PYTHON names another Python than python3 (3.11 or newer)
set -eu
cd "$(dirname "$0")/.."

target=${1:-}
python=${PYTHON:-python3}
[ -n "$target" ] || { echo "Name a folder: sh deploy/install.sh /opt/steadfoot" >&2; exit 1; }
[ ! -e "$target" ] || { echo "$target exists already; install into a new folder, then change over to it." >&2; exit 1; }
"$python" -c 'import sys; sys.exit(sys.version_info < (3, 11))' || { echo "Steadfoot needs Python 3.11 or newer." >&2; exit 1; }

export PIP_USER=0 PIP_NO_INPUT=1 PIP_DISABLE_PIP_VERSION_CHECK=1 PIP_NO_CACHE_DIR=1
unset PYTHONPATH PYTHONHOME PIP_TARGET PIP_PREFIX
work=$(mktemp -d)
finished=
# Half an installation would only refuse the next try.
cleared() {
  rm -rf "$work"
  [ -n "$finished" ] || rm -rf "$target"
}
trap cleared EXIT
trap 'exit 130' INT TERM

# What only builds goes into an environment that is thrown away.
"$python" -m venv "$work/build"
"$work/build/bin/python" -m pip install --quiet --require-hashes --no-deps --requirement deploy/requirements-build.txt
"$work/build/bin/python" -m pip wheel --quiet --no-deps --no-build-isolation --wheel-dir "$work" .

"$python" -m venv "$target"
"$target/bin/python" -m pip install --quiet --require-hashes --no-deps --only-binary :all: --requirement deploy/requirements.txt
"$target/bin/python" -m pip install --quiet --no-deps "$work"/steadfoot-*.whl
"$target/bin/python" -m pip check
"$target/bin/python" -m pip uninstall --quiet --yes pip setuptools 2>/dev/null || "$target/bin/python" -m pip uninstall --quiet --yes pip
"$target/bin/steadfoot" --help >/dev/null
finished=yes
echo "Steadfoot is in $target."
