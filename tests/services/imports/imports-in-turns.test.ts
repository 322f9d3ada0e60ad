import { beforeEach, expect, it } from "vitest";
import type { Deps } from "../../../src/services/deps.js";
import { loadShippedRules } from "../../../src/services/rules/load-rule-set.js";
import { loadSeeds } from "../../../src/services/drafts/load-seeds.js";
import { openTimeSlicer } from "../../../src/services/time-slices.js";
import { demo, rules } from "../../graphql/open-test-app.js";
import { describeOnEmbedded } from "../../kit/databases.js";
import { ending, nightClock, openFeed, silentLog } from "./open-feed.js";

const component = (at: number): string =>
  `---\nkind: component\nslug: c${String(at)}\ntitle: C\nlocale: en\nmeasured-in: metric\nlines:\n  - 10 g carrots\nyield: { amount: 10 g, source: writer / weighed }\n`;
const lines = (count: number, of: (at: number) => string): string =>
  Array.from({ length: count }, (_, at) => of(at)).join("");

const files = {
  PRICES: [5_000, `food,pack,content,price\n${lines(5_000, (at) => `carrot,p${String(at)},500 g,1.20\n`)}`],
  DOCUMENTS: [50, lines(50, component)],
} as const;

describeOnEmbedded("a file that is imported where readers are served", (open) => {
  let deps: Deps;
  let asked = 0;
  let turns = 0;

  beforeEach(async () => {
    const { data } = await open();
    // Every look at the clock is five milliseconds later: a slice is two looks long.
    let now = 0;
    const slicer = openTimeSlicer(() => (now += 5));
    const beginJob = () => {
      const work = slicer.beginJob();
      return {
        ...work,
        pause: () => {
          asked += 1;
          const pausing = work.pause();
          if (pausing !== null) turns += 1;
          return pausing;
        },
      };
    };
    deps = { data, clock: nightClock, log: silentLog, knownRules: new Map(), slicer: { ...slicer, beginJob } };
    await loadShippedRules(deps, rules);
    await loadSeeds(deps, demo);
    [asked, turns] = [0, 0];
  });

  it.each(["PRICES", "DOCUMENTS"] as const)("%s: lets readers go first again and again", async (kind) => {
    const [rows, text] = files[kind];
    const publisher = kind === "DOCUMENTS" ? demo.publisher.slug : null;
    const feed = await openFeed(deps, { publisher, kind, slug: "night", settings: { currency: "XTS", region: "GB" } });
    const run = await feed.run(text);
    expect(run.state).toBe("DONE");
    expect(run.read).toBe(rows);
    // Of a table some hundred rows are a turn; a document is taken apart in several.
    expect(asked).toBeGreaterThan(kind === "PRICES" ? rows / 1_000 : 4 * rows);
    expect(turns).toBeGreaterThan(asked / 5);
  });
});

describeOnEmbedded("what is done at once with all rows of a price list, in the process that serves readers", (open) => {
  it("is a statement for some rows each, with a turn of the event loop for everybody else between them", async () => {
    const { data } = await open();
    const packs = 5_000;
    const foods = demo.foods.flatMap(({ slug, shoppedBy }) => (shoppedBy === "MASS" ? [slug] : [])).slice(0, 20);
    const list = (pence: number): string =>
      `food,pack,content,price\n${lines(packs, (at) => `${foods[at % foods.length] ?? ""},p${String(at)},500 g,1.${String(pence)}\n`)}`;
    const turns: Record<string, number> = {};
    /** Counts the turns that others get while one of them is done. */
    const watched =
      <Given extends readonly unknown[], Done>(
        name: string,
        work: (...given: Given) => Promise<Done>,
      ): ((...given: Given) => Promise<Done>) =>
      async (...given) => {
        let going = true;
        let count = 0;
        const tick = (): void => {
          count += 1;
          if (going) setImmediate(tick);
        };
        setImmediate(tick);
        const done = await work(...given);
        going = false;
        turns[name] = count;
        return done;
      };
    const { merge, outliers } = data.listedPacks;
    const listedPacks = {
      ...data.listedPacks,
      merge: watched("merge", merge),
      outliers: watched("outliers", outliers),
    };
    const deps: Deps = { data: { ...data, listedPacks }, clock: nightClock, log: silentLog, knownRules: new Map() };
    await loadShippedRules(deps, rules);
    await loadSeeds(deps, demo);
    const feed = await openFeed(deps, {
      publisher: null,
      kind: "PRICES",
      slug: "night",
      settings: { currency: "XTS", region: "GB" },
    });

    const first = await feed.run(list(20));
    // Some foods cost so much more in the demo that a person is to look at them.
    const kept = packs - first.quarantined;
    expect(kept).toBeGreaterThan(3_000);
    expect(ending(first)).toEqual(["DONE", packs, kept, 0, 0, first.quarantined, 0]);
    expect(turns["merge"]).toBeGreaterThanOrEqual(packs / 1_000 - 3);
    expect(turns["outliers"]).toBeGreaterThanOrEqual(packs / 1_000 - 3);
    const second = await feed.run(list(21));
    expect(ending(second)).toEqual(["DONE", packs, 0, kept, 0, first.quarantined, 0]);
    // What each was, then what each is.
    expect(turns["merge"]).toBeGreaterThanOrEqual((2 * packs) / 1_000 - 6);
    expect(await data.importRuns.changes(second.id, packs)).toHaveLength(kept);
  }, 120_000);
});
