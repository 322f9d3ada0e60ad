import { beforeAll, describe, expect, it } from "vitest";
import type { FeedKind, RunKind } from "../../../src/persistence/imports/import-data.js";
import type { Caller } from "../../../src/services/access/actor.js";
import { differencesOf, packFacts, type NotedPack } from "../../../src/services/plans/change-facts.js";
import type { Deps } from "../../../src/services/deps.js";
import { feedSettingsSchema } from "../../../src/services/imports/feeds/feed-settings.js";
import { loadShippedRules } from "../../../src/services/rules/load-rule-set.js";
import { resolveRow } from "../../../src/services/imports/rows/resolve-row.js";
import { runImports } from "../../../src/services/imports/run-imports.js";
import { describeOnBothDatabases, describeOnServer, type TestDatabase } from "../../kit/databases.js";
import { demo, rules } from "../../graphql/open-test-app.js";

const clock = () => new Date("2026-03-01T04:00:00Z");
const log = { info: () => undefined, warn: () => undefined, error: () => undefined };

async function* bytesOf(text: string): AsyncGenerator<Uint8Array> {
  yield Buffer.from(text);
}

async function opened(open: () => Promise<TestDatabase>): Promise<Deps> {
  const { data } = await open();
  await data.foods.save(demo.foods);
  const deps: Deps = { data, clock, log, knownRules: new Map() };
  await loadShippedRules(deps, rules);
  return deps;
}

interface Asked {
  readonly kind?: RunKind;
  readonly force?: boolean;
  readonly undoes?: string;
}

/** Feeds are the operator's here. Queues a run of a file, runs it, and gives how it ended. */
async function feedOf(deps: Deps, kind: FeedKind, slug = "corner-shop", settings: object = {}) {
  const { data } = deps;
  const whole = feedSettingsSchema.parse({
    source: "Price list of the corner shop",
    currency: "XTS",
    region: "XA",
    locale: "en",
    ...settings,
  });
  const feed = await data.feeds.save({
    publisher: null,
    slug,
    kind,
    settings: whole,
    cron: null,
    zone: "UTC",
    enabled: true,
  });
  const run = async (text: string | null, { kind: runKind = "LOAD", force = false, undoes }: Asked = {}) => {
    const file = text === null ? null : (await data.importFiles.put(feed, "list.csv", bytesOf(text), clock())).id;
    const id = await data.importRuns.queue(
      { feed, file, kind: runKind, askedBy: "test", force, undoes: undoes ?? null },
      clock(),
    );
    if (id === null) throw new Error("another run is going on");
    await runImports(deps, "worker-1");
    const ended = await data.importRuns.byId(id);
    if (ended === null) throw new Error("the run is gone");
    return ended;
  };
  return { feed, run };
}

const counts = ({
  read,
  created,
  changed,
  unchanged,
  quarantined,
  repeated,
}: Awaited<ReturnType<Awaited<ReturnType<typeof feedOf>>["run"]>>) => [
  ...[read, created, changed, unchanged, quarantined, repeated],
];

const operator: Caller = { actor: { kind: "PROGRAM", name: "test" }, requestId: null };

const header = "food,pack,content,price\n";
const pricesOf = async (deps: Deps, food: string) =>
  (await deps.data.foods.bySlugs([food]))[0]?.packs.map(({ id, price }) => [id, price?.amount ?? null]);

describeOnBothDatabases("imports", (open) => {
  describe("of a price list", () => {
    let deps: Deps;
    beforeAll(async () => {
      deps = await opened(open);
    });

    it("bring its packs to the foods, beside those of the foods' own documents", async () => {
      const { run } = await feedOf(deps, "PRICES");
      const own = (await pricesOf(deps, "pearl-barley")) ?? [];
      const ended = await run(`${header}pearl-barley,list-bag,500 g,0.99\negg,list-box,6 piece,1.50\n`);
      expect([ended.state, ...counts(ended)]).toEqual(["DONE", 2, 2, 0, 0, 0, 0]);
      expect(await pricesOf(deps, "pearl-barley")).toEqual([...own, ["list-bag", "0.99"]]);
      const [food] = await deps.data.foods.bySlugs(["pearl-barley"]);
      expect(food?.packs.at(-1)).toMatchObject({
        content: { low: "500", high: "500", unit: "g" },
        region: "XA",
        seen: "2026-03-01",
        source: { title: "Price list of the corner shop" },
      });
    });

    it("change nothing when the same file comes twice, and survive that the foods are saved again", async () => {
      const { run } = await feedOf(deps, "PRICES");
      const ended = await run(`${header}pearl-barley,list-bag,500 g,0.99\negg,list-box,6 piece,1.50\n`);
      expect([ended.state, ...counts(ended)]).toEqual(["DONE", 2, 0, 0, 2, 0, 0]);
      await deps.data.foods.save(demo.foods.map((food) => ({ ...food, aisle: `${food.aisle}-2` })));
      expect((await pricesOf(deps, "egg"))?.at(-1)).toEqual(["list-box", "1.50"]);
    });

    it("bring what is sold loose, and say so where a pack becomes loose, and take it back", async () => {
      const { run } = await feedOf(deps, "PRICES", "market-stall", { limits: { changed: 1 } });
      const stall = async () => {
        const [food] = await deps.data.foods.bySlugs(["onion"]);
        return food?.packs.filter(({ source }) => source.title === "Price list of the corner shop");
      };
      await run(`${header}onion,net,1 kg,1.20\nonion,,per kg,1.60\n`);
      expect(await stall()).toMatchObject([
        {
          id: "loose-xa",
          content: { low: "1", high: "1", unit: "kg" },
          price: { amount: "1.60" },
          loose: { step: null },
        },
        { id: "net" },
      ]);
      expect((await stall())?.[1]).not.toHaveProperty("loose");
      const second = await run("food,pack,content,price,step\nonion,net,per kg,1.20,\nonion,,per kg,1.60,25 g\n");
      expect([second.state, ...counts(second)]).toEqual(["DONE", 2, 0, 2, 0, 0, 0]);
      expect((await stall())?.map(({ loose }) => loose)).toEqual([
        { step: { low: "25", high: "25", unit: "g" } },
        { step: null },
      ]);
      const noted = await deps.data.importRuns.changes(second.id);
      expect(
        noted.map(({ before, after }) => differencesOf(packFacts(before as NotedPack), packFacts(after as NotedPack))),
      ).toEqual([
        [{ what: "sold", before: "loose", after: "loose, by 25 g" }],
        [{ what: "sold", before: null, after: "loose" }],
      ]);
      await run(null, { kind: "UNDO", undoes: second.id });
      expect((await stall())?.map(({ loose }) => loose)).toEqual([{ step: null }, undefined]);
    });

    it("put bad rows aside with their place and reasons, and count every row", async () => {
      const { run } = await feedOf(deps, "PRICES", "other-shop", { limits: { changed: 1, quarantined: 1 } });
      const text = `${header}egg,a,6 piece,1\nnothing-known,b,1 kg,2\negg,c,2-Jan,3\negg,a,6 piece,1.10\negg,"d,6,4\negg,e,6 piece,5\n`;
      const ended = await run(text);
      expect([ended.state, ...counts(ended)]).toEqual(["DONE", 6, 2, 0, 0, 3, 1]);
      const { items } = await deps.data.importRuns.quarantined(ended.id, {
        first: 10,
        after: null,
        last: null,
        before: null,
      });
      expect(items.map(({ item }) => [item.line, item.raw, item.problems.map(({ code }) => code)])).toEqual([
        [3, "nothing-known,b,1 kg,2", ["UNKNOWN_FOOD"]],
        [4, "egg,c,2-Jan,3", ["CELL_IS_A_DATE"]],
        [6, 'egg,"d,6,4', ["BAD_SHAPE"]],
      ]);
      // Of two rows of one pack the last counts.
      expect((await pricesOf(deps, "egg"))?.filter(([id]) => id === "a")).toEqual([["a", "1.10"]]);
    });

    it("put aside a price of nothing, and one far from what the food's other packs cost, until a person has looked", async () => {
      const { feed, run } = await feedOf(deps, "PRICES", "odd-shop", {
        locale: "de",
        limits: { changed: 1, quarantined: 1 },
      });
      // Pearl barley of the demo costs some 2 XTS a kilogram; "1.500 kg" is a tonne and a half in German.
      const odd = await run(
        `food;pack;content;price\negg;free;6 piece;0,00\npearl-barley;slip;1.500 kg;3,30\npearl-barley;fine;1,5 kg;3,30\negg;dear;6 piece;180,00\n`,
      );
      expect([odd.state, ...counts(odd)]).toEqual(["DONE", 4, 1, 0, 0, 3, 0]);
      const page = await deps.data.importRuns.quarantined(odd.id, { first: 10, after: null, last: null, before: null });
      expect(
        page.items.map(({ item: { line, raw, problems } }) => [line, raw.trim(), problems.map(({ code }) => code)]),
      ).toEqual([
        [2, "egg;free;6 piece;0,00", ["BAD_SHAPE"]],
        [3, "pearl-barley;slip;1.500 kg;3,30", ["PRICE_OUT_OF_LINE"]],
        [5, "egg;dear;6 piece;180,00", ["PRICE_OUT_OF_LINE"]],
      ]);
      const settled = await resolveRow(deps, operator, { run: odd.id, line: 5, text: "egg;dear;6 piece;180,00" });
      expect([settled.ok, feed === odd.feed]).toEqual([true, true]);
      await runImports(deps, "worker-1");
      expect((await pricesOf(deps, "egg"))?.find(([id]) => id === "dear")).toEqual(["dear", "180.00"]);
    });

    it("put aside the one of several packs of a new food that disagrees, wherever it stands, and both of two", async () => {
      const { run } = await feedOf(deps, "PRICES", "new-shop", { limits: { changed: 1, quarantined: 1 } });
      const bare = demo.foods.find(({ slug }) => slug === "millet");
      if (bare === undefined) throw new Error("no such food");
      await deps.data.foods.save([
        { ...bare, slug: "moon-millet", packs: [] },
        { ...bare, slug: "sun-millet", packs: [] },
      ]);
      const many = await run(
        `${header}moon-millet,a,1500 kg,3\nmoon-millet,b,1.5 kg,3\nmoon-millet,c,500 g,1.20\nsun-millet,a,1500 kg,3\nsun-millet,b,1.5 kg,3\n`,
      );
      expect([many.state, ...counts(many)]).toEqual(["DONE", 5, 2, 0, 0, 3, 0]);
      expect(await pricesOf(deps, "moon-millet")).toEqual([
        ["b", "3"],
        ["c", "1.20"],
      ]);
      expect(await pricesOf(deps, "sun-millet")).toEqual([]);
    });

    it("stop, and load nothing, where more changes than the feed allows, unless told to go on", async () => {
      const { run } = await feedOf(deps, "PRICES", "steady-shop");
      const list = (price: string) =>
        `${header}${[1, 2, 3, 4].map((at) => `egg,s${String(at)},6 piece,${at < 3 ? price : "2.00"}\n`).join("")}`;
      await run(list("1.00"));
      const stopped = await run(list("9.00"));
      expect([stopped.state, stopped.problems.map(({ code }) => code), stopped.changed]).toEqual([
        "STOPPED",
        ["LIMIT_PASSED"],
        0,
      ]);
      expect((await pricesOf(deps, "egg"))?.find(([id]) => id === "s1")).toEqual(["s1", "1.00"]);
      const forced = await run(list("9.00"), { force: true });
      expect([forced.state, forced.changed]).toEqual(["DONE", 2]);
    });

    it("show in a dry run what would change, and change nothing", async () => {
      const { run } = await feedOf(deps, "PRICES", "dry-shop", { limits: { changed: 1, quarantined: 1 } });
      await run(`${header}egg,dry,6 piece,1.00\n`);
      const dry = await run(`${header}egg,dry,6 piece,2.00\negg,dry-2,6 piece,2.00\n`, { kind: "DRY_RUN" });
      expect([dry.state, ...counts(dry)]).toEqual(["DONE", 2, 1, 1, 0, 0, 0]);
      expect((await pricesOf(deps, "egg"))?.filter(([id]) => String(id).startsWith("dry"))).toEqual([["dry", "1.00"]]);
    });

    it("are taken back whole, but for what a later run wrote", async () => {
      const { run } = await feedOf(deps, "PRICES", "undone-shop", { limits: { changed: 1, quarantined: 1 } });
      await run(`${header}egg,u1,6 piece,1\negg,u2,6 piece,1\negg,u3,6 piece,1\n`);
      const second = await run(`${header}egg,u1,6 piece,2\negg,u2,6 piece,2\negg,u4,6 piece,2\negg,u5,6 piece,2\n`);
      await run(`${header}egg,u2,6 piece,3\negg,u5,6 piece,3\n`);
      const undo = await run(null, { kind: "UNDO", undoes: second.id });
      expect([undo.state, undo.changed, undo.unchanged]).toEqual(["DONE", 2, 2]);
      const left = (await pricesOf(deps, "egg"))?.filter(([id]) => /^u\d$/.test(String(id)));
      expect(left).toEqual([
        ["u1", "1"],
        ["u2", "3"],
        ["u3", "1"],
        ["u5", "3"],
      ]);
    });

    it.each(["in the middle of the file", "at its end", "after it was compared"] as const)(
      "go on where a worker was lost %s, with the same end",
      async (lost) => {
        const slug = `shop-lost-${lost.replaceAll(" ", "-")}`;
        const { feed, run } = await feedOf(deps, "PRICES", slug);
        const { data } = deps;
        const text = `${header}egg,l1,6 piece,1\negg,l2,6 piece,2\negg,l1,6 piece,3\n`;
        const file = await data.importFiles.put(feed, "list.csv", bytesOf(text), clock());
        await data.importRuns.queue(
          { feed, file: file.id, kind: "LOAD", askedBy: "test", force: false, undoes: null },
          clock(),
        );
        const early = new Date(clock().getTime() - 3_600_000);
        const id = (await data.importRuns.claim("worker-lost", early, early))?.id ?? "";
        const rows = ["l1", "l2", "l1"].slice(0, lost === "in the middle of the file" ? 1 : 3).map((name, at) => ({
          ...{ line: at + 2, food: "egg" },
          pack: {
            ...{ id: name, name, content: { low: "6", high: "6", unit: "piece" } },
            ...{ price: { amount: String(at + 1), currency: "XTS" }, region: "XA", seen: "2026-03-01" },
          },
        }));
        const none = { created: 0, changed: 0, unchanged: 0, quarantined: 0, repeated: 0, quarantine: [] };
        const chunk = { ...none, read: rows.length, lastLine: rows.length + 1 };
        expect(await data.listedPacks.stage(id, "worker-lost", rows, chunk)).toBe(true);
        if (lost === "after it was compared")
          expect(await data.listedPacks.compare(id, feed)).toMatchObject({ created: 2, repeated: 1 });
        expect(await runImports(deps, "worker-2")).toBe(1);
        const ended = await data.importRuns.byId(id);
        expect(ended && [ended.state, ...counts(ended)]).toEqual(["DONE", 3, 2, 0, 0, 0, 1]);
        // The lost worker comes back, and may not write any more.
        expect(await data.listedPacks.stage(id, "worker-lost", [], chunk)).toBe(false);
        expect((await run(text)).unchanged).toBe(2);
      },
    );

    it("are refused whole, with the first line, where the file is no price list", async () => {
      const { run } = await feedOf(deps, "PRICES", "wrong-shop");
      const ended = await run("eins;zwei,drei\n1;2,3\n");
      expect([ended.state, ended.quarantined, ended.problems.map(({ code }) => code)]).toEqual([
        "STOPPED",
        1,
        ["LIMIT_PASSED"],
      ]);
    });
  });

  describe("of a table of foods", () => {
    const head = "slug,name,aisle,energy-kcal\n";

    it("make, change and keep foods, leave their packs, and are taken back", async () => {
      const deps = await opened(open);
      const { run } = await feedOf(deps, "FOODS", "foods", { limits: { changed: 1, quarantined: 1 } });
      const first = await run(`${head}moon-root,moon root,roots,30\nmoon-leaf,moon leaf,leaves,20\nbad slug,x,y,1\n`);
      expect([first.state, ...counts(first)]).toEqual(["DONE", 3, 2, 0, 0, 1, 0]);
      const again = await run(
        `${head}moon-root,moon root,roots,30\nmoon-leaf,moon leaf,leaves,21\nmoon-leaf,moon leaf,leaves,22\n`,
      );
      expect([again.state, ...counts(again)]).toEqual(["DONE", 3, 0, 1, 1, 0, 1]);
      const kcal = async (slug: string) => (await deps.data.foods.bySlugs([slug]))[0]?.nutrients?.per100g.energyKcal;
      expect(await kcal("moon-leaf")).toBe(22);
      expect((await run(null, { kind: "UNDO", undoes: again.id })).state).toBe("DONE");
      expect(await kcal("moon-leaf")).toBe(20);
      expect((await run(null, { kind: "UNDO", undoes: first.id })).changed).toBe(2);
      expect(await deps.data.foods.bySlugs(["moon-root", "moon-leaf"])).toEqual([null, null]);
    });

    it("lay a row over the food: what it leaves out stays, and an allergen goes only where a person says so", async () => {
      const deps = await opened(open);
      const { feed, run } = await feedOf(deps, "FOODS", "foods", { limits: { changed: 1, quarantined: 1 } });
      const presence = async () =>
        (await deps.data.foods.bySlugs(["moon-spread"]))[0]?.allergens.map((each) => each.presence);
      await run("slug,name,contains,energy-kcal\nmoon-spread,moon spread,peanut,600\n");
      const bare = await run("slug,name,energy-kcal\nmoon-spread,moon spread,610\n");
      expect([counts(bare), await presence()]).toEqual([[1, 0, 1, 0, 0, 0], ["CONTAINS"]]);
      const weaker = await run("slug,name,free-from\nmoon-spread,moon spread,peanut\n", { force: true });
      expect([counts(weaker), await presence()]).toEqual([[1, 0, 0, 0, 1, 0], ["CONTAINS"]]);
      const settled = await resolveRow(deps, operator, {
        run: weaker.id,
        line: 2,
        text: "moon-spread,moon spread,peanut",
      });
      expect(settled.ok).toBe(true);
      await runImports(deps, "worker-1");
      expect([feed === weaker.feed, await presence()]).toEqual([true, ["DOES_NOT_CONTAIN"]]);
    });
  });
});

describeOnServer("several workers", (open) => {
  it("share the feeds so that each of a hundred runs is done once, and one feed has one run at a time", async () => {
    const deps = await opened(open);
    const feeds = await Promise.all([1, 2, 3].map((at) => feedOf(deps, "PRICES", `shop-${String(at)}`)));
    const { data } = deps;
    const started: string[] = [];
    for (let turn = 0; turn < 34; turn += 1) {
      for (const { feed } of feeds) {
        const file = await data.importFiles.put(
          feed,
          "list.csv",
          bytesOf(`${header}egg,p,6 piece,${String(turn + 1)}\n`),
          clock(),
        );
        const order = { feed, file: file.id, kind: "LOAD", askedBy: "test", force: true, undoes: null } as const;
        const queued = await Promise.all([
          data.importRuns.queue(order, clock()),
          data.importRuns.queue(order, clock()),
        ]);
        expect(queued.filter((id) => id !== null)).toHaveLength(1);
        started.push(...queued.filter((id) => id !== null));
      }
      const ended = await Promise.all([runImports(deps, "worker-a"), runImports(deps, "worker-b")]);
      expect(ended.reduce((sum, each) => sum + each, 0)).toBe(feeds.length);
    }
    const states = await Promise.all(started.map(async (id) => (await data.importRuns.byId(id))?.state));
    expect(states).toEqual(started.map(() => "DONE"));
  });
});
