import { stringify } from "yaml";
import { z } from "zod";
import { thingOfTranslation } from "../../domain/model/translation.js";
import type { PublisherFacts } from "../../domain/model/publisher.js";
import { publisherDocumentOf } from "../../imports/documents/plain-document.js";
import { referencedSlugs } from "../../imports/documents/referenced-slugs.js";
import { readDocuments, type ReadDocument } from "../../imports/documents/read-documents.js";
import { slugSchema } from "../../imports/documents/schemas/scalar-schemas.js";
import { resolveComponentLines, textLinesOf } from "../../imports/documents/lines/resolve-text-lines.js";
import {
  ComponentDraftTextDocument,
  FoodDraftTextDocument,
  PacksDraftTextDocument,
  PlanDraftTextDocument,
  TranslationDraftTextDocument,
  type DocumentFormat,
  type DraftKind,
  type PlanDraftTextQuery,
} from "./generated/operations.js";
import { wrongAnswer } from "./outcome.js";
import { readVersions, type DraftVersion } from "./read-versions.js";
import type { Service } from "./service.js";

export interface DraftText {
  readonly kind: DraftKind;
  readonly slug: string;
  readonly version: number;
  readonly text: string;
  readonly format: DocumentFormat;
}

interface DraftsRead {
  /** The plan first; empty where there is no draft of it. */
  readonly drafts: readonly DraftText[];
  /** Components that are drawn on and have no draft. */
  readonly missing: readonly string[];
  /** What the publisher says of itself, as a document; null: nothing. */
  readonly publisher: string | null;
}

/** The draft of a plan, of every component that it draws on, directly or through another, and of the publisher's own foods in them. */
export async function readDrafts(
  service: Service,
  { publisher, slug }: { readonly publisher: string; readonly slug: string },
): Promise<DraftsRead> {
  const { draft } = await service.ask(PlanDraftTextDocument, { publisher, slug });
  if (draft === null) return { drafts: [], missing: [], publisher: null };
  const drafts = [draftText(draft)];
  const missing: string[] = [];
  const asked = new Set<string>();
  let versions: readonly DraftVersion[] | null = null;
  const known = async (): Promise<readonly DraftVersion[]> => (versions ??= await readVersions(service, publisher));
  for (let next = await componentsOf(drafts, known); next.length > 0;) {
    next.forEach((name) => asked.add(name));
    const level: DraftText[] = [];
    for (const name of next) {
      const component = (await service.ask(ComponentDraftTextDocument, { publisher, slug: name })).draft;
      if (component === null) missing.push(name);
      else level.push(draftText(component));
    }
    drafts.push(...level);
    next = (await componentsOf(level, known)).filter((name) => !asked.has(name));
  }
  const translations = await translationDrafts(service, publisher, await known(), drafts);
  drafts.push(...(await foodDrafts(service, publisher, drafts)), ...translations);
  return { drafts, missing, publisher: publisherText(publisher, draft.publisher) };
}

/** The publisher's own foods among those that drafts name, and the packs it adds to them. One that all share has no draft. */
async function foodDrafts(service: Service, publisher: string, drafts: readonly DraftText[]): Promise<DraftText[]> {
  const named = referencedSlugs(documentsOf(drafts).map(({ document }) => document)).foods;
  if (named.length === 0) return [];
  const own = new Set<string>();
  for (const { kind, slug } of await readVersions(service, publisher)) own.add(`${kind} ${slug}`);
  const found: DraftText[] = [];
  for (const slug of named) {
    const asked = [
      ...(own.has(`FOOD ${slug}`) ? [FoodDraftTextDocument] : []),
      ...(own.has(`PACKS ${slug}`) ? [PacksDraftTextDocument] : []),
    ];
    for (const question of asked) {
      const { draft } = await service.ask(question, { publisher, slug });
      if (draft !== null) found.push(draftText(draft));
    }
  }
  return found;
}

/** The translations of drafts into every language. */
async function translationDrafts(
  service: Service,
  publisher: string,
  versions: readonly DraftVersion[],
  drafts: readonly DraftText[],
): Promise<DraftText[]> {
  const named = new Set(drafts.map(({ kind, slug }) => `${kind} ${slug}`));
  const found: DraftText[] = [];
  for (const { kind, slug } of versions) {
    const of = kind === "TRANSLATION" ? thingOfTranslation(slug) : null;
    if (of === null || !named.has(`${of.kind} ${of.slug}`)) continue;
    const { draft } = await service.ask(TranslationDraftTextDocument, { publisher, slug });
    if (draft !== null) found.push(draftText(draft));
  }
  return found;
}

/** What a publisher says of itself, as a document; null: nothing. */
function publisherText(slug: string, facts: PublisherFacts): string | null {
  const { region, currency, languages, description, website = null, image = null } = facts;
  const says = [region, currency, description, website, image].some((fact) => fact !== null) || languages.length > 0;
  return says
    ? stringify(publisherDocumentOf(slug, { region, currency, languages, description, website, image }))
    : null;
}

const word = z.string().regex(/^[A-Z]{1,20}$/);

/** Kinds and formats that a later service adds are taken. */
const draftSchema = z.object({
  kind: word,
  slug: z.string().refine((slug) => slugSchema.safeParse(thingOfTranslation(slug)?.slug ?? slug).success),
  version: z.int(),
  document: z.object({ text: z.string(), format: word }),
});

/** They come from the service, and files are named after them: what leads out of a folder is none. @throws CommandFailed */
function draftText(draft: Omit<NonNullable<PlanDraftTextQuery["draft"]>, "publisher">): DraftText {
  if (!draftSchema.safeParse(draft).success) throw wrongAnswer("a draft whose kind, slug or format is none");
  const { document, kind, slug, version } = draft;
  return { ...{ kind, slug, version }, ...document };
}

const documentsOf = (drafts: readonly DraftText[]): readonly ReadDocument[] =>
  drafts.flatMap(({ text, slug }) => readDocuments(text, slug).documents);

/** What drafts draw on. A line that is written as text names a component by its title or slug. */
async function componentsOf(
  drafts: readonly DraftText[],
  known: () => Promise<readonly DraftVersion[]>,
): Promise<readonly string[]> {
  const read = documentsOf(drafts);
  const texts = textLinesOf(read.map(({ document }) => document));
  const components = texts.length === 0 ? [] : (await known()).filter(({ kind }) => kind === "COMPONENT");
  return referencedSlugs(resolveComponentLines(read, components).map(({ document }) => document)).components;
}
