import type { AllergenPresence, FoodAllergen, FoodClaims, TracesPresence } from "../model/food.js";
import { usualSpelling } from "../model/code-lists.js";
import { memoize } from "../memoize.js";
import { isAllergenCode } from "./allergen-codes.js";

/** From the one that must be said first. */
const presenceOrder = ["CONTAINS", "MAY_CONTAIN", "UNKNOWN", "DOES_NOT_CONTAIN"] as const satisfies AllergenPresence[];

/** The presence that must be said, of several. `empty` for none. */
export const gravest = <P extends AllergenPresence>(presences: readonly P[], empty: P): P =>
  presenceOrder.map((each) => presences.find((presence) => presence === each)).find((each) => each !== undefined) ??
  empty;

/** By the list itself: a food is asked the same for every dish that it goes into. */
const byCode = memoize((allergens: FoodClaims["allergens"]): ReadonlyMap<string, readonly FoodAllergen[]> => {
  const said = new Map<string, FoodAllergen[]>();
  for (const each of allergens) {
    const code = usualSpelling("allergen", each.code);
    said.set(code, [...(said.get(code) ?? []), each]);
  }
  return said;
});

/**
 * A statement of a code that no list has, as old documents and feeds may hold it: it may mean any allergen, so that of all of
 * them nothing is known but what is said to be in it. One that something unknown is absent leaves nothing open.
 */
const ofUnknownCode = memoize((allergens: FoodClaims["allergens"]): { readonly found: FoodAllergen | undefined } => ({
  found: allergens.find(
    ({ code, presence, traces }) =>
      !isAllergenCode(usualSpelling("allergen", code)) &&
      (presence !== "DOES_NOT_CONTAIN" || (traces !== undefined && traces !== "DOES_NOT_CONTAIN")),
  ),
}));

/** Whether something is said to be in it, or may be, that no list has a code for. */
export const namesUnknownAllergen = ({ allergens }: Pick<FoodClaims, "allergens">): boolean =>
  ofUnknownCode(allergens).found !== undefined;

const nothing: readonly FoodAllergen[] = [];
const saidOf = (claims: Pick<FoodClaims, "allergens">, code: string): readonly FoodAllergen[] =>
  byCode(claims.allergens).get(code) ?? nothing;

/** What is stated of a code as an ingredient; null: nothing. Of two statements the graver counts. "May contain" states none. */
export function statedIngredient(claims: Pick<FoodClaims, "allergens">, code: string): FoodAllergen | null {
  const said = saidOf(claims, code);
  for (const wanted of ["CONTAINS", "UNKNOWN", "DOES_NOT_CONTAIN"] as const) {
    const found = said.find(({ presence }) => presence === wanted);
    if (found !== undefined) return found;
    const doubt = ofUnknownCode(claims.allergens).found;
    if (doubt !== undefined) return { ...doubt, presence: "UNKNOWN" };
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
  if (namesUnknownAllergen(claims)) return gravest([...said, "UNKNOWN"], "UNKNOWN");
  return said.length === 0 ? null : gravest(said, "UNKNOWN");
}
