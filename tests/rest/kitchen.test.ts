import { afterAll, beforeAll, expect, it } from "vitest";
import { describeOnBothDatabases } from "../kit/databases.js";
import { openRest, planOf, publisher, type RestApp } from "./open-rest.js";

describeOnBothDatabases("the reader's kitchen", (open) => {
  let app: RestApp;
  const slug = "roots-and-barley";
  const page = `/p/${publisher}/${slug}`;
  const textOf = (html: string): string => html.replace(/<[^>]*>/g, "").replaceAll("&quot;", '"');

  beforeAll(async () => {
    app = await openRest(open);
  });
  afterAll(() => app.close());

  const listFor = (kitchen: object) =>
    app.rest("POST", "/v1/shopping-list", {
      body: { plans: [{ publisher, slug, servings: 12 }], household: { kitchen } },
    });

  it("is taken over the form and shown again in it", async () => {
    const { statusCode, body } = await app.app.inject(`${page}?servings=12&cooks=2&appliance=oven-shelf:1`);
    expect(statusCode).toBe(200);
    expect(body).toContain("For 2 cooks.");
    expect(body).toContain('value="oven-shelf:1"');
    expect(textOf(body)).not.toContain("oven shelf 2");
    expect(textOf((await app.app.inject(`${page}?servings=12`)).body)).toContain("oven shelf 2");
  });

  it("is taken in the body of a list, and checked there", async () => {
    const good = await listFor({ cooks: 2, appliances: [{ appliance: "oven-shelf", count: 1 }] });
    expect(good.status).toBe(200);
    const bad = await listFor({ appliances: [{ appliance: "oven-shelv", count: 1 }] });
    expect([bad.status, bad.body.problems[0].path]).toEqual([
      422,
      ["household", "kitchen", "appliances", "0", "appliance"],
    ]);
    expect(bad.body.problems[0].message).toContain("oven-shelf");
    expect((await listFor({ cooks: 0 })).status).toBe(422);
    expect((await listFor({ appliances: [{ appliance: "oven-shelf", count: -1 }] })).status).toBe(422);
  });

  it.each([
    ["cooks=0", "cooks"],
    ["cooks=many", "cooks"],
    ["appliance=oven-shelv:1", "oven-shelf"],
    ["appliance=oven-shelf:101", "101"],
    ["appliance=oven-shelf:1&appliance=oven-shelf:2", "twice"],
    ["appliance=Backblech:1", "Backblech"],
  ])("that is wrong is said beside its field, and nowhere by a path that no reader wrote: %s", async (query, said) => {
    const { statusCode, body } = await app.app.inject(`${page}?servings=12&${query}`);
    expect(statusCode).toBe(422);
    const json = await app.get(`${planOf(slug)}?servings=12&${query}`);
    expect(json.status).toBe(400);
    expect(json.text).toContain(said);
    for (const text of [textOf(body), json.body.problems[0].message, json.body.detail])
      expect(text).not.toMatch(/household >|kitchen >|appliances >|> appliance\b/);
  });

  it("without an oven says which steps need one, in their own words, and leaves all else of the plan", async () => {
    const without = "servings=12&appliance=oven-shelf:0";
    const session = await app.get(`${planOf(slug)}/session?${without}`);
    expect([session.status, session.body.type]).toEqual([422, "/problems/no-session"]);
    const { body: plan } = await app.get(`${planOf(slug)}?${without}`);
    expect([plan.session, plan.sessions]).toEqual([null, []]);
    expect(plan.shoppingList.lines.length).toBeGreaterThan(5);
    const { body, statusCode } = await app.app.inject(`${page}?${without}`);
    expect(statusCode).toBe(200);
    const markdown = await app.get(`${planOf(slug)}.md?${without}`);
    const words = [session.body.detail, session.body.problems[0].message, plan.sessionProblems[0].message];
    for (const said of [...words, textOf(body), markdown.text]) {
      expect(said).toMatch(/no oven shelf in this kitchen/);
      expect(said).toContain("Tray of roast roots");
      expect(said).not.toMatch(/kitchen >|roast-roots\/|oven-shelf >/);
    }
  });
});
