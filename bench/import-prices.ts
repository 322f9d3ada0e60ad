import { openServer } from "../src/persistence/database/open-server.js";
import type { Deps } from "../src/services/deps.js";
import { feedSettingsSchema } from "../src/services/imports/feeds/feed-settings.js";
import { runImports } from "../src/services/imports/run-imports.js";

/**
 * A process of its own, so that its peak memory is that of one import: `import-prices.ts DATABASE_URL ROWS`. Prints one JSON
 * object: milliseconds of the run (the file was received before) and the peak of resident memory in bytes.
 */
const [url = "", count = "0"] = process.argv.slice(2);
const rows = Number(count);
const clock = () => new Date();
const log = { info: () => undefined, warn: console.error, error: console.error };
const { data, close } = await openServer(url, { poolSize: 4 });
const deps: Deps = { data, clock, log, knownRules: new Map() };
const foods = Array.from({ length: 1000 }, (_, at) => `food-${String(at)}`);
await data.foods.save(
  foods.map((slug) => ({
    slug,
    names: [{ language: "en", region: null, one: slug, many: slug, also: [] }],
    aisle: "other",
    shoppedBy: "MASS" as const,
    ndbNo: null,
    ...{
      densities: [],
      measures: [],
      parts: [],
      edible: [],
      yields: [],
      allergens: [],
      diets: [],
      keeping: [],
      packs: [],
    },
    nutrients: null,
    keepsAs: null,
    alwaysThere: false,
  })),
);

/** Rows as a shop sends them, in pieces. The baseline copies the same facts. */
async function* list(): AsyncGenerator<Uint8Array> {
  let text = "food,pack,name,content,price,currency,region,seen\n";
  for (let at = 0; at < rows; at += 1) {
    const price = `${String(1 + Math.floor((at % 50) / 10))}.${String(10 + (at % 90))}`;
    text += `food-${String(at % 1000)},pack-${String(at)},bag,${String(100 + (at % 50) * 10)} g,${price},XTS,XA,2026-03-01\n`;
    if (text.length < 65_536) continue;
    yield Buffer.from(text);
    text = "";
  }
  yield Buffer.from(text);
}

const settings = feedSettingsSchema.parse({ source: "A made-up shop", locale: "en" });
const feed = await data.feeds.save({
  publisher: null,
  slug: `shop-${count}`,
  kind: "PRICES",
  settings,
  cron: null,
  zone: "UTC",
  enabled: true,
});
const file = await data.importFiles.put(feed, "list.csv", list(), clock());
const id = await data.importRuns.queue(
  { feed, file: file.id, kind: "LOAD", askedBy: "bench", force: false, undoes: null },
  clock(),
);
const start = performance.now();
await runImports(deps, "bench");
const ms = performance.now() - start;
const run = id === null ? null : await data.importRuns.byId(id);
if (run?.state !== "DONE" || run.created !== rows) throw new Error(`the import ended ${JSON.stringify(run)}`);
await close();
console.log(JSON.stringify({ ms, peak: process.resourceUsage().maxRSS * 1024 }));
