import { beforeAll, expect, it } from "vitest";
import { findFoodsOf } from "../../../src/services/foods/find-foods-of.js";
import { findFoods } from "../../../src/services/foods/find-foods.js";
import { readDrafts } from "../../../src/services/drafts/read-drafts.js";
import { saveTexts } from "../../../src/services/drafts/save-documents.js";
import { findImport } from "../../../src/services/imports/find-imports.js";
import { reportImport } from "../../../src/services/imports/reports/report-import.js";
import { saveFeed } from "../../../src/services/imports/feeds/save-feed.js";
import type { Deps } from "../../../src/services/deps.js";
import { loadShippedRules } from "../../../src/services/rules/load-rule-set.js";
import { demo, rules } from "../../graphql/open-test-app.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { ending, nightClock, openFeed, silentLog, type TestFeed } from "./open-feed.js";

const north = "north-gate";
const test = { kind: "PROGRAM", name: "test" } as const;

/** One food that only its publisher has, one that builds on another, and packs of a food that all share. */
const documents = `kind: food
slug: oca
names: { en: { one: oca, many: ocas }, es: { one: papa roja andina, many: papas rojas andinas } }
aisle: vegetables
shopped-by: mass
measures: [{ name: net, one: net, many: nets, grams: 750, source: writer }]
---
kind: food
slug: early-carrot
extends: carrot
names: { en: { one: early carrot, many: early carrots } }
---
# What the farm shop takes.
kind: packs
slug: carrot
packs:
  - { id: sack, name: sack, content: 10 kg, price: 9.00 XTS, seen: 2026-01-01, source: writer }
  - { id: bag, name: bag, content: 1 kg, price: 1.20 XTS, seen: 2026-01-01, source: writer }
`;

describeOnBothDatabases("a price list of a publisher's own", (open) => {
  let deps: Deps;
  let feed: TestFeed;

  beforeAll(async () => {
    const { data } = await open();
    await data.foods.save(demo.foods);
    await data.publishers.save({ slug: north, name: "North Gate" });
    await data.publishers.save({ slug: "south-gate", name: "South Gate" });
    deps = { data, clock: nightClock, log: silentLog, knownRules: new Map() };
    await loadShippedRules(deps, rules);
    const saved = await data.transaction((inside) =>
      saveTexts(
        { ...deps, data: inside },
        { ...test, name: "import test" },
        {
          ...{
            publisher: north,
            texts: [{ name: "all.yaml", text: documents }],
            expected: [],
            path: [],
            codes: "REFUSED",
          },
        },
      ),
    );
    expect(saved).toMatchObject({ ok: true });
    feed = await openFeed(deps, {
      ...{ publisher: north, kind: "PRICES", slug: "farm-shop" },
      settings: { currency: "XTS", region: "XA", locale: "en", articles: { "A-7": "oca", "A-8": "apple" } },
    });
  });

  const packsOf = async (food: string, publisher = north) =>
    (await findFoodsOf(deps.data, publisher, [food]))[0]?.packs.map(({ id, price }) => `${id} ${price?.amount ?? "?"}`);
  const documentOf = async (slug: string) => {
    const [draft] = await readDrafts(deps, test, [{ kind: "PACKS", publisher: north, slug }]);
    return draft?.document.text;
  };

  it("is saved with articles that name its own foods, and by a publisher alone", async () => {
    const caller = { actor: test, requestId: null };
    const settings = { source: "Farm shop", articles: { "1": "oca" } };
    const asked = { slug: "articles", kind: "PRICES", settings } as const;
    expect(await saveFeed(deps, caller, { ...asked, publisher: north })).toMatchObject({ ok: true });
    for (const publisher of [null, "south-gate"])
      expect(await saveFeed(deps, caller, { ...asked, publisher })).toMatchObject({
        problems: [{ code: "UNKNOWN_FOOD", path: ["input", "settings", "articles", "1"] }],
      });
  });

  it("names foods of its own and shared ones by any name or article, adds packs to what is there, and is taken back", async () => {
    const before = await documentOf("carrot");
    const shared = await findFoods(deps, ["carrot", "apple"]);
    const list = `food,pack,content,price
A-7,crate,5 kg,6.00
ocas,net,2 nets,2.10
papa roja andina,loose-500,500 g,0.80
early carrots,bunch,400 g,0.90
zanahorias,bag,1 kg,1.30
A-8,tray,4 kg,6.10
A-9,tray,4 kg,6.10
ocas,A large one,1 kg,1.30
`;
    const tried = await feed.run(list, { kind: "DRY_RUN" });
    expect(ending(tried)).toEqual(["DONE", 8, 5, 1, 0, 2, 0]);
    expect(await packsOf("oca")).toEqual([]);

    const run = await feed.run(list);
    expect(ending(run)).toEqual(["DONE", 8, 5, 1, 0, 2, 0]);
    expect(
      (await feed.quarantined(run)).map(({ line, problems }) => [line, problems[0]?.code, problems[0]?.path]),
    ).toEqual([
      [8, "UNKNOWN_FOOD", ["food"]],
      [9, "BAD_SHAPE", ["pack"]],
    ]);
    expect(await packsOf("oca")).toEqual(["crate 6.00", "net 2.10", "loose-500 0.80"]);
    expect((await packsOf("early-carrot"))?.[0]).toBe("bunch 0.90");
    expect((await packsOf("carrot"))?.slice(0, 2)).toEqual(["sack 9.00", "bag 1.30"]);
    expect((await packsOf("apple"))?.[0]).toBe("tray 6.10");
    // Nobody else sees them, and a 0.1.0 beside this finds foods and shared lists as they were.
    expect(await packsOf("oca", "south-gate")).toBeUndefined();
    expect((await packsOf("apple", "south-gate"))?.includes("tray 6.10")).toBe(false);
    expect(await findFoods(deps, ["carrot", "apple"])).toEqual(shared);
    // What it left is a document like any other.
    expect(await documentOf("oca")).toMatch(/^kind: packs\nslug: oca\n/u);

    const found = await findImport(deps, test, run.id);
    const report = found && (await reportImport(deps, found));
    expect(report?.changes.find(({ what }) => what === "packs carrot")?.differences).toEqual([
      { what: "bag", before: "bag, 1 kg, 1.20 XTS, anywhere", after: "bag, 1 kg, 1.30 XTS, XA" },
    ]);
    expect(ending(await feed.run(list))).toEqual(["DONE", 8, 0, 0, 6, 2, 0]);

    const undone = await feed.run(null, { kind: "UNDO", undoes: run.id });
    expect(undone).toMatchObject({ state: "DONE", changed: 4, unchanged: 0 });
    expect(await packsOf("oca")).toEqual([]);
    expect(await documentOf("carrot")).toBe(before);
    expect(await documentOf("oca")).toBeUndefined();
  });

  it("leaves what a writer changed since as it is when it is taken back, and counts on from a discarded one", async () => {
    const run = await feed.run("food,pack,content,price\noca,crate,5 kg,7.00\napple,tray,4 kg,6.00\n");
    expect(run).toMatchObject({ state: "DONE", created: 2 });
    const [draft] = await deps.data.publisherPacks.drafts([{ publisher: north, slug: "oca" }]);
    if (!draft) throw new Error("no packs");
    await deps.data.publisherPacks.saveDraft(north, draft.value, draft.version, { document: null, by: "a writer" });
    const undone = await feed.run(null, { kind: "UNDO", undoes: run.id });
    expect(undone).toMatchObject({ state: "DONE", changed: 1, unchanged: 1 });
    expect(await packsOf("oca")).toEqual(["crate 7.00"]);
    expect(await documentOf("oca")).toMatch(/^kind: packs\n/u);
  });

  it("puts prices aside that are out of line with the food's other packs, as shared lists do", async () => {
    const run = await feed.run(
      "food,pack,content,price\ncarrot,box,1 kg,120\nearly carrots,small,100 g,30\nearly carrots,large,1 kg,1.50\n",
    );
    const codes = (await feed.quarantined(run)).map(({ line, problems }) => [line, problems[0]?.code]);
    expect(codes).toEqual([
      [2, "PRICE_OUT_OF_LINE"],
      [3, "PRICE_OUT_OF_LINE"],
    ]);
  });
});
