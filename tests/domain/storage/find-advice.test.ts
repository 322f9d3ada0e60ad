import { describe, expect, it } from "vitest";
import { ask, bought, eaten, guidanceOf, kept, says, uses } from "./kept-builders.js";

const beans = kept("beans", "cooked-legume", [says("FRIDGE", 4), says("FREEZER", 90)]);

describe("a component that is too old for a meal", () => {
  const meals = [eaten("monday", 1, "beans"), eaten("friday", 5, "beans"), eaten("saturday", 6, "beans", "beans")];

  it("can be frozen in portions, or made later", () => {
    const found = guidanceOf(ask({ components: [beans], meals }), "beans", "FRIDGE");
    expect(found.tooLateFor).toEqual(["friday", "saturday"]);
    expect(found.advice).toEqual([
      {
        code: "FREEZE",
        component: "beans",
        portions: [
          { meal: "friday", day: 5, amount: { dimension: "MASS", low: 100, high: 120 } },
          { meal: "saturday", day: 6, amount: { dimension: "MASS", low: 200, high: 240 } },
        ],
        thawDaysBefore: 1,
        daysAfterThawing: 3,
        thawRule: null,
      },
      {
        code: "MAKE_LATER",
        component: "beans",
        meals: [
          { meal: "friday", day: 5, notBefore: 2 },
          { meal: "saturday", day: 6, notBefore: 3 },
        ],
      },
    ]);
  });

  it("keeps once thawed by the shorter rule: 24 hours in the UK", () => {
    const found = guidanceOf(ask({ components: [beans], meals }, { region: "GB" }), "beans", "FRIDGE");
    expect(found.advice[0]).toMatchObject({ code: "FREEZE", daysAfterThawing: 1, thawRule: "uk-thawed" });
  });

  it("is not sent to the freezer where nobody says that it freezes", () => {
    const eggs = kept("eggs", "cooked-egg", [says("FRIDGE", 3)]);
    const found = guidanceOf(ask({ components: [eggs], meals: [eaten("late", 5, "eggs")] }), "eggs", "FRIDGE");
    expect(found.advice.map(({ code }) => code)).toEqual(["MAKE_LATER"]);
  });

  it("is not sent to the freezer when it would not outlast the thawing", () => {
    const foam = kept("foam", null, [says("FRIDGE", 0.5), says("FREEZER", 30)]);
    const found = guidanceOf(ask({ components: [foam], meals: [eaten("late", 3, "foam")] }), "foam", "FRIDGE");
    expect(found.advice.map(({ code }) => code)).toEqual(["MAKE_LATER", "NO_PUBLISHED_RULE"]);
  });

  it("has no portion where a line is to taste", () => {
    const lines = [...uses("beans"), { item: { kind: "COMPONENT" as const, component: "beans" }, amount: null }];
    const found = guidanceOf(
      ask({ components: [beans], meals: [{ meal: { slug: "late", day: 6 }, lines }] }),
      "beans",
      "FRIDGE",
    );
    expect(found.advice[0]).toMatchObject({ portions: [{ meal: "late", amount: null }] });
  });

  it("made on a later day keeps from that day", () => {
    const later = { ...beans, madeDay: 2 };
    const found = guidanceOf(ask({ components: [later], meals }), "beans", "FRIDGE");
    expect(found).toMatchObject({ days: 3, upToDays: 4, tooLateFor: ["saturday"] });
  });
});

describe("a meal that comes too late", () => {
  it("can change places with one that keeps longer, or be eaten earlier", () => {
    const crumb = kept("crumb", "dry-crumb", [says("ROOM", 20)]);
    const meals = [eaten("first", 2, "crumb"), eaten("last", 6, "beans", "crumb")];
    const found = guidanceOf(ask({ components: [beans, crumb], meals }), "last");
    expect(found.advice).toEqual([
      { code: "SWAP_DAYS", meal: "last", with: "first" },
      { code: "EAT_EARLIER", meal: "last", latestDay: 3 },
    ]);
  });

  it("does not change places with one that would then be too late itself", () => {
    const meals = [eaten("first", 2, "beans"), eaten("last", 6, "beans")];
    const found = guidanceOf(ask({ components: [beans], meals }), "last");
    expect(found.advice.map(({ code }) => code)).toEqual(["EAT_EARLIER"]);
  });
});

describe("fresh food bought for a later meal", () => {
  it("is shopped for twice when it would not keep until then", () => {
    // USDA FSIS home food storage dataset, id 611: fresh parsley 2 to 3 days
    const answer = ask({
      meals: [eaten("early", 1, "food:parsley"), eaten("late", 5, "food:parsley")],
      foods: [bought("parsley", "fresh-parsley"), bought("unused", "fresh-basil")],
    });
    const found = guidanceOf(answer, "parsley");
    expect(found).toMatchObject({ days: 2, upToDays: 3, purpose: "QUALITY", tooLateFor: ["late"] });
    expect(found.advice).toEqual([{ code: "SHOP_TWICE", food: "parsley", meals: ["late"], notBefore: 3 }]);
    expect(answer.guidance.map(({ subject }) => subject.slug)).not.toContain("unused");
  });

  it("makes no meal too late, since it is bought for it; what was made for the meal still does", () => {
    const fish = bought("fish", "raw-fish");
    const wedges = kept("wedges", "cooked-vegetable", [says("FRIDGE", 9)]);
    for (const region of ["US", "GB", "DE", null]) {
      const with3 = ask({ meals: [eaten("supper", 3, "food:fish")], foods: [fish] }, { region });
      expect(guidanceOf(with3, "supper")).toMatchObject({ tooLateFor: [], advice: [] });
      expect(guidanceOf(with3, "fish").advice).toMatchObject([{ code: "SHOP_TWICE", meals: ["supper"] }]);
      const both = ask(
        { components: [wedges], meals: [eaten("supper", 6, "food:fish", "wedges")], foods: [fish] },
        { region },
      );
      expect(guidanceOf(both, "supper").tooLateFor).toEqual(["supper"]);
      const advice = guidanceOf(both, "supper").advice.map((each) => "latestDay" in each && each.latestDay);
      // By the wedges, not by the fish: cooked food three days by the rules of the US, 48 hours by those of GB.
      expect(advice).toEqual([region === "US" ? 3 : 1]);
    }
  });
});

describe("a rule that counts hours", () => {
  it("says at what hour of its last day it ends", () => {
    const rice = kept("rice", "cooked-rice");
    const session = { start: "2026-11-29T14:00:00Z", zone: "Europe/London" };
    const monday = eaten("monday", 1, "rice");
    const meals = [{ ...monday, meal: { ...monday.meal, at: "12:30" } }, eaten("tuesday", 2, "rice")];
    const found = guidanceOf(ask({ components: [rice], meals }, { region: "GB", session }), "rice", "FRIDGE");
    expect(found.tooLateFor).toEqual(["tuesday"]);
    expect(found.advice).toContainEqual({ code: "EAT_BEFORE", day: 1, hours: 24, until: "2026-11-30T14:00:00Z" });
  });
});
