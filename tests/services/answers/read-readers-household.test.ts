import { describe, expect, it } from "vitest";
import { compileFoodNames } from "../../../src/domain/quantity/food-name.js";
import { problemText } from "../../../src/exports/sentences/problem-text.js";
import type { FoodCatalogue } from "../../../src/services/answers/on-hand-foods.js";
import type { GivenHousehold } from "../../../src/services/answers/read-household.js";
import { readReadersHousehold } from "../../../src/services/answers/read-readers-household.js";
import { openTimeSlicer } from "../../../src/services/time-slices.js";
import { demo, demoBundle } from "../../graphql/open-test-app.js";

const bundle = demoBundle("bean-night");
const [first = "", second = ""] = bundle.foods.map(({ slug }) => slug);
const catalogue: FoodCatalogue = {
  bySlugs: (slugs) => Promise.resolve(slugs.map((slug) => demo.foods.find((food) => food.slug === slug) ?? null)),
  names: () => Promise.resolve(compileFoodNames(demo.foods)),
};
let asked: string[] = [];
const read = async (given: GivenHousehold) => {
  asked = [];
  const found = await readReadersHousehold(given, [{ bundle, servings: null }], [], {
    ...catalogue,
    bySlugs: (slugs) => {
      asked.push(...slugs);
      return catalogue.bySlugs(slugs);
    },
  });
  return found.ok ? [] : found.problems;
};

describe("a reader's swaps", () => {
  it("are of foods that the plan has, and then nothing is looked up", async () => {
    expect(await read({ swaps: [{ from: first, to: second }] })).toEqual([]);
    expect(asked).toEqual([]);
  });

  it("may be of foods that only other plans have", async () => {
    const elsewhere = demo.foods.find(({ slug }) => bundle.foods.every((food) => food.slug !== slug))?.slug ?? "";
    expect(elsewhere).not.toBe("");
    expect(await read({ swaps: [{ from: elsewhere, to: first }] })).toEqual([]);
    expect(asked).toEqual([elsewhere]);
  });

  // Every food of the plan, misspelt on each side: refused, with the food that was meant.
  it.each(bundle.foods.map(({ slug }) => slug))("name the food that a misspelt one may mean: %s", async (slug) => {
    const wrong = `${slug.slice(0, -1)}${slug.slice(-1)}q`;
    for (const side of ["from", "to"] as const) {
      const other = side === "from" ? "to" : "from";
      const [problem] = await read({ swaps: [{ [side]: wrong, [other]: first } as { from: string; to: string }] });
      expect(problem).toMatchObject({ code: "BAD_HOUSEHOLD", path: ["household", "swaps", 0, side], value: wrong });
      expect(problem && problemText(problem)).toContain(slug);
    }
  });

  it("are refused where nothing is near, and where no database could hold the text", async () => {
    for (const from of ["xyzzyxyzzy", "\0", "x".repeat(5_000), ""])
      expect(await read({ swaps: [{ from, to: first }] })).toMatchObject([
        { code: "BAD_HOUSEHOLD", path: ["household", "swaps", 0, "from"] },
      ]);
  });
});

describe("what a reader has on hand", () => {
  const onHand = async (food: string, locale: string | null = null) => {
    const given = { onHand: [{ food, amount: "100", unit: "g" }], locale } as GivenHousehold;
    const found = await readReadersHousehold(given, [{ bundle, servings: null }], [], catalogue);
    if (!found.ok) return found.problems.map((problem) => `${problem.code} ${problem.path.join(".")}`).join(", ");
    const [one] = found.value.onHand;
    return one?.item.kind === "FOOD" ? one.item.food : null;
  };

  it("is the food of the plan by any of its names, where no other of them is called so", async () => {
    let named = 0;
    for (const food of bundle.foods)
      for (const name of food.names)
        for (const written of [name.one, name.many, `  ${name.many.toUpperCase()} `]) {
          const others = bundle.foods.filter(
            ({ slug, names }) =>
              slug !== food.slug && JSON.stringify(names).toLowerCase().includes(`"${written.trim().toLowerCase()}"`),
          );
          if (others.length > 0 || demo.foods.some(({ slug }) => slug === written)) continue;
          named += 1;
          expect(await onHand(written, name.language), written).toBe(food.slug);
        }
    expect(named).toBeGreaterThan(50);
  });

  const elsewhere = demo.foods.filter(({ slug }) => bundle.foods.every((food) => food.slug !== slug));

  it("is a food by its slug, whichever plan has it", async () => {
    for (const { slug } of [...bundle.foods, ...elsewhere]) expect(await onHand(slug)).toBe(slug);
  });

  it("is a food of no plan by its name in any language, too", async () => {
    let named = 0;
    for (const food of elsewhere)
      for (const { language, many } of food.names) {
        const found = await onHand(many, language);
        // A name of several is a question, and one of the plan's foods is that of the plan.
        if (found !== food.slug) expect(found).toMatch(/^AMBIGUOUS_FOOD|^[a-z-]+$/);
        else named += 1;
      }
    expect(named).toBeGreaterThan(50);
  });

  it("is refused with its place where it is nobody's name, or no text for a database", async () => {
    for (const food of ["xyzzy", "tomato leather", "\0", "x".repeat(200), "x".repeat(5_000), "usda 1", "carot"])
      expect(await onHand(food)).toBe("UNKNOWN_FOOD household.onHand.0.food");
  });

  it("is refused with the foods that a misspelt slug or name is near, by their names in the reader's language", async () => {
    const near = async (food: string, locale: string) => {
      const given = { onHand: [{ food, amount: "100", unit: "g" }], locale };
      const found = await readReadersHousehold(given, [{ bundle, servings: null }], [], catalogue);
      const [problem] = found.ok ? [] : found.problems;
      return problem?.code === "UNKNOWN_FOOD" ? (problem.offer?.nearest ?? []) : problem?.code;
    };
    expect(await near("carot", "en")).toContain("carrots");
    expect(await near("Karoten", "de")).toContain("Karotten");
    expect(await near("xyzzyxyzzy", "de")).toEqual([]);
  });

  it("is asked back where one name is that of several foods, and taken by each of the names it offers", async () => {
    const shared = elsewhere.slice(0, 2).map((food) => ({
      ...food,
      names: food.names.map((name) => ({ ...name, also: [...name.also, "pantry thing"] })),
    }));
    const names = () =>
      Promise.resolve(
        compileFoodNames([...shared, ...demo.foods.filter(({ slug }) => shared.every((each) => each.slug !== slug))]),
      );
    const ask = async (food: string, locale: string) => {
      const given = { onHand: [{ food, amount: "100", unit: "g" }], locale };
      return readReadersHousehold(given, [{ bundle, servings: null }], [], { ...catalogue, names });
    };
    const found = await ask("pantry thing", "en");
    const [problem] = found.ok ? [] : found.problems;
    expect(problem).toMatchObject({ code: "AMBIGUOUS_FOOD", food: "pantry thing" });
    const candidates = problem?.code === "AMBIGUOUS_FOOD" ? problem.candidates : [];
    expect(candidates.length).toBeGreaterThan(1);
    for (const each of candidates) expect((await ask(each, "en")).ok, each).toBe(true);
  });

  it("is as much as people say, in packs of the food, wherever a plan has it", async () => {
    const amounts = async (food: string, amount: string, locale: string | null = null) => {
      const given = { onHand: [{ food, amount }], locale };
      const found = await readReadersHousehold(given, [{ bundle, servings: null }], [], catalogue);
      if (!found.ok) return found.problems.map((problem) => `${problem.code} ${problem.path.join(".")}`).join(", ");
      const [one] = found.value.onHand;
      return one === undefined ? null : `${one.amount} ${one.unit}`;
    };
    expect(await amounts("carrot", "500g")).toBe("500 g");
    expect(await amounts("tinned-chickpeas", "2 tins")).toBe("2 own:tin");
    expect(await amounts("Kichererbsen aus der Dose, abgetropft", "2 Dosen", "de")).toBe("2 own:tin");
    expect(await amounts("carrot", "a bottle")).toBe("UNKNOWN_UNIT household.onHand.0.amount");
    expect(await amounts("carrot", "lots")).toBe("BAD_AMOUNT household.onHand.0.amount");
  });

  it("counts a look-up for each name in each plan, and lets others run between them", async () => {
    const bundles = demo.bundles;
    const steps = async (names: number, plans: number): Promise<number> => {
      let now = 0;
      // A clock on which every second look is a slice later.
      const work = openTimeSlicer(() => (now += 6)).beginJob();
      let turns = 0;
      let goes = true;
      const others = (): void => {
        turns += 1;
        if (goes) setImmediate(others);
      };
      setImmediate(others);
      const onHand = Array.from({ length: names }, (_, at) => ({
        ...{ food: `nobody's ${String(at)}`, amount: "1", unit: "g" },
      }));
      await readReadersHousehold(
        { onHand },
        bundles.slice(0, plans).map((each) => ({ bundle: each, servings: null })),
        [],
        { bySlugs: (slugs) => Promise.resolve(slugs.map(() => null)), names: catalogue.names },
        {
          work,
        },
      );
      goes = false;
      expect(turns).toBeGreaterThan((names * plans) / 2);
      return work.steps;
    };
    const one = await steps(20, 1);
    expect(await steps(40, 1)).toBeGreaterThan(one);
    // Names that were read already are looked up in what is left of the plans.
    const again = await steps(20, 1);
    expect(again).toBeLessThan(one / 2);
    expect(await steps(20, 4)).toBeGreaterThanOrEqual(again + 3 * 20 * 8);
  });
});
