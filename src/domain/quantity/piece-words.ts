import type { FoodName, OwnMeasure } from "../model/food.js";
import { memoize } from "../memoize.js";
import { BoundedCache } from "../bounded-cache.js";
import type { MeasureFacts } from "./convert.js";
import { readersFoodName } from "./food-name.js";

const pieceOf = ({ measures }: MeasureFacts): OwnMeasure | undefined => measures.find(({ name }) => name === "piece");

/** The word for a whole piece is the food's own name, or its writer gave none: an egg, never a head of garlic. */
export const isNamedAfterFood = (facts: MeasureFacts): boolean => {
  const piece = pieceOf(facts);
  const names = facts.names ?? [];
  return piece !== undefined && names.some(({ one }) => one === piece.one || piece.one === piece.name);
};

const formsOf = ({ one, many, counted }: FoodName): Pick<FoodName, "one" | "many" | "counted"> =>
  counted === undefined ? { one, many } : { one, many, counted };

/** A measure in a reader's words; `counted` as of a food's name. */
export type SaidMeasure = OwnMeasure & Pick<FoodName, "counted">;

/** Languages and regions remembered for the measures of one food. */
const keptLocales = 16;
const known = memoize(
  (_: readonly OwnMeasure[]) => new BoundedCache<readonly SaidMeasure[]>("piece-words", { max: keptLocales }),
);

/** Measures with the piece in the reader's words, where the writer's word for it is the food's name: 7 Eier. */
export const measuresFor = (facts: MeasureFacts, language: string, region: string | null): readonly SaidMeasure[] => {
  const { measures, names } = facts;
  if (names === undefined || measures.length === 0 || !isNamedAfterFood(facts)) return measures;
  const locales = known(measures);
  const key = `${language}-${region ?? ""}`;
  const found = locales.get(key);
  if (found !== undefined) return found;
  const name = readersFoodName({ slug: "", names }, language, region);
  const said = name === null ? {} : formsOf(name);
  const local = measures.map((each) => (each.name === "piece" ? { ...each, ...said } : each));
  locales.set(key, local);
  return local;
};
