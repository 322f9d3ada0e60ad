import type { PGlite } from "@electric-sql/pglite";
import type pg from "pg";
import { from as copyFrom } from "pg-copy-streams";
import { Readable } from "node:stream";
import { pipeline } from "node:stream/promises";
import type { Sql } from "./plain-sql.js";

/** A connection inside one transaction. */
export interface BulkSession extends Sql {
  /** `into` is a table and its columns: `prices (food, price)`. Rows are in the text format of COPY (`copyLine`). */
  copy(into: string, rows: string): Promise<void>;
}

/** Plain SQL and COPY in a transaction of its own, for what moves many rows: Prisma has no COPY. */
export interface BulkSql {
  /** The most rows that one statement is to compare or write; Infinity: as many as there are. */
  readonly rowsAtOnce: number;
  transaction<T>(work: (session: BulkSession) => Promise<T>): Promise<T>;
}

/** On a pool of connections to a server. */
export const serverBulk = (pool: pg.Pool): BulkSql => ({
  rowsAtOnce: Number.POSITIVE_INFINITY,
  transaction: async (work) => {
    const client = await pool.connect();
    let broken: Error | null = null;
    try {
      await client.query("BEGIN");
      const done = await work({
        query: (text, values) => client.query(text, values === undefined ? undefined : [...values]),
        copy: async (into, rows) => {
          await pipeline(Readable.from([rows]), client.query(copyFrom(`COPY ${into} FROM STDIN`)));
        },
      });
      await client.query("COMMIT");
      return done;
    } catch (error) {
      await client.query("ROLLBACK").catch((cause: unknown) => {
        broken = cause instanceof Error ? cause : new Error(String(cause));
      });
      throw error;
    } finally {
      // A connection that cannot even roll back is thrown away.
      client.release(broken ?? false);
    }
  },
});

/** A statement of the embedded database keeps the thread, on which readers are answered. So many rows are some 60 ms at most. */
const rowsInTurn = 1_000;

/** On the embedded database. Every other statement waits meanwhile: it has one session. */
export const embeddedBulk = (pglite: PGlite): BulkSql => ({
  rowsAtOnce: rowsInTurn,
  transaction: (work) =>
    pglite.transaction((session) =>
      work({
        query: async (text, values) => {
          if (values !== undefined) return session.query<Record<string, unknown>>(text, [...values]);
          return { rows: (await session.exec(text)).at(-1)?.rows ?? [] };
        },
        copy: async (into, rows) => {
          await session.query(`COPY ${into} FROM '/dev/blob'`, [], { blob: new Blob([rows]) });
        },
      }),
    ),
});

const special = /[\\\t\n\r]/;

const escaped = (text: string): string =>
  special.test(text)
    ? text.replace(/\\/g, "\\\\").replace(/\t/g, "\\t").replace(/\n/g, "\\n").replace(/\r/g, "\\r")
    : text;

/** One row in the text format of COPY, with its line feed. null is `\N`. */
export const copyLine = (fields: readonly (string | number | null)[]): string =>
  `${fields.map((field) => (field === null ? "\\N" : typeof field === "number" ? String(field) : escaped(field))).join("\t")}\n`;
