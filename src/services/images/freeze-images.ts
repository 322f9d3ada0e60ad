import type { Image, StoredImage } from "../../domain/model/image.js";
import type { PlanBundle } from "../../domain/model/plan.js";
import { failed, ok, type Path, type Result } from "../../domain/problem.js";
import { mapImages, imagesOf } from "../../domain/plan/bundle-images.js";
import type { Data } from "../deps.js";

/**
 * The plan with the pictures that its files are now, so that a picture handed in later under the same name changes nothing of what is
 * published.
 */
export async function freezeImages(data: Data, bundle: PlanBundle): Promise<Result<PlanBundle>> {
  const uses = imagesOf(bundle);
  if (uses.length === 0) return ok(bundle);
  const files = [...new Set(uses.map(({ image }) => image.file))];
  const found = await data.images.byNames(bundle.plan.publisher, files);
  const byFile = new Map(files.map((file, at) => [file, found[at] ?? null]));
  const missing = uses.filter(({ image }) => byFile.get(image.file) === null);
  if (missing.length > 0) {
    return failed(
      missing.map(({ path, image }): { code: "UNKNOWN_IMAGE"; path: Path; image: string } => ({
        code: "UNKNOWN_IMAGE",
        path: [...path, "file"],
        image: image.file,
      })),
    );
  }
  return ok(mapImages(bundle, (image) => withStored(image, byFile.get(image.file) ?? null)));
}

const withStored = ({ file, alt, credit, licence }: Image, stored: StoredImage | null): Image | null =>
  stored === null
    ? null
    : {
        ...{ file, alt, credit, licence },
        stored: { hash: stored.hash, width: stored.width, height: stored.height, placeholder: stored.placeholder },
      };

/** With the picture that its file is now; without one until it is handed in. */
export async function storedImage(data: Data, publisher: string, image: Image): Promise<Image> {
  const [stored = null] = await data.images.byNames(publisher, [image.file]);
  return withStored(image, stored) ?? image;
}
