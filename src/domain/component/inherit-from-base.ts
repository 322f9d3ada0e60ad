import type { Food, FoodAllergen, FoodClaims, FoodDiet, FoodName, SingleIngredient } from "../model/food.js";
import type { KeepingRule } from "../model/keeping.js";
import { memoize } from "../memoize.js";

/**
 * A publisher's own food laid over the food that it builds on, fact by fact: its own go first, each with its source, and what it
 * does not say is the base's. What the base contains is always inherited; what it does not contain only where both are made
 * of the same.
 */
export function inheritFromBase({ leaves = [], ...own }: Food, base: Food): Food {
  const made = own.extends;
  if (made === undefined) return own;
  const claims = inheritedClaims(base, made.sameIngredients);
  const contained = codesIn(claims.allergens);
  const adds = codesIn(own.allergens).filter((code) => !contained.includes(code));
  const sameRow = own.ndbNo === null || own.ndbNo === base.ndbNo;
  return {
    ...own,
    names: laidOver(own.names, base.names, ({ language, region }: FoodName) => `${language} ${region ?? ""}`),
    aisle: leaves.includes("aisle") ? base.aisle : own.aisle,
    shoppedBy: leaves.includes("shoppedBy") ? base.shoppedBy : own.shoppedBy,
    alwaysThere: leaves.includes("alwaysThere") ? base.alwaysThere : own.alwaysThere,
    ndbNo: own.ndbNo ?? base.ndbNo,
    densities: laidOver(own.densities, base.densities, ({ form }) => form),
    measures: laidOver(own.measures, base.measures, ({ name }) => name),
    parts: laidOver(own.parts, base.parts, ({ name }) => name),
    edible: laidOver(own.edible, base.edible, ({ form }) => form),
    yields: laidOver(own.yields, base.yields, ({ food }) => food),
    // Another row of the open table has nutrients of its own.
    nutrients: own.nutrients ?? (sameRow ? base.nutrients : null),
    keepsAs: own.keepsAs ?? base.keepsAs,
    keeping: laidOver(own.keeping, base.keeping, keptFor),
    ...laidShelf(own, base),
    packs: laidOver(own.packs, base.packs, ({ id }) => id),
    allergens: laidAllergens(own.allergens, claims.allergens),
    diets: laidDiets(own.diets, claims.diets),
    ...laidIngredient(own, claims, adds),
    extends: {
      ...{ food: made.food, sameIngredients: made.sameIngredients },
      ...(adds.length === 0 ? {} : { adds }),
      ...(own.packs.length === 0 ? {} : { packs: own.packs.map(({ id }) => id) }),
    },
  };
}

/**
 * A food with the packs that a publisher adds to it: its own go first. One that all share is then the publisher's, made of the
 * same and with nothing else of its own.
 */
export function withOwnPacks(publisher: string, food: Food, packs: Food): Food {
  if (food.owner === undefined) return inheritFromBase({ ...packs, owner: publisher }, food);
  const ids = [...packs.packs.map(({ id }) => id), ...(food.extends?.packs ?? [])];
  return {
    ...food,
    packs: laidOver(packs.packs, food.packs, ({ id }) => id),
    ...(food.extends === undefined ? {} : { extends: { ...food.extends, packs: [...new Set(ids)] } }),
  };
}

/** What a food takes over of the claims of its base. The same object each time for the same base. */
export const inheritedClaims = (base: FoodClaims, sameIngredients: boolean): FoodClaims =>
  sameIngredients ? base : presentIn(base);

/** What is in a food, without all that says that something is not. */
const presentIn = memoize(({ allergens, diets }: FoodClaims): FoodClaims => ({
  allergens: allergens.flatMap(({ traces, ...each }): FoodAllergen[] => {
    if (each.presence === "CONTAINS" || each.presence === "MAY_CONTAIN")
      return [{ ...each, ...(traces === "MAY_CONTAIN" ? { traces } : {}) }];
    // Not as an ingredient, says the base, and perhaps in traces: the traces are there.
    return traces === "MAY_CONTAIN" ? [{ ...each, presence: "MAY_CONTAIN" }] : [];
  }),
  diets: diets.filter(({ fits }) => fits === false),
}));

/** A figure for quality takes the place of none for safety. */
const keptFor = ({ place, purpose }: KeepingRule): string =>
  `${place} ${purpose ?? (place === "FREEZER" ? "QUALITY" : "SAFETY")}`;

/** Kept on a shelf as the base is, unless the own food says how it is kept. */
const laidShelf = (own: Food, base: Food): Pick<Food, "shelfStable"> =>
  own.shelfStable === true || (base.shelfStable === true && own.keepsAs === null && own.keeping.length === 0)
    ? { shelfStable: true }
    : {};

/** Own ones first, then those of the base that they say nothing of. */
function laidOver<T>(own: readonly T[], base: readonly T[], keyOf: (each: T) => unknown): readonly T[] {
  const said = new Set(own.map(keyOf));
  return [...own, ...base.filter((each) => !said.has(keyOf(each)))];
}

const codesIn = (allergens: readonly FoodAllergen[]): readonly string[] =>
  [...new Set(allergens.flatMap(({ code, presence }) => (presence === "CONTAINS" ? [code] : [])))].toSorted();

/** What the base contains stands, whatever the own food says. */
function laidAllergens(own: readonly FoodAllergen[], base: readonly FoodAllergen[]): readonly FoodAllergen[] {
  const contained = base.filter(({ presence }) => presence === "CONTAINS");
  const codes = new Set(contained.map(({ code }) => code));
  const kept = own.filter(({ code, presence }) => presence === "CONTAINS" || !codes.has(code));
  return laidOver(kept, base, ({ code }) => code);
}

/** A diet that the base breaks stays broken. */
function laidDiets(own: readonly FoodDiet[], base: readonly FoodDiet[]): readonly FoodDiet[] {
  const broken = new Set(base.flatMap(({ diet, fits }) => (fits === false ? [diet] : [])));
  return laidOver(
    own.filter(({ diet, fits }) => fits === false || !broken.has(diet)),
    base,
    ({ diet }) => diet,
  );
}

/** One ingredient with nothing added is what the own food says, or the base where nothing was added to it. */
function laidIngredient(
  own: FoodClaims,
  base: FoodClaims,
  adds: readonly string[],
): { readonly singleIngredient?: SingleIngredient } {
  const said = own.singleIngredient ?? (adds.length === 0 ? base.singleIngredient : null) ?? null;
  if (said === null) return {};
  return { singleIngredient: { ...said, is: [...new Set([...said.is, ...codesIn(base.allergens)])] } };
}
