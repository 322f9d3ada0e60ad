import type { Food } from "../../model/food.js";
import { allergenCodes, codesUnder } from "../../nutrition/allergen-codes.js";
import { allergenFinding, type AllergenFinding } from "../../nutrition/allergen-finding.js";
import type { AllergenStatement } from "../../nutrition/allergens.js";
import type { DietRule } from "../../nutrition/allergen-rules.js";
import type { ListedAllergen } from "./listed-facts.js";

/**
 * Every allergen by its code, whether the law of a region lists it or not. What a region's list counts under a code counts there (a tree nut
 * is another thing in the US than in the Union); elsewhere the code and, of a group, its members.
 *
 * @param statements of the same foods, by region
 */
export function listedAllergens(
  foods: readonly Food[],
  statements: ReadonlyMap<string, AllergenStatement>,
  diets: readonly DietRule[],
): readonly ListedAllergen[] {
  return allergenCodes.flatMap((code): readonly ListedAllergen[] => {
    let bare: AllergenFinding | null = null;
    const plain = (): AllergenFinding => (bare ??= allergenFinding(plainEntry(code), foods, diets));
    const said = new Map<string, { readonly finding: AllergenFinding; readonly regions: string[] }>();
    for (const [region, { findings }] of statements) {
      const finding = findings.find((each) => each.code === code) ?? plain();
      const key = `${finding.asIngredient.presence} ${finding.traces}`;
      const same = said.get(key);
      if (same === undefined) said.set(key, { finding, regions: [region] });
      else same.regions.push(region);
    }
    return [...said.values()].map(({ finding, regions }) => ({
      code,
      regions: regions.length === statements.size ? null : regions,
      presence: finding.asIngredient.presence,
      traces: finding.traces,
    }));
  });
}

const plainEntry = (code: string) => ({
  code,
  name: code,
  includes: codesUnder(code),
  threshold: null,
  exempt: null,
  source: { kind: "COMMON_PRACTICE", title: "", section: null } as const,
});
