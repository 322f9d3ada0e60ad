import type { KeepingClass } from "../../model/keeping.js";
import { classesAround } from "../../storage/keeping-classes.js";
import { lineContext } from "../compile/line-context.js";
import type { ScaledLine, ScaledPlan } from "../scaled.js";

/** Kinds of food that are out of the cold for two hours at most before they are heated. */
const rawClasses: ReadonlySet<string> = new Set(["raw-meat", "raw-mince", "raw-poultry", "raw-fish", "raw-shellfish"]);
/** Where nobody classes a food, its shelf says what it may be: unknown is never safe. */
const rawAisles: ReadonlySet<string> = new Set(["meat", "fish", "poultry", "meat-and-fish"]);

/** The lines that take raw meat, poultry or fish, as they are after swaps. */
export function rawLines(
  lines: readonly ScaledLine[],
  { bundle }: Pick<ScaledPlan, "bundle">,
  classes: readonly KeepingClass[],
): ReadonlySet<string> {
  const { foods, components } = lineContext(bundle);
  const isRaw = (keepsAs: string | null, aisle: string | null): boolean =>
    keepsAs === null
      ? aisle !== null && rawAisles.has(aisle)
      : rawClasses.has(keepsAs) || classesAround(keepsAs, classes).some(({ code }) => rawClasses.has(code));
  const taken = lines.filter(({ item }) => {
    if (item.kind === "COMPONENT") return isRaw(components.get(item.component)?.component.keepsAs ?? null, null);
    const food = foods.get(item.food);
    return food !== undefined && isRaw(food.keepsAs, food.aisle);
  });
  return new Set(taken.map(({ line }) => line.id));
}
