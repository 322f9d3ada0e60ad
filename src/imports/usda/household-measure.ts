/** Millilitres of the US customary measures of the table (NIST Handbook 44, Appendix C). */
const cup = 236.5882365;
const units: readonly (readonly [pattern: string, millilitres: number])[] = [
  ["cups?", cup],
  ["tbsps?|tablespoons?", cup / 16],
  ["tsps?|teaspoons?", cup / 48],
  ["fl oz|fluid ounces?", cup / 8],
  ["pints?", cup * 2],
  ["quarts?", cup * 4],
  ["liters?", 1000],
];
const volume = units.map(([pattern, millilitres]) => ({
  starts: new RegExp(`^(?:${pattern})(?![a-z])[\\s,]*`),
  millilitres,
}));

/** What a household measure of the table is. */
type HouseholdMeasure =
  /** So many millilitres of the food in these forms; null is the food as it comes. */
  | { readonly kind: "VOLUME"; readonly millilitres: number; readonly forms: readonly (string | null)[] }
  /** A piece of its own: "medium", "stick", "slice, thin". */
  | { readonly kind: "OWN"; readonly name: string; readonly one: string }
  /** Nothing to lean on: a weight, a serving, a yield, a heaped spoon, a cup that is not one, a maker's name. */
  | { readonly kind: "NONE" };

const none: HouseholdMeasure = { kind: "NONE" };

/** Words that make a cup something else than its volume, or name a maker (the table writes all else in small letters). */
const unusable = /yield|capacity|serving|packet|pouch|recipe|portion|rounded|heap|refuse|fl oz|cup\b|#|[A-Z]/;

/** A count beside the measure ("(50 halves)", "(approx 20 pieces per cup)", "(8 fl oz)"), which changes nothing. */
const aside = /\((?:(?:approx|about) [^)]*|[\d.]+ (?!fl oz|cup|NLEA)[a-z ]+)\)/g;

/** Reads the text of a household measure: `cup, chopped or diced` is a cup in two forms. */
export function readHouseholdMeasure(text: string): HouseholdMeasure {
  const written = text.trim().replace(/\s+/g, " ");
  const found = volume.find(({ starts }) => starts.test(written));
  if (found === undefined) return ownMeasure(written);
  const rest = written
    .replace(found.starts, "")
    .replace(/^\(?8 fl oz\)?$/, "")
    .replace(aside, "")
    .trim();
  if (unusable.test(rest)) return none;
  return { kind: "VOLUME", millilitres: found.millilitres, forms: formsOf(rest) };
}

function formsOf(rest: string): readonly (string | null)[] {
  const form = rest.replace(/^[\s,]+|[\s,]+$/g, "").replace(/^\(([^)]*)\)$/, "$1");
  if (form === "") return [null];
  const alternatives = /^[a-z]+(?:, [a-z]+)*,? or [a-z]+$/.test(form) ? form.split(/,? or |, /) : [form];
  return alternatives.map((each) => each.replace(/\s*\(/, ", ").replace(/\)/g, ""));
}

function ownMeasure(written: string): HouseholdMeasure {
  if (/^(oz|lb|g|gram|cubic inch)(?![a-z])/.test(written) || unusable.test(written)) return none;
  const slug = written
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "")
    .slice(0, 60)
    .replace(/-$/, "");
  if (slug === "") return none;
  // "piece" is the model's word for the whole item; the table means a piece of it.
  return { kind: "OWN", name: slug === "piece" ? "a-piece" : slug, one: written };
}
