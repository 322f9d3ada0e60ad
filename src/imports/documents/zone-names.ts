import { plainWords } from "../../domain/quantity/naming/plain-words.js";
import { usualZones, zonesByCity } from "../../domain/quantity/naming/zones-of-cities.js";
import { isTimeZone } from "../../domain/time-zone.js";
import { nearestCodes } from "../../domain/quantity/naming/nearest-words.js";

/** The zone of that IANA name, in the letters that are usual; null: there is none. */
export function knownZone(name: string): string | null {
  if (!isTimeZone(name)) return null;
  return usualZones().find((zone) => zone.toLowerCase() === name.toLowerCase()) ?? name;
}

const plainZone = (name: string): string => name.split("/").map(plainWords).join("/");

/** Up to three zones that an unknown name may mean: one letter wrong, the city alone, or the names of another language. */
export function nearestZones(name: string): readonly string[] {
  if (name.length > 60) return [];
  const [first = "", ...rest] = plainZone(name).split("/");
  const city = rest.at(-1) ?? first;
  const byCity = zonesByCity();
  const ofCity = byCity.get(city);
  if (ofCity !== undefined) return [ofCity];
  const byName = new Map(usualZones().map((zone) => [plainZone(zone), zone]));
  const near = nearestIn(byName, [areas[first] ?? first, ...rest].join("/"));
  return near.length > 0 ? near : nearestIn(byCity, city);
}

const nearestIn = (zones: ReadonlyMap<string, string>, written: string): readonly string[] => [
  ...new Set(nearestCodes(written, [...zones.keys()]).flatMap((each) => zones.get(each) ?? [])),
];

/** Continents in German, French, Spanish and Polish, as the IANA names begin. From memory. */
const areas: Readonly<Record<string, string>> = {
  europa: "europe",
  amerika: "america",
  amerique: "america",
  ameryka: "america",
  afrika: "africa",
  afrique: "africa",
  afryka: "africa",
  asien: "asia",
  asie: "asia",
  azja: "asia",
  australien: "australia",
  australie: "australia",
};
