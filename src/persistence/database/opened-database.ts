import type { Sql } from "../sql/plain-sql.js";
import type { PersistenceLog } from "./persistence-log.js";
import type { Data } from "../data.js";
import type { PrismaClient } from "../generated/client.js";
import type { Replicas } from "./open-replicas.js";
import type { FollowSignals } from "./change-signals.js";

export interface OpenedDatabase {
  readonly kind: "embedded" | "server";
  readonly data: Data;
  readonly client: PrismaClient;
  readonly sql: Sql;
  /** Names of this program's migrations that the database lacks. Rejects where it does not answer. */
  pendingMigrations(): Promise<readonly string[]>;
  /** null: there are none. */
  readonly replicas: Replicas | null;
  /** Tells of changes by any process. To be closed before the database. */
  readonly follow: FollowSignals;
  /** null: there is no pool, only one connection. */
  poolFigures(): PoolFigures | null;
  /** Waits for what is running. Safe to call twice. */
  close(): Promise<void>;
}

/** Connections to the database. */
export interface PoolFigures {
  readonly total: number;
  readonly idle: number;
  /** Who waits for one. */
  readonly waiting: number;
  /** The most that may be open. */
  readonly most: number;
}

/** Does the work, which sends that statement, and may note how long it took. */
export type AroundStatement = <T>(sql: string, work: () => Promise<T>) => Promise<T>;

type OnStatement = (sql: string, values: readonly unknown[]) => void;

export interface OpenOptions {
  readonly log?: PersistenceLog;
  /** Called with every statement `data` and `client` send, before it is sent. BEGIN and COMMIT are not among them. */
  readonly onStatement?: OnStatement;
  /** The same statements, while they are under way. */
  readonly aroundStatement?: AroundStatement;
}
