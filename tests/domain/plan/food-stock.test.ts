import { describe, expect, it } from "vitest";
import type { Household, OnHand } from "../../../src/domain/model/household.js";
import type { PlanBundle } from "../../../src/domain/model/plan.js";
import { asFrozen } from "../../../src/domain/plan/review/foods-today.js";
import { scalePlan } from "../../../src/domain/plan/scale-plan.js";
import { shop } from "../../../src/domain/plan/shop.js";
import { bundle, food, household, invented, line, meal, onHand, density } from "../../kit/builders.js";

const listOf = (whole: PlanBundle, facts: Partial<Household>, today = asFrozen) => {
  const at = household(facts);
  const scaled = scalePlan(whole, 1, at, today);
  if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems));
  return shop([scaled.value], at, today);
};
const session = { start: "2026-04-03T20:00:00Z", zone: "Pacific/Auckland" };
const kale = bundle([meal("friday", [line("100 g", "kale")]), meal("monday", [line("50 g", "kale")], { day: 3 })]);
const covered = (facts: Partial<Household>) => listOf(kale, facts).lines[0]?.onHand?.high;

describe("food on hand", () => {
  it("with a date covers the meals up to it, counted from the session's own day in its own zone", () => {
    const with200g = (useBy: string | null) => covered({ session, onHand: [onHand("kale", "200 g", { useBy })] });
    expect(with200g(null)).toBe(150);
    // In Auckland the session is on the fourth already.
    expect(with200g("2026-04-04")).toBe(100);
    expect(with200g("2026-04-06")).toBe(100);
    expect(with200g("2026-04-07")).toBe(150);
  });

  it("that is past its date at the session is left out, and that is said", () => {
    const list = listOf(kale, { session, onHand: [onHand("kale", "200 g", { useBy: "2026-04-03" })] });
    expect(list.lines[0]?.onHand?.high).toBe(0);
    expect(list.warnings).toContainEqual({
      code: "ON_HAND_TOO_OLD",
      path: ["household", "onHand", 0],
      item: "kale",
      useBy: "2026-04-03",
    });
  });

  it("is held against today where nobody says when the session is", () => {
    const today = { ...asFrozen, date: "2026-04-04" };
    const on = (useBy: string) => listOf(kale, { onHand: [onHand("kale", "200 g", { useBy })] }, today);
    const path = ["household", "onHand", 0];
    const tooOld = on("2026-02-04");
    expect(tooOld.lines[0]?.onHand?.high).toBe(0);
    expect(tooOld.warnings).toContainEqual({ code: "ON_HAND_TOO_OLD", path, item: "kale", useBy: "2026-02-04" });
    expect(on("2026-04-06").lines[0]?.onHand?.high).toBe(100);
    expect(on("2026-04-07").lines[0]?.onHand?.high).toBe(150);
  });

  it("that is left lying because of the day of a meal is named with that meal", () => {
    const with200g = (useBy: string) =>
      listOf(kale, { session, onHand: [onHand("kale", "200 g", { useBy })] }).warnings.filter(
        ({ code }) => code === "ON_HAND_NOT_IN_TIME",
      );
    const path = ["household", "onHand", 0];
    const facts = { code: "ON_HAND_NOT_IN_TIME", path, item: "kale", useBy: "2026-04-06", meals: ["monday"] };
    expect(with200g("2026-04-06")).toEqual([facts]);
    expect(with200g("2026-04-07")).toEqual([]);
  });

  it("that is used up in time, or is more than anybody needs, is no news", () => {
    const warned = (...entries: readonly OnHand[]) =>
      listOf(kale, { session, onHand: entries }).warnings.filter(({ code }) => code === "ON_HAND_NOT_IN_TIME");
    expect(warned(onHand("kale", "100 g", { useBy: "2026-04-06" }))).toEqual([]);
    expect(warned(onHand("kale", "900 g", { useBy: "2026-04-06" }), onHand("kale", "50 g"))).toEqual([]);
  });

  it("adds up over several entries", () => {
    expect(covered({ onHand: [onHand("kale", "20 g"), onHand("kale", "30 g")] })).toBe(50);
  });

  it("names what nobody needs, and which fact is missing to compare", () => {
    const { warnings } = listOf(kale, {
      onHand: [onHand("oats", "1 kg"), onHand("kale", "1 us-cup"), onHand("kale", "1 own:bag")],
    });
    const path = (at: number) => ["household", "onHand", at];
    expect(warnings).toEqual(
      expect.arrayContaining([
        { code: "ON_HAND_NOT_NEEDED", path: path(0), item: "oats" },
        { code: "ON_HAND_NOT_COMPARABLE", path: path(1), item: "kale", missing: "DENSITY" },
        { code: "ON_HAND_NOT_COMPARABLE", path: path(2), item: "kale", missing: "OWN_MEASURE:bag" },
      ]),
    );
  });

  it("is not mistaken for a component of the same name", () => {
    const kaleInAPot = {
      item: { kind: "COMPONENT" as const, component: "kale" },
      amount: "1",
      unit: "kg",
      useBy: null,
      asOtherForm: false,
    };
    expect(covered({ onHand: [kaleInAPot] })).toBe(0);
  });

  it("of a food that is only wanted to taste is neither taken nor called useless", () => {
    const { lines, warnings } = listOf(bundle([meal("m", [line(null, "salt")])]), { onHand: [onHand("salt", "1 kg")] });
    expect(lines[0]?.onHand).toBeNull();
    expect(warnings.filter(({ code }) => code.startsWith("ON_HAND"))).toEqual([]);
  });
});

describe("food on hand in another form", () => {
  const beans = bundle(
    [meal("m", [line("300 g", "cooked-beans")])],
    [],
    [food("cooked-beans", { densities: [density(0.75)] })],
  );
  const dry = food("dry-beans", {
    yields: [
      { food: "cooked-beans", gramsPerGram: 2.4, source: { kind: "PUBLISHED", title: "a table", section: null } },
      { food: "cooked-beans", gramsPerGram: 2, source: { kind: "WRITER", title: "weighed", section: null } },
      { food: "flour", gramsPerGram: 1, source: invented },
    ],
  });
  const withDry: PlanBundle = { ...beans, foods: [...beans.foods, dry] };

  it("is offered with what it would give, by the writer's own yield", () => {
    const { lines, warnings } = listOf(withDry, { onHand: [onHand("dry-beans", "100 g")] });
    expect(lines[0]?.onHand?.high).toBe(0);
    expect(warnings).toContainEqual({
      code: "ON_HAND_IN_OTHER_FORM",
      path: ["household", "onHand", 0],
      item: "cooked-beans",
      from: "dry-beans",
      gives: 200,
      wouldTake: 150,
    });
  });

  it("says what the whole need would take even of an empty jar", () => {
    const { warnings } = listOf(withDry, { onHand: [onHand("dry-beans", "0 g")] });
    expect(warnings).toContainEqual(
      expect.objectContaining({ code: "ON_HAND_IN_OTHER_FORM", gives: 0, wouldTake: 150 }),
    );
  });

  it("is taken where the reader says so", () => {
    const { lines, warnings } = listOf(withDry, { onHand: [onHand("dry-beans", "100 g", { asOtherForm: true })] });
    expect(lines[0]?.onHand?.high).toBeCloseTo(200, 9);
    expect(lines[0]?.toBuy?.high).toBeCloseTo(100, 9);
    expect(warnings.filter(({ code }) => code.startsWith("ON_HAND"))).toEqual([]);
  });

  it("is not needed where it turns into nothing on the list, or cannot be weighed", () => {
    const codes = (whole: PlanBundle, amount: string) =>
      listOf(whole, { onHand: [onHand("dry-beans", amount)] }).warnings.map(({ code }) => code);
    expect(codes(withDry, "1 us-cup")).toContain("ON_HAND_NOT_NEEDED");
    expect(codes(beans, "100 g")).toContain("ON_HAND_NOT_NEEDED");
    const rice = bundle([meal("m", [line("300 g", "rice")])], [], []);
    expect(codes({ ...rice, foods: [...rice.foods, dry] }, "100 g")).toContain("ON_HAND_NOT_NEEDED");
  });
});
