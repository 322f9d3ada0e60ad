/**
 * node --expose-gc --import tsx tests/kit/memory-growth.ts
 *
 * Asks for 100,000 new things of every kind that a process remembers, and prints what the heap grew by after all that is
 * remembered was full: `{ grown: [{ name, things, bytesEach, share }], caches }`, the second being the table of caches. Run by
 * tests/services/cache/bounded-cache.test.ts.
 */
import { readRulesFolder } from "../../src/app/setup/read-rules-folder.js";
import { readSeeds } from "../../src/app/setup/read-seeds.js";
import { cacheTable } from "../../src/domain/cache-table.js";
import { noHousehold } from "../../src/domain/model/household.js";
import type { PlanBundle } from "../../src/domain/model/plan.js";
import { asFrozen } from "../../src/domain/plan/review/foods-today.js";
import { scalePlan } from "../../src/domain/plan/scale-plan.js";
import { shop } from "../../src/domain/plan/shop.js";
import { numberMarks } from "../../src/domain/quantity/parse/number-marks.js";
import { measuresFor } from "../../src/domain/quantity/piece-words.js";
import { readerLocale } from "../../src/domain/quantity/reader-locale.js";
import { cachedPackOptions } from "../../src/domain/shopping/cached-pack-options.js";
import { moneyOf } from "../../src/domain/shopping/money.js";
import { writtenBlocks } from "../../src/exports/document/written-blocks.js";
import { countryIn } from "../../src/exports/page/country-name.js";
import { formChoices } from "../../src/exports/page/form/form-choices.js";
import { dateText, hourText } from "../../src/exports/words/clock-text.js";
import { compiledOperations, keptDocuments } from "../../src/graphql/server/compiled-operations.js";
import { openDocumentStore, hashOf } from "../../src/graphql/server/document-store.js";
import { recentBytes } from "../../src/graphql/server/recent-bytes.js";
import { chooseMediaType } from "../../src/graphql/server/media-type.js";
import { createSchema } from "../../src/graphql/schema.js";
import { compileFoodNames, findFood } from "../../src/domain/quantity/food-name.js";
import { readSpokenAmount } from "../../src/domain/quantity/spoken-amount.js";
import { readDocuments } from "../../src/imports/documents/read-documents.js";
import { decimalCell } from "../../src/imports/tables/decimal-cell.js";
import { spreadsheetDate } from "../../src/imports/tables/spreadsheet-date.js";
import { catalogueFacts } from "../../src/imports/usda/catalogue-facts.js";
import { openRateLimitStore } from "../../src/services/access/rate-limit-store.js";
import { judgeFor } from "../../src/services/foods/foods-today.js";
import { readSessionStart } from "../../src/services/answers/read-session-start.js";
import { entrySize, openCache } from "../../src/services/cache/cache.js";
import { nameBook } from "../../src/exports/words/name-book.js";
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
/** A language that nobody speaks, for which the runtime looks far and wide. */
const localeOf = (at: number): string => `${letters(at, 3)}-${letters(Math.floor(at / 17_576), 2).toUpperCase()}`;
/** A tag that nobody used before, of a language that is there (RFC 5646, 2.2.7: private use). */
const tagOf = (at: number): string => `en-GB-x-${at.toString(36)}`;
const regionOf = (at: number): string => `US-${letters(at, 4).toUpperCase()}`;

const everything = 100_000;
interface Kind {
  readonly name: string;
  /** How many are asked for at first: more than are kept. */
  readonly full: number;
  readonly things: number;
  readonly ask: (at: number) => unknown;
}
const kind = (name: string, ask: Kind["ask"], full = 2_500): Kind => ({ name, ask, full, things: everything });
/** Of what takes milliseconds each. What keeps it is the same class with the same kind of bound as in all other kinds. */
const slow = (name: string, things: number, ask: Kind["ask"]): Kind => ({ name, ask, full: things, things });

const compiled = compiledOperations(createSchema());
const byHash = openDocumentStore(null);
const byBytes = recentBytes<object>("graphql-bodies", keptDocuments);
const book = openRateLimitStore({ name: "address", points: 100 }, 5_000);
const { store } = openCache(1_000_000);
const choose = formatChooser(Object.values(formats));
const edition = { code: "e", title: "Edition" };
const row = (at: number) => ({
  ...{ ndbNo: "00001", description: "Apple", otherNames: [], aisle: "fruit", per100g: {}, refuse: null },
  weights: [{ measure: `1 cup, cut ${String(at)}`, grams: 100 }],
});
/** The smallest plan that is one: what a household costs is then what keeps it. */
const [line] = bundle.plan.meals.flatMap(({ lines }) => lines.filter(({ item }) => item.kind === "FOOD"));
if (line === undefined) throw new Error("the demo's first plan has no food in a meal");
const meals = [{ slug: "meal", title: "Meal", day: 0, serves: 2, lines: [line], steps: [] }];
const small: PlanBundle = { ...bundle, components: [], plan: { ...bundle.plan, meals } };
const reader = { locale: "en", region: null, measures: "METRIC", currency: "XTS", converts: true } as const;
const pieces = seeds.foods.filter(({ slug }) => ["carrot", "egg", "lemon", "garlic"].includes(slug));

const names = compileFoodNames(seeds.foods);
const spoken = { locale: "en", measures: "METRIC", region: null, path: [] } as const;

const kinds: readonly Kind[] = [
  kind("households", (at) => {
    const household = { ...noHousehold, region: regionOf(at), locale: tagOf(at), diets: [letters(at, 4)] };
    const today = { ...asFrozen, fitsDiet: judgeFor(rules.allergens.diets, household.region) };
    const scaled = scalePlan(small, 1 + (at % 50), household, today);
    if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems));
    return shop([scaled.value], household);
  }),
  slow("whole answers", 40, (at) => answerOf(bundle, 1 + (at % 12), { region: regionOf(at), locale: localeOf(at) })),
  kind("regions", (at) => judgeFor(rules.allergens.diets, regionOf(at))),
  kind("shelves", (at) => cachedPackOptions(food, "MASS", { region: regionOf(at), currency: letters(at, 4) })),
  kind("locales", (at) => [readerLocale(tagOf(at)), numberMarks(tagOf(at)), decimalCell("1,5", tagOf(at))]),
  slow("locales of languages that nobody speaks", 1_000, (at) => [
    ...[readerLocale(localeOf(at)), numberMarks(localeOf(at)), decimalCell("1,5", localeOf(at))],
    ...[dateText("2026-03-01", localeOf(at)), spreadsheetDate("2-Jan", localeOf(at))],
  ]),
  kind("dates", (at) => hourText("09:30", tagOf(at))),
  slow("names of months", 500, (at) => spreadsheetDate("2-Januar", tagOf(at))),
  slow("names of countries", 100, (at) => countryIn("GB", tagOf(at), "long")),
  slow("countries and currencies to choose from", 30, (at) =>
    formChoices(small, rules.allergens.diets, nameBook(small, { ...reader, locale: tagOf(at) })),
  ),
  kind("time zones", (at) => readSessionStart({ local: "2027-01-03T09:00", zone: `Europe/${letters(at, 4)}` }, [])),
  kind("pieces", (at) => pieces.map((each) => measuresFor(each, letters(at, 3), letters(at, 4).toUpperCase()))),
  kind("names of foods", (at) => findFood(names, `kale ${letters(at, 5)}`, "en", null)),
  slow("amounts in words", 5_000, (at) =>
    readSpokenAmount(`1 ${letters(at, 5)}`, { slug: "x", measures: [], densities: [], packs: [] }, spoken),
  ),
  kind("currencies", (at) => moneyOf(12_345, letters(at, 4).toUpperCase())),
  kind("measures of the open table", (at) => catalogueFacts(row(at), edition), 10_000),
  kind("texts of writers", (at) => writtenBlocks(`${"Turn the *roots* once. ".repeat(5)}${String(at)}`)),
  kind("documents", (at) => readDocuments(`kind: publisher\nslug: p${String(at)}\nname: x\n`, "p")),
  kind("GraphQL documents", (at) => compiled.compile(`query Q${String(at)} { __typename }`)),
  kind("GraphQL documents by hash", (at) => {
    const source = `query Q${String(at)} { __typename }`;
    const extensions = { persistedQuery: { version: 1, sha256Hash: hashOf(source) } };
    const found = byHash.find({ source, documentId: null, extensions });
    if (!("keep" in found)) throw new Error("the document was refused");
    found.keep();
  }),
  kind("requests by their bytes", (at) => byBytes.keep(Buffer.from(`query Q${String(at)}`), {})),
  kind("callers", (at) => book.consume(`192.0.2.${String(at)}`, 1, new Date(0)), 10_000),
  kind("answers", (at) => store.set(`answer ${String(at)}`, { at }, entrySize(`answer ${String(at)}`, 500))),
  kind("media types", (at) => chooseMediaType({ accept: `application/${letters(at, 5)}, */*` })),
  kind("accepted types", (at) => choose(null, { accept: `text/${letters(at, 5)}, */*` })),
];

const heap = (): number => {
  gc();
  gc();
  return process.memoryUsage().heapUsed;
};

const grown = kinds.map(({ name, full, things, ask }) => {
  for (let at = 0; at < full; at++) ask(at);
  const before = heap();
  for (let at = full; at < full + things; at++) ask(at);
  const growth = heap() - before;
  return { name, things, bytesEach: Math.round(growth / things), share: growth / before };
});
console.log(JSON.stringify({ grown, caches: cacheTable() }));
