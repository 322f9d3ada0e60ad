import fc from "fast-check";
import { readFile, readdir } from "node:fs/promises";
import { describe, expect, it } from "vitest";
import { readRecipes, readRecipesInSlices } from "../../../src/imports/recipes/read-recipes.js";

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

  it.each([
    ["lists in lists", [["Boil.", "Drain."], "Serve"], ["Boil.", "Drain.", "Serve"]],
    ["a list of lists of nodes", [[{ text: "Boil." }], [[{ text: "Drain." }]]], ["Boil.", "Drain."]],
    [
      "an ItemList in a list",
      [{ "@type": "ItemList", itemListElement: [["Boil.", { item: { text: "Drain." } }]] }],
      ["Boil.", "Drain."],
    ],
    [
      "a step with a text beside its parts",
      { text: "Boil for 30 minutes.", itemListElement: ["Soak."] },
      ["Boil for 30 minutes.", "Soak."],
    ],
    ["a step that repeats its parts", { text: "Soak. Boil.", itemListElement: ["Soak. Boil."] }, ["Soak. Boil."]],
  ])("loses no step of %s", (_, recipeInstructions, steps) => {
    const [record] = read(JSON.stringify({ ...recipe, recipeInstructions })).records;
    expect([record?.recipe?.steps.map(({ text }) => text), record?.problems]).toEqual([steps, []]);
  });

  it.each([
    ["a number", ["Boil.", 7], ["recipeInstructions", 1]],
    ["a node without words", ["Boil.", [{ "@type": "HowToStep", image: "x" }]], ["recipeInstructions", 1, 0]],
    ["an empty section", [{ "@type": "HowToSection", name: "Beans", itemListElement: [] }], ["recipeInstructions", 0]],
    [
      "lists without end",
      JSON.parse(`${"[".repeat(12)}"Boil."${"]".repeat(12)}`) as unknown,
      ["recipeInstructions", 0, 0, 0, 0, 0, 0, 0, 0, 0],
    ],
  ])("says that it could not read %s among the steps", (_, recipeInstructions, path) => {
    const [record] = read(JSON.stringify({ ...recipe, recipeInstructions })).records;
    expect(record?.problems.map((problem) => problem.path)).toEqual([path]);
  });

  it("walks lists in lists of ingredients, and says what of them it could not read", () => {
    const lists = { ...recipe, recipeIngredient: [["1 cup beans", "2 onions"], { name: "salt" }, { amount: 3 }, ""] };
    const [record] = read(JSON.stringify(lists)).records;
    expect(record?.recipe?.ingredients).toEqual(["1 cup beans", "2 onions", "salt"]);
    expect(record?.problems.map(({ path }) => path)).toEqual([["recipeIngredient", 2]]);
  });

  it.each([
    ["Cook until x<y and 5 < 6.", "Cook until x<y and 5 < 6."],
    ["a<b and c>d", "a<b and c>d"],
    ["Stir <b>well</b>, <a href='x<y'>then</a> serve <3", "Stir well, then serve <3"],
    ["one<br>two<br/>three <!-- not shown --> four <!-- five", "one two three four <!-- five"],
    ["temperature <75 °C: <em class=big>boil</em> again", "temperature <75 °C: boil again"],
    ["1 &lt; 2 &amp;lt; 3", "1 < 2 < 3"],
    ["x<y <script>if (a<b) c()</script> z", "x<y z"],
    ["Zucker <sugar> dazu", "Zucker <sugar> dazu"],
    ["<input type='checkbox' checked> stir", "stir"],
  ])("keeps the words of %j", (written, text) => {
    const [record] = read(JSON.stringify({ ...recipe, recipeInstructions: [written] })).records;
    expect(record?.recipe?.steps.map((step) => step.text)).toEqual([text]);
  });

  it("keeps every word around a sign, whatever stands beside it", () => {
    const word = fc.stringMatching(/^[a-z0-9]{1,6}$/);
    fc.assert(
      fc.property(word, word, fc.constantFrom("<", " < ", "<<", "<=", "< /", "<!", "<?"), (one, other, sign) => {
        const [record] = read(JSON.stringify({ ...recipe, recipeInstructions: [`${one}${sign}${other} end`] })).records;
        const said = record?.recipe?.steps[0]?.text ?? "";
        expect(said).toContain(one);
        expect(said).toContain(other);
        expect(said).toContain("end");
      }),
    );
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

describe("a large file of recipes", () => {
  const recipe = { "@type": "Recipe", name: "Soup & <b>bread</b>", recipeIngredient: ["1 egg"] };
  const script = `<script type="application/ld+json">${JSON.stringify(recipe)}</script>`;

  it("is read the same wherever a page is cut into turns", () => {
    const [plain] = readRecipes(Buffer.from(`<p>${script}`), "page").records;
    // A page is read 100,000 characters at a time: the cut goes through each character of the script.
    for (let before = 100_000 - script.length - 5; before <= 100_000; before += 1) {
      const { records, problems } = readRecipes(Buffer.from(`<p>${"x".repeat(before)}${script}`), "page");
      expect([before, problems, records]).toEqual([before, [], [plain]]);
    }
  });

  it.each([
    ["recipes", JSON.stringify(Array.from({ length: 1000 }, () => recipe)), 1000],
    ["tags", `<p>${"<b>x</b>".repeat(125_000)}${script}`, 10],
    ["values of JSON", JSON.stringify({ ...recipe, keywords: Array.from({ length: 100_000 }, () => ({})) }), 1],
    ["letters", JSON.stringify({ ...recipe, description: "x".repeat(5_000_000) }), 5],
  ])("is read in many turns, however many %s it holds", (_, text, least) => {
    let turns = 0;
    for (const going = readRecipesInSlices(Buffer.from(text), "file"); going.next().done !== true;) turns += 1;
    expect(turns).toBeGreaterThanOrEqual(least);
  });
});
