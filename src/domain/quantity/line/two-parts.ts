/** Two parts of one food, and the line that names it: "juice and zest" of "2 lemons". */
interface TwoParts {
  readonly parts: readonly [string, string];
  /** The line without them. */
  readonly rest: string;
}

interface Words {
  readonly juice: string;
  readonly zest: string;
  readonly and: string;
  /** With the space behind it, where one stands there. */
  readonly of: string;
  readonly the: string;
}

const languages: Readonly<Record<string, Words>> = {
  en: { juice: "juice", zest: "(?:finely )?(?:grated )?(?:zest|rind)", and: "and|&|\\+", of: "(?:of|from) ", the: "the " },
  de: { juice: "saft", zest: "(?:fein )?(?:abgeriebene |geriebene )?schale|abrieb", and: "und|\\+", of: "von ", the: "(?:der|die|den|dem) " },
  fr: { juice: "jus", zest: "zestes?(?: râpés?)?", and: "et", of: "(?:de |d[’'])", the: "(?:le|les) " },
  es: { juice: "zumo|jugo", zest: "ralladura", and: "y", of: "de ", the: "(?:el|la) " },
  pl: { juice: "sok", zest: "(?:starta )?skórka", and: "i|oraz", of: "ze? ", the: "(?:cały|cała) " },
}; // prettier-ignore

/** A pattern for the parts before the food, and one for behind it. */
const patterns: ReadonlyMap<string, readonly [before: RegExp, behind: RegExp]> = new Map(
  Object.entries(languages).map(([language, { juice, zest, and, of, the }]) => {
    const both = (one: string, other: string): string => `(?:${the})?(?:${one}) (?:${and}) (?:${the})?(?:${other})`;
    const either = `(?:(?<juiceFirst>${both(juice, zest)})|${both(zest, juice)})`;
    return [
      language,
      [new RegExp(`^${either} ${of}(?<rest>.+)$`, "iu"), new RegExp(`^(?<rest>[^,]+), ?${either}$`, "iu")],
    ];
  }),
);

/**
 * "juice and zest of 2 lemons", "2 Zitronen, Saft und Schale": juice and zest of the same fruit, in the order said. null: the line is about no such
 * two. Whether the food has these parts, its facts say.
 */
export function twoParts(text: string, language: string): TwoParts | null {
  const plain = text.trim().replace(/\s+/g, " ");
  const [before, behind] = patterns.get(language) ?? [];
  const found = (before?.exec(plain) ?? behind?.exec(plain))?.groups;
  const rest = found?.["rest"];
  if (rest === undefined) return null;
  return { parts: found?.["juiceFirst"] === undefined ? ["zest", "juice"] : ["juice", "zest"], rest };
}
