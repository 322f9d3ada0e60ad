import { describe, expect, it } from "vitest";
import type { Food } from "../../../../src/domain/model/food.js";
import { noHousehold } from "../../../../src/domain/model/household.js";
import type { PlanBundle } from "../../../../src/domain/model/plan.js";
import { planNutrition } from "../../../../src/domain/plan/contents/contents.js";
import { eatenFoods } from "../../../../src/domain/plan/contents/eaten.js";
import { foodsEaten } from "../../../../src/domain/plan/contents/foods-eaten.js";
import { scalePlan } from "../../../../src/domain/plan/scale-plan.js";
import {
  bundle,
  component,
  density,
  edible,
  food,
  household,
  invented,
  line,
  made,
  meal,
  of,
  onHand,
  own,
  part,
} from "../../../kit/builders.js";

const scaled = (written: PlanBundle, servings = 1) => {
  const result = scalePlan(written, servings, noHousehold);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};
const exactly = (value: number) => ({ low: value, high: value });
const energy = (kcal: number): Food["nutrients"] => ({ per100g: { energyKcal: kcal }, source: invented });

describe("the foods of a plan", () => {
  const paste = component("paste", "100 g", [line("50 g", "garlic"), line("50 g", "oil")]);
  const week = scaled(
    bundle(
      [
        meal("bowl", [line("100 g", "barley"), line("10 g", "oil"), line("20 g", made("paste"))]),
        meal("soup", [line("100 g", "leek"), line("50 g", "barley")]),
      ],
      [paste],
    ),
  );

  it("are there once, however many lines and components bring them", () => {
    expect([...foodsEaten(week.compiled).meals.values()].map((foods) => foods.map(({ slug }) => slug))).toEqual([
      ["barley", "oil", "garlic"],
      ["barley", "leek"].toReversed(),
    ]);
    expect(foodsEaten(week.compiled).plan.map(({ slug }) => slug)).toEqual(["barley", "oil", "garlic", "leek"]);
  });

  it("count a food once that is there whole and as a part", () => {
    const lemon = food("lemon", { shoppedBy: "COUNT", parts: [part("zest", "6 g")] });
    const cake = scaled(
      bundle([meal("cake", [line("1 piece", "lemon"), line("6 g", of("lemon", "zest"))])], [], [lemon]),
    );
    expect(foodsEaten(cake.compiled).plan).toEqual([lemon]);
    expect(eatenFoods(cake)[0]?.foods.map((each) => each.part)).toEqual([null, "zest"]);
  });
});

describe("the grams that are eaten", () => {
  const grams = (amount: string | null, facts: Partial<Food>, line_: Parameters<typeof line>[2] = {}) =>
    eatenFoods(scaled(bundle([meal("m", [line(amount, "it", line_)])], [], [food("it", facts)])))[0]?.foods[0]?.grams;

  it("are the edible share of what was bought, all of what was weighed ready, and a share of pieces either way", () => {
    const peeled = { edible: [edible(0.8)], measures: [own("root", { grams: 50 })] };
    expect(grams("100 g", peeled)).toEqual(exactly(80));
    expect(grams("100 g", peeled, { measured: "READY" })).toEqual(exactly(100));
    expect(grams("100 g", {})).toEqual(exactly(100));
    expect(grams("2-3 own:root", peeled)).toEqual({ low: 80, high: 120 });
  });

  it("are not known without an amount, or without what a spoon of it weighs", () => {
    expect(grams(null, {})).toBeNull();
    expect(grams("10 ml", { shoppedBy: "VOLUME" })).toBeNull();
    expect(grams("10 ml", { densities: [density(0.9)] })).toEqual(exactly(9));
  });

  it("of a part are its own weight, or what its pieces give", () => {
    const lemon = food("lemon", {
      shoppedBy: "COUNT",
      parts: [part("zest", "6 g"), part("juice", "45 ml"), part("leaf", "2 g")],
      densities: [density(1.03, "juice")],
    });
    const of_ = (amount: string, name: string) =>
      eatenFoods(scaled(bundle([meal("m", [line(amount, of("lemon", name))])], [], [lemon])))[0]?.foods[0]?.grams;
    expect(of_("4 g", "zest")).toEqual(exactly(4));
    expect(of_("2 piece", "zest")).toEqual(exactly(12));
    expect(of_("100 ml", "juice")?.high).toBeCloseTo(103, 9);
    expect(of_("1-2 piece", "juice")?.low).toBeCloseTo(46.35, 9);
    expect(of_("1-2 piece", "juice")?.high).toBeCloseTo(92.7, 9);
  });

  it("add up over lines, and one that nobody can weigh takes nothing from the others", () => {
    const sum = (second: string | null) =>
      eatenFoods(scaled(bundle([meal("m", [line("100 g", "it"), line(second, "it")])])))[0]?.foods;
    expect(sum("20-30 g")).toMatchObject([{ grams: { low: 120, high: 130 } }]);
    expect(sum(null)).toMatchObject([{ grams: exactly(100), rest: ["TO_TASTE"] }]);
    expect(sum("3 us-tsp")).toMatchObject([{ grams: exactly(100), rest: ["UNWEIGHED"] }]);
  });

  it("are optional only where every line that brings them is", () => {
    const twice = (first: boolean, second: boolean) =>
      eatenFoods(
        scaled(bundle([meal("m", [line("1 g", "it", { optional: first }), line("1 g", "it", { optional: second })])])),
      )[0]?.foods[0]?.optional;
    expect([twice(true, true), twice(true, false), twice(false, true)]).toEqual([true, false, false]);
  });

  it("come through components in the share that is taken of them, and what is left over is not eaten", () => {
    const dressing = component(
      "dressing",
      "200 g",
      [line("100 g", "oil"), line("20 g", "mustard", { optional: true })],
      {
        batch: { min: "1", max: null, increment: "1" },
      },
    );
    const [eaten] = eatenFoods(scaled(bundle([meal("m", [line("50 g", made("dressing"))])], [dressing])));
    expect(eaten?.foods.map(({ food: { slug }, grams: each, optional }) => [slug, each, optional])).toEqual([
      ["oil", exactly(25), false],
      ["mustard", exactly(5), true],
    ]);
    const [perhaps] = eatenFoods(
      scaled(bundle([meal("m", [line("50 g", made("dressing"), { optional: true })])], [dressing])),
    );
    expect(perhaps?.foods.every(({ optional }) => optional)).toBe(true);
  });

  it("are the writer's share of a line, of a food or of a component, and none of what is thrown away", () => {
    const marinade = component("marinade", "100 g", [
      line("60 g", "oil"),
      line("40 g", "vinegar"),
      line("1 piece", "bay-leaf", { eaten: "0" }),
    ]);
    const [eaten] = eatenFoods(
      scaled(bundle([meal("m", [line("50 g", made("marinade"), { eaten: "2/5" }), line("10 g", "oil")])], [marinade])),
    );
    expect(eaten?.foods.map((each) => [each.food.slug, each.grams?.high, each.rest, each.why])).toEqual([
      ["oil", 22, [], ["STATED"]],
      ["vinegar", 8, [], ["STATED"]],
      ["bay-leaf", 0, [], ["STATED"]],
    ]);
  });

  it("are known of a component that was all on hand, as of one that is made", () => {
    const paste = component("paste", "100 g", [line("50 g", "garlic"), line("2 g", "salt", { rule: "PER_BATCH" })]);
    const plan = bundle([meal("m", [line("20 g", made("paste"))])], [paste]);
    const at = (grams: string) => {
      const result = scalePlan(
        plan,
        1,
        household({ onHand: [onHand("", `${grams} g`, { item: { kind: "COMPONENT", component: "paste" } })] }),
      );
      if (!result.ok) throw new Error(JSON.stringify(result.problems));
      return eatenFoods(result.value)[0]?.foods.map((each) => [each.food.slug, each.grams?.high, each.rest]);
    };
    expect(at("20")).toEqual([
      ["garlic", 10, []],
      ["salt", 0.4, []],
    ]);
  });

  it("come through a component of components", () => {
    const base = component("base", "100 g", [line("60 g", "flour")]);
    const tart = component("tart", "200 g", [line("100 g", made("base"))]);
    const [eaten] = eatenFoods(scaled(bundle([meal("m", [line("50 g", made("tart"))])], [tart, base])));
    expect(eaten?.foods[0]?.grams?.high).toBeCloseTo(15, 9);
  });

  it("are not known of a component that is taken without an amount", () => {
    const base = component("base", "100 g", [line("60 g", "flour")]);
    const both = [line("50 g", made("base")), line("1 g", "salt")];
    const [first, second] = eatenFoods(
      scaled(bundle([meal("a", both), meal("b", [line(null, made("base"))])], [base])),
    );
    expect(first?.foods[0]?.grams?.high).toBeCloseTo(30, 9);
    expect(second?.foods).toMatchObject([{ food: { slug: "flour" }, grams: null }]);
  });
});

describe("the nutrition of a plan", () => {
  const barley = food("barley", { nutrients: energy(350) });
  const water = food("water", { alwaysThere: true, shoppedBy: "VOLUME" });

  it("is that of each meal, and of one serving of all of them", () => {
    const week = scaled(
      bundle(
        [meal("bowl", [line("100 g", "barley")]), meal("soup", [line("40 g", "barley"), line("160 g", "leek")])],
        [],
        [barley, food("leek", { nutrients: energy(50) })],
      ),
      2,
    );
    const { meals, plan } = planNutrition(week, 2);
    expect(meals.map(({ meal: slug, nutrition }) => [slug, nutrition.nutrients.energyKcal?.perServing.high])).toEqual([
      ["bowl", 350],
      ["soup", 220],
    ]);
    expect(meals.map(({ nutrition }) => nutrition.gramsPerServing)).toEqual([exactly(100), exactly(200)]);
    expect(plan.nutrients.energyKcal?.perServing).toEqual(exactly(570));
    expect(plan.gramsPerServing).toEqual(exactly(300));
    expect(plan.nutrients.energyKcal?.per100g).toEqual(exactly(190));
  });

  it("keeps both ends of a range", () => {
    const { meals, plan } = planNutrition(
      scaled(bundle([meal("bowl", [line("100-200 g", "barley"), line("100 g", "barley")])], [], [barley])),
      1,
    );
    expect(meals[0]?.nutrition.gramsPerServing).toEqual({ low: 200, high: 300 });
    expect(plan.gramsPerServing).toEqual({ low: 200, high: 300 });
    expect(plan.nutrients.energyKcal?.total).toEqual({ low: 700, high: 1050 });
  });

  it("weighs components by what is taken of them, as they come out", () => {
    const boiled = component("boiled", "300 g", [line("100 g", "barley")]);
    const poured = component("poured", "500 ml", [line("100 g", "barley")]);
    const of300 = planNutrition(scaled(bundle([meal("m", [line("150 g", made("boiled"))])], [boiled], [barley])), 1);
    expect(of300.plan).toMatchObject({ gramsPerServing: exactly(150), basis: "RAW_FOODS_OVER_COOKED_WEIGHT" });
    expect(of300.plan.nutrients.energyKcal?.total.high).toBeCloseTo(175, 9);
    const unweighed = planNutrition(
      scaled(bundle([meal("m", [line("100 ml", made("poured"))])], [poured], [barley])),
      1,
    );
    expect(unweighed.plan).toMatchObject({ gramsPerServing: null, basis: "RAW_FOODS_OVER_SERVINGS" });
  });

  it("has no weight of the plan where one meal cannot be weighed, and still that of the others", () => {
    const meals = [
      meal("bowl", [line("100 g", "barley")]),
      meal("drink", [line("200 ml", "milk")]),
      meal("soup", [line("50 g", "barley")]),
    ];
    const week = planNutrition(scaled(bundle(meals, [], [barley, food("milk", { shoppedBy: "VOLUME" })])), 1);
    expect(week.meals.map(({ nutrition }) => nutrition.gramsPerServing)).toEqual([exactly(100), null, exactly(50)]);
    expect(week.plan.gramsPerServing).toBeNull();
  });

  it("takes what is to taste to weigh next to nothing, and a plate of nothing else not to be weighed", () => {
    const seasoned = planNutrition(
      scaled(bundle([meal("m", [line("100 g", "barley"), line(null, "salt")])], [], [barley])),
      1,
    );
    expect(seasoned.plan).toMatchObject({ gramsPerServing: exactly(100), unweighed: ["salt"] });
    const only = planNutrition(scaled(bundle([meal("m", [line(null, "salt")])])), 1);
    expect(only.meals[0]?.nutrition.gramsPerServing).toBeNull();
    expect(only.plan.gramsPerServing).toBeNull();
  });

  it("passes over water without figures, and counts it where it has some", () => {
    const of200 = (facts: Partial<Food>) =>
      planNutrition(
        scaled(
          bundle([meal("m", [line("100 g", "barley"), line("100 g", "water")])], [], [barley, { ...water, ...facts }]),
        ),
        1,
      ).plan.nutrients.energyKcal;
    expect(of200({})).toMatchObject({ complete: true, coverage: 1 });
    expect(of200({ nutrients: energy(1) })?.total).toEqual(exactly(351));
    expect(of200({ alwaysThere: false })).toMatchObject({ complete: false, coverage: 0.5, unknown: ["water"] });
    // Oil of the house, or its salt, is not water.
    expect(of200({ shoppedBy: "MASS" })).toMatchObject({ complete: false, unknown: ["water"] });
  });

  it("knows nothing of a part from the figures of the whole", () => {
    const lemon = food("lemon", { shoppedBy: "COUNT", parts: [part("zest", "6 g")], nutrients: energy(30) });
    const cake = planNutrition(
      scaled(bundle([meal("m", [line("94 g", "barley"), line("6 g", of("lemon", "zest"))])], [], [barley, lemon])),
      1,
    ).plan.nutrients.energyKcal;
    expect(cake).toMatchObject({ total: exactly(329), complete: false, unknown: ["lemon"] });
    const peeled = { ...lemon, parts: [{ ...part("zest", "6 g"), nutrients: energy(50)! }] };
    const known = planNutrition(
      scaled(bundle([meal("m", [line("94 g", "barley"), line("6 g", of("lemon", "zest"))])], [], [barley, peeled])),
      1,
    ).plan.nutrients.energyKcal;
    expect(known).toMatchObject({ total: exactly(332), complete: true, unknown: [] });
  });
});
