import { ok, type Result } from "../../domain/problem.js";
import { publisherDocumentOf } from "../../imports/documents/plain-document.js";
import { canonicalJson, canonicalJsonInSlices } from "../../persistence/sql/canonical-json.js";
import { mayUse, requireScope, type Caller } from "../access/actor.js";
import { namedPublisher } from "../access/find-publishers.js";
import type { Deps, DraftKind, DraftSummary, Publisher } from "../deps.js";
import {
  componentDocument,
  foodDocument,
  packsDocument,
  planDocument,
  translationDocument,
} from "../drafts/draft-document.js";
import { feedSettingsSchema } from "../imports/feeds/feed-settings.js";
import { asJob, runInSlices, type Sliced } from "../time-slices.js";
import { write } from "../write.js";
import { sha256, type ArchiveEntry } from "./archive-entry.js";
import { archiveVersion, fileNames } from "./archive-format.js";
import { packZip } from "./pack-zip.js";

const pageSize = 50;

/** What the token may not read. */
type LeftOut = "webhooks" | "feeds";

interface Export {
  /** Drafts and revisions in it. */
  readonly documents: number;
  readonly bytes: AsyncIterable<Uint8Array>;
}

/**
 * Everything of a publisher as a zip file, as it is read: its document, its drafts, every revision, what is scheduled, discarded versions,
 * and feeds and webhooks without secrets. Each document is as it was when it was read; revisions never change. @throws NotAllowed
 */
export async function exportPublisher(deps: Deps, caller: Caller, slug: string): Promise<Result<Export>> {
  requireScope(caller.actor, "READ_DRAFTS", slug);
  const publisher = await namedPublisher(deps, slug);
  if (!publisher.ok) return publisher;
  const leftOut = [
    ...(mayUse(caller.actor, "ADMIN", slug) ? [] : (["webhooks"] as const)),
    ...(mayUse(caller.actor, "IMPORT", slug) ? [] : (["feeds"] as const)),
  ];
  const entries = withManifest(slug, leftOut, filesOf(asJob(deps), publisher.value, leftOut));
  return ok({ documents: await deps.data.archives.size(slug), bytes: noted(deps, caller, slug, packZip(entries)) });
}

/** The audit trail names an export once its first byte is asked for. */
async function* noted(
  deps: Deps,
  caller: Caller,
  publisher: string,
  bytes: AsyncIterable<Uint8Array>,
): AsyncGenerator<Uint8Array> {
  await write(
    deps,
    { caller, scope: "READ_DRAFTS", publisher, action: "EXPORT_PUBLISHER", idempotencyKey: null, input: null },
    () =>
      Promise.resolve(ok({ value: null, subject: { kind: "PUBLISHER", name: publisher, before: null, after: null } })),
  );
  yield* bytes;
}

const jsonFile = (name: string, value: unknown): ArchiveEntry => ({
  name,
  bytes: Buffer.from(`${canonicalJson(value)}\n`),
});

/** Between the requests of others: that of a large plan has megabytes. */
const documentBytes = async (deps: Sliced, document: unknown): Promise<Buffer> =>
  Buffer.from(await runInSlices(deps, () => canonicalJsonInSlices(document)));

/** The files, and at the end the list of them. */
async function* withManifest(
  publisher: string,
  leftOut: readonly LeftOut[],
  entries: AsyncIterable<ArchiveEntry>,
): AsyncGenerator<ArchiveEntry> {
  const files: { name: string; bytes: number; sha256: string }[] = [];
  for await (const entry of entries) {
    files.push({ name: entry.name, bytes: entry.bytes.length, sha256: sha256(entry.bytes) });
    yield entry;
  }
  yield jsonFile(fileNames.manifest, {
    ...{ archive: "prepwright publisher", version: archiveVersion, publisher },
    ...{ leftOut, files },
  });
}

/**
 * What names others comes before what it names: somebody may publish meanwhile, and revisions and pictures are never deleted. So each revision that a
 * schedule follows, and each picture that a revision shows, is in the archive.
 */
async function* filesOf(
  deps: Deps & Sliced,
  publisher: Publisher,
  leftOut: readonly LeftOut[],
): AsyncGenerator<ArchiveEntry> {
  const { id: _, slug, name, ...facts } = publisher;
  yield jsonFile(fileNames.publisher, { name, says: publisherDocumentOf(slug, facts) });
  yield* scheduledFiles(deps, slug);
  yield* draftFiles(deps, slug);
  yield jsonFile(fileNames.discarded, await deps.data.archives.discarded(slug));
  yield* revisionFiles(deps, slug);
  yield* imageFiles(deps, slug);
  if (!leftOut.includes("feeds")) yield jsonFile(fileNames.feeds, await feedsOf(deps, slug));
  if (!leftOut.includes("webhooks")) yield jsonFile(fileNames.webhooks, await webhooksOf(deps, slug));
}

async function* draftFiles({ data }: Deps, publisher: string): AsyncGenerator<ArchiveEntry> {
  let after: string | null = null;
  do {
    const page = await data.drafts.page(
      { publisher, kind: null },
      { first: pageSize, after, last: null, before: null },
    );
    for (const { item } of page.items) yield* draftFile(data, item);
    after = page.hasNext ? (page.items.at(-1)?.cursor ?? null) : null;
  } while (after !== null);
}

async function* draftFile(data: Deps["data"], { kind, publisher, slug }: DraftSummary): AsyncGenerator<ArchiveEntry> {
  const draft = await readDraft(data, kind, { publisher, slug });
  // Discarded since the list was read.
  if (draft === null) return;
  const { document, ...rest } = draft;
  yield { name: fileNames.draftText(kind, slug, document.format), bytes: Buffer.from(document.text) };
  yield jsonFile(fileNames.draft(kind, slug), { ...rest, format: document.format });
}

async function readDraft(
  data: Deps["data"],
  kind: DraftKind,
  name: { readonly publisher: string; readonly slug: string },
) {
  const marks = (draft: { version: number; updatedAt: Date; value: unknown }) => ({
    version: draft.version,
    updatedAt: draft.updatedAt.toISOString(),
    value: draft.value,
  });
  if (kind === "PLAN") {
    const [draft] = await data.plans.drafts([name]);
    return draft ? { ...marks(draft), document: planDocument(draft) } : null;
  }
  if (kind === "COMPONENT") {
    const [draft] = await data.components.drafts([name]);
    return draft ? { ...marks(draft), document: componentDocument(draft) } : null;
  }
  if (kind === "TRANSLATION") {
    const [draft] = await data.translations.drafts([name]);
    return draft ? { ...marks(draft), document: translationDocument(draft) } : null;
  }
  const table = kind === "FOOD" ? data.publisherFoods : data.publisherPacks;
  const [[draft], [published]] = await Promise.all([table.drafts([name]), table.published([name])]);
  if (!draft) return null;
  const document = kind === "FOOD" ? foodDocument(draft) : packsDocument(draft);
  return { ...marks(draft), published: published ?? null, document };
}

async function* revisionFiles(deps: Deps & Sliced, publisher: string): AsyncGenerator<ArchiveEntry> {
  const { archives } = deps.data;
  let after: { slug: string; revision: number } | null = null;
  for (;;) {
    const page = await archives.revisions(publisher, after, pageSize);
    for (const { slug, revision, publishedAt, withdrawnAt, ...rest } of page) {
      const document = await archives.document(publisher, { slug, revision });
      yield { name: fileNames.document(slug, revision), bytes: await documentBytes(deps, document) };
      const dates = { publishedAt: publishedAt.toISOString(), withdrawnAt: withdrawnAt?.toISOString() ?? null };
      yield jsonFile(fileNames.revision(slug, revision), { ...rest, ...dates });
    }
    const last = page.at(-1);
    if (last === undefined || page.length < pageSize) return;
    after = { slug: last.slug, revision: last.revision };
  }
}

/** One file of a picture at a time: the largest has some megabytes. */
async function* imageFiles({ data }: Deps, publisher: string): AsyncGenerator<ArchiveEntry> {
  let after: string | null = null;
  for (;;) {
    const page = await data.archives.images(publisher, after, pageSize);
    for (const { hash, files, names, createdAt, removedAt, ...rest } of page) {
      for (const { width, format, size } of files) {
        const bytes = await data.images.bytes(publisher, { hash, width, format }, 0, size - 1);
        yield { name: fileNames.imageFile(hash, width, format), bytes, packed: true };
      }
      const dates = { createdAt: createdAt.toISOString(), removedAt: removedAt?.toISOString() ?? null };
      const named = names.map(({ name, updatedAt }) => ({ name, updatedAt: updatedAt.toISOString() }));
      yield jsonFile(fileNames.image(hash), { ...rest, ...dates, names: named });
    }
    after = page.at(-1)?.hash ?? null;
    if (page.length < pageSize) return;
  }
}

/** What waits; of a publication with what is to be published. What was done, kept back or cancelled stays where it was. */
async function* scheduledFiles(deps: Deps & Sliced, publisher: string): AsyncGenerator<ArchiveEntry> {
  const { data } = deps;
  const waiting = await data.archives.scheduled(publisher);
  const listed: object[] = [];
  for (const { id, dueAt, createdAt, ...rest } of waiting) {
    if (rest.kind === "PUBLISH") {
      const bundle = await data.scheduled.bundle(id);
      // Done since the list was read.
      if (bundle === null) continue;
      yield { name: fileNames.scheduledDocument(rest.slug), bytes: await documentBytes(deps, bundle) };
    }
    listed.push({ ...rest, dueAt: dueAt.toISOString(), createdAt: createdAt.toISOString() });
  }
  yield jsonFile(fileNames.scheduled, listed);
}

/** With the address that files come from, but for its query: that is where keys stand. */
async function feedsOf({ data }: Deps, publisher: string) {
  const feeds = await data.feeds.all(publisher);
  return feeds
    .map(({ slug, kind, settings, cron, zone }) => ({ slug, kind, settings: withoutKeys(settings), cron, zone }))
    .toSorted((a, b) => (a.slug < b.slug ? -1 : 1));
}

function withoutKeys(settings: unknown): unknown {
  const { place, ...rest } = feedSettingsSchema.parse(settings);
  if (place.kind !== "ADDRESS") return { ...rest, place };
  const url = new URL(place.url);
  url.search = "";
  return { ...rest, place: { ...place, url: url.href } };
}

/** At most 20 of a publisher. */
async function webhooksOf({ data }: Deps, publisher: string) {
  const page = await data.webhooks.page(publisher, { first: 100, after: null, last: null, before: null });
  return page.items
    .map(({ item }) => ({ url: item.url, kinds: item.kinds, createdAt: item.createdAt.toISOString() }))
    .toSorted((a, b) => (canonicalJson(a) < canonicalJson(b) ? -1 : 1));
}
