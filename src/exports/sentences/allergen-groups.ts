import type { AllergenFinding, AllergenStatement } from "../../domain/nutrition/allergens.js";

/** Allergens in the groups that readers are shown, each in one of them alone. */
export interface AllergenGroups {
  readonly contains: readonly AllergenFinding[];
  readonly mayContain: readonly AllergenFinding[];
  /** Nothing says whether it is an ingredient: a label has to. */
  readonly open: readonly AllergenFinding[];
  /** No ingredient of any food; of traces nobody speaks. */
  readonly noIngredient: readonly AllergenFinding[];
  /** Neither an ingredient nor a trace, as the foods' data state. */
  readonly absent: readonly AllergenFinding[];
  /** Foods whose labels are to be read, as slugs, and the names of what for. */
  readonly labels: readonly { readonly food: string; readonly names: readonly string[] }[];
  /** Foods among them that are called gluten-free while a cereal is open. */
  readonly glutenFreeOnly: readonly string[];
}

export function allergenGroups({ findings, labelsToRead }: AllergenStatement): AllergenGroups {
  const having = (wanted: AllergenFinding["presence"]) => findings.filter(({ presence }) => presence === wanted);
  const unknown = having("UNKNOWN");
  const nameOf = new Map(findings.map(({ code, name }) => [code, name]));
  return {
    contains: having("CONTAINS"),
    mayContain: having("MAY_CONTAIN"),
    open: unknown.filter(({ asIngredient }) => asIngredient.presence !== "DOES_NOT_CONTAIN"),
    noIngredient: unknown.filter(({ asIngredient }) => asIngredient.presence === "DOES_NOT_CONTAIN"),
    absent: having("DOES_NOT_CONTAIN"),
    labels: labelsToRead.map(({ food, allergens }) => ({
      food,
      names: allergens.map((code) => nameOf.get(code) ?? code),
    })),
    glutenFreeOnly: [
      ...new Set(
        findings.flatMap(({ presence, asIngredient }) => (presence === "CONTAINS" ? [] : asIngredient.glutenFreeOnly)),
      ),
    ],
  };
}

/** Labels that are read for the same, together: the longest list of foods first. */
export function byWhatFor(
  labels: AllergenGroups["labels"],
): readonly { readonly foods: readonly string[]; readonly names: readonly string[] }[] {
  const groups = new Map<string, { readonly foods: string[]; readonly names: readonly string[] }>();
  for (const { food, names } of labels) {
    const group = groups.get(names.join()) ?? { foods: [], names };
    group.foods.push(food);
    groups.set(names.join(), group);
  }
  return [...groups.values()].toSorted((a, b) => b.foods.length - a.foods.length);
}
