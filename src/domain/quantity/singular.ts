/** English words that end like a plural and have no singular that is shopped for. */
const unchanged: ReadonlySet<string> = new Set(
  "molasses schnapps brussels grits oats greens species series lens".split(" "),
);

const irregular: ReadonlyMap<string, string> = new Map([
  ["leaves", "leaf"],
  ["loaves", "loaf"],
  ["halves", "half"],
  ["knives", "knife"],
  ["calves", "calf"],
  ["sheaves", "sheaf"],
  ["geese", "goose"],
  ["radii", "radius"],
  ["cookies", "cookie"],
  ["brownies", "brownie"],
  ["smoothies", "smoothie"],
  ["pies", "pie"],
  ["shoes", "shoe"],
]);

/** One of what an English word counts; unchanged where the word is singular, or only looks plural. */
export const singularWord = (word: string): string => {
  const known = irregular.get(word);
  if (known !== undefined) return known;
  if (unchanged.has(word) || word.length < 4 || !word.endsWith("s") || /(?:ss|us|is)$/.test(word)) return word;
  if (word.endsWith("ies")) return `${word.slice(0, -3)}y`;
  if (/(?:ch|sh|x|z|ss|[^aeiou]o)es$/.test(word)) return word.slice(0, -2);
  return word.slice(0, -1);
};

/**
 * The phrase with its last word in the singular ("cherry tomatoes" to "cherry tomato"). English only: other languages match
 * by the forms that a food's names list.
 */
export const singularPhrase = (phrase: string, language: string): string => {
  if (language !== "en") return phrase;
  const last = phrase.lastIndexOf(" ") + 1;
  return phrase.slice(0, last) + singularWord(phrase.slice(last));
};
