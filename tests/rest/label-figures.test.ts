import { afterAll, beforeAll, expect, it } from "vitest";
import { publishPlan } from "../../src/services/plans/publish-plan.js";
import { wordsFor } from "../../src/exports/words/words-for.js";
import { demoBundle, renamed } from "../graphql/open-test-app.js";
import { describeOnEmbedded } from "../kit/databases.js";
import { openRest, planOf, publisher, type RestApp } from "./open-rest.js";

interface Figure {
  readonly value: number;
  readonly upTo: number | null;
  readonly text: string;
}
interface OnLabel {
  readonly name: string;
  readonly unit: string;
  readonly perServing: Figure;
  readonly per100g: Figure | null;
}
interface Nutrition {
  readonly labelScheme: "US" | "EU" | null;
  readonly nutrients: readonly {
    readonly nutrient: string;
    readonly perServing: number;
    readonly onLabel: OnLabel | null;
  }[];
}
interface Answer {
  readonly nutrition: Nutrition;
  readonly meals: readonly { readonly nutrition: Nutrition }[];
}

const figure = "{ value upTo text }";
const nutrition = `nutrition { labelScheme nutrients { nutrient perServing label onLabel { name unit perServing ${figure} per100g ${figure} } } }`;
const query = `query ($household: HouseholdInput) { plan(publisher: "${publisher}", slug: "bean-night") {
  scaled(servings: 4, household: $household) { ${nutrition} meals { ${nutrition} } } } }`;

describeOnEmbedded("figures as labels print them", (open) => {
  let app: RestApp;

  beforeAll(async () => {
    app = await openRest(open);
  });
  afterAll(() => app.close());

  const overGraphql = async (household: object): Promise<Answer> => {
    const { data, errors } = await app.ask(query, { household });
    expect(errors).toEqual([]);
    return (data?.["plan"] as { readonly scaled: Answer }).scaled;
  };
  const overRest = async (household: Readonly<Record<string, string>>): Promise<Answer> =>
    (await app.get(`${planOf("bean-night")}?${String(new URLSearchParams({ servings: "4", ...household }))}`))
      .body as Answer;
  const labelled = ({ labelScheme, nutrients }: Nutrition) => ({
    labelScheme,
    nutrients: nutrients.map(({ nutrient, onLabel }) => ({ nutrient, onLabel })),
  });
  const labels = ({ nutrition: whole, meals }: Answer) => [whole, ...meals.map((meal) => meal.nutrition)].map(labelled);

  it.each([
    ["DE", "de", "EU"],
    ["GB", "pl", "EU"],
    ["US-WA", "es", "US"],
    ["US", "en", "US"],
    ["CA", "fr", null],
  ] as const)("follow the region and the reader's language: %s, %s", async (region, locale, scheme) => {
    const [graphql, rest] = [await overGraphql({ region, locale }), await overRest({ region, locale })];
    expect(labels(rest)).toEqual(labels(graphql));
    expect(rest.nutrition.labelScheme).toBe(scheme);
    const { nutrientNames } = wordsFor(locale);
    const found = rest.nutrition.nutrients;
    const sodium = found.find(({ nutrient }) => nutrient === "sodiumMg");
    if (scheme === null) {
      expect(found.map(({ onLabel }) => onLabel)).toEqual(found.map(() => null));
      return;
    }
    expect(sodium?.onLabel).toMatchObject(
      scheme === "EU" ? { name: nutrientNames.salt, unit: "g" } : { name: nutrientNames.sodiumMg, unit: "mg" },
    );
    // The exact figure stands beside it, and is near it.
    const energy = found.find(({ nutrient }) => nutrient === "energyKcal")!;
    expect(energy.onLabel?.perServing.text).toBe(`${energy.onLabel?.perServing.value} kcal`);
    expect(Math.abs(energy.perServing - energy.onLabel!.perServing.value)).toBeLessThanOrEqual(
      scheme === "US" ? 5 : 0.5,
    );
    // By neither table has calcium a figure here.
    expect(found.find(({ nutrient }) => nutrient === "calciumMg")?.onLabel).toBeNull();
  });

  it("are none where nobody says where the reader shops, and those of the plan's own region where that says it", async () => {
    const unplaced = await overRest({});
    expect(unplaced.nutrition.labelScheme).toBeNull();
    expect(labels(unplaced)).toEqual(labels(await overGraphql({})));
    const { plan, ...bundle } = demoBundle("bean-night");
    const placed = renamed({ ...bundle, plan: { ...plan, region: "US" } }, "bean-night-there");
    expect((await publishPlan(app.deps, placed)).ok).toBe(true);
    const { body } = await app.get(`${planOf("bean-night-there")}?servings=4`);
    expect((body as Answer).nutrition.labelScheme).toBe("US");
  });

  it("are in the brief form, too", async () => {
    const { body } = await app.get(`${planOf("bean-night")}?servings=4&locale=de&region=DE&include=nutrition`);
    const found = (body as Answer).nutrition.nutrients.find(({ nutrient }) => nutrient === "energyKcal");
    expect(found?.onLabel).toMatchObject({ name: "Brennwert", unit: "kcal" });
  });
});
