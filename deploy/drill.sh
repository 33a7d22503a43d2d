#!/bin/sh
# What is done when a machine fails, done beforehand on this one, with what was lost and doubled counted and printed.
#   sh deploy/drill.sh restore     the disk is lost after the last backup; SQLite
#   sh deploy/drill.sh failover    the primary of two PostgreSQL servers is killed while phones send
set -eu
cd "$(dirname "$0")/.."
. deploy/prepare.sh

case "${1:-}" in
restore | failover) ;;
*) fail "Name a drill: sh deploy/drill.sh restore, or sh deploy/drill.sh failover." ;;
esac
prepare_tests
exec python -W ignore -m "deploy.drills.$1"
