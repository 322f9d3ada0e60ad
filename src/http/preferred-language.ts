import Negotiator from "negotiator";

/** Ranges that are looked at; a browser sends a handful. */
const mostRanges = 30;

/** A weight that HTTP does not know (12.4.2): the range with it is not looked at. */
const badWeight = /;[ \t]*q=(?!(?:0(?:\.\d{0,3})?|1(?:\.0{0,3})?)[ \t]*$)/i;

/**
 * The language that a browser asks for first (RFC 9110, 12.5.4), of those there are; null: none of them. Countries are left out, so that
 * there are no more answers to keep than languages.
 */
export function preferredLanguage<Language extends string>(
  header: string | undefined,
  languages: readonly Language[],
): Language | null {
  const ranges = header
    ?.split(",", mostRanges)
    .filter((range) => !badWeight.test(range))
    .join(",");
  const wanted = new Negotiator({ headers: { "accept-language": ranges } }).languages();
  const found = wanted.flatMap((range) => {
    const [language = ""] = range.toLowerCase().split("-", 1);
    return languages.filter((each) => each === language);
  });
  return found[0] ?? null;
}
