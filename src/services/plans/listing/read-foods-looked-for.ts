import type { InSlices, Work } from "../../../domain/counted-work.js";
import { foodSlug, openTableNumber } from "../../../domain/model/open-table-slug.js";
import { findFood, type FoodNames } from "../../../domain/quantity/food-name.js";
import { mostOffered, nearestFoods } from "../../../domain/quantity/naming/nearest-foods.js";
import { failed, ok, type Path, type Problem, type Result } from "../../../domain/problem.js";
import type { Deps } from "../../deps.js";
import { anyone } from "../../access/actor.js";
import { findSynonyms } from "../../foods/foods-today.js";
import { namesFor, seenBy } from "../../foods/names-for.js";
import { runInSlices } from "../../time-slices.js";
import type { WantedPlans } from "./wanted-plans.js";

export interface FoodsLookedFor {
  /** Each group names foods of which a plan uses one. */
  readonly uses: readonly (readonly string[])[];
  /** null: nobody said what is at hand. */
  readonly atHand: readonly string[] | null;
}

const none: FoodsLookedFor = { uses: [], atHand: null };

/** A name is read in each of its forms before it is known that nothing is called so. */
const stepsOfName = 120;

/**
 * Foods by their slugs or by what they are called in any language, as every other name is read (docs/decisions/0033). A name of several foods is any of
 * them; one of none is refused with the nearest. With a publisher, what it calls its published own foods goes first.
 */
export async function readFoodsLookedFor(deps: Deps, wanted: WantedPlans, path: Path): Promise<Result<FoodsLookedFor>> {
  const { usesAnyOf, usesAllOf, foodsAtHand, publisher } = wanted;
  if (!usesAnyOf && !usesAllOf && !foodsAtHand) return ok(none);
  const { names } = await namesFor(deps, seenBy(anyone, publisher ?? null));
  const problems: Problem[] = [];
  const read = (list: Path, written: readonly string[] | null | undefined) =>
    runInSlices(deps, (work) => readNames(names, written ?? [], [...path, ...list], problems, work));
  const any = await read(["usesAnyOf"], usesAnyOf);
  const all = await read(["usesAllOf"], usesAllOf);
  const hand = (await read(["foodsAtHand"], foodsAtHand)).flat();
  if (problems.length > 0) return failed(problems);
  const others = hand.length === 0 ? [] : await findSynonyms(deps, hand);
  return ok({
    uses: [...(any.length === 0 ? [] : [any.flat()]), ...all],
    atHand: hand.length === 0 ? null : [...new Set([...hand, ...others.filter((other) => other !== null)])],
  });
}

function* readNames(
  names: FoodNames,
  all: readonly string[],
  path: Path,
  problems: Problem[],
  work: Work,
): InSlices<readonly (readonly string[])[]> {
  const found: (readonly string[])[] = [];
  for (const [at, written] of all.entries()) {
    work.step(stepsOfName);
    yield;
    const slugs = foodsCalled(names, written.trim());
    if (slugs.length > 0) found.push(slugs);
    else {
      const nearest = nearestFoods(names, written, null, mostOffered);
      const offer = { nearest, rows: [], slug: null, language: "und" };
      problems.push({ code: "UNKNOWN_FOOD", path: [...path, at], food: written.slice(0, 80), offer });
    }
  }
  return found;
}

function foodsCalled(names: FoodNames, written: string): readonly string[] {
  const slug = foodSlug(written);
  if (openTableNumber(slug) !== null || names.foods.has(slug)) return [slug];
  const match = findFood(names, written, null, null);
  return match.kind === "FOUND" ? [match.slug] : match.kind === "AMBIGUOUS" ? match.slugs : [];
}
