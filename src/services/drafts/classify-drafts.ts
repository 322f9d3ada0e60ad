import type { Problem } from "../../domain/problem.js";
import { checkDocumentsInSlices } from "../../imports/documents/checks/check-documents.js";
import { referencedSlugs } from "../../imports/documents/referenced-slugs.js";
import { placedProblem } from "../../imports/documents/yaml/placed-problem.js";
import type { ReadDocument } from "../../imports/documents/read-documents.js";
import type { RuleDeps } from "../rules/find-rules.js";
import { placedInFile, type DraftRow, type DraftRows, type NewText, type TakenVerdict } from "./draft-row.js";
import { ownershipProblems, takenSlugs } from "./document-ownership.js";
import { loadReferences } from "./load-references.js";
import { runInSlices, yieldToOthers, type Sliced } from "../time-slices.js";
import { importCaller } from "./store-draft.js";

/** What loading a row would do. */
export type Verdict =
  | TakenVerdict
  | { readonly kind: "UNCHANGED" | "REPEATED" }
  | { readonly kind: "QUARANTINED"; readonly problems: readonly Problem[]; readonly offer: string | null };

/** Rows looked at with one read of what is there. */
const batchSize = 200;

interface HowTaken {
  readonly publishes: boolean;
  /** A person has looked at the rows, and is not to misspell a code. */
  readonly answeredFor: boolean;
}

/** Says of every row, in the order they are to be loaded, what loading it would do; nothing is written. */
export async function classifyDrafts(
  deps: RuleDeps & Sliced,
  publisher: string,
  { publishes, answeredFor }: HowTaken,
  rows: DraftRows,
): Promise<readonly Verdict[]> {
  const { data } = deps;
  const verdicts: Verdict[] = [];
  // Of each plan the last row that publishes it: readers get it once, with all of its translations.
  const publishing = new Map<string, number>();
  const file: FileSoFar = {
    components: new Map(),
    plans: new Map(),
    foods: new Map(),
    aside: new Set(),
    moved: new Set(),
    movedFoods: new Set(),
  };
  for await (const batch of batches(rows())) {
    const texts = batch.flatMap(({ state }) => (state.kind === "TEXT" ? [state] : []));
    const drafts = await data.drafts.texts(texts.map(({ draft, slug }) => ({ kind: draft, publisher, slug })));
    const inForce = publishes
      ? await data.revisions.summaries(
          texts.map((text) => ({ publisher, slug: planOf(text) ?? text.slug, revision: null })),
        )
      : [];
    const known = new Map(
      texts.map((text, at) => [text, { draft: drafts[at] ?? null, published: inForce[at] ?? null }]),
    );
    for (const { state } of batch) {
      await yieldToOthers(deps);
      if (state.kind === "REPEATED") verdicts.push({ kind: "REPEATED" });
      else if (state.kind === "SAME") verdicts.push({ kind: "UNCHANGED" });
      else if (state.kind === "BAD") {
        if (state.component !== null) file.aside.add(state.component);
        verdicts.push({ kind: "QUARANTINED", problems: state.problems, offer: state.offer });
      } else {
        const { draft, published } = known.get(state) ?? { draft: null, published: null };
        const isSame = draft?.text === state.text;
        const verdict = isSame
          ? judgeSame(state, file, publishes, published !== null)
          : await judgeText(deps, publisher, state, file, draft !== null, answeredFor);
        const plan = planOf(state);
        // A draft that nobody published yet is not for a translation to publish.
        const isOwn = plan !== null && (state.draft === "PLAN" || published !== null || file.plans.has(plan));
        if (publishes && isOwn && "publishes" in verdict) publishing.set(plan, verdicts.length);
        note(file, state, verdict);
        verdicts.push(verdict);
      }
    }
  }
  const plans = new Map([...publishing].map(([plan, at]) => [at, plan]));
  return verdicts.map((verdict, at) =>
    "publishes" in verdict ? { ...verdict, publishes: plans.get(at) ?? null } : verdict,
  );
}

/** Slug of the plan that a text is or translates. */
function planOf({ draft, slug, read: { document } }: NewText): string | null {
  if (draft === "PLAN") return slug;
  return document.kind === "translation" && document.of.kind === "PLAN" ? document.of.slug : null;
}

async function* batches(rows: AsyncIterable<DraftRow>): AsyncGenerator<readonly DraftRow[]> {
  let held: DraftRow[] = [];
  for await (const row of rows) {
    held.push(row);
    if (held.length < batchSize) continue;
    yield held;
    held = [];
  }
  if (held.length > 0) yield held;
}

/** Components and foods of the file that were looked at: taken, refused, and different from what readers may have. */
interface FileSoFar {
  readonly components: Map<string, ReadDocument>;
  readonly foods: Map<string, ReadDocument>;
  readonly plans: Map<string, ReadDocument>;
  readonly movedFoods: Set<string>;
  readonly aside: Set<string>;
  readonly moved: Set<string>;
}

const componentsOf = (text: NewText): readonly string[] => referencedSlugs([text.read.document]).components;

const foodsOf = (text: NewText): readonly string[] => referencedSlugs([text.read.document]).foods;

const isMoved = (text: NewText, { moved, movedFoods }: FileSoFar): boolean =>
  componentsOf(text).some((each) => moved.has(each)) || foodsOf(text).some((each) => movedFoods.has(each));

function judgeSame(text: NewText, file: FileSoFar, publishes: boolean, isPublished: boolean): Verdict {
  if (text.draft !== "PLAN" || !publishes) return { kind: "UNCHANGED" };
  const isBehind =
    !isPublished ||
    isMoved(text, file) ||
    reached(text.read, file.components).some(({ document }) => file.moved.has(document.slug));
  return isBehind ? { kind: "PUBLISH", publishes: null } : { kind: "UNCHANGED" };
}

async function judgeText(
  deps: RuleDeps & Sliced,
  publisher: string,
  text: NewText,
  { components, foods, plans, aside }: FileSoFar,
  isThere: boolean,
  answeredFor: boolean,
): Promise<Verdict> {
  const missing = componentsOf(text).filter((each) => aside.has(each));
  if (missing.length > 0) {
    const problems = missing.map((component): Problem => ({ code: "COMPONENT_SET_ASIDE", path: [], component }));
    return { kind: "QUARANTINED", problems, offer: null };
  }
  const { document } = text.read;
  const plan = document.kind === "translation" && document.of.kind === "PLAN" ? plans.get(document.of.slug) : undefined;
  const written = [
    ...(plan === undefined ? [] : [...reached(plan, components), plan]),
    ...reached(text.read, components),
    text.read,
  ];
  const named = referencedSlugs(written.map(({ document }) => document)).foods;
  const documents = [...named.flatMap((slug) => foods.get(slug) ?? []), ...written];
  const { actor } = importCaller("file");
  const foreign = ownershipProblems(documents, publisher, await takenSlugs(deps.data, actor, publisher, documents));
  const known = await loadReferences(deps, publisher, actor, { documents, faulty: [] });
  // A feed's unknown code is kept and told of, so that a night's import goes on; whoever reads it takes it at its strictest.
  const asRead = { documents, faulty: [], problems: [], count: documents.length };
  const { problems: all } = await runInSlices(deps, (work) => checkDocumentsInSlices(asRead, known, work));
  const problems = all.filter(({ problem }) => answeredFor || problem.code !== "UNKNOWN_CODE");
  if (problems.length + foreign.length > 0) {
    const placed = [...foreign, ...problems.map(placedProblem)].map((each) => placedInFile(each, text.firstLine));
    return { kind: "QUARANTINED", problems: placed, offer: text.offer };
  }
  return { kind: isThere ? "CHANGED" : "CREATED", publishes: null };
}

function note(file: FileSoFar, text: NewText, { kind }: Verdict): void {
  const { components, foods, plans, aside, moved, movedFoods } = file;
  const isNew = kind === "CREATED" || kind === "CHANGED";
  if (text.draft === "PLAN" && kind !== "QUARANTINED") plans.set(text.slug, text.read);
  if (text.draft === "FOOD" && kind !== "QUARANTINED") {
    foods.set(text.slug, text.read);
    if (kind !== "UNCHANGED") movedFoods.add(text.slug);
  }
  if (text.draft === "PACKS" && isNew) movedFoods.add(text.slug);
  const { document } = text.read;
  if (document.kind === "translation" && document.of.kind === "COMPONENT" && isNew) moved.add(document.of.slug);
  if (text.draft !== "COMPONENT") return;
  if (kind === "QUARANTINED") aside.add(text.slug);
  else components.set(text.slug, text.read);
  if (isNew || isMoved(text, file)) moved.add(text.slug);
}

/** The components of the file that a document leads to, directly or through one another. */
function reached(read: ReadDocument, components: ReadonlyMap<string, ReadDocument>): readonly ReadDocument[] {
  const found = new Map<string, ReadDocument>();
  const next = [...referencedSlugs([read.document]).components];
  for (let slug = next.pop(); slug !== undefined; slug = next.pop()) {
    const component = components.get(slug);
    if (component === undefined || found.has(slug) || slug === read.document.slug) continue;
    found.set(slug, component);
    next.push(...referencedSlugs([component.document]).components);
  }
  return [...found.values()];
}
