import parseLinkHeader from "parse-link-header";
import { afterAll, beforeAll, expect, it } from "vitest";
import { demo, demoBundle, renamed } from "../graphql/open-test-app.js";
import { describeOnBothDatabases } from "../kit/databases.js";
import { openRest, publisher, type RestApp } from "./open-rest.js";

interface Walked {
  readonly slugs: readonly string[];
  readonly pages: number;
  readonly last: string;
}

describeOnBothDatabases("lists over REST", (open) => {
  let app: RestApp;

  beforeAll(async () => {
    app = await openRest(open);
    for (let at = 0; at < 23; at++) {
      const again = renamed(demoBundle("bean-night"), `bean-night-${at}`, `Bean night ${at}`);
      await app.deps.data.revisions.publish(again, new Date(Date.UTC(2026, 0, 1, 0, at)));
    }
  });
  afterAll(() => app.close());

  /** Follows one relation of the header Link (read by an independent parser of RFC 8288) to its end. */
  const walk = async (start: string, rel: "next" | "prev"): Promise<Walked> => {
    const slugs: string[] = [];
    let url: string | null = start;
    let [pages, last] = [0, start];
    while (url !== null) {
      const { status, body, headers } = await app.get(url);
      expect(status).toBe(200);
      const found = body.items.map(({ slug }: { slug: string }) => slug);
      if (rel === "next") slugs.push(...found);
      else slugs.unshift(...found);
      pages += 1;
      last = url;
      const links = parseLinkHeader(headers["link"] ?? "");
      expect(links?.["next"]?.url ?? null).toBe(body.next);
      expect(links?.["prev"]?.url ?? null).toBe(body.previous);
      url = links?.[rel]?.url ?? null;
    }
    return { slugs, pages, last };
  };

  it("are walked forwards and backwards, each thing once and none missing", async () => {
    const all = await app.get("/v1/plans?first=100");
    const slugs = all.body.items.map(({ slug }: { slug: string }) => slug);
    expect(slugs).toHaveLength(23 + demo.bundles.length);
    const forwards = await walk("/v1/plans?first=5", "next");
    expect(forwards.slugs).toEqual(slugs);
    expect(forwards.pages).toBe(Math.ceil(slugs.length / 5));
    const backwards = await walk("/v1/plans?last=5", "prev");
    expect(backwards.slugs).toEqual(slugs);
    const foods = await walk("/v1/foods?first=20", "next");
    expect(foods.slugs).toEqual(demo.foods.map(({ slug }) => slug).toSorted());
  });

  it("keep their filter from page to page", async () => {
    const found = await walk(`/v1/plans?search=night&publisher=${publisher}&first=7`, "next");
    expect(found.slugs.length).toBeGreaterThanOrEqual(23);
    expect(found.pages).toBeGreaterThan(2);
    for (const slug of found.slugs) expect(slug).toContain("night");
    const holding = await app.get("/v1/plans?uses-food=pearl-barley");
    expect(holding.body.items.map(({ slug }: { slug: string }) => slug)).toContain("roots-and-barley");
  });

  it("refuse sizes, places and searches that are none, by name", async () => {
    const wrong = [
      ["first=0", "first"],
      ["first=101", "first"],
      ["first=2&last=2", "last"],
      ["after=nowhere", "after"],
      [`search=${"x".repeat(201)}`, "search"],
      ["uses-food=%00", "uses-food"],
    ];
    for (const [query, name] of wrong) {
      const { status, body } = await app.get(`/v1/plans?${query}`);
      expect([status, body.problems?.[0]?.path[0]]).toEqual([400, name]);
    }
  });

  it("have publishers with a plan in force, as GraphQL has them", async () => {
    await app.deps.data.publishers.save({ slug: "no-plan-yet", name: "No Plan Yet" });
    for (const slug of ["a-place", "böse-straße", "z-place"]) {
      await app.deps.data.publishers.save({ slug, name: `The ${slug}` });
      const bundle = demoBundle("bean-night");
      const plan = { ...bundle.plan, publisher: slug };
      await app.deps.data.revisions.publish({ ...bundle, plan }, new Date(Date.UTC(2026, 0, 2)));
    }
    const slugs = ["a-place", "böse-straße", publisher, "z-place"];
    expect(await walk("/v1/publishers?first=3", "next")).toMatchObject({ slugs, pages: 2 });
    expect(await walk("/v1/publishers?last=1", "prev")).toMatchObject({ slugs, pages: 4 });
    const { body, headers } = await app.get("/v1/publishers");
    const { data } = await app.ask(
      "{ publishers { edges { node { slug name region currency languages description website } } } }",
    );
    const { edges } = data?.["publishers"] as { readonly edges: readonly { readonly node: object }[] };
    expect(edges).toHaveLength(slugs.length);
    edges.forEach(({ node }, at) => expect(body.items[at]).toMatchObject(node));
    for (const each of body.items)
      expect((await app.get(`/v1/publishers/${encodeURIComponent(each.slug)}`)).body).toEqual(each);
    expect(headers["cache-control"]).toContain("max-age");
    expect((await app.get("/v1/publishers", { "if-none-match": headers["etag"] ?? "" })).status).toBe(304);
    for (const query of ["first=0", "first=101", "after=nowhere", "slug=a"])
      expect([query, (await app.get(`/v1/publishers?${query}`)).status]).toEqual([query, 400]);
  });

  it("lead to things that are there", async () => {
    const { body } = await app.get("/v1/plans?first=3");
    for (const { address, title } of body.items) expect((await app.get(address)).body.title).toBe(title);
  });
});
