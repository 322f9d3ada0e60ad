import { Fraction } from "fraction.js";
import { describe, expect, it } from "vitest";
import { standardUnit, standardUnits } from "../../../src/domain/quantity/unit.js";
import { referenceTable, sourceOf } from "./reference-table.js";

const rows = referenceTable("units");

/** Rows of the table that are no unit of amount, and why. */
const notUnits: Readonly<Record<string, string>> = {
  "metric-cup-third": "printed as 80 ml; a third of 250 is 83.33, and three of them make a cup",
  "metric-cup-quarter": "printed as 60 ml; a quarter of 250 is 62.5",
  "egg-large-us": "a food's own piece, not a unit",
  "can-no10-range": "a range of net weights that depends on the product",
  "temp-f-to-c": "a temperature",
  "temp-c-to-f": "a temperature",
  "fan-oven": "a temperature difference",
  "water-density": "a density; see the densities table",
  calorie: "an energy",
};

const isGasMark = (id: string): boolean => id.startsWith("gas-");

/** The table's ids differ from ours for imperial units only. */
const ourId = (id: string): string => id.replace(/^uk-/, "imp-");

/** Rows that restate one of our units, as so many of it. */
const restated: Readonly<Record<string, readonly [id: string, count: string]>> = {
  "metric-cup-half": ["metric-cup", "1/2"],
  "ucum-cup-us": ["us-cup", "1"],
  "nist-kitchen-tsp": ["us-tsp", "1"],
  "nist-kitchen-tbsp": ["us-tbsp", "1"],
  "nist-kitchen-floz": ["us-floz", "1"],
  "nist-kitchen-quarter-cup": ["us-cup", "1/4"],
  "nist-kitchen-half-cup": ["us-cup", "1/2"],
  "nist-kitchen-cup": ["us-cup", "1"],
  "nist-kitchen-pint": ["us-pint", "1"],
  "nist-kitchen-quart": ["us-quart", "1"],
};

const inBase = (value: string, unit: string): Fraction => new Fraction(value).mul(unit === "L" ? 1000 : 1);

const isComputed = (id: string): boolean => !(id in notUnits) && !isGasMark(id);

const cases = rows
  .filter(({ unit_id }) => isComputed(unit_id ?? ""))
  .map((row) => [row["unit_id"] ?? "", row] as const);

describe("units of the published tables", () => {
  it.each(cases)("%s is as published", (id, row) => {
    const [ours, count] = restated[id] ?? [ourId(id), "1"];
    const unit = standardUnit(ours);
    expect(unit, `${ours} is not in the registry; ${sourceOf(row)}`).not.toBeNull();
    const computed = new Fraction(unit?.exact ?? "0").mul(new Fraction(count));
    const published = inBase(row["value"] ?? "", row["si_unit"] ?? "");
    if (row["exact"] === "yes") {
      expect(computed.toFraction(), sourceOf(row)).toBe(published.toFraction());
      return;
    }
    const decimals = (row["value"] ?? "").split(".")[1]?.length ?? 0;
    const lastDigit = (row["si_unit"] === "L" ? 1000 : 1) * 10 ** -decimals;
    expect(Math.abs(computed.sub(published).valueOf()), sourceOf(row)).toBeLessThanOrEqual(lastDigit / 2 + 1e-9);
  });

  it("leaves out exactly these rows, because they are no units of amount", () => {
    const left = rows.map(({ unit_id }) => unit_id ?? "").filter((id) => !isComputed(id));
    const gasMarks = rows.map(({ unit_id }) => unit_id ?? "").filter(isGasMark);
    expect(left).toEqual(expect.arrayContaining([...Object.keys(notUnits), ...gasMarks]));
    expect(left).toHaveLength(Object.keys(notUnits).length + gasMarks.length);
    expect(gasMarks).toHaveLength(12);
    for (const id of left) console.log(`not a unit of amount: ${id}: ${notUnits[id] ?? "an oven temperature"}`);
  });

  it("shows why printed thirds and quarters of the metric cup are no units: they do not add up to a cup", () => {
    const printed = (id: string): number => Number(rows.find((row) => row["unit_id"] === id)?.["value"]);
    expect(3 * printed("metric-cup-third")).toBe(240);
    expect(4 * printed("metric-cup-quarter")).toBe(240);
    expect(standardUnit("metric-cup")?.factor).toBe(250);
  });
});

describe("the registry", () => {
  const exact = (id: string): Fraction => new Fraction(standardUnit(id)?.exact ?? "0");

  it("derives the US gallon from 231 cubic inches of 2.54 cm (NIST Handbook 44, appendix C)", () => {
    expect(exact("us-gallon").toFraction()).toBe(new Fraction("2.54").pow(3)?.mul(231).toFraction());
  });

  it.each([
    ["us-gallon", "us-quart", 4],
    ["us-quart", "us-pint", 2],
    ["us-pint", "us-cup", 2],
    ["us-cup", "us-gill", 2],
    ["us-cup", "us-floz", 8],
    ["us-cup", "us-tbsp", 16],
    ["us-cup", "us-tsp", 48],
    ["us-floz", "us-tbsp", 2],
    ["us-floz", "us-fluid-dram", 8],
    ["us-tbsp", "us-tsp", 3],
    ["us-dry-quart", "us-dry-pint", 2],
    ["us-bushel", "us-dry-quart", 32],
    ["imp-gallon", "imp-quart", 4],
    ["imp-quart", "imp-pint", 2],
    ["imp-pint", "imp-gill", 4],
    ["imp-pint", "imp-floz", 20],
    ["au-tbsp", "metric-tsp", 4],
    ["metric-tbsp", "metric-tsp", 3],
    ["us-quart", "scoop-8", 8],
    ["ladle-8", "us-floz", 8],
    ["lb", "oz", 16],
    ["stone", "lb", 14],
    ["metric-pound", "g", 500],
    ["dag", "g", 10],
    ["g", "mg", 1000],
    ["kg", "g", 1000],
    ["l", "dl", 10],
    ["dl", "cl", 10],
    ["cl", "ml", 10],
    ["dozen", "piece", 12],
  ])("one %s is %s, exactly %i times", (large, small, times) => {
    expect(exact(large).div(exact(small)).toFraction()).toBe(String(times));
    expect(standardUnit(large)?.dimension).toBe(standardUnit(small)?.dimension);
  });

  it("O-10: tells the dry pint from the liquid one by 1.1636", () => {
    expect(exact("us-dry-pint").div(exact("us-pint")).valueOf()).toBeCloseTo(1.1636, 4);
  });

  it("holds doubles that are the nearest to the exact values", () => {
    for (const { exact: text, factor } of standardUnits.values()) expect(factor).toBe(new Fraction(text).valueOf());
  });

  it("weighs, counts or pours: all that is not a weight, a count or a batch is a volume", () => {
    const weights = ["g", "kg", "mg", "dag", "oz", "lb", "stone", "metric-pound", "label-oz", "stick-butter"];
    const others = new Map([
      ...weights.map((id) => [id, "MASS"] as const),
      ["piece", "COUNT"],
      ["dozen", "COUNT"],
      ["batch", "BATCH"],
    ]);
    for (const { id, dimension } of standardUnits.values()) expect(dimension, id).toBe(others.get(id) ?? "VOLUME");
  });

  it("knows no unit that is not in it", () => {
    expect(standardUnit("own:clove")).toBeNull();
    expect(standardUnit("cup")).toBeNull();
    expect(standardUnit("batch")?.dimension).toBe("BATCH");
  });
});
