import type { Food, FoodDensity, FoodPart } from "../../domain/model/food.js";
import { rationalText } from "../../domain/quantity/rational.js";
import type { CatalogueFacts } from "../usda/catalogue-facts.js";
import type { BasePart } from "./base-food-schema.js";
import type { TableWeight } from "./base-measures.js";
import { fromMemory } from "./base-sources.js";

/** A part of an entry with what its own row of the open table says; null: it names none. */
export interface PartFacts {
  readonly part: BasePart;
  readonly catalogue: CatalogueFacts | null;
  readonly weight: TableWeight | null;
}

/** Co-products of a piece: the juice and the zest of one lemon, with their own nutrients and densities. */
export function partsOfEntry(facts: ReadonlyMap<string, PartFacts>): Pick<Food, "parts" | "densities"> {
  const parts = [...facts].map(([name, { part, catalogue, weight }]): FoodPart => {
    const { gives, of = "", after, source } = part;
    const grams = "weight" in gives ? (weight?.grams ?? 0) : gives.amount;
    const title = catalogue?.nutrients.source.title ?? "";
    const weighed = {
      kind: "PUBLISHED" as const,
      title,
      section: `Weight file, NDB ${of}, "${weight?.measure ?? ""}"`,
    };
    const amount = rationalText(Math.round(grams * 1000), 1000);
    return {
      name,
      perPiece: { low: amount, high: amount, unit: "g" },
      after,
      source: source ?? (weight === null ? fromMemory(`one piece gives ${String(grams)} g of ${name}`) : weighed),
      ...(part["keeps-as"] === undefined ? {} : { keepsAs: part["keeps-as"] }),
      ...(catalogue === null ? {} : { nutrients: catalogue.nutrients }),
    };
  });
  const densities = [...facts].flatMap(([name, { catalogue }]): readonly FoodDensity[] =>
    (catalogue?.densities ?? []).filter(({ form }) => form === null).map((density) => ({ ...density, form: name })),
  );
  return { parts, densities };
}
