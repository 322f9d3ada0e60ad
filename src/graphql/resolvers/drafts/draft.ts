import { firstProblems } from "../../../domain/first-problems.js";
import { checkDocuments } from "../../../services/drafts/check/check-documents.js";
import { readTextLines, type LineExplained } from "../../../services/drafts/read-text-lines.js";
import { checkDraft } from "../../../services/drafts/check/check-draft.js";
import { compareRevisions } from "../../../services/plans/compare-revisions.js";
import { discardDraft } from "../../../services/drafts/discard-draft.js";
import { listDrafts } from "../../../services/drafts/list-drafts.js";
import { previewDraft } from "../../../services/previews/preview-draft.js";
import { adoptFood } from "../../../services/foods/adopt-food.js";
import { findFoodsOf } from "../../../services/foods/find-foods-of.js";
import { saveDocuments, type SavedDraft } from "../../../services/drafts/save-documents.js";
import { saveComponentDraft, saveFoodDraft, savePlanDraft } from "../../../services/drafts/save-draft.js";
import type { Context } from "../../context.js";
import { valueOf } from "../../errors.js";
import type {
  DraftResolvers,
  MutationResolvers,
  QueryResolvers,
  SavedDraftResolvers,
  TextLineResolvers,
} from "../../generated/resolver-types.js";
import type { DraftParent, FoodParent, SavedDraftParent } from "../../parent-types.js";
import { payload } from "../../payload.js";
import { connection } from "../connection.js";
import type { FieldsToResolve } from "../fields-to-resolve.js";
import { foodParent } from "../make-parents.js";

export const draftQueries: Pick<
  QueryResolvers,
  | "drafts"
  | "planDraft"
  | "componentDraft"
  | "foodDraft"
  | "packsDraft"
  | "translationDraft"
  | "checkDraft"
  | "checkDocuments"
  | "readLines"
  | "compare"
> = {
  drafts: async (_, { publisher, kind, ...page }, { deps, actor }) =>
    connection(
      valueOf(await listDrafts(deps, actor, { filter: { publisher, kind: kind ?? null }, page })),
      (draft) => draft,
    ),
  planDraft: (_, name, { loaders }) => loaders.drafts.load({ kind: "PLAN", ...name }),
  componentDraft: (_, name, { loaders }) => loaders.drafts.load({ kind: "COMPONENT", ...name }),
  foodDraft: (_, name, { loaders }) => loaders.drafts.load({ kind: "FOOD", ...name }),
  packsDraft: (_, name, { loaders }) => loaders.drafts.load({ kind: "PACKS", ...name }),
  translationDraft: (_, name, { loaders }) => loaders.drafts.load({ kind: "TRANSLATION", ...name }),
  compare: async (_, { from, to, ...name }, { deps, actor }) =>
    valueOf(await compareRevisions(deps, actor, { ...name, from: from ?? null, to: to ?? null })).map((found) => ({
      ...found,
      path: found.path.map(String),
    })),
  checkDraft: async (_, { region, ...name }, { deps, actor }) =>
    valueOf(await checkDraft(deps, actor, name, region ?? null)),
  checkDocuments: (_, documents, { deps, actor }) => checkDocuments(deps, actor, documents),
  readLines: async (_, asked, { deps, actor }) => {
    const read = await readTextLines(deps, actor, asked);
    return read.ok ? { lines: read.value, problems: [] } : { lines: [], problems: firstProblems(read.problems) };
  },
};

export const textLineResolvers: FieldsToResolve<TextLineResolvers, LineExplained> = {
  problem: ({ written, open, place }) =>
    open && { code: "LINE_OPEN", path: [], written, ...open, ...(place && { place }) },
  mayName: ({ open }) => [...(open?.named ?? [])],
  mayTake: ({ open }) => [...(open?.amounts ?? [])],
  file: ({ place }) => place?.file ?? null,
  line: ({ place }) => place?.line ?? null,
  column: ({ place }) => place?.column ?? null,
};

export const draftMutations: Pick<
  MutationResolvers,
  "saveDocuments" | "savePlanDraft" | "saveComponentDraft" | "saveFoodDraft" | "adoptFood" | "discardDraft"
> = {
  saveDocuments: async (_, { input }, context) => {
    const saved = await saveDocuments(context.deps, context, input);
    if (!saved.ok) return { drafts: null, foods: null, problems: firstProblems(saved.problems) };
    const { publisher, drafts, foods } = saved.value;
    return {
      drafts: drafts.map((draft) => ({ ...draft, publisher })),
      foods: await freshFoods(context, foods, new Set(ownOf(drafts)), publisher),
      problems: [],
    };
  },
  savePlanDraft: async (_, { input }, context) =>
    payload("draft", await savePlanDraft(context.deps, context, input), (draft) => draft),
  saveComponentDraft: async (_, { input }, context) =>
    payload("draft", await saveComponentDraft(context.deps, context, input), (draft) => draft),
  saveFoodDraft: async (_, { input }, context) =>
    payload("draft", await saveFoodDraft(context.deps, context, input), (draft) => draft),
  adoptFood: async (_, { input }, context) =>
    payload("draft", await adoptFood(context.deps, context, input), (draft) => draft),
  discardDraft: async (_, { input }, context) =>
    payload("discarded", await discardDraft(context.deps, context, input), ({ namedBy = [], ...draft }) => ({
      ...draft,
      namedBy: [...namedBy],
    })),
};

export const draftResolvers: FieldsToResolve<DraftResolvers, DraftParent> = {
  // Whoever was given the draft may read drafts.
  preview: ({ kind, publisher, slug }, _, { deps }) =>
    kind === "PLAN" ? previewDraft(deps, { publisher, slug }) : null,
  publisher: ({ publisher }, _, { loaders }) => loaders.publisherOf(publisher),
  document: async ({ kind, publisher, slug }, _, { loaders }) => {
    const draft = await loaders.drafts.load({ kind, publisher, slug });
    if (draft === null) throw new Error(`the draft ${slug} was discarded while it was read`);
    return draft.document;
  },
};

export const savedDraftResolvers: FieldsToResolve<SavedDraftResolvers, SavedDraftParent> = {
  // Read anew: an operation before this one may have read it as it was.
  draft: ({ kind, publisher, slug }, _, { loaders }) => {
    const ref = { kind, publisher, slug };
    return loaders.drafts.clear(ref).load(ref);
  },
};

const ownOf = (drafts: readonly SavedDraft[]): readonly string[] =>
  drafts.flatMap(({ kind, slug }) => (kind === "FOOD" ? [slug] : []));

/** Foods that were just saved, read anew; those of `own` are a publisher's. */
export async function freshFoods(
  { loaders, deps }: Context,
  slugs: readonly string[],
  own: ReadonlySet<string> = new Set(),
  publisher = "",
): Promise<readonly FoodParent[]> {
  slugs.forEach((slug) => loaders.foods.clear(slug));
  const shared = await loaders.readFoods(slugs.filter((slug) => !own.has(slug)));
  const foods = [...shared, ...(await findFoodsOf(deps.data, publisher, [...own]))];
  return foods.filter((food) => food !== null).map((food) => foodParent(food, null, null));
}
