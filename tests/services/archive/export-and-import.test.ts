import { execFileSync } from "node:child_process";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createHash } from "node:crypto";
import { afterAll, beforeAll, expect, it } from "vitest";
import type { TestApp } from "../../graphql/open-test-app.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { runScheduled } from "../../../src/services/schedule/run-scheduled.js";
import { verifyRevisions } from "../../../src/services/plans/verify-revisions.js";
import { json, parsed, relisted, unpacked, zipOf } from "./archive-files.js";
import { exported, imported, openEmpty, openFull, program, publisher } from "./archive-of-a-publisher.js";

describeOnBothDatabases("an archive of a publisher", (open) => {
  let here: TestApp;
  let there: TestApp;
  let zip: Buffer;

  beforeAll(async () => {
    here = await openFull(open);
    there = await openEmpty(open);
    zip = await exported(here);
  });
  afterAll(() => Promise.all([here.close(), there.close()]));

  it("is the same file each time, and one that other programs open", async () => {
    expect(await exported(here)).toEqual(zip);
    // Info-ZIP as Python's standard library reads it: an implementation of the format outside this project.
    const folder = await mkdtemp(join(tmpdir(), "archive-test-"));
    try {
      const path = join(folder, "a.zip");
      await writeFile(path, zip);
      const script = `import zipfile,hashlib,json,sys
z=zipfile.ZipFile(sys.argv[1]); assert z.testzip() is None
m=json.loads(z.read("manifest.json"))
assert sorted(z.namelist())==sorted([f["name"] for f in m["files"]]+["manifest.json"])
for f in m["files"]:
    b=z.read(f["name"]); assert len(b)==f["bytes"] and hashlib.sha256(b).hexdigest()==f["sha256"], f["name"]
print(json.dumps({f["name"]:f["sha256"] for f in m["files"]}))`;
      const names = JSON.parse(execFileSync("python3", ["-c", script, path], { encoding: "utf8" }));
      expect(Object.keys(names)).toEqual(
        expect.arrayContaining([
          "publisher.json",
          "discarded.json",
          "webhooks.json",
          "drafts/plan/barley-and-carrots.yaml",
          "drafts/component/sunday-barley.draft.json",
          "drafts/food/gate-skirret.json",
          "drafts/packs/kale.yaml",
          "drafts/translation/de-plan-barley-and-carrots.yaml",
          "drafts/translation/de-component-sunday-barley.draft.json",
          "plans/beans/3.json",
          "plans/beans/3.revision.json",
        ]),
      );
      const [third] = await here.deps.data.revisions.summaries([{ publisher, slug: "beans", revision: 3 }]);
      expect(names["plans/beans/3.json"]).toBe(third?.checksum);
      const inside = [...(await unpacked(zip))].map(([name, bytes]) => `${name}\n${bytes.toString("latin1")}`);
      const filesWith = (text: string) => inside.flatMap((file) => (file.includes(text) ? file.split("\n")[0] : []));
      expect(filesWith("hooks.example.org")).toEqual(["webhooks.json"]);
      for (const secret of ["whsec_", "s3cret", "prepwright_"])
        expect([secret, filesWith(secret)]).toEqual([secret, []]);
    } finally {
      await rm(folder, { recursive: true });
    }
  });

  it("is tried without keeping anything, then comes in whole, and the export of the import is the same file", async () => {
    const tried = await imported(there, zip, true);
    expect(tried).toMatchObject({
      ok: true,
      value: {
        revisions: 9,
        drafts: 7,
        images: 1,
        webhooks: 1,
        feeds: 1,
        scheduled: 2,
        scheduledPassed: [],
        ruleSetsMissing: [],
      },
    });
    expect(await there.deps.data.archives.isEmpty(publisher)).toBe(true);
    expect(await imported(there, zip)).toEqual(tried);
    expect(
      createHash("sha256")
        .update(await exported(there))
        .digest("hex"),
    ).toBe(createHash("sha256").update(zip).digest("hex"));
    expect((await verifyRevisions(there.deps)).mismatched).toEqual([]);
  });

  it("answers readers as before: the newest in force, withdrawn ones by number, the same plan, the list of changes", async () => {
    const query = `query { plan(publisher: "${publisher}", slug: "beans") { title revision publishedAt changeNote
      revisions { edges { node { revision publishedAt withdrawnAt withdrawnBecause changeNote } } }
      checkedAgainst { code } scaled(servings: 7) { shoppingList { lines { food { slug } toBuy { text } } } } }
      gone: plan(publisher: "${publisher}", slug: "gone", revision: 1) { withdrawnAt withdrawnBecause newest { revision } }
      german: plan(publisher: "${publisher}", slug: "barley-and-carrots") { languages
        scaled(servings: 2, household: { locale: "de" }) { title meals { meal { title } } } }
      plans(filter: { publisher: "${publisher}", search: "beans" }) { edges { node { slug } } } }`;
    const [before, after] = await Promise.all([here.ask(query), there.ask(query)]);
    expect(after.errors).toEqual([]);
    expect(after.data).toEqual(before.data);
    expect(after.data?.["german"]).toMatchObject({ scaled: { title: "Graupen und Möhren, dreimal" } });
    const changes = `query { changes(publisher: "${publisher}", first: 100) { edges { node { kind at plan { slug revision } } } } }`;
    const kinds = (await there.ask(changes)).data as { changes: { edges: { node: { kind: string; at: string } }[] } };
    const all = kinds.changes.edges.map(({ node }) => node);
    expect(all.filter(({ kind }) => kind === "PLAN_WITHDRAWN")).toHaveLength(2);
    expect(all.map(({ at }) => at)).toEqual(all.map(({ at }) => at).toSorted());
  });

  it("leaves drafts as they were, which can be saved and published on", async () => {
    const query = `query { planDraft(publisher: "${publisher}", slug: "barley-and-carrots") { version updatedAt document { text hash } } 
      foodDraft(publisher: "${publisher}", slug: "gate-skirret") { version document { text } }
      translationDraft(publisher: "${publisher}", slug: "de-component-sunday-barley") { version document { text } } }`;
    const [a, b] = [await here.tokenFor(publisher, ["READ_DRAFTS"]), await there.tokenFor(publisher, ["READ_DRAFTS"])];
    const [before, after] = [await here.ask(query, {}, a), await there.ask(query, {}, b)];
    expect(after).toMatchObject({ errors: [], data: { foodDraft: { version: 2 } } });
    expect(after.data).toEqual(before.data);
    // A draft of a discarded name counts on from where it was.
    expect(await there.deps.data.archives.discarded(publisher)).toEqual([
      { kind: "FOOD", slug: "gone-skirret", version: 1 },
    ]);
  });

  it("brings pictures with their names, sizes and removals", async () => {
    const names = ["beds.jpg", "photos/beds in März.jpg", "oops.png"];
    const [before, after] = await Promise.all(
      [here, there].map(({ deps }) => deps.data.images.byNames(publisher, names)),
    );
    expect(after?.map((image) => image?.hash)).toEqual(before?.map((image) => image?.hash));
    expect(after?.map((image) => image === null)).toEqual([false, false, true]);
    expect(await there.deps.data.images.removed(publisher)).toEqual(await here.deps.data.images.removed(publisher));
    const [shown] = await there.deps.data.publishers.bySlugs([publisher]);
    expect(shown?.image).toMatchObject({ file: "beds.jpg", stored: { hash: after?.[0]?.hash } });
    const path = `/images/${publisher}/${after?.[0]?.hash ?? ""}/320.avif`;
    const [first, second] = await Promise.all([here, there].map(({ app }) => app.inject({ method: "GET", url: path })));
    expect([second?.statusCode, second?.headers["content-type"]]).toEqual([200, "image/avif"]);
    expect(second?.rawPayload).toEqual(first?.rawPayload);
  });

  it("brings feeds, disabled and without the key of their address, and what waits for its time", async () => {
    const [feed, ...others] = await there.deps.data.feeds.all(publisher);
    expect([feed, others]).toMatchObject([
      { slug: "weekly", kind: "DOCUMENTS", cron: "30 2 * * 1", zone: "Europe/Berlin", enabled: false },
      [],
    ]);
    expect(feed?.settings).toMatchObject({ publish: true, place: { url: "https://files.example.org/a.yaml" } });
    const waiting = async ({ deps }: TestApp, slug: string) =>
      (await deps.data.scheduled.waiting(publisher, slug)).map(
        ({ id: _id, inForce: _inForce, createdBy: _createdBy, ...change }) => change,
      );
    for (const slug of ["beans", "barley-and-carrots"]) {
      expect(await waiting(there, slug)).toHaveLength(1);
      expect(await waiting(there, slug)).toEqual(await waiting(here, slug));
    }
    // What is to be published follows the revision that was in force here.
    const later = { ...there.deps, clock: () => new Date("2026-04-01T05:00:00Z") };
    expect(await runScheduled(later)).toMatchObject({ keptBack: 0, withdrawn: 0 });
    expect(await there.deps.data.scheduled.waiting(publisher, "barley-and-carrots")).toEqual([]);
  });

  it("tells of what was to be done by now, and does not do it", async () => {
    const late = await openEmpty(open, () => new Date("2026-04-02T00:00:00Z"));
    try {
      expect(await imported(late, zip)).toMatchObject({
        ok: true,
        value: {
          scheduled: 1,
          scheduledPassed: [{ slug: "barley-and-carrots", kind: "PUBLISH", localTime: "2026-04-01T06:00" }],
        },
      });
      expect(await late.deps.data.scheduled.due(new Date("2026-04-02T00:00:00Z"), 9)).toEqual([]);
    } finally {
      await late.close();
    }
  });

  it("of the first version of the format, without feeds and schedules, is taken as before", async () => {
    const files = await unpacked(zip);
    const older = [...files].filter(([name]) => !/^(?:feeds|scheduled)/.test(name));
    const manifest = json({ ...parsed(files, "manifest.json"), version: 1 });
    const old = await zipOf(relisted(new Map([...older, ["manifest.json", manifest]])));
    const other = await openEmpty(open);
    try {
      expect(await imported(other, old)).toMatchObject({ ok: true, value: { revisions: 9, feeds: 0, scheduled: 0 } });
    } finally {
      await other.close();
    }
  });

  it("disables webhooks, whose secrets are new, and tells none of them what is long past", async () => {
    const page = await there.deps.data.webhooks.page(publisher, { first: 9, after: null, last: null, before: null });
    expect(page.items.map(({ item }) => item)).toMatchObject([
      {
        url: "https://hooks.example.org/a",
        kinds: expect.arrayContaining(["PLAN_WITHDRAWN", "PLAN_KEPT_BACK"]),
        disabledBecause: "ASKED",
      },
    ]);
  });

  it("is written down by whom it was exported and imported", async () => {
    const trail = await there.deps.data.auditTrail.page(publisher, { first: 9, after: null, last: null, before: null });
    const done = trail.items.map(({ item: { action, subject } }) => [action, subject]);
    expect(done).toContainEqual(["IMPORT_PUBLISHER", publisher]);
    expect(done).toContainEqual(["EXPORT_PUBLISHER", publisher]);
  });

  it("is not imported where something is already, nor under another name", async () => {
    expect(await imported(there, zip)).toMatchObject({ ok: false, problems: [{ code: "PUBLISHER_NOT_EMPTY" }] });
  });

  it("is exported with READ_DRAFTS, with webhooks only where ADMIN may read them, and imported by the operator alone", async () => {
    const of = (owner: string | null, ...scopes: ("READ_DRAFTS" | "ADMIN" | "WRITE" | "PUBLISH")[]) => ({
      ...program,
      actor: { kind: "TOKEN" as const, token: "abcd1234", publisher: owner, scopes },
    });
    for (const caller of [of("other", "READ_DRAFTS"), of(publisher, "ADMIN", "WRITE", "PUBLISH")])
      await expect(exported(here, caller)).rejects.toMatchObject({ name: "NotAllowed" });
    for (const caller of [of(publisher, "ADMIN", "WRITE", "PUBLISH"), of(null, "WRITE")])
      await expect(imported(there, zip, false, caller)).rejects.toMatchObject({ name: "NotAllowed" });
  });
});
