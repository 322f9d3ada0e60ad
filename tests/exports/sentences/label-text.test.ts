import { describe, expect, it } from "vitest";
import { labelNutrient, labelText } from "../../../src/exports/sentences/label-text.js";

const one = (value: number) => ({ low: value, high: value });

describe("a figure on a label", () => {
  it.each([
    ["en", "less than 5 mg", "<0.5 g", "0.7"],
    ["en-GB", "less than 5 mg", "<0.5 g", "0.7"],
    ["de", "weniger als 5 mg", "<0,5 g", "0,7"],
    ["de-CH", "weniger als 5 mg", "<0.5 g", "0.7"],
    ["fr", "moins de 5 mg", "<0,5 g", "0,7"],
    ["es", "menos de 5 mg", "<0,5 g", "0,7"],
    ["pl", "mniej niż 5 mg", "<0,5 g", "0,7"],
    ["it", "less than 5 mg", "<0,5 g", "0,7"],
  ])("is in the reader's words and numbers: %s", (locale, less, below, number) => {
    expect(labelText("cholesterolMg", one(3), "US", locale)).toBe(less);
    expect(labelText("fatG", one(0.2), "EU", locale)).toBe(below);
    expect(labelText("fatG", one(0.71), "EU", locale)).toBe(number);
  });

  it("has its unit once, at the end of a range too, and groups no digits", () => {
    const figure = (low: number, high: number) =>
      labelNutrient("fatG", { perServing: { low, high }, per100g: null }, "EU", "de");
    expect(figure(0.2, 0.3)?.perServing).toEqual({ value: 0, upTo: null, text: "<0,5 g" });
    expect(figure(0.2, 1.24)?.perServing).toEqual({ value: 0, upTo: 1.2, text: "<0,5 g–1,2 g" });
    expect(figure(0, 0)?.perServing).toEqual({ value: 0, upTo: null, text: "0 g" });
    expect(figure(1.01, 1.04)?.perServing).toEqual({ value: 1, upTo: null, text: "1 g" });
    expect(figure(1234, 1300)).toMatchObject({ per100g: null, perServing: { text: "1234–1300 g" } });
    const energy = labelNutrient("energyKcal", { perServing: one(1234.4), per100g: one(99) }, "US", "en-US");
    expect(energy).toMatchObject({
      name: "energy",
      unit: "kcal",
      perServing: { text: "1230 kcal" },
      per100g: { value: 100 },
    });
  });

  it("is salt in grams by the rules of the Union, sodium in milligrams by those of the United States", () => {
    // Regulation (EU) No 1169/2011, Annex I: salt is sodium × 2.5.
    const sodium = { perServing: one(400), per100g: one(3) };
    expect(labelNutrient("sodiumMg", sodium, "EU", "fr")).toMatchObject({
      name: "sel",
      unit: "g",
      perServing: { value: 1 },
      per100g: { text: "<0,01 g" },
    });
    expect(labelNutrient("sodiumMg", sodium, "US", "fr")).toMatchObject({
      name: "sodium",
      unit: "mg",
      perServing: { text: "400 mg" },
      per100g: { text: "0 mg" },
    });
  });

  it("is null without a scheme, and where the scheme has no rule", () => {
    expect(labelNutrient("fatG", { perServing: one(1), per100g: null }, null, "de")).toBeNull();
    expect(labelNutrient("cholesterolMg", { perServing: one(1), per100g: null }, "EU", "de")).toBeNull();
    expect(labelText("cholesterolMg", one(3), "EU", "de")).toBeNull();
  });
});
