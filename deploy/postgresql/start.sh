#!/bin/sh
# Begins the database's container: the server insists on a key that only it can read, and a mounted secret is not.
set -eu
install -d -o postgres -g postgres -m 0700 /var/run/postgresql/tls
install -o postgres -g postgres -m 0600 /run/secrets/database_key /var/run/postgresql/tls/server.key
install -o postgres -g postgres -m 0644 /run/secrets/database_certificate /var/run/postgresql/tls/server.crt
exec docker-entrypoint.sh "$@"
