import { openServer } from "../src/persistence/database/open-server.js";
import { readDocuments } from "../src/imports/documents/read-documents.js";
import { readRecipes } from "../src/imports/recipes/read-recipes.js";
import { loadShippedRules } from "../src/services/rules/load-rule-set.js";
import type { Deps } from "../src/services/deps.js";
import { feedSettingsSchema } from "../src/services/imports/feeds/feed-settings.js";
import { runImports } from "../src/services/imports/run-imports.js";
import { demo, rules } from "../tests/graphql/open-test-app.js";

/**
 * `import-drafts.ts DATABASE_URL DOCUMENTS|RECIPES COUNT`: imports that many plan documents or recipes of the web, and reads the same bytes
 * alone as the baseline. Prints one JSON object: both in milliseconds.
 */
const [url = "", kind = "DOCUMENTS", count = "0"] = process.argv.slice(2);
const many = Number(count);
const clock = () => new Date();
const { data, close } = await openServer(url, { poolSize: 4 });
const deps: Deps = {
  data,
  clock,
  log: { info: () => undefined, warn: console.error, error: console.error },
  knownRules: new Map(),
};
await loadShippedRules(deps, rules);
await data.publishers.save(demo.publisher);
await data.foods.save(demo.foods);
const publisher = demo.publisher.slug;

const plan = (at: number): string => `kind: plan
publisher: ${publisher}
slug: lunch-${String(at)}
title: Lunch ${String(at)}
locale: en-GB
measured-in: metric
serves: 4
meals:
  - slug: lunch
    title: Lunch
    day: 0
    lines:
      - { food: carrot, amount: ${String(200 + (at % 300))} g }
      - { food: pearl-barley, amount: ${String(100 + (at % 90))} g }
      - { food: salt, rule: to taste }
    steps:
      - { do: Boil and serve., time: 40 min, uses: [carrot, pearl-barley, salt] }
`;
const recipe = (at: number): object => ({
  "@type": "Recipe",
  "@id": `https://example.org/lunch-${String(at)}`,
  name: `Lunch ${String(at)}`,
  recipeYield: "4 servings",
  totalTime: "PT40M",
  recipeIngredient: [
    `${String(200 + (at % 300))} g carrots, sliced`,
    `${String(100 + (at % 90))} g pearl barley`,
    "salt, to taste",
  ],
  recipeInstructions: ["Boil.", "Serve."],
});
const numbers = Array.from({ length: many }, (_, at) => at);
const isRecipes = kind === "RECIPES";
const text = isRecipes ? JSON.stringify(numbers.map(recipe)) : numbers.map(plan).join("---\n");

const readStart = performance.now();
const found = isRecipes
  ? readRecipes(Buffer.from(text), "file").records.length
  : numbers.reduce((sum, at) => sum + readDocuments(plan(at), "file").documents.length, 0);
const read = performance.now() - readStart;
if (found !== many) throw new Error(`${String(found)} of ${count} were read`);

async function* bytes(): AsyncGenerator<Uint8Array> {
  yield Buffer.from(text);
  await Promise.resolve();
}
const settings = feedSettingsSchema.parse({ source: "A made-up magazine", locale: "en" });
const feed = await data.feeds.save({
  publisher,
  slug: "magazine",
  kind: isRecipes ? "RECIPES" : "DOCUMENTS",
  settings,
  cron: null,
  zone: "UTC",
  enabled: true,
});
const file = await data.importFiles.put(feed, "file", bytes(), clock());
const id = await data.importRuns.queue(
  { feed, file: file.id, kind: "LOAD", askedBy: "bench", force: true, undoes: null },
  clock(),
);
const start = performance.now();
await runImports(deps, "bench");
const ms = performance.now() - start;
const run = id === null ? null : await data.importRuns.byId(id);
if (run?.state !== "DONE" || run.created !== many) throw new Error(`the import ended ${JSON.stringify(run)}`);
await close();
console.log(JSON.stringify({ ms, read }));
