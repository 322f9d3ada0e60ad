import { afterAll, beforeAll, expect, it } from "vitest";
import { loadSeeds } from "../../../src/services/drafts/load-seeds.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { demo, demoBundle, openTestApp, renamed, type TestApp } from "../open-test-app.js";

const plan = (slug: string): string => `plan(publisher: "third-gate-allotments", slug: "${slug}")`;

interface Task {
  readonly code: string;
  readonly startMinute: number;
  readonly endMinute: number;
  readonly startsAt: string | null;
  readonly eveningBefore: boolean;
}

describeOnBothDatabases("what a plan says beside its amounts", (open) => {
  let app: TestApp;

  const ask = async <T>(query: string, variables: Record<string, unknown> = {}): Promise<T> => {
    const { data, errors } = await app.ask(query, variables);
    expect(errors).toEqual([]);
    return data as T;
  };

  beforeAll(async () => {
    app = await openTestApp((await open()).data);
    await loadSeeds(app.deps, demo);
  });
  afterAll(() => app.close());

  it("orders the session: nothing before what it follows, soaks the evening before, across a clock change", async () => {
    // Central Europe put its clocks back on 2026-10-25 at 03:00 (IANA tz database): the night has an hour more.
    const answer = await ask<{
      plan: { scaled: { session: { tasks: Task[]; order: { before: string; after: string }[]; optimal: boolean } } };
    }>(`{ ${plan("bean-night")} { scaled(servings: 7, household: {
      sessionStart: { local: "2026-10-25T09:00", zone: "Europe/Berlin" } }) {
        session { tasks { code startMinute endMinute startsAt eveningBefore } order { before after } optimal } } } }`);
    const { tasks, order, optimal } = answer.plan.scaled.session;
    expect(optimal).toBe(true);
    const byCode = new Map(tasks.map((task) => [task.code, task]));
    for (const { before, after } of order) {
      expect(byCode.get(after)?.startMinute).toBeGreaterThanOrEqual(byCode.get(before)?.endMinute ?? Number.NaN);
    }
    const soak = tasks.find(({ eveningBefore }) => eveningBefore);
    expect(soak?.startsAt).toMatch(/^2026-10-24T2\d:\d\d:\d\d\+02:00$/);
    const minutes = (Date.parse("2026-10-25T09:00:00+01:00") - Date.parse(soak?.startsAt ?? "")) / 60_000;
    expect(soak?.startMinute).toBeCloseTo(-minutes, 6);
  });

  it("plans a session without what is on hand in full", async () => {
    const answer = await ask<{ plan: { scaled: { session: { tasks: { of: { slug: string } }[] } } } }>(
      `{ ${plan("roots-and-barley")} { scaled(servings: 2, household: {
        onHand: [{ component: "boiled-barley", amount: "5", unit: "kg" }] }) {
          session { tasks { of { ... on Component { slug } ... on Meal { slug } } } } } } }`,
    );
    const slugs = answer.plan.scaled.session.tasks.map(({ of }) => of.slug);
    expect(slugs.length).toBeGreaterThan(0);
    expect(slugs).not.toContain("boiled-barley");
  });

  it("states allergens in three values, and never calls unknown absent", async () => {
    interface Finding {
      readonly code: string;
      readonly presence: string;
      readonly contains: readonly { readonly slug: string }[];
      readonly unknown: readonly { readonly slug: string }[];
    }
    const answer = await ask<{ plan: { scaled: { allergens: { reach: string; findings: Finding[] } } } }>(
      `{ ${plan("eggs-and-oats")} { scaled(servings: 4, household: { region: "GB" }) {
        allergens { reach findings { code presence contains { slug } unknown { slug } } } } } }`,
    );
    const { reach, findings } = answer.plan.scaled.allergens;
    expect(reach).toBe("REGION");
    const egg = findings.find(({ code }) => code === "egg");
    expect(egg?.presence).toBe("CONTAINS");
    expect(egg?.contains).toContainEqual({ slug: "egg" });
    for (const { presence, contains, unknown } of findings) {
      if (contains.length > 0) expect(presence).toBe("CONTAINS");
      else if (unknown.length > 0) expect(["UNKNOWN", "MAY_CONTAIN"]).toContain(presence);
    }
  });

  it("swaps for a gluten-free reader, and says of the whole what stays unknown", async () => {
    const answer = await ask<{
      plan: {
        scaled: {
          components: { lines: { swapped: boolean; food: { slug: string } | null }[] }[];
          meals: { lines: { swapped: boolean; food: { slug: string } | null }[] }[];
          diets: { code: string; fits: boolean | null; breaks: { slug: string }[]; unknown: { slug: string }[] }[];
          warnings: { code: string; path: string[] }[];
        };
      };
    }>(
      `{ ${plan("bean-night")} { scaled(servings: 4, household: { diets: ["gluten-free"], region: "GB" }) {
        components { lines { swapped food { slug } } } meals { lines { swapped food { slug } } }
        diets { code fits breaks { slug } unknown { slug } } warnings { code path } } } }`,
    );
    const { scaled } = answer.plan;
    const lines = [...scaled.components, ...scaled.meals].flatMap((each) => each.lines);
    expect(lines.filter(({ swapped }) => swapped).map(({ food }) => food?.slug)).toContain("buckwheat-groats");
    const diet = scaled.diets.find(({ code }) => code === "gluten-free");
    const unmet = scaled.warnings.filter(({ code }) => code === "DIET_NOT_MET");
    expect(diet?.fits === true).toBe(unmet.length === 0);
    if (diet?.fits === false) expect(diet.breaks.length).toBeGreaterThan(0);
    if (diet?.fits === null) expect(diet.unknown.length).toBeGreaterThan(0);
  });

  it("gives nutrition per serving that does not change with the servings, with its coverage and label figures", async () => {
    interface Figure {
      readonly nutrient: string;
      readonly perServing: number;
      readonly coverage: number;
      readonly label: string | null;
    }
    const query = `query ($servings: Int!) { ${plan("lentils-and-greens")} { scaled(servings: $servings) {
      nutrition { basis nutrients { nutrient perServing coverage label(scheme: US) } unweighed { slug } }
      meals { nutrition { nutrients { nutrient perServing } } } } } }`;
    type Answer = {
      plan: {
        scaled: { nutrition: { nutrients: Figure[] }; meals: { nutrition: { nutrients: Figure[] } }[] };
      };
    };
    const [two, four] = [await ask<Answer>(query, { servings: 2 }), await ask<Answer>(query, { servings: 4 })];
    const energy = ({ nutrients }: { readonly nutrients: readonly Figure[] }): number =>
      nutrients.find(({ nutrient }) => nutrient === "energyKcal")?.perServing ?? Number.NaN;
    const whole = two.plan.scaled.nutrition;
    expect(energy(whole)).toBeGreaterThan(200);
    // Salt and spices that grow slower than the pot carry next to no energy.
    expect(energy(four.plan.scaled.nutrition) / energy(whole)).toBeCloseTo(1, 2);
    expect(two.plan.scaled.meals.reduce((sum, meal) => sum + energy(meal.nutrition), 0)).toBeCloseTo(energy(whole), 6);
    for (const { coverage } of whole.nutrients) expect(coverage).toBeGreaterThan(0);
    // 21 CFR 101.9(c)(1): above 50 kcal to the nearest 10.
    const label = whole.nutrients.find(({ nutrient }) => nutrient === "energyKcal")?.label ?? "";
    expect(label).toBe(String(Math.floor(energy(whole) / 10 + 0.5) * 10));
  });

  it("shows cautions with their source, and never says that food is safe", async () => {
    const answer = await ask<{
      plan: {
        scaled: { cautions: { code: string; text: string; source: { title: string }; about: { slug: string }[] }[] };
      };
    }>(`{ ${plan("bean-night")} { scaled(servings: 4) { cautions { code text source { title }
      about { ... on Component { slug } ... on Meal { slug } ... on Food { slug } } } } } }`);
    const { cautions } = answer.plan.scaled;
    expect(cautions.find(({ code }) => code === "kidney-beans")?.about).toContainEqual({ slug: "boiled-kidney-beans" });
    for (const { text, source } of cautions) {
      expect(text).not.toMatch(/\b(is|are) safe\b/i);
      expect(source.title.length).toBeGreaterThan(0);
    }
    expect(cautions.map(({ text }) => text).join(" ")).toMatch(/local/i);
  });

  it("tells a writer at which servings the plan comes out even, and refuses a table that is too long", async () => {
    const answer = await ask<{ plan: { servingsTable: { servings: number; even: boolean; leftOverShare: number }[] } }>(
      `{ ${plan("eggs-and-oats")} { servingsTable(from: 2, to: 12, household: { region: "XA", currency: "XTS" }) {
        servings even leftOverShare perServing { amount } packWasteShare } } }`,
    );
    const rows = answer.plan.servingsTable;
    expect(rows.map(({ servings }) => servings)).toEqual([2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
    for (const { even, leftOverShare } of rows) expect(even).toBe(leftOverShare === 0);
    const { errors } = await app.ask(
      `{ ${plan("eggs-and-oats")} { servingsTable(from: 1, to: 100000) { servings } } }`,
    );
    expect(errors[0]?.extensions["code"]).toBe("TOO_LARGE");
  });

  it("checks a plan for its writer", async () => {
    const answer = await ask<{
      plan: { check: { code: string; severity: string; message: string; path: string[] }[] };
    }>(`{ ${plan("roots-and-barley")} { check { code severity message path } } }`);
    const { check } = answer.plan;
    expect(check.map(({ code }) => code)).toContain("KEPT_TOO_LONG");
    for (const { message, path } of check) {
      expect(path.length).toBeGreaterThan(0);
      // Sentences name things by their titles; the path stands beside them.
      expect(message).not.toContain(path.join(" > "));
      expect(message).not.toContain(String(path[1] ?? path[0]));
    }
  });

  it("O-21: shops two foods as one from the day the catalogue calls them one, in plans published before", async () => {
    const bundle = demoBundle("roots-and-barley");
    const carrot = bundle.foods.find(({ slug }) => slug === "carrot");
    if (carrot === undefined) throw new Error("the demo has no carrot");
    const twin = {
      ...carrot,
      slug: "garden-root",
      names: [{ ...carrot.names[0]!, one: "garden root", many: "garden roots", also: [] }],
    };
    const meal = bundle.plan.meals[0]!;
    const line = {
      ...bundle.components[0]!.lines[0]!,
      id: "twin",
      item: { kind: "FOOD" as const, food: "garden-root", part: null },
    };
    const added = {
      ...meal,
      lines: [...meal.lines, { ...line, written: "100 g", amount: { low: "100", high: "100", unit: "g" } }],
    };
    const old = renamed(bundle, "with-a-twin");
    await app.deps.data.foods.save([twin]);
    await app.deps.data.revisions.publish(
      {
        ...old,
        plan: { ...old.plan, meals: [added, ...old.plan.meals.slice(1)] },
        foods: [...old.foods, twin],
      },
      new Date("2026-02-01T00:00:00Z"),
    );
    const list = `{ shoppingList(plans: [{ publisher: "third-gate-allotments", slug: "with-a-twin", servings: 4 }]) {
      lines { food { slug } need { grams } } } }`;
    type List = { shoppingList: { lines: { food: { slug: string }; need: { grams: number } | null }[] } };
    const grams = ({ shoppingList }: List, slug: string): number | null =>
      shoppingList.lines.find(({ food }) => food.slug === slug)?.need?.grams ?? null;
    const apart = await ask<List>(list);
    const [carrots, twins] = [grams(apart, "carrot"), grams(apart, "garden-root")];
    expect(twins).toBeGreaterThan(0);
    const [name, ...others] = carrot.names;
    await app.deps.data.foods.save([
      { ...carrot, names: [{ ...name!, also: [...name!.also, "garden root"] }, ...others] },
    ]);
    const together = await ask<List>(list);
    expect(grams(together, "garden-root")).toBeNull();
    expect(grams(together, "carrot")).toBeCloseTo((carrots ?? 0) + (twins ?? 0), 6);
  });
});
