/**
 * node --expose-gc --import tsx tests/kit/memory-growth.ts
 *
 * Asks for ever new things of every kind that a process remembers, and prints what the heap grew by after all that is
 * remembered was full: a JSON list of `{ name, things, bytesEach, share }`. Run by tests/services/memory/bounded-memory.test.ts.
 */
import { readRulesFolder } from "../../src/app/read-rules-folder.js";
import { readSeeds } from "../../src/app/read-seeds.js";
import { noHousehold } from "../../src/domain/model/household.js";
import { asFrozen } from "../../src/domain/plan/foods-today.js";
import { scalePlan } from "../../src/domain/plan/scale-plan.js";
import { shop } from "../../src/domain/plan/shop.js";
import { numberMarks } from "../../src/domain/quantity/parse/number-marks.js";
import { measuresFor } from "../../src/domain/quantity/piece-words.js";
import { readerLocale } from "../../src/domain/quantity/reader-locale.js";
import { knownShelf } from "../../src/domain/shopping/known-shelf.js";
import { moneyOf } from "../../src/domain/shopping/money.js";
import { dateText } from "../../src/exports/clock-text.js";
import { compiledOperations, keptDocuments } from "../../src/graphql/compiled-operations.js";
import { knownDocuments, hashOf } from "../../src/graphql/known-documents.js";
import { recentBytes } from "../../src/graphql/recent-bytes.js";
import { createSchema } from "../../src/graphql/schema.js";
import { readDocuments } from "../../src/imports/documents/read-documents.js";
import { decimalCell } from "../../src/imports/tables/decimal-cell.js";
import { spreadsheetDate } from "../../src/imports/tables/spreadsheet-date.js";
import { catalogueFacts } from "../../src/imports/usda/catalogue-facts.js";
import { openBudgetBook } from "../../src/services/budget-book.js";
import { judgeFor } from "../../src/services/foods-today.js";
import { ByteCache } from "../../src/services/memory/byte-cache.js";
import { formatChooser, formats } from "../../src/rest/format.js";
import { answerOf } from "./answer-of.js";

const { gc } = globalThis;
if (gc === undefined) throw new Error("start node with --expose-gc");

const seeds = await readSeeds("seeds");
const rules = await readRulesFolder("seeds/rules");
const [bundle] = seeds.bundles;
const [food] = seeds.foods;
if (bundle === undefined || food === undefined) throw new Error("the demo is empty");

/** "aa" to "zz", and on with more letters. */
const letters = (at: number, length: number): string =>
  Array.from({ length }, (_, place) => String.fromCharCode(97 + (Math.floor(at / 26 ** place) % 26))).join("");
const localeOf = (at: number): string => `${letters(at, 3)}-${letters(Math.floor(at / 17_576), 2).toUpperCase()}`;
const regionOf = (at: number): string => `US-${letters(at, 3).toUpperCase()}`;
const named = (things: number, name: string, ask: (at: number) => unknown) => ({ things, name, ask });

const compiled = compiledOperations(createSchema());
const byHash = knownDocuments(null);
const byBytes = recentBytes<object>(keptDocuments);
const book = openBudgetBook({ name: "address", points: 100 }, 5_000);
const cache = new ByteCache(1_000_000);
const choose = formatChooser(Object.values(formats));
const document = (at: number): string => `query Q${String(at)} { plan(publisher: "p", slug: "s") { slug title } }`;
const edition = { code: "e", title: "Edition" };
const row = (at: number) => ({
  ...{ ndbNo: "00001", description: "Apple", otherNames: [], aisle: "fruit", per100g: {}, refuse: null },
  weights: [{ measure: `1 cup, cut ${String(at)}`, grams: 100 }],
});

const kinds = [
  named(500, "households", (at) => {
    const household = { ...noHousehold, region: regionOf(at), locale: localeOf(at), diets: [letters(at, 4)] };
    const today = { ...asFrozen, fitsDiet: judgeFor(rules.allergens.diets, household.region) };
    const scaled = scalePlan(bundle, 1 + at, household, today);
    if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems));
    return shop([scaled.value], { ...household, currency: letters(at, 3).toUpperCase() });
  }),
  named(100, "whole answers", (at) => answerOf(bundle, 1 + (at % 12), { region: regionOf(at), locale: localeOf(at) })),
  named(30_000, "regions", (at) => judgeFor(rules.allergens.diets, regionOf(at))),
  named(30_000, "shelves", (at) => knownShelf(food, "MASS", { region: regionOf(at), currency: letters(at, 3) })),
  named(2_000, "locales", (at) => [
    readerLocale(localeOf(at)),
    numberMarks(localeOf(at)),
    decimalCell("1,5", localeOf(at)),
  ]),
  named(1_500, "dates", (at) => [dateText("2026-03-01", localeOf(at)), spreadsheetDate("2-Jan", localeOf(at))]),
  named(5_000, "pieces", (at) =>
    seeds.foods.map((each) => measuresFor(each, letters(at, 3), letters(at, 2).toUpperCase())),
  ),
  named(10_000, "currencies", (at) => moneyOf(12_345, letters(at, 3).toUpperCase())),
  named(10_000, "measures of the open table", (at) => catalogueFacts(row(at), edition)),
  named(4_000, "documents", (at) => readDocuments(`kind: plan\nslug: p${String(at)}\nk${String(at)}: 1\n`, "p")),
  named(4_000, "GraphQL documents", (at) => compiled.compile(document(at))),
  named(10_000, "GraphQL documents by hash", (at) => {
    const source = document(at);
    const extensions = { persistedQuery: { version: 1, sha256Hash: hashOf(source) } };
    const found = byHash.find({ source, documentId: null, extensions });
    if (!("keep" in found)) throw new Error("the document was refused");
    found.keep();
  }),
  named(30_000, "requests by their bytes", (at) => byBytes.keep(Buffer.from(document(at)), { at })),
  named(100_000, "callers", (at) => book.spend(`10.0.${String(at)}`, 1, new Date(at))),
  named(100_000, "answers", (at) => cache.set(`answer ${String(at)}`, { at }, 500)),
  named(100_000, "accepted types", (at) => choose(null, { accept: `text/${letters(at, 5)}, */*` })),
];

const heap = (): number => {
  gc();
  gc();
  return process.memoryUsage().heapUsed;
};

const grown = kinds.map(({ name, things, ask }) => {
  // What is remembered is full then: nothing remembers more than a third of the things.
  for (let at = 0; at < things; at++) ask(at);
  const before = heap();
  for (let at = things; at < 2 * things; at++) ask(at);
  const growth = heap() - before;
  return { name, things, bytesEach: Math.round(growth / things), share: growth / before };
});
console.log(JSON.stringify(grown));
