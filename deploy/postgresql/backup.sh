#!/bin/sh
# A dump of the PostgreSQL database that is tried before it counts: restored into a scratch database, every table counted.
# Keeps 30 days and 12 months, and writes last-backup.json, which the server's status page and metrics read.
#   sh backup.sh            once; ends with 1 and says why if anything was not as it should be
#   sh backup.sh daily      for ever, once a day at BACKUP_AT (02:30, UTC)
# Connection by libpq's own variables (PGHOST, PGUSER, PGDATABASE, PGSSLMODE ...); PASSWORD_FILE names the password's file.
set -u
folder=${BACKUP_DIR:-/var/backups/steadfoot}
scratch=${SCRATCH:-steadfoot_check}
umask 077
[ -z "${PASSWORD_FILE:-}" ] || PGPASSWORD=$(cat "$PASSWORD_FILE")
[ -z "${PASSWORD_FILE:-}" ] || export PGPASSWORD

now() { date -u +%Y-%m-%dT%H:%M:%SZ; }
# Field names as steadfoot.installation.record reads them. The move is one step: nobody reads half a file.
record() { # ok file bytes problem
  printf '{"at": "%s", "ok": %s, "file": "%s", "size_bytes": %s, "verified_at": %s, "problem": "%s"}\n' \
    "$started" "$1" "$2" "$3" "$([ "$1" = true ] && printf '"%s"' "$(now)" || printf null)" "$4" >"$folder/.last-backup" &&
    { [ "$1" = false ] || cp "$folder/.last-backup" "$folder/last-good-backup.json"; } &&
    mv "$folder/.last-backup" "$folder/last-backup.json"
}
failed() {
  echo "No backup was made: $1" >&2
  rm -f "$folder/.making.dump"
  dropdb --if-exists "$scratch" 2>/dev/null
  record false "" 0 "$1"
  return 1
}
# Every table with its number of rows. Exact: an estimate would prove nothing.
COUNTS="SELECT format('SELECT %L, count(*) FROM public.%I', tablename, tablename) FROM pg_tables WHERE schemaname = 'public' ORDER BY 1 \\gexec"

# What is counted is what is dumped, whatever is written meanwhile: both look at one snapshot, which this session holds.
dump_and_count() {
  psql -X -q -At -v ON_ERROR_STOP=1 <<EOF
BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY;
SELECT pg_export_snapshot() AS snapshot \gset
\setenv SNAPSHOT :snapshot
\! pg_dump --snapshot="\$SNAPSHOT" --format=custom --no-owner --no-privileges --file "$folder/.making.dump" || rm -f "$folder/.making.dump"
$COUNTS
COMMIT;
EOF
}
count() { printf '%s\n' "$COUNTS" | psql -X -q -At -v ON_ERROR_STOP=1 -d "$1"; }

# The newest of each of the last 30 days on which there is one, and of the last 12 months.
rotate() {
  ls -1 "$folder" | grep -E '^steadfoot-[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{6}Z\.dump$' | sort -r >"$folder/.all" || true
  awk '{ d = substr($0, 11, 10); m = substr($0, 11, 7)
         keep = 0
         if (!(d in days) && nd < 30) { days[d]; nd++; keep = 1 }
         if (!(m in months) && nm < 12) { months[m]; nm++; keep = 1 }
         if (!keep) print }' "$folder/.all" | while read -r old; do rm -f "$folder/$old"; done
  rm -f "$folder/.all"
}

once() {
  started=$(now)
  mkdir -p "$folder" || return 1
  name=steadfoot-$(date -u +%Y-%m-%dT%H%M%SZ).dump
  rm -f "$folder/.making.dump"
  wanted=$(dump_and_count) && [ -s "$folder/.making.dump" ] || { failed "pg_dump did not end well"; return 1; }
  dropdb --if-exists "$scratch" && createdb "$scratch" || { failed "the scratch database could not be made"; return 1; }
  pg_restore --exit-on-error --no-owner --no-privileges --dbname "$scratch" "$folder/.making.dump" ||
    { failed "the dump cannot be restored"; return 1; }
  found=$(count "$scratch") || { failed "the restored tables cannot be counted"; return 1; }
  [ "$wanted" = "$found" ] || { failed "the restored tables have other numbers of rows"; return 1; }
  printf '%s\n' "$found" | grep -q '^alembic_version|1$' || { failed "the dump holds no schema of Steadfoot"; return 1; }
  dropdb "$scratch"
  mv "$folder/.making.dump" "$folder/$name"
  rotate
  size=$(wc -c <"$folder/$name" | tr -d ' ')
  record true "$name" "$size" ""
  echo "$folder/$name: $size bytes, restored once and counted ($(printf '%s\n' "$found" | wc -l | tr -d ' ') tables)."
}

if [ "${1:-once}" = once ]; then
  once
  exit $?
fi
trap 'exit 0' TERM INT
while :; do
  at=$(date -u -d "today ${BACKUP_AT:-02:30}" +%s)
  [ "$at" -gt "$(date -u +%s)" ] || at=$(date -u -d "tomorrow ${BACKUP_AT:-02:30}" +%s)
  sleep $((at - $(date -u +%s))) &
  wait $!
  once || true
done
