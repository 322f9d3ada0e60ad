import { countryOf } from "./region-codes.js";
import { isTimeZone } from "../time-zone.js";

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

const plain = (text: string): string =>
  text.normalize("NFD").replace(/\p{M}/gu, "").replace(/[_-]+/g, " ").trim().toLowerCase();

let byCity: ReadonlyMap<string, string> | null = null;

/** Zones by the city in their names: `lisbon` is Europe/Lisbon. */
function cities(): ReadonlyMap<string, string> {
  byCity ??= new Map([
    ...Intl.supportedValuesOf("timeZone").map((zone) => [plain(zone.split("/").at(-1) ?? zone), zone] as const),
    ...Object.entries(renamed).filter(([, zone]) => isTimeZone(zone)),
  ]);
  return byCity;
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
  return cities().get(plain(city)) ?? (region === null ? null : onlyZoneOf(region));
}
