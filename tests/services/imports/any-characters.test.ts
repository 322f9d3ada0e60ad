import { beforeAll, expect, it } from "vitest";
import type { Deps } from "../../../src/services/deps.js";
import { loadShippedRules } from "../../../src/services/rules/load-rule-set.js";
import { demo, rules } from "../../graphql/open-test-app.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { nightClock, openFeed, silentLog } from "./open-feed.js";

const kinds = ["PRICES", "FOODS"] as const;
const settings = { locale: "en", currency: "XTS" };

/** Texts with a sign of two code units across every place at which messages are cut, and one with a NUL, which JSONB cannot hold either. */
const lengths = [40, 60, 80, 120, 200, 500].flatMap((length) => [-2, -1, 0, 1].map((by) => length + by));
const texts = [...lengths.map((length) => `${"x".repeat(length)}\u{1f955}carrot`), "nul\0nul", "\u{1f955}".repeat(300)];

const columns = {
  PRICES: ["food", "pack", "content", "price"],
  FOODS: ["slug", "name", "aisle", "counted_as"],
} as const;
const good: Readonly<Record<keyof typeof columns, readonly string[]>> = {
  PRICES: ["egg", "six", "6 piece", "1"],
  FOODS: ["moonfruit", "Moon fruit", "produce", ""],
};

describeOnBothDatabases("an import of a file with any characters", (open) => {
  let deps: Deps;
  beforeAll(async () => {
    const { data } = await open();
    await data.foods.save(demo.foods);
    deps = { data, clock: nightClock, log: silentLog, knownRules: new Map() };
    await loadShippedRules(deps, rules);
  });

  it.each(kinds)("%s: ends, and counts every row once, whatever stands in a cell", async (kind) => {
    const feed = await openFeed(deps, { publisher: null, kind, slug: `cells-${kind.toLowerCase()}`, settings });
    const rows = columns[kind].flatMap((_, at) => texts.map((text) => good[kind].with(at, text).join(",")));
    const run = await feed.run([columns[kind].join(","), ...rows, good[kind].join(","), ""].join("\n"));
    const { state, read, created, changed, unchanged, quarantined, repeated } = run;
    expect([state, read]).toEqual(["DONE", rows.length + 1]);
    expect(created + changed + unchanged + quarantined + repeated).toBe(read);
    expect(quarantined).toBeGreaterThanOrEqual(texts.length);
    for (const { problems } of await feed.quarantined(run)) expect(problems).not.toEqual([]);
  });

  it.each(kinds)("%s: says what is wrong with a head, whatever stands in it", async (kind) => {
    const feed = await openFeed(deps, { publisher: null, kind, slug: `heads-${kind.toLowerCase()}`, settings });
    const heads = [59, 199].map((length) => `${"x".repeat(length)}\u{1f955}`);
    for (const head of [...heads, ...texts.slice(-2)].flatMap((text) => [text, `${text},${text}`])) {
      const run = await feed.run(`${head}\n${good[kind].join(",")}\n`);
      expect(["DONE", "FAILED", "STOPPED"]).toContain(run.state);
      if (run.state !== "DONE") expect(run.problems).not.toEqual([]);
    }
  });
});
