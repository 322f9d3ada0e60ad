/** Something a recipe says it gives: "24 cookies", "1 quart". `upTo` equals `count` unless a range. */
interface WrittenYield {
  readonly count: number;
  readonly upTo: number;
  /** The word beside the number, as written; null for a bare number. */
  readonly of: string | null;
  readonly written: string;
}

export interface RecipeYield {
  /** How many it serves; null: it does not say. */
  readonly servings: { readonly from: number; readonly to: number } | null;
  /** Everything it says it gives, each once, in the order written. */
  readonly yields: readonly WrittenYield[];
  /** What could not be read, as written. */
  readonly unread: readonly string[];
}

const servingWord =
  /^(?:servings?|serves?|portions?|people|persons?|personen|portionen|porciones|raciones|parts|personnes|porcj[aei])$/i;
const numbers = /(?<![\d.,])(\d{1,5})(?:\s*(?:-|–|—|to|bis|à|a)\s*(\d{1,5}))?(?![\d.,])/;

function readOne(text: string): WrittenYield | null {
  const found = numbers.exec(text);
  if (found === null) return null;
  const count = Number(found[1]);
  const upTo = Number(found[2] ?? found[1]);
  if (count < 1 || upTo < count) return null;
  const after = text.slice(found.index + found[0].length).trim();
  const before = text.slice(0, found.index).trim();
  // A second number ("2 loaves of 12 slices") has a meaning of its own, which nobody should guess.
  if (/\d/.test(after) || /\d/.test(before)) return null;
  const words = after === "" && /^serves$/i.test(before) ? "servings" : after.replace(/[.,;:]+$/, "");
  return { count, upTo, of: words === "" ? null : words, written: text };
}

const textsOf = (value: unknown): readonly string[] => {
  if (typeof value === "number" && Number.isFinite(value)) return [String(value)];
  if (typeof value === "string") return value.trim() === "" ? [] : [value.trim()];
  if (Array.isArray(value)) return value.flatMap((each: unknown) => textsOf(each));
  return [];
};

const same = (one: WrittenYield, other: WrittenYield): boolean =>
  one.count === other.count && one.upTo === other.upTo && one.of === other.of;

/**
 * Reads `recipeYield` as it stands in the wild: a number, a text, or several of either. Servings and pieces are kept apart,
 * never joined into one number. A bare number beside the same number of something is that, once; alone, nobody knows what
 * it counts.
 */
export function readRecipeYield(value: unknown): RecipeYield {
  const texts = textsOf(value).slice(0, 20);
  const read = texts.map((text) => [text, readOne(text)] as const);
  const found = read.flatMap(([, each]) => (each === null ? [] : [each]));
  const named = found.filter((each) => each.of !== null);
  const bare = found.filter((each) => each.of === null && !named.some(({ count }) => count === each.count));
  const yields = [...named, ...bare].filter((each, at, all) => all.findIndex((other) => same(each, other)) === at);
  const serving = yields.find(({ of }) => of !== null && servingWord.test(of));
  return {
    servings: serving === undefined ? null : { from: serving.count, to: serving.upTo },
    yields,
    unread: read.flatMap(([text, each]) => (each === null ? [text] : [])),
  };
}
