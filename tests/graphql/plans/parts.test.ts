import { afterAll, beforeAll, expect, it } from "vitest";
import type { Food } from "../../../src/domain/model/food.js";
import type { Meal } from "../../../src/domain/model/plan.js";
import { publishPlan } from "../../../src/services/plans/publish-plan.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { bundle, food, keeps, line, meal, of, own, part, plan } from "../../kit/builders.js";
import { openTestApp, type TestApp } from "../open-test-app.js";

// White 33 g and yolk 17 g of a large egg: USDA SR 28, weight file, NDB 01124 and 01125.
const egg = food("egg", {
  shoppedBy: "COUNT",
  measures: [own("piece", { grams: 50, pieces: 1 })],
  parts: [part("white", "33 g"), part("yolk", "17 g")],
});
const lemon = food("lemon", {
  shoppedBy: "COUNT",
  parts: [part("zest", "6 g"), part("juice", "48 g", ["zest"], { keepsAs: "lemon-juice", keeping: [keeps(9)] })],
});

const week = (slug: string, meals: readonly Meal[], ...foods: readonly Food[]) =>
  bundle(plan(meals, { slug, publisher: "plot" }), [], foods);

const citrus = (slug: string, juiceDay: number) =>
  week(
    slug,
    [
      meal("cake", [line("2 piece", of("lemon", "zest"))]),
      meal("drink", [line("3 piece", of("lemon", "juice"))], { day: juiceDay }),
    ],
    lemon,
  );

interface Answer {
  readonly plan: {
    readonly scaled: {
      readonly warnings: readonly {
        readonly code: string;
        readonly message: string;
        readonly path: readonly string[];
      }[];
      readonly shoppingList: {
        readonly warnings: readonly { readonly code: string; readonly path: readonly string[] }[];
        readonly lines: readonly {
          readonly need: { readonly value: number };
          readonly partsOver: readonly unknown[];
        }[];
      };
    };
  };
}

describeOnBothDatabases("parts of one piece", (open) => {
  let app: TestApp;

  const listOf = async (slug: string, region = "US"): Promise<Answer["plan"]["scaled"]> => {
    const { data, errors } = await app.ask(`{ plan(publisher: "plot", slug: "${slug}") {
      scaled(servings: 1, household: { region: "${region}" }) {
        warnings { code message path }
        shoppingList { warnings { code path }
          lines { need { value } partsOver { part pieces amount { value text unit { code } } } } } } } }`);
    expect(errors).toEqual([]);
    return (data as unknown as Answer).plan.scaled;
  };

  beforeAll(async () => {
    app = await openTestApp((await open()).data);
    await app.deps.data.publishers.save({ slug: "plot", name: "Plot" });
    const eggs = [
      meal("meringue", [line("4 piece", of("egg", "white"))]),
      meal("custard", [line("3 piece", of("egg", "yolk"))]),
      meal("bake", [line("2 piece", "egg")]),
    ];
    for (const each of [week("eggs", eggs, egg), citrus("soon", 6), citrus("late", 7)]) {
      expect(await publishPlan(app.deps, each)).toMatchObject({ ok: true });
    }
  });
  afterAll(() => app.close());

  it("O-17: four whites, three yolks and two whole eggs are six eggs, and the yolk left over is named", async () => {
    const [line] = (await listOf("eggs")).shoppingList.lines;
    expect(line).toEqual({
      need: { value: 6 },
      partsOver: [{ part: "yolk", pieces: 1, amount: { value: 17, text: "17 g", unit: { code: "g" } } }],
    });
  });

  // Fresh lemon juice keeps "6 days" in the fridge: the published rules, class lemon-juice, household, US.
  it("O-16: juice is shared up to the published ceiling, not to the writer's longer word", async () => {
    const { warnings, shoppingList } = await listOf("soon");
    expect(shoppingList.lines[0]?.need.value).toBe(3);
    expect([...warnings, ...shoppingList.warnings].filter(({ code }) => code === "PART_TOO_OLD")).toEqual([]);
  });

  it("O-16: beyond it the list buys for both, and plan and list say why", async () => {
    const { warnings, shoppingList } = await listOf("late");
    expect(shoppingList.lines[0]?.need.value).toBe(5);
    const [told] = warnings.filter(({ code }) => code === "PART_TOO_OLD");
    expect(told).toEqual({
      code: "PART_TOO_OLD",
      path: ["meals", "drink"],
      message:
        'meals > drink: The "juice" of "lemon" keeps 6 days once the piece is cut, so "drink" on day 7 cannot take it from one' +
        " that is cut on day 0. Cut a fresh one for it; the list counts it.",
    });
    expect(shoppingList.warnings).toContainEqual({ code: "PART_TOO_OLD", path: ["meals", "drink"] });
  });

  it("are told with their keeping", async () => {
    const { data, errors } = await app.ask(`{ plan(publisher: "plot", slug: "late") {
      foods { parts { name keepsAs keeping { place days source { title } } } } } }`);
    expect(errors).toEqual([]);
    expect(data).toEqual({
      plan: {
        foods: [
          {
            parts: [
              { name: "zest", keepsAs: null, keeping: [] },
              {
                name: "juice",
                keepsAs: "lemon-juice",
                keeping: [{ place: "FRIDGE", days: 9, source: { title: "test parameter" } }],
              },
            ],
          },
        ],
      },
    });
  });
});
