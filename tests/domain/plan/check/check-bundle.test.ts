import { describe, expect, it } from "vitest";
import type { Measured } from "../../../../src/domain/model/amount.js";
import type { Food } from "../../../../src/domain/model/food.js";
import type { Line } from "../../../../src/domain/model/line.js";
import type { PlanBundle } from "../../../../src/domain/model/plan.js";
import { limits } from "../../../../src/domain/engine-limits.js";
import { checkBundle } from "../../../../src/domain/plan/check/check-bundle.js";
import { scalePlan } from "../../../../src/domain/plan/scale-plan.js";
import type { Problem } from "../../../../src/domain/problem.js";
import {
  bundle,
  component,
  density,
  edible,
  food,
  household,
  line,
  made,
  meal,
  of,
  own,
  pack,
  part,
  plan,
  route,
  step,
  swap,
} from "../../../kit/builders.js";

const at = ["meals", "lunch", "lines", "l1"];
const problemsOf = (lines: readonly Line[], foods: readonly Food[] = []): readonly Problem[] =>
  checkBundle(bundle([meal("lunch", lines)], [], foods));
const withFood = (slug: string, facts: Partial<Food>): readonly Problem[] =>
  problemsOf([line("100 g", slug)], [food(slug, facts)]);
const dal = (facts: Parameters<typeof component>[3]): readonly Problem[] =>
  checkBundle(bundle([meal("lunch", [line("1 batch", made("dal"))])], [component("dal", "600 g", [], facts)]));
const amountOf = (low: string, high: string, unit: string): Measured => ({ low, high, unit });

describe("a sound plan", () => {
  it("has no problems, and the answer is remembered with it", () => {
    const sound = bundle(
      [meal("lunch", [line("1 batch", made("dal")), line(null, "salt")])],
      [component("dal", "600 g", [line("200 g", "lentils")])],
    );
    expect(checkBundle(sound)).toEqual([]);
    expect(checkBundle(sound)).toBe(checkBundle(sound));
  });
});

describe("names that stand for nothing", () => {
  it("names the food and the line, also of a swap", () => {
    const nobody: PlanBundle = { ...bundle([meal("lunch", [line("1 g", "ghost")])]), foods: [] };
    expect(checkBundle(nobody)).toEqual([{ code: "UNKNOWN_FOOD", path: at, food: "ghost" }]);
    const swapped = bundle([meal("lunch", [line("1 g", "oats", { swaps: [swap("ghost")] })])]);
    const withoutGhost = { ...swapped, foods: swapped.foods.filter(({ slug }) => slug !== "ghost") };
    expect(checkBundle(withoutGhost)).toEqual([
      { code: "UNKNOWN_FOOD", path: [...at, "swaps", "ghost"], food: "ghost" },
    ]);
  });

  it("names the component and the line, also inside a route", () => {
    expect(problemsOf([line("1 batch", made("ghost"))])).toEqual([
      { code: "UNKNOWN_COMPONENT", path: at, component: "ghost" },
    ]);
    expect(dal({ routes: [route("bought", [line("1 batch", made("ghost"))])] })).toEqual([
      {
        code: "UNKNOWN_COMPONENT",
        path: ["components", "dal", "routes", "bought", "lines", "l1"],
        component: "ghost",
      },
    ]);
  });

  it("says which parts a food has", () => {
    const lemon = food("lemon", { parts: [part("juice", "48 g"), part("zest", "6 g")] });
    expect(problemsOf([line("1 g", of("lemon", "pith"))], [lemon])).toEqual([
      { code: "UNKNOWN_PART", path: at, food: "lemon", part: "pith", known: ["juice", "zest"] },
    ]);
  });
});

describe("units and amounts", () => {
  it("offers the nearest units for one that nobody knows, in a line, a yield, a part and a pack", () => {
    expect(problemsOf([line("1 us-cpu", "flour")])).toEqual([
      { code: "UNKNOWN_UNIT", path: at, unit: "us-cpu", nearest: expect.arrayContaining(["us-cup"]) as string[] },
    ]);
    const unknown = (path: readonly string[]) =>
      expect.objectContaining({ code: "UNKNOWN_UNIT", path, unit: "gg" }) as Problem;
    expect(dal({ yield: { amount: amountOf("1", "1", "gg"), source: pack("1 g", null).source } })).toEqual([
      unknown(["components", "dal", "yield"]),
    ]);
    expect(withFood("lemon", { parts: [part("juice", "1 gg")] })).toEqual([
      unknown(["foods", "lemon", "parts", "juice"]),
    ]);
    expect(withFood("flour", { packs: [pack("1 gg", "1.00", { id: "bag" })] })).toEqual([
      unknown(["foods", "flour", "packs", "bag"]),
    ]);
  });

  it("asks for a measure that the food does not have", () => {
    expect(problemsOf([line("2 own:clove", "garlic")])).toEqual([
      {
        code: "NOT_CONVERTIBLE",
        path: at,
        item: "garlic",
        from: "own:clove",
        to: "MASS",
        missing: "OWN_MEASURE:clove",
      },
    ]);
  });

  it("names the fact that keeps a demand from being compared with the yield of its component", () => {
    const inCups = (facts: Parameters<typeof component>[3]) =>
      checkBundle(bundle([meal("lunch", [line("2 us-cup", made("dal"))])], [component("dal", "600 g", [], facts)]));
    expect(inCups({})).toEqual([
      { code: "NOT_CONVERTIBLE", path: at, item: "dal", from: "us-cup", to: "g", missing: "DENSITY" },
    ]);
    expect(inCups({ densities: [density(1.05)] })).toEqual([]);
  });

  it("knows no batch of a food, and no yield in batches", () => {
    expect(problemsOf([line("1 batch", "flour")])).toEqual([
      { code: "BAD_AMOUNT", path: at, written: "1 batch flour", why: "BATCH_OF_A_FOOD" },
    ]);
    expect(dal({ yield: { amount: amountOf("1", "1", "batch"), source: pack("1 g", null).source } })).toEqual([
      {
        code: "NOT_CONVERTIBLE",
        path: ["components", "dal", "yield"],
        item: "dal",
        from: "batch",
        to: "g, ml or pieces",
        missing: "YIELD_OF_ONE_BATCH",
      },
    ]);
  });

  it.each(["1/0", "-1", "1.5", "NaN", "Infinity", "1e308", "", "9".repeat(400), "01"])(
    "refuses %s as a number",
    (low) => {
      const [problem, ...more] = problemsOf([{ ...line("1 g", "flour"), amount: amountOf(low, low, "g") }]);
      expect(more).toEqual([]);
      expect(problem).toMatchObject({ code: "BAD_AMOUNT", path: at, why: "NOT_A_NUMBER" });
    },
  );

  it("refuses more than the largest amount, a range upside down, and a yield of nothing", () => {
    expect(problemsOf([line("1000000001 g", "flour")])).toEqual([
      { code: "AMOUNT_OUT_OF_RANGE", path: at, value: "1000000001", min: 0, max: limits.amount },
    ]);
    expect(problemsOf([line("1000000000 g", "flour")])).toEqual([]);
    expect(problemsOf([line("3-2 g", "flour")])).toEqual([
      { code: "BAD_AMOUNT", path: at, written: "3-2", why: "RANGE_UPSIDE_DOWN" },
    ]);
    expect(dal({ yield: { amount: amountOf("0", "1", "g"), source: pack("1 g", null).source } })).toMatchObject([
      { code: "AMOUNT_OUT_OF_RANGE", path: ["components", "dal", "yield"], value: "0" },
    ]);
  });

  it("refuses a ratio of a swap that cannot be reckoned with", () => {
    const eaten = (text: string) => problemsOf([line("1 g", "oats", { eaten: text })]);
    expect([eaten("0"), eaten("2/5"), eaten("1")]).toEqual([[], [], []]);
    expect(eaten("0.4")).toMatchObject([{ code: "BAD_AMOUNT", path: [...at, "eaten"] }]);
    expect(eaten("7/5")).toMatchObject([{ code: "AMOUNT_OUT_OF_RANGE", path: [...at, "eaten"], max: 1 }]);
    const ratio = (text: string) => problemsOf([line("1/3 g", "oats", { swaps: [swap("rye", text)] })]);
    expect(ratio("one")).toMatchObject([{ code: "BAD_AMOUNT", path: [...at, "swaps", "rye"], why: "NOT_A_NUMBER" }]);
    expect(ratio("1/9007199254740991")).toMatchObject([
      { code: "BAD_AMOUNT", path: [...at, "swaps", "rye"], why: "RATIO_TOO_FINE" },
    ]);
    expect(ratio("3/4")).toEqual([]);
  });

  it("asks for the weight of an own measure before another food can stand in for it", () => {
    const garlic = (grams: number | null) =>
      problemsOf(
        [line("2 own:clove", "garlic", { swaps: [swap("powder", "1/8")] })],
        [food("garlic", { shoppedBy: "COUNT", measures: [own("clove", { grams, pieces: 0.1 })] })],
      );
    expect(garlic(null)).toEqual([
      {
        code: "NOT_CONVERTIBLE",
        path: [...at, "swaps", "powder"],
        item: "powder",
        from: "own:clove",
        to: "g",
        missing: "GRAMS_OF_ONE_PIECE",
      },
    ]);
    expect(garlic(5)).toEqual([]);
  });
});

describe("rules", () => {
  const shape = (facts: Partial<Line>, amount: string | null = "1 g") => problemsOf([line(amount, "salt", facts)]);
  it("has an amount exactly where the rule is not to taste", () => {
    expect(shape({ rule: "TO_TASTE" })).toEqual([
      { code: "BAD_SHAPE", path: at, expected: "no amount with TO_TASTE", got: "an amount" },
    ]);
    expect(shape({ rule: "PROPORTIONAL" }, null)).toEqual([
      { code: "BAD_SHAPE", path: at, expected: "an amount with PROPORTIONAL, or TO_TASTE", got: "no amount" },
    ]);
    expect(shape({}, null)).toEqual([]);
  });

  it.each([null, 0, -1, 1.01, Number.NaN, Infinity])("refuses POWER with the exponent %s", (exponent) => {
    expect(shape({ rule: "POWER", exponent })).toMatchObject([{ code: "BAD_SHAPE", path: at, got: String(exponent) }]);
  });

  it("has an exponent only with POWER, above 0 and up to 1", () => {
    expect(shape({ rule: "POWER", exponent: 1 })).toEqual([]);
    expect(shape({ rule: "POWER", exponent: 0.001 })).toEqual([]);
    expect(shape({ exponent: 0.5 })).toEqual([
      { code: "BAD_SHAPE", path: at, expected: "no exponent with PROPORTIONAL", got: "0.5" },
    ]);
  });

  it("asks for batch sizes that exist", () => {
    const rule = (min: string, max: string | null, increment: string | null) => dal({ batch: { min, max, increment } });
    expect(rule("1/2", "2", "1/2")).toEqual([]);
    expect(rule("1", "1", null)).toEqual([]);
    expect(rule("0", "1", "1")).toEqual([]);
    const nothingFits = (min: string, max: string): Problem => ({
      code: "BAD_SHAPE",
      path: ["components", "dal", "batch"],
      expected: "a largest size that at least one batch size fits in",
      got: `min ${min}, max ${max}`,
    });
    expect(rule("2", "1", null)).toEqual([nothingFits("2", "1")]);
    expect(rule("0", "1/2", "1")).toEqual([nothingFits("0", "1/2")]);
    expect(rule("one", null, null)).toMatchObject([
      { code: "BAD_AMOUNT", path: ["components", "dal", "batch", "min"] },
    ]);
    expect(rule("0", "0", null)).toMatchObject([
      { code: "AMOUNT_OUT_OF_RANGE", path: ["components", "dal", "batch", "max"] },
    ]);
    expect(rule("0", null, "0")).toMatchObject([
      { code: "AMOUNT_OUT_OF_RANGE", path: ["components", "dal", "batch", "increment"] },
    ]);
  });
});

describe("components", () => {
  it("names every step of a circle", () => {
    const round = bundle(
      [meal("lunch", [line("1 batch", made("a"))])],
      [
        component("a", "1 kg", [line("1 batch", made("b"))]),
        component("b", "1 kg", [line("1 batch", made("c"))]),
        component("c", "1 kg", [line("1 batch", made("a"))]),
      ],
    );
    expect(checkBundle(round)).toEqual([
      { code: "COMPONENT_CYCLE", path: ["components", "a"], cycle: ["a", "b", "c", "a"] },
    ]);
    expect(scalePlan(round, 2, household())).toEqual({ ok: false, problems: checkBundle(round) });
  });

  it("names two circles, one of them only on a route, and none where a component is reached twice", () => {
    const two = bundle(
      [meal("lunch", [line("1 batch", made("a")), line("1 batch", made("d"))])],
      [
        component("a", "1 kg", [line("1 batch", made("b"))], {
          routes: [route("other", [line("1 batch", made("a"))])],
        }),
        component("b", "1 kg", [line("1 batch", made("a"))]),
        component("d", "1 kg", [line("1 batch", made("b"))]),
      ],
    );
    const cycles = checkBundle(two).flatMap((problem) => (problem.code === "COMPONENT_CYCLE" ? [problem.cycle] : []));
    expect(cycles.map((each) => each.join(" ")).toSorted()).toEqual(["a a", "a b a"]);
    const diamond = bundle(
      [meal("lunch", [line("1 batch", made("top"))])],
      [
        component("top", "1 kg", [line("1 batch", made("left")), line("1 batch", made("right"))]),
        component("left", "1 kg", [line("1 batch", made("base"))]),
        component("right", "1 kg", [line("1 batch", made("base"))]),
        component("base", "1 kg", [line("1 kg", "flour")]),
      ],
    );
    expect(checkBundle(diamond)).toEqual([]);
  });

  it("names a component that no meal leads to", () => {
    const sound = bundle([meal("lunch", [line("1 g", "flour")])]);
    expect(checkBundle({ ...sound, components: [component("idle", "1 kg", [])] })).toEqual([
      { code: "COMPONENT_NOT_REACHED", path: ["components", "idle"], component: "idle" },
    ]);
  });
});

describe("what stands twice", () => {
  it("names it where it stands", () => {
    const twice = { path: expect.anything() as readonly string[], code: "DUPLICATE" };
    expect(problemsOf([line("1 g", "flour", { id: "x" }), line("2 g", "flour", { id: "x" })])).toEqual([
      { ...twice, path: ["meals", "lunch", "lines", "x"], value: "x" },
    ]);
    expect(checkBundle(bundle([meal("lunch", []), meal("lunch", [])]))).toEqual([
      { ...twice, path: ["meals", "lunch"], value: "lunch" },
    ]);
    const sound = bundle(
      [meal("lunch", [line("1 batch", made("dal"))])],
      [component("dal", "1 kg", [line("1 g", "x")])],
    );
    expect(checkBundle({ ...sound, foods: [food("x"), food("x")] })).toEqual([
      { ...twice, path: ["foods", "x"], value: "x" },
    ]);
    const [first] = sound.components;
    if (first === undefined) throw new Error("no dal");
    expect(checkBundle({ ...sound, components: [first, first] })).toContainEqual({
      ...twice,
      path: ["components", "dal"],
      value: "dal",
    });
    expect(dal({ routes: [route("bought", []), route("bought", [])] })).toEqual([
      { ...twice, path: ["components", "dal", "routes", "bought"], value: "bought" },
    ]);
    expect(dal({ steps: [step("boil", 5), step("boil", 6)] })).toEqual([
      { ...twice, path: ["components", "dal", "steps", "boil"], value: "boil" },
    ]);
    expect(
      withFood("flour", { packs: [pack("1 kg", "1.00", { id: "bag" }), pack("2 kg", "1.00", { id: "bag" })] }),
    ).toEqual([{ ...twice, path: ["foods", "flour", "packs", "bag"], value: "bag" }]);
    expect(withFood("flour", { measures: [own("cup", { grams: 1 }), own("cup", { grams: 2 })] })).toEqual([
      { ...twice, path: ["foods", "flour", "measures", "cup"], value: "cup" },
    ]);
    expect(withFood("lemon", { parts: [part("juice", "1 g"), part("juice", "2 g")] })).toEqual([
      { ...twice, path: ["foods", "lemon", "parts", "juice"], value: "juice" },
    ]);
  });
});

describe("facts of foods", () => {
  const outOfRange = (path: readonly (string | number)[]) =>
    expect.objectContaining({ code: "AMOUNT_OUT_OF_RANGE", path }) as Problem;

  it.each([0, -1, Number.NaN, Infinity, 1e-300, 1e300])(
    "refuses %s as a density, a measure, a trimming or a yield",
    (value) => {
      expect(withFood("flour", { densities: [density(value)] })).toEqual([
        outOfRange(["foods", "flour", "densities", 0]),
      ]);
      for (const fact of ["grams", "millilitres", "pieces"] as const) {
        expect(withFood("flour", { measures: [own("bag", { [fact]: value })] })).toEqual([
          outOfRange(["foods", "flour", "measures", "bag"]),
        ]);
      }
      expect(withFood("flour", { edible: [edible(value)] })).toEqual([outOfRange(["foods", "flour", "edible", 0])]);
      const yields = [{ food: "bread", gramsPerGram: value, source: edible(1).source }];
      expect(withFood("flour", { yields })).toEqual([outOfRange(["foods", "flour", "yields", 0])]);
    },
  );

  it("refuses more left after trimming than there was", () => {
    expect(withFood("kale", { edible: [edible(1)] })).toEqual([]);
    expect(withFood("kale", { edible: [edible(1.01)] })).toEqual([outOfRange(["foods", "kale", "edible", 0])]);
  });

  it("refuses a part that gives nothing, and a part taken after one that is not there", () => {
    expect(withFood("lemon", { parts: [part("juice", "0 g")] })).toEqual([
      outOfRange(["foods", "lemon", "parts", "juice"]),
    ]);
    expect(withFood("lemon", { parts: [part("juice", "1/0 g")] })).toMatchObject([{ code: "BAD_AMOUNT" }]);
    expect(withFood("lemon", { parts: [part("juice", "1 g", ["zest"])] })).toEqual([
      {
        code: "UNKNOWN_PART",
        path: ["foods", "lemon", "parts", "juice", "after"],
        food: "lemon",
        part: "zest",
        known: ["juice"],
      },
    ]);
  });

  it("refuses a pack of nothing, and a price that is none", () => {
    const bag = ["foods", "flour", "packs", "bag"];
    expect(withFood("flour", { packs: [pack("0 g", "1.00", { id: "bag" })] })).toEqual([outOfRange(bag)]);
    expect(withFood("flour", { packs: [pack("1 own:bag", "1.00", { id: "bag" })] })).toMatchObject([
      { code: "NOT_CONVERTIBLE", path: bag, missing: "OWN_MEASURE:bag" },
    ]);
    for (const price of ["-1.00", "1,00", "NaN", "1e9", ""]) {
      expect(withFood("flour", { packs: [pack("1 g", price, { id: "bag" })] })).toEqual([
        { code: "BAD_AMOUNT", path: bag, written: price, why: "NOT_A_PRICE" },
      ]);
    }
  });

  it("does not blame a line for the facts of its food or component", () => {
    const lemon = food("lemon", { parts: [part("juice", "1/0 g")] });
    expect(
      problemsOf([line("1 g", of("lemon", "juice")), line("1 g", "oil", { swaps: [swap("lemon")] })], [lemon]),
    ).toMatchObject([{ code: "BAD_AMOUNT", path: ["foods", "lemon", "parts", "juice"] }]);
    expect(dal({ yield: { amount: amountOf("x", "x", "g"), source: lemon.parts[0]!.source } })).toMatchObject([
      { code: "BAD_AMOUNT", path: ["components", "dal", "yield"] },
    ]);
  });
});

describe("steps", () => {
  it.each([-1, Number.NaN, Infinity, 1e9])("refuses %s minutes", (value) => {
    const path = ["components", "dal", "steps", "boil"];
    expect(dal({ steps: [step("boil", value)] })).toMatchObject([{ path: [...path, "minutes"] }]);
    expect(dal({ steps: [step("boil", 1, { minWait: value })] })).toMatchObject([{ path: [...path, "minWait"] }]);
    expect(dal({ steps: [step("boil", 1, { maxWait: value })] })).toMatchObject([{ path: [...path, "maxWait"] }]);
  });

  it.each(["0", "1/0", "-2"])("refuses a load of %s batches", (loadBatches) => {
    expect(dal({ steps: [step("boil", 1, { grows: "PER_LOAD", loadBatches })] })).toMatchObject([
      { path: ["components", "dal", "steps", "boil", "loadBatches"] },
    ]);
    expect(dal({ routes: [route("quick", [], { steps: [step("boil", 1, { loadBatches })] })] })).toMatchObject([
      { path: ["components", "dal", "routes", "quick", "steps", "boil", "loadBatches"] },
    ]);
  });

  it("checks the steps of meals too", () => {
    expect(checkBundle(bundle([meal("lunch", [], { steps: [step("", 1)] })]))).toMatchObject([
      { code: "BAD_SHAPE", path: ["meals", "lunch", "steps", ""] },
    ]);
  });
});

describe("plans and meals", () => {
  it("asks for a title, a meal, and people at the table", () => {
    expect(checkBundle(bundle(plan([], { title: "" })))).toEqual([
      { code: "BAD_SHAPE", path: ["title"], expected: "a title of at least one character", got: "nothing" },
      { code: "BAD_SHAPE", path: ["meals"], expected: "at least one meal", got: "none" },
    ]);
    for (const serves of [0, -1, Number.NaN, Infinity, 0.001]) {
      expect(checkBundle(bundle(plan([meal("lunch", [])], { serves })))).toMatchObject([{ path: ["serves"] }]);
      expect(checkBundle(bundle([meal("lunch", [], { serves })]))).toMatchObject([
        { path: ["meals", "lunch", "serves"] },
      ]);
    }
    for (const day of [-1, Number.NaN, 1e9]) {
      expect(checkBundle(bundle([meal("lunch", [], { day })]))).toMatchObject([{ path: ["meals", "lunch", "day"] }]);
    }
  });

  it("tells of all faults at once", () => {
    const codes = checkBundle(
      bundle(
        plan([meal("", [line("1 gg", "a"), line("3-2 g", "b"), line("1 batch", made("ghost"))], { serves: 0 })], {
          title: "",
        }),
      ),
    ).map(({ code }) => code);
    expect(codes.toSorted()).toEqual([
      "AMOUNT_OUT_OF_RANGE",
      "BAD_AMOUNT",
      "BAD_SHAPE",
      "BAD_SHAPE",
      "BAD_SHAPE",
      "UNKNOWN_COMPONENT",
      "UNKNOWN_UNIT",
    ]);
  });
});
