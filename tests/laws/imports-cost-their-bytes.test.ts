import { countSteps } from "../kit/count-steps.js";
import { runToEnd } from "../../src/domain/counted-work.js";
import { describe, expect, it } from "vitest";
import { readPrices } from "../kit/read-prices.js";
import { recipeShapes, tableShapes } from "../kit/import-shapes.js";
import { htmlJsonLd } from "../../src/imports/recipes/html-json-ld.js";
import { jsonLimits } from "../../src/imports/recipes/json-size.js";
import { wordsOfMarkup } from "../../src/imports/recipes/words-of-markup.js";
import { readRecipes } from "../../src/imports/recipes/read-recipes.js";
import { mostFields } from "../../src/imports/tables/csv-scanner.js";

/** Law 8 for files that are imported: whatever is in them, twice the bytes are no more than about twice the work. */
describe("the work of importing", () => {
  it.each(Object.entries(recipeShapes))("grows as the bytes of pages and recipes do with %s", (_, text) => {
    const work = (bytes: number): number => countSteps(() => readRecipes(Buffer.from(text(bytes)), "page"));
    work(2_000);
    expect(work(40_000)).toBeLessThan(2.3 * work(20_000));
  });

  it.each(Object.entries(tableShapes))("grows as the bytes of tables do with %s", (_, text) => {
    const work = (bytes: number): number => countSteps(() => readPrices(text(bytes)));
    work(2_000);
    expect(work(80_000)).toBeLessThan(2.3 * work(40_000));
  });

  // What the engine does by itself is no step: where it would grow with the square, these would not end within the time of a test.
  it("ends on a page of a million tags, and on a text of nothing but comments", () => {
    const page = `${"<b>".repeat(500_000)}${"</p>".repeat(500_000)}<script type="application/ld+json">{}</script>`;
    expect(runToEnd(htmlJsonLd(page)).blocks).toEqual([{ text: "{}", line: 1 }]);
    expect(wordsOfMarkup("<!--".repeat(25_000)).length).toBe(10_000);
    expect(wordsOfMarkup("<b>x</p>".repeat(12_000)).startsWith("x x x")).toBe(true);
  });

  it("is refused where JSON has more values or levels than it may, at the line of the one too many", () => {
    const problem = (text: string) => readRecipes(Buffer.from(text), "page").problems.map((each) => each);
    const deep = `[\n\n${"[".repeat(jsonLimits.levels)}`;
    expect(problem(deep)).toMatchObject([{ line: 3, problem: { code: "TOO_LARGE", what: "levels of JSON" } }]);
    const wide = `{"@type":"Recipe","name":"a","x":[${"1,".repeat(jsonLimits.values)}1]}`;
    expect(problem(wide)).toMatchObject([{ line: 1, problem: { code: "TOO_LARGE", what: "values of JSON" } }]);
    const strings = `{"@type":"Recipe","name":"a","x":"${'[{,\\"'.repeat(jsonLimits.levels * 10)}"}`;
    expect(readRecipes(Buffer.from(strings), "page").records).toHaveLength(1);
  });

  it("is refused where a table has more columns than it may, and says of a row only that it has more", () => {
    const columns = Array.from({ length: mostFields }, (_, at) => `c${String(at)}`).join(",");
    const [wide] = readPrices(`food,pack,content,price,${columns}\negg,a,6 piece,1\n`);
    expect(wide).toMatchObject({ ok: false, line: 1, problems: [{ code: "TOO_LARGE", what: "columns" }] });
    const [row] = readPrices(`food,pack,content,price\negg${",".repeat(90_000)}\n`);
    expect(row).toMatchObject({ ok: false, line: 2, problems: [{ got: `more than ${String(mostFields)}` }] });
  });
});
