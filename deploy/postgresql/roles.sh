#!/bin/sh
# Run once by the database's container, when its volume is new: the roles of roles.sql with the passwords of the secrets.
set -eu
secret() { cat "/run/secrets/$1"; }
exec psql --username postgres --dbname "$POSTGRES_DB" --file /etc/postgresql/roles.sql \
  --set owner_password="$(secret owner_password)" --set app_password="$(secret app_password)" \
  --set backup_password="$(secret backup_password)"
