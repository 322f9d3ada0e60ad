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
import { labelSchemeOf } from "../../../src/domain/nutrition/label-figure.js";
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
          expect(`less than ${figure?.below} ${row["unit"]}`, shown).toBe(row["display"].replace(/ \(or.*|, or.*/, ""));
          expect(figure?.value, shown).toBe(0);
        } else if (row["display"]?.startsWith("nearest")) {
          expect(figure?.below, shown).toBeNull();
          expect(figure?.value, shown).toBeCloseTo(nearest(value, Number(row["increment"])), 9);
        } else expect(figure, shown).toEqual({ value: 0, below: null });
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

/**
 * The table of rounding guidelines in "Guidance document for competent authorities for the control of compliance with EU legislation …
 * with regard to the setting of tolerances for nutrient values declared on a label", European Commission, December 2012, section 6; written
 * down from memory. From `from` on, to the nearest `to`; up to and with `least`, "less than" `below`.
 */
const euTable = [
  { nutrients: ["energy"], bands: [{ from: 0, to: 1 }], least: null, below: null },
  {
    nutrients: ["fat", "carbohydrate", "sugars", "fibre", "protein"],
    bands: [
      { from: 0.5, to: 0.1 },
      { from: 10, to: 1 },
    ],
    least: 0.5,
    below: 0.5,
  },
  {
    nutrients: ["saturates"],
    bands: [
      { from: 0.1, to: 0.1 },
      { from: 10, to: 1 },
    ],
    least: 0.1,
    below: 0.1,
  },
  {
    nutrients: ["salt"],
    bands: [
      { from: 0.0125, to: 0.01 },
      { from: 1, to: 0.1 },
    ],
    least: 0.0125,
    below: 0.01,
  },
] as const;
const euSource = "European Commission, guidance on tolerances, December 2012, section 6";

describe("EU label rounding", () => {
  const rows = euTable.flatMap(({ nutrients, ...row }) => nutrients.map((nutrient) => ({ nutrient, ...row })));

  it("has a rule for every nutrient of the table, and no other", () => {
    expect(new Set(rows.map(({ nutrient }) => nutrient))).toEqual(new Set(euLabelNutrients));
  });

  it.each(rows)("follows the table: $nutrient", ({ nutrient, bands, least, below }) => {
    expect(roundForEuLabel(nutrient, 0), euSource).toEqual({ value: 0, below: null });
    if (least !== null)
      for (const share of [0.001, 0.3, 0.999, 1])
        expect(roundForEuLabel(nutrient, least * share), euSource).toEqual({ value: 0, below });
    for (const [at, { from, to }] of bands.entries()) {
      const end = bands[at + 1]?.from ?? from * 3 + 100;
      const values = [0.0001, 0.013, 0.21, 0.35, 0.5, 0.77, 0.9999].map((share) => from + (end - from) * share);
      for (const value of [...(least === from ? [] : [from]), ...values]) {
        const figure = roundForEuLabel(nutrient, value);
        expect(figure?.below, `${value}: ${euSource}`).toBeNull();
        expect(figure?.value, `${value}: ${euSource}`).toBeCloseTo(nearest(value, to), 9);
      }
    }
  });

  it("prints salt for sodium: 400 mg of sodium are 1 g of salt", () => {
    expect(saltOfSodium(400)).toBe(1);
  });
});

// ISO 3166; the EEA Agreement has taken up Regulation (EU) No 1169/2011, and the United Kingdom has kept it.
describe("the scheme of a region", () => {
  it.each([
    ["US", "US"],
    ["US-WA", "US"],
    ["DE", "EU"],
    ["DE-BY", "EU"],
    ["EU", "EU"],
    ["GB", "EU"],
    ["GB-SCT", "EU"],
    ["NO", "EU"],
    ["CA", null],
    ["AU", null],
    ["CH", null],
    ["UM", null],
    [null, null],
  ] as const)("%s is %s", (region, scheme) => expect(labelSchemeOf(region)).toBe(scheme));
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
