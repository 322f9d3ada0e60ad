import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readDocuments } from "../../../src/imports/documents/read-documents.js";
import { resolveDocuments } from "../../../src/imports/documents/resolve-documents.js";

const read = ({ time = "5 min", celsius = "180", days = "3", amount = "1 g", measures = "" }) => {
  const text = `kind: food
slug: barley
names: { en: barley }
aisle: dry-goods
shopped-by: mass
measures: [{ name: tin, grams: 240, source: writer }, { name: scoop, one: scoop, many: scoops, grams: 60, source: writer }${measures}]
---
kind: component
slug: pot
title: Pot
lines: [{ food: barley, amount: ${amount} }]
yield: { amount: 1 kg }
steps: [{ do: Boil., time: ${time}, celsius: ${celsius} }]
keeping: [{ place: fridge, days: ${days}, source: writer }]
`;
  const documents = readDocuments(text, "pot.yaml");
  const resolved = resolveDocuments(documents.documents, { foods: [], components: [] });
  const problems = [...documents.problems, ...resolved.problems].map(({ problem, line }) => ({ line, problem }));
  return { component: resolved.components[0]?.value, problems };
};

describe("figures as one writes them", () => {
  // Fixed points of the two scales (water boils at 212 °F, 100 °C), and (F - 32) x 5/9: NIST Special Publication 811 (2008), appendix B.9.
  it.each([
    ["212 F", 100],
    ["400 F", 204.44],
    ["350 °F", 176.67],
    ["-4 f", -20],
    ["200 C", 200],
    ["200 °C", 200],
    ["180", 180],
  ])("a temperature of %s is %s degrees Celsius", (celsius, meant) => {
    expect(read({ celsius })).toMatchObject({ problems: [], component: { steps: [{ temperatureC: meant }] } });
  });

  it.each([
    ["15 s", 0.25],
    ["90 sec", 1.5],
    ["1 min 30 s", 1.5],
    ["1 h 30 min", 90],
    ["45", 45],
  ])("a time of %s is %s minutes", (time, meant) => {
    expect(read({ time })).toMatchObject({ problems: [], component: { steps: [{ minutes: meant }] } });
  });

  it.each([
    ["3-5", 3],
    ["3 to 5 days", 3],
    ["3–4", 3],
    ["4 days", 4],
    ["1 day", 1],
    ["2.5", 2.5],
  ])("keeping of %s is %s days", (days, meant) => {
    expect(read({ days })).toMatchObject({ problems: [], component: { keeping: [{ days: meant }] } });
  });

  it("keeps the shorter of any range of days", () => {
    fc.assert(
      fc.property(fc.nat(300), fc.nat(300), (from, more) => {
        const { component } = read({ days: `${String(from)}-${String(from + more)}` });
        expect(component?.keeping[0]?.days).toBe(from);
      }),
      { numRuns: 40 },
    );
  });

  it.each([
    ["2 tins", "own:tin"],
    ["2 cans", "own:tin"],
    ["2 scoops", "own:scoop"],
  ])("an amount of %s counts the food's own measure", (amount, unit) => {
    expect(read({ amount })).toMatchObject({ problems: [], component: { lines: [{ amount: { low: "2", unit } }] } });
  });

  it("does not choose between a can and a tin where a food has both", () => {
    const can = ", { name: can, grams: 300, source: writer }";
    expect(read({ amount: "2 cans", measures: can })).toMatchObject({
      problems: [],
      component: { lines: [{ amount: { unit: "own:can" } }] },
    });
  });

  it.each([
    [{ celsius: "400 K" }, 13, "degrees Celsius, or text such as 200 C or 400 F"],
    [{ celsius: "900 F" }, 13, "at most 400"],
    [{ time: "15 x" }, 13, "minutes, or text such as 1 h 30 min"],
    [{ days: "5-3" }, 14, "days, or a range such as 3-5 with the shorter first"],
    [{ days: "some" }, 14, "days, or a range such as 3-5 with the shorter first"],
  ])("is refused at its place where it is none: %o", (written, line, expected) => {
    expect(read(written).problems).toMatchObject([{ line, problem: { code: "BAD_SHAPE", expected } }]);
  });
});
