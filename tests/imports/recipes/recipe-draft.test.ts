import { readFile } from "node:fs/promises";
import { describe, expect, it } from "vitest";
import { readSeeds } from "../../../src/app/setup/read-seeds.js";
import { compileFoodNames } from "../../../src/domain/quantity/food-name.js";
import { readDocuments } from "../../../src/imports/documents/read-documents.js";
import { resolveDocuments } from "../../../src/imports/documents/resolve-documents.js";
import { readRecipes } from "../../../src/imports/recipes/read-recipes.js";
import { recipeDraft, recipeDraftText } from "../../../src/imports/recipes/recipe-draft.js";
import { slugOf } from "../../../src/imports/recipes/recipe-slug.js";
import type { WebRecipe } from "../../../src/imports/recipes/web-recipe.js";

const { foods } = await readSeeds("seeds");
const options = {
  publisher: "third-gate-allotments",
  slug: "barley-with-roots",
  locale: "en-GB",
  measures: "METRIC_CUP",
  region: null,
  foods: compileFoodNames(foods),
} as const;

async function recipeOf(name: string, at = 0): Promise<WebRecipe> {
  const { records } = readRecipes(await readFile(`tests/fixtures/imports/recipes/${name}`), name);
  const recipe = records[at]?.recipe;
  if (!recipe) throw new Error(`no recipe in ${name}`);
  return recipe;
}

describe("a draft from a recipe of the web", () => {
  it("holds every line that was understood, and leaves the rest to a person", async () => {
    const { document, open } = recipeDraft(await recipeOf("page-with-graph.html"), options);
    expect(document).toMatchObject({
      serves: 4,
      title: "Barley with roots & lemon",
      meals: [
        {
          lines: [
            { food: "pearl-barley", amount: "250 g", written: "250 g pearl barley" },
            { food: "carrot", amount: "3 piece", preparation: "sliced" },
            { food: "lemon", amount: "1 piece" },
            { food: "salt", rule: "to taste" },
          ],
          steps: [
            { do: "Barley: Boil the barley.", time: "60 min" },
            { do: "Roast the carrots and serve.", time: "0 min" },
          ],
        },
      ],
    });
    expect(open).toEqual([expect.objectContaining({ kind: "LINE", written: "2 handfuls of moonflower" })]);
  });

  it("guesses no servings out of a range or a bare number, and no time out of nothing", async () => {
    const range = recipeDraft(await recipeOf("plain.jsonld"), options);
    expect(range.open.map(({ kind }) => kind)).toEqual(["SERVINGS"]);
    const bare = recipeDraft(await recipeOf("plain.jsonld", 1), options);
    expect(bare.open.map(({ kind }) => kind)).toEqual(["SERVINGS", "STEPS"]);
    expect(range.document).not.toHaveProperty("serves");
  });

  it("has a title of whole words and characters, however long its name is", async () => {
    const titleOf = async (name: string) => {
      const { title } = recipeDraft({ ...(await recipeOf("page-with-graph.html")), name }, options).document;
      return String(title);
    };
    expect(await titleOf("Beans & greens")).toBe("Beans & greens");
    for (const name of ["barley soup ".repeat(40), "🥕".repeat(150), `a${"🥕".repeat(150)}`]) {
      const title = await titleOf(name);
      expect(title.length).toBeLessThanOrEqual(200);
      expect(title.endsWith("…")).toBe(true);
      expect(title).not.toMatch(/[\ud800-\udbff](?![\udc00-\udfff])/);
      expect(title).not.toMatch(/ (?:barle?|so?u?)…$/);
    }
    const own = recipeDraft(await recipeOf("page-with-graph.html"), { ...options, title: "Soup (2)" });
    expect(own.document).toMatchObject({ title: "Soup (2)", meals: [{ title: "Soup (2)" }] });
  });

  it("loses no word of a long step", async () => {
    const recipe = await recipeOf("page-with-graph.html");
    const text = `${"Stir and taste. ".repeat(600)}Boil for ten minutes.`;
    const { document } = recipeDraft({ ...recipe, steps: [{ section: "Beans", text }] }, options);
    const [meal] = document["meals"] as readonly { readonly steps: readonly { readonly do: string }[] }[];
    const steps = (meal?.steps ?? []).map((step) => step.do);
    expect(steps.join(" ")).toBe(`Beans: ${text}`);
    expect(Math.max(...steps.map(({ length }) => length))).toBeLessThanOrEqual(4000);
  });

  it("is a document that the checks take once what is open is settled", async () => {
    const draft = recipeDraft(await recipeOf("page-with-graph.html"), options);
    const text = recipeDraftText(draft, () => "a word on it");
    expect(text.startsWith("# Still to be settled; then save this document:\n# - a word on it\nkind: plan\n")).toBe(
      true,
    );
    const read = readDocuments(text, "draft");
    expect(read.problems).toEqual([]);
    const resolved = resolveDocuments(read.documents, { foods, components: [] });
    expect(resolved.problems).toEqual([]);
    expect(resolved.plans[0]?.value.meals[0]?.lines).toHaveLength(4);
  });
});

describe("a short name out of a title", () => {
  it.each([
    ["Beans & greens", "beans-greens"],
    ["Grüße aus der Küche", "grusse-aus-der-kuche"],
    ["Żurek, łatwy", "zurek-latwy"],
    ["Gran's 2-hour stew!", "grans-2-hour-stew"],
    ["豆", null],
  ])("%s", (title, slug) => {
    expect(slugOf(title)).toBe(slug);
  });
});
