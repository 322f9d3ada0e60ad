import { afterAll, beforeAll, expect, it } from "vitest";
import { demo } from "../graphql/open-test-app.js";
import { describeOnBothDatabases } from "../kit/databases.js";
import { demoSlugs, openRest, planOf, publisher, type RestApp } from "./open-rest.js";

/** The genitive plural that 5 to 21 take, of demo foods that are counted. */
const afterFive = { onion: "cebul", carrot: "marchewek", lemon: "cytryn" };
const polish = new Intl.PluralRules("pl");
const counted = demo.foods.flatMap(({ names }) =>
  names.filter((name) => name.language === "pl" && name.counted !== undefined && name.counted !== name.many),
);

/** Each number before a form of a food's name, with the category that the form is for. */
const saidIn = (text: string): readonly (readonly [said: string, category: string, formFor: string])[] =>
  counted.flatMap(({ one, many, counted: after = many }) =>
    Object.entries({ one, few: many, many: after }).flatMap(([formFor, form]) =>
      [...text.matchAll(new RegExp(`(?<![\\d,½⅓¼⅔¾–])(\\d+) ${form}(?!\\p{L})`, "gu"))].map(
        ([said, count]) => [said, polish.select(Number(count)), formFor] as const,
      ),
    ),
  );

describeOnBothDatabases("counted foods in Polish", (open) => {
  let app: RestApp;
  const seen = new Set<string>();
  beforeAll(async () => {
    app = await openRest(open);
  });
  afterAll(() => app.close());

  it("are what the document says, in the food of today and in each frozen one", async () => {
    for (const [slug, counted] of Object.entries(afterFive)) {
      const answer = await app.ask(`{ food(slug: "${slug}") { names { language many counted } } }`);
      const { names } = (answer.data as { food: { names: { language: string; counted: string | null }[] } }).food;
      expect(names.find(({ language }) => language === "pl")).toMatchObject({ counted });
      expect(names.find(({ language }) => language === "de")).toMatchObject({ counted: null });
    }
  });

  it.each([5, 40])("take the form of their number on pages, on lists and in JSON: for %d people", async (servings) => {
    for (const slug of demoSlugs) {
      const asked = `servings=${String(servings)}&locale=pl`;
      for (const url of [`/p/${publisher}/${slug}`, `/p/${publisher}/${slug}/list`, planOf(slug)]) {
        const { statusCode, body } = await app.app.inject({ url: `${url}?${asked}` });
        expect([url, statusCode]).toEqual([url, 200]);
        for (const [said, category, formFor] of saidIn(body)) {
          seen.add(category);
          expect([url, said, formFor]).toEqual([url, said, category]);
        }
      }
    }
  });

  it("were met with one, with few and with many", () => {
    expect([...seen].toSorted()).toEqual(["few", "many", "one"]);
  });
});
