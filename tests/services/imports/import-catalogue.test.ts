import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import type { CatalogueRow, KnownCatalogueRow } from "../../../src/domain/model/catalogue-row.js";
import type { Food } from "../../../src/domain/model/food.js";
import { shippedEdition } from "../../../src/imports/usda/read-usda.js";
import type { ImportRun } from "../../../src/persistence/imports/import-data.js";
import type { Actor, Caller } from "../../../src/services/access/actor.js";
import type { Deps } from "../../../src/services/deps.js";
import { findCatalogueFoods } from "../../../src/services/foods/find-catalogue-foods.js";
import { inheritFacts } from "../../../src/services/foods/inherit-facts.js";
import { loadCatalogue } from "../../../src/services/foods/load-catalogue.js";
import { reportImport } from "../../../src/services/imports/reports/report-import.js";
import { runImports } from "../../../src/services/imports/run-imports.js";
import { saveFeed } from "../../../src/services/imports/feeds/save-feed.js";
import { resolveRow } from "../../../src/services/imports/rows/resolve-row.js";
import { referenceTable, sourceOf } from "../../domain/quantity/reference-table.js";
import { food } from "../../kit/builders.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { openFoodTable } from "../../kit/open-food-table.js";
import { bytesOf, ending, nightClock, openFeed, silentLog, type TestFeed } from "./open-feed.js";

const shippedRows = [...openFoodTable.values()];
const shippedFile = (name: string): string =>
  readFileSync(new URL(`../../../seeds/catalogue/usda-sr26-${name}.csv`, import.meta.url), "utf8");
const [foodLines, weightLines] = ["foods", "weights"].map((name) => shippedFile(name).trimEnd().split("\n")) as [
  string[],
  string[],
];
const [foodHead = "", weightHead = ""] = [foodLines[0], weightLines[0]];
const lineOf = (ndbNo: string): string => foodLines.find((line) => line.startsWith(ndbNo)) ?? "";
const foodsFile = (...lines: readonly string[]): string => `${[foodHead, ...lines].join("\n")}\n`;
const weightsFile = (...lines: readonly string[]): string => `${[weightHead, ...lines].join("\n")}\n`;

const [carrot, garlic, butter] = ["11124", "11215", "01001"] as const;
const kcal = "41"; // Release 26, NDB 11124: 41 kcal
const heavier = lineOf(carrot).replace(`,${kcal},`, ",44,");

describeOnBothDatabases("an import into the open food table", (open) => {
  let deps: Deps;
  let feeds = 0;

  beforeAll(async () => {
    const { data } = await open();
    deps = { data, clock: nightClock, log: silentLog, knownRules: new Map() };
    await start();
  });

  /** A start of the program, with an edition of its own. */
  const start = (
    rows: readonly CatalogueRow[] = shippedRows,
    code = shippedEdition.code,
    title = shippedEdition.title,
  ) =>
    loadCatalogue(deps, { edition: { code, title }, hash: `${code} ${String(rows.length)}` }, () =>
      Promise.resolve(rows),
    );

  const feedOf = (source: string, settings: object = {}): Promise<TestFeed> =>
    openFeed(deps, {
      ...{ publisher: null, kind: "CATALOGUE", slug: `table-${String((feeds += 1))}` },
      settings: { source, ...settings },
    });

  const rowsOf = async (...numbers: readonly string[]): Promise<readonly (KnownCatalogueRow | null)[]> =>
    deps.data.catalogue.byNumbers(numbers);
  const knownRow = async (ndbNo: string): Promise<KnownCatalogueRow> => {
    const [known] = await rowsOf(ndbNo);
    if (!known) throw new Error(`no ${ndbNo}`);
    return known;
  };
  const inherited = async (ndbNo: string): Promise<Food> => {
    const [found] = await inheritFacts(deps, [food("it", { ndbNo })]);
    return found as Food;
  };
  const whole = () => rowsOf(...shippedRows.map(({ ndbNo }) => ndbNo));
  const reportOf = async (run: ImportRun) => {
    const feed = await deps.data.feeds.byId(run.feed);
    if (feed === null) throw new Error("no feed");
    return reportImport(deps, { run, feed });
  };

  it("of all of it under another title changes the source of every row and nothing else, and is taken back to the byte", async () => {
    const before = await whole();
    const title = "The same table, printed again";
    const feed = await feedOf(title);
    const foods = await feed.run(shippedFile("foods"));
    expect(ending(foods)).toEqual(["DONE", 5484, 0, 5484, 0, 0, 0]);
    const known = await knownRow(carrot);
    expect(known.row).toMatchObject({ ...openFoodTable.get(carrot), weights: expect.anything() as unknown });
    expect(known.edition.title).toBe(title);
    // Weights stay, and with them where they stand.
    expect(new Set(known.row.weights.map(({ edition }) => edition?.title))).toEqual(new Set([shippedEdition.title]));
    expect((await inherited(carrot)).nutrients?.source.title).toBe(title);
    expect((await inherited(carrot)).densities[0]?.source.title).toBe(shippedEdition.title);
    // 180 foods have a measure on more than one row of the weight file; of those the last counts.
    const weights = await feed.run(shippedFile("weights"));
    expect(ending(weights)).toEqual(["DONE", 10_825, 0, 10_645, 0, 0, 180]);
    expect((await inherited(carrot)).densities[0]?.source.title).toBe(title);
    const facts = (await whole()).map((each) => each?.row.per100g);
    expect(facts).toEqual(shippedRows.map(({ per100g }) => per100g));
    expect(ending(await feed.run(shippedFile("foods")))).toEqual(["DONE", 5484, 0, 0, 5484, 0, 0]);
    expect(ending(await feed.run(shippedFile("weights")))).toEqual(["DONE", 10_825, 0, 0, 10_645, 0, 180]);
    expect((await feed.run(null, { kind: "UNDO", undoes: weights.id })).changed).toBeGreaterThan(5000);
    expect(ending(await feed.run(null, { kind: "UNDO", undoes: foods.id }))).toEqual(["DONE", 0, 0, 5484, 0, 0, 0]);
    expect(await whole()).toEqual(before);
  });

  it("brings the rows that a later release printed, with its name beside every figure", async () => {
    const rows = referenceTable("nutrients");
    const title = rows[0]?.["source"] ?? "";
    const names = foodHead.split(",");
    const feed = await feedOf(title, { columns: { vegetable: "food_group" } });
    const lines = rows.map((row) =>
      names
        .map((name) => (name === "description" ? row["food"] : row[name]) ?? "")
        .map((cell) => (cell.includes(",") ? `"${cell.replaceAll('"', '""')}"` : cell))
        .join(","),
    );
    // Two of its foods are not in Release 26.
    const run = await feed.run(`${foodHead.replace("food_group", "Vegetable")}\n${lines.join("\n")}\n`);
    expect(ending(run)).toEqual(["DONE", rows.length, 2, rows.length - 2, 0, 0, 0]);
    const found = await findCatalogueFoods(
      deps,
      rows.map((row) => row["ndb_no"] ?? ""),
    );
    for (const [at, row] of rows.entries()) {
      const { per100g, source } = found[at]?.facts.nutrients ?? {};
      expect([per100g?.energyKcal, per100g?.proteinG, per100g?.sodiumMg, source?.title], sourceOf(row)).toEqual([
        ...["kcal", "protein_g", "sodium_mg"].map((name) => (row[name] === "" ? undefined : Number(row[name]))),
        title,
      ]);
    }
    const cups = referenceTable("densities").filter(({ source_section: section = "" }) =>
      /^Weight file, NDB \d{5}, "cup"$/.test(section),
    );
    const later = await feedOf(cups[0]?.["source"] ?? "");
    const known = cups.filter(({ source_section: section = "" }) => openFoodTable.has(section.slice(17, 22)));
    const weighed = await later.run(
      weightsFile(
        ...known.map((row) => `${row["source_section"]?.slice(17, 22) ?? ""},1,1,cup,${row["mass_g"] ?? ""}`),
      ),
    );
    expect([weighed.state, weighed.read, weighed.quarantined]).toEqual(["DONE", known.length, 0]);
    // Of several measures of one form the largest counts, which is a quart for some.
    const counting = await Promise.all(
      known.map(async (row) => {
        const { densities } = await inherited(row["source_section"]?.slice(17, 22) ?? "");
        return { row, cup: densities.find(({ source }) => source.section === row["source_section"]) };
      }),
    );
    const weighedByCup = counting.filter(({ cup }) => cup !== undefined);
    expect(weighedByCup.length).toBeGreaterThan(15);
    for (const { row, cup } of weighedByCup) {
      expect(cup?.gramsPerMl, sourceOf(row)).toBeCloseTo(Number(row["mass_g"]) / 236.588_236_5, 6); // NIST Handbook 44
      expect(cup?.source.title).toBe(row["source"]);
    }
    for (const undo of [
      await later.run(null, { kind: "UNDO", undoes: weighed.id }),
      await feed.run(null, { kind: "UNDO", undoes: run.id }),
    ])
      expect([undo.state, undo.unchanged]).toEqual(["DONE", 0]);
    expect(await rowsOf("08120")).toEqual([null]);
  });

  it("puts each bad row aside with line, column and text, and takes it mended", async () => {
    const feed = await feedOf("Corrections");
    const bad = [
      heavier.replace("11124", "1124"),
      heavier.replace(",44,", ",4x,"),
      heavier.replace(",44,", ",2-Jan,"),
      heavier.replace(",44,", ",-44,"),
      heavier.replace(",11,", ",101,"),
      `${heavier},1`,
      `"${heavier}`,
    ];
    const run = await feed.run(foodsFile(lineOf(garlic), ...bad));
    expect(ending(run)).toEqual(["DONE", 8, 0, 1, 0, 7, 0]);
    const aside = await feed.quarantined(run);
    expect(
      aside.slice(0, 4).map(({ line, raw, problems }) => [line, raw, problems.map(({ path }) => path[0])]),
    ).toEqual([
      [3, bad[0], ["ndb_no"]],
      [4, bad[1], ["kcal"]],
      [5, bad[2], ["kcal"]],
      [6, bad[3], ["kcal"]],
    ]);
    const weights = await feed.run(
      weightsFile(`${carrot},1,1,cup,0`, `99999,1,1,cup,100`, `${carrot},1,1,,100`, `${carrot},1,.5,big bowl,100`),
    );
    expect(ending(weights)).toEqual(["DONE", 4, 1, 0, 0, 3, 0]);
    expect((await feed.quarantined(weights)).map(({ line, problems }) => [line, problems[0]?.path[0]])).toEqual([
      [2, "grams"],
      [3, "ndb_no"],
      [4, "measure"],
    ]);
    const placed = (await knownRow(carrot)).row.weights.at(-1);
    expect(placed).toMatchObject({ measure: "big bowl", grams: 200, edition: { title: "Corrections" } });
    const actor: Actor = { kind: "PROGRAM", name: "test" };
    const caller: Caller = { actor, requestId: "test" };
    const mended = await resolveRow(deps, caller, { run: run.id, line: 4, text: heavier });
    if (!mended.ok) throw new Error(JSON.stringify(mended.problems));
    await runImports(deps, "worker-1");
    expect((await knownRow(carrot)).row.per100g.energyKcal).toBe(44);
    await feed.run(null, { kind: "UNDO", undoes: mended.value.replay ?? "" });
    await feed.run(null, { kind: "UNDO", undoes: weights.id });
    await feed.run(null, { kind: "UNDO", undoes: run.id });
    expect((await knownRow(carrot)).row).toEqual(openFoodTable.get(carrot));
  });

  it("is refused whole where it is neither table, or where too much of it is bad", async () => {
    const feed = await feedOf("Corrections", { limits: { changed: 0.3, quarantined: 0.2 } });
    for (const text of ["a,b\n1,2\n", foodsFile("1124", "x"), foodsFile(heavier, lineOf(garlic))]) {
      const run = await feed.run(text);
      expect([run.state, run.created + run.changed]).toEqual(["STOPPED", 0]);
    }
    expect((await knownRow(carrot)).edition).toEqual(shippedEdition);
    const forced = await feed.run(foodsFile(heavier), { force: true });
    expect(ending(forced)).toEqual(["DONE", 1, 0, 1, 0, 0, 0]);
    await feed.run(null, { kind: "UNDO", undoes: forced.id });
  });

  it("says in a dry run what readers would notice, also of a food whose weights lie far apart in the file", async () => {
    const feed = await feedOf("A kitchen scale");
    const before = await knownRow(butter);
    const others = Array.from({ length: 600 }, (_, at) => `${garlic},1,1,heap ${String(at % 90)},${String(at + 1)}`);
    const file = weightsFile(`${butter},1,1,cup,240`, ...others, `${butter},1,1,curl,4`);
    const run = await feed.run(file, { kind: "DRY_RUN" });
    expect(ending(run)).toEqual(["DONE", 602, 91, 1, 0, 0, 510]);
    expect(await knownRow(butter)).toEqual(before);
    const { changes } = await reportOf(run);
    const [change] = changes.filter(({ what }) => what.startsWith("open table 01001"));
    // Release 26, NDB 01001: a cup of butter is 227 g; 240 g in 236.588 ml (NIST Handbook 44) are 1.014 g/ml.
    expect(change).toEqual({
      what: "open table 01001, Butter, salted",
      isNew: false,
      differences: [
        { what: "one cup", before: "227 g", after: "240 g" },
        { what: "density", before: "0.9595 g/ml", after: "1.014 g/ml" },
        { what: "one curl", before: null, after: "4 g" },
      ],
      superseded: shippedEdition.title,
    });
    const foods = await feed.run(foodsFile(heavier), { kind: "DRY_RUN" });
    expect((await reportOf(foods)).changes[0]?.differences).toContainEqual({
      ...{ what: "energyKcal in 100 g", after: "44" },
      before: String((await knownRow(carrot)).row.per100g.energyKcal),
    });
  });

  it("leaves what was changed since when it is taken back", async () => {
    const [first, second] = [await feedOf("First"), await feedOf("Second")];
    const one = await first.run(foodsFile(heavier, lineOf(garlic), heavier.replace(carrot, "99901")));
    const two = await second.run(foodsFile(lineOf(carrot)));
    const weighed = await second.run(weightsFile(`${garlic},1,1,clove,5`, `99901,1,1,cup,100`));
    const undo = await first.run(null, { kind: "UNDO", undoes: one.id });
    // The carrot is the second's by now, and the new food has got a weight. The garlic's facts are the first's still.
    expect([undo.changed, undo.unchanged]).toEqual([1, 2]);
    expect((await rowsOf(carrot, garlic, "99901")).map((each) => each?.edition.title)).toEqual([
      ...["Second", shippedEdition.title, "First"],
    ]);
    expect((await inherited(garlic)).measures.find(({ name }) => name === "clove")?.source.title).toBe("Second");
    for (const run of [weighed, two]) await second.run(null, { kind: "UNDO", undoes: run.id });
    expect((await first.run(null, { kind: "UNDO", undoes: one.id })).changed).toBe(2);
    expect((await rowsOf("99901"))[0]).toBeNull();
  });

  it("goes on behind the last chunk when a worker was lost, with the same end", async () => {
    const feed = await feedOf("Resumed");
    const { data } = deps;
    const file = await data.importFiles.put(
      feed.id,
      "file",
      bytesOf(foodsFile(lineOf(garlic), lineOf(butter))),
      nightClock(),
    );
    const order = { feed: feed.id, file: file.id, kind: "LOAD", askedBy: "test", force: false, undoes: null } as const;
    await data.importRuns.queue(order, nightClock());
    const early = new Date(nightClock().getTime() - 3_600_000);
    const claimed = await data.importRuns.claim("worker-lost", early, early);
    const none = { created: 0, changed: 0, unchanged: 0, quarantined: 0, repeated: 0, quarantine: [], changes: [] };
    expect(
      await data.importRuns.advance(claimed?.id ?? "", "worker-lost", { ...none, read: 1, changed: 1, lastLine: 2 }),
    ).toBe(true);
    expect(await runImports(deps, "worker-2")).toBe(1);
    const ended = await data.importRuns.byId(claimed?.id ?? "");
    expect(ended && ending(ended)).toEqual(["DONE", 2, 0, 2, 0, 0, 0]);
    expect(await data.importRuns.changes(claimed?.id ?? "")).toHaveLength(1);
    expect((await knownRow(butter)).edition.title).toBe("Resumed");
  });

  describe("and a start with another edition", () => {
    const next = { code: "next", title: "Next release" };
    const [moved, gone] = ["11143", "11109"] as const;

    it("keep what was imported, row by row and weight by weight, and the rest is the new edition's", async () => {
      const feed = await feedOf("The operator's word");
      const facts = await feed.run(foodsFile(heavier, heavier.replace(carrot, "99902")));
      const weights = await feed.run(weightsFile(`${moved},1,1,stick,12`, `${gone},1,1,leaf,30`));
      const own = shippedRows
        .filter(({ ndbNo }) => ndbNo !== gone)
        .map((row) => (row.ndbNo === moved ? { ...row, per100g: { energyKcal: 99 } } : row));
      const added = { ...(own[0] as CatalogueRow), ndbNo: "99902" };
      await start([...own, added], next.code, next.title);
      const [ours, also, celery, cabbage, other] = await rowsOf(carrot, "99902", moved, gone, "01002");
      expect([ours, also].map((each) => [each?.edition.title, each?.row.per100g.energyKcal])).toEqual([
        ["The operator's word", 44],
        ["The operator's word", 44],
      ]);
      expect([celery?.edition, celery?.row.per100g]).toEqual([next, { energyKcal: 99 }]);
      expect(celery?.row.weights.at(-1)).toMatchObject({ grams: 12, edition: { title: "The operator's word" } });
      expect(cabbage?.row.weights.at(-1)).toMatchObject({ measure: "leaf", grams: 30 });
      expect(other?.edition).toEqual(next);
      // Again, and back: a start that finds nothing new changes nothing.
      const before = await whole();
      await start([...own, added], next.code, next.title);
      expect(await whole()).toEqual(before);
      for (const run of [weights, facts])
        expect((await feed.run(null, { kind: "UNDO", undoes: run.id })).unchanged).toBe(0);
      await start([...own, added], next.code, next.title);
      expect((await rowsOf(carrot, "99902", moved, "01002")).map((each) => each?.edition)).toEqual([
        next,
        next,
        next,
        next,
      ]);
      expect(await rowsOf(gone)).toEqual([null]);
    });
  });

  it("is the operator's, from a feed that stops at no share of changes unless it names one", async () => {
    const caller: Caller = { actor: { kind: "PROGRAM", name: "test" }, requestId: "test" };
    const input = { slug: "open-table", kind: "CATALOGUE", settings: { source: "Another edition" } } as const;
    const refused = await saveFeed(deps, caller, { ...input, publisher: "somebody" });
    expect(refused.ok).toBe(false);
    expect((await saveFeed(deps, caller, { ...input, publisher: null })).ok).toBe(true);
    expect((await deps.data.feeds.find(null, "open-table"))?.settings).toMatchObject({
      limits: { changed: 1, quarantined: 0.2 },
    });
  });
});
