import { countryOf } from "../model/region-codes.js";

/**
 * Where temperatures are read in degrees Fahrenheit: Unicode CLDR, cldr-core/supplemental/unitPreferenceData.json, temperature (US by
 * default; BS BZ KY PR PW by the usage `weather`, the only one that names them), and the other territories of the United States.
 */
const readsFahrenheit = new Set("US BS BZ KY PR PW AS GU MP UM VI".split(" "));

export type TemperatureUnit = "C" | "F";

/** The degrees of a region; those of most of the world where nobody names one. */
export const temperatureUnit = (region: string | null): TemperatureUnit =>
  region !== null && readsFahrenheit.has(countryOf(region)) ? "F" : "C";

/** The lowest mark on an oven's dial, and its steps. Common practice, no source. */
const lowestDialF = 225;
const dialStepF = 25;

/** Exact to a whole degree, except what an oven is set to: that is a mark on its dial. */
export function inFahrenheit(celsius: number, appliance: string | null): number {
  const exact = (celsius * 9) / 5 + 32;
  const onDial = /(^|-)oven(-|$)/.test(appliance ?? "") && exact >= lowestDialF;
  return onDial ? Math.round(exact / dialStepF) * dialStepF : Math.round(exact);
}
