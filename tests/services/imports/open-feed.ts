import type { FeedKind, ImportRun, QuarantinedRow, RunKind } from "../../../src/persistence/imports/import-data.js";
import type { Deps } from "../../../src/services/deps.js";
import { feedSettingsSchema } from "../../../src/services/imports/feeds/feed-settings.js";
import { runImports } from "../../../src/services/imports/run-imports.js";

export const nightClock = (): Date => new Date("2026-03-01T04:00:00Z");
export const silentLog = { info: () => undefined, warn: () => undefined, error: () => undefined };

export async function* bytesOf(content: string | Uint8Array): AsyncGenerator<Uint8Array> {
  yield typeof content === "string" ? Buffer.from(content) : content;
  await Promise.resolve();
}

export interface TestFeed {
  readonly id: string;
  /** Queues a run of a file, works on it, and gives how it ended. */
  run(content: string | Uint8Array | null, asked?: Asked): Promise<ImportRun>;
  quarantined(run: ImportRun): Promise<readonly QuarantinedRow[]>;
}

const byTest = { by: "test", countsMore: false } as const;

interface Asked {
  readonly kind?: RunKind;
  readonly force?: boolean;
  readonly undoes?: string;
}

export interface GivenFeed {
  readonly publisher: string | null;
  readonly kind: FeedKind;
  readonly slug: string;
  readonly settings?: object;
}

export async function openFeed(deps: Deps, { publisher, kind, slug, settings = {} }: GivenFeed): Promise<TestFeed> {
  const { data } = deps;
  const limits = { changed: 1, quarantined: 1 };
  const whole = feedSettingsSchema.parse({ source: "The society's own files", limits, ...settings });
  const id = await data.feeds.save({
    ...{ publisher, slug, kind, settings: whole, cron: null, zone: "UTC", enabled: true },
  });
  return {
    id,
    run: async (
      content,
      { kind: runKind = "LOAD", force = false, undoes = null } = {} as Asked & { undoes?: null },
    ) => {
      const file =
        content === null ? null : (await data.importFiles.put(id, "file", bytesOf(content), nightClock(), byTest)).id;
      const order = { feed: id, file, kind: runKind, askedBy: "test", force, undoes };
      const run = await data.importRuns.queue(order, nightClock());
      if (run === null) throw new Error("another run is going on");
      await runImports(deps, "worker-1");
      const ended = await data.importRuns.byId(run);
      if (ended === null) throw new Error("the run is gone");
      return ended;
    },
    quarantined: async ({ id: run }) => {
      const page = { first: 1000, after: null, last: null, before: null };
      return (await data.importRuns.quarantined(run, page)).items.map(({ item }) => item);
    },
  };
}

/** State, and how many rows were read, created, changed, unchanged, quarantined and repeated. */
export const ending = (run: ImportRun): readonly unknown[] => [
  ...[run.state, run.read, run.created, run.changed, run.unchanged, run.quarantined, run.repeated],
];
