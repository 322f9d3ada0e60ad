// @ts-nocheck
import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { PGlite } from "@electric-sql/pglite";
import { bindMigrationAwareSqlAdapterFactory } from "@prisma/driver-adapter-utils";
import * as bindings from "@prisma/schema-engine-wasm/schema_engine_bg";
import { PrismaPGlite } from "pglite-prisma-adapter";

/**
 * The schema engine as WebAssembly: no binary to download. It compares schema.prisma with a migrated database and
 * writes the SQL between them.
 */

let loaded;

async function loadEngine() {
  const require = createRequire(import.meta.url);
  const wasm = await readFile(require.resolve("@prisma/schema-engine-wasm/schema_engine_bg").replace(/\.js$/, ".wasm"));
  const { instance } = await WebAssembly.instantiate(wasm, { "./schema_engine_bg.js": bindings });
  bindings.__wbg_set_wasm(instance.exports);
  instance.exports.__wbindgen_start();
  return bindings.SchemaEngine;
}

/**
 * SQL that turns the database behind `pglite` into what the schema says; null where they already agree.
 * @param {import("@electric-sql/pglite").PGlite} pglite
 * @param {string} schema text of schema.prisma
 * @returns {Promise<string | null>}
 */
export async function schemaDrift(pglite, schema) {
  const files = [{ path: "schema.prisma", content: schema }];
  const { exitCode, stdout } = await withEngine(pglite, schema, (engine) =>
    engine.diff({
      from: { tag: "schemaDatasource", files, configDir: "." },
      to: { tag: "schemaDatamodel", files },
      script: true,
      exitCode: true,
      filters: { externalTables: [], externalEnums: [] },
    }),
  );
  return exitCode === 0 ? null : stdout;
}

async function withEngine(pglite, schema, work) {
  loaded ??= loadEngine();
  const SchemaEngine = await loaded;
  const adapter = bindMigrationAwareSqlAdapterFactory(new PrismaPGlite(pglite));
  const engine = await SchemaEngine.new({ datamodels: [["schema.prisma", schema]] }, () => undefined, adapter);
  try {
    return await work(engine);
  } finally {
    engine.free();
  }
}

/** A database in memory with these scripts run in order. @param {readonly string[]} scripts */
export async function migratedInMemory(scripts) {
  const pglite = await PGlite.create();
  for (const script of scripts) await pglite.exec(script);
  return pglite;
}

/**
 * What the ordinary command line would say about a database and a folder of migrations.
 * @param {import("@electric-sql/pglite").PGlite} pglite
 * @param {string} schema text of schema.prisma
 * @param {readonly { name: string; script: string }[]} migrations
 */
export async function historyAsPrismaSeesIt(pglite, schema, migrations) {
  return withEngine(pglite, schema, (engine) =>
    engine.diagnoseMigrationHistory({
      migrationsList: {
        baseDir: "prisma/migrations",
        lockfile: { path: "migration_lock.toml", content: 'provider = "postgresql"' },
        shadowDbInitScript: "",
        migrationDirectories: migrations.map(({ name, script }) => ({
          path: name,
          migrationFile: { path: "migration.sql", content: { tag: "ok", value: script } },
        })),
      },
      optInToShadowDatabase: false,
      filters: { externalTables: [], externalEnums: [] },
    }),
  );
}
