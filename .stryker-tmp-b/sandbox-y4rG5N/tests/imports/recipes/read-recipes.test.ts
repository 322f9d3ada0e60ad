// @ts-nocheck
import fc from "fast-check";
import { readFile, readdir } from "node:fs/promises";
import { describe, expect, it } from "vitest";
import { readRecipes } from "../../../src/imports/recipes/read-recipes.js";

const read = (text: string) => readRecipes(Buffer.from(text), "page");

const recipe = { "@type": "Recipe", name: "Beans", recipeIngredient: ["1 cup beans"] };

describe("recipes of the web", () => {
  // Case O-36.
  it("O-36: finds one recipe inside a graph, its steps in order with their sections, and exact times", () => {
    const graph = {
      "@graph": [
        { "@type": "WebSite" },
        {
          ...recipe,
          "@type": ["Recipe", "NewsArticle"],
          prepTime: "PT15M",
          cookTime: "PT1.5H",
          totalTime: "P0DT1H45M",
          recipeInstructions: [
            {
              "@type": "HowToSection",
              name: "Beans",
              itemListElement: [
                { "@type": "HowToStep", text: "Soak." },
                { "@type": "HowToStep", text: "Boil." },
              ],
            },
            { "@type": "HowToStep", text: "Serve." },
          ],
        },
      ],
    };
    const { records, problems, count } = read(JSON.stringify(graph));
    expect([records.length, problems.length, count]).toEqual([1, 0, 1]);
    expect(records[0]?.recipe).toMatchObject({
      name: "Beans",
      prepMinutes: 15,
      cookMinutes: 90,
      totalMinutes: 105,
      steps: [
        { section: "Beans", text: "Soak." },
        { section: "Beans", text: "Boil." },
        { section: null, text: "Serve." },
      ],
      path: ["@graph", 1],
      faults: [],
    });
  });

  it.each(["90 minutes", "PT24", "1:30"])("O-36: the time %j is a fault of that field, and never 0", (written) => {
    const [record] = read(JSON.stringify({ ...recipe, cookTime: written })).records;
    expect(record?.recipe?.cookMinutes).toBeNull();
    expect(record?.problems.map(({ path }) => path)).toEqual([["cookTime"]]);
  });

  it("is found in a saved page, with the line of its block, and without the page's own scripts", () => {
    const page = `<!doctype html>\n<html><head>\n<script>let x = {"@type":"Recipe"}</script>\n<script type="application/ld+json">\n${JSON.stringify(recipe)}\n</script></head><body><script type="text/plain">{"@type":"Recipe"}</script></body></html>`;
    const { records, problems } = read(page);
    expect(problems).toEqual([]);
    expect(records.map(({ line, recipe: found }) => [line, found?.name])).toEqual([[4, "Beans"]]);
  });

  it("cleans markup and entities out of texts, also when they were encoded twice", () => {
    const [record] = read(
      JSON.stringify({ ...recipe, name: "Beans &amp; greens", recipeIngredient: ["&amp;frac12; cup <b>beans</b>"] }),
    ).records;
    expect(record?.recipe?.name).toBe("Beans & greens");
    expect(record?.recipe?.ingredients).toEqual(["½ cup beans"]);
  });

  it("says where JSON is broken, and still reads the other blocks of the page", () => {
    const block = (json: string) => `<script type="application/ld+json">${json}</script>`;
    const { records, problems, count } = read(
      `<html>${block('{\n"@type": "Recipe",\n}')}\n${block(JSON.stringify(recipe))}`,
    );
    expect(records).toHaveLength(1);
    expect(problems.map(({ line, problem }) => [line, problem.code])).toEqual([[3, "BAD_SHAPE"]]);
    expect(count).toBe(2);
  });

  it("refuses a recipe without a name or an ingredient, and names both", () => {
    const [record] = read(JSON.stringify({ "@type": "Recipe" })).records;
    expect(record?.recipe).toBeNull();
    expect(record?.problems.map(({ path }) => path[0])).toEqual(["name", "recipeIngredient"]);
  });

  it("answers a file without a recipe, of other bytes, or nested without end, in words and in bounded time", () => {
    expect(read("{}").problems.map(({ problem }) => problem.code)).toEqual(["BAD_SHAPE"]);
    expect(readRecipes(Buffer.from([0xff, 0xfe, 0x00]), "page").problems).toHaveLength(1);
    const deep = `${"[".repeat(50_000)}${"]".repeat(50_000)}`;
    expect(read(deep).problems.length).toBeGreaterThan(0);
    const nested = `${'{"a":'.repeat(5_000)}1${"}".repeat(5_000)}`;
    expect(read(nested).problems.map(({ problem }) => problem.code)).toEqual(["TOO_LARGE"]);
  });

  it("accounts for whatever bytes it is given: records and problems add up to the count", async () => {
    const folder = "tests/fixtures/imports/recipes";
    const files = await Promise.all((await readdir(folder)).map((name) => readFile(`${folder}/${name}`)));
    expect(files.length).toBeGreaterThan(3);
    fc.assert(
      fc.property(
        fc.constantFrom(...files),
        fc.array(fc.tuple(fc.nat(), fc.integer({ min: 0, max: 255 }))),
        (file, flips) => {
          const bytes = Buffer.from(file);
          for (const [at, byte] of flips) bytes[at % bytes.length] = byte;
          const { records, problems, count } = readRecipes(bytes, "mutated");
          expect(records.length + problems.length).toBe(count);
        },
      ),
    );
  });
});
