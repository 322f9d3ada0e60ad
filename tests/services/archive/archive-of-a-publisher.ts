import { readFile } from "node:fs/promises";
import { demo, demoBundle, openTestApp, renamed, type TestApp } from "../../graphql/open-test-app.js";
import type { OpenTestDatabase } from "../../kit/databases.js";
import type { Caller, Scope } from "../../../src/services/access/actor.js";
import { exportPublisher } from "../../../src/services/archive/export-publisher.js";
import { importPublisher } from "../../../src/services/archive/import-publisher.js";
import { spoolFile } from "../../../src/services/archive/spool-file.js";
import { discardDraft } from "../../../src/services/drafts/discard-draft.js";
import { loadSeeds } from "../../../src/services/drafts/load-seeds.js";
import { saveDocuments } from "../../../src/services/drafts/save-documents.js";
import { publishDraft } from "../../../src/services/plans/publish-draft.js";
import { receiveImage } from "../../../src/services/images/receive-image.js";
import { sampleImages } from "../../kit/sample-images.js";
import { saveFeed } from "../../../src/services/imports/feeds/save-feed.js";
import { schedulePublication, scheduleWithdrawal } from "../../../src/services/schedule/schedule-plan.js";
import { createWebhook } from "../../../src/services/webhooks/save-webhook.js";

export const publisher = "third-gate-allotments";
export const program: Caller = { actor: { kind: "PROGRAM", name: "test" }, requestId: null };

/** An installation with the demo's foods and an empty publisher. */
export async function openEmpty(open: OpenTestDatabase, clock?: () => Date): Promise<TestApp> {
  const test = await openTestApp((await open()).data, undefined, clock);
  await test.deps.data.foods.save(demo.foods);
  await test.deps.data.publishers.save({ slug: publisher, name: "Not named yet" });
  return test;
}

const facts = {
  ...{
    region: "GB",
    currency: "XTS",
    languages: ["en-GB", "de"],
    description: "Beds, barrows and a shared kitchen — 🥕.",
  },
};

const ownFood = `kind: food
slug: gate-skirret
names: { en: skirret, de: Zuckerwurzel }
aisle: vegetables
shopped-by: mass
single-ingredient: { source: writer }
`;
const ownPacks = `kind: packs
slug: kale
packs:
  - { id: crate, name: crate, content: 1 kg, price: 4.00 XTS, seen: "2026-02-01", source: writer }
`;

const translations = `kind: translation
plan: barley-and-carrots
language: de
title: Graupen und Möhren, dreimal
meals: { salad: { title: Graupensalat mit Petersilie } }
---
kind: translation
component: sunday-barley
language: de
title: Gekochte Graupen
`;

/** An installation where everything that an archive holds is there: several revisions, withdrawals, own foods, packs, translations, discards, webhooks. */
export async function openFull(open: OpenTestDatabase): Promise<TestApp> {
  const test = await openTestApp((await open()).data);
  const { deps } = test;
  const { data } = deps;
  const fine = <T>(result: { ok: boolean; value?: T; problems?: unknown }): T => {
    if (!result.ok) throw new Error(JSON.stringify(result.problems));
    return result.value as T;
  };
  fine(await loadSeeds(deps, demo));
  const scopes = ["READ_DRAFTS", "WRITE", "PUBLISH", "ADMIN"] as const;
  const writer = writerOf(await test.tokenFor(publisher, scopes), scopes);
  await data.publishers.describe(publisher, facts);
  for (const [at, title] of ["Beans, first", "Beans, again", "Beans, at last"].entries()) {
    const note = at === 0 ? null : `Change ${String(at)}: "less" salt.`;
    await data.revisions.publish(renamed(demoBundle("bean-night"), "beans", title), day(at + 1), note);
  }
  await data.revisions.withdraw({ publisher, slug: "beans", revision: 2 }, day(5), "Wrong <oven> heat.");
  await data.revisions.publish(renamed(demoBundle("bean-night"), "gone", "Gone beans"), day(3));
  await data.revisions.withdraw({ publisher, slug: "gone", revision: 1 }, day(6), null, "NOTHING");

  const example = await readFile("examples/first-plan.yaml", "utf8");
  const texts = [
    { name: "first.yaml", text: example },
    { name: "own.yaml", text: ownFood },
    { name: "packs.yaml", text: ownPacks },
    { name: "german.yaml", text: translations },
  ];
  fine(await saveDocuments(deps, writer, { publisher, texts, expected: [] }));
  fine(await publishDraft(deps, writer, { publisher, slug: "barley-and-carrots", expectedVersion: 1 }));
  // Saved again, so that it has another version, and as JSON, with a comment's worth of odd text.
  const again = {
    kind: "food",
    slug: "gate-skirret",
    names: { en: "skirret \u2028 é" },
    aisle: "vegetables",
    "shopped-by": "mass",
  };
  fine(
    await saveDocuments(deps, writer, {
      publisher,
      texts: [{ name: "own.json", text: JSON.stringify(again) }],
      expected: [{ kind: "FOOD", slug: "gate-skirret", version: 1 }],
    }),
  );
  const gone = ownFood.replace("gate-skirret", "gone-skirret");
  fine(await saveDocuments(deps, writer, { publisher, texts: [{ name: "gone.yaml", text: gone }], expected: [] }));
  fine(await discardDraft(deps, writer, { publisher, kind: "FOOD", slug: "gone-skirret", expectedVersion: 1 }));
  await takePictures(test, writer);
  const feed = {
    ...{ publisher, slug: "weekly", cron: "30 2 * * 1", zone: "Europe/Berlin" },
    kind: "DOCUMENTS",
    settings: {
      source: "Ours",
      place: { kind: "ADDRESS", url: "https://files.example.org/a.yaml?key=s3cret" },
      publish: true,
    },
  } as const;
  fine(await saveFeed(deps, program, feed));
  const publication = { publisher, slug: "barley-and-carrots", expectedVersion: 1, ...at("2026-04-01T06:00") };
  fine(await schedulePublication(deps, writer, { ...publication, changeNote: "As in the spring number." }));
  fine(
    await scheduleWithdrawal(deps, writer, { publisher, slug: "beans", reason: "Over.", ...at("2026-05-01T20:00") }),
  );
  fine(
    await createWebhook(deps, writer, {
      publisher,
      url: "https://hooks.example.org/a",
      kinds: ["PLAN_WITHDRAWN", "PLAN_KEPT_BACK"],
    }),
  );
  return test;
}

/** One with two names, of which the publisher shows one; one that was removed. */
async function takePictures({ deps }: TestApp, writer: Caller): Promise<void> {
  const { JPEG, PNG } = await sampleImages(400, 300);
  await deps.data.publishers.describe(publisher, {
    ...facts,
    image: { file: "beds.jpg", alt: "Our beds", credit: null, licence: null },
  });
  for (const file of ["beds.jpg", "photos/beds in März.jpg"])
    await receiveImage(deps, writer, { publisher, file, bytes: once(JPEG!) });
  const removed = await receiveImage(deps, writer, { publisher, file: "oops.png", bytes: once(PNG!) });
  if (removed.ok) await deps.data.images.remove(publisher, removed.value.image.hash, day(7));
}

/** A token of the publisher: foods that it saves are its own. */
const writerOf = (token: string, scopes: readonly Scope[]): Caller => ({
  actor: { kind: "TOKEN", token: token.slice("prepwright_".length).slice(0, 8), publisher, scopes },
  requestId: null,
});

const at = (time: string) => ({ at: time, zone: "Europe/Berlin" });

const day = (number: number): Date => new Date(`2026-02-0${String(number)}T10:00:00.123Z`);

export async function exported(test: TestApp, caller: Caller = program): Promise<Buffer> {
  const made = await exportPublisher(test.deps, caller, publisher);
  if (!made.ok) throw new Error(JSON.stringify(made.problems));
  const pieces: Uint8Array[] = [];
  for await (const piece of made.value.bytes) pieces.push(piece);
  return Buffer.concat(pieces);
}

export const imported = (test: TestApp, zip: Uint8Array, dryRun = false, caller: Caller = program) =>
  spoolFile(once(zip), zip.length, (path) =>
    importPublisher(test.deps, caller, { publisher, path, bytes: zip.length, dryRun }),
  );

export async function* once(bytes: Uint8Array): AsyncGenerator<Uint8Array> {
  yield bytes;
  await Promise.resolve();
}
