import type { PublisherResolvers } from "../generated/resolver-types.js";
import { globalId } from "../global-id.js";
import type { PublisherParent } from "../parent-types.js";
import { imageParent } from "./image.js";
import type { FieldsToResolve } from "./fields-to-resolve.js";

/** A publisher's id is opaque. */
export const publisherResolvers: FieldsToResolve<Omit<PublisherResolvers, "id">, PublisherParent> &
  Pick<PublisherResolvers, "id"> = {
  id: (publisher) => globalId({ kind: "Publisher", id: publisher.id }),
  website: ({ website }) => website ?? null,
  image: (publisher) => imageParent(publisher.slug, publisher.image),
};
