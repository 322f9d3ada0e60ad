import type { FoodAllergen, FoodClaims, FoodDiet } from "../../domain/model/food.js";
import { groupOf } from "../../domain/nutrition/allergen-codes.js";
import type { BaseFoodEntry, BaseKind } from "./base-food-schema.js";
import { fromMemory, glutenSource } from "./base-sources.js";

/** The point of Annex II of Regulation (EU) No 1169/2011 that names an allergen. Coconut and pine nuts stand on no point. */
const annexPoints: Readonly<Record<string, number>> = {
  ...{ gluten: 1, wheat: 1, rye: 1, barley: 1, oats: 1, crustacean: 2, egg: 3, fish: 4, peanut: 5, soy: 6, milk: 7 },
  ...{ "tree-nut": 8, almond: 8, hazelnut: 8, walnut: 8, cashew: 8, pecan: 8, "brazil-nut": 8, pistachio: 8, macadamia: 8 },
  ...{ celery: 9, mustard: 10, sesame: 11, sulphites: 12, lupin: 13, mollusc: 14 },
}; // prettier-ignore

/** The allergen that a kind is itself. */
const own: Readonly<Partial<Record<BaseKind, string>>> = {
  ...{ milk: "milk", egg: "egg", fish: "fish", crustacean: "crustacean", mollusc: "mollusc" },
};

const sourceOf = (code: string, how: string) => {
  const point = annexPoints[code];
  const law = point === undefined ? "" : `; point ${String(point)} of Annex II of Regulation (EU) No 1169/2011`;
  return fromMemory(`${how} ${code}${law}`);
};

/** What an entry contains, its kind's own allergen and the groups of cereals and nuts included. */
function containedCodes({ is, contains }: Pick<BaseFoodEntry, "is" | "contains">): readonly string[] {
  const named = [...new Set([...(own[is] === undefined ? [] : [own[is]]), ...contains])];
  const cereals = named.some((code) => groupOf(code) === "gluten") ? ["gluten"] : [];
  return [...new Set([...cereals, ...named])];
}

/** What a base food is said to contain and to fit. Nothing is said to be absent but by the nature of a single ingredient. */
export function claimsOfEntry(entry: BaseFoodEntry): FoodClaims {
  const { is, traces } = entry;
  const contained = containedCodes(entry);
  const isOpen = is === "made" && contained.length === 0 && entry.unsure.length === 0;
  const unsure = isOpen ? perhapsMadeWith(entry) : withGroups(entry.unsure, contained);
  const allergens: readonly FoodAllergen[] = [
    ...contained.map((code): FoodAllergen => ({ code, presence: "CONTAINS", source: sourceOf(code, "contains") })),
    // Flour of wheat may hold malted barley, which its label then names.
    ...(is === "gluten-grain" && contained.includes("wheat") && !contained.includes("barley")
      ? [{ code: "barley", presence: "UNKNOWN" as const, source: fromMemory("flour of wheat may hold malted barley") }]
      : []),
    ...unsure.map((code): FoodAllergen => ({ code, presence: "UNKNOWN", source: sourceOf(code, "makers differ on") })),
    ...traces
      .filter((code) => !contained.includes(code))
      .map((code): FoodAllergen => ({ code, presence: "MAY_CONTAIN", source: sourceOf(code, "labels often warn of") })),
  ];
  const single = { is: contained, source: fromMemory("one ingredient, nothing added") };
  return { allergens, diets: dietsOf(entry, contained), ...(is === "made" ? {} : { singleIngredient: single }) };
}

/** If it may hold a cereal, it may hold gluten. */
const withGroups = (unsure: readonly string[], contained: readonly string[]): readonly string[] => [
  ...new Set([...unsure.flatMap((code) => groupOf(code) ?? []).filter((code) => !contained.includes(code)), ...unsure]),
];

/** What makers put, or do not put, into what is made of several things. */
const oftenMadeWith = ["gluten", "wheat", "milk", "egg", "soy", "celery", "mustard", "sulphites"];

/** Of these, what no diet that it is said to fit leaves out. */
const perhapsMadeWith = ({ diets }: BaseFoodEntry): readonly string[] => {
  const fitting = Object.entries(diets ?? {}).flatMap(([diet, fits]) => (fits === true ? [diet] : []));
  return oftenMadeWith.filter((code) => fitting.every((diet) => excludedBy(diet, [code]) === undefined));
};

const animalAllergens = ["fish", "crustacean", "mollusc"];

/** Allergens that a diet leaves out, so that whoever may hold one fits it only perhaps. */
const excluded: Readonly<Record<string, readonly string[]>> = {
  vegan: ["milk", "egg", ...animalAllergens],
  vegetarian: animalAllergens,
  "gluten-free": ["gluten"],
};

/** Which of these allergens keeps a food from being said to fit a diet. */
export const excludedBy = (diet: string, codes: readonly string[]): string | undefined =>
  codes.find((code) => excluded[diet]?.includes(groupOf(code) === "gluten" ? "gluten" : code));

const animals: ReadonlySet<BaseKind> = new Set(["meat", "fish", "crustacean", "mollusc"]);
const fromAnimals: ReadonlySet<BaseKind> = new Set([...animals, "milk", "egg", "honey"]);

function dietsOf(entry: BaseFoodEntry, contained: readonly string[]): readonly FoodDiet[] {
  const makersDiffer = (diet: string) => excludedBy(diet, entry.unsure);
  return dietsByKind(entry, contained).map((said): FoodDiet => {
    // What always holds fish is no perhaps for a vegetarian. Of cereals little may be left, as in an extract of yeast.
    const broken = said.diet === "gluten-free" ? undefined : excludedBy(said.diet, contained);
    if (said.fits === null && broken !== undefined)
      return { ...said, fits: false, source: sourceOf(broken, "contains") };
    const code = said.fits === true ? makersDiffer(said.diet) : undefined;
    return code === undefined ? said : { ...said, fits: null, source: sourceOf(code, "makers differ on") };
  });
}

function dietsByKind({ is, diets }: BaseFoodEntry, contained: readonly string[]): readonly FoodDiet[] {
  const said = fromMemory("kind of food");
  if (diets !== undefined) return Object.entries(diets).map(([diet, fits]): FoodDiet => ({ diet, fits, source: said }));
  const cereals = contained.filter((code) => groupOf(code) === "gluten");
  const gluten: FoodDiet =
    cereals.length === 0
      ? { diet: "gluten-free", fits: true, source: glutenSource("(a)(3), inherently without gluten") }
      : cereals.every((code) => code === "oats")
        ? {
            diet: "gluten-free",
            fits: null,
            source: fromMemory("oats: regions differ, and few are kept apart from wheat"),
          }
        : { diet: "gluten-free", fits: false, source: glutenSource("(a)(1), a gluten-containing grain") };
  return [
    { diet: "vegan", fits: !fromAnimals.has(is), source: said },
    { diet: "vegetarian", fits: !animals.has(is), source: said },
    gluten,
  ];
}
