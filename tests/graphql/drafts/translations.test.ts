import { afterAll, beforeAll, expect, it } from "vitest";
import request from "supertest";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { openTestApp, type TestApp } from "../open-test-app.js";

const saveDocuments = `mutation ($input: SaveDocumentsInput!) { saveDocuments(input: $input) {
  drafts { kind slug version draft { title } } problems { code message path line } } }`;
const publishPlan = `mutation ($input: PublishPlanInput!) { publishPlan(input: $input) {
  plan { revision } problems { code message path file line } } }`;
const checkDraft = `query { checkDraft(publisher: "north-gate", slug: "week") {
  problems { code } findings { code severity message path line } } }`;
const scaled = `query ($locale: String) { plan(publisher: "north-gate", slug: "week") { languages title
  scaled(servings: 4, household: { locale: $locale }) { language languages title summary introduction { text }
    meals { meal { title steps { text } } lines { line { preparation } food { name } } }
    components { component { title steps { text } } }
    session { totalMinutes tasks { text startMinute } }
    shoppingList { lines { food { name } uses { meal { title } component { title } plan { title } } } } } } }`;

const texts = `kind: component
slug: boiled-kale
title: Boiled kale
locale: en-GB
lines: [{ food: kale, amount: 500 g, preparation: shredded }]
steps:
  - { id: boil, do: Boil it for 5 minutes., time: 5 min, hands: off, appliance: hob-ring, uses: [kale] }
  - { id: cool, do: Drain it straight away., time: 3 min, chills: yes }
yield: { amount: 450 g }
keeping: [{ place: fridge, days: 3, container: tub with a lid }]
---
kind: plan
publisher: north-gate
slug: week
title: A week of kale
summary: Three suppers.
introduction: "Kale, *again*: see [the bed](https://allotments.example/beds)."
locale: en-GB
measured-in: metric
region: GB
serves: 2
meals:
  - slug: stew
    title: Kale stew
    day: 0
    lines: [{ component: boiled-kale, amount: 400 g }]
    steps: [{ do: Warm it through., time: 5 min }]
`;
const german = `kind: translation
plan: week
language: de
title: Eine Woche Grünkohl
introduction: "Grünkohl, *schon wieder*: siehe [das Beet](https://allotments.example/beds)."
meals:
  stew: { title: Grünkohleintopf, steps: { step-1: Alles erhitzen. } }
`;
const germanKale = (minutes: string, more = "") => `kind: translation
component: boiled-kale
language: de
title: Gekochter Grünkohl
steps: { boil: "${minutes} kochen.", cool: Abgießen. }
words: { shredded: in Streifen, tub with a lid: Dose mit Deckel }
${more}`;

interface Scaled {
  readonly languages: readonly string[];
  readonly title: string;
  readonly scaled: {
    readonly language: string;
    readonly languages: readonly string[];
    readonly title: string;
    readonly summary: string;
    readonly introduction: { readonly text: string };
    readonly session: { readonly totalMinutes: number; readonly tasks: readonly { readonly startMinute: number }[] };
  };
}

describeOnBothDatabases("a plan with translations", (open) => {
  let app: TestApp;
  let token: string;

  beforeAll(async () => {
    const { data } = await open();
    app = await openTestApp(data);
    await data.publishers.save({ slug: "north-gate", name: "North Gate" });
    token = await app.tokenFor("north-gate", ["WRITE", "READ_DRAFTS", "PUBLISH"]);
    const operator = await app.tokenFor(null, ["WRITE"]);
    const text = `kind: food\nslug: kale\nnames: { en: kale, de: Grünkohl }\naisle: vegetables\nshopped-by: mass\n`;
    const query = `mutation ($input: SaveFoodsInput!) { saveFoods(input: $input) { problems { message } } }`;
    const { data: saved } = await app.ask(query, { input: { texts: [{ name: "k.yaml", text }] } }, operator);
    expect(saved).toEqual({ saveFoods: { problems: [] } });
  });
  afterAll(() => app.close());

  const change = async (query: string, input: object) => {
    const { data, errors } = await app.ask(query, { input: { publisher: "north-gate", ...input } }, token);
    expect(errors).toEqual([]);
    return Object.values(data ?? {})[0] as {
      readonly drafts: readonly { readonly kind: string; readonly slug: string; readonly version: number }[] | null;
      readonly plan: { readonly revision: number } | null;
      readonly problems: readonly { readonly code: string; readonly message: string; readonly line: number }[];
    };
  };
  const save = (text: string, expected: readonly object[] = []) =>
    change(saveDocuments, { texts: [{ name: "all.yaml", text }], expected });
  const inLocale = async (locale: string | null) => {
    const { data, errors } = await app.ask(scaled, { locale });
    expect(errors).toEqual([]);
    return data?.["plan"] as Scaled;
  };
  const findings = async () => {
    const { data } = await app.ask(checkDraft, {}, token);
    const { findings: found } = data?.["checkDraft"] as {
      readonly findings: readonly { readonly code: string; readonly message: string; readonly severity: string }[];
    };
    return found.filter(({ code }) => code.startsWith("TRANSLATION"));
  };

  it("names misspelt texts with the nearest, at their line, and saves nothing", async () => {
    const wrong = german.replace("stew: {", "stwe: {");
    const { drafts, problems } = await save(`${texts}---\n${wrong}`);
    expect(drafts).toBeNull();
    expect(problems).toMatchObject([{ code: "TRANSLATES_NOTHING", line: 35 }]);
    expect(problems[0]?.message).toContain('Did you mean "stew"?');
    expect((await save(german)).problems).toMatchObject([{ code: "UNKNOWN_DRAFT" }]);
    expect((await save(german.replace("plan: week", "plan: week\ncomponent: x"))).problems).toMatchObject([
      { code: "BAD_SHAPE" },
    ]);
  });

  // What a plan may not say in its own language it may not say in another: its readers there would get no answer.
  it.each([
    ["a title", german.replace("Eine Woche Grünkohl", "Grünkohl ".repeat(300)), ["title"]],
    ["a step", german.replace("Alles erhitzen.", "Alles erhitzen. ".repeat(150)), ["meals", "stew", "steps", "step-1"]],
    ["a title of nothing but blanks", german.replace("Eine Woche Grünkohl", '"  "'), ["title"]],
  ])("refuses %s that no reader could be answered with", async (_, wrong, path) => {
    const { drafts, problems } = await save(`${texts}---\n${wrong}`);
    expect(drafts).toBeNull();
    expect(problems).toMatchObject([{ code: expect.stringMatching(/^(TOO_LARGE|BAD_SHAPE)$/) as string }]);
    expect((problems[0] as unknown as { path: string[] }).path.slice(-path.length)).toEqual(path);
  });

  it("refuses other numbers than the original's, with both", async () => {
    const { problems } = await save(`${texts}---\n${german}---\n${germanKale("15 Minuten")}`);
    expect(problems).toMatchObject([{ code: "TRANSLATION_NUMBERS" }]);
    expect(problems[0]?.message).toContain('"15 Minuten" for "5 minutes"');
    const { problems: meant } = await save(
      `${texts}---\n${germanKale("15 Minuten", "numbers-differ: [steps/boil, steps/bake]")}`,
    );
    expect(meant).toMatchObject([{ code: "TRANSLATES_NOTHING" }]);
  });

  it("saves them as drafts beside the plan, and tells what is missing", async () => {
    const saved = await save(`${texts}---\n${german}---\n${germanKale("5 Minuten")}`);
    expect(saved.problems).toEqual([]);
    expect(saved.drafts?.filter(({ kind }) => kind === "TRANSLATION")).toEqual([
      { kind: "TRANSLATION", slug: "de-plan-week", version: 1, draft: { title: "Eine Woche Grünkohl" } },
      { kind: "TRANSLATION", slug: "de-component-boiled-kale", version: 1, draft: { title: "Gekochter Grünkohl" } },
    ]);
    const found = await findings();
    expect(found).toMatchObject([{ code: "TRANSLATION_INCOMPLETE", severity: "LOOK" }]);
    expect(found[0]?.message).toContain('9 of 10 texts are translated into "de"');
    const { data } = await app.ask(
      `query { drafts(publisher: "north-gate", kind: TRANSLATION) { edges { node { slug } } }
        translationDraft(publisher: "north-gate", slug: "de-plan-week") { document { text } } }`,
      {},
      token,
    );
    expect(data).toEqual({
      drafts: { edges: [{ node: { slug: "de-component-boiled-kale" } }, { node: { slug: "de-plan-week" } }] },
      translationDraft: { document: { text: german } },
    });
  });

  it("is shown in the reader's language, the same in every figure", async () => {
    const published = await change(publishPlan, { slug: "week", expectedVersion: 1 });
    expect(published).toEqual({ plan: { revision: 1 }, problems: [] });
    const [english, found] = [await inLocale(null), await inLocale("de-AT")];
    expect(english).toMatchObject({ languages: ["en-GB", "de"], scaled: { language: "en-GB", languages: ["en-GB"] } });
    expect(found).toMatchObject({
      title: "A week of kale",
      scaled: {
        language: "de",
        languages: ["de", "en-GB"],
        title: "Eine Woche Grünkohl",
        summary: "Three suppers.",
        meals: [{ meal: { title: "Grünkohleintopf", steps: [{ text: "Alles erhitzen." }] } }],
        components: [
          {
            component: { title: "Gekochter Grünkohl", steps: [{ text: "5 Minuten kochen." }, { text: "Abgießen." }] },
          },
        ],
        shoppingList: {
          lines: [{ uses: [{ component: { title: "Gekochter Grünkohl" } }] }],
        },
      },
    });
    // "Straight away" is only in the English: what is read out of the words is read out of those.
    const starts = ({ scaled: { session } }: Scaled) => session.tasks.map(({ startMinute }) => startMinute);
    expect(starts(found)).toEqual(starts(english));
    expect(found.scaled.session.totalMinutes).toBe(english.scaled.session.totalMinutes);
    expect(await inLocale("fr")).toMatchObject({ scaled: { language: "en-GB", languages: ["fr", "en-GB"] } });
  });

  it("is a page in that language, whose other parts say which they are in", async () => {
    const page = await request(app.app.server).get("/p/north-gate/week").set("accept-language", "de");
    expect(page.headers["content-language"]).toBe("de, en-GB");
    expect(page.text).toContain('<html lang="de">');
    expect(page.text).toContain("<h1>Eine Woche Grünkohl</h1>");
    expect(page.text).toContain('<p class="summary" lang="en-GB">Three suppers.</p>');
    expect(page.text).toMatch(/<link rel="alternate" hreflang="de" href="[^"]*\/p\/north-gate\/week\?locale=de">/);
    expect(page.text).toMatch(/<link rel="alternate" hreflang="en-GB" href="[^"]*\?locale=en-GB">/);
    expect(page.text).toContain('"inLanguage": "de"');
    const plain = await request(app.app.server).get("/p/north-gate/week").set("accept-language", "en");
    expect(plain.text).toContain("<h1>A week of kale</h1>");
    for (const ending of ["md", "txt", "json"]) {
      const other = await request(app.app.server).get(`/v1/plans/north-gate/week.${ending}?locale=de`);
      expect([ending, other.status]).toEqual([ending, 200]);
      expect(other.text).toContain("Grünkohleintopf");
      expect(other.text).not.toContain("Kale stew");
    }
    for (const path of ["list", "cook", "fridge-door", "labels"]) {
      const other = await request(app.app.server).get(`/p/north-gate/week/${path}?locale=de`);
      expect([path, other.status]).toEqual([path, 200]);
      expect(other.text).not.toContain("Boiled kale");
    }
  });

  it("leads to the page in its other languages by their own names, for the same household, and to none of them in print", async () => {
    const get = async (path: string) => (await request(app.app.server).get(path)).text;
    for (const path of ["/p/north-gate/week", "/p/north-gate/week/list"]) {
      const german = await get(`${path}?servings=6&region=GB&locale=de`);
      expect(german).toMatch(
        /<nav class="tongues" aria-label="In anderen Sprachen"><a lang="en-GB" hreflang="en-GB" href="[^"]*">British English<\/a><\/nav>/,
      );
      const [, leads = ""] = /hreflang="en-GB" href="([^"]*)">British/.exec(german) ?? [];
      const { pathname, searchParams } = new URL(leads.replaceAll("&amp;", "&"), "http://plans.example");
      expect([pathname, Object.fromEntries(searchParams)]).toEqual([
        path,
        { servings: "6", region: "GB", locale: "en-GB" },
      ]);
      // Read with French words, it is in none of its languages.
      expect(await get(`${path}?locale=fr`)).toMatch(
        /<nav class="tongues"[^>]*><a [^>]*>British English<\/a><a lang="de"/,
      );
    }
    const asked = await request(app.app.server)
      .post("/p/north-gate/week")
      .type("form")
      .send({ servings: "6", diet: "vegan", locale: "de" });
    const [, ways = ""] = /<nav class="tongues"[^>]*>(.*?)<\/nav>/s.exec(asked.text) ?? [];
    expect(ways).toContain('<button type="submit" lang="en-GB">British English</button>');
    expect(ways).toContain('<input type="hidden" name="locale" value="en-GB">');
    expect(ways).not.toContain("href");
  });

  it("is titled in that language in lists, changes and feeds, each of which says its language", async () => {
    const query = `query ($locale: String!) { plans(filter: { publisher: "north-gate" }) { edges { node {
      title texts(locale: $locale) { title language summary summaryLanguage } } } }
      changes(last: 1) { edges { node { plan { texts(locale: $locale) { title language } } } } } }`;
    const inGerman = await app.ask(query, { locale: "de-AT" });
    expect(inGerman).toMatchObject({ errors: [] });
    const texts = { title: "Eine Woche Grünkohl", language: "de", summary: "Three suppers.", summaryLanguage: "en-GB" };
    expect(inGerman.data).toMatchObject({
      plans: { edges: [{ node: { title: "A week of kale", texts } }] },
      changes: { edges: [{ node: { plan: { texts: { title: texts.title, language: "de" } } } }] },
    });
    const own = { title: "A week of kale", language: "en-GB", summaryLanguage: "en-GB" };
    for (const locale of ["en", "fr", "zh-Hant-TW"])
      expect((await app.ask(query, { locale })).data).toMatchObject({ plans: { edges: [{ node: { texts: own } }] } });
    expect((await app.ask(query, { locale: "no such thing" })).errors).toMatchObject([
      { extensions: { code: "BAD_HOUSEHOLD" } },
    ]);

    const get = async (path: string, accepted = "en") =>
      request(app.app.server).get(path).set("accept-language", accepted);
    const title = "Eine Woche Grünkohl";
    expect((await get("/v1/plans?publisher=north-gate&locale=de")).body).toMatchObject({
      items: [{ title, language: "de", languages: ["en-GB", "de"], locale: "en-GB" }],
    });
    expect((await get("/v1/plans?publisher=north-gate", "de")).body).toMatchObject({
      items: [{ title: own.title, language: "en-GB" }],
    });
    expect((await get("/v1/plans?locale=no+such")).body).toMatchObject({ problems: [{ path: ["locale"] }] });
    expect((await get("/v1/changes?last=1&locale=de")).body).toMatchObject({
      items: [{ plan: { title, language: "de" } }],
    });
    const json = await get("/v1/publishers/north-gate/feed.json?locale=de");
    expect(JSON.parse(json.text)).toMatchObject({
      language: "de",
      items: [
        {
          ...{ title, language: "de", summary: "Three suppers." },
          url: expect.stringMatching(/\/p\/north-gate\/week\?locale=de$/) as string,
          content_html: expect.stringContaining("<em>schon wieder</em>") as string,
        },
      ],
    });
    const { text: atom } = await get("/v1/publishers/north-gate/feed.atom?locale=de");
    expect(atom).toMatch(/<feed [^>]*xml:lang="de">/);
    expect(atom).toContain(`<entry xml:lang="de">`);
    expect(atom).toContain(`<title>${title}</title>`);
    expect(atom).toContain(`<summary type="text" xml:lang="en-GB">Three suppers.</summary>`);
    const { text: plain } = await get("/v1/publishers/north-gate/feed.atom");
    expect(plain).toContain("<title>A week of kale</title>");
    expect(plain).not.toContain("Grünkohl");
    const { text: sitemap } = await get("/sitemap/plans.xml");
    expect(sitemap).toMatch(
      /<xhtml:link rel="alternate" hreflang="de" href="[^"]*\/p\/north-gate\/week\?locale=de"\/>/,
    );
  });

  it("is titled so on shelves of plans, and leads on in the language that was asked for", async () => {
    for (const path of ["/", "/p/north-gate"]) {
      const { text: preferred } = await request(app.app.server).get(path).set("accept-language", "de");
      expect(preferred).toContain(`<a href="/p/north-gate/week"><bdi>Eine Woche Grünkohl</bdi>`);
      const { text: asked } = await request(app.app.server).get(`${path}?locale=de`);
      expect(asked).toContain(`<a href="/p/north-gate/week?locale=de"><bdi>Eine Woche Grünkohl</bdi>`);
      const { text: french } = await request(app.app.server).get(`${path}?locale=fr`);
      expect(french).toContain(`<bdi lang="en-GB">A week of kale</bdi>`);
    }
  });

  it("tells of an original that changed, and keeps a changed number from being published", async () => {
    const changed = texts
      .replace("Boil it for 5 minutes.", "Boil it for 6 minutes.")
      .replace("Kale stew", "Stewed kale");
    const expected = [
      { kind: "COMPONENT", slug: "boiled-kale", version: 1 },
      { kind: "PLAN", slug: "week", version: 1 },
    ];
    expect((await save(changed, expected)).problems).toEqual([]);
    const found = await findings();
    expect(found).toMatchObject([
      { code: "TRANSLATION_INCOMPLETE" },
      { code: "TRANSLATION_NUMBERS", severity: "STOPS" },
      { code: "TRANSLATION_OUTDATED" },
      { code: "TRANSLATION_OUTDATED" },
    ]);
    const refused = await change(publishPlan, { slug: "week", expectedVersion: 2 });
    expect(refused).toMatchObject({ plan: null, problems: [{ code: "TRANSLATION_NUMBERS", line: 5 }] });
    const mended = `${germanKale("6 Minuten")}---\n${german}checked: "2026-11-30"\n`;
    const versions = ["de-plan-week", "de-component-boiled-kale"].map((slug) => ({
      kind: "TRANSLATION",
      slug,
      version: 1,
    }));
    expect((await save(mended, versions)).problems).toEqual([]);
    expect((await findings()).map(({ code }) => code)).toEqual(["TRANSLATION_INCOMPLETE"]);
    expect(await change(publishPlan, { slug: "week", expectedVersion: 2 })).toMatchObject({ plan: { revision: 2 } });
  });

  it("is another revision when a translation alone changed, and the same where nothing did", async () => {
    expect(await change(publishPlan, { slug: "week", expectedVersion: 2 })).toMatchObject({ plan: { revision: 2 } });
    const other = germanKale("6 Minuten").replace("Gekochter Grünkohl", "Grünkohl, gekocht");
    const expected = [{ kind: "TRANSLATION", slug: "de-component-boiled-kale", version: 2 }];
    expect((await save(other, expected)).problems).toEqual([]);
    expect(await change(publishPlan, { slug: "week", expectedVersion: 2 })).toMatchObject({ plan: { revision: 3 } });
    const discard = `mutation ($input: DiscardDraftInput!) { discardDraft(input: $input) { discarded { version } problems { message } } }`;
    const input = { kind: "TRANSLATION", slug: "de-plan-week", expectedVersion: 2 };
    expect(await change(discard, input)).toMatchObject({ discarded: { version: 2 }, problems: [] });
    expect(await change(publishPlan, { slug: "week", expectedVersion: 2 })).toMatchObject({ plan: { revision: 4 } });
    expect(await inLocale("de")).toMatchObject({ languages: ["en-GB"], scaled: { title: "A week of kale" } });
  });
});
