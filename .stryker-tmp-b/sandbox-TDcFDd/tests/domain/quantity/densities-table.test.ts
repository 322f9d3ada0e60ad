// @ts-nocheck
import { describe, expect, it } from "vitest";
import { toDimension } from "../../../src/domain/quantity/convert.js";
import { parseAmount } from "../../../src/domain/quantity/parse.js";
import { toNumber } from "../../../src/domain/quantity/rational.js";
import { standardUnit } from "../../../src/domain/quantity/unit.js";
import { density, facts } from "./facts.js";
import { referenceTable, sourceOf } from "./reference-table.js";

const rows = referenceTable("densities");

/** A crystal's own density says nothing about a spoon of it, so such a row is never a food's density. */
const isParticle = (row: Readonly<Record<string, string>>): boolean => row["kind"] === "particle";

const cases = rows.filter((row) => !isParticle(row)).map((row) => [row["density_id"] ?? "", row] as const);

const measured = (text: string) => {
  const amount = parseAmount(text, { locale: "en", measures: "US_CUSTOMARY", own: [], path: [] });
  if (!amount.ok) throw new Error(`${text}: ${JSON.stringify(amount.problems)}`);
  return amount.value;
};

describe("published densities", () => {
  it.each(cases)("%s weighs what the table says", (_, row) => {
    const amount = measured(row["measure"] ?? "");
    const [grams, perMl] = [Number(row["mass_g"]), Number(row["g_per_ml"])];
    const millilitres = toNumber(amount.low) * (standardUnit(amount.unit)?.factor ?? Number.NaN);
    expect(Math.abs(millilitres - Number(row["measure_ml"])), sourceOf(row)).toBeLessThanOrEqual(0.0006);

    const exact = facts([density(grams / millilitres)]);
    const weighed = toDimension(amount, "MASS", exact, null);
    expect(weighed.ok ? weighed.amount.low : null, sourceOf(row)).toBeCloseTo(grams, 9);
    const poured = toDimension(measured(`${row["mass_g"]} g`), "VOLUME", exact, null);
    expect(poured.ok ? poured.amount.low : null, sourceOf(row)).toBeCloseTo(millilitres, 9);

    const printed = toDimension(amount, "MASS", facts([density(perMl)]), null);
    const lastDigit = 0.0005 * millilitres * 1.001;
    expect(Math.abs((printed.ok ? printed.amount.low : Number.NaN) - grams), sourceOf(row)).toBeLessThanOrEqual(
      lastDigit,
    );
  });

  it("leaves out exactly the one row that is a crystal's density", () => {
    const left = rows.filter(isParticle).map((row) => row["density_id"]);
    for (const id of left) console.log(`not a spoon's density: ${id}: density of the crystal, not of the powder`);
    expect(left).toEqual(["infoods-soda"]);
    expect(rows).toHaveLength(cases.length + 1);
  });
});
