import { isScope } from "../../services/access/actor.js";
import { findToken } from "../../services/access/find-token.js";
import { listTokens, readAuditTrail } from "../../services/access/admin-lists.js";
import { valueOf } from "../errors.js";
import type { AccessTokenResolvers, AuditEntryResolvers, QueryResolvers } from "../generated/resolver-types.js";
import type { AccessTokenParent, AuditEntryParent } from "../parent-types.js";
import { connection } from "./connection.js";
import type { FieldsToResolve } from "./fields-to-resolve.js";

export const tokenQueries: Pick<QueryResolvers, "viewer" | "tokens" | "auditTrail"> = {
  viewer: (_, __, { deps, actor }) => (actor.kind === "TOKEN" ? findToken(deps, actor.token) : null),

  tokens: async (_, { publisher, ...page }, { deps, actor }) =>
    connection(valueOf(await listTokens(deps, actor, { publisher: publisher ?? null, page })), (token) => token),

  auditTrail: async (_, { publisher, ...page }, { deps, actor }) =>
    connection(valueOf(await readAuditTrail(deps, actor, { publisher: publisher ?? null, page })), (entry) => entry),
};

export const accessTokenResolvers: FieldsToResolve<AccessTokenResolvers, AccessTokenParent> = {
  publisher: ({ publisher }, _, { loaders }) => (publisher === null ? null : loaders.publishers.load(publisher)),
  scopes: ({ scopes }) => scopes.filter(isScope),
};

export const auditEntryResolvers: FieldsToResolve<AuditEntryResolvers, AuditEntryParent> = {
  publisher: ({ publisher }, _, { loaders }) => (publisher === null ? null : loaders.publishers.load(publisher)),
};
