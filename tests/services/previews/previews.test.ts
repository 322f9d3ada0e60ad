import request, { type Response } from "supertest";
import { afterAll, beforeAll, expect, it } from "vitest";
import { demoBundle, openTestApp, renamed, type TestApp } from "../../graphql/open-test-app.js";
import { wordsFor } from "../../../src/exports/words/words-for.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { planText, prepareWriting, publisher } from "../../kit/plan-writer.js";

const create = `mutation ($input: CreatePreviewLinkInput!) { createPreviewLink(input: $input) {
  link { id slug expiresAt revokedAt publisher { slug } } path problems { code message path } } }`;
const revoke = `mutation ($input: RevokePreviewLinkInput!) { revokePreviewLink(input: $input) {
  link { id revokedAt } problems { code message } } }`;
const list = `query ($publisher: String!) { previewLinks(publisher: $publisher) { edges { node { id slug revokedAt } } } }`;
const scaled = `scaled(servings: 6, household: { diets: ["vegan"] }) { servings meals { meal { title } }
  shoppingList { lines { food { slug } } } warnings { code } storage { advice } }`;
const byLink = `query ($publisher: String!, $slug: String!, $secret: String!) {
  preview(publisher: $publisher, slug: $slug, secret: $secret) { version revision problems { code } findings { code } ${scaled} } }`;
const byToken = `query ($slug: String!) { planDraft(publisher: "${publisher}", slug: $slug) {
  preview { version revision problems { code message file line } findings { code severity } ${scaled} } } }`;
const save = `mutation ($input: SaveDraftInput!) { savePlanDraft(input: $input) { draft { version } problems { code message } } }`;
const publish = `mutation ($input: PublishPlanInput!) { publishPlan(input: $input) { plan { revision } problems { code message } } }`;
const discard = `mutation ($input: DiscardDraftInput!) { discardDraft(input: $input) { problems { code message } } }`;

interface Made {
  readonly link: { readonly id: string; readonly expiresAt: string };
  readonly path: string;
}

describeOnBothDatabases("previews of drafts", (open) => {
  let test: TestApp;
  let token: string;
  let now = new Date("2026-03-01T09:00:00Z");

  beforeAll(async () => {
    const database = await open();
    test = await openTestApp(database.data, undefined, () => now);
    token = await prepareWriting(database);
  });
  afterAll(() => test.close());

  const ask = async <T>(query: string, variables: object, as: string | undefined = token): Promise<T> => {
    const { data, errors } = await test.ask(query, { ...variables }, as);
    expect(errors).toEqual([]);
    return Object.values(data ?? {})[0] as T;
  };
  const get = (path: string): Promise<Response> => Promise.resolve(request(test.app.server).get(path));
  const saveText = async (text: string, expectedVersion: number | null): Promise<void> => {
    const saved = await ask<{ problems: unknown[] }>(save, { input: { publisher, text, expectedVersion } });
    expect(saved.problems).toEqual([]);
  };
  const saved = (slug: string, title: string, version: number | null = null): Promise<void> =>
    saveText(planText(slug, title), version);
  const made = async (slug: string, more: object = {}): Promise<Made> => {
    const answer = await ask<Made & { problems: unknown[] }>(create, { input: { publisher, slug, ...more } });
    expect(answer.problems).toEqual([]);
    return answer;
  };

  it("show what readers will see once it is published, page and list, for any household", async () => {
    await saved("same", "The same for all");
    const { path } = await made("same");
    expect((await get(`/p/${publisher}/same`)).status).toBe(404);
    const asked = ["", "?servings=9&diet=vegan&on-hand=200%20g%20carrot", "?servings=none"];
    const endings = ["", "/list"];
    const drafts = new Map<string, Response>();
    for (const ending of endings)
      for (const query of asked) drafts.set(ending + query, await get(path + ending + query));
    const { problems } = await ask<{ problems: unknown[] }>(publish, {
      input: { publisher, slug: "same", expectedVersion: 1 },
    });
    expect(problems).toEqual([]);
    for (const [ending, draft] of drafts) {
      const page = await get(`/p/${publisher}/same${ending}`);
      expect([ending, draft.status]).toEqual([ending, page.status]);
      expect(plain(draft.text, path)).toBe(plain(page.text, `/p/${publisher}/same`));
      expect(draft.text).toContain("A preview of the draft, version 1,");
      expect(draft.text).toContain(
        'works until <time datetime="2026-03-08T09:00:00.000Z">8 March 2026, 09:00 UTC</time> and',
      );
      expect(page.text).not.toContain("A preview of the draft");
    }
  });

  it("lead to no page but their own, and are kept and listed by nobody", async () => {
    await saved("private", "Between us");
    const { path } = await made("private");
    for (const page of [path, `${path}/list`, `${path}?servings=none`, `${path}x`]) {
      const answer = await get(page);
      expect([page, answer.headers["cache-control"]]).toEqual([page, "no-store"]);
      expect(answer.headers["x-robots-tag"]).toContain("noindex");
      expect(answer.headers["referrer-policy"]).toBe("no-referrer");
      expect(answer.headers["etag"]).toBeUndefined();
      const led = [...answer.text.matchAll(/ (?:href|action|src)="([^"]*)"/g)].map(([, to]) => String(to));
      expect(led.filter((to) => to.includes("private") && !to.startsWith(path))).toEqual([]);
      expect(answer.text).not.toContain('rel="canonical"');
    }
    expect(test.logged.join("\n")).not.toContain(path.split("/").at(-1));
  });

  it("always show the newest version", async () => {
    await saved("moving", "First words");
    const { path } = await made("moving");
    expect((await get(path)).text).toContain("First words");
    await saved("moving", "Second words", 1);
    const { text } = await get(path);
    expect(text).toContain("Second words");
    expect(text).toContain("version 2,");
    expect(text).not.toContain("First words");
  });

  it("say in words that they ended, were taken back, are misspelt, or that the draft is gone", async () => {
    await saved("ending", "Not for long");
    const { path, link } = await made("ending", { days: 2 });
    expect(link.expiresAt).toBe("2026-03-03T09:00:00.000Z");
    const other = await made("ending");
    now = new Date("2026-03-03T08:59:59Z");
    expect((await get(path)).status).toBe(200);
    now = new Date("2026-03-03T09:00:00Z");
    const ended = await get(path);
    expect([ended.status, ended.type]).toEqual([410, "text/html"]);
    expect(ended.text).toContain("This preview has ended");
    expect(ended.text).toContain("3 March 2026");
    for (const [language, day] of [
      ["de", "3. März 2026"],
      ["pl", "3 marca 2026"],
    ] as const) {
      const { text } = await request(test.app.server).get(path).set("accept-language", language);
      expect(text).toContain(`<html lang="${language}">`);
      expect(text).toContain(wordsFor(language).page.preview.endedWhy({ when: day }));
    }
    const taken = await ask<{ link: { revokedAt: string } }>(revoke, { input: { id: other.link.id } });
    expect(taken.link.revokedAt).toBe("2026-03-03T09:00:00.000Z");
    const revoked = await get(`${other.path}/list`);
    expect(revoked.status).toBe(410);
    expect(revoked.text).toContain("This preview was taken back");
    const wrongs = [
      path.slice(0, -1),
      `${path}A`,
      path.replace("/ending/", "/same/"),
      path.replace(publisher, "nobody"),
    ];
    for (const wrong of [...wrongs, `/preview/${publisher}/ending/%00`]) {
      const answer = await get(wrong);
      expect([wrong, answer.status]).toEqual([wrong, 404]);
      expect(answer.text).not.toContain("Not for long");
    }
    const last = await made("ending");
    const gone = await ask<{ problems: unknown[] }>(discard, {
      input: { publisher, kind: "PLAN", slug: "ending", expectedVersion: 1 },
    });
    expect(gone.problems).toEqual([]);
    const nothing = await get(last.path);
    expect(nothing.status).toBe(410);
    expect(nothing.text).toContain("This draft is gone");
    now = new Date("2026-03-01T09:00:00Z");
  });

  it("list above the page what still keeps the plan from being published", async () => {
    const wrong = planText("claims", "Claims too much").replace("meals:", "claims: [gluten-free]\nmeals:");
    await saveText(wrong.replace("food: carrot, amount: 300 g", "food: bulgur, amount: 300 g"), null);
    const { path } = await made("claims");
    const { status, text } = await get(path);
    expect(status).toBe(200);
    expect(text).toContain("It cannot be published yet:");
    expect(text).toMatch(/plan claims, line \d+: /);
    expect(text.indexOf("It cannot be published yet:")).toBeLessThan(text.indexOf("<h1>"));
    // Its components were discarded, or never saved.
    await test.deps.data.plans.saveDraft(renamed(demoBundle("bean-night"), "half").plan, null);
    const broken = await get((await made("half")).path);
    expect(broken.status).toBe(422);
    expect(broken.text).toContain("Not ready to be shown");
    expect(broken.text).toMatch(/There is no component/);
  });

  it("are had over GraphQL by the link's secret or by a token that reads drafts, for any household", async () => {
    await saved("asked", "Asked for");
    const { path, link } = await made("asked");
    const secret = String(path.split("/").at(-1));
    const { data, errors } = await test.ask(byLink, { publisher, slug: "asked", secret });
    expect(errors).toEqual([]);
    const { preview } = (await ask<{ preview: object }>(byToken, { slug: "asked" })) as { preview: object };
    expect(data).toMatchObject({ preview: { version: 1, revision: 1, problems: [], scaled: { servings: 6 } } });
    expect(data?.["preview"]).toMatchObject({ scaled: (preview as { scaled: object }).scaled });
    expect((await test.ask(byLink, { publisher, slug: "asked", secret: "no" })).data).toEqual({ preview: null });
    expect((await test.ask(byToken, { slug: "asked" })).errors[0]?.extensions["code"]).toBe("UNAUTHENTICATED");
    await ask(revoke, { input: { id: link.id } });
    const after = await test.ask(byLink, { publisher, slug: "asked", secret });
    expect(after.errors[0]?.extensions["code"]).toBe("PREVIEW_ENDED");
  });

  it("end with the token that made them, and last no longer than that", async () => {
    await saved("borrowed", "Borrowed");
    const until = new Date("2026-03-03T12:00:00Z");
    const short = await test.tokenFor(publisher, ["READ_DRAFTS"], until);
    const own = await ask<Made>(create, { input: { publisher, slug: "borrowed" } }, short);
    expect(own.link.expiresAt).toBe(until.toISOString());
    const asked = await ask<{ problems: { code: string }[] }>(
      create,
      { input: { publisher, slug: "borrowed", days: 3 } },
      short,
    );
    expect(asked.problems).toMatchObject([{ code: "BAD_SHAPE", path: ["input", "days"] }]);
    expect((await get(own.path)).status).toBe(200);
    await test.deps.data.accessTokens.revoke(short.slice(11, 19), now);
    expect((await get(own.path)).status).toBe(410);
  });

  it("are refused for a draft that is not there, for days out of range, and to whom may not read drafts", async () => {
    for (const [input, code] of [
      [{ slug: "nothing" }, "UNKNOWN_DRAFT"],
      [{ slug: "same", days: 0 }, "AMOUNT_OUT_OF_RANGE"],
      [{ slug: "same", days: 91 }, "AMOUNT_OUT_OF_RANGE"],
    ] as const) {
      const { problems } = await ask<{ problems: { code: string }[] }>(create, { input: { publisher, ...input } });
      expect(problems.map((each) => each.code)).toEqual([code]);
    }
    const writer = await test.tokenFor(publisher, ["WRITE", "PUBLISH", "ADMIN"]);
    const { errors } = await test.ask(create, { input: { publisher, slug: "same" } }, writer);
    expect(errors[0]?.extensions["code"]).toBe("FORBIDDEN");
  });

  it("are made, listed and taken back over REST, with the whole address", async () => {
    await saved("rest", "By REST");
    const at = `/v1/publishers/${publisher}/preview-links`;
    const post = (path: string, body?: object) =>
      request(test.app.server)
        .post(path)
        .set({ authorization: `Bearer ${token}` })
        .send(body);
    const answer = await post(at, { slug: "rest", days: 1 });
    expect(answer.status).toBe(200);
    const { id, address } = answer.body as { id: string; address: string };
    expect(address).toMatch(new RegExp(`^http://[^/]+/preview/${publisher}/rest/[0-9A-Za-z]{40}$`));
    expect((await get(new URL(address).pathname)).text).toContain("By REST");
    const { edges } = await ask<{ edges: { node: { id: string } }[] }>(list, { publisher });
    expect(edges.map(({ node }) => node.id)).toContain(id);
    const listed = await request(test.app.server)
      .get(`${at}?first=1`)
      .set({ authorization: `Bearer ${token}` });
    expect([listed.status, listed.body.items.length, JSON.stringify(listed.body)]).toEqual([
      200,
      1,
      expect.not.stringContaining(String(address.split("/").at(-1))),
    ]);
    expect((await post(`${at}/${id}/revoke`)).body).toMatchObject({ id, revokedAt: now.toISOString() });
    expect((await post(`${at}/11111111-1111-4111-8111-111111111111/revoke`)).status).toBe(404);
    expect((await post(at, { slug: "rest", days: 1000 })).status).toBe(422);
    expect((await request(test.app.server).get(at)).status).toBe(401);
  });
});

/** Without what only a preview or only a published page has: the notice, the edition, and what search engines and feeds are told. */
const plain = (html: string, path: string): string =>
  html
    .replace(/<aside class="preview[^]*?<\/aside>/, "")
    .replaceAll(/<meta name="robots"[^>]*>|<link rel="(?:canonical|alternate)"[^>]*>|<meta property="og:[^>]*>/g, "")
    .replace(/<script type="application\/ld\+json">[^]*?<\/script>/, "")
    .replace(/<section[^>]*id="edition"[^]*?<\/section>/, "")
    .replaceAll(path, "PLAN")
    .replaceAll(/\n+/g, "\n");
