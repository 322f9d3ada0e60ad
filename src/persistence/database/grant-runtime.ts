import type { Sql } from "../sql/plain-sql.js";

/**
 * What a role may that runs the service and owns nothing: read and write, but not change or delete what is written once. The triggers on these
 * tables say the same to everybody; a role that does not own them cannot take the triggers away either.
 */
const writtenOnce: readonly (readonly [table: string, columnsThatMayChange: string | null])[] = [
  ["audit_entries", null],
  ["revisions", `"withdrawn_at", "withdrawn_because"`],
  ["revision_foods", null],
  ["revision_components", null],
  ["revision_words", null],
  ["rule_sets", null],
  // A change gets its position when its transaction commits.
  ["changes", `"position"`],
];

/** The tables whose rows stay as they were written. */
export const tablesWrittenOnce: readonly string[] = writtenOnce.map(([table]) => table);

/**
 * Gives a role what running the service takes, and takes from it what it has beyond that, all at once: whoever runs meanwhile notices nothing. Asked by the owner
 * of the tables, after each migration: a table that comes is nobody's but its owner's. @throws RoleUnfit
 */
export async function grantRuntime(sql: Sql, role: string): Promise<void> {
  const name = quoted(role);
  const { rows } = await sql.query(
    `SELECT r.rolsuper OR r.rolcreaterole OR pg_has_role(r.rolname, current_user, 'MEMBER') AS "mighty", current_database() AS "database"
     FROM pg_roles r WHERE r.rolname = $1`,
    [role],
  );
  const [found] = rows;
  if (found === undefined)
    throw new RoleUnfit(role, "there is no such role; make it first, as docs/operations.md shows");
  if (found["mighty"] === true) {
    throw new RoleUnfit(
      role,
      "it may already do whatever the owner may; name one of its own, as docs/operations.md shows",
    );
  }
  // Statements of one text are one transaction.
  await sql.query(
    [
      `GRANT CONNECT ON DATABASE ${quoted(String(found["database"]))} TO ${name}`,
      `GRANT USAGE ON SCHEMA public, pgboss TO ${name}`,
      `REVOKE CREATE ON SCHEMA public, pgboss FROM ${name}`,
      `REVOKE ALL ON ALL TABLES IN SCHEMA public, pgboss FROM ${name}`,
      `GRANT SELECT, INSERT, UPDATE, DELETE ON ALL TABLES IN SCHEMA public, pgboss TO ${name}`,
      // Migrations are the owner's.
      `REVOKE INSERT, UPDATE, DELETE ON "_prisma_migrations" FROM ${name}`,
      ...writtenOnce.flatMap(([table, columns]) => [
        `REVOKE UPDATE, DELETE ON "${table}" FROM ${name}`,
        ...(columns === null ? [] : [`GRANT UPDATE (${columns}) ON "${table}" TO ${name}`]),
      ]),
      // It is emptied whole, between two price lists.
      `GRANT TRUNCATE ON "staged_prices" TO ${name}`,
      `GRANT USAGE, SELECT ON ALL SEQUENCES IN SCHEMA public, pgboss TO ${name}`,
      `GRANT EXECUTE ON ALL FUNCTIONS IN SCHEMA public, pgboss TO ${name}`,
    ].join(";\n"),
  );
}

/** A role that cannot be given the rights of a service. */
export class RoleUnfit extends Error {
  override readonly name = "RoleUnfit";

  constructor(role: string, why: string) {
    super(`the role ${role} cannot run the service: ${why}`);
  }
}

const quoted = (name: string): string => `"${name.replaceAll('"', '""')}"`;
