/** The member states whose food law is that of the Union (ISO 3166). */
// @ts-nocheck

const unionMembers = new Set(
  "AT BE BG CY CZ DE DK EE ES FI FR GR HR HU IE IT LT LU LV MT NL PL PT RO SE SI SK".split(" "),
);

/**
 * Whether a rule of one region holds in another: `INT` everywhere, `EU` in its member states, `ANZ` in Australia and
 * New Zealand, a country in its own subdivisions (`US` in `US-WA`, never the other way round).
 */
export function regionCovers(rule: string, asked: string): boolean {
  if (rule === "INT" || rule === asked) return true;
  const country = asked.split("-")[0] ?? asked;
  if (rule === "EU") return unionMembers.has(country);
  if (rule === "ANZ") return country === "AU" || country === "NZ";
  return rule === country;
}

/** Whether something dated holds on an ISO date: from its first day (null: always) up to, not on, its last (null: still). */
export const inForceOn = (
  dated: { readonly inForceFrom: string | null; readonly inForceTo: string | null },
  date: string,
): boolean =>
  (dated.inForceFrom === null || dated.inForceFrom <= date) && (dated.inForceTo === null || date < dated.inForceTo);
