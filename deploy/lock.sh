#!/bin/sh
# Makes the lock files again from pyproject.toml: every version and hash, for every platform, no addresses.
# `sh deploy/lock.sh` keeps what is locked where it still fits; `sh deploy/lock.sh --upgrade` takes the newest.
set -eu
cd "$(dirname "$0")/.."
. deploy/prepare.sh

make_venv
"$VENV/bin/python" -m pip install --quiet "uv>=0.9,<1"
lock() {
  "$VENV/bin/uv" pip compile --quiet --universal --generate-hashes --python-version 3.11 --no-emit-index-url \
    --no-emit-find-links --custom-compile-command "sh deploy/lock.sh" "$@"
}
lock --extra postgresql --output-file deploy/requirements.txt pyproject.toml "$@"
lock --extra test --constraint deploy/requirements.txt --output-file deploy/requirements-test.txt pyproject.toml "$@"
lock --extra mutation --constraint deploy/requirements-test.txt --output-file deploy/requirements-mutation.txt pyproject.toml "$@"
# What builds the wheel, by itself: an installation throws it away.
"$VENV/bin/python" -c 'import tomllib; print(*tomllib.load(open("pyproject.toml", "rb"))["build-system"]["requires"], sep="\n")' |
  lock --constraint deploy/requirements-test.txt --output-file deploy/requirements-build.txt - "$@"
count() { grep -c '==' "deploy/$1"; }
say "Locked: $(count requirements.txt) packages to run, $(count requirements-test.txt) to test," \
  "$(count requirements-mutation.txt) to test the tests of the rules."
