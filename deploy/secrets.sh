#!/bin/sh
# Makes the secrets that the compose files name, once: random passwords, and a certificate for the way to the database.
#   sh deploy/secrets.sh [FOLDER]      deploy/secrets by default; what is there already is kept
set -eu
folder=${1:-$(dirname "$0")/secrets}
host=${DATABASE_HOST:-database}
umask 077
mkdir -p "$folder"
cd "$folder"

made() { [ -s "$1" ]; }
random() { openssl rand -hex 24; }
url() { printf 'postgresql+psycopg://%s:%s@%s/steadfoot?sslmode=verify-full&sslrootcert=%s' "$1" "$(cat "$2")" "$host" "${AUTHORITY:-/run/secrets/database_authority}"; }

for name in superuser_password owner_password app_password backup_password steadfoot_metrics_token; do
  made $name || random | tr -d '\n' >$name
done
made owner_url || url steadfoot_owner owner_password >owner_url
made app_url || url steadfoot_app app_password >app_url

# An authority of this folder's own, which signs one name and is then thrown away: nobody can sign another.
if ! made database_certificate; then
  openssl req -x509 -newkey ec -pkeyopt ec_paramgen_curve:prime256v1 -nodes -days 3650 -subj "/CN=Steadfoot database authority" \
    -keyout authority.key -out database_authority 2>/dev/null
  openssl req -newkey ec -pkeyopt ec_paramgen_curve:prime256v1 -nodes -subj "/CN=$host" -keyout database_key -out request.pem 2>/dev/null
  printf 'subjectAltName=DNS:%s' "$host" >names
  openssl x509 -req -in request.pem -CA database_authority -CAkey authority.key -CAcreateserial -days 3650 -extfile names \
    -out database_certificate 2>/dev/null
  rm -f authority.key request.pem names database_authority.srl
fi
# A container reads them as a user of its own; the folder is closed to everyone else.
chmod 0444 ./*
echo "The secrets are in $folder. Keep a copy where the backups are not."
