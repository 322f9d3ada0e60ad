import { afterAll, beforeAll, expect, it } from "vitest";
import { foodWords } from "../../src/exports/words/food-words.js";
import { wordsFor } from "../../src/exports/words/words-for.js";
import { describeOnEmbedded } from "../kit/databases.js";
import { demo } from "../graphql/open-test-app.js";
import { demoSlugs, openRest, planOf, publisher, type RestApp } from "../rest/open-rest.js";

const lines = `lines { food { ...F } partName amount { text unit { name } } line { partName food { ...F } component { id lines { food { ...F } } } } }`;
const contents = `allergens { findings { name threshold contains { ...F } asIngredient { unknown { ...F } } } labelsToRead { food { ...F } } }
  diets { name breaks { ...F } unknown { ...F } }`;
const shopping = `aisles { title } cost { atTill { amount } } warnings { title text }
  lines { food { ...F } need { text unit { name } } toTake uses { partName meal { id } component { id } } partsOver { partName amount { text } }
    buy { pack { name content { text unit { name } } step { text } } weighedFrom { name content { text } step { text } } } }`;
const fragment = `fragment F on Food { id name aisleName packs { name content { text } step { text } } parts { title perPiece { text } } }`;
const parts: readonly string[] = [
  `meals { meal { id lines { partName food { ...F } } components { id storage { advice condition basis { note condition temperature of { ... on Food { ...F } } } } } } ${lines} }`,
  `meals { ${contents} }`,
  `components { component { id lines { food { ...F } } } ${lines} }`,
  `shoppingList { ${shopping} }`,
  `storage { subject { ... on Food { ...F } } condition advice basis { condition temperature note of { ... on Food { ...F } } } limitedBy { ... on Food { ...F } } } warnings { title text }`,
  `nutrition { nutrients { unknown { ...F } } missing { ...F } unweighed { ...F } added { ...F } notEaten { food { ...F } } }`,
  `cautions { text about { ... on Food { ...F } } } session { criticalPath { text } tasks { temperature { text } of { ... on Food { ...F } } } }`,
];

/** Members with texts that the service writes for people. Others are codes, or in the words of a writer. */
const forPeople =
  /\.(name|names\.[^.]+|aisleName|partName|aisles\.title|parts\.title|warnings\.title|threshold|toTake|advice|text)$/;
const ofWriters =
  /\.(publisher|credits|source|sources|steps|tasks|criticalPath|critical|introduction|notes|tips|message)\b/;

interface Said {
  readonly at: string;
  readonly text: string;
}

/** Every text in an answer, with its place. */
function textsIn(value: unknown, at = ""): readonly Said[] {
  if (typeof value === "string") return [{ at, text: value }];
  if (Array.isArray(value)) return value.flatMap((each) => textsIn(each, at));
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([name, member]) => textsIn(member, `${at}.${name}`));
}

const inEnglish = wordsFor("en");
const foods = [...new Map(demo.bundles.flatMap((bundle) => bundle.foods).map((food) => [food.slug, food])).values()];

/** What writers call things and note of them, which nobody need have translated. */
const writersTexts = demo.bundles.flatMap(({ plan, components }) => [
  plan.title,
  ...plan.meals.map(({ title }) => title),
  ...components.flatMap(({ title, keeping }) => [title, ...keeping.flatMap(({ condition }) => condition ?? [])]),
]);

/** What is English of foods, aisles, packs and parts, and is no word of the language too. */
function wordsOf(locale: string) {
  const words = wordsFor(locale);
  const own = new Set(
    [
      ...foods.map((food) => foodWords(food, locale)).flatMap(({ one, many }) => [one, many]),
      ...Object.values(words.aisles),
      ...Object.values(words.packNames),
    ].map((word) => word.toLowerCase()),
  );
  const english = [
    ...new Set([
      ...foods.flatMap(({ names }) =>
        names.filter(({ language }) => language === "en").flatMap(({ one, many }) => [one, many]),
      ),
      ...Object.values(inEnglish.aisles),
      ...Object.keys(words.aisles),
      ...Object.values(inEnglish.packNames),
      ...["juice", "zest", "white", "yolk"],
    ]),
  ].filter((word) => !own.has(word.toLowerCase()));
  return { own: [...own], english };
}

/** One of these texts, as whole words; the longest first. */
const anyOf = (texts: readonly string[]): RegExp => {
  const escaped = texts
    .toSorted((a, b) => b.length - a.length)
    .map((text) => text.replaceAll(/[.*+?^${}()|[\]\\]/g, "\\$&"));
  return new RegExp(`(?<![\\p{L}-])(?:${escaped.join("|")})(?![\\p{L}-])`, "giu");
};

describeOnEmbedded("an answer to a reader", (open) => {
  let app: RestApp;

  beforeAll(async () => {
    app = await openRest(open);
  });
  afterAll(() => app.close());

  const overGraphql = async (locale: string): Promise<unknown[]> => {
    const answers: unknown[] = [];
    // One in metric measures and one in pounds; the list has the foods of all.
    for (const slug of ["lentils-and-greens", "bean-night"]) {
      for (const part of parts) {
        const { data, errors } = await app.ask(
          `query ($household: HouseholdInput) { plan(publisher: "${publisher}", slug: "${slug}") { scaled(servings: 6, household: $household) { ${part} } } } ${fragment}`,
          { household: { locale, region: "GB" } },
        );
        expect(errors).toEqual([]);
        answers.push(data);
      }
    }
    const { data, errors } = await app.ask(
      `query ($plans: [PlanPortionInput!]!, $household: HouseholdInput) { shopping(plans: $plans, household: $household) { list { ${shopping} } } } ${fragment}`,
      { plans: demoSlugs.map((slug) => ({ publisher, slug, servings: 6 })), household: { locale, region: "GB" } },
    );
    expect(errors).toEqual([]);
    return [...answers, data];
  };

  const overRest = async (locale: string): Promise<unknown[]> => {
    const asked = `servings=6&locale=${locale}&region=GB`;
    const brief = "include=meals,components,shoppingList,storage";
    const answers: unknown[] = [];
    for (const slug of demoSlugs)
      for (const more of slug === "bean-night" ? ["", `&${brief}`] : [""])
        answers.push((await app.get(`${planOf(slug)}?${asked}${more}`)).body);
    const plans = demoSlugs.map((slug) => `plan=${publisher}/${slug}:6`).join("&");
    return [...answers, (await app.get(`/v1/shopping-list?${plans}&locale=${locale}&region=GB`)).body];
  };

  it.each(["de", "fr", "es", "pl"])(
    "in %s has no English name of a food, an aisle, a pack or a part",
    async (locale) => {
      const { own, english } = wordsOf(locale);
      const allowed = anyOf([...own, ...writersTexts]);
      const foreign = anyOf(english);
      for (const answers of [await overGraphql(locale), await overRest(locale)]) {
        const texts = answers
          .flatMap((answer) => textsIn(answer))
          .filter(({ at }) => forPeople.test(at) && !ofWriters.test(at));
        expect(texts.length).toBeGreaterThan(1000);
        const left = texts.filter(({ text }) => text.replaceAll(allowed, "").search(foreign) >= 0);
        expect([...new Set(left.map(({ at, text }) => `${at}: ${text}`))]).toEqual([]);
      }
    },
  );

  it("in German names a translated plan's meals and components by their German titles alone", async () => {
    const { plan, components } = demo.bundles.find(({ translations = [] }) =>
      translations.some(({ of, language }) => of.kind === "PLAN" && language === "de"),
    )!;
    const titles = anyOf([...plan.meals, ...components].map(({ title }) => title));
    const named = `meals { meal { title components { title storage { advice } } } lines { component { title } line { component { title } } } }
      components { component { title meals { title } } } storage { advice tooLateFor { meal { title } } } warnings { text } session { criticalPath { text } tasks { text } }
      shoppingList { warnings { text } lines { uses { meal { title } component { title } } } }`;
    const { data, errors } = await app.ask(
      `query ($household: HouseholdInput) { plan(publisher: "${publisher}", slug: "${plan.slug}") { scaled(servings: 6, household: $household) { ${named} } } }`,
      { household: { locale: "de", region: "GB" } },
    );
    expect(errors).toEqual([]);
    const { body } = await app.get(`${planOf(plan.slug)}?servings=6&locale=de&region=GB`);
    for (const answer of [data, body]) {
      const texts = textsIn(answer).filter(({ at }) => !/\.(source|message|written|asWritten)\b/.test(at));
      expect(texts.length).toBeGreaterThan(50);
      expect(texts.filter(({ text }) => text.search(titles) >= 0)).toEqual([]);
    }
  });
});
