import type { AllergenPresence, Food, FoodAllergen, FoodName, FoodNutrients } from "../../domain/model/food.js";
import type { Problem } from "../../domain/problem.js";
import type { FoodRow } from "./read-food-row.js";

/** A food as a row leaves it, and what the row would make less safe, which only a person may do. */
interface MergedFood {
  readonly food: Food;
  readonly problems: readonly Problem[];
}

/** How much care a statement asks for. What may be there is less safe than what nobody knows of. */
const care: Readonly<Record<AllergenPresence, number>> = {
  DOES_NOT_CONTAIN: 0,
  UNKNOWN: 1,
  MAY_CONTAIN: 2,
  CONTAINS: 3,
};

/**
 * Lays a row over the food that is there, fact by fact: what the row does not say stays. An allergen that the food was said to
 * contain, even in traces, is neither taken away nor weakened, and the row has a problem instead, unless a person answers for it.
 */
export function mergeFoodRow(was: Food | null, { food: row, given }: FoodRow, answeredFor: boolean): MergedFood {
  if (was === null) return { food: row, problems: [] };
  const { allergens, problems } = laidAllergens(was.allergens, row, answeredFor);
  const food: Food = {
    ...was,
    names: laidNames(was.names, row.names, given),
    aisle: given.has("aisle") ? row.aisle : was.aisle,
    shoppedBy: given.has("shopped-by") ? row.shoppedBy : was.shoppedBy,
    ndbNo: row.ndbNo ?? was.ndbNo,
    keepsAs: row.keepsAs ?? was.keepsAs,
    densities: laidOver(was.densities, row.densities, ({ form }) => form),
    measures: laidOver(was.measures, row.measures, ({ name }) => name),
    edible: laidOver(was.edible, row.edible, ({ form }) => form),
    nutrients: laidNutrients(was.nutrients, row.nutrients),
    allergens,
  };
  return { food, problems };
}

/** The old ones in their order, each replaced by the new one of its key; then those that are new. */
function laidOver<T>(was: readonly T[], row: readonly T[], keyOf: (each: T) => unknown): readonly T[] {
  const fresh = new Map(row.map((each) => [keyOf(each), each]));
  const old = new Set(was.map(keyOf));
  return [...was.map((each) => fresh.get(keyOf(each)) ?? each), ...row.filter((each) => !old.has(keyOf(each)))];
}

function laidNames(
  was: readonly FoodName[],
  row: readonly FoodName[],
  given: ReadonlySet<string>,
): readonly FoodName[] {
  const keyOf = ({ language, region }: FoodName): string => `${language}-${region ?? ""}`;
  const old = new Map(was.map((each) => [keyOf(each), each]));
  const laid = row.map((each): FoodName => {
    const before = old.get(keyOf(each));
    if (before === undefined) return each;
    const keepsPlural = !given.has("plural") && before.one === each.one;
    return {
      ...each,
      many: keepsPlural ? before.many : each.many,
      ...(keepsPlural && before.counted !== undefined ? { counted: before.counted } : {}),
      also: given.has("also") ? each.also : before.also,
    };
  });
  return laidOver(was, laid, keyOf);
}

/** Figures of two origins in one food: the source names whose the new ones are, and whose the others. */
function laidNutrients(was: FoodNutrients | null, row: FoodNutrients | null): FoodNutrients | null {
  if (was === null || row === null) return row ?? was;
  const kept = Object.keys(was.per100g).filter((code) => !Object.hasOwn(row.per100g, code));
  if (kept.length === 0) return row;
  const per100g = { ...was.per100g, ...row.per100g };
  if (titleOf(was) === titleOf(row)) return { per100g, source: was.source };
  const { source } = row;
  if (source.kind === "WRITER") return { per100g, source };
  const section = `${Object.keys(row.per100g).join(", ")}; the other figures: ${titleOf(was)}`;
  return { per100g, source: { ...source, section } };
}

const titleOf = ({ source }: FoodNutrients): string => (source.kind === "PUBLISHED" ? source.title : "the writer");

function laidAllergens(was: readonly FoodAllergen[], { slug: food, allergens: row }: Food, answeredFor: boolean) {
  const old = new Map(was.map((each) => [each.code, each]));
  const problems: Problem[] = [];
  const laid = row.map((each): FoodAllergen => {
    const before = old.get(each.code);
    if (answeredFor || before === undefined || care[before.presence] < care.MAY_CONTAIN) return each;
    if (care[each.presence] >= care[before.presence]) return each;
    problems.push({
      ...{ code: "ALLERGEN_WEAKENED", path: [columnOf[each.presence]], food, allergen: each.code },
      ...{ was: before.presence, now: each.presence },
    });
    return before;
  });
  return { allergens: laidOver(was, laid, ({ code }) => code), problems };
}

const columnOf: Readonly<Record<AllergenPresence, string>> = {
  CONTAINS: "contains",
  MAY_CONTAIN: "may-contain",
  DOES_NOT_CONTAIN: "free-from",
  UNKNOWN: "contains",
};
