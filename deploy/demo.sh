#!/bin/sh
# Installs Steadfoot into .venv of this checkout, if anything changed, and serves the demonstration practice.
#   sh deploy/demo.sh [--port N]      all arguments go to `steadfoot demo`; Ctrl-C ends it
# Needs Python 3.11 or newer and, the first time, a network connection to the Python and npm package registries.
set -eu
cd "$(dirname "$0")/.."
. deploy/prepare.sh

install_steadfoot deploy/requirements.txt $VENV/demo.stamp
say "Starting the demonstration practice. Ctrl-C ends it."
exec $VENV/bin/steadfoot demo "$@"
