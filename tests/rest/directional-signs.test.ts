import { afterAll, beforeAll, expect, it } from "vitest";
import type { PlanBundle } from "../../src/domain/model/plan.js";
import { endpoints } from "../../src/rest/endpoints.js";
import { demoBundle } from "../graphql/open-test-app.js";
import { describeOnEmbedded } from "../kit/databases.js";
import { openRest, publisher, type RestApp } from "./open-rest.js";

/** Every sign that turns the direction of writing: the property Bidi_Control of the Unicode character database. */
const signs = [
  "\u061c",
  "\u200e",
  "\u200f",
  "\u202a",
  "\u202b",
  "\u202c",
  "\u202d",
  "\u202e",
  "\u2066",
  "\u2067",
  "\u2068",
  "\u2069",
];
const turning = /\p{Bidi_Control}/u;

const slug = "turned";
const wordy = new Set(["title", "summary", "text", "preparation", "introduction"]);
let at = 0;
const turn = (text: string): string => `${signs[(at += 1) % signs.length]}${text}${signs[(at += 5) % signs.length]}`;

/** All that a writer says in words, with such signs around it. */
function turned<T>(value: T): T {
  if (Array.isArray(value)) return value.map(turned) as T;
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, inner]) => [
      key,
      wordy.has(key) && typeof inner === "string" && inner !== "" ? turn(inner) : turned(inner as unknown),
    ]),
  ) as T;
}

describeOnEmbedded("signs that turn the direction of writing", (open) => {
  let app: RestApp;
  beforeAll(async () => {
    app = await openRest(open);
    const bundle = demoBundle("bean-night");
    const { plan, components } = bundle;
    const whole: PlanBundle = {
      ...bundle,
      plan: { ...turned(plan), slug, publisher },
      components: turned(components),
    };
    await app.deps.data.revisions.publish(whole, new Date("2026-03-01T08:00:00Z"));
    await app.deps.data.publishers.save({ slug: publisher, name: turn("Third Gate") });
  });
  afterAll(() => app.close());

  /** Every form but JSON for programs, which says what was written, byte for byte. */
  const urls = [
    ...["/", `/p/${publisher}`, `/p/${publisher}/${slug}`, `/p/${publisher}/${slug}/list`],
    ...endpoints
      .filter(({ method, scope, path }) => method === "GET" && scope === undefined && path.includes("{publisher}"))
      .flatMap(({ path, writings }) => {
        const whole = path.replace("{publisher}", publisher).replace("{slug}", slug).replace("{revision}", "1");
        return writings
          .filter(({ format }) => !["json", "brief"].includes(format.suffix) || path.endsWith("/feed"))
          .map(({ format }) => `${whole}.${format.suffix}?start=2026-03-28T09:00&zone=Europe/Berlin`);
      }),
  ];

  it("are in no page and no text for people, which they could make read otherwise", async () => {
    let said = 0;
    for (const url of urls) {
      let answer = await app.app.inject({ url });
      if (answer.statusCode === 400) answer = await app.app.inject({ url: url.split("?")[0] ?? url });
      expect([url, answer.statusCode]).toEqual([url, 200]);
      expect([url, turning.test(answer.body)]).toEqual([url, false]);
      if (/bean/i.test(answer.body)) said += 1;
    }
    // A test that finds none of the words finds none of the signs.
    expect(said).toBeGreaterThan(8);
  });

  it("of names beside other words in a page are kept apart by the element for that (HTML, bdi)", async () => {
    const { body } = await app.app.inject({ url: "/" });
    expect(body).toContain("<bdi>Third Gate</bdi>");
    expect(body).toMatch(/<bdi>[^<]*bean[^<]*<\/bdi>/i);
  });
});
