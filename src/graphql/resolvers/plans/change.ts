import { listChanges } from "../../../services/plans/list-changes.js";
import { valueOf } from "../../errors.js";
import type { ChangeResolvers, QueryResolvers } from "../../generated/resolver-types.js";
import type { ChangeParent } from "../../parent-types.js";
import { connection } from "../connection.js";
import type { FieldsToResolve } from "../fields-to-resolve.js";

export const changeQueries: Pick<QueryResolvers, "changes"> = {
  changes: async (_, { publisher, ...page }, { deps }) =>
    connection(valueOf(await listChanges(deps, { publisher: publisher ?? null, page })), (change) => change),
};

export const changeResolvers: FieldsToResolve<ChangeResolvers, ChangeParent> = {
  plan: ({ revisionId }, _, { loaders }) => loaders.revisionOf(revisionId),
};
