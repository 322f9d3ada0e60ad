import { z } from "zod";
import { isImageFile } from "../../domain/model/image.js";
import type { DraftKind } from "../../domain/problem.js";

/**
 * Names and shapes of the files in an archive of a publisher (docs/archives.md):
 *
 *     manifest.json                    version, publisher, and size and SHA-256 of every other file
 *     publisher.json                   its name, and its document
 *     drafts/plan/SLUG.yaml            a draft as its writer wrote it
 *     drafts/plan/SLUG.draft.json      its version and date, and how it was read
 *     plans/SLUG/1.json                a frozen document, byte for byte: its SHA-256 is the revision's checksum
 *     plans/SLUG/1.revision.json       dates, notes and withdrawal of that revision
 *     images/HASH.json                 a picture: its size, its names, its dates
 *     images/HASH/original.jpeg        as it is kept: its SHA-256 is HASH; beside it the widths that readers get, 320.avif ...
 *     scheduled.json                   publications and withdrawals that wait
 *     scheduled/SLUG.json              what is to be published of a plan then, as it is to be frozen
 *     feeds.json                       feeds with their settings, without keys
 *     discarded.json                   versions of discarded drafts, from which later ones count on
 *     webhooks.json                    webhooks without their secrets
 *
 * Version 1 has no feeds and nothing scheduled.
 */
export const archiveVersion = 2;

const draftFolders = {
  COMPONENT: "component",
  FOOD: "food",
  PACKS: "packs",
  PLAN: "plan",
  TRANSLATION: "translation",
} as const satisfies Record<DraftKind, string>;

const draftKinds: readonly DraftKind[] = ["COMPONENT", "FOOD", "PACKS", "PLAN", "TRANSLATION"];

export const fileNames = {
  manifest: "manifest.json",
  publisher: "publisher.json",
  discarded: "discarded.json",
  webhooks: "webhooks.json",
  feeds: "feeds.json",
  scheduled: "scheduled.json",
  scheduledDocument: (slug: string) => `scheduled/${slug}.json`,
  draft: (kind: DraftKind, slug: string) => `drafts/${draftFolders[kind]}/${slug}.draft.json`,
  draftText: (kind: DraftKind, slug: string, format: "YAML" | "JSON") =>
    `drafts/${draftFolders[kind]}/${slug}.${format.toLowerCase()}`,
  revision: (slug: string, revision: number) => `plans/${slug}/${String(revision)}.revision.json`,
  image: (hash: string) => `images/${hash}.json`,
  imageFile: (hash: string, width: number, format: string) =>
    `images/${hash}/${width === 0 ? "original" : String(width)}.${format.toLowerCase()}`,
  document: (slug: string, revision: number) => `plans/${slug}/${String(revision)}.json`,
} as const;

const slug = "[a-z0-9]+(?:-[a-z0-9]+)*";

/** Every name that an archive may have. Anything else, such as a path that leads out of a folder, is refused. */
const knownName = new RegExp(
  `^(?:manifest|publisher|discarded|webhooks|feeds|scheduled)\\.json$|^scheduled/${slug}\\.json$|^drafts/(?:component|food|packs|plan|translation)/${slug}\\.(?:draft\\.json|json|yaml)$|^plans/${slug}/[1-9][0-9]{0,8}(?:\\.revision)?\\.json$|^images/[0-9a-f]{64}(?:\\.json|/(?:original|[1-9][0-9]{0,4})\\.(?:avif|webp|jpeg|png))$`,
);

export const isKnownName = (name: string): boolean => name.length <= 300 && knownName.test(name);

/** The drafts, or the revisions, among the names of an archive. */
export const draftNamed = (name: string): { readonly kind: DraftKind; readonly slug: string } | null => {
  const [, folder, of] = /^drafts\/([a-z]+)\/([a-z0-9-]+)\.draft\.json$/.exec(name) ?? [];
  const kind = draftKinds.find((each) => draftFolders[each] === folder);
  return kind === undefined || of === undefined ? null : { kind, slug: of };
};

export const revisionNamed = (name: string): { readonly slug: string; readonly revision: number } | null => {
  const [, of, revision] = /^plans\/([a-z0-9-]+)\/([0-9]+)\.revision\.json$/.exec(name) ?? [];
  return of === undefined ? null : { slug: of, revision: Number(revision) };
};

export const imageNamed = (name: string): string | null => /^images\/([0-9a-f]{64})\.json$/.exec(name)?.[1] ?? null;

const instant = z.iso.datetime({ precision: 3 });
const hash = z.string().regex(/^[0-9a-f]{64}$/);
const version = z.number().int().min(1).max(2_000_000_000);
const words = z.string().max(20_000).nullable();

export const manifestSchema = z.strictObject({
  archive: z.literal("prepwright publisher"),
  version: z.number().int().min(1),
  publisher: z.string().max(200),
  /** Parts that the token of the export could not read. */
  leftOut: z.array(z.enum(["webhooks", "feeds"])).max(2),
  files: z.array(z.strictObject({ name: z.string().max(300), bytes: z.number().int().min(0), sha256: hash })),
});

export const publisherFileSchema = z.strictObject({ name: z.string().max(2_000), says: z.unknown() });

export const draftFileSchema = z.strictObject({
  version,
  updatedAt: instant,
  format: z.enum(["YAML", "JSON"]),
  /** The document as it was read when it was saved, in the shape of frozen documents. */
  value: z.unknown(),
  /** Of foods and packs: as the newest published plan has them. Null: never published. */
  published: z.unknown().optional(),
});

export const revisionFileSchema = z.strictObject({
  publishedAt: instant,
  withdrawnAt: instant.nullable(),
  withdrawnBecause: words,
  changeNote: words,
  checksum: hash,
  format: z.number().int().min(1).max(1_000),
  meaning: z.number().int().min(1).max(1_000).nullable(),
  publisherRegion: z.string().max(20).nullable(),
  publisherCurrency: z.string().max(20).nullable(),
  ruleSet: z.string().max(200).nullable(),
});

const pixels = z.number().int().min(1).max(100_000);

export const imageFileSchema = z.strictObject({
  fileHash: hash,
  format: z.enum(["JPEG", "PNG", "WEBP", "AVIF"]),
  width: pixels,
  height: pixels,
  placeholder: z.string().regex(/^#[0-9a-f]{6}$/),
  createdAt: instant,
  removedAt: instant.nullable(),
  names: z.array(z.strictObject({ name: z.string().refine(isImageFile), updatedAt: instant })).max(10_000),
});

export const discardedFileSchema = z
  .array(
    z.strictObject({
      kind: z.enum(["COMPONENT", "FOOD", "PACKS", "PLAN", "TRANSLATION"]),
      slug: z.string().max(200),
      version,
    }),
  )
  .max(100_000);

const webhookKinds = [
  ...["PLAN_PUBLISHED", "PLAN_CORRECTED", "PLAN_WITHDRAWN"],
  ...["PLAN_ANSWER_CHANGED", "PLAN_LESS_SAFE", "PLAN_KEPT_BACK", "IMPORT_ENDED"],
] as const;

export const webhooksFileSchema = z
  .array(z.strictObject({ url: z.string(), kinds: z.array(z.enum(webhookKinds)).max(20), createdAt: instant }))
  .max(20);

export const feedsFileSchema = z
  .array(
    z.strictObject({
      slug: z.string().max(200),
      kind: z.enum(["PRICES", "DOCUMENTS", "RECIPES"]),
      settings: z.unknown(),
      cron: z.string().max(200).nullable(),
      zone: z.string().max(100),
    }),
  )
  .max(10_000);

export const scheduledFileSchema = z
  .array(
    z.strictObject({
      slug: z
        .string()
        .regex(new RegExp(`^${slug}$`))
        .max(80),
      kind: z.enum(["PUBLISH", "WITHDRAW"]),
      dueAt: instant,
      localTime: z.string().regex(/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(?::\d{2})?$/),
      zone: z.string().max(100),
      version: version.nullable(),
      changeNote: words,
      reason: words,
      /** Number of the revision in force when it was asked for; null: none was. */
      inForce: z.number().int().min(1).max(1_000_000_000).nullable(),
      createdAt: instant,
    }),
  )
  .max(1_000);
