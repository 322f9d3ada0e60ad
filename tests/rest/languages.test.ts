import request from "supertest";
import { afterAll, beforeAll, expect, it } from "vitest";
import { wordsFor } from "../../src/exports/words/words-for.js";
import { describeOnBothDatabases } from "../kit/databases.js";
import { demoBundle, renamed } from "../graphql/open-test-app.js";
import { openRest, planOf, publisher, type RestApp } from "./open-rest.js";

describeOnBothDatabases("the language of an answer", (open) => {
  let app: RestApp;
  const plan = planOf("bean-night");
  const page = `/p/${publisher}/bean-night/list`;

  beforeAll(async () => {
    app = await openRest(open);
  });
  afterAll(() => app.close());

  const pageIn = (language: string, url = page) =>
    request(app.app.server)
      .get(url)
      .set("accept-language", language)
      .set("accept", "text/html")
      .set("host", "plans.example");

  it("is the plan's where nobody asks for another, and says so", async () => {
    const { body, headers } = await app.get(plan);
    expect(body.languages).toEqual([body.locale]);
    expect(headers["content-language"]).toBe(body.locale);
  });

  it("follows `locale`, and names the writer's too", async () => {
    const { body, headers } = await app.get(`${plan}?locale=de`);
    expect(body.languages).toEqual(["de", body.locale]);
    expect(headers["content-language"]).toBe(`de, ${body.locale}`);
    const [local] = body.cautions;
    expect(local.text).toBe(wordsFor("de").cautionTexts["local-rules"]);
    const english = await app.get(plan);
    expect(english.body.cautions).toHaveLength(body.cautions.length);
  });

  it("follows no header of a browser where programs ask", async () => {
    const { body } = await app.get(plan, { "accept-language": "de" });
    expect(body.languages).toEqual([body.locale]);
  });

  it("on pages follows the browser, unless the reader names a locale", async () => {
    const german = await pageIn("de-AT,de;q=0.9,en;q=0.8");
    expect(german.headers["vary"]).toMatch(/accept-language/i);
    expect(german.text).toContain("Zwiebel");
    const polish = await pageIn("de", `${page}?locale=pl`);
    expect(polish.text).not.toContain("Zwiebel");
    const none = await pageIn("it");
    expect(none.text).not.toContain("Zwiebel");
    // Asked for again, it does not come from what was kept for another language.
    expect((await pageIn("de")).text).toBe(german.text);
  });

  it.each(["de", "fr", "es", "pl"] as const)(
    "where there is nothing to show, or a form is refused, is the reader's too: %s",
    async (language) => {
      const { page: words } = wordsFor(language);
      const english = wordsFor("en").page;
      const shelf = `/p/${publisher}`;
      const said: readonly (readonly [string, number, keyof typeof words])[] = [
        ["/nothing/here", 404, "notFoundPageWhy"],
        [`${shelf}/no-such-plan`, 404, "noSuchPlan"],
        [`${shelf}/bean-night/list?plan=nobody/nothing`, 404, "noSuchPlans"],
        ["/p/nobody", 404, "noSuchPublisher"],
        ["/?after=nowhere", 404, "noSuchShelf"],
        [`/preview/${publisher}/bean-night/misspelt`, 404, "toThePlans"],
        ["/privacy", 200, "toThePlans"],
        [`${shelf}/bean-night?servings=x`, 422, "lookAgain"],
        [`${shelf}/bean-night/list?servings=x`, 422, "listFaulty"],
        [`${shelf}/bean-night/cook?servings=x`, 422, "cannotCook"],
        [`${shelf}/bean-night/labels?appliance=hob-ring:x`, 422, "cannotCook"],
      ];
      for (const [url, status, key] of said) {
        const named = `${url}${url.includes("?") ? "&" : "?"}locale=${language}`;
        for (const answer of [await pageIn(language, url), await pageIn("en", named)]) {
          expect([url, answer.status]).toEqual([url, status]);
          expect(answer.text).toContain(`<html lang="${language}">`);
          expect(answer.text).toContain(words[key]);
          expect(answer.text).not.toContain(english[key]);
        }
      }
    },
  );

  it("of a form that cannot be worked out is the plan's own where the reader names none that there is", async () => {
    const { plan: german, ...rest } = renamed(demoBundle("bean-night"), "bohnen", "Bohnenabend");
    const at = new Date("2026-02-01T10:00:00Z");
    await app.deps.data.revisions.publish({ ...rest, plan: { ...german, locale: "de-DE" } }, at, null);
    for (const kind of ["", "/list", "/cook", "/fridge-door", "/labels"])
      for (const [header, fault, language] of [
        ["it", "servings=many", "de"],
        ["pl", "diet=no-such-diet", "pl"],
        ["pl", "servings=many&locale=german", "de"],
        ["pl", "servings=many&locale=%00", "de"],
      ] as const) {
        const { status, text } = await pageIn(header, `/p/${publisher}/bohnen${kind}?${fault}`);
        const [, shown] = /<html lang="(\w+)/.exec(text) ?? [];
        expect([kind, fault, status, shown]).toEqual([kind, fault, 422, language]);
      }
  });

  it("is a closed set: a hostile header makes no new answer", async () => {
    const { text } = await pageIn("it");
    for (const header of ["x".repeat(5_000), "*,*,*", ",".repeat(2_000), "zz-ZZ-x-ä;q=1", "de\u00a0,;q=x,\tpl;q=9"])
      expect((await pageIn(header)).text, header.slice(0, 20)).toBe(text);
  });
});
