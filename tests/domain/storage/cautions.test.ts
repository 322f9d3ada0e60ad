import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Food } from "../../../src/domain/model/food.js";
import { cautionedThings } from "../../../src/domain/storage/cautioned-things.js";
import { cautionsFor, type CautionedThing } from "../../../src/domain/storage/cautions.js";
import { component, food, line, meal, route, step } from "../../kit/builders.js";
import { publishedRules } from "../../imports/rules/published-rules.js";

const { safety } = publishedRules;

const thing = (facts: Partial<CautionedThing> = {}): CautionedThing => ({
  subject: { kind: "COMPONENT", slug: "it" },
  keepsAs: "dry-crumb",
  codes: [],
  steps: [],
  foods: [],
  ...facts,
});
const named = (one: string, facts: Partial<Food> = {}): Food =>
  food("x", { names: [{ language: "en", region: null, one, many: one, also: [] }], ...facts });
const codesOf = (...things: readonly CautionedThing[]): readonly string[] =>
  cautionsFor(things, safety).cautions.map(({ code }) => code);
const steps = (...texts: readonly string[]) => texts.map((text) => step(text, 10));

const always = ["local-rules", "allergens-on-labels"];

describe("cautions", () => {
  it("always defer to local food-safety codes and licensed practice, whatever is asked", () => {
    expect(codesOf()).toEqual(always);
    expect(codesOf(thing())).toEqual(always);
    const [deferral] = cautionsFor([], safety).cautions;
    expect(deferral?.text).toMatch(/local food-safety code and licensed practice\s+come first/);
    expect(deferral?.about).toEqual([]);
  });

  it.each([
    {
      what: "cooked grain must be kept cold, cooled fast and reheated hot",
      keepsAs: "cooked-grain",
      due: ["keep-cold", "cool-quickly", "reheat-until-steaming"],
    },
    {
      what: "rice has a toxin that reheating leaves",
      keepsAs: "cooked-rice",
      due: ["keep-cold", "cool-quickly", "reheat-until-steaming", "rice"],
    },
    { what: "garlic in oil", keepsAs: "garlic-in-oil", due: ["keep-cold", "garlic-in-oil"] },
    { what: "an uncooked herb sauce", keepsAs: "raw-herb-sauce", due: ["keep-cold", "herbs-in-oil"] },
    { what: "cut leaves", keepsAs: "cut-leaves", due: ["keep-cold", "cut-leaves"] },
    { what: "cut melon is cut fruit", keepsAs: "cut-melon", due: ["keep-cold", "cut-fruit"] },
    { what: "sprouts", keepsAs: "sprouts", due: ["keep-cold", "sprouts"] },
    { what: "a sauce with raw egg", keepsAs: "raw-egg-sauce", due: ["keep-cold", "raw-egg"] },
    {
      what: "a nut cream",
      keepsAs: "nut-cream",
      due: ["keep-cold", "soaked-nuts"],
    },
    { what: "a dry crumb needs nothing but the deferral", keepsAs: "dry-crumb", due: [] },
    { what: "a food of unknown kind may need the cold", keepsAs: null, due: ["keep-cold"] },
  ])("$what", ({ keepsAs, due }) => {
    expect(codesOf(thing({ keepsAs }))).toEqual(expect.arrayContaining([...always, ...due]));
    expect(codesOf(thing({ keepsAs }))).toHaveLength(always.length + due.length);
  });

  it("are due for dry kidney beans by their slug, and by their name in any spelling", () => {
    expect(codesOf(thing({ foods: [food("red-kidney-beans")] }))).toContain("kidney-beans");
    expect(codesOf(thing({ foods: [named("Kidney Beans, dried")] }))).toContain("kidney-beans");
    expect(codesOf(thing({ foods: [named("kidney")] }))).not.toContain("kidney-beans");
  });

  it("warn of a slow cooker only where kidney beans go into one (O-29)", () => {
    // Bad Bug Book, 2nd edition, 2012 (US FDA), Phytohaemagglutinin chapter
    const beans = [food("red-kidney-beans")];
    const code = "kidney-beans-slow-cooker";
    expect(codesOf(thing({ foods: beans, steps: steps("Tip into the slow cooker") }))).toContain(code);
    expect(codesOf(thing({ foods: beans, steps: [step("cook", 300, { appliance: "slow-cooker" })] }))).toContain(code);
    expect(codesOf(thing({ foods: beans, steps: steps("Boil hard for 30 minutes") }))).not.toContain(code);
    expect(codesOf(thing({ steps: steps("Tip into the slow cooker") }))).not.toContain(code);
    const found = cautionsFor([thing({ foods: beans })], safety).cautions.find((each) => each.code === "kidney-beans");
    expect(found?.text).toMatch(/at least 5 hours.*30 minutes/s);
    expect(found?.restsOn.every(({ title }) => title.startsWith("Bad Bug Book"))).toBe(true);
  });

  it("send a long soak of pulses to the fridge", () => {
    expect(codesOf(thing({ foods: [named("chickpeas")], steps: steps("Soak overnight.") }))).toContain(
      "soak-in-the-fridge",
    );
    expect(codesOf(thing({ foods: [named("bread")], steps: steps("Soak overnight.") }))).not.toContain(
      "soak-in-the-fridge",
    );
  });

  it("match whole words only", () => {
    expect(codesOf(thing({ foods: [named("licorice, at any price")] }))).not.toContain("rice");
    expect(codesOf(thing({ foods: [named("Brown rice")] }))).toContain("rice");
  });

  it("are those a writer named, and a code nobody knows is reported", () => {
    const dal = component("dal", "1 kg", [], { keepsAs: "dry-crumb", cautions: ["raw-egg", "moon-dust"] });
    const found = cautionsFor(cautionedThings([{ component: dal, route: null, lines: [] }], [], []), safety);
    expect(found.cautions.map(({ code }) => code)).toEqual([...always, "raw-egg"]);
    expect(found.unknown).toEqual([{ subject: { kind: "COMPONENT", slug: "dal" }, code: "moon-dust" }]);
  });

  it("follow the route that is taken and the foods that are really used", () => {
    const beans = component("beans", "1 kg", [line("1 kg", "red-kidney-beans")], {
      keepsAs: "cooked-legume",
      steps: steps("Soak overnight"),
    });
    const jar = route("jar", [line("1 kg", "butter-beans")], { keepsAs: "dry-crumb", steps: steps("Freeze the rest") });
    const foods = [food("red-kidney-beans"), food("butter-beans")];
    const due = (taken: typeof jar | null, lines: typeof jar.lines): readonly string[] =>
      codesOf(...cautionedThings([{ component: beans, route: taken, lines }], [], foods));
    expect(due(null, beans.lines)).toEqual([
      ...always,
      ...["keep-cold", "cool-quickly", "reheat-until-steaming", "kidney-beans", "soak-in-the-fridge"],
    ]);
    expect(due(jar, jar.lines)).toEqual([...always, "thaw-in-the-fridge"]);
    const bowl = meal("bowl", [line("100 g", "red-kidney-beans")]);
    expect(codesOf(...cautionedThings([], [{ meal: bowl, lines: bowl.lines }], foods))).toContain("kidney-beans");
  });

  it("say what they are about", () => {
    const meal = thing({ subject: { kind: "MEAL", slug: "bowl" }, keepsAs: null, foods: [named("sprouts")] });
    const found = cautionsFor([thing({ keepsAs: "sprouts" }), meal], safety).cautions;
    expect(found.find(({ code }) => code === "sprouts")?.about.map(({ slug }) => slug)).toEqual(["it", "bowl"]);
    expect(found.find(({ code }) => code === "keep-cold")?.about.map(({ slug }) => slug)).toEqual(["it"]);
  });
});

describe("the text of cautions", () => {
  it.each(safety.cautions.map((caution) => ({ code: caution.code, caution })))(
    "is short, plain, sourced and promises nothing: $code",
    ({ caution }) => {
      expect(caution.text.length).toBeLessThan(260);
      expect(caution.text).toMatch(/^[A-Z].*\.$/s);
      // "food-safety code" is the one place where the word may stand.
      expect(caution.text.replace("food-safety code", "")).not.toMatch(
        /\bsafe(ly|ty)?\b|free from|guarantee|risk-free/i,
      );
      expect(caution.source.title.length).toBeGreaterThan(5);
      if (caution.source.kind === "PUBLISHED") expect(caution.source.title).not.toBe("");
    },
  );

  it("prints no number of hours or days that its rules do not have", () => {
    const numbers = (text: string): readonly string[] => text.match(/\d+(?= (?:hours|days|minutes))/g) ?? [];
    for (const { code, text, rules } of safety.cautions) {
      const rested = [...safety.keeping, ...safety.handling].filter(({ id }) => rules.includes(id));
      const known = JSON.stringify(rested);
      for (const number of numbers(text)) expect(known, code).toContain(number);
    }
  });
});

describe("one more fact", () => {
  it("never takes a caution away", () => {
    const words = ["rice", "kidney beans", "soak", "slow cooker", "freeze", "sprouts", "bread", "vacuum pack"];
    const text = fc.array(fc.constantFrom(...words), { minLength: 1, maxLength: 3 }).map((parts) => parts.join(", "));
    const some = fc.record({
      keepsAs: fc.constantFrom(...safety.classes.map(({ code }) => code)),
      codes: fc.array(fc.constantFrom("raw-egg", "rice"), { maxLength: 2 }),
      foods: fc.array(
        text.map((one) => named(one)),
        { maxLength: 3 },
      ),
      steps: fc.array(
        text.map((each) => step(each, 1)),
        { maxLength: 3 },
      ),
    });
    fc.assert(
      fc.property(some, some, (less, more) => {
        const before = codesOf(thing(less));
        const after = codesOf(
          thing({
            keepsAs: less.keepsAs,
            codes: [...less.codes, ...more.codes],
            foods: [...less.foods, ...more.foods],
            steps: [...less.steps, ...more.steps],
          }),
        );
        expect(after).toEqual(expect.arrayContaining([...before]));
      }),
    );
  });
});
