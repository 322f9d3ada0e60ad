// @ts-nocheck
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  euLabelNutrients,
  roundForEuLabel,
  roundForUsLabel,
  saltOfSodium,
  usLabelNutrients,
  type UsLabelNutrient,
} from "../../../src/domain/nutrition/label-rounding.js";
import { referenceTable, sourceOf, type Row } from "../quantity/reference-table.js";

const table = referenceTable("label-rounding");
const halfWay = table.filter((row) => row["nutrient"] === "serving size half-way");
const bands = table.filter((row) => !halfWay.includes(row));

/** Values that fall into a band: both ends as far as they belong to it, and some between. */
function samples(row: Row): readonly number[] {
  const lower = Number(row["lower"]);
  const upper = row["upper"] === "" ? lower * 3 + 100 : Number(row["upper"]);
  const inside = [0.013, 0.21, 0.35, 0.5, 0.77, 0.989].map((share) => lower + (upper - lower) * share);
  return [
    ...(row["lower_inclusive"] === "yes" ? [lower] : []),
    ...inside,
    ...(row["upper_inclusive"] === "yes" ? [upper] : []),
  ];
}

/** The nearest multiple in whole steps, half-way up, by integer arithmetic in millionths. */
function nearest(value: number, step: number): number {
  const [v, s] = [Math.round(value * 1e6), Math.round(step * 1e6)];
  const over = v % s;
  return (over * 2 >= s ? v - over + s : v - over) / 1e6;
}

describe("the table of US label rounding", () => {
  it("has every nutrient that the rounding knows, and no other", () => {
    expect(new Set(bands.map((row) => row["nutrient"]))).toEqual(new Set(usLabelNutrients));
    expect(bands.length + halfWay.length).toBe(59);
  });

  it.each(bands.map((row) => ({ band: `${row["nutrient"]} ${row["lower"]} to ${row["upper"] || "any"}`, row })))(
    "is followed band by band: $band",
    ({ row }) => {
      for (const value of samples(row)) {
        const figure = roundForUsLabel(row["nutrient"] as UsLabelNutrient, value);
        const shown = `${value} ${row["unit"]}: ${sourceOf(row)}`;
        if (row["display"]?.startsWith("less than")) {
          expect(figure?.says, shown).toBe(row["display"].replace(/ \(or.*|, or.*/, ""));
          expect(figure?.value, shown).toBe(0);
        } else if (row["display"]?.startsWith("nearest")) {
          expect(figure?.says, shown).toBeNull();
          expect(figure?.value, shown).toBeCloseTo(nearest(value, Number(row["increment"])), 9);
        } else expect(figure, shown).toEqual({ value: 0, says: null });
      }
    },
  );

  it("rounds half-way up where the table prints it, for serving sizes", () => {
    expect(halfWay.map((row) => row["display"])).toEqual(["round UP to the next increment"]);
    expect(roundForUsLabel("serving size, metric (g or mL)", 2.25)?.value).toBe(2.5);
    expect(roundForUsLabel("serving size, metric (g or mL)", 7.5)?.value).toBe(8);
    expect(roundForUsLabel("servings per container", 3.25)?.value).toBe(3.5);
  });

  it("has no figure for fewer than two servings in a container", () => {
    expect(roundForUsLabel("servings per container", 1.9)).toBeNull();
  });

  it("keeps the edges where they belong: 50 kcal, 140 mg of sodium, 5.0 g of fat", () => {
    expect(roundForUsLabel("calories", 47.5)?.value).toBe(50);
    expect(roundForUsLabel("calories", 50)?.value).toBe(50);
    expect(roundForUsLabel("calories", 52)?.value).toBe(50);
    expect(roundForUsLabel("sodium", 138)?.value).toBe(140);
    expect(roundForUsLabel("sodium", 144)?.value).toBe(140);
    expect(roundForUsLabel("total fat", 4.8)?.value).toBe(5);
    expect(roundForUsLabel("total fat", 5.4)?.value).toBe(5);
  });
});

// Guidance document on tolerances, European Commission, December 2012, rounding guidelines; written down from memory
describe("EU label rounding", () => {
  it.each([
    ["energy", 121.7, 122, null],
    ["fat", 12.5, 13, null],
    ["fat", 9.94, 9.9, null],
    ["fat", 0.51, 0.5, null],
    ["fat", 0.5, 0, "<0.5 g"],
    ["fat", 0, 0, null],
    ["saturates", 0.14, 0.1, null],
    ["saturates", 0.1, 0, "<0.1 g"],
    ["salt", 1.26, 1.3, null],
    ["salt", 0.994, 0.99, null],
    ["salt", 0.0125, 0, "<0.01 g"],
    ["salt", 0.013, 0.01, null],
    ["protein", 10, 10, null],
    ["fibre", 3.25, 3.3, null],
  ] as const)("of %s %d is %d %s", (nutrient, value, printed, says) => {
    expect(roundForEuLabel(nutrient, value)).toEqual({ value: printed, says });
  });

  it("prints salt for sodium: 400 mg of sodium are 1 g of salt", () => {
    expect(saltOfSodium(400)).toBe(1);
  });
});

describe("any figure", () => {
  it("is rounded to something near it, and never less for more", () => {
    const value = fc.double({ min: 0, max: 5000, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...usLabelNutrients), value, value, (nutrient, a, b) => {
        const [less, more] = [roundForUsLabel(nutrient, Math.min(a, b)), roundForUsLabel(nutrient, Math.max(a, b))];
        if (less !== null && more !== null) expect(less.value).toBeLessThanOrEqual(more.value);
        if (more !== null) expect(Math.abs(more.value - Math.max(a, b))).toBeLessThanOrEqual(5.000001);
      }),
    );
  });

  it("that is negative or no number is refused", () => {
    for (const value of [-1, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => roundForUsLabel("calories", value)).toThrow(RangeError);
      for (const nutrient of euLabelNutrients) expect(() => roundForEuLabel(nutrient, value)).toThrow(RangeError);
    }
  });
});
