import { assignedRegions } from "../model/region-codes.js";
import { inForceOn, regionCovers } from "../model/region.js";
import { allergenCodes } from "../nutrition/allergen-codes.js";
import type { RuleSet } from "./compile/rule-set.js";

type Rules = Pick<RuleSet, "safety" | "allergens">;

/** A law's list that names an allergen, itself or as one of a group. */
interface AllergenNaming {
  /** Code of the list. */
  readonly list: string;
  readonly region: string;
  readonly law: string;
  /** As it must be declared. */
  readonly name: string;
}

/** Every allergen, with the lists of the laws in force on an ISO date that name it. */
export function namedAllergens(
  { allergens }: Rules,
  date: string,
): readonly { readonly code: string; readonly namedBy: readonly AllergenNaming[] }[] {
  const lists = allergens.lists.filter((list) => inForceOn(list, date));
  return allergenCodes.map((code) => ({
    code,
    namedBy: lists.flatMap(({ id, region, law, entries }) =>
      entries.filter(({ includes }) => includes.includes(code)).map(({ name }) => ({ list: id, region, law, name })),
    ),
  }));
}

/** What published rules of a region are about. */
export type RuleSubject = "KEEPING" | "HANDLING" | "CAUTIONS" | "ALLERGENS" | "DIETS";

interface RuledRegion {
  /** ISO 3166 code, `EU`, `ANZ` or `INT`. */
  readonly code: string;
  readonly rules: readonly RuleSubject[];
  /** ISO 3166 codes of where they hold; null: everywhere. */
  readonly holdsIn: readonly string[] | null;
}

/** The regions that have rules of their own on an ISO date, by code. */
export function ruledRegions({ safety, allergens }: Rules, date: string): readonly RuledRegion[] {
  const diets = [...allergens.diets.flatMap(({ breaks }) => breaks), ...allergens.claims];
  const bySubject: Readonly<Record<RuleSubject, readonly (string | null)[]>> = {
    KEEPING: safety.keeping.filter((rule) => inForceOn(rule, date)).map(({ region }) => region),
    HANDLING: safety.handling.filter((rule) => inForceOn(rule, date)).map(({ region }) => region),
    CAUTIONS: safety.cautions.flatMap(({ byRegion = [] }) => byRegion.map(({ region }) => region)),
    ALLERGENS: allergens.lists.filter((list) => inForceOn(list, date)).map(({ region }) => region),
    DIETS: diets.map(({ region }) => region),
  };
  const subjects = Object.entries(bySubject) as [RuleSubject, readonly (string | null)[]][];
  const codes = [...new Set(subjects.flatMap(([, regions]) => regions.filter((region) => region !== null)))];
  return codes.toSorted().map((code) => ({
    code,
    rules: subjects.flatMap(([subject, regions]) => (regions.includes(code) ? [subject] : [])),
    holdsIn: holdsIn(code),
  }));
}

function holdsIn(code: string): readonly string[] | null {
  if (code === "INT") return null;
  const countries = assignedRegions.filter((country) => regionCovers(code, country));
  return countries.length > 0 ? countries : [code];
}
