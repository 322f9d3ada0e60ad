import { describe, expect, it } from "vitest";
import { assignedRegions } from "../../../src/domain/model/region-codes.js";
import { inFahrenheit, temperatureUnit } from "../../../src/domain/quantity/temperature.js";

describe("the degrees of a region", () => {
  // Unicode CLDR, cldr-core/supplemental/unitPreferenceData.json: temperature, weather.
  it.each(["BS", "BZ", "KY", "PR", "PW", "US"])("are Fahrenheit in %s, by CLDR", (region) => {
    expect(temperatureUnit(region)).toBe("F");
  });

  it("are those of the country in its parts and, of the United States, in its territories", () => {
    for (const region of ["US-WA", "US-PR", "AS", "GU", "MP", "UM", "VI"]) expect(temperatureUnit(region)).toBe("F");
    for (const region of ["CA-QC", "DE-BY", "GB-SCT"]) expect(temperatureUnit(region)).toBe("C");
  });

  it("are Celsius everywhere else, and where nobody names a region", () => {
    expect(assignedRegions.filter((region) => temperatureUnit(region) === "F")).toHaveLength(11);
    expect(temperatureUnit(null)).toBe("C");
    expect(temperatureUnit("XA")).toBe("C");
  });
});

describe("degrees Fahrenheit", () => {
  // Marks of an oven's dial as cookery books pair them: common practice, no source.
  it.each([
    [110, 225],
    [120, 250],
    [150, 300],
    [160, 325],
    [180, 350],
    [190, 375],
    [200, 400],
    [220, 425],
    [230, 450],
    [250, 475],
  ])("of an oven at %s °C are the mark %s on its dial", (celsius, fahrenheit) => {
    for (const oven of ["oven", "oven-shelf", "steam-oven"]) expect(inFahrenheit(celsius, oven)).toBe(fahrenheit);
  });

  // USDA FSIS, Safe Minimum Internal Temperature Chart: 165 °F (74 °C), 160 °F (71 °C), 145 °F (63 °C). NIST SP 811, B.8: t/°F = 1.8 t/°C + 32.
  it.each([
    [74, 165],
    [71, 160],
    [63, 145],
    [100, 212],
    [0, 32],
    [-20, -4],
    [180, 356],
  ])("of what is no oven are exact to the degree: %s °C is %s °F", (celsius, fahrenheit) => {
    expect(inFahrenheit(celsius, "hob-ring")).toBe(fahrenheit);
    expect(inFahrenheit(celsius, null)).toBe(fahrenheit);
  });

  it("of an oven that only keeps warm are exact too, so that nothing is rounded into danger", () => {
    expect(inFahrenheit(60, "oven-shelf")).toBe(140);
    expect(inFahrenheit(75, "oven-shelf")).toBe(167);
  });
});
