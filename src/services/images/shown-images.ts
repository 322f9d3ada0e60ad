import type { PlanBundle } from "../../domain/model/plan.js";
import { imagesOf, mapImages } from "../../domain/plan/bundle-images.js";
import type { Deps } from "../deps.js";

/** A published plan without the pictures that its publisher removed since. The very same where it has none of them. */
export async function withShownImages({ data }: Pick<Deps, "data">, bundle: PlanBundle): Promise<PlanBundle> {
  const uses = imagesOf(bundle);
  if (uses.length === 0) return bundle;
  const removed = new Set(await data.images.removed(bundle.plan.publisher));
  const isShown = (hash: string | undefined): boolean => hash !== undefined && !removed.has(hash);
  if (uses.every(({ image }) => isShown(image.stored?.hash))) return bundle;
  return mapImages(bundle, (image) => (isShown(image.stored?.hash) ? image : null));
}
