import type { ReportedDifference } from "../../domain/model/import-report.js";
import type { Food, FoodName, Loose, Pack } from "../../domain/model/food.js";

type Facts = ReadonlyMap<string, string>;

/** What differs between two lists of facts, the older one's order first. */
export function differencesOf(before: Facts, after: Facts): readonly ReportedDifference[] {
  const kept = [...before].flatMap(([what, was]): readonly ReportedDifference[] =>
    after.get(what) === was ? [] : [{ what, before: was, after: after.get(what) ?? null }],
  );
  const added = [...after].flatMap(([what, is]): readonly ReportedDifference[] =>
    before.has(what) ? [] : [{ what, before: null, after: is }],
  );
  return [...kept, ...added];
}

/** A row of a price list, as the database notes it. */
export interface NotedPack {
  readonly name: string;
  readonly content_low: string;
  readonly content_high: string;
  readonly content_unit: string;
  readonly price_amount: string | null;
  readonly price_currency: string | null;
  readonly region: string | null;
  /** Left out by runs before there were loose goods. */
  readonly loose?: Loose | null;
}

export const packFacts = (pack: NotedPack | null): Facts =>
  pack === null
    ? new Map()
    : new Map([
        ["name", pack.name],
        ["content", `${range(pack.content_low, pack.content_high)} ${pack.content_unit}`],
        ["price", pack.price_amount === null ? "not known" : `${pack.price_amount} ${pack.price_currency ?? ""}`],
        ["region", pack.region ?? "anywhere"],
        ...(pack.loose ? [["sold", looseText(pack.loose)] as const] : []),
      ]);

/** Of all packs that a publisher adds to a food, each by its id. */
export const packsFacts = (food: Food | null): Facts =>
  new Map(food?.packs.map((pack) => [pack.id, [...packFacts(notedPack(pack)).values()].join(", ")]));

const notedPack = ({ name, content, price, region, loose }: Pack): NotedPack => ({
  ...{ name, content_low: content.low, content_high: content.high, content_unit: content.unit, region },
  loose: loose ?? null,
  ...{ price_amount: price?.amount ?? null, price_currency: price?.currency ?? null },
});

const looseText = ({ step }: Loose): string =>
  step === null ? "loose" : `loose, by ${range(step.low, step.high)} ${step.unit}`;

const range = (low: string, high: string): string => (low === high ? low : `${low} to ${high}`);

/** The longest fact that is shown whole, in characters. */
const longest = 200;

const shown = (value: unknown): string => {
  const text = JSON.stringify(value);
  return text.length <= longest ? text : `${text.slice(0, longest)}…`;
};

const nameFact = ({ language, one, many, counted }: FoodName): string =>
  `${language} ${[one, many, ...(counted === undefined ? [] : [counted])].join(" / ")}`;

export const foodFacts = (food: Food | null): Facts =>
  food === null
    ? new Map()
    : new Map([
        ["name", food.names.map(nameFact).join(", ")],
        ["aisle", food.aisle],
        ...food.allergens.map(({ code, presence }) => [`allergen ${code}`, presence] as const),
        ...food.diets.map(
          ({ diet, fits }) => [`diet ${diet}`, fits === null ? "unknown" : fits ? "fits" : "does not fit"] as const,
        ),
        ...Object.entries(food.nutrients?.per100g ?? {}).map(
          ([code, value]) => [`${code} in 100 g`, String(value)] as const,
        ),
        ...(["densities", "measures", "parts", "edible", "keeping"] as const).map(
          (each) => [each, shown(food[each])] as const,
        ),
      ]);
