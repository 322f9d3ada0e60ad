import Negotiator from "negotiator";

/** Ranges that are looked at; a browser sends a handful. */
const mostRanges = 30;

/**
 * The language that a browser asks for first (RFC 9110, 12.5.4), of those there are; null: none of them. Countries are left out, so that
 * there are no more answers to keep than languages.
 */
export function preferredLanguage<Language extends string>(
  header: string | undefined,
  languages: readonly Language[],
): Language | null {
  const ranges = header?.split(",", mostRanges).join(",");
  const wanted = new Negotiator({ headers: { "accept-language": ranges } }).languages();
  const found = wanted.flatMap((range) => {
    const [language = ""] = range.toLowerCase().split("-", 1);
    return languages.filter((each) => each === language);
  });
  return found[0] ?? null;
}
