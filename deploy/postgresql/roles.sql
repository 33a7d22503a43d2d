-- Three roles, so that a hole in the server is no hole in the schema. Run once by a superuser in the database steadfoot:
--   psql -d steadfoot -v owner_password=... -v app_password=... -v backup_password=... -f deploy/postgresql/roles.sql
-- Then `steadfoot migrate` as the owner, `steadfoot serve` as the app: it finds the schema in place and changes nothing of it.
-- Roles are the whole server's, rights one database's: in a new database, as before a restore, it is run without passwords.
\set ON_ERROR_STOP on
\if :{?owner_password}
CREATE ROLE steadfoot_owner LOGIN PASSWORD :'owner_password' NOSUPERUSER NOCREATEDB NOCREATEROLE;
CREATE ROLE steadfoot_app LOGIN PASSWORD :'app_password' NOSUPERUSER NOCREATEDB NOCREATEROLE;
-- Creates and drops the scratch database in which each dump is tried.
CREATE ROLE steadfoot_backup LOGIN PASSWORD :'backup_password' NOSUPERUSER CREATEDB NOCREATEROLE;
\endif

REVOKE ALL ON DATABASE :"DBNAME" FROM PUBLIC;
REVOKE ALL ON SCHEMA public FROM PUBLIC;
GRANT CONNECT ON DATABASE :"DBNAME" TO steadfoot_owner, steadfoot_app, steadfoot_backup;
GRANT USAGE, CREATE ON SCHEMA public TO steadfoot_owner;
GRANT USAGE ON SCHEMA public TO steadfoot_app, steadfoot_backup;

-- Rows, not tables: no CREATE, ALTER, DROP or TRUNCATE.
ALTER DEFAULT PRIVILEGES FOR ROLE steadfoot_owner IN SCHEMA public
  GRANT SELECT, INSERT, UPDATE, DELETE ON TABLES TO steadfoot_app;
ALTER DEFAULT PRIVILEGES FOR ROLE steadfoot_owner IN SCHEMA public GRANT USAGE, SELECT ON SEQUENCES TO steadfoot_app;
ALTER DEFAULT PRIVILEGES FOR ROLE steadfoot_owner IN SCHEMA public GRANT SELECT ON TABLES TO steadfoot_backup;
ALTER DEFAULT PRIVILEGES FOR ROLE steadfoot_owner IN SCHEMA public GRANT SELECT ON SEQUENCES TO steadfoot_backup;

-- Whoever forgets to end a transaction, or waits for a lock, is ended. A migration may take as long as it takes.
ALTER ROLE steadfoot_app SET statement_timeout = '30s';
ALTER ROLE steadfoot_app SET lock_timeout = '10s';
ALTER ROLE steadfoot_app SET idle_in_transaction_session_timeout = '60s';
