import { imageWidthFor, type Image } from "../../domain/model/image.js";
import { imagePath, originalPath } from "../../exports/image-address.js";
import { listUploadedImages } from "../../services/images/list-uploaded-images.js";
import { removeImage } from "../../services/images/remove-image.js";
import { valueOf } from "../errors.js";
import type { ImageResolvers, MutationResolvers, QueryResolvers } from "../generated/resolver-types.js";
import type { ImageParent } from "../parent-types.js";
import { payload } from "../payload.js";
import type { FieldsToResolve } from "./fields-to-resolve.js";

export const imageResolvers: FieldsToResolve<ImageResolvers, ImageParent> = {
  url: ({ publisher, stored }, { width, format }) =>
    imagePath(publisher, stored, imageWidthFor(stored, width ?? stored.width), format ?? "JPEG"),
  width: ({ stored }) => stored.width,
  height: ({ stored }) => stored.height,
  placeholder: ({ stored }) => stored.placeholder,
  hash: ({ stored }) => stored.hash,
};

/** null: there is none, or none that was handed in. */
export const imageParent = (publisher: string, image: Image | null | undefined): ImageParent | null =>
  image?.stored === undefined ? null : { ...image, stored: image.stored, publisher };

export const imageQueries: Pick<QueryResolvers, "uploadedImages"> = {
  uploadedImages: async (_, { publisher, files }, { deps, actor }) =>
    valueOf(await listUploadedImages(deps, actor, publisher, files)).map((image) => ({
      ...image,
      original: originalPath(publisher, image),
    })),
};

export const imageMutations: Pick<MutationResolvers, "removeImage"> = {
  removeImage: async (_, { input }, context) =>
    payload("removed", await removeImage(context.deps, context, input), ({ hash }) => hash),
};
