-- The role that services and workers run as on a Postgres server of yours. It owns nothing; `prepwright migrate --grant-to prepwright_service`
-- gives it what running takes. Run by a role that may make roles, in the database of Prepwright, as often as you like:
--
--     psql "$ADMIN_URL" --set ON_ERROR_STOP=1 --set service_password="$SERVICE_PASSWORD" --file postgres-roles.sql

DO $$
BEGIN
  CREATE ROLE prepwright_service;
EXCEPTION
  WHEN duplicate_object THEN NULL;
END
$$;

ALTER ROLE prepwright_service LOGIN NOCREATEDB NOCREATEROLE NOINHERIT PASSWORD :'service_password';

-- Nobody but the owner makes tables or functions that could stand in for ours.
REVOKE CREATE ON SCHEMA public FROM PUBLIC;
