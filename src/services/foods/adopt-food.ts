import { stringify } from "yaml";
import type { CatalogueRow } from "../../domain/model/catalogue-row.js";
import { failed, type Result } from "../../domain/problem.js";
import { slugOf } from "../../imports/recipes/recipe-slug.js";
import { requireScope, type Caller } from "../access/actor.js";
import type { Deps } from "../deps.js";
import { saveFoodDraft, type OneSaved } from "../drafts/save-draft.js";
import { findCatalogueFoods } from "./find-catalogue-foods.js";

interface FoodToAdopt {
  readonly publisher: string;
  /** Number in the open table. */
  readonly ndbNo: string;
  /** null or left out: made from the name. */
  readonly slug?: string | null | undefined;
  /** In English; null or left out: as the table describes it. */
  readonly name?: string | null | undefined;
  readonly idempotencyKey?: string | null | undefined;
}

/**
 * Saves a row of the open food table as a food of a publisher's own, to be completed: its name, its aisle and, by its number, its nutrients
 * and measures. Of allergens, diets, keeping and packs the table says nothing, and so does the draft. @throws NotAllowed
 */
export async function adoptFood(deps: Deps, caller: Caller, input: FoodToAdopt): Promise<Result<OneSaved>> {
  const { publisher, ndbNo, idempotencyKey } = input;
  requireScope(caller.actor, "WRITE", publisher);
  const [found] = await findCatalogueFoods(deps, [ndbNo]);
  const written = ndbNo.slice(0, 80);
  if (!found)
    return failed([{ code: "UNKNOWN_CODE", path: ["input", "ndbNo"], list: "usda-number", written, nearest: [] }]);
  const name = input.name ?? found.row.description;
  const slug = input.slug ?? slugOf(name) ?? `usda-row-${ndbNo}`;
  const text = documentOf(found.row, slug, name);
  return saveFoodDraft(deps, caller, { publisher, name: `${slug}.yaml`, text, idempotencyKey });
}

const remark =
  "# From the open food table. Nobody has said yet which allergens it contains: until then it counts as free from none.\n";

const documentOf = ({ ndbNo, aisle }: CatalogueRow, slug: string, name: string): string =>
  remark + stringify({ kind: "food", slug, names: { en: name }, aisle, "shopped-by": "mass", usda: ndbNo });
