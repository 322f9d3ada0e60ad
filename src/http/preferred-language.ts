/** Ranges that are looked at; a browser sends a handful. */
const mostRanges = 30;

interface Range {
  readonly language: string;
  readonly weight: number;
}

/** `de-AT;q=0.8`; null: it is none, or is refused with a weight of 0. */
function rangeOf(text: string): Range | null {
  const [, language, weight = "1"] =
    /^[ \t]*([A-Za-z]{1,8})(?:-[A-Za-z0-9]{1,8})*(?:[ \t]*;[ \t]*q=(0(?:\.\d{0,3})?|1(?:\.0{0,3})?))?[ \t]*$/.exec(
      text,
    ) ?? [];
  if (language === undefined || Number(weight) === 0) return null;
  return { language: language.toLowerCase(), weight: Number(weight) };
}

/**
 * The language that a browser asks for first (RFC 9110, 12.5.4), of those there are; null: none of them. Countries are left out, so that
 * there are no more answers to keep than languages.
 */
export function preferredLanguage<Language extends string>(
  header: string | undefined,
  languages: readonly Language[],
): Language | null {
  const ranges = (header ?? "").split(",", mostRanges).flatMap((text) => rangeOf(text) ?? []);
  // Sorting keeps the order of equal weights.
  const wanted = ranges.toSorted((a, b) => b.weight - a.weight);
  for (const { language } of wanted) {
    const found = languages.find((each) => each === language);
    if (found !== undefined) return found;
  }
  return null;
}
