import { PGlite } from "@electric-sql/pglite";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { openPglite } from "../../../src/persistence/database/open-embedded.js";
import { openServer } from "../../../src/persistence/database/open-server.js";
import { startPostgres } from "./start-postgres.js";

export interface ServerTemplate {
  /** Address of the maintenance database. */
  readonly url: string;
  /** Name of a migrated database, to be cloned. */
  readonly template: string;
}

export interface EmbeddedTemplate {
  /** A dump of a migrated database. */
  readonly file: string;
}

export function makeTemplate(what: string): Promise<{ readonly answer: object; stop(): Promise<void> }> {
  switch (what) {
    case "/server":
      return serverTemplate();
    case "/embedded":
      return embeddedTemplate();
    default:
      return Promise.reject(new Error(`there is no template ${what}`));
  }
}

async function serverTemplate() {
  const server = await startPostgres();
  const answer: ServerTemplate = { url: server.url, template: "prepwright_template" };
  const opened = await openServer(await server.createDatabase(answer.template));
  await opened.close();
  return { answer, stop: () => server.stop() };
}

async function embeddedTemplate() {
  const folder = await mkdtemp(join(tmpdir(), "prepwright-test-"));
  const pglite = await PGlite.create();
  const opened = await openPglite(pglite);
  const dump = await pglite.dumpDataDir("none");
  const answer: EmbeddedTemplate = { file: join(folder, "embedded-template.tar") };
  await writeFile(answer.file, new Uint8Array(await dump.arrayBuffer()));
  await opened.close();
  return { answer, stop: () => rm(folder, { recursive: true, force: true }) };
}
