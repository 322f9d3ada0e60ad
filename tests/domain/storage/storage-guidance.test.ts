import { describe, expect, it } from "vitest";
import { keptComponent } from "../../../src/domain/storage/storage-guidance.js";
import { component, line, made, part } from "../../kit/builders.js";
import { ask, bought, classes, eaten, guidanceOf, kept, practice, rules, ruled, says, uses } from "./kept-builders.js";

const session = { start: "2026-11-29T14:00:00Z", zone: "Europe/London" };

describe("the writer's word and the published ceiling", () => {
  it("are both shown, and the stricter stands: a writer's 6 days for cooked beans give way to 3 (of 3 to 4)", () => {
    const found = guidanceOf(
      ask({ components: [kept("beans", "cooked-legume", [says("FRIDGE", 6)])] }),
      "beans",
      "FRIDGE",
    );
    expect(found).toMatchObject({ days: 3, upToDays: 4 });
    const shown = found.basis.map(({ kind, rule, days, sourced }) => ({ kind, rule, days, sourced }));
    expect(shown).toContainEqual({ kind: "WRITER", rule: null, days: 6, sourced: false });
    // University of Maine Cooperative Extension, How to Store and Cook Dried Beans
    expect(shown).toContainEqual({ kind: "PUBLISHED", rule: "beans-cooked-fridge", days: 4, sourced: true });
    expect(found.basis.filter(({ decides }) => decides)).toHaveLength(1);
    expect(found.advice).toContainEqual(
      expect.objectContaining({ code: "WRITER_EXCEEDS_RULE", writerDays: 6, ruleDays: 4 }),
    );
  });

  it("leave a stricter writer alone", () => {
    const beans = kept("beans", "cooked-legume", [
      says("FRIDGE", 2, { container: "shallow box", condition: "drained" }),
    ]);
    const found = guidanceOf(ask({ components: [beans] }), "beans", "FRIDGE");
    expect(found).toMatchObject({ days: 2, container: "shallow box", condition: "drained" });
    expect(found.basis.find(({ decides }) => decides)?.kind).toBe("WRITER");
    expect(found.advice).toEqual([]);
  });

  // Facts of the trade: common practice, no source. Each meets what is published.
  it.each([
    { what: "shredded raw sturdy greens", keepsAs: "cut-leaves", word: 5, stands: 5, by: "WRITER", rule: "fc-date-7" },
    {
      what: "baked roots",
      keepsAs: "cooked-vegetable",
      word: 5,
      stands: 3,
      by: "PUBLISHED",
      rule: "fsd-leftovers-veg",
    },
    {
      what: "a herb sauce of blanched herbs",
      keepsAs: "raw-herb-sauce",
      word: 5,
      stands: 2,
      by: "PUBLISHED",
      rule: "herb-oil-2-3",
    },
    { what: "a nut cream", keepsAs: "nut-cream", word: 7, stands: 3, by: "PUBLISHED", rule: "leftovers-fridge" },
  ])("meet over $what: $word days by common practice, $stands stand", ({ keepsAs, word, stands, by, rule }) => {
    const found = guidanceOf(
      ask({ components: [kept("it", keepsAs, [says("FRIDGE", word, { source: practice })])] }),
      "it",
      "FRIDGE",
    );
    expect(found.days).toBe(stands);
    expect(found.basis.find(({ decides }) => decides)?.kind).toBe(by);
    expect(found.basis.find(({ kind }) => kind === "WRITER")).toMatchObject({
      sourced: false,
      days: word,
      source: practice,
    });
    expect(found.basis.find((each) => each.rule === rule)).toMatchObject({ sourced: true });
  });

  it("say that the ceiling of a nut cream is borrowed, because nobody published one", () => {
    const found = guidanceOf(ask({ components: [kept("cream", "nut-cream")] }), "cream", "FRIDGE");
    expect(found.basis.map(({ rule, byAnalogy }) => [rule, byAnalogy])).toContainEqual(["leftovers-fridge", true]);
    const stew = guidanceOf(ask({ components: [kept("stew", "leftovers")] }), "stew", "FRIDGE");
    expect(stew.basis.every(({ byAnalogy }) => !byAnalogy)).toBe(true);
  });

  it("leave several weeks to a dry salted crumb, and say that only the writer says so", () => {
    const crumb = kept("crumb", "dry-crumb", [says("ROOM", 21, { source: practice, condition: "kept dry" })]);
    const found = guidanceOf(ask({ components: [crumb] }), "crumb");
    expect(found).toMatchObject({ place: "ROOM", days: 21, condition: "kept dry", scope: null });
    expect(found.basis.map(({ sourced }) => sourced)).toEqual([false]);
    expect(found.advice).toEqual([{ code: "NO_PUBLISHED_RULE", keepsAs: "dry-crumb" }]);
  });

  it("of the same length are hours before days, which end later", () => {
    const days = ruled({ id: "days", days: 2 });
    const hours = ruled({ id: "hours", days: 2, counts: "HOURS" });
    for (const rules of [
      [days, hours],
      [hours, days],
    ])
      for (const at of [null, session]) {
        const answer = ask({ components: [kept("stew", "leftovers")] }, { rules, session: at });
        expect(guidanceOf(answer, "stew")).toMatchObject({ days: 2, counts: "HOURS" });
      }
  });

  it("are compared by their ends, from 09:00 where the session is not known", () => {
    // One day from 08:00 ends after 40 hours, 36 hours end before.
    const morning = { start: "2026-11-29T08:00:00Z", zone: "UTC" };
    const evening = { start: "2026-11-29T20:00:00Z", zone: "UTC" };
    const counts = (at: typeof morning | null) => {
      const stew = kept("stew", "leftovers", [says("FRIDGE", 1.5)]);
      const answer = ask({ components: [stew] }, { rules: [ruled({ days: 1 })], session: at });
      return guidanceOf(answer, "stew").counts;
    };
    expect([counts(morning), counts(evening), counts(null)]).toEqual(["HOURS", "DAYS", "HOURS"]);
  });

  it("send nothing to the shelf that its writer does not keep there", () => {
    const places = ask({ components: [kept("stew", "leftovers")] }).guidance.map(({ place }) => place);
    expect(places).toEqual(["FRIDGE", "FREEZER"]);
  });

  it("let the place count in which it keeps longer, and of equals the fridge", () => {
    const late = (fridge: number, room: number): readonly string[] => {
      const jar = kept("jar", null, [says("ROOM", room), says("FRIDGE", fridge)]);
      const [first] = ask({ components: [jar], meals: [eaten("day-5", 5, "jar")] }).guidance;
      return [first?.place ?? "", ...(first?.tooLateFor ?? [])];
    };
    expect(late(3, 20)).toEqual(["ROOM"]);
    expect(late(6, 1)).toEqual(["FRIDGE"]);
    expect(late(4, 4)).toEqual(["FRIDGE", "day-5"]);
  });

  it("do not let a writer keep cooked food on the shelf", () => {
    const found = guidanceOf(ask({ components: [kept("rice", "cooked-rice", [says("ROOM", 3)])] }), "rice", "ROOM");
    expect(found.days * 24).toBeCloseTo(2); // USDA FSIS, Danger Zone
    expect(found.basis.find(({ decides }) => decides)?.rule).toBe("room-2h");
  });

  it("keep the shorter of two conditions of one writer", () => {
    const sauce = kept("sauce", null, [says("FRIDGE", 5, { condition: "herbs scalded first" }), says("FRIDGE", 2)]);
    expect(guidanceOf(ask({ components: [sauce] }), "sauce")).toMatchObject({ days: 2, condition: null });
  });
});

describe("published values", () => {
  it("that were superseded are kept, marked, and never used (garlic in oil: 7 days in 2002, then 4)", () => {
    // National Center for Home Food Preservation, Freezing Garlic-in-Oil
    const old = rules.find(({ id }) => id === "garlic-oil-7-old");
    expect(old).toMatchObject({ days: 7, inForceTo: "2015-02-16" });
    for (const today of ["2005-06-01", "2015-02-16", "2026-11-25"]) {
      // A session in the past does not bring the old rule back: the later of the two days counts.
      const at = { start: "2005-06-01T10:00:00Z", zone: "UTC" };
      const found = guidanceOf(
        ask({ components: [kept("oil", "garlic-in-oil")] }, { today: "2026-11-25", session: at }),
        "oil",
        "FRIDGE",
      );
      expect(found.days, today).toBe(4);
      expect(found.basis.map(({ rule }) => rule)).not.toContain("garlic-oil-7-old");
    }
  });

  it("change answers from the day a new edition is in force", () => {
    const older = ruled({ id: "older", days: 7, inForceTo: "2027-01-01" });
    const newer = ruled({ id: "newer", days: 4, inForceFrom: "2027-01-01" });
    const days = (today: string): number =>
      guidanceOf(ask({ components: [kept("x", "leftovers")] }, { rules: [older, newer], today }), "x").days;
    expect([days("2026-12-31"), days("2027-01-01")]).toEqual([7, 4]);
    const inJanuary = { start: "2027-01-02T10:00:00Z", zone: "UTC" };
    const early = ask(
      { components: [kept("x", "leftovers")] },
      { rules: [older, newer], today: "2026-12-01", session: inJanuary },
    );
    expect(guidanceOf(early, "x").days).toBe(4);
  });

  it("differ by region: cooked rice is 24 hours in the UK and 3 days in the US", () => {
    // Food Standards Agency (UK), Home food fact checker; USDA FSIS home food storage dataset, id 174
    const rice = (region: string | null) =>
      guidanceOf(ask({ components: [kept("rice", "cooked-rice")] }, { region, session }), "rice", "FRIDGE");
    expect(rice("GB")).toMatchObject({ days: 1, counts: "HOURS", keepUntil: "2026-11-30T14:00:00Z" });
    expect(rice("US")).toMatchObject({ days: 3, upToDays: 4, counts: "DAYS", keepUntil: "2026-12-02T23:59:59Z" });
    expect(rice("US").basis.find(({ rule }) => rule === "fsd-rice")).toMatchObject({
      days: 6,
      daysFrom: 4,
      decides: false,
    });
  });

  it("are the strictest of all regions when none is named, and the answer says so", () => {
    const answer = ask({ components: [kept("rice", "cooked-rice")] }, { region: null });
    expect(guidanceOf(answer, "rice", "FRIDGE")).toMatchObject({
      days: 1,
      scope: { asked: null, used: "GB", reach: "REGION_NOT_GIVEN" },
    });
    expect(answer.warnings).toContainEqual({ code: "REGION_NOT_GIVEN", path: [], used: "GB, US" });
  });

  it("are the strictest of all regions where the named one has none, and the answer says so", () => {
    const answer = ask({ components: [kept("rice", "cooked-rice")] }, { region: "XA" });
    const found = guidanceOf(answer, "rice", "FRIDGE");
    expect(found).toMatchObject({ days: 1, scope: { asked: "XA", used: "GB", reach: "REGION_WITHOUT_RULE" } });
    expect(found.advice).toContainEqual({ code: "REGION_WITHOUT_RULE", asked: "XA", used: "GB" });
  });

  it("hold in the parts of a country, and those of a part do not hold in the country", () => {
    const state = ruled({ id: "state", days: 2, region: "US-WA" });
    const land = ruled({ id: "land", days: 4, region: "US" });
    const days = (region: string) =>
      guidanceOf(ask({ components: [kept("x", "leftovers")] }, { rules: [state, land], region }), "x").days;
    expect([days("US"), days("US-WA"), days("US-OR")]).toEqual([4, 2, 4]);
  });

  it("for the freezer are about quality, and make no meal too late", () => {
    const stew = kept("stew", "leftovers", [says("FREEZER", 400)]);
    const answer = ask({ components: [stew], meals: [eaten("supper", 300, "stew")] });
    const frozen = guidanceOf(answer, "stew", "FREEZER");
    expect(frozen).toMatchObject({ purpose: "QUALITY", days: 90, upToDays: 120, tooLateFor: [] }); // 3 to 4 months, USDA FSIS
    expect(guidanceOf(answer, "stew", "FRIDGE").tooLateFor).toEqual(["supper"]);
  });

  it("for one kitchen stand in for another before nothing does", () => {
    const found = guidanceOf(ask({ components: [kept("leaves", "cut-leaves")] }), "leaves", "FRIDGE");
    expect(found).toMatchObject({ days: 6, scope: { asked: "US", used: "US", reach: "OTHER_AUDIENCE" } });
  });
});

describe("a meal", () => {
  it("is as old as its oldest part (O-27: beef of 1 June in a chili of 3 June, 7 days: last day 7 June)", () => {
    // Southern Nevada Health District, How long can I keep TCS food
    const beef = kept("beef", "meat-leftovers");
    const chili = kept("chili", "meat-leftovers", [], { madeDay: 2, lines: uses("beef") });
    const answer = ask(
      { components: [beef, chili], meals: [eaten("supper", 6, "chili"), eaten("late-supper", 7, "chili")] },
      {
        audience: "FOOD_SERVICE",
        session: { start: "2026-06-01T17:00:00Z", zone: "America/Los_Angeles" },
        today: "2026-06-01",
      },
    );
    const found = guidanceOf(answer, "chili", "FRIDGE");
    expect(found).toMatchObject({ lastDay: "2026-06-07", days: 4, limitedBy: { kind: "COMPONENT", slug: "beef" } });
    expect(found.tooLateFor).toEqual(["late-supper"]);
    expect(guidanceOf(answer, "supper")).toMatchObject({ lastDay: "2026-06-07", tooLateFor: [] });
    expect(guidanceOf(answer, "late-supper").tooLateFor).toEqual(["late-supper"]);
  });

  it("keeps as its shortest part and names it", () => {
    const answer = ask({
      components: [
        kept("barley", "cooked-grain", [says("FRIDGE", 4)]),
        kept("greens", "cooked-vegetable", [says("FRIDGE", 2)]),
        kept("crumb", "dry-crumb", [says("ROOM", 30)]),
      ],
      meals: [eaten("bowl", 3, "barley", "greens", "crumb")],
    });
    const bowl = guidanceOf(answer, "bowl");
    expect(bowl).toMatchObject({ days: 2, limitedBy: { kind: "COMPONENT", slug: "greens" }, tooLateFor: ["bowl"] });
    expect(guidanceOf(answer, "greens", "FRIDGE").tooLateFor).toEqual(["bowl"]);
    expect(guidanceOf(answer, "barley", "FRIDGE").tooLateFor).toEqual([]);
  });

  it("is held by a part of a part, wherever the whole is kept", () => {
    const answer = ask({
      components: [
        kept("paste", "garlic-in-oil", [says("FRIDGE", 2)]),
        kept("sauce", "leftovers", [], { lines: uses("paste") }),
        kept("pie", "leftovers", [says("FRIDGE", 4), says("FREEZER", 30)], { lines: uses("sauce") }),
      ],
      meals: [eaten("lunch", 4, "pie")],
    });
    expect(guidanceOf(answer, "pie", "FRIDGE")).toMatchObject({ days: 2, limitedBy: { slug: "paste" } });
    expect(guidanceOf(answer, "pie", "FREEZER").limitedBy).toBeNull();
  });
});

describe("what nobody speaks about", () => {
  it("is unknown and said so, with everything made from it", () => {
    const answer = ask({
      components: [
        kept("mystery", null),
        kept("stew", "leftovers", [says("FRIDGE", 3)], { lines: uses("mystery") }),
        kept("rice", "cooked-rice"),
      ],
      meals: [eaten("bowl", 1, "stew", "rice"), eaten("plain", 1, "rice")],
    });
    const mystery = { kind: "COMPONENT", slug: "mystery" };
    expect(answer.unknown).toEqual([
      { subject: mystery, part: mystery },
      { subject: { kind: "COMPONENT", slug: "stew" }, part: mystery },
      { subject: { kind: "MEAL", slug: "bowl" }, part: mystery },
    ]);
    expect(answer.warnings).toContainEqual({ code: "KEEPING_UNKNOWN", path: ["components", "stew"], item: "mystery" });
    expect(answer.warnings).toContainEqual({ code: "KEEPING_UNKNOWN", path: ["meals", "bowl"], item: "mystery" });
    expect(answer.guidance.map(({ subject }) => subject.slug)).not.toContain("stew");
    expect(guidanceOf(answer, "plain").days).toBe(3);
  });

  it("is not settled by the freezer alone, and a circle of components ends in unknown", () => {
    const answer = ask({
      components: [
        kept("ice", null, [says("FREEZER", 60)]),
        kept("a", "leftovers", [], { lines: uses("b") }),
        kept("b", "leftovers", [], { lines: uses("a") }),
        kept("c", "leftovers", [], { lines: uses("nowhere") }),
      ],
    });
    expect(answer.unknown.map(({ subject }) => subject.slug).sort()).toEqual(["a", "b", "c", "ice"]);
  });

  it("is not asked of what every house has, even where a meal uses it", () => {
    const salt = { ...bought("salt", null, [says("ROOM", 1)]), alwaysThere: true };
    const answer = ask({
      components: [kept("stew", "leftovers")],
      meals: [eaten("bowl", 3, "stew", "food:salt")],
      foods: [salt],
    });
    expect(guidanceOf(answer, "bowl")).toMatchObject({ days: 3, tooLateFor: [] });
    expect(answer.guidance.map(({ subject }) => subject.slug)).not.toContain("salt");
  });

  it("is said of foods that wait for a later day, not of salt in the pot", () => {
    const answer = ask({
      meals: [eaten("salad", 3, "food:leaf"), eaten("soup", 0, "food:stock")],
      foods: [bought("leaf", null), bought("stock", null), { ...bought("salt", null), alwaysThere: true }],
    });
    expect(answer.warnings.map((warning) => warning.path)).toEqual([
      ["meals", "salad"],
      ["meals", "soup"],
      ["foods", "leaf"],
    ]);
    expect(ask({ foods: [bought("leaf", null)] }).warnings).toHaveLength(1);
  });
});

describe("a route", () => {
  const beans = kept("beans", "cooked-legume", [says("FRIDGE", 3)]);
  const route = (facts: object) => ({
    ...beans,
    route: { kind: "BUY" as const, keepsAs: null, keeping: [], ...facts },
  });

  it("keeps as its component's class unless it names its own, whichever way it is come by", () => {
    for (const kind of ["BUY", "MAKE"] as const) {
      const named = ask({ components: [route({ kind, keepsAs: "cooked-legume", keeping: [says("FRIDGE", 9)] })] });
      const left = ask({ components: [route({ kind, keeping: [says("FRIDGE", 9)] })] });
      expect(left).toEqual(named);
      expect(guidanceOf(left, "beans", "FRIDGE").days).toBeLessThan(9);
    }
  });

  it("that buys takes no days from how the component is made", () => {
    const bought = guidanceOf(ask({ components: [route({})] }), "beans", "FRIDGE");
    expect(bought.basis.map(({ kind }) => kind)).not.toContain("WRITER");
    expect(bought.days).toBeLessThan(9);
    const tinned = route({ keepsAs: "opened-refried-beans" });
    expect(guidanceOf(ask({ components: [tinned] }), "beans", "FRIDGE").days).toBe(2);
    const jar = route({ keepsAs: "opened-hummus" });
    expect(guidanceOf(ask({ components: [jar] }), "beans", "FRIDGE").days).toBe(7);
  });

  it("that makes the same thing another way keeps like it, unless it says otherwise", () => {
    expect(guidanceOf(ask({ components: [route({ kind: "MAKE" })] }), "beans", "FRIDGE").days).toBe(3);
    const quick = route({ kind: "MAKE", keeping: [says("FRIDGE", 2)] });
    expect(guidanceOf(ask({ components: [quick] }), "beans", "FRIDGE").days).toBe(2);
  });
});

describe("a class that the rules do not know, as in documents of old", () => {
  const facts = (keepsAs: string, place: "FRIDGE" | "ROOM") => ({
    components: [kept("carrots", keepsAs, [says(place, 14)])],
  });

  it("is read as the strictest of all, and readers are told", () => {
    const answer = ask(facts("cooked-vegetables", "FRIDGE"));
    const strictest = Math.min(
      ...classes.map(({ code }) => guidanceOf(ask(facts(code, "FRIDGE")), "carrots", "FRIDGE").days),
    );
    expect(guidanceOf(answer, "carrots", "FRIDGE").days).toBe(strictest);
    expect(answer.warnings).toContainEqual({
      code: "KEEPING_CLASS_UNKNOWN",
      path: ["components", "carrots"],
      item: "carrots",
      keepsAs: "cooked-vegetables",
    });
  });

  it("is named on foods, on their parts and on the route that is taken as well", () => {
    const lemon = { ...bought("lemon", "citrus"), parts: [{ ...part("juice", "45 ml"), keepsAs: "juices" }] };
    const route = { kind: "BUY" as const, keepsAs: "tinned", keeping: [] };
    const answer = ask({ components: [kept("beans", "cooked-legume", [], { route })], foods: [lemon] });
    const named = answer.warnings.flatMap((each) => (each.code === "KEEPING_CLASS_UNKNOWN" ? [each.keepsAs] : []));
    expect(named).toEqual(["tinned", "citrus", "juices"]);
  });

  it("is not what every class is that they know", () => {
    for (const { code } of classes)
      expect(ask(facts(code, "FRIDGE")).warnings.map((each) => each.code)).not.toContain("KEEPING_CLASS_UNKNOWN");
  });
});

describe("a component without a plan", () => {
  it("keeps as it would in one, parts and all", () => {
    const dal = component("dal", "1 kg", [line("500 g", made("lentils"))], { keepsAs: "soup" });
    const lentils = component("lentils", "1 kg", [], { keepsAs: "cooked-legume", keeping: [says("FRIDGE", 2)] });
    const answer = ask({ components: [dal, lentils].map(keptComponent) });
    expect(guidanceOf(answer, "dal", "FRIDGE")).toMatchObject({ days: 2, limitedBy: { slug: "lentils" } });
    expect(ask({ components: [keptComponent(dal)] }).unknown).toHaveLength(1);
  });
});
