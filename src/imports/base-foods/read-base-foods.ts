import type { CatalogueRow, CatalogueEdition } from "../../domain/model/catalogue-row.js";
import type { Food } from "../../domain/model/food.js";
import { checkFoodKeeping } from "../../domain/plan/check/check-keeping.js";
import { wordsOfName } from "../../domain/quantity/food-name.js";
import type { Path, Problem } from "../../domain/problem.js";
import { isKeepingClass, needsCold } from "../../domain/storage/keeping-classes.js";
import type { KeepingRules } from "../../domain/storage/rule.js";
import { readRuleDocuments, unknownWord, type RuleProblem } from "../rules/rule-texts.js";
import { catalogueFacts } from "../usda/catalogue-facts.js";
import { readTable } from "../usda/table-rows.js";
import { excludedBy } from "./base-claims.js";
import { foodOfEntry } from "./base-food.js";
import type { TableWeight } from "./base-measures.js";
import type { PartFacts } from "./base-parts.js";
import { baseFoodsSchema, type BaseFoodEntry } from "./base-food-schema.js";
import { readCookedYields, type CookedYield } from "./cooked-yields.js";
import { editionSchema, type BaseFoodEdition } from "./edition-schema.js";
import { apartByRegion, namesOf } from "./read-base-names.js";
import { readStorageTable, type StorageRow, type StorageTable } from "./storage-table.js";

export interface BaseFoods {
  readonly edition: BaseFoodEdition;
  readonly foods: readonly Food[];
}

export interface BaseFoodsInput {
  /** The edition's head and its entries, in any files. */
  readonly files: readonly { readonly name: string; readonly text: string }[];
  /** Published tables beside them. */
  readonly storage: Uint8Array;
  readonly cooked: Uint8Array;
  readonly weights: Uint8Array;
  readonly catalogue: { readonly edition: CatalogueEdition; readonly rows: ReadonlyMap<string, CatalogueRow> };
  readonly rules: KeepingRules;
  /** Foods of an edition before it, which its entries may turn into when cooked. */
  readonly known?: readonly string[];
}

export interface BaseFoodsRead {
  /** null: something is wrong. */
  readonly base: BaseFoods | null;
  readonly problems: readonly RuleProblem[];
}

interface Entry {
  readonly slug: string;
  readonly entry: BaseFoodEntry;
  readonly report: (path: Path, problem: (path: Path) => Problem) => void;
}

/**
 * Entries and published tables to foods, all of them or none. Each problem names the file, the food and the key.
 */
export function readBaseFoods(input: BaseFoodsInput): BaseFoodsRead {
  const problems: RuleProblem[] = [];
  const { edition, entries } = readFiles(input.files, problems);
  const storage = readStorageTable(input.storage, "usda-fsis-home-storage.csv");
  const cooked = readCookedYields(input.cooked, "cooked-yields.csv");
  for (const each of [...storage.problems, ...cooked.problems]) problems.push({ ...each, path: each.problem.path });
  const tables: Tables = {
    ...input.catalogue,
    weights: weightsByPlace(input.weights),
    storage,
    rowsOf: byId(storage.rows),
    cooked: cooked.yields,
    slugs: new Set([...entries.map(({ slug }) => slug), ...(input.known ?? [])]),
    rules: input.rules,
  };
  const foods = entries.map((each) => withinRules(foodOf(each, tables), input.rules, edition?.code ?? ""));
  reportSharedNames(entries, { wanted: problems.length === 0, isWhole: input.known === undefined });
  if (edition === null || problems.length > 0) return { base: null, problems };
  const shared = new Set(entries.flatMap(({ entry }) => entry.shares));
  return { base: { edition, foods: apartByRegion(foods, shared) }, problems };
}

interface Tables {
  readonly edition: CatalogueEdition;
  readonly rows: ReadonlyMap<string, CatalogueRow>;
  readonly weights: ReadonlyMap<string, ReadonlyMap<string, TableWeight>>;
  readonly storage: StorageTable;
  readonly rowsOf: ReadonlyMap<number, readonly StorageRow[]>;
  readonly cooked: ReadonlyMap<string, CookedYield>;
  readonly slugs: ReadonlySet<string>;
  readonly rules: KeepingRules;
}

function readFiles(files: BaseFoodsInput["files"], problems: RuleProblem[]) {
  const editions: BaseFoodEdition[] = [];
  const entries = new Map<string, Entry>();
  for (const { name, text } of files) {
    if (/^kind:/m.test(text)) {
      const read = readRuleDocuments(text, name, editionSchema);
      problems.push(...read.problems);
      for (const { value, at } of read.documents) {
        if (editions.length > 0) problems.push(at({ code: "DUPLICATE", path: ["code"], value: value.code }));
        editions.push({ code: value.code, title: value.title });
      }
      continue;
    }
    const read = readRuleDocuments(text, name, baseFoodsSchema);
    problems.push(...read.problems);
    for (const { value, at } of read.documents)
      for (const [slug, entry] of Object.entries(value)) {
        const report: Entry["report"] = (path, problem) => problems.push(at(problem([slug, ...path])));
        if (entries.has(slug)) report([], (path) => ({ code: "DUPLICATE", path, value: slug }));
        else entries.set(slug, { slug, entry, report });
      }
  }
  const [edition = null] = editions;
  if (edition === null && problems.length === 0) {
    const problem: Problem = {
      code: "BAD_SHAPE",
      path: ["kind"],
      expected: "a file with `kind: base-foods`",
      got: "none",
    };
    problems.push({ file: files[0]?.name ?? "", line: 1, column: 1, path: problem.path, problem });
  }
  return { edition, entries: [...entries.values()] };
}

const bad =
  (expected: string, got: string) =>
  (path: Path): Problem => ({ code: "BAD_SHAPE", path, expected, got });

function foodOf({ slug, entry, report }: Entry, tables: Tables): Food {
  const { usda, cooked } = entry;
  const row = usda === null ? undefined : tables.rows.get(usda);
  if (usda !== null && row === undefined) report(["usda"], bad("the number of a food of the open table", usda));
  const weights = tables.weights.get(usda ?? "") ?? new Map<string, TableWeight>();
  for (const [name, written] of Object.entries(entry.measures))
    if ("weight" in written && !weights.has(written.weight))
      report(["measures", name], bad(`a weight of ${usda ?? "its row"} in the open table`, `w${written.weight}`));
  for (const [index, id] of entry.fsis.entries())
    if (!tables.storage.ids.has(id)) report(["fsis", index], bad("an id of the table of storage times", String(id)));
  const { classes } = tables.rules;
  if (entry["keeps-as"] !== null && !isKeepingClass(entry["keeps-as"], classes))
    report(["keeps-as"], (path) =>
      unknownWord(
        path,
        entry["keeps-as"] ?? "",
        classes.map(({ code }) => code),
      ),
    );
  if ((entry.is === "made") !== (entry.diets !== undefined))
    report(["diets"], bad("diets where, and only where, `is` says made", entry.is));
  for (const [diet, fits] of Object.entries(entry.diets ?? {})) {
    const code = fits === true ? excludedBy(diet, [...entry.contains, ...entry.unsure]) : undefined;
    if (code !== undefined) report(["diets", diet], bad(`no or unknown where it may hold ${code}`, "yes"));
  }
  if (entry.is === "gluten-grain" && entry.contains.length === 0)
    report(["contains"], bad("the grain that it is", "nothing"));
  const yields = cooked === undefined ? undefined : tables.cooked.get(cooked.source ?? "");
  if (cooked !== undefined && !tables.slugs.has(cooked.as)) report(["cooked", "as"], bad("a base food", cooked.as));
  if (cooked !== undefined && (yields === undefined || Math.abs(yields.gramsPerGram / cooked.gives - 1) > 0.01))
    report(
      ["cooked", "gives"],
      bad(`${String(yields?.gramsPerGram ?? "a figure with its source")}`, String(cooked.gives)),
    );
  return foodOfEntry(slug, entry, {
    catalogue: row === undefined ? null : catalogueFacts(row, tables.edition),
    weights,
    storage: entry.fsis.flatMap((id) => tables.rowsOf.get(id) ?? []),
    parts: partsOf(entry, tables, report),
    cooked: cooked === undefined || yields === undefined ? null : { food: cooked.as, ...yields },
  });
}

/** The parts of an entry, each with its own row of the open table. */
function partsOf({ parts }: BaseFoodEntry, tables: Tables, report: Entry["report"]): ReadonlyMap<string, PartFacts> {
  return new Map(
    Object.entries(parts).map(([name, part]) => {
      const { of, gives, after } = part;
      const row = of === undefined ? undefined : tables.rows.get(of);
      if (of !== undefined && row === undefined)
        report(["parts", name, "of"], bad("the number of a food of the open table", of));
      const place = "weight" in gives ? gives.weight : null;
      const weight = (place === null ? undefined : tables.weights.get(of ?? "")?.get(place)) ?? null;
      if (place !== null && weight === null)
        report(["parts", name, "gives"], bad(`a weight of ${of ?? "its row"} in the open table`, `w${place}`));
      for (const [at, other] of after.entries())
        if (!(other in parts)) report(["parts", name, "after", at], bad("another part of it", other));
      return [name, { part, weight, catalogue: row === undefined ? null : catalogueFacts(row, tables.edition) }];
    }),
  );
}

/**
 * Without times beyond the published rules of the food's own class. What keeps on a shelf until it is opened is of no class that
 * speaks of it opened, if the table says how long it then keeps.
 */
function withinRules(food: Food, rules: KeepingRules, date: string): Food {
  const { keepsAs, keeping, shelfStable = false } = food;
  const isClass = keepsAs !== null && isKeepingClass(keepsAs, rules.classes);
  const opened = keeping.some(({ condition }) => condition === "after opening");
  const plain =
    shelfStable && isClass && opened && needsCold(keepsAs, rules.classes) ? { ...food, keepsAs: null } : food;
  const beyond = new Set(checkFoodKeeping(plain, rules, date).map(({ path }) => path.at(-1)));
  return { ...plain, keeping: plain.keeping.filter((_, index) => !beyond.has(index)) };
}

/** One word in one language and region names one food, but for words that both entries say they share. */
function reportSharedNames(
  entries: readonly Entry[],
  { wanted, isWhole }: { readonly wanted: boolean; readonly isWhole: boolean },
): void {
  if (!wanted) return;
  const taken = new Map<string, Entry>();
  const shared = new Set<string>();
  for (const each of entries)
    for (const name of namesOf(each.entry.names))
      for (const word of new Set(wordsOfName(name).map((spelling) => spelling.toLowerCase()))) {
        const { language, region } = name;
        const key = `${language}-${region ?? ""} ${word}`;
        const other = taken.get(key);
        const areBoth = [each, other].every((food) => food?.entry.shares.includes(word));
        if (areBoth) shared.add(word);
        else if (other !== undefined && other.slug !== each.slug)
          each.report(
            ["names", region === null ? language : `${language}-${region}`],
            bad(`a word that ${other.slug} has not, or that both name in \`shares\``, word),
          );
        taken.set(key, each);
      }
  for (const { entry, report } of entries)
    for (const [at, word] of entry.shares.entries())
      if (isWhole && !shared.has(word)) report(["shares", at], bad("a name that another food shares", word));
}

function weightsByPlace(bytes: Uint8Array): ReadonlyMap<string, ReadonlyMap<string, TableWeight>> {
  const found = new Map<string, Map<string, TableWeight>>();
  for (const { field } of readTable(bytes, "usda-sr26-weights.csv", ["ndb_no", "seq", "amount", "measure", "grams"])
    .rows) {
    const places = found.get(field("ndb_no")) ?? new Map<string, TableWeight>();
    const grams = Number(field("grams")) / Number(field("amount"));
    found.set(field("ndb_no"), places.set(field("seq"), { measure: field("measure"), grams }));
  }
  return found;
}

function byId(rows: readonly StorageRow[]): ReadonlyMap<number, readonly StorageRow[]> {
  const found = new Map<number, StorageRow[]>();
  for (const row of rows) found.set(row.id, [...(found.get(row.id) ?? []), row]);
  return found;
}
