#!/bin/sh
# Installs Steadfoot into .venv of this checkout, if anything changed, and serves the demonstration practice.
#   sh deploy/demo.sh [--port N]      all arguments go to `steadfoot demo`; Ctrl-C ends it
# Needs Python 3.11 or newer and, the first time, a network connection to the Python and npm package registries.
set -eu
cd "$(dirname "$0")/.."
. deploy/prepare.sh

STAMP=$VENV/demo.stamp
sources() { fingerprint pyproject.toml deploy/requirements.txt deploy/build_frontend.py frontend; }

install_all() {
  say "Steadfoot: installing into $PWD/$VENV. The first time takes one to three minutes."
  make_venv
  : >$LOG
  rm -f $STAMP
  progress "1/2 Installing the $(grep -c '==' deploy/requirements.txt) Python packages of the lock file" \
    pip_install --require-hashes --requirement deploy/requirements.txt || fail_with_log "The Python packages could not be installed"
  progress "2/2 Building the phone app and the desk, and installing Steadfoot" \
    pip_install --no-deps --editable . || fail_with_log "Steadfoot could not be built"
  sources >$STAMP
}

if ! venv_usable || [ ! -x $VENV/bin/steadfoot ] || [ ! -d backend/steadfoot/static/app ] ||
  [ "$(cat $STAMP 2>/dev/null)" != "$(sources)" ]; then
  install_all
fi
say "Starting the demonstration practice. Ctrl-C ends it."
exec $VENV/bin/steadfoot demo "$@"
