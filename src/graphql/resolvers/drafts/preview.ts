import { firstProblems } from "../../../domain/first-problems.js";
import { openPreview } from "../../../services/previews/open-preview.js";
import { createPreviewLink, listPreviewLinks, revokePreviewLink } from "../../../services/previews/preview-links.js";
import type { Result } from "../../../domain/problem.js";
import type { Context } from "../../context.js";
import { problemsError, valueOf } from "../../errors.js";
import { frozenPlan } from "../../frozen-plan.js";
import type {
  DraftPreviewResolvers,
  DraftPreviewScaledArgs,
  MutationResolvers,
  PreviewLinkResolvers,
  QueryResolvers,
} from "../../generated/resolver-types.js";
import type { DraftPreviewParent, PreviewLinkParent, ScaledPlanParent } from "../../parent-types.js";
import { payload, readersPayload } from "../../payload.js";
import { connection } from "../connection.js";
import type { FieldsToResolve } from "../fields-to-resolve.js";
import { scaleFrozen } from "../plans/scale-frozen.js";

export const previewQueries: Pick<QueryResolvers, "preview" | "previewLinks"> = {
  preview: async (_, { publisher, slug, secret }, { deps }) => {
    const opened = await openPreview(deps, { publisher, slug }, secret);
    if (opened.state === "UNKNOWN") return null;
    if (opened.state === "OPEN") return opened.preview;
    const at = opened.state === "NO_DRAFT" ? null : opened.at.toISOString();
    throw problemsError([{ code: "PREVIEW_ENDED", path: ["secret"], why: opened.state, at }]);
  },
  previewLinks: async (_, { publisher, ...page }, { deps, actor }) =>
    connection(valueOf(await listPreviewLinks(deps, actor, { publisher, page })), (link) => link),
};

export const previewMutations: Pick<MutationResolvers, "createPreviewLink" | "revokePreviewLink"> = {
  createPreviewLink: async (_, { input }, context) => {
    const made = await createPreviewLink(context.deps, context, input);
    const answer = await payload("link", made, ({ link }) => link);
    return { ...answer, path: made.ok ? made.value.path : null };
  },
  revokePreviewLink: async (_, { input }, context) =>
    payload("link", await revokePreviewLink(context.deps, context, input), (link) => link),
};

export const previewLinkResolvers: FieldsToResolve<PreviewLinkResolvers, PreviewLinkParent> = {
  publisher: ({ publisher }, _, { loaders }) => loaders.publisherOf(publisher),
};

export const draftPreviewResolvers: FieldsToResolve<DraftPreviewResolvers, DraftPreviewParent> = {
  revision: ({ published }) => published?.revision ?? null,
  problems: ({ problems }) => firstProblems(problems),
  findings: ({ findings }) => [...findings],
  scaled: async (preview, asked, context) => {
    const scaled = await scaledDraft(preview, asked, context);
    return scaled && valueOf(scaled);
  },
  scaling: async (preview, asked, context) => {
    const scaled = await scaledDraft(preview, asked, context);
    return scaled && readersPayload("scaled", scaled, asked.household);
  },
};

/** The draft as if it were published, for one household; null: it cannot be computed. */
async function scaledDraft(
  { published }: DraftPreviewParent,
  { servings, household }: Partial<DraftPreviewScaledArgs>,
  { deps, loaders }: Context,
): Promise<Result<ScaledPlanParent> | null> {
  if (published === null) return null;
  const { bundle, ...summary } = published;
  const frozen = frozenPlan(summary, bundle);
  loaders.hold(frozen);
  return scaleFrozen(deps, loaders, frozen, servings, household ?? {});
}
