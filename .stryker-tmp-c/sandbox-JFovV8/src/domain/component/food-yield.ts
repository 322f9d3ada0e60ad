// @ts-nocheck
import type { Food } from "../model/food.js";

/** Grams of another food that one gram of this one turns into; the writer's number beats a table's. null: nobody says. */
export function foodYield(food: Food, into: string): number | null {
  const rows = food.yields.filter((row) => row.food === into && row.gramsPerGram > 0);
  return (rows.find(({ source }) => source.kind === "WRITER") ?? rows[0])?.gramsPerGram ?? null;
}
