import ICAL from "ical.js";
import { afterAll, beforeAll, expect, it } from "vitest";
import { describeOnBothDatabases } from "../kit/databases.js";
import { demo } from "../graphql/open-test-app.js";
import { openRest, planOf, publisher, type RestApp } from "./open-rest.js";

describeOnBothDatabases("the ways out over REST", (open) => {
  let app: RestApp;
  const plan = planOf("bean-night");

  beforeAll(async () => {
    app = await openRest(open);
  });
  afterAll(() => app.close());

  it("give a calendar once it is known when the session begins, and say so before", async () => {
    const without = await app.get(`${plan}.ics`);
    expect([without.status, without.body.problems[0].path]).toEqual([400, ["start"]]);
    const { text, headers } = await app.get(`${plan}.ics?servings=5&start=2026-10-25T09:00&zone=Europe/Berlin`);
    expect(headers["content-type"]).toMatch(/^text\/calendar/);
    const calendar = new ICAL.Component(ICAL.parse(text) as never);
    expect(calendar.getAllSubcomponents("vevent").length).toBeGreaterThan(1);
  });

  it("give schema.org data with a recipe a meal", async () => {
    const { body, headers } = await app.get(plan, { accept: "application/ld+json" });
    expect(headers["content-type"]).toMatch(/^application\/ld\+json/);
    const recipes = body["@graph"].filter((each: { "@type": string }) => each["@type"] === "Recipe");
    const { body: json } = await app.get(plan);
    expect(recipes).toHaveLength(json.meals.length);
  });

  it("give a letter for mail programs, which loads nothing and runs nothing", async () => {
    const { text, status, headers } = await app.get(`${plan}/mail?servings=5`);
    expect([status, headers["content-type"]]).toEqual([200, "text/html; charset=utf-8"]);
    expect(text).not.toMatch(/<script|<link|<img|\bsrc=|url\(/i);
    const { body } = await app.get(`${plan}?servings=5`);
    for (const { text: caution } of body.cautions) expect(text).toContain(caution.replaceAll("'", "&#39;"));
  });

  it("give the list as a table with a row a food", async () => {
    const { text } = await app.get(`${plan}/list.csv?servings=5`);
    const { body } = await app.get(`${plan}/list?servings=5`);
    expect(text.trimEnd().split("\r\n")).toHaveLength(body.lines.length + 1);
    const several = await app.rest("POST", "/v1/shopping-list", {
      headers: { accept: "text/csv" },
      body: { plans: demo.bundles.map((each) => ({ publisher, slug: each.plan.slug, servings: 2 })) },
    });
    expect(several.headers["content-type"]).toMatch(/^text\/csv/);
  });

  it("send who would rather have a page to it, with what was asked", async () => {
    const browser = "text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8";
    const { status, headers } = await app.get(`${plan}?servings=5&diet=vegan&campaign=spring`, { accept: browser });
    expect([status, headers["location"]]).toEqual([
      303,
      `/p/${publisher}/bean-night?servings=5&diet=vegan&campaign=spring`,
    ]);
    expect((await app.app.inject(headers["location"] ?? "")).statusCode).toBe(200);
  });

  it("give feeds that lead to every plan, and keep their ids when a plan is published again", async () => {
    const feed = `/v1/publishers/${publisher}/feed`;
    const before = await app.get(`${feed}.json`);
    expect(before.headers["content-type"]).toMatch(/^application\/feed\+json/);
    expect(before.body.items).toHaveLength(demo.bundles.length);
    const bundle = demo.bundles[0]!;
    await app.deps.data.revisions.publish(
      { ...bundle, plan: { ...bundle.plan, title: "A new title" } },
      new Date("2026-03-02T09:00:00Z"),
    );
    const after = await app.get(`${feed}.json`);
    const ids = ({ body }: typeof before): readonly string[] =>
      body.items.map(({ id }: { id: string }) => id).toSorted();
    expect(ids(after)).toEqual(ids(before));
    expect(after.body.items[0].title).toBe("A new title");
    const atom = await app.get(`${feed}.atom`);
    expect(atom.headers["content-type"]).toMatch(/^application\/atom\+xml/);
    for (const id of ids(after)) expect(atom.text).toContain(id);
    const first = await app.get(`${feed}.json?first=1`);
    const next = await app.get(first.body.next_url.replace("http://plans.example", ""));
    expect(next.body.items[0].id).not.toBe(first.body.items[0].id);
  });

  it("tell of every change once, whoever keeps the end of the last page", async () => {
    const told: string[] = [];
    let url = `/v1/changes?first=2&publisher=${publisher}`;
    for (;;) {
      const { body } = await app.get(url);
      told.push(...body.items.map(({ id }: { id: string }) => id));
      if (body.next === null) {
        url = `/v1/changes?after=${encodeURIComponent(body.end)}`;
        break;
      }
      url = body.next;
    }
    expect(new Set(told).size).toBe(told.length);
    expect(told.length).toBeGreaterThanOrEqual(demo.bundles.length);
    expect((await app.get(url)).body.items).toEqual([]);
    await app.deps.data.revisions.publish(demo.bundles[1]!, new Date("2026-03-03T09:00:00Z"));
    const bundle = demo.bundles[2]!;
    await app.deps.data.revisions.publish(
      { ...bundle, plan: { ...bundle.plan, summary: "Another." } },
      new Date("2026-03-03T09:00:00Z"),
    );
    const { body } = await app.get(url);
    expect(body.items.map((each: { plan: { slug: string } }) => each.plan.slug)).toEqual([bundle.plan.slug]);
    const { address, revision } = body.items[0].plan;
    expect((await app.get(address)).body.revision).toBe(revision);
  });
});
