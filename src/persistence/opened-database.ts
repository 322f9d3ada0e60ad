import type { Data } from "./data.js";
import type { PrismaClient } from "./generated/client.js";
import type { Replicas } from "./open-replicas.js";

/** Rows as the driver gives them: JSON parsed, times as Date. */
export interface SqlAnswer {
  readonly rows: readonly Readonly<Record<string, unknown>>[];
}

/** Plain SQL, for what brings its own tables (the job queue). Without values, the text may hold several statements. */
export interface Sql {
  query(text: string, values?: readonly unknown[]): Promise<SqlAnswer>;
}

export interface OpenedDatabase {
  readonly kind: "embedded" | "server";
  readonly data: Data;
  readonly client: PrismaClient;
  readonly sql: Sql;
  /** Names of this program's migrations that the database lacks. Rejects where it does not answer. */
  pendingMigrations(): Promise<readonly string[]>;
  /** null: there are none. */
  readonly replicas: Replicas | null;
  /** Waits for what is running. Safe to call twice. */
  close(): Promise<void>;
}

/** Facts first, then a sentence. */
export interface PersistenceLog {
  info(facts: object, message: string): void;
  warn(facts: object, message: string): void;
}

export type OnStatement = (sql: string, values: readonly unknown[]) => void;

export interface OpenOptions {
  readonly log?: PersistenceLog;
  /** Called with every statement `data` and `client` send, before it is sent. BEGIN and COMMIT are not among them. */
  readonly onStatement?: OnStatement;
}
