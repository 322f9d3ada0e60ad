import { Webhook } from "standardwebhooks";
import { afterAll, beforeAll, expect, it } from "vitest";
import { sendWebhook } from "../../../src/app/outgoing/send-webhook.js";
import type { MorningReport } from "../../../src/domain/model/morning-report.js";
import { MorningNotTold, reportImports } from "../../../src/services/imports/reports/report-imports.js";
import { morningMessage } from "../../../src/services/imports/reports/morning-message.js";
import { newWebhookSecret } from "../../../src/services/webhooks/webhook-message.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { openFeed } from "../../services/imports/open-feed.js";
import { demo, openTestApp, type TestApp } from "../open-test-app.js";
import { WebhookReceiver } from "../webhooks/webhook-receiver.js";

const query = `query ($hours: Int! = 24) { morningReport(hours: $hours) {
  from to moreImports markdown imports { superseded toMend run { id state feed { slug } counts { read quarantined } } } } }`;

interface Shown {
  readonly from: string;
  readonly to: string;
  readonly markdown: string;
  readonly imports: readonly {
    readonly superseded: readonly string[];
    readonly toMend: number;
    readonly run: { readonly id: string; readonly feed: { readonly slug: string } };
  }[];
}

describeOnBothDatabases("the report of the morning", (open) => {
  let app: TestApp;
  let operator: string;
  let own: string;
  let other: string;
  let prices: string;
  let now = new Date("2026-03-01T06:00:00Z");
  const receiver = new WebhookReceiver();

  beforeAll(async () => {
    const { data } = await open();
    app = await openTestApp(data, undefined, () => now);
    await data.foods.save(demo.foods);
    for (const slug of ["own", "other"]) await data.publishers.save({ slug, name: slug });
    operator = await app.tokenFor(null, ["IMPORT"]);
    own = await app.tokenFor("own", ["IMPORT"]);
    other = await app.tokenFor("other", ["IMPORT"]);
    const shop = await openFeed(app.deps, {
      publisher: null,
      kind: "PRICES",
      slug: "shop",
      settings: { currency: "XTS", locale: "en" },
    });
    ({ id: prices } = await shop.run("food,pack,content,price\negg,morning,6 piece,1\nmoon,x,1 kg,1\n"));
    const foods = await openFeed(app.deps, {
      publisher: null,
      kind: "FOODS",
      slug: "foods",
      settings: { source: "Our own table", locale: "en" },
    });
    await foods.run("slug,name,protein-g\ncarrot,Carrot,1\n");
    const pages = await openFeed(app.deps, { publisher: "own", kind: "RECIPES", slug: "pages" });
    await pages.run(JSON.stringify({ "@type": "Recipe", name: "Egg pot", recipeIngredient: ["4 eggs"] }));
  });
  afterAll(async () => {
    await receiver.close();
    await app.close();
  });

  async function shown(token: string, hours = 24): Promise<Shown> {
    const answer = await app.ask(query, { hours }, token);
    expect(answer.errors).toEqual([]);
    return answer.data?.["morningReport"] as Shown;
  }
  const slugs = ({ imports }: Shown) => imports.map(({ run }) => run.feed.slug);

  it("shows the operator every import, and a publisher its own", async () => {
    const all = await shown(operator);
    expect(slugs(all).toSorted()).toEqual(["foods", "pages", "shop"]);
    expect(all).toMatchObject({ from: "2026-02-28T06:00:00.000Z", to: "2026-03-01T06:00:00.000Z" });
    expect(slugs(await shown(own))).toEqual(["pages"]);
    expect(slugs(await shown(other))).toEqual([]);
    expect((await shown(other)).markdown).toContain("There were none.");
  });

  it("names whose word was replaced, and puts first what needs somebody", async () => {
    const { imports, markdown } = await shown(operator);
    const of = (slug: string) => imports.find(({ run }) => run.feed.slug === slug);
    const before = demo.foods.find(({ slug }) => slug === "carrot")?.nutrients?.source.title ?? "";
    expect(before).not.toBe("");
    expect(of("foods")).toMatchObject({ superseded: [before], toMend: 0 });
    expect(of("shop")).toMatchObject({ superseded: [], toMend: 1 });
    expect(markdown.indexOf("## To look after")).toBeLessThan(markdown.indexOf("Import: shop"));
    expect(markdown.indexOf("Import: shop")).toBeLessThan(markdown.indexOf("## Done"));
    expect(markdown.indexOf("## Done")).toBeLessThan(markdown.indexOf("Import: foods"));
  });

  it("looks back as far as it is told, and refuses hours that are none", async () => {
    now = new Date("2026-03-02T06:00:01Z");
    expect(slugs(await shown(operator))).toEqual([]);
    expect(slugs(await shown(operator, 48))).toHaveLength(3);
    for (const hours of [0, -1, 745]) {
      const refused = await app.ask(query, { hours }, operator);
      expect(refused.errors.map(({ extensions }) => extensions?.["code"])).toEqual(["BAD_SHAPE"]);
    }
    now = new Date("2026-03-01T06:00:00Z");
  });

  it("no longer counts a row that somebody settled", async () => {
    const settle = `mutation { settleRow(input: { run: "${prices}", line: 3 }) { problems { message } } }`;
    expect((await app.ask(settle, {}, operator)).errors).toEqual([]);
    const { imports } = await shown(operator);
    expect(imports.find(({ run }) => run.feed.slug === "shop")?.toMend).toBe(0);
  });

  it("goes to the operator's address, signed, under the same id however often it is sent", async () => {
    const url = await receiver.listen();
    const secret = newWebhookSecret();
    const send = (message: Parameters<typeof sendWebhook>[0]) => sendWebhook(message, { allowPrivate: true });
    const deps = { ...app.deps, clock: () => new Date(), operator: { url, secret, send } };
    receiver.answer = { status: 503 };
    await expect(reportImports(deps)).rejects.toThrow(MorningNotTold);
    receiver.answer = { status: 204 };
    expect(await reportImports(deps)).toMatchObject({ told: true });
    const ids = receiver.received.map(({ headers }) => headers["webhook-id"]);
    expect([ids.length, new Set(ids).size]).toEqual([2, 1]);
    for (const { body, headers } of receiver.received) {
      // Judged by the library of the Standard Webhooks specification.
      const told = new Webhook(secret).verify(body, headers as Record<string, string>);
      expect(told).toMatchObject({ type: "imports.reported", data: { report: "/v1/imports/report" } });
    }
  });
});

it("a long night fits into one message of the Standard Webhooks specification, what needs somebody first", () => {
  const counts = { read: 1e6, created: 1e5, changed: 1e5, unchanged: 7e5, quarantined: 1e5, repeated: 0 };
  const imports: MorningReport["imports"] = Array.from({ length: 200 }, (_, at) => ({
    ...{
      feed: `a-feed-with-a-long-name-${at}`,
      publisher: `a-publisher-with-a-long-name-${at}`,
      kind: "LOAD" as const,
    },
    ...{ run: `11111111-1111-4111-8111-${String(at).padStart(12, "0")}`, endedAt: null, counts, problems: [] },
    ...{ state: "DONE" as const, superseded: [], toMend: at === 150 ? 3 : 0 },
  }));
  const at = new Date("2026-03-01T06:00:00Z");
  const operator = {
    url: "https://ops.example/",
    secret: newWebhookSecret(),
    send: () => Promise.reject(new Error("unused")),
  };
  const { body, headers } = morningMessage(operator, { from: at, to: at, imports, moreImports: false });
  // "20 kb", Standard Webhooks, payload size.
  expect(Buffer.byteLength(body)).toBeLessThan(20_000);
  expect(headers["webhook-id"]).toBe("imports-2026-03-01");
  const { data } = JSON.parse(body) as {
    data: { imports: { toMend: number }[]; moreImports: boolean; toLookAfter: number };
  };
  expect([data.imports[0]?.toMend, data.moreImports, data.toLookAfter]).toEqual([3, true, 1]);
});
