import type { PublisherResolvers } from "../generated/resolver-types.js";
import { globalId } from "../global-id.js";
import type { PublisherParent } from "../parent-types.js";
import { listPlans } from "../../services/plans/list-plans.js";
import { valueOf } from "../errors.js";
import { connection } from "./connection.js";
import { imageParent } from "./image.js";
import type { FieldsToResolve } from "./fields-to-resolve.js";

/** A publisher's id is opaque. */
export const publisherResolvers: FieldsToResolve<Omit<PublisherResolvers, "id">, PublisherParent> &
  Pick<PublisherResolvers, "id"> = {
  id: (publisher) => globalId({ kind: "Publisher", id: publisher.id }),
  website: ({ website }) => website ?? null,
  plans: async ({ slug }, page, { deps }) => {
    const filter = { publisher: slug, search: null, usesFood: null, usesComponent: null };
    return connection(valueOf(await listPlans(deps, { filter, page })), (plan) => plan);
  },
  image: (publisher) => imageParent(publisher.slug, publisher.image),
};
