import { countryOf } from "../../model/region-codes.js";
import { isTimeZone } from "../../time-zone.js";
import { plainWords } from "./plain-words.js";

/** Cities that the list of a runtime still has under an older name (IANA tz database, file `backward`). */
const renamed: Readonly<Record<string, string>> = {
  kolkata: "Asia/Kolkata",
  kyiv: "Europe/Kyiv",
  "ho chi minh": "Asia/Ho_Chi_Minh",
  yangon: "Asia/Yangon",
  kathmandu: "Asia/Kathmandu",
  dhaka: "Asia/Dhaka",
  nuuk: "America/Nuuk",
};

/** Cities of zones by their names in German, French, Spanish and Polish. From memory; CLDR has the same names. */
const inEnglish: Readonly<Record<string, string>> = {
  ateny: "athens",
  atenas: "athens",
  athen: "athens",
  athenes: "athens",
  belgrad: "belgrade",
  berlino: "berlin",
  bruksela: "brussels",
  brussel: "brussels",
  bruselas: "brussels",
  bruxelles: "brussels",
  bukarest: "bucharest",
  kopenhaga: "copenhagen",
  kopenhagen: "copenhagen",
  copenhague: "copenhagen",
  copenhaga: "copenhagen",
  lisboa: "lisbon",
  lisbonne: "lisbon",
  lissabon: "lisbon",
  lizbona: "lisbon",
  londres: "london",
  londyn: "london",
  moskau: "moscow",
  moscou: "moscow",
  moskwa: "moscow",
  moscu: "moscow",
  "nowy jork": "new york",
  "nueva york": "new york",
  paryz: "paris",
  prag: "prague",
  praga: "prague",
  rom: "rome",
  roma: "rome",
  rzym: "rome",
  tokio: "tokyo",
  varsovia: "warsaw",
  varsovie: "warsaw",
  warschau: "warsaw",
  warszawa: "warsaw",
  wien: "vienna",
  vienne: "vienna",
  viena: "vienna",
  wieden: "vienna",
  zurych: "zurich",
};

/** Every zone that this machine knows by its usual name. */
export const usualZones = (): readonly string[] => ["UTC", ...Intl.supportedValuesOf("timeZone")];

let byCity: ReadonlyMap<string, string> | null = null;

/** Zones by the cities in their names, in five languages: `lisbon` and `lissabon` are Europe/Lisbon. */
export function zonesByCity(): ReadonlyMap<string, string> {
  byCity ??= citiesOfZones();
  return byCity;
}

function citiesOfZones(): ReadonlyMap<string, string> {
  const found = new Map([
    ...usualZones().map((zone) => [plainWords(zone.slice(zone.lastIndexOf("/") + 1)), zone] as const),
    ...Object.entries(renamed).filter(([, zone]) => isTimeZone(zone)),
  ]);
  const others = Object.entries(inEnglish).flatMap(([city, english]) => {
    const zone = found.get(english);
    return zone === undefined || found.has(city) ? [] : [[city, zone] as const];
  });
  return new Map([...found, ...others]);
}

/** The only zone of a country; null where it has several, or nobody knows. */
function onlyZoneOf(region: string): string | null {
  const country = countryOf(region);
  if (!/^[A-Z]{2}$/.test(country)) return null;
  const locale: Intl.Locale & { readonly timeZones?: readonly string[]; getTimeZones?: () => readonly string[] } =
    new Intl.Locale(`und-${country}`);
  const zones = locale.getTimeZones?.() ?? locale.timeZones ?? [];
  return zones.length === 1 ? (zones[0] ?? null) : null;
}

/**
 * The IANA zone whose clock a city goes by: one that names the city, else the only one of the country. null: nobody could tell.
 *
 * @param city as somebody writes it; blank: none was given
 * @param region ISO 3166 code; null: not known
 */
export function zoneOfCity(city: string, region: string | null): string | null {
  if (city.includes("/") && isTimeZone(city)) return city;
  if (city.length > 60) return null;
  return zonesByCity().get(plainWords(city)) ?? (region === null ? null : onlyZoneOf(region));
}
