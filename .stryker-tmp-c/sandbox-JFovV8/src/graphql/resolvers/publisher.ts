// @ts-nocheck
import type { PublisherResolvers } from "../generated/resolver-types.js";
import { globalId } from "../global-id.js";
import type { PublisherParent } from "../parents.js";
import type { FieldsBeyond } from "./fields-beyond.js";

/** A publisher's id is opaque. */
export const publisherResolvers: FieldsBeyond<Omit<PublisherResolvers, "id">, PublisherParent> &
  Pick<PublisherResolvers, "id"> = {
  id: (publisher) => globalId({ kind: "Publisher", id: publisher.id }),
};
