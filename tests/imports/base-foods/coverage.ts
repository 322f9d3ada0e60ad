import type { Food } from "../../../src/domain/model/food.js";

/** How many of the base foods have a fact. */
interface Coverage {
  readonly what: string;
  readonly have: number;
  readonly without: readonly string[];
  /** Every food must have it. */
  readonly isOfAll: boolean;
}

const facts: readonly { readonly what: string; readonly isOfAll: boolean; readonly has: (food: Food) => boolean }[] = [
  {
    what: "names in English, German, French, Spanish and Polish",
    isOfAll: true,
    has: ({ names }) =>
      ["en", "de", "fr", "es", "pl"].every((tag) => names.some(({ language, one }) => language === tag && one !== "")),
  },
  {
    what: "a mass: sold by weight, or a piece or a millilitre of it is weighed",
    isOfAll: true,
    has: ({ shoppedBy, measures, densities }) => {
      if (shoppedBy === "MASS") return true;
      if (shoppedBy === "VOLUME") return densities.length > 0;
      const piece = measures.find(({ name }) => name === "piece");
      return (piece?.grams ?? null) !== null || ((piece?.millilitres ?? null) !== null && densities.length > 0);
    },
  },
  {
    what: "vegan, vegetarian and gluten-free: yes, no, or that makers differ",
    isOfAll: true,
    has: ({ diets }) => ["vegan", "vegetarian", "gluten-free"].every((code) => diets.some(({ diet }) => diet === code)),
  },
  {
    what: "allergens as ingredient: one ingredient, what is always in it, or that makers differ",
    isOfAll: true,
    has: ({ singleIngredient, allergens }) =>
      (singleIngredient ?? null) !== null || allergens.some(({ presence }) => presence !== "MAY_CONTAIN"),
  },
  {
    what: "one ingredient, so that all other allergens are no ingredient by nature",
    isOfAll: false,
    has: ({ singleIngredient }) => (singleIngredient ?? null) !== null,
  },
  {
    what: "keeping: a time, a class of published rules, or shelf-stable",
    isOfAll: false,
    has: ({ keeping, keepsAs, shelfStable }) => keeping.length > 0 || keepsAs !== null || shelfStable === true,
  },
  {
    what: "a time from the FSIS table",
    isOfAll: false,
    has: ({ keeping }) => keeping.some(({ source }) => source.title.includes("FSIS")),
  },
  { what: "a row of the open food table, so nutrients", isOfAll: false, has: ({ ndbNo }) => ndbNo !== null },
  {
    what: "a measure of its own: piece, clove, bunch, tin",
    isOfAll: false,
    has: ({ measures }) => measures.length > 0,
  },
  {
    what: "a density",
    isOfAll: false,
    has: ({ densities, parts }) => densities.some(({ form }) => !parts.some(({ name }) => name === form)),
  },
  { what: "parts, such as juice and zest", isOfAll: false, has: ({ parts }) => parts.length > 0 },
];

/** @param foods with what they inherit */
export function coverageOf(foods: readonly Food[]): { readonly count: number; readonly rows: readonly Coverage[] } {
  const rows = facts.map(({ what, isOfAll, has }) => {
    const without = foods.filter((food) => !has(food)).map(({ slug }) => slug);
    return { what, isOfAll, have: foods.length - without.length, without };
  });
  return { count: foods.length, rows };
}

/** What is missing of a food that is described whole: names, a mass, diets, allergens as ingredient, keeping. */
export const lacks = (food: Food): readonly string[] =>
  facts
    .filter(({ isOfAll, what, has }) => (isOfAll || what.startsWith("keeping")) && !has(food))
    .map(({ what }) => what);

/** The table in docs/base-foods.md. */
export function coverageTable({
  whole,
  edition,
}: {
  readonly whole: readonly Food[];
  readonly edition: { readonly code: string };
}): string {
  const { count, rows } = coverageOf(whole);
  const lines = rows.map(({ what, have }) => [what, String(have), `${((100 * have) / count).toFixed(1)} %`] as const);
  const all = [
    ["of the edition of " + edition.code, "foods", "share"],
    ["all", String(count), "100.0 %"],
    ...lines,
  ] as const;
  const widths = [0, 1, 2].map((at) => Math.max(...all.map((line) => (line[at] ?? "").length)));
  const row = (line: readonly string[]) => `| ${line.map((cell, at) => cell.padEnd(widths[at] ?? 0)).join(" | ")} |`;
  const [head = [], ...body] = all;
  return [row(head), `| ${widths.map((width) => "-".repeat(width)).join(" | ")} |`, ...body.map(row)].join("\n");
}
