import Validator from "@adobe/structured-data-validator";
import jsonld from "jsonld";
import { Temporal } from "temporal-polyfill";
import { beforeAll, describe, expect, it } from "vitest";
import type { PlanAnswer } from "../../../src/domain/plan/plan-answer.js";
import { isoDuration } from "../../../src/exports/schema-org/iso-duration.js";
import { schemaOrgText } from "../../../src/exports/schema-org/schema-org.js";
import * as build from "../../kit/builders.js";
import { addresses, answerOf, demo, demoBundle, sundayHousehold } from "../demo-answer.js";
import { htmlTree } from "../html-tree.js";
import { schemaOrgContext } from "./schema-org-context.js";

interface Thing {
  readonly "@type": string;
  readonly "@id": string;
  readonly name: string;
  readonly [key: string]: unknown;
}

const graphOf = (answer: PlanAnswer): readonly Thing[] =>
  (JSON.parse(schemaOrgText(answer, addresses)) as { "@graph": readonly Thing[] })["@graph"];
const recipesOf = (answer: PlanAnswer): readonly Thing[] =>
  graphOf(answer).filter((thing) => thing["@type"] === "Recipe");

/** No network: the one context there is comes from a file. */
const documentLoader = (url: string) =>
  url === "https://schema.org"
    ? Promise.resolve({ contextUrl: undefined, documentUrl: url, document: schemaOrgContext })
    : Promise.reject(new Error(`nothing may be fetched, and ${url} was`));

describe("a plan as schema.org knows it", () => {
  let answer: PlanAnswer;

  beforeAll(async () => {
    answer = await answerOf(demoBundle("roots-and-barley"), 7, sundayHousehold);
  });

  it("is what the golden file shows", async () => {
    await expect(`${schemaOrgText(answer, addresses)}\n`).toMatchFileSnapshot("../../golden/plan.jsonld");
  });

  it("expands without a dropped key, of every demo plan", async () => {
    for (const bundle of demo.bundles) {
      const written = JSON.parse(
        schemaOrgText(await answerOf(bundle, 6, sundayHousehold), addresses),
      ) as jsonld.JsonLdDocument;
      // `safe` makes a dropped key or a relative reference an error (JSON-LD 1.1 API; option of jsonld.js).
      const options = { documentLoader, safe: true } as jsonld.Options.Expand;
      const expanded = await jsonld.expand(written, options);
      expect(expanded.length).toBeGreaterThan(bundle.plan.meals.length);
    }
  });

  it("would not expand with a key that schema.org does not have", async () => {
    const wrong = { "@context": "https://schema.org", "@type": "Recipe", servings: "7" };
    const options = { documentLoader, safe: true } as jsonld.Options.Expand;
    await expect(jsonld.expand(wrong, options)).rejects.toThrow(/safe mode/i);
  });

  it("has no error for search engines but the image that plans do not have", async () => {
    for (const bundle of demo.bundles) {
      const recipes = recipesOf(await answerOf(bundle, 6, sundayHousehold));
      expect(recipes).toHaveLength(bundle.plan.meals.length);
      const located = recipes.map((recipe) => ({ ...recipe, "@location": "0,1" }));
      const issues = await new Validator().validate({ jsonld: { Recipe: located }, microdata: {}, rdfa: {} });
      const errors = issues.filter(({ severity }) => severity === "ERROR").map(({ issueMessage }) => issueMessage);
      expect([...new Set(errors)]).toEqual(['Required attribute "image" is missing']);
    }
  });

  it("lists the meals in the order of their days, by the addresses of their recipes", () => {
    const [list, ...rest] = graphOf(answer);
    const items = list?.["itemListElement"] as readonly { position: number; item: { "@id": string } }[];
    expect(items.map(({ position }) => position)).toEqual([1, 2, 3, 4]);
    expect(items.map(({ item }) => item["@id"])).toEqual(rest.slice(0, 4).map((thing) => thing["@id"]));
    expect(rest.at(-1)?.["@type"]).toBe("HowTo");
  });

  it("says component work first, and lines in the share the meal takes", () => {
    const soup = recipesOf(answer).find(({ name }) => name === "Barley broth with kale");
    const sections = soup?.["recipeInstructions"] as readonly { name: string }[];
    expect(sections.map(({ name }) => name)).toEqual([
      "Boiled barley",
      "Lemon yoghurt",
      "Washed and rubbed kale",
      "Barley broth with kale",
    ]);
    // 400 g for 4 is 700 g for 7; of 1150 g a batch from 400 g of barley: 400 × 700 / 1150 = 243 g, 245 g for a kitchen.
    const batch = demoBundle("roots-and-barley").components.find(({ slug }) => slug === "boiled-barley");
    expect(batch?.yield.amount).toMatchObject({ low: "1150", unit: "g" });
    expect(soup?.["recipeIngredient"]).toContain("245 g pearl barley, rinsed (for the Boiled barley)");
    expect(soup?.["recipeIngredient"]).toContain("1.75 l water");
  });

  it("adds up exact times: hands off the heat, heat, and everything one after another", async () => {
    const steps = [
      build.step("chop", 12, { attention: "HANDS_ON" }),
      build.step("boil", 45, { attention: "UNATTENDED", appliance: "hob-ring", after: ["chop"] }),
      build.step("rest", 600, { attention: "UNATTENDED", after: ["boil"], minWait: 30 }),
    ];
    const bundle = build.bundle(
      build.plan([build.meal("bowl", [build.line("300 g", build.made("pot"))], { steps: [build.step("serve", 4)] })]),
      [build.component("pot", "300 g", [build.line("100 g", "lentils")], { steps })],
    );
    const [recipe] = recipesOf(await answerOf(bundle, 1));
    expect(recipe).toMatchObject({ prepTime: "PT16M", cookTime: "PT45M", totalTime: "PT11H31M" });
  });

  it("states a diet only where every food is known to fit, and no gluten-free diet at all", () => {
    const diets = recipesOf(answer).map((recipe) => recipe["suitableForDiet"]);
    for (const [at, { meal }] of answer.scaled.meals.toSorted((a, b) => a.meal.day - b.meal.day).entries()) {
      const known = answer.contents.meals.get(meal.slug)?.diets.filter(({ fits }) => fits === true) ?? [];
      const values = known.flatMap(({ diet }) =>
        diet === "vegan"
          ? "https://schema.org/VeganDiet"
          : diet === "vegetarian"
            ? "https://schema.org/VegetarianDiet"
            : [],
      );
      expect(diets[at] ?? []).toEqual(values);
    }
    expect(schemaOrgText(answer, addresses)).not.toContain("GlutenFreeDiet");
  });

  it("gives nutrition only where it is known whole", async () => {
    const facts = { per100g: { energyKcal: 300, proteinG: 20 }, source: build.invented };
    const lentils = build.food("lentils", { nutrients: facts });
    const known = build.bundle([build.meal("bowl", [build.line("200 g", "lentils")])], [], [lentils]);
    const [whole] = recipesOf(await answerOf(known, 1, { region: "US" }));
    expect(whole?.["nutrition"]).toMatchObject({
      calories: "600 calories",
      proteinContent: "40 g",
      description: expect.stringContaining("raw foods") as string,
    });
    const partly = build.bundle(
      [build.meal("bowl", [build.line("200 g", "lentils"), build.line("9 g", "x")])],
      [],
      [lentils],
    );
    const [half] = recipesOf(await answerOf(partly, 1, { region: "US" }));
    expect(half).not.toHaveProperty("nutrition");
  });

  it("cannot end the script element it stands in", async () => {
    const title = '</script><script>alert("&")</script>\u2028';
    const bundle = demoBundle("roots-and-barley");
    const text = schemaOrgText(await answerOf({ ...bundle, plan: { ...bundle.plan, title } }, 2), addresses);
    const { elements } = htmlTree(`<script type="application/ld+json">${text}</script>`);
    expect(elements.map(({ name }) => name)).toEqual(["script"]);
    expect((JSON.parse(elements[0]?.text ?? "") as { "@graph": Thing[] })["@graph"][0]?.name).toBe(
      '</script><script>alert("&")</script>',
    );
  });
});

describe("a duration", () => {
  it.each([0, 1, 59, 60, 61, 1440, 100_000])(
    "of %i minutes is read by an independent reader as that many",
    (minutes) => {
      expect(Temporal.Duration.from(isoDuration(minutes)).total("minutes")).toBe(minutes);
    },
  );
});
