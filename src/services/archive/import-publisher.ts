import { failed, ok, type Problem, type Result } from "../../domain/problem.js";
import type { ArchivedRevision } from "../../persistence/archive/archive-data.js";
import { authorName, write, type Written } from "../write.js";
import { requireScope, type Actor, type Caller } from "../access/actor.js";
import type { Deps } from "../deps.js";
import { saveDraftOf } from "../drafts/draft-of-kind.js";
import { checkName } from "../drafts/check/check-name.js";
import { urlProblems } from "../webhooks/webhook-address.js";
import { newWebhookSecret } from "../webhooks/webhook-message.js";
import { discardedFileSchema, draftNamed, fileNames, revisionNamed, webhooksFileSchema } from "./archive-format.js";
import { BadArchive, parseFile, shaped, withArchive, type OpenArchive } from "./open-archive.js";
import { takeFeeds } from "./take-feeds.js";
import { takeImages } from "./take-images.js";
import { takeScheduled, type PassedChange } from "./take-scheduled.js";
import { readDocument, readDraft, readPublisher, readRevision, type ArchivedDraft } from "./read-archive.js";

/** What came in. */
export type ImportedPublisher = {
  readonly publisher: string;
  readonly drafts: number;
  readonly plans: number;
  readonly revisions: number;
  /** Pictures that can be had; removed ones come in as removed. */
  readonly images: number;
  /** They are disabled: their secrets are new. */
  readonly webhooks: number;
  /** Feeds; they are disabled, and an address that files come from lacks its query. */
  readonly feeds: number;
  /** Publications and withdrawals that wait. */
  readonly scheduled: number;
  /** Those whose time has passed: they are not done, and did not come in. */
  readonly scheduledPassed: readonly PassedChange[];
  /** Codes of rule sets that revisions were checked against and this installation does not have. */
  readonly ruleSetsMissing: readonly string[];
};

/**
 * Milliseconds. All of an archive comes in or nothing, so it is one transaction however many pictures there are: 5,000 of them, the most that a
 * publisher has, take some minutes.
 */
const longestImport = 30 * 60_000;

interface ImportInput {
  /** Slug of a publisher under which nothing is saved yet; the one that was exported. */
  readonly publisher: string;
  /** Path of the zip file, and its size. */
  readonly path: string;
  readonly bytes: number;
  /** Find out what would come in, and keep nothing. */
  readonly dryRun: boolean;
}

/**
 * Takes an export of another installation into an empty publisher, all of it or nothing: revisions keep their numbers, dates, frozen
 * bytes and checksums. Only the operator may, since dates and facts are taken as they are. @throws NotAllowed
 */
export async function importPublisher(
  deps: Deps,
  caller: Caller,
  input: ImportInput,
): Promise<Result<ImportedPublisher>> {
  requireScope(caller.actor, "ADMIN", null);
  const { publisher, path, bytes, dryRun } = input;
  let tried: ImportedPublisher | null = null;
  try {
    return await withArchive(path, bytes, async (archive) =>
      write(
        deps,
        {
          ...{ caller, scope: "ADMIN", publisher, action: "IMPORT_PUBLISHER", idempotencyKey: null },
          input: { publisher },
          longest: longestImport,
        },
        async (inside) => {
          const imported = await takeIn(inside, archive, publisher, caller.actor);
          if (!imported.ok || !dryRun) return imported;
          tried = imported.value.value;
          throw new OnlyTried();
        },
      ),
    );
  } catch (error) {
    if (error instanceof OnlyTried && tried !== null) return ok(tried);
    if (!(error instanceof BadArchive)) throw error;
    return failed([archiveProblem(error)]);
  }
}

/** Only there to roll the transaction back. */
class OnlyTried extends Error {
  override readonly name = "OnlyTried";
}

const archiveProblem = ({ fault, file }: BadArchive): Problem => ({
  code: "BAD_ARCHIVE",
  path: file === null ? ["archive"] : ["archive", file],
  fault,
});

async function takeIn(
  deps: Deps,
  archive: OpenArchive,
  publisher: string,
  maker: Actor,
): Promise<Result<Written<ImportedPublisher>>> {
  const { data } = deps;
  const by = authorName(maker);
  if (archive.publisher !== publisher) {
    throw new BadArchive({ kind: "OTHER_PUBLISHER", archived: archive.publisher }, fileNames.manifest);
  }
  // Writers of drafts, webhooks and pictures do not all lock it: what one of them is about to keep counts too.
  await data.publishers.lockAlone(publisher);
  if (!(await data.archives.isEmpty(publisher))) {
    return failed([{ code: "PUBLISHER_NOT_EMPTY", path: ["publisher"], publisher }]);
  }
  const { name, facts } = await readPublisher(archive, publisher);
  const wrong = checkName(name, ["archive", fileNames.publisher, "name"]);
  if (wrong.length > 0) return failed(wrong);
  await data.publishers.rename(publisher, name);
  await data.publishers.describe(publisher, facts);

  const images = await takeImages(deps, archive, publisher, by);
  const drafts = await takeDrafts(deps, archive, publisher, by);
  const revisions = await takeRevisions(deps, archive, publisher);
  const scheduled = await takeScheduled(deps, archive, publisher, maker);
  const feeds = await takeFeeds(deps, archive, publisher);
  const webhooks = await takeWebhooks(deps, archive, publisher);
  if (!webhooks.ok) return webhooks;
  const sets = new Set((await data.ruleSets.all()).map(({ code }) => code));
  const used = new Set(revisions.flatMap(({ ruleSet }) => ruleSet ?? []));
  return ok({
    value: {
      publisher,
      drafts,
      plans: new Set(revisions.map(({ slug }) => slug)).size,
      revisions: revisions.length,
      images,
      webhooks: webhooks.value,
      ...{ feeds, scheduled: scheduled.waiting, scheduledPassed: scheduled.passed },
      ruleSetsMissing: [...used].filter((code) => !sets.has(code)).toSorted(),
    },
    subject: { kind: "PUBLISHER", name: publisher, before: null, after: null },
  });
}

async function takeDrafts({ data }: Deps, archive: OpenArchive, publisher: string, by: string): Promise<number> {
  let count = 0;
  for (const file of archive.names) {
    const named = draftNamed(file);
    if (named === null) continue;
    const draft = await readDraft(archive, publisher, named.kind, named.slug);
    await storeDraft(data, publisher, draft, by);
    await data.archives.dateDraft({ publisher, ...named }, draft.version, draft.updatedAt);
    count += 1;
  }
  const file = fileNames.discarded;
  const discarded = shaped(file, discardedFileSchema, parseFile(file, await archive.read(file)));
  const names = new Set(discarded.map(({ kind, slug }) => `${kind} ${slug}`));
  if (names.size < discarded.length) throw new BadArchive({ kind: "CONTENT", detail: "a draft is in it twice" }, file);
  await data.archives.noteDiscarded(publisher, discarded);
  return count;
}

async function storeDraft(data: Deps["data"], publisher: string, draft: ArchivedDraft, by: string): Promise<void> {
  await saveDraftOf(data, publisher, draft, null, { document: draft.document, by });
  if (draft.kind !== "FOOD" && draft.kind !== "PACKS") return;
  const table = draft.kind === "FOOD" ? data.publisherFoods : data.publisherPacks;
  if (draft.published !== null) await table.notePublished(publisher, [draft.published]);
}

/** In the order in which they were published and withdrawn, so that the list of changes tells them as they happened. */
async function takeRevisions(
  deps: Deps,
  archive: OpenArchive,
  publisher: string,
): Promise<readonly ArchivedRevision[]> {
  const { archives } = deps.data;
  const revisions: ArchivedRevision[] = [];
  for (const file of archive.names) {
    const named = revisionNamed(file);
    if (named !== null) revisions.push(await readRevision(archive, named));
  }
  checkNumbers(revisions);
  const events = revisions.flatMap((revision) => [
    { at: revision.publishedAt.getTime(), publishes: true, revision },
    ...(revision.withdrawnAt === null ? [] : [{ at: withdrawalOf(revision), publishes: false, revision }]),
  ]);
  const inOrder = events.toSorted((a, b) => a.at - b.at || Number(b.publishes) - Number(a.publishes));
  for (const { publishes, revision } of inOrder) {
    if (publishes)
      await archives.addRevision(publisher, revision, await readDocument(deps, archive, publisher, revision));
    else await archives.noteWithdrawal(publisher, revision);
  }
  await archives.settlePlans(publisher);
  return revisions;
}

/** Never before its publication, also where a clock was set back. */
const withdrawalOf = ({ publishedAt, withdrawnAt }: ArchivedRevision): number =>
  Math.max(publishedAt.getTime(), withdrawnAt?.getTime() ?? 0);

/** Numbers are given out without a gap, and no revision is ever deleted. @throws BadArchive */
function checkNumbers(revisions: readonly ArchivedRevision[]): void {
  const known = new Set(revisions.map(({ slug, revision }) => `${slug}/${String(revision)}`));
  for (const { slug, revision } of revisions) {
    if (revision > 1 && !known.has(`${slug}/${String(revision - 1)}`)) {
      throw new BadArchive({ kind: "NUMBER_MISSING", plan: slug, revision: revision - 1 }, null);
    }
  }
}

/** With new secrets, and disabled until somebody has handed those on. */
async function takeWebhooks(deps: Deps, archive: OpenArchive, publisher: string): Promise<Result<number>> {
  const file = fileNames.webhooks;
  if (!archive.names.has(file)) return ok(0);
  const webhooks = shaped(file, webhooksFileSchema, parseFile(file, await archive.read(file)));
  const problems = webhooks.flatMap(({ url }, at) =>
    urlProblems(url, deps.allowPrivateWebhooks ?? false, ["archive", file, at, "url"]),
  );
  if (problems.length > 0) return failed(problems);
  for (const { url, kinds, createdAt } of webhooks) {
    const made = { publisher, url, kinds, secret: newWebhookSecret(), createdAt: new Date(createdAt) };
    await deps.data.webhooks.disable(await deps.data.webhooks.create(made), deps.clock(), "ASKED");
  }
  return ok(webhooks.length);
}
