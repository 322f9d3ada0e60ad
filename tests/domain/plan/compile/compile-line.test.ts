import { describe, expect, it } from "vitest";
import type { Food } from "../../../../src/domain/model/food.js";
import type { Line } from "../../../../src/domain/model/line.js";
import { compileLine } from "../../../../src/domain/plan/compile/compile-line.js";
import { lineContext } from "../../../../src/domain/plan/compile/line-context.js";
import {
  bundle,
  component,
  density,
  edible,
  food,
  line,
  made,
  meal,
  of,
  own,
  part,
  swap,
} from "../../../kit/builders.js";

const path = ["meals", "m", "lines", "l1"];
const dal = component("dal", "5-6 us-cup", [line("1 lb", "lentils")], { densities: [density(1.05)] });

function compiled(what: Line, foods: readonly Food[] = []) {
  const context = lineContext(bundle([meal("m", [what])], [dal], foods));
  const result = compileLine(what, what.swaps[0] ?? null, path, context);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  const { line: found, warnings } = result.value;
  const { item, component: index, dimension, low, high, written, need } = found;
  const bought = need === null ? null : [need.food.slug, need.part, need.dimension, need.low, need.high];
  return { item, index, dimension, low, high, written, bought, codes: warnings.map(({ code }) => code) };
}

describe("a line on a food", () => {
  it("keeps the writer's numbers beside base units and what to buy", () => {
    const oil = food("oil", { shoppedBy: "VOLUME", densities: [density(0.92)] });
    expect(compiled(line("46-92 g", "oil"), [oil])).toEqual({
      item: of("oil"),
      index: -1,
      dimension: "MASS",
      low: 46,
      high: 92,
      written: { low: 46, high: 92, unit: "g" },
      bought: ["oil", null, "VOLUME", 50, 100],
      codes: [],
    });
  });

  it("to taste is on the list without an amount", () => {
    expect(compiled(line(null, of("lemon", "zest")), [food("lemon", { parts: [part("zest", "6 g")] })])).toMatchObject({
      dimension: null,
      low: 0,
      high: 0,
      written: null,
      bought: ["lemon", "zest", null, 0, 0],
    });
  });

  it("says what cannot be combined, counted or trimmed, and is bought all the same", () => {
    const lemon = food("lemon", { parts: [part("juice", "48 g")] });
    expect(compiled(line("1 us-cup", "salt"))).toMatchObject({
      codes: ["NOT_COMBINED"],
      bought: ["salt", null, "VOLUME", 236.5882365, 236.5882365],
    });
    expect(compiled(line("1 us-cup", of("lemon", "juice")), [lemon])).toMatchObject({
      codes: ["PART_NOT_COUNTED"],
      bought: ["lemon", "juice", null, 0, 0],
    });
    expect(compiled(line("100 g", "leek", { measured: "READY" }))).toMatchObject({
      codes: ["EDIBLE_PORTION_UNKNOWN"],
      bought: ["leek", null, "MASS", 100, 100],
    });
  });
});

describe("a line with a swap", () => {
  it("takes the ratio in the writer's own unit where that is a standard one, exactly", () => {
    const rye = food("rye", { densities: [density(0.5)], edible: [edible(0.8)] });
    const swapped = compiled(line("1/3 us-cup", "wheat", { swaps: [swap("rye", "3/4")], measured: "READY" }), [rye]);
    expect(swapped).toMatchObject({ item: of("rye"), written: { low: 0.25, high: 0.25, unit: "us-cup" }, codes: [] });
    expect(swapped.bought?.[3]).toBeCloseTo((0.25 * 236.5882365 * 0.5) / 0.8, 9);
  });

  it("goes by mass where only the first food knows the measure", () => {
    const garlic = food("garlic", { shoppedBy: "COUNT", measures: [own("clove", { grams: 4, pieces: 0.1 })] });
    expect(compiled(line("2-3 own:clove", "garlic", { swaps: [swap("powder", "1/8")] }), [garlic])).toMatchObject({
      item: of("powder"),
      dimension: "MASS",
      low: 1,
      high: 1.5,
      written: null,
      bought: ["powder", null, "MASS", 1, 1.5],
    });
  });

  it("weighs a part by the density of the part", () => {
    const lemon = food("lemon", {
      densities: [density(0.6), density(1.03, "juice")],
      measures: [own("squeeze", { millilitres: 5 })],
      parts: [part("juice", "48 g")],
    });
    const squeeze = line("2 own:squeeze", of("lemon", "juice"), { swaps: [swap("vinegar", "1/2")] });
    expect(compiled(squeeze, [lemon])).toMatchObject({ item: of("vinegar"), dimension: "MASS" });
    expect(compiled(squeeze, [lemon]).low).toBeCloseTo(10 * 1.03 * 0.5, 9);
  });

  it("to taste stays to taste, and takes the whole of the other food", () => {
    const lemon = food("lemon", { parts: [part("zest", "6 g")] });
    expect(compiled(line(null, of("lemon", "zest"), { swaps: [swap("sumac")] }), [lemon])).toMatchObject({
      item: of("sumac"),
      bought: ["sumac", null, null, 0, 0],
    });
  });
});

describe("a line on a component", () => {
  it("is in the dimension of the yield; a batch counts on the least it gives", () => {
    expect(compiled(line("1/2 batch", made("dal")))).toEqual({
      item: made("dal"),
      index: 0,
      dimension: "VOLUME",
      low: 2.5 * 236.5882365,
      high: 2.5 * 236.5882365,
      written: { low: 0.5, high: 0.5, unit: "batch" },
      bought: null,
      codes: [],
    });
    expect(compiled(line("105-210 g", made("dal")))).toMatchObject({ dimension: "VOLUME", low: 100, high: 200 });
    expect(compiled(line(null, made("dal")))).toMatchObject({
      index: 0,
      dimension: null,
      low: 0,
      high: 0,
      written: null,
    });
  });
});
