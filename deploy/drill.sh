#!/bin/sh
# What is done when a machine fails, done beforehand on this one, with what was lost and doubled counted and printed.
#   sh deploy/drill.sh restore     the disk is lost after the last backup; SQLite
#   sh deploy/drill.sh proxy       deploy/Caddyfile before a real server: TLS, limits, streams, invented addresses, restarts
#   sh deploy/drill.sh postgresql  roles, migration, backup under load and restore as deploy/postgresql writes them down
#   sh deploy/drill.sh failover    the primary of two PostgreSQL servers is killed while phones send
set -eu
cd "$(dirname "$0")/.."
. deploy/prepare.sh

case "${1:-}" in
restore | failover | proxy | postgresql) ;;
*) fail "Name a drill: restore, failover, proxy or postgresql." ;;
esac
prepare_tests
exec python -W ignore -m "deploy.drills.$1"
