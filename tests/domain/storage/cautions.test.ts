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
    { what: "garlic in oil", keepsAs: "garlic-in-oil", due: ["garlic-in-oil"] },
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
    for (const joined of ["Basmatireis", "zilvervliesrijst"])
      expect(codesOf(thing({ foods: [named(joined)] })), joined).toContain("rice");
    for (const other of ["Reisfeldkraut", "Weißwein", "Eisbergsalat", "Linsen", "Grapefruit"])
      expect(codesOf(thing({ foods: [named(other)] })), other).toEqual(always);
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

  it("of raw food that goes straight into a meal are those of the meal: how cold, and how hot", () => {
    const of = (keepsAs: string, name: string): readonly string[] => {
      const raw = named(name, { slug: "raw", keepsAs });
      const supper = meal("supper", [line("100 g", "raw")]);
      return cautionsFor(cautionedThings([], [{ meal: supper, lines: supper.lines }], [raw]), safety)
        .cautions.filter(({ about }) => about.some(({ slug }) => slug === "supper"))
        .map(({ code }) => code);
    };
    for (const [keepsAs, code] of [
      ["raw-fish", "cook-fish"],
      ["raw-shellfish", "cook-fish"],
      ["raw-poultry", "cook-poultry"],
      ["raw-mince", "cook-mince"],
      ["eggs-in-shell", "cook-eggs"],
    ] as const)
      expect(of(keepsAs, "something"), keepsAs).toEqual(["keep-cold", code]);
    expect(of("raw-fish", "Hake")).toEqual(["keep-cold", "cook-fish"]);
    expect(of("milk", "Milk")).toEqual(["keep-cold"]);
    expect(of("raw-roots", "Carrot")).toEqual([]);
  });

  it("say what they are about", () => {
    const meal = thing({ subject: { kind: "MEAL", slug: "bowl" }, keepsAs: null, foods: [named("sprouts")] });
    const found = cautionsFor([thing({ keepsAs: "sprouts" }), meal], safety).cautions;
    expect(found.find(({ code }) => code === "sprouts")?.about.map(({ slug }) => slug)).toEqual(["it", "bowl"]);
    expect(found.find(({ code }) => code === "keep-cold")?.about.map(({ slug }) => slug)).toEqual(["it"]);
  });
});

describe("what can hurt by being cooked too little, or by being eaten at all", () => {
  // Least temperatures: Food Standards Agency (UK), Cooking your food (read: 70 °C for 2 minutes); USDA FSIS, Safe Minimum Internal
  // Temperature Chart, and Health Canada (both from memory).
  it.each([
    [
      "poultry",
      "cook-poultry",
      ["165 °F", "74 °C", "70 °C"],
      [
        "Chicken thighs",
        "Hähnchenbrustfilet",
        "Putenschnitzel",
        "poulet",
        "pollo",
        "kipfilet",
        "tacchino",
        "frango",
        "Pierś z kurczaka",
      ],
    ],
    [
      "mince",
      "cook-mince",
      ["160 °F", "71 °C", "70 °C"],
      [
        "Beef mince",
        "Rinderhackfleisch",
        "viande hachée",
        "Rundergehakt",
        "carne macinata",
        "carne moída",
        "carne picada",
      ],
    ],
    [
      "fish",
      "cook-fish",
      ["145 °F", "70 °C", "70 °C"],
      [
        "Salmon fillet",
        "Hake",
        "Seehechtfilet",
        "Wildlachs",
        "poisson",
        "pescado",
        "zalmfilet",
        "nasello",
        "pescada",
        "Dorsz",
      ],
    ],
    ["eggs", "cook-eggs", ["160 °F", "74 °C", "70 °C"], ["Eggs", "Ei", "œufs", "huevos", "eieren", "uova", "ovos"]],
  ])("%s", (_, code, [us, ca, gb], names) => {
    for (const name of names) {
      const textIn = (region: string | null) =>
        cautionsFor([thing({ foods: [named(name)] })], safety, region).cautions.find((each) => each.code === code)
          ?.text;
      expect(textIn("US"), name).toContain(us);
      expect(textIn("CA"), name).toContain(ca);
      expect(textIn("GB"), name).toContain(gb);
      expect(textIn(null), name).toMatch(/°F.*°C|°C.*°F/);
    }
  });

  it("honey, for babies under 12 months", () => {
    for (const name of ["Honey", "clear honey", "Honig", "miel", "Miód"])
      expect(codesOf(thing({ foods: [named(name)] })), name).toContain("honey-under-one-year");
  });

  it.each([
    ["raw-poultry", "cook-poultry"],
    ["raw-mince", "cook-mince"],
    ["raw-fish", "cook-fish"],
    ["raw-shellfish", "cook-fish"],
    ["eggs-in-shell", "cook-eggs"],
  ])("whatever it is called: %s", (keepsAs, code) => {
    expect(codesOf(thing({ foods: [named("Zzz", { keepsAs })] }))).toContain(code);
  });
});

describe("the reader's region", () => {
  const everything = safety.classes.map(({ code }) =>
    thing({
      subject: { kind: "COMPONENT", slug: code },
      keepsAs: code,
      foods: [named("rice"), named("chicken"), named("egg")],
    }),
  );
  const textsIn = (region: string | null): string =>
    cautionsFor(everything, safety, region)
      .cautions.map(({ text }) => text)
      .join(" ");

  it("is the only one whose units and thresholds are printed", () => {
    expect(textsIn("US")).not.toMatch(/°C|UK|\bcm\b/);
    expect(textsIn("US-WA")).toBe(textsIn("US"));
    for (const region of ["GB", "DE", "FR", "PL", "AU", "NZ", "CA", "XA"])
      expect(textsIn(region), region).not.toMatch(/°F|inch/);
    for (const region of ["US", "GB", "AU", "NZ", "CA"]) expect(textsIn(region), region).not.toMatch(/\bUK\b|\bUS\b/);
    expect(textsIn(null)).toMatch(/40 °F \(4 °C\)/);
  });

  it("decides on which published rules a caution rests", () => {
    const [cold] = cautionsFor([thing({ keepsAs: "cooked-rice" })], safety, "GB").cautions.filter(
      ({ code }) => code === "keep-cold",
    );
    expect(cold?.text).toContain("4 hours");
    expect(cold?.restsOn.every(({ title }) => title.includes("UK"))).toBe(true);
  });
});

describe("of two cautions about one thing", () => {
  it("only the stricter is printed: garlic in oil is never left out, not for two hours either", () => {
    const oil = thing({ subject: { kind: "COMPONENT", slug: "oil" }, keepsAs: "garlic-in-oil" });
    const rice = thing({ subject: { kind: "COMPONENT", slug: "rice" }, keepsAs: "cooked-rice" });
    const cold = cautionsFor([oil, rice], safety).cautions.find(({ code }) => code === "keep-cold");
    expect(cold?.about).toEqual([rice.subject]);
    expect(
      codesOf(thing({ keepsAs: "raw-herb-sauce", foods: [named("garlic", { keepsAs: "garlic-in-oil" })] })),
    ).not.toContain("garlic-in-oil");
    expect(codesOf(thing({ keepsAs: "raw-egg-sauce", foods: [named("eggs")] }))).not.toContain("cook-eggs");
  });

  it("none gives way to one that is not known, or to itself", () => {
    for (const { code, givesWayTo = [] } of safety.cautions) {
      expect(givesWayTo).not.toContain(code);
      for (const other of givesWayTo) expect(safety.cautions.map((each) => each.code)).toContain(other);
    }
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
    const printed = safety.cautions.flatMap(({ code, byRegion = [], ...strictest }) =>
      [strictest, ...byRegion].map(({ text, rules }) => ({ code, text, rules })),
    );
    for (const { code, text, rules } of printed) {
      const rested = [...safety.keeping, ...safety.handling].filter(({ id }) => rules.includes(id));
      const known = JSON.stringify(rested);
      for (const number of numbers(text)) expect(known, code).toContain(number);
    }
  });
});

describe("one more fact", () => {
  it("never takes a caution away, but for a stricter one about the same thing", () => {
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
        const stricterOf = new Map(safety.cautions.map(({ code, givesWayTo = [] }) => [code, givesWayTo]));
        for (const code of before)
          if (!after.includes(code))
            expect(
              after.some((other) => stricterOf.get(code)?.includes(other)),
              code,
            ).toBe(true);
      }),
    );
  });

  // What hurts is no less poisonous in another language: a food of the writer's own, named in that language alone.
  it.each([
    ["de", "Kidneybohnen", "Reis", "Weiße Bohnen", "Bohnen über Nacht einweichen."],
    ["fr", "haricots rouges", "riz", "haricots blancs", "Laisser tremper les haricots une nuit."],
    ["es", "alubias rojas", "arroz", "garbanzos", "Dejar los garbanzos en remojo toda la noche."],
    ["it", "fagioli rossi", "riso", "ceci", "Mettere i ceci in ammollo per una notte."],
    ["pt", "feijão vermelho", "arroz", "lentilhas", "Deixar de molho durante a noite."],
    ["nl", "kidneybonen", "rijst", "linzen", "Een nacht weken in koud water."],
    ["pl", "czerwona fasola", "ryż", "ciecierzyca", "Namoczyć na noc."],
  ])("know raw kidney beans, rice and a long soak in %s", (language, kidney, rice, pulse, soak) => {
    const own = (one: string): Food =>
      food("own", { names: [{ language, region: null, one, many: one, also: [] }], keepsAs: null });
    expect(codesOf(thing({ foods: [own(kidney)] }))).toContain("kidney-beans");
    expect(codesOf(thing({ foods: [own(rice)] }))).toContain("rice");
    expect(codesOf(thing({ foods: [own(pulse)], steps: steps(soak) }))).toContain("soak-in-the-fridge");
  });

  // A claim of one country's advice stands in the text for others only with that advice named beside it.
  it("rest on a rule that says so where they allow reheating only once, in every region", () => {
    const once = new Set(safety.handling.filter(({ topic, limit }) => topic === "REHEATING" && limit?.unit === "TIME"));
    expect(once.size).toBe(1);
    const sources = new Set([...once].map(({ source }) => source.title));
    let said = 0;
    for (const region of [null, "GB", "US", "CA", "AU", "DE", "JP", "INT"]) {
      const { cautions } = cautionsFor([thing({ keepsAs: "cooked-grain" })], safety, region);
      for (const { text, restsOn } of cautions.filter((each) => each.text.includes("only once"))) {
        said += 1;
        expect(
          restsOn.map(({ title }) => title).filter((title) => sources.has(title)),
          `${region}: ${text}`,
        ).not.toEqual([]);
      }
    }
    expect(said).toBeGreaterThan(4);
  });
});
