import { describe, expect, it } from "vitest";
import { problemText } from "../../../src/exports/sentences/problem-text.js";
import type { GivenHousehold } from "../../../src/services/answers/read-household.js";
import { readReadersHousehold } from "../../../src/services/answers/read-readers-household.js";
import { openTimeSlicer } from "../../../src/services/time-slices.js";
import { demo, demoBundle } from "../../graphql/open-test-app.js";

const bundle = demoBundle("bean-night");
const [first = "", second = ""] = bundle.foods.map(({ slug }) => slug);
let asked: string[] = [];
const read = async (given: GivenHousehold) => {
  asked = [];
  const found = await readReadersHousehold(given, [{ bundle, servings: null }], [], (slugs) => {
    asked.push(...slugs);
    return Promise.resolve(slugs.map((slug) => demo.foods.find((food) => food.slug === slug) ?? null));
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
    const found = await readReadersHousehold(given, [{ bundle, servings: null }], [], (slugs) =>
      Promise.resolve(slugs.map((slug) => demo.foods.find((each) => each.slug === slug) ?? null)),
    );
    const [one] = found.ok ? found.value.onHand : [];
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

  it("stays as written where it is a slug, nobody's name, or no text for a database", async () => {
    const elsewhere = demo.foods.find(({ slug }) => bundle.foods.every((food) => food.slug !== slug))?.slug ?? "";
    for (const food of [first, elsewhere, "xyzzy", "tomato leather", "\0", "x".repeat(200)])
      expect(await onHand(food)).toBe(food);
    expect(await onHand("x".repeat(5_000))).toBeNull();
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
        (slugs) => Promise.resolve(slugs.map(() => null)),
        {
          work,
        },
      );
      goes = false;
      expect(turns).toBeGreaterThan((names * plans) / 2);
      return work.steps;
    };
    const one = await steps(20, 1);
    expect(await steps(40, 1)).toBeGreaterThan(1.8 * one);
    expect(await steps(20, 4)).toBeGreaterThan(3 * one);
  });
});
