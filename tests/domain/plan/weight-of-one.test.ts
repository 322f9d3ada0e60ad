import { describe, expect, it } from "vitest";
import type { MeasureSystem } from "../../../src/domain/model/amount.js";
import type { Food } from "../../../src/domain/model/food.js";
import { noHousehold } from "../../../src/domain/model/household.js";
import type { Line } from "../../../src/domain/model/line.js";
import { checkBundle } from "../../../src/domain/plan/check/check-bundle.js";
import { gramsPutIn } from "../../../src/domain/plan/contents/eaten-grams.js";
import { scalePlan } from "../../../src/domain/plan/scale-plan.js";
import { shop } from "../../../src/domain/plan/shop.js";
import { lineText } from "../../../src/exports/words/line-text.js";
import { nameBook } from "../../../src/exports/words/name-book.js";
import { showFor } from "../../../src/exports/words/shown-amount.js";
import {
  bundle,
  component,
  edible,
  food,
  line,
  meal,
  measured,
  of,
  own,
  part,
  plan,
  swap,
} from "../../kit/builders.js";

const named = (one: string, many: string): Pick<Food, "names"> => ({
  names: [{ language: "en", region: null, one, many, also: [] }],
});
/** A usual potato weighs 213 g (USDA SR 26, NDB 11352, medium), of which 75 % are eaten. */
const potato = food("potato", {
  ...named("potato", "potatoes"),
  measures: [own("piece", { grams: 213, pieces: 1 })],
  edible: [edible(0.75)],
});
const yam = food("yam", { ...named("yam", "yams"), measures: [own("piece", { grams: 400, pieces: 1 })] });

const four = (each: string, facts: Partial<Line> = {}): Line =>
  line("4 piece", "potato", { each: measured(each), ...facts });

function scaled(of: Line, foods: readonly Food[], servings = 1, household = noHousehold) {
  const whole = bundle([meal("supper", [of])], [], foods);
  const found = scalePlan(whole, servings, household);
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  const list = shop([found.value], household);
  return { whole, line: found.value.meals[0]!.lines[0]!, bought: list.lines[0]! };
}

describe("so many, each of a weight", () => {
  it.each([1, 7, 40])("weigh count times weight, whatever one usually weighs: for %i", (servings) => {
    const { line: found, bought } = scaled(four("170 g"), [potato], servings);
    expect(found.amount).toEqual({ dimension: "MASS", low: 680 * servings, high: 680 * servings });
    expect(found.inUnit).toEqual({ low: 4 * servings, high: 4 * servings, unit: "piece" });
    expect(bought.need).toEqual({ dimension: "MASS", low: 680 * servings, high: 680 * servings });
    // Nutrition counts the edible share of what was bought.
    expect(gramsPutIn(found, potato, null)).toEqual({ low: 510 * servings, high: 510 * servings });
  });

  it("stay whole pieces on the list where the food is bought by the piece", () => {
    const { bought, line: found } = scaled(four("170 g"), [{ ...potato, shoppedBy: "COUNT" }], 2);
    expect(bought.need).toEqual({ dimension: "COUNT", low: 8, high: 8 });
    expect(found.amount?.high).toBe(1360);
  });

  it("need no usual weight, and multiply ranges at both ends", () => {
    const bare = food("potato", named("potato", "potatoes"));
    expect(scaled(four("170-200 g"), [bare]).bought.need).toEqual({ dimension: "MASS", low: 680, high: 800 });
  });

  it("are read with both, in the reader's measures", () => {
    const read = (of: Line, servings: number, measures: MeasureSystem | null): string => {
      const household = { ...noHousehold, measures };
      const { whole, line: found } = scaled(of, [potato], servings, household);
      return lineText(found, nameBook(whole, showFor(household, whole.plan)));
    };
    expect(read(four("6 oz"), 2, "US_CUSTOMARY")).toBe("8 potatoes (6 oz each)");
    expect(read(four("170 g", { preparation: "peeled" }), 2, null)).toBe("8 potatoes (170 g each), peeled");
    expect(read(four("170 g"), 10, "US_CUSTOMARY")).toBe("40 potatoes (6 oz each)");
    expect(read(four("6 oz"), 1, "METRIC")).toBe("4 potatoes (170 g each)");
  });

  it.each([
    ["de", "700 g", "700 g Kartoffeln"],
    ["de", "200 g", "200 g Kartoffel"],
    ["fr", "700 g", "700 g pommes de terre"],
    ["en", "700 g", "700 g potato"],
  ])("are several by weight too, where the language says so: %s, %s", (locale, amount, text) => {
    const names = [
      { language: "de", region: null, one: "Kartoffel", many: "Kartoffeln", also: [] },
      { language: "fr", region: null, one: "pomme de terre", many: "pommes de terre", also: [] },
      { language: "en", region: null, one: "potato", many: "potatoes", also: [] },
    ];
    const household = { ...noHousehold, locale };
    const { line: found, whole } = scaled(line(amount, "potato"), [{ ...potato, names }], 1, household);
    expect(lineText(found, nameBook(whole, showFor(household, whole.plan)))).toBe(text);
  });

  it("are swapped by weight, for one of another food weighs something else", () => {
    const swapped = { ...noHousehold, swaps: [{ from: "potato", to: "yam" }] };
    const { line: found, whole } = scaled(four("170 g", { swaps: [swap("yam")] }), [potato, yam], 1, swapped);
    expect(found.amount).toEqual({ dimension: "MASS", low: 680, high: 680 });
    expect(lineText(found, nameBook(whole, showFor(swapped, whole.plan)))).toBe("680 g yam, in place of potato");
  });

  it.each([
    ["what is not counted", line("400 g", "potato", { each: measured("170 g") })],
    ["a volume", four("170 ml")],
    ["a part", line("2 piece", of("potato", "peel"), { each: measured("20 g") })],
    ["a component", line("2 batch", { kind: "COMPONENT", component: "mash" }, { each: measured("20 g") })],
    ["nothing", four("0 g")],
    ["to taste", line(null, "potato", { each: measured("170 g") })],
  ])("are refused of %s, at their place", (_, bad) => {
    const foods = [{ ...potato, parts: [part("peel", "20 g")] }];
    const whole = bundle(plan([meal("supper", [bad])]), [component("mash", "1 kg", [line("1 kg", "potato")])], foods);
    const problems = checkBundle(whole);
    expect(problems).toContainEqual(expect.objectContaining({ path: expect.arrayContaining(["each"]) }));
  });
});
