import { firstProblems } from "../../domain/first-problems.js";
import { createToken } from "../../services/access/create-token.js";
import { findToken } from "../../services/access/find-token.js";
import { loadRuleSet, type RuleProblem } from "../../services/rules/load-rule-set.js";
import { createPublisher, updatePublisher } from "../../services/access/save-publisher.js";
import { revokeToken } from "../../services/access/revoke-token.js";
import type { Context } from "../context.js";
import type { MutationResolvers } from "../generated/resolver-types.js";
import type { ProblemParent, PublisherParent } from "../parent-types.js";
import { payload } from "../payload.js";
import { draftMutations } from "./drafts/draft.js";
import { publishingMutations } from "./drafts/publishing.js";
import { imageMutations } from "./image.js";
import { scheduleMutations } from "./drafts/schedule.js";
import { previewMutations } from "./drafts/preview.js";
import { importMutations } from "./import.js";
import { webhookMutations } from "./webhook.js";

export const mutationResolvers: MutationResolvers = {
  ...draftMutations,
  ...publishingMutations,
  ...imageMutations,
  ...importMutations,
  ...previewMutations,
  ...scheduleMutations,
  ...webhookMutations,

  createPublisher: async (_, { input }, context) =>
    payload("publisher", await createPublisher(context.deps, context, input), (slug) => freshPublisher(context, slug)),

  updatePublisher: async (_, { input }, context) =>
    payload("publisher", await updatePublisher(context.deps, context, input), (slug) => freshPublisher(context, slug)),

  createToken: async (_, { input }, context) => {
    const { publisher = null, expiresAt = null } = input;
    const expires = expiresAt === null ? null : new Date(expiresAt);
    const made = await createToken(context.deps, context, { ...input, publisher, expiresAt: expires });
    const answer = await payload("token", made, ({ id }) => findToken(context.deps, id));
    return { ...answer, secret: made.ok ? made.value.text : null };
  },

  loadRuleSet: async (_, { input }, context) => {
    const loaded = await loadRuleSet(context.deps, context, input);
    if (loaded.ok) return { ruleSet: loaded.summary, problems: [] };
    return { ruleSet: null, problems: firstProblems(loaded.problems.map((found) => inInput(found, input.files))) };
  },

  revokeToken: async (_, { input }, context) =>
    payload("token", await revokeToken(context.deps, context, input), (id) => findToken(context.deps, id)),
};

/** A problem in a file of rules, with its path from the input downwards. */
const inInput = (
  { problem, file, line, column }: RuleProblem,
  files: readonly { readonly name: string }[],
): ProblemParent => {
  const place = files.findIndex(({ name }) => name === file);
  return {
    ...problem,
    path: ["input", "files", ...(place < 0 ? [] : [place]), ...problem.path],
    place: { file, line, column },
  };
};

/** Read anew: an operation before this one may have looked for it in vain. */
function freshPublisher({ loaders }: Context, slug: string): Promise<PublisherParent> {
  loaders.publishers.clear(slug);
  return loaders.publisherOf(slug);
}
