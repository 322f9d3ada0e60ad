import type { AllergenPresence, FoodAllergen, FoodClaims, TracesPresence } from "../model/food.js";
import { onceFor } from "../once-for.js";

/** From the one that must be said first. */
export const presenceOrder = [
  "CONTAINS",
  "MAY_CONTAIN",
  "UNKNOWN",
  "DOES_NOT_CONTAIN",
] as const satisfies AllergenPresence[];

/** The presence that must be said, of several. `empty` for none. */
export const gravest = <P extends AllergenPresence>(presences: readonly P[], empty: P): P =>
  presenceOrder.map((each) => presences.find((presence) => presence === each)).find((each) => each !== undefined) ??
  empty;

/** By the list itself: a food is asked the same for every dish that it goes into. */
const byCode = onceFor((allergens: FoodClaims["allergens"]): ReadonlyMap<string, readonly FoodAllergen[]> => {
  const said = new Map<string, FoodAllergen[]>();
  for (const each of allergens) said.set(each.code, [...(said.get(each.code) ?? []), each]);
  return said;
});

const nothing: readonly FoodAllergen[] = [];
const saidOf = (claims: Pick<FoodClaims, "allergens">, code: string): readonly FoodAllergen[] =>
  byCode(claims.allergens).get(code) ?? nothing;

/** What is stated of a code as an ingredient; null: nothing. Of two statements the graver counts. "May contain" states none. */
export function statedIngredient(claims: Pick<FoodClaims, "allergens">, code: string): FoodAllergen | null {
  const said = saidOf(claims, code);
  for (const wanted of ["CONTAINS", "UNKNOWN", "DOES_NOT_CONTAIN"] as const) {
    const found = said.find(({ presence }) => presence === wanted);
    if (found !== undefined) return found;
  }
  return null;
}

/** What is stated of traces of a code; null: nothing. */
export function statedTraces(claims: Pick<FoodClaims, "allergens">, code: string): TracesPresence | null {
  const said = saidOf(claims, code).flatMap(({ presence, traces }): readonly TracesPresence[] => [
    // What is an ingredient says nothing of traces.
    ...(traces === undefined ? [] : [traces]),
    ...(presence === "CONTAINS" || (traces !== undefined && presence !== "MAY_CONTAIN") ? [] : [presence]),
  ]);
  return said.length === 0 ? null : gravest(said, "UNKNOWN");
}
