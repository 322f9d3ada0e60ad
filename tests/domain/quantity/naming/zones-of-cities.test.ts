import { describe, expect, it } from "vitest";
import { zoneOfCity } from "../../../../src/domain/quantity/naming/zones-of-cities.js";

// Names of zones: IANA time zone database. Names of cities in other languages are from memory.
describe("the zone of a city", () => {
  it.each([
    ["Lisbon", "Europe/Lisbon"],
    ["Lissabon", "Europe/Lisbon"],
    ["lizbona", "Europe/Lisbon"],
    ["Wien", "Europe/Vienna"],
    ["Wiedeń", "Europe/Vienna"],
    ["Londres", "Europe/London"],
    ["Warszawa", "Europe/Warsaw"],
    ["Zürich", "Europe/Zurich"],
    ["Moscú", "Europe/Moscow"],
    ["Nowy  Jork", "America/New_York"],
    ["São Paulo", "America/Sao_Paulo"],
    ["Port-au-Prince", "America/Port-au-Prince"],
    ["Kolkata", "Asia/Kolkata"],
    ["Kyiv", "Europe/Kyiv"],
    ["St John’s", "America/St_Johns"],
  ])("%s is %s", (city, zone) => {
    expect(zoneOfCity(city, null)).toBe(zone);
  });

  it("is that of every zone's own city", () => {
    for (const zone of Intl.supportedValuesOf("timeZone"))
      expect(zoneOfCity(zone.slice(zone.lastIndexOf("/") + 1), null), zone).toBe(zone);
  });

  it("is the only one of a country where the city names none, and else nobody's", () => {
    expect(zoneOfCity("Kraków", "PL")).toBe("Europe/Warsaw");
    expect(zoneOfCity("", "GB")).toBe("Europe/London");
    expect(zoneOfCity("Springfield", "US")).toBeNull();
    expect(zoneOfCity("Atlantis", null)).toBeNull();
    expect(zoneOfCity("x".repeat(5_000), "GB")).toBeNull();
  });
});
