import type { Component } from "../../domain/model/component.js";
import type { Food } from "../../domain/model/food.js";
import type { Plan, PlanBundle } from "../../domain/model/plan.js";
import type { PublisherFacts } from "../../domain/model/publisher.js";
import { checkBundleInSlices } from "../../domain/plan/check/check-bundle.js";
import { translationSlug, type Translation } from "../../domain/model/translation.js";
import { frozenFoodSchema } from "../../exports/json/frozen-food.js";
import {
  frozenBundleSchema,
  frozenComponentSchema,
  frozenPlanSchema,
  savedTranslationSchema,
} from "../../exports/json/frozen-plan.js";
import { publisherSchema } from "../../imports/documents/schemas/publisher-schema.js";
import type { ArchivedRevision } from "../../persistence/archive/archive-data.js";
import { canonicalJson } from "../../persistence/sql/canonical-json.js";
import type { Deps, DraftKind } from "../deps.js";
import type { DraftValue } from "../drafts/draft-of-kind.js";
import { runInSlices } from "../time-slices.js";
import { sha256 } from "./archive-entry.js";
import { draftFileSchema, fileNames, publisherFileSchema, revisionFileSchema } from "./archive-format.js";
import { BadArchive, parseFile, shaped, type OpenArchive } from "./open-archive.js";

/** A draft as an archive holds it, by its kind. */
export type ArchivedDraft = {
  readonly slug: string;
  readonly version: number;
  readonly updatedAt: Date;
  readonly document: { readonly text: string; readonly format: "YAML" | "JSON" };
  /** Of foods and packs: as the newest published plan has them. */
  readonly published: Food | null;
} & DraftValue;

/** @throws BadArchive */
export async function readPublisher(
  archive: OpenArchive,
  slug: string,
): Promise<{ readonly name: string; readonly facts: PublisherFacts }> {
  const file = fileNames.publisher;
  const { name, says } = shaped(file, publisherFileSchema, parseFile(file, await archive.read(file)));
  const { kind: _kind, slug: of, $schema: _schema, ...facts } = shaped(file, publisherSchema, says);
  if (of !== slug) throw new BadArchive({ kind: "OTHER_PUBLISHER", archived: of }, file);
  return { name, facts };
}

/** @throws BadArchive */
export async function readDraft(
  archive: OpenArchive,
  publisher: string,
  kind: DraftKind,
  slug: string,
): Promise<ArchivedDraft> {
  const file = fileNames.draft(kind, slug);
  const read = shaped(file, draftFileSchema, parseFile(file, await archive.read(file)));
  const text = (await archive.read(fileNames.draftText(kind, slug, read.format))).toString("utf8");
  const { version, format } = read;
  const marks = { slug, version, updatedAt: new Date(read.updatedAt), document: { text, format }, published: null };
  const named = <Value extends { readonly slug: string }>(value: Value): Value => {
    if (value.slug !== slug) throw new BadArchive({ kind: "CONTENT", detail: "its slug is not its name" }, file);
    return value;
  };
  // Read by their shapes, and stored as they are written: what a later version adds is not lost.
  if (kind === "PLAN") {
    const value = named(shaped(file, frozenPlanSchema, read.value));
    if (value.publisher !== publisher)
      throw new BadArchive({ kind: "OTHER_PUBLISHER", archived: value.publisher }, file);
    return { ...marks, kind, value: read.value as Plan };
  }
  if (kind === "COMPONENT") {
    named(shaped(file, frozenComponentSchema, read.value));
    return { ...marks, kind, value: read.value as Component };
  }
  if (kind === "TRANSLATION") {
    const value = shaped(file, savedTranslationSchema, read.value);
    named({ slug: translationSlug(value) });
    return { ...marks, kind, value: read.value as Translation };
  }
  named(shaped(file, frozenFoodSchema, read.value));
  const published = read.published ?? null;
  if (published !== null) named(shaped(file, frozenFoodSchema, published));
  return { ...marks, kind, value: read.value as Food, published: published as Food | null };
}

/** @throws BadArchive */
export async function readRevision(
  archive: OpenArchive,
  { slug, revision }: { readonly slug: string; readonly revision: number },
): Promise<ArchivedRevision> {
  const file = fileNames.revision(slug, revision);
  const { publishedAt, withdrawnAt, ...rest } = shaped(
    file,
    revisionFileSchema,
    parseFile(file, await archive.read(file)),
  );
  if (!archive.names.has(fileNames.document(slug, revision))) {
    throw new BadArchive({ kind: "MISSING" }, fileNames.document(slug, revision));
  }
  const dates = {
    publishedAt: new Date(publishedAt),
    withdrawnAt: withdrawnAt === null ? null : new Date(withdrawnAt),
  };
  return { slug, revision, ...rest, ...dates };
}

/** Faults that would leave a reader of the plan with nothing to look up. Others may be those of an older version, which stay. */
const dangling: ReadonlySet<string> = new Set(["UNKNOWN_FOOD", "UNKNOWN_COMPONENT", "COMPONENT_CYCLE", "DUPLICATE"]);

/** The frozen document, byte for byte what its checksum says. @throws BadArchive */
export async function readDocument(
  deps: Deps,
  archive: OpenArchive,
  publisher: string,
  { slug, revision, checksum }: ArchivedRevision,
): Promise<PlanBundle> {
  const file = fileNames.document(slug, revision);
  const bytes = await archive.read(file);
  const value = parseFile(file, bytes);
  if (sha256(bytes) !== checksum || canonicalJson(value) !== bytes.toString("utf8")) {
    throw new BadArchive({ kind: "ALTERED" }, file);
  }
  return bundleIn(deps, file, value, publisher, slug);
}

/** What is to be published of a plan at its hour. @throws BadArchive */
export async function readScheduledDocument(
  deps: Deps,
  archive: OpenArchive,
  publisher: string,
  slug: string,
): Promise<PlanBundle> {
  const file = fileNames.scheduledDocument(slug);
  return bundleIn(deps, file, parseFile(file, await archive.read(file)), publisher, slug);
}

async function bundleIn(
  deps: Deps,
  file: string,
  value: unknown,
  publisher: string,
  slug: string,
): Promise<PlanBundle> {
  const { plan } = shaped(file, frozenBundleSchema, value);
  if (plan.publisher !== publisher) throw new BadArchive({ kind: "OTHER_PUBLISHER", archived: plan.publisher }, file);
  if (plan.slug !== slug) throw new BadArchive({ kind: "CONTENT", detail: "its slug is not its name" }, file);
  const bundle = value as PlanBundle;
  const problems = await runInSlices(deps, () => checkBundleInSlices(bundle));
  const fault = problems.find(({ code }) => dangling.has(code));
  if (fault !== undefined) {
    const detail = `${fault.code.toLowerCase().replaceAll("_", " ")} at ${fault.path.join(".")}`;
    throw new BadArchive({ kind: "CONTENT", detail }, file);
  }
  return bundle;
}
