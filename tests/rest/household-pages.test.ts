import request from "supertest";
import { afterAll, beforeAll, expect, it } from "vitest";
import { loadSeeds } from "../../src/services/drafts/load-seeds.js";
import { demo, openTestApp, type TestApp } from "../graphql/open-test-app.js";
import { attributeOf, byId, elementsOf, markupFaults, parseErrors, textOf } from "../kit/html-page.js";
import { describeOnEmbedded } from "../kit/databases.js";

const publisher = "/p/third-gate-allotments";
const path = `${publisher}/roots-and-barley`;
const beans = `${publisher}/bean-night`;

/** Words of the trade of the machine, which readers never see. */
const notForReaders = /\b(batch(es)?|loads?|revisions?|components?|basis|sessions?|decides|weighed|slugs?)\b/gi;
/** Capital letters are names of laws, "Food Code"; a food-safety code is one too. */
const codes = /(?<!food-safety )\bcodes?\b/g;

describeOnEmbedded("pages for a household", (open) => {
  let test: TestApp;
  const get = (address: string) => request(test.app.server).get(address);
  const post = (address: string, fields: Readonly<Record<string, string>>) =>
    request(test.app.server).post(address).type("form").send(fields);

  beforeAll(async () => {
    test = await openTestApp((await open()).data);
    await loadSeeds(test.deps, demo);
  });
  afterAll(() => test.close());

  const plans = ["roots-and-barley", "bean-night", "lentils-and-greens", "eggs-and-oats"];
  const kinds = ["", "/list", "/cook", "/fridge-door", "/labels"];
  const asked = [
    "",
    "?servings=40&region=DE&currency=EUR&start=2026-03-01T10:00&zone=Europe/Berlin",
    "?servings=1&region=XA&currency=XTS&diet=gluten-free",
  ];

  it.each(plans.flatMap((plan) => kinds.map((kind) => `${publisher}/${plan}${kind}`)))(
    "answers %s as valid HTML in words for readers, for one person and for forty",
    async (address) => {
      for (const query of asked) {
        const { text, status } = await get(address + query);
        expect([query, status]).toEqual([query, 200]);
        expect(parseErrors(text)).toEqual([]);
        expect(await markupFaults(text)).toEqual([]);
        const said = textOf(byId(text, "main"));
        expect([...(said.match(notForReaders) ?? []), ...(said.match(codes) ?? [])], address + query).toEqual([]);
      }
    },
  );

  it("leads a form without diets to the address that asks the same", async () => {
    const fields = {
      servings: "6",
      region: "GB",
      "have-1": "carrot",
      "how-much-1": "500 g",
      "have-2": "",
      "people-1": "2",
      "share-1": "1/2",
      "written-for": "4",
      start: "2026-03-01T10:00",
      zone: "Lisbon",
    };
    const { status, headers } = await post(path, fields);
    expect(status).toBe(303);
    expect(headers["cache-control"]).toBe("no-store");
    const there = new URL(headers["location"] ?? "", "http://plans.example");
    expect(there.pathname).toBe(path);
    expect([...there.searchParams]).toEqual([
      ["servings", "6"],
      ["region", "GB"],
      ["eaters", "2x1/2"],
      ["eaters", "4x1"],
      ["on-hand", "carrot:500 g"],
      ["start", "2026-03-01T10:00"],
      ["zone", "Europe/Lisbon"],
    ]);
    expect((await get(headers["location"] ?? "")).status).toBe(200);
  });

  it("keeps diets out of every address, and away from caches and logs", async () => {
    const { status, headers, text } = await post(path, { servings: "6", diet: "gluten-free", region: "GB" });
    expect(status).toBe(200);
    expect(headers["cache-control"]).toBe("no-store");
    expect(headers["etag"]).toBeUndefined();
    const addresses = elementsOf(text).flatMap((element) =>
      ["href", "action", "src", "content"].flatMap((name) => attributeOf(element, name) ?? []),
    );
    expect(addresses.filter((each) => each.includes("diet=") || each.includes("gluten-free"))).toEqual([]);
    expect(textOf(byId(text, "main"))).toContain("Not confirmed gluten-free: 2 labels to read.");
    // Every way on from it asks in the same way.
    const ways = elementsOf(text).filter((each) => attributeOf(each, "class") === "way");
    expect(ways.map((each) => [attributeOf(each, "method"), attributeOf(each, "action")])).toEqual(
      expect.arrayContaining([
        ["post", `${path}/list`],
        ["post", `${path}/cook`],
      ]),
    );
    expect(textOf(byId((await post(`${path}/list`, { diet: "gluten-free" })).text, "count"))).toContain("things");
    expect(test.logged.join("\n")).not.toMatch(/gluten/);
  });

  it("answers an address that somebody wrote with a diet", async () => {
    const { status, text } = await get(`${path}?diet=gluten-free`);
    expect(status).toBe(200);
    expect(textOf(byId(text, "main"))).toContain("Not confirmed gluten-free: 2 labels to read.");
  });

  it.each([
    [{ servings: "many" }, "servings"],
    [{ servings: "4", "people-1": "9", "share-1": "1/2" }, "eaters"],
    [{ "have-1": "carrot", "how-much-1": "plenty" }, "onHand"],
    [{ "have-1": "carrot", "how-much-1": "" }, "onHand"],
    [{ start: "2026-03-01T10:00", zone: "Atlantis" }, "zone"],
    [{ start: "2026-03-01T10:00", zone: "", region: "US" }, "zone"],
    [{ cooks: "two" }, "cooks"],
  ] satisfies (readonly [Record<string, string>, string])[])("explains %j beside its field", async (fields, field) => {
    const { headers } = await post(path, { "written-for": "4", ...fields });
    const { status, text } = await get(headers["location"] ?? "");
    expect(status).toBe(422);
    expect(textOf(byId(text, `fault-${field}`))).not.toBe("");
    expect(text).toContain("Everything you typed is still here.");
  });

  it("takes a country by its name, and its only clock", async () => {
    const { text } = await get(path);
    const options = elementsOf(text).filter(({ tagName }) => tagName === "option");
    const named = new Map(options.map((option) => [textOf(option), attributeOf(option, "value")]));
    expect(named.get("United Kingdom")).toBe("GB");
    const { headers } = await post(path, { region: "GB", start: "2026-03-01T10:00" });
    expect(headers["location"]).toContain("zone=Europe%2FLondon");
  });

  it.each([
    [{ "content-type": "application/json" }, '{"servings":6}', 415],
    [{ "content-type": "application/x-www-form-urlencoded" }, "x".repeat(70_000), 413],
  ] as const)("refuses what is no form: %j", async (headers, body, status) => {
    const answer = await request(test.app.server).post(path).set(headers).send(body);
    expect([answer.status, answer.type]).toEqual([status, "text/html"]);
  });

  it("redirects a slash at the end, and nowhere else", async () => {
    for (const [from, to] of [
      [`${path}/`, path],
      [`${path}/list/?servings=5`, `${path}/list?servings=5`],
      [`${publisher}/`, publisher],
      ["/privacy/", "/privacy"],
    ]) {
      const { status, headers } = await get(from ?? "");
      expect([from, status, headers["location"]]).toEqual([from, 308, to]);
    }
    for (const hostile of ["//evil.example/", "/%5Cevil.example/", "/\\evil.example/"]) {
      const { headers } = await get(hostile);
      expect(headers["location"] ?? "/safe").toMatch(/^\/[^/\\]/);
    }
  });

  it("answers a browser with a page where there is nothing, a program with a problem", async () => {
    const page = await get("/nothing").set("accept", "text/html,application/xhtml+xml");
    expect([page.status, page.type]).toEqual([404, "text/html"]);
    expect(parseErrors(page.text)).toEqual([]);
    const problem = await get("/nothing").set("accept", "application/json");
    expect([problem.status, problem.type]).toEqual([404, "application/problem+json"]);
  });

  it("lists its pages for those who index them", async () => {
    const robots = await get("/robots.txt").set("host", "plans.example");
    expect(robots.text).toContain("Sitemap: http://plans.example/sitemap.xml");
    const index = await get("/sitemap.xml").set("host", "plans.example");
    expect(index.type).toBe("application/xml");
    const [, file] = /<loc>http:\/\/plans\.example(\/[^<]+)<\/loc><lastmod>[^<]+<\/lastmod>/.exec(index.text) ?? [];
    const listed = await get(file ?? "").set("host", "plans.example");
    for (const plan of plans) expect(listed.text).toContain(`<loc>http://plans.example${publisher}/${plan}</loc>`);
    expect((await get("/sitemap/plans.xml?after=rubbish")).status).toBe(404);
  });

  it("says in its head what it is, for those who list and send pages", async () => {
    const { text } = await get(`${beans}?servings=6`).set("host", "plans.example");
    const elements = elementsOf(text);
    const meta = new Map(
      elements.flatMap((each) => {
        const name = attributeOf(each, "property") ?? attributeOf(each, "name");
        return name === null ? [] : [[name, attributeOf(each, "content")] as const];
      }),
    );
    expect(meta.get("og:title")).toBe("Put the beans on to soak");
    expect(meta.get("og:url")).toBe(`http://plans.example${beans}?servings=6`);
    expect(meta.get("description")).toBe(meta.get("og:description"));
    const data = elements.filter((each) => attributeOf(each, "type") === "application/ld+json").map(textOf);
    expect(data).toHaveLength(1);
    expect(JSON.stringify(JSON.parse(data[0] ?? ""))).toContain('"@type":"Recipe"');
    const feeds = elements.filter((each) => attributeOf(each, "rel") === "alternate");
    for (const feed of feeds) {
      const address = new URL(attributeOf(feed, "href") ?? "");
      expect((await get(address.pathname)).status).toBe(200);
    }
    expect(feeds).toHaveLength(2);
  });

  it("tells of routes what they change", async () => {
    const { text } = await get(`${publisher}/lentils-and-greens?region=XA&currency=XTS`);
    expect(textOf(byId(text, "made-boiled-lentils"))).toMatch(/Or tinned \(bought\): .*(less|more)/);
  });

  it("stays below 150 kB without pictures", async () => {
    for (const plan of plans) {
      const { text } = await get(`${publisher}/${plan}?servings=40&region=GB&currency=GBP`);
      expect(Buffer.byteLength(text)).toBeLessThan(150_000);
    }
  });
});
