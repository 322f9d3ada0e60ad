import type {
  Food,
  FoodName,
  FoodNutrients,
  LeftToBase,
  Loose,
  NutrientCode,
  Pack,
  SingleIngredient,
} from "../../domain/model/food.js";
import { packsAlone } from "../../domain/component/packs-alone.js";
import { ok } from "../../domain/problem.js";
import type { Path, Result } from "../../domain/problem.js";
import { combine, every, mapResult } from "./combine-results.js";
import { nutrientKeys } from "./schemas/food-schema.js";
import type { FoodDocument } from "./schemas/food-schema.js";
import type { PacksDocument } from "./schemas/packs-schema.js";
import { readDensities, readKeeping, readOwnMeasures } from "./read-facts.js";
import { readingContextOf } from "./reading-context.js";
import type { ReadingContext } from "./reading-context.js";

/**
 * A food as the model has it. Paths of problems lead into the document.
 *
 * @param base the food that it builds on, whose measures its packs may be counted in
 */
export function readFood(document: FoodDocument, base: Food | null = null): Result<Food> {
  const reading = readingContextOf(document);
  const facts = combine({
    densities: readDensities(document.densities, reading, ["densities"]),
    measures: readOwnMeasures(document.measures, reading, ["measures"]),
    edible: withSources(document.edible, reading, ["edible"], ({ form, share }) => ({ form: form, share })),
    yields: withSources(document.yields, reading, ["yields"], (each) => ({
      food: each.food,
      gramsPerGram: each["grams-per-gram"],
    })),
    allergens: withSources(document.allergens, reading, ["allergens"], ({ code, presence, traces }) => ({
      code,
      presence,
      ...(traces === undefined ? {} : { traces }),
    })),
    singleIngredient: readSingleIngredient(document, reading),
    diets: withSources(document.diets, reading, ["diets"], ({ diet, fits }) => ({ diet, fits })),
    nutrients: readNutrients(document.nutrients, reading),
    keeping: readKeeping(document.keeping, reading, ["keeping"]),
  });
  if (!facts.ok) return facts;
  const measures = [...facts.value.measures, ...(base?.measures ?? [])];
  const amounts = combine({
    parts: every(document.parts.map((part, index) => readPart(part, reading, ["parts", index]))),
    packs: every(document.packs.map((pack, index) => readPack(pack, measures, reading, ["packs", index]))),
  });
  const { singleIngredient, ...others } = facts.value;
  return mapResult(amounts, ({ parts, packs }) => ({
    slug: document.slug,
    names: Object.entries(document.names).map(readName),
    aisle: document.aisle ?? "other",
    shoppedBy: document["shopped-by"] ?? "MASS",
    ndbNo: document.usda,
    ...others,
    ...(singleIngredient === null ? {} : { singleIngredient }),
    parts,
    packs,
    keepsAs: document["keeps-as"],
    alwaysThere: document["always-there"] ?? false,
    ...(document["shelf-stable"] ? { shelfStable: true } : {}),
    ...onBase(document),
  }));
}

/**
 * Packs alone, as a food that builds on another and says nothing else.
 *
 * @param base that food, whose measures they may be counted in
 */
export function readPacks(document: PacksDocument, base: Food): Result<Food> {
  const reading = readingContextOf(document);
  const read = every(document.packs.map((pack, index) => readPack(pack, base.measures, reading, ["packs", index])));
  return mapResult(read, (packs) => packsAlone(document.slug, packs));
}

/** What it builds on, and what it leaves to that. */
function onBase(document: FoodDocument): Pick<Food, "extends" | "leaves"> {
  if (document.extends === null) return {};
  const says: Readonly<Record<LeftToBase, unknown>> = {
    aisle: document.aisle,
    shoppedBy: document["shopped-by"],
    alwaysThere: document["always-there"],
  };
  return {
    extends: { food: document.extends, sameIngredients: document["same-ingredients"] },
    leaves: (Object.keys(says) as LeftToBase[]).filter((key) => says[key] === undefined),
  };
}

function readName([tag, name]: [string, FoodDocument["names"][string]]): FoodName {
  const [language = tag, region = null] = splitTag(tag);
  if (typeof name === "string") return { language, region, one: name, many: name, also: [] };
  const counted = name.counted === undefined ? {} : { counted: name.counted };
  return { language, region, one: name.one, many: name.many ?? name.one, ...counted, also: name.also };
}

/** `en-GB` is English of Great Britain; a script, as in `sr-Latn`, stays with the language. */
const splitTag = (tag: string): readonly string[] => {
  const region = /-([A-Z]{2}|\d{3})$/.exec(tag)?.[1];
  return region === undefined ? [tag] : [tag.slice(0, -region.length - 1), region];
};

const withSources = <D extends { readonly source: Parameters<ReadingContext["source"]>[0] }, T>(
  documents: readonly D[],
  reading: ReadingContext,
  path: Path,
  change: (document: D) => T,
) =>
  every(
    documents.map((document, index) =>
      mapResult(reading.source(document.source, [...path, index, "source"]), (source) => ({
        ...change(document),
        source,
      })),
    ),
  );

/** What the ingredient is itself is what the food is said to contain. */
function readSingleIngredient(document: FoodDocument, reading: ReadingContext): Result<SingleIngredient | null> {
  const written = document["single-ingredient"];
  if (written === null) return ok(null);
  const is = document.allergens.flatMap(({ code, presence }) => (presence === "CONTAINS" ? [code] : []));
  return mapResult(reading.source(written.source, ["single-ingredient", "source"]), (source) => ({ is, source }));
}

function readNutrients(
  written: FoodDocument["nutrients"],
  reading: ReadingContext,
  path: Path = ["nutrients"],
): Result<FoodNutrients | null> {
  if (written === null) return ok(null);
  const codes = Object.keys(nutrientKeys) as NutrientCode[];
  const given = codes.flatMap((code) => {
    const value = written["per-100g"][nutrientKeys[code]];
    return value === undefined ? [] : [[code, value] as const];
  });
  return mapResult(reading.source(written.source, [...path, "source"]), (source) => ({
    per100g: Object.fromEntries(given),
    source,
  }));
}

function readPart(part: FoodDocument["parts"][number], reading: ReadingContext, path: Path) {
  const read = combine({
    perPiece: reading.amount(part["per-piece"], [], [...path, "per-piece"]),
    source: reading.source(part.source, [...path, "source"]),
    keeping: readKeeping(part.keeping, reading, [...path, "keeping"]),
    nutrients: readNutrients(part.nutrients, reading, [...path, "nutrients"]),
  });
  const keepsAs = part["keeps-as"];
  return mapResult(read, ({ keeping, nutrients, ...values }) => ({
    name: part.name,
    after: part.after,
    ...values,
    ...(keepsAs === null ? {} : { keepsAs }),
    ...(keeping.length === 0 ? {} : { keeping }),
    ...(nutrients === null ? {} : { nutrients }),
  }));
}

function readPack(
  pack: FoodDocument["packs"][number],
  measures: Food["measures"],
  reading: ReadingContext,
  path: Path,
): Result<Pack> {
  const read = combine({
    content: reading.amount(pack.content, measures, [...path, "content"]),
    source: reading.source(pack.source, [...path, "source"]),
    loose: readLoose(pack.loose, reading, [...path, "loose", "step"]),
  });
  const [amount, currency] = pack.price?.split(" ") ?? [];
  return mapResult(read, ({ loose, ...values }) => ({
    id: pack.id,
    name: pack.name,
    price: amount === undefined || currency === undefined ? null : { amount, currency },
    region: pack.region,
    seen: pack.seen,
    ...values,
    ...(loose === null ? {} : { loose }),
  }));
}

function readLoose(
  written: FoodDocument["packs"][number]["loose"],
  reading: ReadingContext,
  path: Path,
): Result<Loose | null> {
  if (written === null || written.step === null) return ok(written === null ? null : { step: null });
  return mapResult(reading.amount(written.step, [], path), (step) => ({ step }));
}
