import type { PublisherResolvers } from "../generated/resolver-types.js";
import { globalId } from "../global-id.js";
import type { PublisherParent } from "../parent-types.js";
import { searchPlans } from "../../services/plans/listing/search-plans.js";
import { valueOf } from "../errors.js";
import { foundPlans } from "./plans/found-plans.js";
import { imageParent } from "./image.js";
import type { FieldsToResolve } from "./fields-to-resolve.js";

/** A publisher's id is opaque. */
export const publisherResolvers: FieldsToResolve<Omit<PublisherResolvers, "id">, PublisherParent> &
  Pick<PublisherResolvers, "id"> = {
  id: (publisher) => globalId({ kind: "Publisher", id: publisher.id }),
  website: ({ website }) => website ?? null,
  plans: async ({ slug }, page, { deps }) =>
    foundPlans(valueOf(await searchPlans(deps, { filter: { publisher: slug }, page }))),
  image: (publisher) => imageParent(publisher.slug, publisher.image),
};
