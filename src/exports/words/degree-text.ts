import type { Step } from "../../domain/model/component.js";
import type { Reader } from "../../domain/plan/plan-answer.js";
import { inFahrenheit, type TemperatureUnit } from "../../domain/quantity/temperature.js";

/** What an oven or a pot is set to, in the degrees of the reader's region: `220 °C`, `425 °F`. null: the writer gives none. */
export function heatText(
  { temperatureC, appliance }: Pick<Step, "temperatureC" | "appliance">,
  { degrees }: Reader,
): string | null {
  return temperatureC === null ? null : heatIn(temperatureC, appliance, degrees ?? "C");
}

/** The same in the other degrees too, for whoever stands before an oven from elsewhere: `220 °C (425 °F)`. */
export function heatBothText(step: Pick<Step, "temperatureC" | "appliance">, reader: Reader): string | null {
  const [own, other] = [
    heatText(step, reader),
    heatText(step, { ...reader, degrees: reader.degrees === "F" ? "C" : "F" }),
  ];
  return own === null ? null : `${own} (${other})`;
}

/** The same in given degrees. */
export const heatIn = (temperatureC: number, appliance: string | null, degrees: TemperatureUnit): string =>
  degrees === "F" ? `${inFahrenheit(temperatureC, appliance)} °F` : `${temperatureC} °C`;

interface Temperature {
  readonly value: number;
  readonly unit: "CELSIUS" | "FAHRENHEIT";
  readonly text: string;
}

/** What an oven or a pot is set to, as a number of given degrees. null: the writer gives none. */
export const temperatureIn = (
  { temperatureC, appliance }: Pick<Step, "temperatureC" | "appliance">,
  degrees: TemperatureUnit = "C",
): Temperature | null =>
  temperatureC === null
    ? null
    : {
        value: degrees === "F" ? inFahrenheit(temperatureC, appliance) : temperatureC,
        unit: degrees === "F" ? "FAHRENHEIT" : "CELSIUS",
        text: heatIn(temperatureC, appliance, degrees),
      };

/** Temperatures in words as they were published ("41 F (5 C)"), with their degree signs. */
export const degreeText = (words: string): string =>
  words.replace(/(?<![\p{L}\d])(-?\d+) ([CF])(?![\p{L}\d])/gu, "$1 °$2");
