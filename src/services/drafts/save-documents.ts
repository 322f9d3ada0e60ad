import { failed, ok, type Path, type Problem, type Result } from "../../domain/problem.js";
import { translationSlug } from "../../domain/model/translation.js";
import { checkDocumentsInSlices } from "../../imports/documents/checks/check-documents.js";
import { checkFoodsKeeping } from "../../imports/documents/checks/check-food-keeping.js";
import { documentFormat } from "../../imports/documents/document-format.js";
import { placedProblem } from "../../imports/documents/yaml/placed-problem.js";
import type { DocumentsRead, ReadDocument } from "../../imports/documents/read-documents.js";
import type { DocumentsResolved } from "../../imports/documents/resolve-documents.js";
import { requireScope, type Actor, type Caller } from "../access/actor.js";
import type { Data, Deps, DraftKind, DraftWriting } from "../deps.js";
import { rulesToday, type RuleDeps } from "../rules/find-rules.js";
import { isShared } from "../foods/find-foods-of.js";
import { saveDraftOf, type DraftValue } from "./draft-of-kind.js";
import { ownershipProblems, takenSlugs } from "./document-ownership.js";
import { loadReferences } from "./load-references.js";
import { runInSlices, type Sliced } from "../time-slices.js";
import { storedImage } from "../images/freeze-images.js";
import { readTextsInSlices, type GivenText } from "./read-texts.js";
import { staleDrafts, versionsOf, type DraftName } from "./stale-drafts.js";
import { draftAuthorOf } from "../access/draft-author.js";
import { write, type AuditSubject, type Written } from "../write.js";
import { utcDay } from "../../domain/utc-day.js";

/** Version of a draft that its writer read. */
interface ExpectedDraft {
  readonly kind: DraftKind;
  readonly slug: string;
  readonly version: number;
}

interface DocumentsInput {
  readonly publisher: string;
  readonly texts: readonly GivenText[];
  /** Of every draft that is there already; what is not named has to be new. */
  readonly expected?: readonly ExpectedDraft[] | null | undefined;
  readonly idempotencyKey?: string | null | undefined;
}

export type SavedDraft = { readonly kind: DraftKind; readonly slug: string; readonly version: number };

type SavedDocuments = {
  readonly publisher: string;
  readonly drafts: readonly SavedDraft[];
  /** Slugs of the foods among the documents: the publisher's own, which are drafts too, or the operator's. */
  readonly foods: readonly string[];
  /** The publisher's own document was among them. */
  readonly described?: boolean;
};

/**
 * Saves the documents of some texts as drafts, in any order, all of them or none. Problems are those of all texts at once,
 * each with its place; a draft that somebody saved since is one of them. A publisher's own document is in force at once, so it
 * takes the scope PUBLISH beside WRITE. @throws NotAllowed
 */
export async function saveDocuments(
  deps: Deps,
  caller: Caller,
  input: DocumentsInput,
): Promise<Result<SavedDocuments>> {
  const { publisher, texts, expected, idempotencyKey } = input;
  return write(
    deps,
    {
      caller,
      scope: "WRITE",
      publisher,
      action: "SAVE_DRAFTS",
      idempotencyKey,
      input: { texts: texts.map(({ name, text }) => ({ name, text })), expected: expected ?? [] },
    },
    (inside) =>
      saveTexts(inside, caller.actor, {
        publisher,
        texts,
        expected: expected ?? [],
        path: ["input"],
        codes: "REFUSED",
      }),
  );
}

export interface TextsToSave {
  readonly publisher: string;
  readonly texts: readonly GivenText[];
  readonly expected: readonly ExpectedDraft[];
  /** Where the input stands among the caller's arguments. */
  readonly path: Path;
  /** What becomes of a code that its closed list does not have: of a person's it is refused; a feed's is kept as it is. */
  readonly codes: "REFUSED" | "KEPT";
}

/** The work of it, inside a transaction. */
export async function saveTexts(
  deps: RuleDeps & Sliced,
  actor: Actor,
  { publisher, texts, expected, path, codes }: TextsToSave,
): Promise<Result<Written<SavedDocuments>>> {
  const { data } = deps;
  const read = await runInSlices(deps, (work) => readTextsInSlices(texts, path, work));
  if (!read.ok) return read;
  await data.publishers.lock(publisher);
  const { documents } = read.value;
  // Readers have it at once, so saving it is publishing it.
  if (documents.some(({ document }) => document.kind === "publisher")) requireScope(actor, "PUBLISH", publisher);
  const foreign = ownershipProblems(documents, publisher, await takenSlugs(data, actor, publisher, documents));
  const known = await loadReferences(deps, publisher, actor, read.value);
  const { resolved, problems } = await runInSlices(deps, (work) => checkDocumentsInSlices(read.value, known, work));
  const { safety } = await rulesToday(deps);
  const kept = checkFoodsKeeping(resolved, safety, utcDay(deps.clock()));
  const isOperators = (food: object): boolean => isShared(actor, food);
  const names = draftNames([...documents.map(({ document }) => document), ...read.value.faulty], isOperators);
  const versions = await versionsOf(data, publisher, names);
  const refused: readonly Problem[] = [
    ...staleDrafts(names, expected, versions, path),
    ...foreign,
    ...kept.map(placedProblem),
    ...problems.filter(({ problem }) => codes === "REFUSED" || problem.code !== "UNKNOWN_CODE").map(placedProblem),
  ];
  if (refused.length > 0) return failed(refused);
  return ok(await saveResolved(data, publisher, resolved, expected, actor));
}

/** What each kind of document is a draft of; a publisher's own is in force at once. */
export const draftKinds = {
  component: "COMPONENT",
  food: "FOOD",
  packs: "PACKS",
  plan: "PLAN",
  translation: "TRANSLATION",
} as const;

/** Foods of the operator are no drafts. */
const draftNames = (
  written: readonly Pick<DocumentsRead["faulty"][number], "kind" | "slug">[],
  isOperators: (food: object) => boolean,
): readonly DraftName[] =>
  written.flatMap((each): readonly DraftName[] =>
    each.kind === "publisher" || (each.kind === "food" && isOperators(each))
      ? []
      : [{ kind: draftKinds[each.kind], slug: each.slug }],
  );

async function saveResolved(
  data: Data,
  publisher: string,
  { foods, packs, components, plans, publishers, translations }: DocumentsResolved,
  expected: readonly ExpectedDraft[],
  actor: Actor,
): Promise<Written<SavedDocuments>> {
  const by = draftAuthorOf(actor);
  const versionOf = (kind: DraftKind, slug: string): number | null =>
    expected.find((each) => each.kind === kind && each.slug === slug)?.version ?? null;
  const writing = ({ text }: ReadDocument): DraftWriting => ({ document: { text, format: documentFormat(text) }, by });
  const shared = foods.filter(({ value }) => isShared(actor, value));
  if (shared.length > 0) await data.foods.save(shared.map(({ value }) => value));
  for (const { value } of publishers) {
    const image = value.image && (await storedImage(data, publisher, value.image));
    await data.publishers.describe(publisher, { ...value, image });
  }
  const drafts: readonly (DraftValue & { readonly slug: string; readonly read: ReadDocument })[] = [
    ...foods.filter(({ value }) => !isShared(actor, value)).map((each) => ({ ...each, ...named("FOOD", each.value) })),
    ...packs.map((each) => ({ ...each, ...named("PACKS", each.value) })),
    ...components.map((each) => ({ ...each, ...named("COMPONENT", each.value) })),
    ...plans.map((each) => ({ ...each, ...named("PLAN", each.value) })),
    ...translations.map((each) => ({ ...each, kind: "TRANSLATION" as const, slug: translationSlug(each.value) })),
  ];
  const saved: (SavedDraft & { readonly before: number | null })[] = [];
  for (const draft of drafts) {
    const { kind, slug, read } = draft;
    const before = versionOf(kind, slug);
    saved.push({ kind, slug, before, version: await saveDraftOf(data, publisher, draft, before, writing(read)) });
  }
  const subject: readonly AuditSubject[] = [
    ...shared.map(({ value }): AuditSubject => ({ kind: "FOOD", name: value.slug, before: null, after: null })),
    ...publishers.map((): AuditSubject => ({ kind: "PUBLISHER", name: publisher, before: null, after: null })),
    ...saved.map(({ kind, slug, before, version }): AuditSubject => ({
      kind: `${kind}_DRAFT`,
      name: slug,
      before,
      after: version,
    })),
  ];
  return {
    value: {
      publisher,
      drafts: saved.map(({ kind, slug, version }) => ({ kind, slug, version })),
      foods: foods.map(({ value }) => value.slug),
      described: publishers.length > 0,
    },
    subject,
  };
}

const named = <Kind extends DraftKind>(kind: Kind, { slug }: { readonly slug: string }) => ({ kind, slug });
