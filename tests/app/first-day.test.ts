import { execFileSync } from "node:child_process";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { createTestDatabase, dropTestDatabase } from "../kit/databases.js";
import { runCli, runCliJson } from "./cli/run-cli.js";
import { startService, type ServiceProcess } from "./processes/service-process.js";

/** Two more meals of a writer's own, of base foods alone. */
const lemons = (oil: string): string => `kind: plan
publisher: kitchen-en
slug: lemons
title: Lemon rice
locale: en-GB
measured-in: metric
serves: 2
meals:
  - slug: rice
    title: Lemon rice
    day: 0
    lines:
      - juice and zest of 2 lemons
      - 200 g basmati rice
      - ${oil}
    steps: [{ do: "Boil the rice and turn it in the juice, the zest and the oil.", time: 20 min }]
`;

/** What an operator may write the day a maker is found to blend its oil with another. */
const edition = (code: string): string => `kind: base-foods\ncode: ${code}\ntitle: A correction\n`;
const correction = `sunflower-oil:
  names:
    { en: sunflower oil, de: Sonnenblumenöl, fr: huile de tournesol, es: aceite de girasol, pl: olej słonecznikowy }
  aisle: oils-and-vinegars
  shop: volume
  is: made
  diets: { vegan: yes, vegetarian: yes, gluten-free: yes }
  contains: [soy]
  stable: yes
  density: 0.92
`;

describe("the first day of a service", () => {
  let url: string;
  let folder: string;
  let service: ServiceProcess;
  let settings: Record<string, string>;
  const production = () => ({ DATABASE_URL: url, NODE_ENV: "production", LOG_LEVEL: "warn" });

  beforeAll(async () => {
    execFileSync(process.execPath, ["scripts/build.mjs"], { stdio: "ignore" });
    folder = await mkdtemp(join(tmpdir(), "prepwright-first-day-"));
    url = await createTestDatabase("empty");
    service = await startService(production());
  }, 120_000);
  afterAll(async () => {
    await service.stop();
    await dropTestDatabase(url);
    await rm(folder, { recursive: true, force: true });
  });

  /** As docs/writers.md says: a publisher and a token for it, made on the machine of the service. */
  const writerOf = async (publisher: string): Promise<Record<string, string>> => {
    const made = await runCli(["publisher", "create", "--local", publisher, "--name", "Third Gate"], production());
    expect(made).toMatchObject({ exit: 0 });
    const scopes = ["--scopes", "READ_DRAFTS,WRITE,PUBLISH"];
    const token = await runCli(
      ["token", "create", "--local", "--name", "me", "--publisher", publisher, ...scopes],
      production(),
    );
    expect(token).toMatchObject({ exit: 0, out: expect.stringMatching(/^prepwright_/) });
    return { PREPWRIGHT_SERVER: service.address, PREPWRIGHT_TOKEN: token.out.trim() };
  };

  it.each([
    ["en", "Barley, twice", "pearl barley"],
    ["de", "Graupen, zweimal", "Perlgraupen"],
    ["fr", "Orge, deux fois", "orge perlé"],
    ["es", "Cebada, dos veces", "cebada perlada"],
    ["pl", "Kasza dwa razy", "perłowa"],
  ])(
    "publishes the plan that init writes in %s, and shows it on its page and over REST",
    async (locale, title, barley) => {
      const publisher = `kitchen-${locale}`;
      settings = await writerOf(publisher);
      const into = join(folder, locale);
      expect(await runCli(["init", into, "--locale", locale, "--publisher", publisher])).toMatchObject({ exit: 0 });
      const path = join(into, "plan.yaml");
      const checked = await runCliJson(["check", "--explain", path], settings);
      expect([checked.exit, checked.answer.problems]).toEqual([0, []]);
      const published = await runCliJson(["publish", path], settings);
      expect([published.exit, published.answer.problems]).toEqual([0, []]);

      // The words around a plan are English; the plan and its foods speak its own language.
      const page = await fetch(`${service.address}/p/${publisher}/first-plan`);
      const html = await page.text();
      expect([page.status, page.headers.get("content-type")]).toEqual([200, "text/html; charset=utf-8"]);
      expect(html).toContain(title);
      expect(html.toLowerCase()).toContain(barley.toLowerCase());

      const answer = await fetch(`${service.address}/v1/plans/${publisher}/first-plan/list`);
      expect(answer.status).toBe(200);
      expect(JSON.stringify(await answer.json())).toContain("pearl-barley");
    },
    120_000,
  );

  it("publishes the larger example of docs/writers.md, of base foods alone", async () => {
    settings = await writerOf("third-gate-allotments");
    const published = await runCliJson(["publish", "examples/first-plan.yaml"], settings);
    expect([published.exit, published.answer.problems]).toEqual([0, []]);
  }, 120_000);

  it("buys two lemons for the juice and zest of two lemons, of base foods alone", async () => {
    settings = await writerOf("lemon-kitchen");
    const path = join(folder, "lemons.yaml");
    await writeFile(path, lemons("2 tbsp sunflower oil").replace("kitchen-en", "lemon-kitchen"));
    const published = await runCliJson(["publish", path], settings);
    expect([published.exit, published.answer.problems]).toEqual([0, []]);
    const answer = await fetch(`${service.address}/v1/plans/lemon-kitchen/lemons/list`);
    const list = JSON.stringify(await answer.json());
    const [, lemon] = /("food":\{[^{}]*"slug":"lemon".*?)"food":/.exec(`${list}"food":`) ?? [];
    expect(lemon, list).toMatch(/"(?:low|value)":"?2"?[,}]/);
  }, 120_000);

  it("loads an edition of base foods, leaves what the operator saved, and names the plans it makes less safe", async () => {
    const old = await runCliJson(["foods", "load"], production());
    expect([old.exit, old.answer.result]).toMatchObject([0, { added: [], replaced: [], kept: [] }]);
    const faulty = join(folder, "faulty.yaml");
    await writeFile(faulty, correction.replace("soy", "sojy"));
    const head = join(folder, "edition.yaml");
    await writeFile(head, edition("2027-01-02"));
    const refused = await runCliJson(["foods", "load", head, faulty], production());
    expect(refused.exit).toBe(1);
    expect(refused.answer.problems).toMatchObject([
      { file: faulty, line: 8, path: ["sunflower-oil", "contains", "0"] },
    ]);

    const right = join(folder, "right.yaml");
    await writeFile(right, correction);
    const loaded = await runCliJson(["foods", "load", head, right], production());
    expect(loaded.answer.problems).toEqual([]);
    expect(loaded.answer.result).toEqual({
      ...{ edition: "2027-01-02", added: [], replaced: ["sunflower-oil"], kept: [] },
      lessSafePlans: ["lemon-kitchen/lemons", "third-gate-allotments/barley-and-carrots"],
    });
    const again = await runCliJson(["foods", "load", head, right], production());
    expect(again.answer.result).toMatchObject({ replaced: [], lessSafePlans: [] });
  }, 120_000);
});
