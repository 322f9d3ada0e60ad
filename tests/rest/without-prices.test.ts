import request from "supertest";
import { afterAll, beforeAll, expect, it } from "vitest";
import { describeOnBothDatabases } from "../kit/databases.js";
import { demoSlugs, openRest, planOf, type RestApp } from "./open-rest.js";

/** The demo's prices are of region XA: in another there are none. */
const asked = "servings=4&region=GB";

describeOnBothDatabases("a plan without prices", (open) => {
  let app: RestApp;
  beforeAll(async () => {
    app = await openRest(open);
  });
  afterAll(() => app.close());

  const times = (text: string): number => text.split(/No price is known/u).length - 1;

  it.each(demoSlugs)("says so once, in every form: %s", async (slug) => {
    const { body } = await app.get(`${planOf(slug)}/list?${asked}`);
    const { warnings } = body as { warnings: readonly { code: string; message: string; path: readonly string[] }[] };
    expect(warnings.filter(({ code }) => code === "PRICE_UNKNOWN")).toEqual([
      expect.objectContaining({ message: "No price is known.", path: [] }),
    ]);
    for (const form of [".md", ".txt", "/mail", "/mail.txt"]) {
      const { text } = await app.get(`${planOf(slug)}${form}?${asked}`);
      expect(times(text), form).toBe(1);
    }
    const page = await request(app.app.server).get(`/p/third-gate-allotments/${slug}?${asked}`);
    expect(page.status).toBe(200);
    expect(times(page.text)).toBe(1);
  });
});
