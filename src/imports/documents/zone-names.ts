import { isTimeZone } from "../../domain/time-zone.js";
import { nearestCodes } from "./checks/nearest-words.js";

/** Every zone that this machine knows by its usual name. */
const usual = (): readonly string[] => ["UTC", ...Intl.supportedValuesOf("timeZone")];

const folded = (name: string): string =>
  name
    .normalize("NFD")
    .replaceAll(/\p{M}/gu, "")
    .replaceAll("ł", "l")
    .toLowerCase()
    .replaceAll(/[\s-]+/g, "_");

/** The zone of that IANA name, in the letters that are usual; null: there is none. */
export function knownZone(name: string): string | null {
  if (!isTimeZone(name)) return null;
  return usual().find((zone) => zone.toLowerCase() === name.toLowerCase()) ?? name;
}

/** Up to three zones that an unknown name may mean: one letter wrong, the city alone, or the names of another language. */
export function nearestZones(name: string): readonly string[] {
  if (name.length > 60) return [];
  const zones = usual();
  const [area, ...rest] = folded(name).split("/");
  const city = rest.at(-1) ?? area ?? "";
  const inEnglish = cities[city] ?? city;
  const ofCity = zones.filter((zone) => folded(zone.split("/").at(-1) ?? "") === inEnglish);
  const inArea = ofCity.filter((zone) => rest.length === 0 || folded(zone).startsWith(areas[area ?? ""] ?? area ?? ""));
  if (ofCity.length > 0) return (inArea.length > 0 ? inArea : ofCity).slice(0, 3);
  const asked =
    rest.length === 0 ? folded(name) : [areas[area ?? ""] ?? area, ...rest.slice(0, -1), inEnglish].join("/");
  const byFolded = new Map(zones.map((zone) => [folded(zone), zone]));
  const near = nearestCodes(asked, [...byFolded.keys()]).flatMap((each) => byFolded.get(each) ?? []);
  if (near.length > 0) return near;
  const cityOnly = new Map(zones.map((zone) => [folded(zone.split("/").at(-1) ?? ""), zone]));
  return nearestCodes(inEnglish, [...cityOnly.keys()]).flatMap((each) => cityOnly.get(each) ?? []);
}

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

/** Cities of zones that are called otherwise in German, French, Spanish or Polish. From memory; CLDR has the same names. */
const cities: Readonly<Record<string, string>> = {
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
  nowy_jork: "new_york",
  nueva_york: "new_york",
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
