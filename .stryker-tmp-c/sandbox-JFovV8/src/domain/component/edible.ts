// @ts-nocheck
import type { Food } from "../model/food.js";

/**
 * Share of the food as bought that is left when it is prepared in this form; the usual trimming where the form has none
 * of its own. The writer's number beats a table's. null: nobody says.
 */
export function edibleShare(food: Food, form: string | null): number | null {
  const of = (wanted: string | null): number | null => {
    const rows = food.edible.filter((row) => row.form === wanted && row.share > 0 && row.share <= 1);
    return (rows.find(({ source }) => source.kind === "WRITER") ?? rows[0])?.share ?? null;
  };
  return of(form) ?? of(null);
}
