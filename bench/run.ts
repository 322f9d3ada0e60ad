import { parseArgs } from "node:util";
import type { Benchmark } from "./benchmark.js";
import { documentBenchmarks } from "./documents.js";
import { engineBenchmarks } from "./engine.js";
import { generatedBenchmark } from "./generated-server.js";
import { hotPathBenchmarks } from "./hot-path.js";
import { importBenchmarks } from "./imports.js";
import { packBenchmarks } from "./packs.js";
import { parseBenchmarks } from "./parse.js";
import { refusalBenchmarks } from "./refusals.js";
import { sessionBenchmarks } from "./prep-session.js";
import { importBesideReaders } from "./import-beside-readers.js";
import { longestTurn } from "./longest-turn.js";
import { find } from "./find.js";
import { slugLookup } from "./slug-lookup.js";
import { foodsBenchmark } from "./foods.js";

/** `--json`: one object a line; `--only NAME`: one group; `--minutes N`: how long `steady` runs. Prints what was measured; a missed aim is no failure. */
const { values } = parseArgs({
  options: {
    json: { type: "boolean", default: false },
    only: { type: "string" },
    minutes: { type: "string", default: "10" },
  },
});
const all: readonly Benchmark[] = [
  ...engineBenchmarks,
  ...packBenchmarks,
  ...parseBenchmarks,
  ...documentBenchmarks,
  ...importBenchmarks,
  ...sessionBenchmarks,
  ...refusalBenchmarks,
  ...hotPathBenchmarks,
  generatedBenchmark,
  find,
  slugLookup,
  longestTurn,
  importBesideReaders,
  foodsBenchmark,
];
const chosen = all.filter(({ name, isLong }) => (values.only === undefined ? isLong !== true : name === values.only));
if (chosen.length === 0) {
  console.error(`--only must be one of: ${all.map(({ name }) => name).join(", ")}`);
  process.exit(2);
}
for (const benchmark of chosen) {
  for (const { name, ratio, aim, met, detail } of await benchmark.run({ minutes: Number(values.minutes) })) {
    if (values.json) console.log(JSON.stringify({ name, ratio: Number(ratio.toFixed(4)), aim, met, detail }));
    else
      console.log(
        `${met ? "met   " : "missed"}  ${ratio.toFixed(3).padStart(9)}  ${aim.padEnd(8)}  ${name}  (${detail})`,
      );
  }
}
