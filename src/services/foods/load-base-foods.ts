import type { Food } from "../../domain/model/food.js";
import type { BaseFoodsChanged, Deps } from "../deps.js";

/** An edition of base foods that comes with the program: its head, so that a start reads the foods only where they are new. */
export interface ShippedBaseFoods {
  readonly code: string;
  readonly title: string;
  /** SHA-256 of the foods, hex. */
  readonly hash: string;
}

/**
 * At the start of a process: the base foods that come with the program, unless the database has this edition or a later one. What an
 * operator saved under a slug of the base stays theirs. null: nothing was to be loaded.
 */
export async function loadShippedBaseFoods(
  { data, log }: Pick<Deps, "data" | "log">,
  { code, title, hash }: ShippedBaseFoods,
  readFoods: () => Promise<readonly Food[]>,
): Promise<BaseFoodsChanged | null> {
  const known = await data.foods.baseEdition();
  if (known !== null && known.code === code && known.contentHash !== hash)
    log.warn({ code }, "the base foods of this program differ from the loaded edition of their code, which stays");
  if (known !== null && known.code >= code) return null;
  const loaded = await data.foods.loadBase({ code, title }, hash, await readFoods());
  if (loaded === null) return null;
  const { added, replaced, kept } = loaded;
  log.info({ code, foods: added.length + replaced.length, kept: kept.length }, "base foods loaded");
  return loaded;
}
