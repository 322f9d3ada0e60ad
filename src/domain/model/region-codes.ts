/** Every code of two letters that ISO 3166-1 assigns to a country or territory. */
export const assignedRegions: readonly string[] = (
  "AD AE AF AG AI AL AM AO AQ AR AS AT AU AW AX AZ BA BB BD BE BF BG BH BI BJ BL BM BN BO BQ BR BS BT BV BW BY BZ " +
  "CA CC CD CF CG CH CI CK CL CM CN CO CR CU CV CW CX CY CZ DE DJ DK DM DO DZ EC EE EG EH ER ES ET FI FJ FK FM FO FR " +
  "GA GB GD GE GF GG GH GI GL GM GN GP GQ GR GS GT GU GW GY HK HM HN HR HT HU ID IE IL IM IN IO IQ IR IS IT JE JM JO JP " +
  "KE KG KH KI KM KN KP KR KW KY KZ LA LB LC LI LK LR LS LT LU LV LY MA MC MD ME MF MG MH MK ML MM MN MO MP MQ MR MS MT " +
  "MU MV MW MX MY MZ NA NC NE NF NG NI NL NO NP NR NU NZ OM PA PE PF PG PH PK PL PM PN PR PS PT PW PY QA RE RO RS RU RW " +
  "SA SB SC SD SE SG SH SI SJ SK SL SM SN SO SR SS ST SV SX SY SZ TC TD TF TG TH TJ TK TL TM TN TO TR TT TV TW TZ " +
  "UA UG UM US UY UZ VA VC VE VG VI VN VU WF WS YE YT ZA ZM ZW"
).split(" ");

const assigned: ReadonlySet<string> = new Set(assignedRegions);

/** Left to everybody's own use by ISO 3166-1: AA, QM to QZ, XA to XZ, ZZ. */
const userAssigned = /^(AA|Q[M-Z]|X[A-Z]|ZZ)$/;

/** What people write for a country that has another code: reserved and withdrawn codes, codes of three letters, parts. */
const written: Readonly<Record<string, readonly string[]>> = {
  ...{ UK: ["GB"], GBR: ["GB"], EN: ["GB"], ENG: ["GB"], SCO: ["GB"], WAL: ["GB"], NIR: ["GB"] },
  ...{ USA: ["US"], CAN: ["CA"], AUS: ["AU"], NZL: ["NZ"], IRL: ["IE"], EIR: ["IE"], ZAF: ["ZA"], IND: ["IN"] },
  ...{ DEU: ["DE"], GER: ["DE"], DD: ["DE"], FRA: ["FR"], FX: ["FR"], ESP: ["ES"], SPA: ["ES"], POL: ["PL"] },
  ...{ ITA: ["IT"], AUT: ["AT"], CHE: ["CH"], SUI: ["CH"], NLD: ["NL"], NED: ["NL"], BEL: ["BE"], PRT: ["PT"] },
  ...{ DNK: ["DK"], SWE: ["SE"], NOR: ["NO"], FIN: ["FI"], ISL: ["IS"], GRC: ["GR"], EL: ["GR"], HUN: ["HU"] },
  ...{ CZE: ["CZ"], CS: ["CZ", "SK", "RS"], YU: ["RS"], SU: ["RU"], RUS: ["RU"], JPN: ["JP"], JAP: ["JP"] },
  ...{ CHN: ["CN"], BRA: ["BR"], MEX: ["MX"], TP: ["TL"], ZR: ["CD"], BU: ["MM"], AN: ["CW", "SX", "BQ"] },
  ...{ EU: ["DE", "FR", "IE"], ANZ: ["AU", "NZ"] },
};

/** A country: assigned by ISO 3166-1, or one of the codes it leaves to its users. In capitals. */
export const isCountryCode = (code: string): boolean => assigned.has(code) || userAssigned.test(code);

/** A country, or a part of one as ISO 3166-2 writes it (`US-WA`): which parts there are is not checked. In capitals. */
export function isRegionCode(code: string): boolean {
  const [, country] = /^([A-Z]{2})(?:-[A-Z0-9]{1,3})?$/.exec(code) ?? [];
  return country !== undefined && isCountryCode(country);
}

/** The country of a region: `US` of `US-WA`. */
export const countryOf = (region: string): string => region.slice(0, 2);

/** The codes that somebody may have meant, best first; none where nobody could tell. */
export function nearestRegions(given: string): readonly string[] {
  const plain = given.trim().toUpperCase().replaceAll(".", "").replaceAll("_", "-");
  if (isRegionCode(plain)) return [plain];
  // A language tag: first the language, then the country.
  const [, spokenIn] = /^[a-z]{2,3}[-_]([A-Z]{2})$/.exec(given.trim()) ?? [];
  if (spokenIn !== undefined && isCountryCode(spokenIn)) return [spokenIn];
  const [first = "", ...rest] = plain.split("-");
  const known = written[first] ?? (isCountryCode(first) ? [first] : []);
  if (known.length > 0) return rest.length === 0 ? known : known.flatMap((code) => withPart(code, rest[0] ?? ""));
  return first.length === 3 ? oneLetterLess(first).filter(isCountryCode) : [];
}

const withPart = (country: string, part: string): readonly string[] => {
  const code = `${country}-${part}`;
  return isRegionCode(code) ? [code] : [country];
};

const oneLetterLess = (text: string): readonly string[] => [
  ...new Set([...text].map((_, at) => text.slice(0, at) + text.slice(at + 1))),
];

/** What is asked for where a region is read. */
const regionExpected = "an assigned ISO 3166 code, such as GB or US-WA";

/** What to say of a text that is no region: the codes that may have been meant, or what one looks like. */
export function regionInstead(given: string): string {
  const nearest = nearestRegions(given);
  return nearest.length === 0 ? regionExpected : `${regionExpected}; the nearest is ${nearest.join(" or ")}`;
}

/** A region as somebody wrote it, in capitals; null for one that there is not. */
export function regionCode(given: string): string | null {
  const code = given.trim().toUpperCase();
  return isRegionCode(code) ? code : null;
}
