import { PGlite } from "@electric-sql/pglite";
import { randomUUID } from "node:crypto";
import { openAsBlob } from "node:fs";
import pg from "pg";
import { afterAll, describe, inject } from "vitest";
import { openPglite } from "../../src/persistence/database/open-embedded.js";
import { openServer } from "../../src/persistence/database/open-server.js";
import type { OpenedDatabase, OpenOptions } from "../../src/persistence/database/opened-database.js";
import type { EmbeddedTemplate, ServerTemplate } from "./postgres/templates.js";

export interface StatementLog {
  /** SQL sent through `data` and `client` since opening or since `clear`. BEGIN and COMMIT are not among them. */
  readonly sent: readonly string[];
  clear(): void;
}

/** A fresh, migrated, empty database of its own. It is closed and dropped when the suite ends. */
export interface TestDatabase extends OpenedDatabase {
  readonly statements: StatementLog;
  /** Address of the database on the server; null for the embedded one. */
  readonly url: string | null;
}

export type OpenTestDatabase = () => Promise<TestDatabase>;

/**
 * The same suite on both databases. `open` gives a new database each time it is called:
 *
 *     describeOnBothDatabases("plans", (open) => {
 *       let database: TestDatabase;
 *       beforeAll(async () => { database = await open(); });
 *       it("…", async () => { await database.data.…; });
 *     });
 */
export function describeOnBothDatabases(name: string, suite: (open: OpenTestDatabase) => void): void {
  describeOnEmbedded(name, suite);
  describeOnServer(name, suite);
}

/** For what stands so far above the database that one of them will do. */
export function describeOnEmbedded(name: string, suite: (open: OpenTestDatabase) => void): void {
  describe(`${name} (embedded database)`, () => suite(closingAfterSuite(openTestEmbedded)));
}

/** For what only a server has: several connections at once. */
export function describeOnServer(name: string, suite: (open: OpenTestDatabase) => void): void {
  describe(`${name} (Postgres server)`, () => suite(closingAfterSuite(openTestServer)));
}

function closingAfterSuite(open: OpenTestDatabase): OpenTestDatabase {
  const opened: TestDatabase[] = [];
  afterAll(async () => {
    await Promise.all(opened.map((database) => database.close()));
  });
  return async () => {
    const database = await open();
    opened.push(database);
    return database;
  };
}

/** In memory, from a dump of a migrated database. */
async function openTestEmbedded(): Promise<TestDatabase> {
  const { statements, onStatement } = statementLog();
  const { file } = await embeddedTemplate();
  const pglite = await PGlite.create({ loadDataDir: await openAsBlob(file) });
  return { ...(await openPglite(pglite, { onStatement })), statements, url: null };
}

/** Cloned from a migrated database on the server of this run. */
async function openTestServer(): Promise<TestDatabase> {
  const { statements, onStatement } = statementLog();
  const url = await createTestDatabase();
  const opened = await openServer(url, { onStatement, poolSize: 5 });
  const close = () => opened.close().then(() => dropTestDatabase(url));
  return { ...opened, close, statements, url };
}

/**
 * Makes a database on the server of this run and returns its address. The caller drops it, or leaves it: the server's folder is
 * removed after the run.
 */
export async function createTestDatabase(from: "migrated" | "empty" = "migrated"): Promise<string> {
  const name = `test_${randomUUID().replaceAll("-", "")}`;
  const { url, template } = await serverTemplate();
  await onServer(`CREATE DATABASE ${name} TEMPLATE ${from === "migrated" ? template : "template0"}`);
  return Object.assign(new URL(url), { pathname: `/${name}` }).href;
}

export const dropTestDatabase = (url: string): Promise<void> =>
  onServer(`DROP DATABASE ${new URL(url).pathname.slice(1)} WITH (FORCE)`);

async function onServer(statement: string): Promise<void> {
  const { url } = await serverTemplate();
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    await client.query(statement);
  } finally {
    await client.end();
  }
}

const serverTemplate = () => askFor<ServerTemplate>("/server");
const embeddedTemplate = () => askFor<EmbeddedTemplate>("/embedded");

/** Made once a run, when the first suite asks. */
async function askFor<T>(what: string): Promise<T> {
  const response = await fetch(inject("databaseTemplates") + what);
  if (!response.ok) throw new Error(await response.text());
  return (await response.json()) as T;
}

function statementLog(): { statements: StatementLog } & Required<Pick<OpenOptions, "onStatement">> {
  const sent: string[] = [];
  return {
    statements: { sent, clear: () => void sent.splice(0) },
    onStatement: (sql) => void sent.push(sql),
  };
}
