import request from "supertest";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Scope } from "../../../src/services/access/actor.js";
import { feedSettingsSchema } from "../../../src/services/imports/feeds/feed-settings.js";
import { importPublishesUntil } from "../../../src/services/access/publish-right.js";
import { runImports } from "../../../src/services/imports/run-imports.js";
import { startDueImports } from "../../../src/services/imports/feeds/start-due-imports.js";
import { describeOnBothDatabases, type TestDatabase } from "../../kit/databases.js";
import { openFeed } from "../../services/imports/open-feed.js";
import { demo, openTestApp, type TestApp } from "../open-test-app.js";

const publisher = "own";
const plan = (slug: string, grams = 300): string => `kind: plan
publisher: ${publisher}
slug: ${slug}
title: Carrots raw
locale: en-GB
measured-in: metric
serves: 4
meals:
  - slug: carrots
    title: Carrots
    day: 0
    lines:
      - { food: carrot, amount: ${grams} g }
    steps:
      - { do: Grate the carrots., time: 5 min, uses: [carrot] }
`;

/** What acts on a feed. Each is asked of a feed that has loaded `run` and put line `line` of it aside. */
const acts = ["upload", "trial upload", "start", "replay", "settle", "pass over", "undo"] as const;
type Act = (typeof acts)[number];

describeOnBothDatabases("feeds that publish", (open) => {
  let database: TestDatabase;
  let app: TestApp;
  let now = new Date("2026-12-01T04:00:00Z");
  const tokens = new Map<string, string>();
  const runs = new Map<string, string>();
  const lines = new Map<string, number>();
  const rights: Readonly<Record<string, readonly Scope[]>> = {
    "IMPORT alone": ["IMPORT"],
    "IMPORT and PUBLISH": ["IMPORT", "PUBLISH"],
    "PUBLISH alone": ["PUBLISH"],
    "IMPORT and all but PUBLISH": ["IMPORT", "WRITE", "READ_DRAFTS", "ADMIN"],
    "IMPORT of old": ["IMPORT"],
  };

  beforeAll(async () => {
    database = await open();
    app = await openTestApp(database.data, undefined, () => now);
    await database.data.foods.save(demo.foods);
    for (const slug of [publisher, "other"]) await database.data.publishers.save({ slug, name: slug });
    for (const [name, scopes] of Object.entries(rights)) {
      tokens.set(name, await app.tokenFor(publisher, scopes));
      tokens.set(`operator's ${name}`, await app.tokenFor(null, scopes));
    }
    for (const name of ["IMPORT of old", "operator's IMPORT of old"]) {
      await database.sql.query("UPDATE access_tokens SET import_publishes = true WHERE id = $1", [idOf(name)]);
    }
    // Kept feeds do not publish; of old are those that the migration found there.
    for (const [slug, publish] of [
      ["new", true],
      ["old", true],
      ["kept", false],
      ["stopped", true],
    ] as const) {
      const feed = await openFeed(app.deps, { publisher, kind: "DOCUMENTS", slug, settings: { publish } });
      const run = await feed.run(`${plan(`first-${slug}`)}---\nkind: plan\nslug: [not closed\n`);
      expect([run.state, run.created, run.quarantined]).toEqual(["DONE", 1, 1]);
      runs.set(slug, run.id);
      lines.set(slug, (await feed.quarantined(run))[0]?.line ?? 0);
    }
    // It stopped publishing since, but the undo of that run would withdraw.
    await openFeed(app.deps, { publisher, kind: "DOCUMENTS", slug: "stopped", settings: { publish: false } });
    await database.sql.query("UPDATE feeds SET import_publishes = true WHERE slug = 'old'", []);
  });
  afterAll(() => app.close());

  const idOf = (name: string): string => String(tokens.get(name)).slice(11, 19);
  const inForce = async (): Promise<readonly unknown[]> =>
    (await database.sql.query("SELECT count(*)::int AS n, count(withdrawn_at)::int AS w FROM revisions", [])).rows;

  /** OK, or the code it was refused with. Whatever was queued is cancelled, so that the next finds the feed at rest. */
  async function act(what: Act, slug: string, name: string): Promise<string> {
    const token = String(tokens.get(name));
    const run = String(runs.get(slug));
    const settle = (text: string) =>
      `mutation { a: settleRow(input: { run: "${run}", line: ${lines.get(slug)} ${text} }) { problems { code } } }`;
    const texts: Readonly<Record<Exclude<Act, "upload" | "trial upload">, string>> = {
      start: `mutation { a: startImport(input: { publisher: "${publisher}", slug: "${slug}" }) { problems { code } } }`,
      replay: `mutation { a: replayImport(input: { run: "${run}" }) { problems { code } } }`,
      undo: `mutation { a: undoImport(input: { run: "${run}" }) { problems { code } } }`,
      settle: settle(`, text: ${JSON.stringify(plan("mended"))}`),
      "pass over": settle(""),
    };
    const code = await (async () => {
      if (what === "upload" || what === "trial upload") {
        const answer = await request(app.app.server)
          .post(`/v1/publishers/${publisher}/feeds/${slug}/files?name=f${what === "upload" ? "" : "&dryRun=yes"}`)
          .set({ authorization: `Bearer ${token}`, "content-type": "application/yaml" })
          .send(plan("uploaded"));
        return answer.status === 202 ? "OK" : answer.status === 403 ? "FORBIDDEN" : answer.text;
      }
      const { data, errors } = await app.ask(texts[what], {}, token);
      const problems = (data?.["a"] as { problems: { code: string }[] } | null | undefined)?.problems ?? [];
      return String(errors[0]?.extensions["code"] ?? problems[0]?.code ?? "OK");
    })();
    await database.sql.query("UPDATE import_runs SET state = 'CANCELLED', ended_at = now() WHERE state = 'QUEUED'", []);
    await database.sql.query("UPDATE quarantined_rows SET settled_at = NULL, settled_by = NULL", []);
    return code;
  }

  describe.each(["", "operator's "])("asked with %sa token of", (whose) => {
    it.each(acts)("%s: ask for PUBLISH beside IMPORT", async (what) => {
      const before = await inForce();
      expect({
        "IMPORT alone": await act(what, "new", `${whose}IMPORT alone`),
        "IMPORT and PUBLISH": await act(what, "new", `${whose}IMPORT and PUBLISH`),
        "PUBLISH alone": await act(what, "new", `${whose}PUBLISH alone`),
        "all but PUBLISH": await act(what, "new", `${whose}IMPORT and all but PUBLISH`),
      }).toEqual({
        "IMPORT alone": "FORBIDDEN",
        "IMPORT and PUBLISH": "OK",
        // Which feeds and imports there are is not told to who may not ask.
        "PUBLISH alone": expect.stringMatching(/^(FORBIDDEN|UNKNOWN_RUN)$/),
        "all but PUBLISH": "FORBIDDEN",
      });
      expect(await act(what, "kept", `${whose}IMPORT alone`)).toBe("OK");
      expect(await inForce()).toEqual(before);
    });
  });

  it("ask for PUBLISH to take back what was published before they stopped, and for nothing else", async () => {
    expect(await act("undo", "stopped", "IMPORT alone")).toBe("FORBIDDEN");
    expect(await act("undo", "stopped", "IMPORT and PUBLISH")).toBe("OK");
    expect(await act("start", "stopped", "IMPORT alone")).toBe("OK");
  });

  it("are taken by tokens of before 0.2.0 where they are from before it, until the day that is printed", async () => {
    for (const what of acts) {
      expect([what, await act(what, "old", "IMPORT of old")]).toEqual([what, "OK"]);
      expect([what, await act(what, "new", "IMPORT of old")]).toEqual([what, "FORBIDDEN"]);
      expect([what, await act(what, "old", "IMPORT alone")]).toEqual([what, "FORBIDDEN"]);
    }
    const before = now;
    now = new Date(importPublishesUntil.getTime() - 1);
    expect(await act("start", "old", "IMPORT of old")).toBe("OK");
    now = importPublishesUntil;
    expect(await act("start", "old", "IMPORT of old")).toBe("FORBIDDEN");
    now = before;
  });

  it("are named with such tokens in each morning report until that day, a publisher's to itself and all to the operator", async () => {
    const query = `{ morningReport { markdown importOnlyTokens { token name publisher feeds until } } }`;
    const told = async (token: string) =>
      (await app.ask(query, {}, token)).data?.["morningReport"] as {
        markdown: string;
        importOnlyTokens: { token: string; feeds: string[]; until: string }[];
      };
    const own = await told(String(tokens.get("IMPORT alone")));
    expect(own.importOnlyTokens).toEqual([
      {
        token: idOf("IMPORT of old"),
        name: "own IMPORT",
        publisher,
        feeds: ["own/old"],
        until: "2027-06-01T00:00:00.000Z",
      },
    ]);
    expect(own.markdown).toContain(idOf("IMPORT of old"));
    expect(own.markdown).toContain("2027-06-01");
    const all = await told(String(tokens.get("operator's IMPORT alone")));
    expect(all.importOnlyTokens.map(({ token }) => token).toSorted()).toEqual(
      ["IMPORT of old", "operator's IMPORT of old"].map(idOf).toSorted(),
    );
    const other = await told(await app.tokenFor("other", ["IMPORT"]));
    expect(other.importOnlyTokens).toEqual([]);
    const before = now;
    now = importPublishesUntil;
    expect((await told(String(tokens.get("IMPORT alone")))).importOnlyTokens).toEqual([]);
    now = before;
  });

  it("are of old no more once somebody saves them", async () => {
    const save = `mutation ($input: SaveFeedInput!) { saveFeed(input: $input) { problems { code } } }`;
    const input = { publisher, slug: "old", kind: "DOCUMENTS", settings: { source: "Ours", publish: true } };
    expect((await app.ask(save, { input }, String(tokens.get("IMPORT of old")))).errors[0]?.extensions["code"]).toBe(
      "FORBIDDEN",
    );
    expect((await app.ask(save, { input }, String(tokens.get("IMPORT and PUBLISH")))).errors).toEqual([]);
    expect(await act("start", "old", "IMPORT of old")).toBe("FORBIDDEN");
  });

  it("publish nothing that a token with IMPORT alone asked for before they began to", async () => {
    await openFeed(app.deps, { publisher, kind: "DOCUMENTS", slug: "late", settings: { publish: false } });
    const answer = await request(app.app.server)
      .post(`/v1/publishers/${publisher}/feeds/late/files?name=f`)
      .set({ authorization: `Bearer ${String(tokens.get("IMPORT alone"))}`, "content-type": "application/yaml" })
      .send(plan("late"));
    expect(answer.status).toBe(202);
    await openFeed(app.deps, { publisher, kind: "DOCUMENTS", slug: "late", settings: { publish: true } });
    const before = await inForce();
    await runImports(app.deps, "worker-1");
    expect(await inForce()).toEqual(before);
    expect(await database.data.drafts.versions([{ kind: "PLAN", publisher, slug: "late" }])).toEqual([1]);
  });

  describe("by their schedule", () => {
    let night = 0;
    /** Hands a file in while the feed publishes or does not, and lets its schedule import it once the feed publishes; the revisions then. */
    async function scheduled(name: string, again: string | null, { ofOld = false, forgotten = false } = {}) {
      night += 1;
      const slug = `nightly-${night}`;
      const settings = { source: "Ours", limits: { changed: 1, quarantined: 1 }, place: { kind: "UPLOAD" } };
      const save = (publish: boolean, cron: string | null) =>
        database.data.feeds.save({
          ...{ publisher, slug, kind: "DOCUMENTS", settings: feedSettingsSchema.parse({ ...settings, publish }) },
          ...{ cron, zone: "UTC", enabled: true },
        });
      const feed = await save(false, null);
      for (const each of [name, ...(again === null ? [] : [again])]) {
        const { status } = await request(app.app.server)
          .post(`/v1/publishers/${publisher}/feeds/${slug}/files?name=f&dryRun=yes`)
          .set({ authorization: `Bearer ${String(tokens.get(each))}`, "content-type": "application/yaml" })
          .send(plan(slug));
        expect(status).toBe(202);
        await runImports(app.deps, "worker-1");
      }
      await save(true, "30 2 * * *");
      if (ofOld) await database.sql.query("UPDATE feeds SET import_publishes = true WHERE id = $1", [feed]);
      if (forgotten) await database.sql.query("UPDATE import_files SET handed_in_by = NULL WHERE feed_id = $1", [feed]);
      const before = now;
      now = new Date(Math.max(now.getTime(), Date.UTC(2026, 11, 2 + night)));
      now.setUTCHours(26, 30);
      expect(await startDueImports(app.deps)).toEqual({ started: 1 });
      await runImports(app.deps, "worker-1");
      await database.data.feeds.remove(feed);
      now = before;
      expect(await database.data.drafts.versions([{ kind: "PLAN", publisher, slug }])).toEqual([1]);
      const [published] = await database.data.revisions.summaries([{ publisher, slug, revision: null }]);
      return published?.revision ?? null;
    }

    it.each(["", "operator's "])("publish what %sa token that may publish handed in, and no other", async (whose) => {
      expect(await scheduled(`${whose}IMPORT alone`, null)).toBe(null);
      expect(await scheduled(`${whose}IMPORT and all but PUBLISH`, null)).toBe(null);
      expect(await scheduled(`${whose}IMPORT and PUBLISH`, null)).toBe(1);
    });

    it("publish what two handed in if one of them may publish, whoever came first", async () => {
      expect(await scheduled("IMPORT alone", "IMPORT and PUBLISH")).toBe(1);
      expect(await scheduled("IMPORT and PUBLISH", "IMPORT alone")).toBe(1);
      expect(await scheduled("IMPORT alone", "operator's IMPORT alone")).toBe(null);
    });

    it("publish what is from before 0.2.0 through feeds from before it, until the day that is printed", async () => {
      expect(await scheduled("IMPORT of old", null)).toBe(null);
      expect(await scheduled("IMPORT of old", null, { ofOld: true })).toBe(1);
      expect(await scheduled("IMPORT alone", null, { ofOld: true })).toBe(null);
      // Nobody wrote down who handed it in.
      expect(await scheduled("IMPORT alone", null, { forgotten: true })).toBe(null);
      expect(await scheduled("IMPORT alone", null, { forgotten: true, ofOld: true })).toBe(1);
      const before = now;
      now = importPublishesUntil;
      expect(await scheduled("IMPORT of old", null, { ofOld: true })).toBe(null);
      expect(await scheduled("IMPORT alone", null, { forgotten: true, ofOld: true })).toBe(null);
      now = before;
    });
  });

  it("publish what a token with both sends", async () => {
    const answer = await request(app.app.server)
      .post(`/v1/publishers/${publisher}/feeds/new/files?name=f`)
      .set({ authorization: `Bearer ${String(tokens.get("IMPORT and PUBLISH"))}`, "content-type": "application/yaml" })
      .send(plan("sent"));
    expect(answer.status).toBe(202);
    await runImports(app.deps, "worker-1");
    const [sent] = await database.data.revisions.summaries([{ publisher, slug: "sent", revision: null }]);
    expect(sent?.revision).toBe(1);
  });
});
