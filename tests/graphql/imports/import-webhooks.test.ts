import { Webhook } from "standardwebhooks";
import { afterAll, beforeAll, expect, it } from "vitest";
import { sendWebhook } from "../../../src/app/outgoing/send-webhook.js";
import { deliverWebhooks, type Outside } from "../../../src/services/webhooks/deliver-webhooks.js";
import { runImports } from "../../../src/services/imports/run-imports.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { openFeed, type TestFeed } from "../../services/imports/open-feed.js";
import { demo, openTestApp, type TestApp } from "../open-test-app.js";
import { WebhookReceiver } from "../webhooks/webhook-receiver.js";

const outside: Outside = { send: (message) => sendWebhook(message, { allowPrivate: true }), dice: () => 0 };
const eggPot = JSON.stringify({ "@type": "Recipe", name: "Egg pot", recipeIngredient: ["4 eggs"] });

describeOnBothDatabases("webhooks of imports", (open) => {
  let app: TestApp;
  let admin: string;
  let feed: TestFeed;
  const receiver = new WebhookReceiver();
  const secrets: Record<string, string> = {};
  const ids: Record<string, string> = {};
  const now = new Date();

  beforeAll(async () => {
    const { data } = await open();
    app = await openTestApp(data, undefined, () => now, { allowPrivateWebhooks: true });
    await data.foods.save(demo.foods);
    const url = await receiver.listen();
    const wanted = { own: ["IMPORT_ENDED"], all: [], plans: ["PLAN_PUBLISHED"], foreign: ["IMPORT_ENDED"] };
    for (const [name, kinds] of Object.entries(wanted)) {
      const publisher = name === "foreign" ? "foreign" : "own";
      await data.publishers.save({ slug: publisher, name: publisher });
      const token = await app.tokenFor(publisher, ["ADMIN"]);
      if (publisher === "own") admin = token;
      const made = await app.ask(
        `mutation ($input: CreateWebhookInput!) { createWebhook(input: $input) { webhook { id kinds } secret } }`,
        { input: { publisher, url: `${url}/${name}`, kinds } },
        token,
      );
      const { webhook, secret } = made.data?.["createWebhook"] as {
        webhook: { id: string; kinds: readonly string[] };
        secret: string;
      };
      expect(webhook.kinds).toEqual(kinds);
      secrets[name] = secret;
      ids[name] = webhook.id;
    }
    feed = await openFeed(app.deps, { publisher: "own", kind: "RECIPES", slug: "pages" });
  });
  afterAll(async () => {
    await receiver.close();
    await app.close();
  });

  /** By the hook's name, what came since the last time; judged by the library of the Standard Webhooks specification. */
  async function told(): Promise<Readonly<Record<string, unknown>>> {
    receiver.received.length = 0;
    while ((await deliverWebhooks(app.deps, outside)) > 0);
    return Object.fromEntries(
      receiver.received.map(({ path, body, headers }) => {
        const name = path.split("/").at(-1) ?? "";
        return [name, new Webhook(secrets[name] ?? "").verify(body, headers as Record<string, string>)];
      }),
    );
  }

  it("tell the feed's publisher how an import ended, and nobody else", async () => {
    const run = await feed.run(eggPot);
    expect(run).toMatchObject({ state: "DONE", read: 1, quarantined: 1 });
    const message = {
      type: "import.ended",
      timestamp: now.toISOString(),
      data: {
        ...{ run: run.id, publisher: "own", feed: "pages", kind: "LOAD", state: "DONE" },
        counts: { read: 1, created: 0, changed: 0, unchanged: 0, quarantined: 1, repeated: 0 },
        report: `/v1/publishers/own/feeds/pages/runs/${run.id}/report`,
      },
    };
    expect(await told()).toEqual({ own: message, all: message });
    const { data } = await app.ask(
      `query ($webhook: ID!) { webhookDeliveries(webhook: $webhook) { edges { node { kind run change state plan { slug } } } }
        changes(publisher: "own") { edges { node { kind } } } }`,
      { webhook: ids["own"] },
      admin,
    );
    expect(data).toEqual({
      webhookDeliveries: {
        edges: [{ node: { kind: "IMPORT_ENDED", run: run.id, change: null, state: "DELIVERED", plan: null } }],
      },
      changes: { edges: [] },
    });
  });

  it("tell of an import that failed, was cancelled, or ended dry, each once", async () => {
    const failed = await feed.run(null);
    expect(failed.state).toBe("FAILED");
    expect(await told()).toMatchObject({ own: { data: { run: failed.id, state: "FAILED" } } });

    const order = { feed: feed.id, file: null, kind: "LOAD", askedBy: "test", force: false, undoes: null } as const;
    const cancelled = await app.deps.data.importRuns.queue(order, now);
    if (cancelled === null) throw new Error("another run is going on");
    expect(await app.deps.data.importRuns.cancel(cancelled, now)).toBe(true);
    expect(await app.deps.data.importRuns.cancel(cancelled, now)).toBe(false);
    await runImports(app.deps, "worker-1");
    expect(await told()).toMatchObject({ own: { data: { run: cancelled, state: "CANCELLED" } } });

    const dry = await feed.run(eggPot, { kind: "DRY_RUN" });
    expect(await told()).toMatchObject({ own: { data: { run: dry.id, kind: "DRY_RUN", state: "DONE" } } });
    expect(await told()).toEqual({});
  });

  it("say nothing of an end that was taken back, and name an address that answers", async () => {
    const order = { feed: feed.id, file: null, kind: "LOAD", askedBy: "test", force: false, undoes: null } as const;
    const run = await app.deps.data.importRuns.queue(order, now);
    if (run === null) throw new Error("another run is going on");
    const undone = app.deps.data.transaction(async (inside) => {
      expect(await inside.importRuns.cancel(run, now)).toBe(true);
      throw new Error("changed my mind");
    });
    await expect(undone).rejects.toThrow("changed my mind");
    expect(await told()).toEqual({});
    await runImports(app.deps, "worker-1");
    const { own } = (await told()) as { own: { data: { report: string } } };
    const token = await app.tokenFor("own", ["IMPORT"]);
    const answer = await app.app.inject({ url: own.data.report, headers: { authorization: `Bearer ${token}` } });
    expect(answer.statusCode).toBe(200);
    expect(answer.json()).toMatchObject({ id: run });
  });

  it("say nothing of the operator's feeds", async () => {
    const prices = await openFeed(app.deps, {
      publisher: null,
      kind: "PRICES",
      slug: "shop",
      settings: { locale: "en" },
    });
    expect((await prices.run("food,pack,content,price\n")).state).toBe("DONE");
    expect(await told()).toEqual({});
  });
});
