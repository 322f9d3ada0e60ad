import { countryOf } from "./region-codes.js";

/** The member states whose food law is that of the Union (ISO 3166). */
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

/** Who said where an answer is to hold. */
export type RegionOwner = "READER" | "PLAN" | "PUBLISHER";

export interface OwnedRegion {
  /** ISO 3166 code. */
  readonly region: string;
  readonly owner: RegionOwner;
}

/** Where an answer is to hold: the first region counts, and each further one where those before it have no rule. */
export interface Regions {
  /** The first of them; null: nobody said. */
  readonly region: string | null;
  /** Left out: `region` alone, and it is the reader's own. */
  readonly regions?: readonly OwnedRegion[];
}

/** The regions of an answer, nearest first. */
export const regionsOf = ({ region, regions }: Regions): readonly OwnedRegion[] =>
  regions ?? (region === null ? [] : [{ region, owner: "READER" }]);

/** What the reader asked for; null: nothing, whatever the plan or its publisher says. */
export const askedRegion = (regions: Regions): string | null =>
  regionsOf(regions).find(({ owner }) => owner === "READER")?.region ?? null;

/** A part of a country is that country, unless a rule speaks of the part itself. */
export const ruledRegion = (region: string, ruled: ReadonlySet<string>): string =>
  ruled.has(region) ? region : countryOf(region);

/** Whether something dated holds on an ISO date: from its first day (null: always) up to, not on, its last (null: still). */
export const inForceOn = (
  dated: { readonly inForceFrom: string | null; readonly inForceTo: string | null },
  date: string,
): boolean =>
  (dated.inForceFrom === null || dated.inForceFrom <= date) && (dated.inForceTo === null || date < dated.inForceTo);
