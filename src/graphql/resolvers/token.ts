import { isScope } from "../../services/access/actor.js";
import { findToken } from "../../services/access/find-token.js";
import { listTokens, readAuditTrail } from "../../services/access/admin-lists.js";
import { planRequests, usageOfToken } from "../../services/usage/read-usage.js";
import { valueOf } from "../errors.js";
import type { AccessTokenResolvers, AuditEntryResolvers, QueryResolvers } from "../generated/resolver-types.js";
import type { AccessTokenParent, AuditEntryParent } from "../parent-types.js";
import { connection } from "./connection.js";
import type { FieldsToResolve } from "./fields-to-resolve.js";

export const tokenQueries: Pick<QueryResolvers, "viewer" | "tokens" | "planRequests" | "auditTrail"> = {
  viewer: (_, __, { deps, actor }) => (actor.kind === "TOKEN" ? findToken(deps, actor.token) : null),

  tokens: async (_, { publisher, ...page }, { deps, actor }) =>
    connection(valueOf(await listTokens(deps, actor, { publisher: publisher ?? null, page })), (token) => token),

  planRequests: async (_, { publisher, slug, ...page }, { deps, actor }) =>
    connection(
      valueOf(await planRequests(deps, actor, { publisher, plan: slug ?? null, page })),
      ({ day, plan, requests }) => ({ day, slug: plan, requests }),
    ),

  auditTrail: async (_, { publisher, ...page }, { deps, actor }) =>
    connection(valueOf(await readAuditTrail(deps, actor, { publisher: publisher ?? null, page })), (entry) => entry),
};

export const accessTokenResolvers: FieldsToResolve<AccessTokenResolvers, AccessTokenParent> = {
  publisher: ({ publisher }, _, { loaders }) => (publisher === null ? null : loaders.publishers.load(publisher)),
  scopes: ({ scopes }) => scopes.filter(isScope),
  usage: async (token, { days }, { deps }) => valueOf(await usageOfToken(deps, token, days)),
};

export const auditEntryResolvers: FieldsToResolve<AuditEntryResolvers, AuditEntryParent> = {
  publisher: ({ publisher }, _, { loaders }) => (publisher === null ? null : loaders.publishers.load(publisher)),
};
